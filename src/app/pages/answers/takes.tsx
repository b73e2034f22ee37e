import { useCallback, useRef, useState } from 'react';
import { recallTake } from '../../../core/composing';
import { forgetTake, type LinePiece } from '../../../core/lesson';
import type { ComparedTake } from '../../composer';
import { useAtWork } from '../at-work';
import { useAnswer } from './answer';

interface TakesProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
}

/** Takes are compared when the piece has been at rest for this long, in milliseconds. */
const REST = 150;

/** The takes of the piece at hand, folded away: they are compared only when they are looked at. */
export function Takes({ piece }: TakesProps) {
  const [open, setOpen] = useState(false);
  const { length } = piece.takes;
  return (
    <details className="chords-at-work" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{length === 0 ? 'Takes to compare' : `Takes: ${length}, the best first`}</summary>
      {open && <TakeList piece={piece} />}
    </details>
  );
}

/** The best first, each with what sets it apart, to be recalled in a click. */
function TakeList({ piece }: TakesProps) {
  const { session } = useAtWork();
  const button = useRef<HTMLButtonElement>(null);
  const [making, setMaking] = useState<AbortController | null>(null);
  const composeSeveral = async () => {
    if (making !== null) return;
    const begun = new AbortController();
    setMaking(begun);
    await session.severalTakes(begun.signal);
    setMaking(null);
  };
  const ask = useCallback(
    ({ id }: LinePiece) => session.composer.rankTakes(session.lessons.getState().lesson, id),
    [session],
  );
  const compared = useAnswer(piece, ask, REST);
  const ranked = (compared?.answer ?? []).filter(({ takeId }) => piece.takes.some(({ id }) => id === takeId));
  const callOff = () => {
    making?.abort();
    // The button that was pressed goes away.
    button.current?.focus();
  };
  return (
    <>
      {ranked.length > 0 && (
        <ul aria-label="Takes" aria-busy={compared?.of !== piece}>
          {ranked.map((each, index) => (
            <TakeRow key={each.takeId} pieceId={piece.id} ranked={each} place={index + 1} />
          ))}
        </ul>
      )}
      <p>
        <button
          type="button"
          className="word"
          ref={button}
          aria-busy={making !== null}
          onClick={() => void composeSeveral()}
        >
          Compose several to compare
        </button>{' '}
        <span role="status" aria-label="Takes in the making">
          {making !== null && 'In the making …'}
        </span>{' '}
        {making !== null && (
          <button type="button" className="word" onClick={callOff}>
            Call it off
          </button>
        )}
      </p>
    </>
  );
}

interface TakeRowProps {
  readonly pieceId: string;
  readonly ranked: ComparedTake;
  readonly place: number;
}

function TakeRow({ pieceId, ranked: { takeId, words, inLine }, place }: TakeRowProps) {
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
              session.lessons.change((lesson) => recallTake(lesson, pieceId, takeId), {
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
              session.lessons.change((lesson) => forgetTake(lesson, pieceId, takeId), {
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
