import { nextSigns } from '../../../core/chart';
import type { ChartReading } from '../../../core/lesson';

/** Puts a text in at the caret of the chart, in place of what is selected. */
export type PutIn = (text: string) => void;

interface NextSignsProps {
  /** The chart as the field shows it, up to the caret. */
  readonly before: string;
  readonly reading: ChartReading;
  readonly putIn: PutIn;
}

/** The signs that can come next where the caret stands, for keyboards that hide them; shown on small screens only. */
export function NextSigns({ before, reading, putIn }: NextSignsProps) {
  return (
    <fieldset className="next-signs">
      <legend className="visually-hidden">Next sign</legend>
      {nextSigns(before, reading.chart, reading.noteNames).map((sign) => (
        <button
          key={sign}
          type="button"
          className="next-signs__sign"
          aria-label={`Put in ${sign === ' ' ? 'a blank' : sign.trim()}`}
          // The field keeps the focus, and the keyboard stays.
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => putIn(sign)}
        >
          {sign === ' ' ? 'blank' : sign.trim()}
        </button>
      ))}
    </fieldset>
  );
}
