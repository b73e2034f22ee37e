import { useEffect, useState } from 'react';
import { numeralKeys, type PastedOffer, pastedOffer } from '../../../core/chart';
import { type ChartReading, type LinePiece, setChartText, setKey } from '../../../core/lesson';
import { describeKey, describeKeyIn } from '../../../core/theory';
import { useAtWork } from '../at-work';

interface PastedProps {
  readonly piece: LinePiece;
  readonly reading: ChartReading;
  /** After an offer was taken; its button is gone then, and the focus needs a place. */
  readonly onTaken: () => void;
}

/** What is offered for a text that was pasted: another way to read its lines, and a key for its numerals. */
export function Pasted({ piece, reading, onTaken }: PastedProps) {
  return (
    <>
      <OtherReading piece={piece} onTaken={onTaken} />
      <KeyOfNumerals piece={piece} reading={reading} onTaken={onTaken} />
    </>
  );
}

/** Another way to read a text that was pasted: chords without bar lines, headings, words of a song. */
function OtherReading({ piece, onTaken }: Omit<PastedProps, 'reading'>) {
  const { session } = useAtWork();
  const offer = useOffer(piece);
  if (offer === null) return null;
  return (
    <p className="harmony">
      {offer.said}{' '}
      <button
        type="button"
        className="word"
        onClick={() => {
          // What was typed since the offer was made is in it, too.
          const now = pastedOffer(piece.chartText, piece.metre) ?? { text: piece.chartText };
          session.lessons.change((lesson) => setChartText(lesson, piece.id, now.text), {
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

/** Quiet time after a change of the text before it is looked at, in milliseconds. */
const REST_MS = 200;

/** What is offered for the text as it was when the typing rested last: no key press waits for it. */
function useOffer({ chartText, metre }: LinePiece): PastedOffer | null {
  const [offer, setOffer] = useState<PastedOffer | null>(null);
  useEffect(() => {
    const timer = window.setTimeout(() => setOffer(pastedOffer(chartText, metre)), REST_MS);
    return () => window.clearTimeout(timer);
  }, [chartText, metre]);
  return offer;
}

/** The keys in which numerals can be read that stand without one: the likeliest first, each a click away. */
function KeyOfNumerals({ piece, reading, onTaken }: PastedProps) {
  const { session } = useAtWork();
  if (piece.key !== null) return null;
  const { pieces } = session.lessons.getState().lesson;
  const others = pieces.flatMap((other) => (other.kind === 'line' && other.key !== null ? [other.key] : []));
  const keys = numeralKeys(reading.chart, [
    ...reading.keyGuesses.slice(0, 1).map(({ key }) => key),
    ...others,
  ]);
  if (keys.length === 0) return null;
  return (
    <p className="harmony">
      {'The numerals count from a key. Read them in '}
      {keys.map((key, index) => {
        const named = describeKeyIn(reading.noteNames ?? 'letters', key);
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
