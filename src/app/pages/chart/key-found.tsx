import { sameName } from '../../../core/base';
import { type ChartReading, type LinePiece, setKey } from '../../../core/lesson';
import { closeGuess, describeKeyIn, type Key, keySignature, sameKey } from '../../../core/theory';
import { useAtWork } from '../at-work';

interface KeyFoundProps {
  readonly piece: LinePiece;
  readonly reading: ChartReading;
  /** After a key was taken; its button is gone then, and the focus needs a place. */
  readonly onTaken: () => void;
}

/**
 * The reason for the key that was found, and the next best to choose instead. It is there at once: coming later it
 * would push the fields under it down.
 */
export function KeyFound({ piece, reading, onTaken }: KeyFoundProps) {
  const { session } = useAtWork();
  const naming = reading.noteNames ?? 'letters';
  const [best] = reading.keyGuesses;
  if (best === undefined || piece.key !== null || !sameKey(best.key, reading.key)) return null;
  const second = closeGuess(reading.keyGuesses);
  const relation = second === null ? null : relationOf(best.key, second.key);
  return (
    <p className="harmony">
      {best.reason}
      {second !== null && (
        <>
          {' It could also be '}
          <button
            type="button"
            className="word"
            aria-label={`${describeKeyIn(naming, second.key)}: take it as the key`}
            title={second.reason}
            onClick={() => {
              session.lessons.change((lesson) => setKey(lesson, piece.id, second.key), {
                label: 'change the key',
              });
              onTaken();
            }}
          >
            {describeKeyIn(naming, second.key)}
          </button>
          {relation === null ? '.' : `, ${relation}.`}
        </>
      )}
    </p>
  );
}

/** What a key is to another with the same notes or the same tonic; null for any other. */
function relationOf(key: Key, other: Key): string | null {
  if (keySignature(key) === keySignature(other)) return `its relative ${other.mode}`;
  return sameName(key.tonic, other.tonic) ? `its parallel ${other.mode}` : null;
}
