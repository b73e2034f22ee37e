import { barName, capitalised } from '../../core/base';
import { harmonyText } from '../../core/chart';
import { type BarTelling, describeBar, type LineSheet, type Sheet, type SheetBar } from '../../core/lesson';
import type { SystemLayout } from '../../score';
import type { Cell } from './chart/cells';

/**
 * What a system says to someone who has the file read aloud: bar by bar its chords and notes.
 * @param telling - no more than is printed
 */
export function systemWords(sheet: Sheet, { bars }: Pick<SystemLayout, 'bars'>, telling: BarTelling): string {
  const [first, last] = [bars[0]?.bar ?? 0, bars.at(-1)?.bar ?? 0];
  if (sheet.kind === 'blank') {
    return first === last
      ? `Bar ${first + 1}, empty, to be written in.`
      : `Bars ${first + 1} to ${last + 1}, empty, to be written in.`;
  }
  return bars
    .flatMap(({ bar }) => {
      const shown = sheet.bars[bar];
      return shown === undefined ? [] : [barWords(sheet, shown, telling)];
    })
    .join(' ');
}

function barWords(sheet: LineSheet, bar: SheetBar, telling: BarTelling): string {
  const symbols = bar.written.spans.map(({ harmony }) => harmonyText(harmony, sheet.noteNames));
  const name = capitalised(barName(bar.written.number));
  return `${[name, ...symbols].join(', ')}: ${describeBar(sheet, bar, telling)}`;
}

/** A line of the chart: its bars between bar lines, with what is written about their order. */
export function chartLineWords(cells: readonly Cell[]): string {
  const bars = cells.map((cell) =>
    [
      cell.repeatStart ? 'repeat from here' : '',
      cell.ending ?? '',
      cell.opening,
      ...cell.symbols.map(({ base, raised, bass }) => base + raised + bass),
      cell.closing,
      cell.repeatEnd ? 'repeat' : '',
    ]
      .filter((part) => part !== '')
      .join(' '),
  );
  return `| ${bars.join(' | ')} |`;
}
