import { type HandoutBlock, leaveOut, type Piece } from '../../../core/lesson';
import { piecePartChoices } from '../../../handout';
import { CheckField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';

/** Which parts each piece has, where the lesson has several: a drill may do without the chart, the line not. */
export function HandoutPieces() {
  const { session } = useAtWork();
  const { pieces, handout } = useLesson();
  if (pieces.length < 2) return null;
  const print = (piece: Piece, block: HandoutBlock, shown: boolean) =>
    session.lessons.change((lesson) => leaveOut(lesson, piece.id, block, !shown), {
      label: 'change the parts of a piece',
    });
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">Parts of each piece</legend>
      {pieces.map((piece) => {
        const choices = piecePartChoices(handout, piece);
        const left = choices.filter(({ shown }) => !shown).length;
        return (
          <details key={piece.id} className="pieces">
            <summary>
              {piece.name}
              <span className="pieces__count">{left === 0 ? 'all parts' : `${left} left out`}</span>
            </summary>
            {choices.map(({ block, name, shown }) => (
              <CheckField
                key={block}
                label={name}
                where={`of ${piece.name}`}
                checked={shown}
                onChange={(on) => print(piece, block, on)}
              />
            ))}
          </details>
        );
      })}
    </fieldset>
  );
}
