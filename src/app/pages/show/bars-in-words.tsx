import { barName, barNames, capitalised } from '../../../core/base';
import { describeBar, type LineSheet } from '../../../core/lesson';
import { chordsOf } from '../words';
import type { Turn } from './turn';

interface BarsInWordsProps {
  readonly sheet: LineSheet;
  /** Indices of the bars that are seen. */
  readonly bars: readonly number[];
  /** Whose turn it is while it is played by turns. */
  readonly turn: Turn | null;
  /** Whether the bars that are answered are seen. */
  readonly answer: boolean;
}

/**
 * The bars that are seen, for whoever hears the page: each is there to be read, and none is said by itself, so that
 * nothing talks over the music.
 */
export function BarsInWords({ sheet, bars, turn, answer }: BarsInWordsProps) {
  return (
    <ol className="visually-hidden" aria-label="Bars shown">
      {bars.map((index) => {
        const bar = sheet.bars[index];
        if (bar === undefined) return null;
        const hidden = !answer && turn?.kind === 'answer' && turn.bars.includes(index);
        return (
          <li key={index}>
            {capitalised(barName(bar.written.number))}, {chordsOf(bar.written, sheet.noteNames)}:{' '}
            {hidden ? 'your answer.' : describeBar(sheet, bar, { rests: true })}
          </li>
        );
      })}
    </ol>
  );
}

/** `Bars 3 and 4`, of bars by their indices. */
export const seenInWords = (sheet: LineSheet, bars: readonly number[]): string =>
  capitalised(barNames(bars.map((bar) => sheet.bars[bar]?.written.number ?? bar + 1)));
