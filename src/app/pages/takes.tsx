import { useMemo, useState } from 'react';
import { type RankedTake, rankTakes, recallTake } from '../../core/composing';
import { forgetTake, type LinePiece, type LineSheet } from '../../core/lesson';
import { useAtWork, useLesson } from './session';
import { runWork } from './work';

interface TakesProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** The takes of the piece at hand, folded away: they are compared only when they are looked at. */
export function Takes({ piece, sheet }: TakesProps) {
  const [open, setOpen] = useState(false);
  const { length } = piece.takes;
  return (
    <details className="chords-at-work" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{length === 0 ? 'Takes to compare' : `Takes: ${length}, the best first`}</summary>
      {open && <TakeList piece={piece} sheet={sheet} />}
    </details>
  );
}

/** The best first, each with what sets it apart, to be recalled in a click. */
function TakeList({ piece, sheet }: TakesProps) {
  const { session } = useAtWork();
  const { instrument } = useLesson();
  const [busy, setBusy] = useState(false);
  const composeSeveral = async () => {
    if (busy) return;
    setBusy(true);
    await runWork('Composing takes to compare', session.severalTakes);
    setBusy(false);
  };
  const ranked = useMemo(() => rankTakes(piece, sheet, instrument), [piece, sheet, instrument]);
  return (
    <>
      {ranked.length > 0 && (
        <ul aria-label="Takes">
          {ranked.map((each, index) => (
            <TakeRow key={each.take.id} pieceId={piece.id} ranked={each} place={index + 1} />
          ))}
        </ul>
      )}
      <button type="button" className="word" aria-busy={busy} onClick={() => void composeSeveral()}>
        Compose several to compare
      </button>
    </>
  );
}

interface TakeRowProps {
  readonly pieceId: string;
  readonly ranked: RankedTake;
  readonly place: number;
}

function TakeRow({ pieceId, ranked: { take, words, inLine }, place }: TakeRowProps) {
  const { session } = useAtWork();
  return (
    <li>
      <span className="chords-at-work__numeral">{place}</span> {words}{' '}
      {inLine ? (
        <span className="take__now">In the line.</span>
      ) : (
        <span className="take__words">
          <button
            type="button"
            className="word"
            aria-label={`Recall take ${place}`}
            aria-description={words}
            onClick={() =>
              session.lessons.change((lesson) => recallTake(lesson, pieceId, take.id), {
                label: `recall take ${place}`,
              })
            }
          >
            Recall
          </button>
          <button
            type="button"
            className="word"
            aria-label={`Forget take ${place}`}
            onClick={() =>
              session.lessons.change((lesson) => forgetTake(lesson, pieceId, take.id), {
                label: `forget take ${place}`,
              })
            }
          >
            Forget
          </button>
        </span>
      )}
    </li>
  );
}
