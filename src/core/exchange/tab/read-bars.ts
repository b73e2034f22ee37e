import {
  barTicks,
  beatTicks,
  DYNAMIC_LEVELS,
  isCompound,
  type Metre,
  type NoteMarks,
  TICKS_PER_QUARTER,
  withMark,
} from '../../base';
import { type Navigation, pickupMetre } from '../../chart';
import type { Key } from '../../theory';
import type { FoundDynamic } from '../reading/found';
import type { Remarks } from '../reading/remarks';
import { type BarHead, headOf, OVER_TEXTS, type SystemRows } from './rows';
import { type StruckNote, struckIn } from './struck';
import { barsOf, type TabBar, type TabSystem } from './systems';
import {
  type CountedMoment,
  countedUpbeat,
  evenTicks,
  momentsOf,
  type RowWord,
  tickAt,
  ticksAt,
  wordsOf,
} from './times';

/** A bar as it was read, before its notes have pitches. */
export interface WrittenBar {
  readonly metre: Metre;
  readonly pickup: boolean;
  readonly notes: readonly (StruckNote & { readonly tick: number })[];
  /** Ticks at which silence begins. */
  readonly silences: readonly number[];
  readonly chords: readonly { readonly at: number; readonly text: string }[];
  readonly dynamics: readonly FoundDynamic[];
  readonly section: string | null;
  /** Named in the heading over its line; null where none is. */
  readonly key: Key | null;
  readonly words: string | null;
  readonly repeatStart: boolean;
  readonly repeatEnd: number | null;
  readonly ending: readonly number[] | null;
  readonly navigation: readonly Navigation[];
  readonly counted: boolean;
}

/** How tab is read. */
export interface Manner {
  readonly own: boolean;
  readonly metre: Metre;
  readonly rowsOf: (system: TabSystem) => SystemRows;
}

const within = (words: readonly RowWord[], { from, until }: TabBar, spare: number): readonly RowWord[] =>
  words.filter(({ column }) => column >= from - spare && column < until);

const isLevel = (text: string): text is (typeof DYNAMIC_LEVELS)[number] =>
  DYNAMIC_LEVELS.some((level) => level === text);

function dynamicOf({ text }: RowWord, at: number): readonly FoundDynamic[] {
  const [, level = '', wedge = ''] = /^([pmf]{0,3})([<>!]?)$/u.exec(text) ?? [];
  if (level + wedge === '') return [];
  return [
    {
      at,
      level: isLevel(level) ? level : null,
      hairpin: wedge === '<' ? 'crescendo' : wedge === '>' ? 'diminuendo' : null,
      stops: wedge === '!',
    },
  ];
}

/** Adds the signs over the strings to the notes under which they stand. */
function withOver<Note extends StruckNote>(
  notes: readonly Note[],
  words: readonly RowWord[],
): readonly Note[] {
  const marks = notes.map(({ marks }) => marks);
  for (const { column, text } of words) {
    const index = notes.findLastIndex((note) => note.column <= column);
    const mark = OVER_TEXTS.get(text);
    if (index >= 0 && mark !== undefined)
      marks[index] = withMark({ marks: marks[index] ?? {} }, mark).marks ?? {};
  }
  return notes.map((note, index) => ({ ...note, marks: (marks[index] ?? {}) as NoteMarks }));
}

/** Columns between a bar line and the first step, as most bars of a line of music have them. */
function leadOf(rows: readonly string[], bars: readonly TabBar[]): number {
  const first = bars.flatMap((bar) => {
    const [note] = struckIn(rows, bar).notes;
    return note ? [note.column - bar.from] : [];
  });
  const least = Math.min(...first);
  return least > 2 ? 1 : least;
}

const EIGHTH = TICKS_PER_QUARTER / 2;
/** How much narrower than the others the first bar of a line is, to be an upbeat. */
const UPBEAT = 0.6;

/** Reads the bars of all systems in order. */
export function readBars(
  systems: readonly TabSystem[],
  manner: Manner,
  remarks: Remarks,
): readonly WrittenBar[] {
  const reader = new BarReader(manner, usualWidth(systems), remarks);
  for (const system of systems) reader.read(system);
  return reader.bars;
}

/** Columns of most bars. */
function usualWidth(systems: readonly TabSystem[]): number {
  const widths = systems
    .flatMap((system) => barsOf(system).map(({ from, until }) => until - from))
    .sort((one, other) => one - other);
  return widths[Math.floor(widths.length / 2)] ?? 1;
}

/** What a bar, or the part of it in one line, holds in its columns. */
type Content = Pick<WrittenBar, 'notes' | 'silences' | 'chords' | 'dynamics' | 'counted'>;

/** A line of music that is being read. */
interface Line {
  readonly system: TabSystem;
  readonly rows: SystemRows;
  /** Columns between a bar line and the first step. */
  readonly lead: number;
  /** Its first bar is read. */
  readonly first: boolean;
}

/** What stands over a bar. */
const headText = ({ head }: SystemRows, { from, until, repeatStart, repeatEnd }: TabBar): string =>
  (head ?? '').slice(from - (repeatStart ? 1 : 0), until + (repeatEnd ? 2 : 1));

const timesOf = ({ repeatEnd }: TabBar, { times }: BarHead): number | null =>
  repeatEnd ? (times ?? 2) : null;

class BarReader {
  readonly bars: WrittenBar[] = [];
  private metre: Metre;
  private ending: readonly number[] | null = null;
  /** The last bar goes on in the next line, so many beats of it are counted. */
  private open = false;
  private beats = 0;
  /** A double bar line stands before the next bar. */
  private doubled = false;

  constructor(
    private readonly manner: Manner,
    private readonly usual: number,
    private readonly remarks: Remarks,
  ) {
    this.metre = manner.metre;
  }

  read(system: TabSystem): void {
    const rows = this.manner.rowsOf(system);
    const found = barsOf(system);
    const lead = leadOf(system.rows, found);
    found.forEach((bar, place) => {
      const line = { system, rows, lead, first: place === 0 };
      const head = headOf(headText(rows, bar), this.metre);
      this.metre = head.metre ?? this.metre;
      const open = this.manner.own && this.open && line.first ? this.bars.at(-1) : undefined;
      if (open === undefined) this.begin(line, bar, head);
      else this.goOn(line, bar, head, open);
      this.open = !bar.closed;
      this.doubled = bar.doubled;
    });
  }

  private begin(line: Line, bar: TabBar, head: BarHead): void {
    const { rows, lead, first } = line;
    const upbeat = this.bars.length === 0 ? this.upbeatOf(bar, rows, head, lead) : null;
    const metre = upbeat ?? this.metre;
    this.add(bar, head, this.contentOf(line, bar, metre, 0), {
      metre,
      pickup: upbeat !== null,
      repeatEnd: timesOf(bar, head),
      section: first ? rows.section : null,
      key: first ? rows.key : null,
      words: rows.words.get(head.number ?? 0) ?? null,
    });
  }

  /** The last bar goes on in another line. */
  private goOn(line: Line, bar: TabBar, head: BarHead, before: WrittenBar): void {
    const content = this.contentOf(line, bar, before.metre, this.beats);
    this.bars[this.bars.length - 1] = {
      ...before,
      notes: [...before.notes, ...content.notes],
      silences: [...before.silences, ...content.silences],
      chords: [...before.chords, ...content.chords],
      dynamics: [...before.dynamics, ...content.dynamics],
      repeatEnd: timesOf(bar, head),
      navigation: [...before.navigation, ...head.navigation],
    };
  }

  private add(
    bar: TabBar,
    { ending, navigation }: BarHead,
    content: Content,
    about: Pick<WrittenBar, 'metre' | 'pickup' | 'repeatEnd' | 'section' | 'key' | 'words'>,
  ): void {
    const last = this.bars.at(-1);
    // An ending goes on up to its repeat sign or to a double bar line.
    const goesOn = last?.repeatEnd == null && !bar.repeatStart && !this.doubled;
    this.ending = ending ?? (goesOn ? this.ending : null);
    this.bars.push({ ...content, ...about, repeatStart: bar.repeatStart, ending: this.ending, navigation });
  }

  /** In other people's tab a first bar that is clearly narrower than the others is an upbeat. */
  private upbeatOf(bar: TabBar, { counting }: SystemRows, head: BarHead, lead: number): Metre | null {
    const { from, until } = bar;
    const narrow = !this.manner.own && until - from <= this.usual * UPBEAT;
    if (head.pickup !== null || !narrow) return head.pickup;
    return counting === null
      ? narrowPickup(until - from, this.usual, lead, this.metre)
      : pickupOfTicks(countedUpbeat(counting, bar, this.metre), this.metre);
  }

  private contentOf({ system, rows, lead }: Line, bar: TabBar, metre: Metre, beatsBefore: number): Content {
    const { notes: struck, unread } = struckIn(system.rows, bar);
    const at = this.bars.length - (beatsBefore > 0 ? 1 : 0);
    for (const sign of new Set(unread)) this.remarks.inBar(`The sign ${sign} on a string is left out`, at);
    const { moments, beats } = momentsOf(rows.counting ?? '', bar, metre, beatsBefore, this.metre);
    this.beats = beats;
    const times = timesIn(
      struck.map(({ column }) => column),
      { bar, metre, lead, moments },
    );
    return {
      counted: moments.length > 0,
      notes: withOver(
        struck.map((note) => ({ ...note, tick: times.ofNote(note.column) })),
        within(wordsOf(rows.over ?? ''), bar, 0),
      ),
      silences: moments.filter(({ silence }) => silence).map(({ tick }) => tick),
      chords: within(wordsOf(rows.chords ?? ''), bar, 1).map(({ column, text }) => ({
        at: times.ofChord(column),
        text,
      })),
      dynamics: within(wordsOf(rows.dynamics ?? ''), bar, 0).flatMap((word) =>
        dynamicOf(word, times.ofNote(word.column)),
      ),
    };
  }
}

interface TimedBar {
  readonly bar: TabBar;
  readonly metre: Metre;
  readonly lead: number;
  /** Empty in a bar that is not counted. */
  readonly moments: readonly CountedMoment[];
}

/** When the columns of a bar come: by its counting, else on an even grid. */
function timesIn(struck: readonly number[], { bar, metre, lead, moments }: TimedBar) {
  const length = barTicks(metre);
  const counted = moments.length > 0;
  const columns = [...new Set(struck)];
  const places = counted ? ticksAt(columns, moments, bar, length) : evenTicks(columns, bar, metre, lead);
  const ofNote = (column: number): number =>
    Math.min(
      length - 1,
      places[columns.indexOf(column)] ?? tickAt(column, moments, bar.from, bar.until, length),
    );
  /** A chord over no counted moment begins on the nearest eighth. */
  const ofChord = (column: number): number => {
    if (moments.some((moment) => moment.column === column)) return ofNote(column);
    const near = counted ? ofNote(column) : (evenTicks([column], bar, metre, lead)[0] ?? 0);
    return Math.max(0, Math.min(length - EIGHTH, Math.round(near / EIGHTH) * EIGHTH));
  };
  return { ofNote, ofChord };
}

/** The upbeat of a length that a chart can say; null for any other. */
function pickupOfTicks(length: number, metre: Metre): Metre | null {
  const beats = length / beatTicks(metre);
  if (length === 0 || length >= barTicks(metre)) return null;
  if (Number.isInteger(beats * (isCompound(metre) ? 1 : 2))) return pickupMetre({ beats }, metre);
  const eighths = length / EIGHTH;
  return eighths === 1 || eighths === 2 ? pickupMetre({ eighths }, metre) : null;
}

/** The upbeat that a narrow first bar is, by its share of the width of the others. */
function narrowPickup(width: number, usual: number, lead: number, metre: Metre): Metre | null {
  const share = (width - lead) / Math.max(1, usual - lead);
  const most = barTicks(metre) / beatTicks(metre);
  const beats = Math.round(share * most * 2) / 2;
  return beats > 0 && beats < most ? pickupMetre({ beats }, metre) : null;
}
