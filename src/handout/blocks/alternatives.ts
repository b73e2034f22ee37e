import { barName, capitalised, lengthWords, listed, remembered } from '../../core/base';
import { countedIn, shownHarmony } from '../../core/chart';
import { type BarTelling, describeBar, type LineSheet, type Sheet, type SheetBar } from '../../core/lesson';
import type { KeyboardSheet, PartSheet, WrittenHead } from '../../core/performance';
import { formatPitchIn } from '../../core/theory';
import type { FretboardRequest, SystemLayout } from '../../score';
import type { Cell } from './chart/cells';

/** What systems say, by their bars and what is told of them: most spacings of a page break a piece at the same bars. */
const said = new WeakMap<Sheet, Map<string, string>>();

/**
 * What a system says to someone who has the file read aloud: bar by bar its chords and notes.
 * @param telling - no more than is printed
 */
export function systemWords(sheet: Sheet, system: Pick<SystemLayout, 'bars'>, telling: BarTelling): string {
  const known = remembered(said, sheet, () => new Map<string, string>());
  const key = JSON.stringify([system.bars.map(({ bar }) => bar), telling]);
  return remembered(known, key, () => wordsOf(sheet, system, telling));
}

function wordsOf(sheet: Sheet, { bars }: Pick<SystemLayout, 'bars'>, telling: BarTelling): string {
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
  const symbols =
    telling.pitches === false
      ? []
      : bar.written.spans.map(({ harmony }) => shownHarmony(harmony, sheet.noteNames));
  const name = capitalised(barName(bar.written.number));
  if (sheet.toWrite?.includes(sheet.bars.indexOf(bar)) === true)
    return `${[name, ...symbols].join(', ')}: empty, to be written in.`;
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

/** A picture of the neck: its notes in their order, with the place where each is found. */
export const alternativeOf = ({ title, instrument, notes }: FretboardRequest): string =>
  `${title}: ${notes
    .map(({ name, degree, string, fret, finger }) => {
      const place = fret === 0 ? 'open' : `fret ${fret}`;
      return `${degree} ${name}, string ${string} of ${instrument.openStrings.length}, ${place}${finger === null || fret === 0 ? '' : `, finger ${finger}`}`;
    })
    .join('; ')}.`;

/** What a system of a part says: bar by bar what is struck on which beat. */
export function partWords(part: PartSheet, { bars }: Pick<SystemLayout, 'bars'>): string {
  const { line } = part;
  return bars
    .flatMap(({ bar }) => {
      const written = line.bars[bar]?.written;
      if (written === undefined) return [];
      const placed = countedIn(line.chart, bar, written.metre);
      const strokes = (part.bars[bar] ?? []).map(
        ({ heads, start, duration }) =>
          `${listed(heads.map((head) => headWords(head, line)))} on ${placed(start)}, ${lengthWords(duration)}`,
      );
      const said = strokes.length === 0 ? 'Silence' : strokes.join('; ');
      return [`${capitalised(barName(written.number))}: ${said}.`];
    })
    .join(' ');
}

/** What a system of both hands says: first all of the right hand, then all of the left. */
export const keyboardWords = ({ right, left }: KeyboardSheet, system: Pick<SystemLayout, 'bars'>): string =>
  `Right hand. ${partWords(right, system)} Left hand. ${partWords(left, system)}`;

const headWords = (head: WrittenHead, { noteNames }: LineSheet): string =>
  head.kind === 'pitch'
    ? formatPitchIn(noteNames ?? 'letters', head.pitch)
    : `${head.ghost ? 'soft ' : ''}${head.sound}`;
