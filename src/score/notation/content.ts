import { barTicks, type Metre, midiOf, sameMetre, samePitch } from '../../core/base';
import {
  beginsBar,
  type Chart,
  type ChartBar,
  chordFunctions,
  harmonyParts,
  harmonyText,
  navigationWords,
  sameEnding,
  timesToSay,
} from '../../core/chart';
import { romanNumeral } from '../../core/fretboard';
import { type BlankSheet, exitsOf, type LineSheet, type Sheet, type SheetNote } from '../../core/lesson';
import { swingsEighths } from '../../core/playing';
import { Recent } from '../recent';
import type { Steps } from '../steps';
import { signsKey, signsOf } from './events';
import { lineAccidentals, signatureChange, signatureOf } from './signatures';
import type {
  BarEnd,
  BarFacts,
  ChordMark,
  Content,
  ContentBar,
  ContentExit,
  EndingMark,
  Hairpin,
} from './types';

/**
 * What a sheet says, as signs in order, in steps of a bar; where they stand is for the layout.
 * @param numerals whether the chords' Roman numerals are worked out
 */
export function* contentOf(sheet: Sheet, numerals: boolean): Steps<Content> {
  return sheet.kind === 'line' ? yield* lineContent(sheet, numerals) : blankContent(sheet);
}

function blankContent(sheet: BlankSheet): Content {
  const bars = Array.from(
    { length: sheet.bars },
    (_, index): ContentBar => ({
      key: `blank ${index === 0} ${index === sheet.bars - 1} in ${sheet.metre.count}/${sheet.metre.unit}`,
      length: barTicks(sheet.metre),
      metre: sheet.metre,
      showsMetre: index === 0,
      signature: null,
      changesSignature: null,
      blank: true,
      events: [],
      beams: [],
      triplets: [],
      chords: [],
      counts: [],
      startsSection: false,
      pickup: false,
      section: null,
      repeatStart: false,
      end: index === sheet.bars - 1 ? 'final' : 'single',
      times: null,
      ending: null,
      waySigns: [],
      wayWords: [],
      dynamics: [],
      hairpin: null,
      entered: null,
      words: null,
    }),
  );
  return {
    bars,
    numbers: bars.map((_, index) => index + 1),
    strings: sheet.instrument.openStrings.length,
    feel: null,
  };
}

const recentBars = new Recent<ContentBar>(2500);

function* lineContent(sheet: LineSheet, numerals: boolean): Steps<Content> {
  const written = sheet.bars.map(({ written: bar, notes }) => ({ bar, notes }));
  const tiesIn = written.map((_, index) => continues(written, index));
  const keys = written.map(({ bar }) => bar.key ?? sheet.key);
  const accidentals = lineAccidentals(written, keys, tiesIn);
  const positions = newPositions(sheet);
  const exits = contentExits(sheet);
  const hairpins = hairpinsInto(sheet);
  const strings = sheet.instrument.openStrings.length;
  const chords = chordsOf(
    written.map(({ bar }) => bar),
    sheet.noteNames,
    numerals ? chordFunctions(sheet.chart, sheet.key) : [],
  );
  const bars: ContentBar[] = [];
  for (const [index, { bar, notes }] of written.entries()) {
    yield;
    const before = written[index - 1]?.bar;
    const after = written[index + 1]?.bar;
    const firstOfSection = before?.section !== bar.section;
    const metre = shownMetre(bar, sheet.chart);
    const facts: BarFacts = {
      length: barTicks(bar.metre),
      metre,
      showsMetre: before === undefined || !sameMetre(shownMetre(before, sheet.chart), metre),
      signature: signatureOf(keys[index] ?? sheet.key),
      changesSignature: signatureChange(keys[index - 1], keys[index]),
      blank: false,
      chords: chords[index] ?? [],
      startsSection: before !== undefined && parts(before, bar, sheet.chart),
      pickup: bar.pickup,
      section: firstOfSection ? (sheet.chart.sections[bar.section]?.name ?? null) : null,
      repeatStart: bar.repeatStart,
      end: barEnd(bar, after, sheet, signatureChange(keys[index], keys[index + 1]) !== null),
      times: timesText(timesToSay(bar)),
      ending: endingMark(before, bar, after),
      waySigns: (['segno', 'coda'] as const).filter((sign) => bar.navigation?.includes(sign)),
      wayWords: (bar.navigation ?? []).filter((sign) => !beginsBar(sign)).map(navigationWords),
      dynamics: (sheet.bars[index]?.dynamics ?? []).map(({ at, level, hairpin }) => ({
        tick: Math.min(at, barTicks(bar.metre)),
        level: level ?? null,
        hairpin: hairpin ?? null,
      })),
      hairpin: hairpins[index] ?? null,
      entered: leadingInto(exits[index - 1]),
      words: sheet.bars[index]?.words ?? null,
    };
    const barNotes = {
      notes,
      accidentals: accidentals[index] ?? [],
      positions: positions[index] ?? [],
      exits: exits[index] ?? [],
      strings,
      tiedIn: tiesIn[index] === true,
      tiesOut: leadsOn(written, index) || (sheet.excerpt === true && after === undefined),
      metre: bar.metre,
      countedIn: metre,
    };
    const key = JSON.stringify(facts) + signsKey(barNotes);
    bars.push(recentBars.of(key, () => ({ ...facts, ...signsOf(barNotes), key })));
  }
  return {
    bars,
    numbers: written.map(({ bar }) => bar.number),
    strings,
    feel: swingsEighths(sheet) ? 'Swing eighths' : null,
  };
}

/** How the notes are left, as it is drawn. */
const contentExits = ({ bars }: LineSheet): readonly (readonly (ContentExit | null)[])[] =>
  exitsOf(bars).map((exits, bar) =>
    exits.map((exit, index) => {
      if (exit === null) return null;
      const from = bars[bar]?.notes[index]?.note;
      const to = exit.to && bars[exit.to.bar]?.notes[exit.to.note]?.note;
      const up = from && to ? Math.sign(midiOf(to.pitch) - midiOf(from.pitch)) : 0;
      return { sign: exit.sign, leads: exit.to !== null, rises: up > 0 ? 1 : up < 0 ? -1 : 0 };
    }),
  );

/** The last note's way out of a bar, where it leads into the next one. */
function leadingInto(before: readonly (ContentExit | null)[] | undefined): ContentExit | null {
  const last = before?.at(-1) ?? null;
  return last?.leads === true ? last : null;
}

/** The hairpin that is open where each bar begins. */
function hairpinsInto({ bars }: LineSheet): readonly (Hairpin | null)[] {
  let open: Hairpin | null = null;
  return bars.map(({ dynamics }) => {
    const into = open;
    const last = dynamics?.at(-1);
    if (last) open = last.hairpin ?? null;
    return into;
  });
}

/** Where the hand takes another position: its numeral at the first fretted note there, '' at every other note. */
function newPositions(sheet: LineSheet): readonly (readonly string[])[] {
  let hand: number | null = null;
  return sheet.bars.map(({ notes }) =>
    notes.map(({ fingered }) => {
      if (fingered === null || fingered.fret === 0 || fingered.position === hand) return '';
      hand = fingered.position;
      return romanNumeral(hand);
    }),
  );
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
    const chords: ChordMark[] = [];
    bar.spans.forEach(({ start, harmony }, span) => {
      const numeral = functions[index]?.[span]?.numeral ?? '';
      const text = harmonyText(harmony, noteNames);
      const parts = harmonyParts(harmony, noteNames);
      const again = text === chordBefore;
      if (start === 0) chords.push({ tick: start, text, parts, again: again && !endingStarts, numeral });
      else if (!again) chords.push({ tick: start, text, parts, again, numeral });
      chordBefore = text;
    });
    return chords;
  });
}

const timesText = (times: number | null): string | null => (times === null ? null : `x${times}`);

/** A pickup is written in the chart's metre, of which it has only the last beats. */
const shownMetre = (bar: ChartBar, chart: Chart): Metre => (bar.pickup ? chart.metre : bar.metre);

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

/** Whether a section ends between two bars; a pickup that stands before its section belongs to it. */
const parts = (before: ChartBar, bar: ChartBar, { sections }: Chart): boolean =>
  before.section !== bar.section && !(before.pickup && sections[before.section]?.length === 1);

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

interface WrittenBar {
  readonly bar: ChartBar;
  readonly notes: readonly SheetNote[];
}

/** Whether the bar's first note goes on from a bar that can come before it: the one to the left, or a repeat's end. */
function continues(bars: readonly WrittenBar[], index: number): boolean {
  const first = bars[index]?.notes[0];
  if (first?.note.start !== 0) return false;
  const leadsIn = (from: WrittenBar | undefined): boolean => {
    const last = from?.notes.at(-1)?.note;
    return last?.tiedOn === true && samePitch(last.pitch, first.note.pitch);
  };
  if (leadsIn(bars[index - 1])) return true;
  return bars[index]?.bar.repeatStart === true && leadsIn(repeatEndAfter(bars, index));
}

/** Whether a tie at the bar's end has a note to lead to: in the next bar, where a repeat goes back to, or after a jump. */
function leadsOn(bars: readonly WrittenBar[], index: number): boolean {
  const here = bars[index];
  const last = here?.notes.at(-1)?.note;
  if (here === undefined || last?.tiedOn !== true) return false;
  const goesOnIn = (to: WrittenBar | undefined): boolean => {
    const first = to?.notes[0]?.note;
    return first?.start === 0 && samePitch(last.pitch, first.pitch);
  };
  if (here.bar.navigation !== undefined || goesOnIn(bars[index + 1])) return true;
  if (here.bar.repeatEnd === null) return false;
  return goesOnIn(bars.slice(0, index + 1).findLast(({ bar }) => bar.repeatStart) ?? bars[0]);
}

const repeatEndAfter = (bars: readonly WrittenBar[], index: number): WrittenBar | undefined =>
  bars.slice(index).find(({ bar }) => bar.repeatEnd !== null);
