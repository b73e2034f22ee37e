import { numeralKeys, pastedOffer } from '../../../core/chart';
import { type LinePiece, type LineSheet, setChartText, setKey } from '../../../core/lesson';
import { describeKey, describeKeyIn } from '../../../core/theory';
import { useAtWork } from '../at-work';

interface PastedProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  /** After an offer was taken; its button is gone then, and the focus needs a place. */
  readonly onTaken: () => void;
}

/** What is offered for a text that was pasted: another way to read its lines, and a key for its numerals. */
export function Pasted({ piece, sheet, onTaken }: PastedProps) {
  return (
    <>
      <OtherReading piece={piece} onTaken={onTaken} />
      <KeyOfNumerals piece={piece} sheet={sheet} onTaken={onTaken} />
    </>
  );
}

/** Another way to read a text that was pasted: chords without bar lines, headings, words of a song. */
function OtherReading({ piece, onTaken }: Omit<PastedProps, 'sheet'>) {
  const { session } = useAtWork();
  const offer = pastedOffer(piece.chartText, piece.metre);
  if (offer === null) return null;
  return (
    <p className="harmony">
      {offer.said}{' '}
      <button
        type="button"
        className="word"
        onClick={() => {
          session.lessons.change((lesson) => setChartText(lesson, piece.id, offer.text), {
            label: 'read the pasted chart',
          });
          onTaken();
        }}
      >
        {offer.deed}
      </button>
      .
    </p>
  );
}

/** The keys in which numerals can be read that stand without one: the likeliest first, each a click away. */
function KeyOfNumerals({ piece, sheet, onTaken }: PastedProps) {
  const { session } = useAtWork();
  if (piece.key !== null) return null;
  const { pieces } = session.lessons.getState().lesson;
  const others = pieces.flatMap((other) => (other.kind === 'line' && other.key !== null ? [other.key] : []));
  const keys = numeralKeys(sheet.chart, [...sheet.keyGuesses.slice(0, 1).map(({ key }) => key), ...others]);
  if (keys.length === 0) return null;
  return (
    <p className="harmony">
      {'The numerals count from a key. Read them in '}
      {keys.map((key, index) => {
        const named = describeKeyIn(sheet.noteNames ?? 'letters', key);
        return (
          <span key={describeKey(key)}>
            {index === 0 ? '' : index === keys.length - 1 ? ' or ' : ', '}
            <button
              type="button"
              className="word"
              aria-label={`${named}: read the numerals in it`}
              onClick={() => {
                session.lessons.change((lesson) => setKey(lesson, piece.id, key), {
                  label: 'change the key',
                });
                onTaken();
              }}
            >
              {named}
            </button>
          </span>
        );
      })}
      , or choose another as Key.
    </p>
  );
}
