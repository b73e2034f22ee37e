import { barTicks, beatTicks, type LineNote, type Metre, type MidiNumber } from '../base';
import { type ChartBar, countedIn } from '../chart';
import { type Instrument, rangeOf } from '../fretboard';
import {
  instrumentOf,
  LESSON_LIMITS,
  type Lesson,
  type LineBar,
  type LinePiece,
  linePiece,
  parsedChart,
  readPiece,
} from '../lesson';
import type { Chord, Key } from '../theory';
import { unbroken, withNotes } from './arrange';
import type { Did, Done, Moment, Pencil, Refusal } from './types';

/** What every gesture reads: the piece with its chart, the instrument. */
export interface Desk {
  readonly lesson: Lesson;
  readonly pencil: Pencil;
  readonly piece: LinePiece;
  readonly bars: readonly ChartBar[];
  readonly key: Key;
  readonly instrument: Instrument;
}

type Read = Pick<ReturnType<typeof readPiece>, 'chart' | 'key'>;

let lastRead: { readonly piece: LinePiece; readonly read: Read } | null = null;

/** Where the key is chosen, another note does not change how the chart is read: the last one read still holds. */
const readsAlike = (one: LinePiece, other: LinePiece): boolean =>
  one.key !== null &&
  one.key === other.key &&
  one.chartText === other.chartText &&
  one.metre === other.metre &&
  one.bars.length === other.bars.length;

function chartOf(piece: LinePiece): Read {
  const read = lastRead !== null && readsAlike(lastRead.piece, piece) ? lastRead.read : readPiece(piece);
  lastRead = { piece, read };
  return read;
}

/** What tells where the pencil can stand: all but the key, which takes the longest to find. */
export type Places = Omit<Desk, 'key'>;

/** As {@link deskOf}, without the key. */
export function placesOf(lesson: Lesson, pencil: Pencil): Places | null {
  const piece = linePiece(lesson, pencil.pieceId);
  if (piece === null || piece.bars.length === 0) return null;
  const { bars } = parsedChart(piece).chart;
  return { lesson, pencil, piece, bars, instrument: instrumentOf(lesson.instrument) };
}

/** Null where the pencil's piece is no line, or has no bars. */
export function deskOf(lesson: Lesson, pencil: Pencil): Desk | null {
  const piece = linePiece(lesson, pencil.pieceId);
  if (piece === null || piece.bars.length === 0) return null;
  const { chart, key } = chartOf(piece);
  return { lesson, pencil, piece, bars: chart.bars, key, instrument: instrumentOf(lesson.instrument) };
}

/** Ticks in a bar; 0 behind the line's last bar. */
export function lengthOf(desk: Pick<Desk, 'bars'>, bar: number): number {
  const written = desk.bars[bar];
  return written === undefined ? 0 : barTicks(written.metre);
}

/** The metre of a bar; the piece's behind its last bar. */
export const metreAt = ({ bars, piece }: Pick<Desk, 'bars' | 'piece'>, bar: number): Metre =>
  bars[bar]?.metre ?? piece.metre;

/** Where a moment of a bar lies, as it is counted; behind the line's last bar, in the piece's metre. */
export const countedAt = ({ piece }: Pick<Desk, 'piece'>, bar: number, tick: number): string =>
  countedIn(chartOf(piece).chart, bar, piece.metre)(tick);

/** Ticks of a beat in a bar; behind the line's last bar, of one in the piece's metre. */
export const beatOf = (desk: Pick<Desk, 'bars' | 'piece'>, bar: number): number =>
  beatTicks(metreAt(desk, bar));

/** The chord that sounds at a moment, and the key it stands in. */
export function harmonyAt(
  desk: Pick<Desk, 'bars' | 'key'>,
  { bar, tick }: Moment,
): { readonly chord: Chord | null; readonly key: Key } {
  const written = desk.bars[bar];
  const span =
    written?.spans.find((each) => tick < each.start + each.duration) ?? written?.spans.at(-1) ?? null;
  return {
    chord: span?.harmony.kind === 'chord' ? span.harmony.chord : null,
    key: written?.key ?? desk.key,
  };
}

/** The notes of a bar, what is too much for it with them. */
export const notesIn = (desk: Pick<Desk, 'piece'>, bar: number): readonly LineNote[] => {
  const stored = desk.piece.bars[bar];
  return stored === undefined ? [] : unbroken(stored);
};

/** Whether an instrument has a place for a pitch. */
export function playable(instrument: Instrument, midi: number): midi is MidiNumber {
  const { lowest, highest } = rangeOf(instrument);
  return midi >= lowest && midi <= highest;
}

export const refused = (desk: Pick<Desk, 'lesson' | 'pencil'>, why: Refusal): Done => ({
  lesson: desk.lesson,
  pencil: desk.pencil,
  did: { kind: 'refused', why },
});

/**
 * The lesson with other notes in some bars; a bar whose notes stay as they are is left as it is. Ties into and out
 * of the bars are put right.
 */
export function rewritten(
  desk: Desk,
  changes: ReadonlyMap<number, readonly LineNote[]>,
  pencil: Partial<Pencil>,
  did: Did,
): Done {
  const bars = [...desk.piece.bars];
  for (const [index, notes] of changes) {
    const bar = bars[index];
    if (bar === undefined || sameList(unbroken(bar), notes)) continue;
    bars[index] = withNotes(bar, notes, lengthOf(desk, index));
  }
  if (bars.some(({ notes, over = [] }) => Math.max(notes.length, over.length) > LESSON_LIMITS.notesInBar)) {
    return refused(desk, 'too many notes');
  }
  const touched = bars.flatMap((bar, index) => (bar === desk.piece.bars[index] ? [] : [index]));
  const tooMuch = touched.filter((index) => bars[index]?.over !== undefined);
  return {
    lesson: touched.length === 0 ? desk.lesson : withBars(desk, bars),
    pencil: { ...desk.pencil, ...pencil },
    did: tooMuch.length === 0 ? did : { ...did, tooMuch },
  };
}

const withBars = ({ lesson, piece }: Desk, bars: readonly LineBar[]): Lesson => ({
  ...lesson,
  pieces: lesson.pieces.map((each) => (each === piece ? { ...piece, bars } : each)),
});

const sameList = (one: readonly LineNote[], other: readonly LineNote[]): boolean =>
  one.length === other.length && one.every((note, index) => note === other[index]);
