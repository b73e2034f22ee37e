import { useMemo } from 'react';
import { deriveSheet, type Lesson, type Piece } from '../../../core/lesson';
import { useAtWork } from '../at-work';
import { ScoreFigure } from '../score';
import { describePiece, describeScore } from '../words';

interface PracticePieceProps {
  readonly piece: Piece;
  readonly lesson: Lesson;
  readonly atHand: boolean;
}

/** One piece as the student reads it: its name, what it is, and its sheet in large. */
export function PracticePiece({ piece, lesson, atHand }: PracticePieceProps) {
  const { session } = useAtWork();
  const { instrument, noteNames, handout } = lesson;
  const sheet = useMemo(() => deriveSheet(piece, instrument, noteNames), [piece, instrument, noteNames]);
  const rows = useMemo(
    () => ({ degrees: handout.degrees, fingers: handout.fingers, numerals: handout.numerals ?? false }),
    [handout.degrees, handout.fingers, handout.numerals],
  );
  const isLine = sheet.kind === 'line';
  const count = isLine ? sheet.bars.length : sheet.bars;
  if (count === 0) return null;
  return (
    <section className={`piece${atHand ? ' piece--at-hand' : ''}`} aria-label={piece.name}>
      <div className="practice__heading">
        <h2 className="practice__name">{piece.name}</h2>
        {isLine && !atHand && (
          <button
            type="button"
            className="button button--quiet"
            aria-label={`Practise ${piece.name}`}
            onClick={() => session.choosePiece(piece.id)}
          >
            Practise this
          </button>
        )}
      </div>
      <p className="piece__facts">{isLine ? describePiece(sheet) : 'For your own line.'}</p>
      <ScoreFigure
        sheet={sheet}
        large
        name={isLine ? (atHand ? 'Score' : `${piece.name} on staff and tab`) : `Blank bars, ${piece.name}`}
        description={isLine ? describeScore(sheet) : `${count} empty bars of staff and tab.`}
        rows={isLine ? rows : NO_ROWS}
        bars={null}
      />
    </section>
  );
}

const NO_ROWS = { degrees: false, fingers: false };
