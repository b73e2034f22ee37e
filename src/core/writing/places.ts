import { beatTicks, COMMON_TIME, type LineNote, type Metre, stringNumber } from '../base';
import { deriveSheet, type Lesson, type SheetNote } from '../lesson';
import { type Desk, lengthOf, notesIn, type Places, placesOf } from './context';
import type { Gesture, Moment, Pencil } from './types';
import { isDotted } from './values';

/** A pencil at the beginning of a bar, with the value of the metre's beat. */
export const newPencil = (pieceId: string, bar: number, metre: Metre = COMMON_TIME): Pencil => ({
  pieceId,
  bar,
  tick: 0,
  next: null,
  value: beatTicks(metre),
  after: null,
  from: null,
  way: 'note by note',
  digits: 'degrees',
  string: stringNumber(1),
  copied: null,
});

/** The note that sounds at a tick, by its place among the bar's notes; −1 in silence. */
export const noteIndexAt = (notes: readonly LineNote[], tick: number): number =>
  notes.findIndex((note) => note.start <= tick && tick < note.start + note.duration);

/** The note at hand and where it stands; null in silence. */
export function atHand(
  desk: Desk,
): { readonly note: LineNote; readonly index: number; readonly notes: readonly LineNote[] } | null {
  const notes = notesIn(desk, desk.pencil.bar);
  const index = noteIndexAt(notes, desk.pencil.tick);
  const note = notes[index];
  return note === undefined ? null : { note, index, notes };
}

/** What the sheet tells of the note at hand: its degree, string and fret. */
export function toldAtHand({ piece, lesson, pencil }: Desk): SheetNote | undefined {
  const sheet = deriveSheet(piece, lesson.instrument, lesson.noteNames);
  const told = (sheet.kind === 'line' ? sheet.bars[pencil.bar]?.notes : undefined) ?? [];
  return told[
    noteIndexAt(
      told.map(({ note }) => note),
      pencil.tick,
    )
  ];
}

/** Ticks between the places in a silence: the running value, or what a dotted one is made of. */
const stepOf = (value: number): number => (isDotted(value) ? value / 3 : value);

/** Every place of a bar where the pencil can stand: each note, and in silence each running value counted from the bar's beginning. */
export function stopsIn(desk: Places, bar: number): readonly number[] {
  const notes = notesIn(desk, bar);
  const length = lengthOf(desk, bar);
  const step = stepOf(desk.pencil.value);
  const stops: number[] = [];
  let at = 0;
  const silence = (end: number) => {
    if (at >= end) return;
    stops.push(at);
    for (let tick = (Math.floor(at / step) + 1) * step; tick < end; tick += step) stops.push(tick);
  };
  for (const note of notes) {
    silence(Math.min(note.start, length));
    stops.push(note.start);
    at = note.start + note.duration;
  }
  silence(length);
  return stops;
}

const barCount = (desk: Desk): number => desk.piece.bars.length;

/** The next place of the line, or the one before; null at its ends. */
export function neighbour(desk: Desk, from: Moment, way: 1 | -1): Moment | null {
  const here = stopsIn(desk, from.bar);
  const tick = way === 1 ? here.find((stop) => stop > from.tick) : here.findLast((stop) => stop < from.tick);
  if (tick !== undefined) return { bar: from.bar, tick };
  const bar = from.bar + way;
  if (bar < 0 || bar >= barCount(desk)) return null;
  const there = stopsIn(desk, bar);
  return { bar, tick: (way === 1 ? there[0] : there.at(-1)) ?? 0 };
}

/**
 * Where writing goes on after something that ends at a moment of a bar: there, or at the beginning of the next bar.
 * Behind the last bar it is the end of the line.
 */
export function onwards(desk: Pick<Desk, 'bars' | 'piece'>, bar: number, end: number): Moment {
  const length = lengthOf(desk, bar);
  return end < length || bar + 1 >= desk.piece.bars.length
    ? { bar, tick: Math.min(end, length) }
    : { bar: bar + 1, tick: 0 };
}

/** The last note before a moment, in this bar or an earlier one. */
export function noteBefore(desk: Desk, { bar, tick }: Moment): LineNote | null {
  for (let at = bar; at >= 0; at -= 1) {
    const before = notesIn(desk, at).findLast((note) => at < bar || note.start < tick);
    if (before !== undefined) return before;
  }
  return null;
}

const isBefore = (one: Moment, other: Moment): boolean =>
  one.bar < other.bar || (one.bar === other.bar && one.tick < other.tick);

/** What is selected, from its first tick up to its end: the note or silence at hand, or all from there to the other end. */
export function selectionOf(desk: Desk): { readonly start: Moment; readonly end: Moment } {
  const { pencil } = desk;
  const here: Moment = { bar: pencil.bar, tick: pencil.tick };
  const other = pencil.from ?? here;
  const [first, last] = isBefore(other, here) ? [other, here] : [here, other];
  return { start: first, end: { bar: last.bar, tick: endOfStop(desk, last) } };
}

/** Where the note or silence that begins at a place ends. */
function endOfStop(desk: Desk, { bar, tick }: Moment): number {
  const notes = notesIn(desk, bar);
  const note = notes[noteIndexAt(notes, tick)];
  if (note !== undefined) return note.start + note.duration;
  return stopsIn(desk, bar).find((stop) => stop > tick) ?? Math.max(lengthOf(desk, bar), tick);
}

/** The notes of a selection, by bar. */
export function selectedNotes(desk: Desk): ReadonlyMap<number, ReadonlySet<LineNote>> {
  const { start, end } = selectionOf(desk);
  const chosen = new Map<number, ReadonlySet<LineNote>>();
  for (let bar = start.bar; bar <= end.bar; bar += 1) {
    const from = bar === start.bar ? start.tick : 0;
    const to = bar === end.bar ? end.tick : Number.POSITIVE_INFINITY;
    const notes = notesIn(desk, bar).filter((note) => note.start + note.duration > from && note.start < to);
    if (notes.length > 0) chosen.set(bar, new Set(notes));
  }
  return chosen;
}

/**
 * The pencil fitted to the lesson as it has become, by undo or by an edit elsewhere: on the note that it stands in,
 * or at the nearest place. Null where its piece is no line any more, or has no bars.
 */
export function fitPencil(lesson: Lesson, pencil: Pencil): Pencil | null {
  const desk = placesOf(lesson, pencil);
  if (desk === null) return null;
  const fitted = fitMoment(desk, pencil);
  const next = pencil.next === null ? null : fitEnd(desk, pencil.next);
  const from = pencil.from === null ? null : fitMoment(desk, pencil.from);
  const strings = lesson.instrument.openStrings.length;
  const string = pencil.string > strings ? stringNumber(strings) : pencil.string;
  const stays =
    same(fitted, pencil) &&
    sameOrNull(next, pencil.next) &&
    sameOrNull(from, pencil.from) &&
    string === pencil.string;
  return stays ? pencil : { ...pencil, ...fitted, next, from, string };
}

const same = (one: Moment, other: Moment): boolean => one.bar === other.bar && one.tick === other.tick;
const sameOrNull = (one: Moment | null, other: Moment | null): boolean =>
  one === null || other === null ? one === other : same(one, other);

function fitMoment(desk: Places, { bar, tick }: Moment): Moment {
  if (bar >= desk.piece.bars.length) return { bar: desk.piece.bars.length - 1, tick: 0 };
  const notes = notesIn(desk, bar);
  const note = notes[noteIndexAt(notes, tick)];
  if (note !== undefined) return { bar, tick: note.start };
  return tick < lengthOf(desk, bar) ? { bar, tick } : { bar, tick: stopsIn(desk, bar).at(-1) ?? 0 };
}

/** As {@link fitMoment}, for where writing goes on: the end of the line is a place, too. */
const fitEnd = (desk: Places, moment: Moment): Moment =>
  moment.bar === desk.piece.bars.length - 1 && moment.tick >= lengthOf(desk, moment.bar)
    ? { bar: moment.bar, tick: lengthOf(desk, moment.bar) }
    : fitMoment(desk, moment);

/**
 * A gesture as a whole: what is refused changes nothing, and the pencil stands at a place of the lesson that the
 * gesture leaves. Whoever makes a gesture makes it through this.
 */
export const settled =
  (gesture: Gesture): Gesture =>
  (lesson, pencil) => {
    const done = gesture(lesson, pencil);
    if (done.did.kind === 'refused') return { lesson, pencil, did: done.did };
    return { ...done, pencil: fitPencil(done.lesson, done.pencil) ?? done.pencil };
  };
