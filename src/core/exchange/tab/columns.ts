import { barTicks, beatsOf, beatTicks, isDotted } from '../../base';
import type { HarmonySpan, WrittenMetre } from '../../chart';
import type { SheetBar, SheetNote } from '../../lesson';
import { countingOf, notateBar, syllableAt } from '../../notation';
import { formatChordIn, type Naming } from '../../theory';
import { plainText } from './plain';
import { dynamicText, type NoteText } from './signs';

/** A moment of a bar: what stands above, on and below the strings there. */
export interface Column {
  readonly chord: string;
  /** The sign on each string, string 1 first; '' where nothing is struck. */
  readonly frets: readonly string[];
  readonly count: string;
  /** Playing signs over the strings, and dynamics under the counting. */
  readonly over: string;
  readonly under: string;
  /** Signs to the next column, at least one of them a dash. */
  readonly width: number;
}

/** How far a note goes into the text: a dead note is an x, as players write it, and signs stand on both sides. */
function signOf({ fingered }: SheetNote, { before, instead, after }: NoteText): string {
  const fret = fingered === null ? '?' : String(fingered.fret);
  return `${before}${instead === '' ? fret : instead}${after}`;
}

/** What is worked out for the whole line, of one bar. */
export interface BarSigns {
  /** The first note goes on from the bar before and is not struck again. */
  readonly tiedIn: boolean;
  /** One entry a note. */
  readonly texts: readonly NoteText[];
  /** In what it is counted: the one beat of a pickup in four is a four, the last eighth of 6/8 an `a`. */
  readonly counted: WrittenMetre;
}

const NO_SIGNS: NoteText = { before: '', instead: '', after: '', over: '' };

/** What was typed for a chord and not understood is cut here; no real symbol is longer. */
const LONGEST_SYMBOL = 24;

function chordText({ harmony }: HarmonySpan, naming: Naming): string {
  switch (harmony.kind) {
    case 'chord':
      return plainText(formatChordIn(naming, harmony.chord));
    case 'no chord':
      return 'N.C.';
    case 'unknown':
      return plainText(harmony.text).slice(0, LONGEST_SYMBOL);
  }
}

/** Beats and their halves (thirds of dotted ones) in a bar, so that equal times mostly have equal room. */
const pulse = ({ metre, from }: WrittenMetre, length: number): readonly number[] =>
  beatsOf(metre)
    .flatMap((beat) => {
      const parts = isDotted(beat) ? 3 : 2;
      return Array.from({ length: parts }, (_, index) => beat.start + (index * beat.length) / parts - from);
    })
    .filter((tick) => tick >= 0 && tick < length);

/** Before what is counted where a note ends and nothing sounds from then on. */
export const SILENCE_SIGN = '-';

/** Where silence begins in a bar. */
function silencesOf({ notes, written }: SheetBar): readonly number[] {
  const first = notes[0]?.note.start;
  return [
    ...(first === 0 ? [] : [0]),
    ...notes.flatMap(({ note }, index) => {
      const end = note.start + note.duration;
      return end < (notes[index + 1]?.note.start ?? barTicks(written.metre)) ? [end] : [];
    }),
  ];
}

/**
 * A bar as columns: one for every beat and half beat, and one wherever else a note, a silence or a chord begins. A
 * beat that is not struck is counted with a dot, silence with a sign before its count.
 */
export function columnsOf(
  bar: SheetBar,
  strings: number,
  { tiedIn, texts, counted }: BarSigns,
  naming: Naming,
): readonly Column[] {
  const { metre, spans } = bar.written;
  const dynamics = (bar.dynamics ?? []).map((sign) => ({
    ...sign,
    at: Math.min(sign.at, barTicks(metre) - beatTicks(metre) / 4),
  }));
  const struck = bar.notes.filter((_, index) => !(tiedIn && index === 0));
  const { events } = notateBar(
    bar.notes.map(({ note }) => note),
    metre,
  );
  const { from } = counted;
  const counts = new Map(
    countingOf(
      events.map((event) => ({ ...event, start: event.start + from })),
      counted.metre,
    )
      .filter(({ tick }) => tick >= from && tick < from + barTicks(metre))
      .map(({ tick, text }) => [tick - from, text.startsWith('(') ? '.' : text]),
  );
  const silences = silencesOf(bar);
  const ticks = new Set([
    ...pulse(counted, barTicks(metre)),
    ...struck.map(({ note }) => note.start),
    ...silences,
    ...spans.map((span) => span.start),
    ...dynamics.map(({ at }) => at),
  ]);
  const plain = [...ticks]
    .sort((one, other) => one - other)
    .map((tick) => {
      const sheetNote = struck.find(({ note }) => note.start === tick);
      const span = spans.find(({ start }) => start === tick);
      const text = (sheetNote && texts[bar.notes.indexOf(sheetNote)]) ?? NO_SIGNS;
      const sign = sheetNote ? signOf(sheetNote, text) : '';
      const under = dynamics
        .filter(({ at }) => at === tick)
        .map(dynamicText)
        .join('');
      const string = sheetNote?.fingered?.string ?? strings;
      const frets = Array.from({ length: strings }, (_, index) => (index + 1 === string ? sign : ''));
      const count = silences.includes(tick)
        ? `${SILENCE_SIGN}${syllableAt(counted.metre, from + tick) ?? ''}`
        : (counts.get(tick) ?? '');
      const tied = tiedIn && tick === 0 && sheetNote === undefined && count !== '' ? '.' : count;
      return {
        chord: span ? chordText(span, naming) : '',
        frets,
        count: tied,
        over: text.over,
        under,
        width: Math.max(2, sign.length + 1, tied.length + 1, text.over.length + 1, under.length + 1),
      };
    });
  return withRoomForChords(plain);
}

/** A chord symbol must end before the next one begins, and before the bar does. */
function withRoomForChords(columns: readonly Column[]): readonly Column[] {
  const result = [...columns];
  const starts = columns.flatMap((column, index) => (column.chord === '' ? [] : [index]));
  starts.forEach((start, place) => {
    const until = starts[place + 1] ?? columns.length;
    const room = result.slice(start, until).reduce((sum, column) => sum + column.width, 0);
    const missing = (columns[start]?.chord.length ?? 0) + 1 - room;
    const last = result[until - 1];
    if (missing > 0 && last) result[until - 1] = { ...last, width: last.width + missing };
  });
  return result;
}
