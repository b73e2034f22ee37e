import { barTicks, sameMetre } from '../../core/base';
import {
  beginsBar,
  type Chart,
  type ChartBar,
  chordFunctions,
  harmonyParts,
  harmonyText,
  navigationWords,
  repeatSigns,
  sameEnding,
  shownHarmony,
  timesToSay,
  writtenMetres,
} from '../../core/chart';
import type { LineSheet } from '../../core/lesson';
import type { Key } from '../../core/theory';
import { signatureChange, signatureOf } from './signatures';
import type { BarEnd, BarFacts, ChordMark, EndingMark, StaffKind } from './types';

/** The key in force in each bar. */
export const keysOf = (sheet: LineSheet): readonly Key[] =>
  sheet.bars.map(({ written }) => written.key ?? sheet.key);

/**
 * What stands in each bar of a chart whoever plays it: metre, key, chords, repeats, endings, the way through.
 * @param numerals whether the chords' Roman numerals are worked out
 */
export function chartFacts(sheet: LineSheet, staff: StaffKind, numerals: boolean): readonly BarFacts[] {
  const { chart } = sheet;
  const written = sheet.bars.map((bar) => bar.written);
  const keys = keysOf(sheet);
  const chords = chordsOf(written, sheet.noteNames, numerals ? chordFunctions(chart, sheet.key) : []);
  const repeats = repeatSigns(chart);
  const metres = writtenMetres(chart);
  const pitched = staff === 'bass' || staff === 'treble';
  return written.map((bar, index) => {
    const before = written[index - 1];
    const after = written[index + 1];
    const { metre, from } = metres[index] ?? { metre: bar.metre, from: 0 };
    const shown = metres[index - 1]?.metre;
    return {
      staff,
      length: barTicks(bar.metre),
      metre,
      countedFrom: from,
      showsMetre: shown === undefined || !sameMetre(shown, metre),
      signature: pitched ? signatureOf(keys[index] ?? sheet.key) : null,
      changesSignature: pitched ? signatureChange(keys[index - 1], keys[index]) : null,
      blank: false,
      chords: chords[index] ?? [],
      startsSection: before !== undefined && parts(before, bar, chart),
      pickup: bar.pickup || from > 0,
      section: before?.section === bar.section ? null : (chart.sections[bar.section]?.name ?? null),
      repeatStart: repeats[index] === true,
      end: barEnd(bar, after, sheet, signatureChange(keys[index], keys[index + 1]) !== null),
      times: timesText(timesToSay(bar)),
      ending: endingMark(before, bar, after),
      waySigns: (['segno', 'coda'] as const).filter((sign) => bar.navigation?.includes(sign)),
      wayWords: (bar.navigation ?? []).filter((sign) => !beginsBar(sign)).map(navigationWords),
      leadsToCoda: bar.navigation?.includes('to coda') === true,
      dynamics: [],
      hairpin: null,
      entered: null,
      words: null,
    };
  });
}

/** The chords of each bar: at its beginning, and where the harmony changes within it. */
function chordsOf(
  bars: readonly ChartBar[],
  noteNames: LineSheet['noteNames'],
  functions: ReturnType<typeof chordFunctions>,
): readonly (readonly ChordMark[])[] {
  let chordBefore = '';
  return bars.map((bar, index) => {
    const endingStarts = bar.ending !== null && !sameEnding(bars[index - 1], bar);
    const begins = endingStarts || bars[index - 1]?.section !== bar.section;
    const chords: ChordMark[] = [];
    bar.spans.forEach(({ start, harmony }, span) => {
      const numeral = functions[index]?.[span]?.numeral ?? '';
      const written = harmonyText(harmony, noteNames);
      const text = shownHarmony(harmony, noteNames);
      const parts = harmonyParts(harmony, noteNames);
      const again = written === chordBefore;
      if (start === 0) chords.push({ tick: start, text, parts, again: again && !begins, numeral });
      else if (!again) chords.push({ tick: start, text, parts, again, numeral });
      chordBefore = written;
    });
    return chords;
  });
}

const timesText = (times: number | null): string | null => (times === null ? null : `x${times}`);

function endingMark(
  before: ChartBar | undefined,
  bar: ChartBar,
  after: ChartBar | undefined,
): EndingMark | null {
  if (!bar.ending) return null;
  const text = sameEnding(before, bar) ? '' : `${bar.ending.join(', ')}.`;
  const stops = bar.repeatEnd !== null ? 'closed' : sameEnding(bar, after) ? null : 'open';
  return { text, stops };
}

/**
 * Whether a section ends between two bars; a pickup that stands before its section belongs to it. The coda is set off as
 * a section is (E. Gould, "Behind Bars", 2011, repeats, from memory).
 */
const parts = (before: ChartBar, bar: ChartBar, { sections }: Chart): boolean =>
  bar.navigation?.includes('coda') === true ||
  (before.section !== bar.section && !(before.pickup && sections[before.section]?.length === 1));

function barEnd(
  bar: ChartBar,
  after: ChartBar | undefined,
  { chart, excerpt }: LineSheet,
  changesKey: boolean,
): BarEnd {
  if (bar.repeatEnd !== null) return 'repeat';
  if (!after) return excerpt === true ? 'single' : 'final';
  return parts(bar, after, chart) || changesKey ? 'double' : 'single';
}
