import {
  type Articulation,
  barTicks,
  isCompound,
  LETTERS,
  type Metre,
  type SpelledPitch,
  sameMetre,
  samePitch,
} from '../../core/base';
import type { Chart, ChartBar, Harmony } from '../../core/chart';
import { swingRatio } from '../../core/feel';
import type { Instrument } from '../../core/fretboard';
import type { BlankSheet, LineSheet, Sheet, SheetNote } from '../../core/lesson';
import {
  type Accidental,
  accidentalsOf,
  type CountMark,
  countingOf,
  type NotatedEvent,
  notateBar,
} from '../../core/notation';
import { type Key, keySignature, sameKey } from '../../core/theory';

/** A note or rest with everything that stands at it. */
export interface ContentEvent extends NotatedEvent {
  /** Steps above the bass staff's middle line (written D3); 0 for a rest. */
  readonly height: number;
  readonly accidental: Accidental | null;
  readonly articulations: readonly Articulation[];
  /** What the tab says; null for a rest and for the later pieces of a tied note. */
  readonly fret: { readonly string: number; readonly text: string } | null;
  readonly degree: string;
  readonly finger: string;
  /** The same pitch goes on from the bar before. */
  readonly tiedIn: boolean;
  /** The same pitch goes on in the bar that follows. */
  readonly tiedOut: boolean;
}

export interface ChordMark {
  readonly tick: number;
  readonly text: string;
  /** The same chord went before: written only at the start of a system. */
  readonly again: boolean;
}

export type BarEnd = 'single' | 'double' | 'repeat' | 'final';

export interface ContentBar {
  /** Index of the written bar. */
  readonly index: number;
  readonly number: number;
  readonly length: number;
  readonly metre: Metre;
  readonly showsMetre: boolean;
  /** Sharps (positive) or flats of the signature in force, −7 to 7; null writes none. */
  readonly signature: number | null;
  /** The signature before, where this bar changes it. */
  readonly changesSignature: { readonly from: number } | null;
  /** Nothing is written in the bar, not even a rest. */
  readonly blank: boolean;
  readonly events: readonly ContentEvent[];
  readonly beams: readonly (readonly number[])[];
  readonly triplets: readonly { readonly first: number; readonly last: number }[];
  readonly chords: readonly ChordMark[];
  readonly counts: readonly CountMark[];
  /** A section begins here and starts a system. */
  readonly startsSection: boolean;
  readonly section: string | null;
  readonly repeatStart: boolean;
  readonly end: BarEnd;
  /** `x3` at a repeat that is played more than twice. */
  readonly times: string | null;
  readonly ending: EndingMark | null;
}

/** A bar under an ending's bracket. */
export interface EndingMark {
  /** `1.` where the bracket begins, '' where it goes on. */
  readonly text: string;
  /** Where the bracket stops; `closed` turns down at a repeat, `open` does not. */
  readonly stops: 'closed' | 'open' | null;
}

export interface Content {
  readonly bars: readonly ContentBar[];
  readonly strings: number;
  /** `Swing eighths` above the first bar; null for straight ones. */
  readonly feel: string | null;
}

/** From here on the long eighth is heard as swung; trade usage, common practice, no source. */
const LEAST_SWING = 1.15;

/** What a sheet says, as signs in order; where they stand is for the layout. */
export const contentOf = (sheet: Sheet): Content =>
  sheet.kind === 'line' ? lineContent(sheet) : blankContent(sheet);

function blankContent(sheet: BlankSheet): Content {
  const bars = Array.from(
    { length: sheet.bars },
    (_, index): ContentBar => ({
      index,
      number: index + 1,
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
      section: null,
      repeatStart: false,
      end: index === sheet.bars - 1 ? 'final' : 'single',
      times: null,
      ending: null,
    }),
  );
  return { bars, strings: sheet.instrument.openStrings.length, feel: null };
}

function lineContent(sheet: LineSheet): Content {
  const written = sheet.bars.map(({ written: bar, notes }) => ({ bar, notes }));
  const tiesIn = written.map((_, index) => continues(written, index));
  const keys = written.map(({ bar }) => bar.key ?? sheet.key);
  const accidentals = lineAccidentals(written, keys, tiesIn);
  let chordBefore = '';
  const bars = written.map(({ bar, notes }, index): ContentBar => {
    const before = written[index - 1]?.bar;
    const after = written[index + 1]?.bar;
    const notated = notateBar(
      notes.map(({ note }) => note),
      bar.metre,
    );
    const chords: ChordMark[] = [];
    for (const span of bar.spans) {
      const text = harmonyText(span.harmony);
      const again = text === chordBefore;
      const endingStarts = span.start === 0 && bar.ending !== null && !sameEnding(before, bar);
      if (!again || span.start === 0) chords.push({ tick: span.start, text, again: again && !endingStarts });
      chordBefore = text;
    }
    const startsSection = before !== undefined && before.section !== bar.section;
    const firstOfSection = before === undefined || startsSection;
    return {
      index,
      number: bar.number,
      length: barTicks(bar.metre),
      metre: shownMetre(bar, sheet.chart),
      showsMetre:
        before === undefined || !sameMetre(shownMetre(before, sheet.chart), shownMetre(bar, sheet.chart)),
      signature: signatureOf(keys[index] ?? sheet.key),
      changesSignature: signatureChange(keys[index - 1], keys[index]),
      blank: false,
      events: notated.events.map((event) =>
        contentEvent(event, notes, accidentals[index] ?? [], sheet.instrument, tiesIn[index] === true),
      ),
      beams: notated.beams,
      triplets: notated.triplets,
      chords,
      counts: countsOf(notated.events, bar, sheet.chart, tiesIn[index] === true),
      startsSection,
      section: firstOfSection ? (sheet.chart.sections[bar.section]?.name ?? null) : null,
      repeatStart: bar.repeatStart,
      end: barEnd(bar, after, signatureChange(keys[index], keys[index + 1]) !== null),
      times: bar.repeatEnd !== null && bar.repeatEnd !== 2 ? `x${bar.repeatEnd}` : null,
      ending: endingMark(before, bar, after),
    };
  });
  return {
    bars,
    strings: sheet.instrument.openStrings.length,
    feel: swings(sheet) ? 'Swing eighths' : null,
  };
}

/** Eighths are thirds of the beat in compound time already. */
const swings = (sheet: LineSheet): boolean =>
  !isCompound(sheet.metre) && swingRatio(sheet.feel, sheet.tempo) >= LEAST_SWING;

/** A key beyond seven sharps or flats has no signature; its accidentals stand at the notes. */
function signatureOf(key: Key): number {
  const fifths = keySignature(key);
  return Math.abs(fifths) <= 7 ? fifths : 0;
}

function signatureChange(before: Key | undefined, now: Key | undefined): { readonly from: number } | null {
  if (!before || !now) return null;
  const from = signatureOf(before);
  return from === signatureOf(now) ? null : { from };
}

/** Accidentals start afresh with every signature. */
function lineAccidentals(
  bars: readonly WrittenBar[],
  keys: readonly Key[],
  tiesIn: readonly boolean[],
): readonly (readonly (Accidental | null)[])[] {
  const signs: (readonly (Accidental | null)[])[] = [];
  while (signs.length < bars.length) {
    const first = signs.length;
    const key = keys[first];
    if (!key) break;
    const change = keys.findIndex((other, index) => index > first && !sameKey(other, key));
    const run = bars.slice(first, change < 0 ? bars.length : change);
    const pitches = run.map(({ notes }, bar) =>
      notes.map(({ note }, index) => ({
        pitch: note.pitch,
        continued: index === 0 && tiesIn[first + bar] === true,
      })),
    );
    signs.push(...accidentalsOf(pitches, key));
  }
  return signs;
}

/** A pickup is written in the chart's metre, of which it has only the last beats. */
const shownMetre = (bar: ChartBar, chart: Chart): Metre => (bar.pickup ? chart.metre : bar.metre);

/** A pickup is counted as the end of a bar: one beat of 4/4 is a four. */
function countsOf(
  events: readonly NotatedEvent[],
  bar: ChartBar,
  chart: Chart,
  tiedIn: boolean,
): readonly CountMark[] {
  const missing = barTicks(shownMetre(bar, chart)) - barTicks(bar.metre);
  if (missing <= 0) return countingOf(events, bar.metre, tiedIn);
  const late = events.map((event) => ({ ...event, start: event.start + missing }));
  return countingOf(late, chart.metre, tiedIn)
    .filter(({ tick }) => tick >= missing)
    .map(({ tick, text }) => ({ tick: tick - missing, text }));
}

const sameEnding = (one: ChartBar | undefined, other: ChartBar | undefined): boolean =>
  one?.ending?.join() === other?.ending?.join();

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

function barEnd(bar: ChartBar, after: ChartBar | undefined, changesKey: boolean): BarEnd {
  if (bar.repeatEnd !== null) return 'repeat';
  if (!after) return 'final';
  return after.section === bar.section && !changesKey ? 'single' : 'double';
}

function harmonyText(harmony: Harmony): string {
  if (harmony.kind === 'chord') return harmony.chord.symbol;
  return harmony.kind === 'no chord' ? 'N.C.' : harmony.text;
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

const repeatEndAfter = (bars: readonly WrittenBar[], index: number): WrittenBar | undefined =>
  bars.slice(index).find(({ bar }) => bar.repeatEnd !== null);

function contentEvent(
  event: NotatedEvent,
  notes: readonly SheetNote[],
  accidentals: readonly (Accidental | null)[],
  instrument: Instrument,
  barTiedIn: boolean,
): ContentEvent {
  const sounding = event.note === null ? undefined : notes[event.note];
  if (event.note === null || !sounding) {
    return {
      ...event,
      height: 0,
      accidental: null,
      articulations: [],
      fret: null,
      degree: '',
      finger: '',
      tiedIn: false,
      tiedOut: false,
    };
  }
  const { note, fingered, degreeText } = sounding;
  const head = event.start <= note.start;
  const tiedIn = head && event.note === 0 && barTiedIn;
  const lastPiece = !event.tied;
  const tiedOut = lastPiece && note.tiedOn === true && event.note === notes.length - 1;
  const attacked = head && !tiedIn;
  return {
    ...event,
    height: heightOf(note.pitch),
    accidental: head ? (accidentals[event.note] ?? null) : null,
    articulations: attacked ? (note.articulations ?? []) : (note.articulations ?? []).filter(isGhost),
    fret: head ? fretMark(sounding, instrument, tiedIn) : null,
    degree: attacked ? degreeText : '',
    finger: attacked && fingered ? String(fingered.finger) : '',
    tiedIn,
    tiedOut,
  };
}

const isGhost = (articulation: Articulation): boolean => articulation === 'ghost';

/** D3 as written is D2 as it sounds: bass notation stands an octave above its sound. */
const MIDDLE_LINE = 2 * 7 + LETTERS.indexOf('D');

const heightOf = (pitch: SpelledPitch): number =>
  pitch.octave * 7 + LETTERS.indexOf(pitch.letter) - MIDDLE_LINE;

/** A note tied over the bar line keeps its fret in brackets; one that is not on the instrument shows a question mark. */
function fretMark(
  { fingered, note }: SheetNote,
  instrument: Instrument,
  tiedIn: boolean,
): { readonly string: number; readonly text: string } {
  if (!fingered) return { string: heightOf(note.pitch) < 0 ? instrument.openStrings.length : 1, text: '?' };
  const fret = note.articulations?.some(isGhost) ? 'x' : String(fingered.fret);
  return { string: fingered.string, text: tiedIn ? `(${fret})` : fret };
}
