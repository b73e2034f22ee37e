import { lengthWords, stringNumber, type Ticks } from '../base';
import { formatNameIn } from '../theory';
import { type Desk, lengthOf, notesIn, refused } from './context';
import { neighbour, noteIndexAt, onwards, selectionOf, stopsIn, toldAtHand } from './places';
import type { Digits, Done, Gesture, Moment, Pencil } from './types';
import { onLine, target } from './write';

/** @param detail what else is to be said than where the pencil stands */
const moved = (desk: Desk, to: Partial<Pencil>, detail = ''): Done => ({
  lesson: desk.lesson,
  pencil: { ...desk.pencil, ...to },
  did: { kind: 'go', bars: [to.bar ?? desk.pencil.bar], ...(detail === '' ? {} : { detail }) },
});

const at = (moment: Moment): Partial<Pencil> => ({ ...moment, next: null, from: null });

/** To the next note or place, or to the one before. Behind what was just written lies the place where the next note goes. */
export const go = (way: 1 | -1): Gesture =>
  onLine((desk) => {
    const { pencil } = desk;
    const to = way === 1 && pencil.next !== null ? startOf(desk, pencil.next) : neighbour(desk, pencil, way);
    return to === null ? refused(desk, 'end of the line') : moved(desk, at(to));
  });

/** A place where a note can stand; the end of the line is none. */
const startOf = (desk: Desk, moment: Moment): Moment | null =>
  moment.tick < lengthOf(desk, moment.bar) ? moment : null;

/** To a moment of the line: onto the note that sounds there, or to that place in a silence. */
export const goTo = (to: Moment): Gesture =>
  onLine((desk) => {
    const notes = notesIn(desk, to.bar);
    const note = notes[noteIndexAt(notes, to.tick)];
    return moved(desk, at({ bar: to.bar, tick: note?.start ?? to.tick }));
  });

/** To the beginning of the next bar, or of the one before; in the first bar back to its own beginning. */
export const goBar = (way: 1 | -1): Gesture =>
  onLine((desk) => {
    const from = way === 1 ? target(desk) : desk.pencil;
    // Writing already goes on at the beginning of the next bar: that is the next bar.
    const waits = way === 1 && from.bar > desk.pencil.bar;
    const bar = waits ? from.bar : from.bar + way;
    const { tick, next, from: other } = desk.pencil;
    if (bar < 0 && (tick > 0 || next !== null || other !== null)) return moved(desk, at({ bar: 0, tick: 0 }));
    return bar < 0 || bar >= desk.piece.bars.length
      ? refused(desk, 'end of the line')
      : moved(desk, at({ bar, tick: 0 }));
  });

/** To the first place of the bar, or to its last. */
export const goEdge = (edge: 'first' | 'last'): Gesture =>
  onLine((desk) => {
    const stops = stopsIn(desk, desk.pencil.bar);
    const tick = (edge === 'first' ? stops[0] : stops.at(-1)) ?? 0;
    return moved(desk, at({ bar: desk.pencil.bar, tick }));
  });

/** Takes one more note or place into the selection, or lets one go. */
export const select = (way: 1 | -1): Gesture =>
  onLine((desk) => {
    const to = neighbour(desk, desk.pencil, way);
    if (to === null) return refused(desk, 'end of the line');
    const from = desk.pencil.from ?? { bar: desk.pencil.bar, tick: desk.pencil.tick };
    return moved(desk, { ...to, from, next: null });
  });

/** Selects from what is selected now to a moment. */
export const selectTo = (to: Moment): Gesture =>
  onLine((desk) => {
    const from = desk.pencil.from ?? { bar: desk.pencil.bar, tick: desk.pencil.tick };
    const there = goTo(to)(desk.lesson, desk.pencil).pencil;
    return moved(desk, { bar: there.bar, tick: there.tick, from, next: null });
  });

/** Selects the whole bar; where it is selected, the whole line. */
export const selectBar: Gesture = onLine((desk) => {
  const { start, end } = selectionOf(desk);
  const whole = start.tick === 0 && end.tick >= lengthOf(desk, end.bar) && desk.pencil.from !== null;
  const [first, last] = whole ? [0, desk.piece.bars.length - 1] : [start.bar, end.bar];
  return moved(desk, {
    bar: last,
    tick: stopsIn(desk, last).at(-1) ?? 0,
    from: { bar: first, tick: 0 },
    next: null,
  });
});

/** Selects what is at hand alone. */
export const selectNone: Gesture = onLine((desk) => moved(desk, { from: null }));

/** Sets the running value; what was just written stays as it is. */
export const setRunning = (value: Ticks): Gesture =>
  onLine((desk) => moved(desk, { value, after: null }, lengthWords(value)));

export const setWay = (way: Pencil['way']): Gesture => onLine((desk) => moved(desk, { way }, way));

/** Degrees, or frets: those on the string of the note at hand. */
export const setDigits = (digits: Digits): Gesture =>
  onLine((desk) => {
    const string = toldAtHand(desk)?.fingered?.string ?? desk.pencil.string;
    return digits === 'degrees'
      ? moved(desk, { digits }, 'digits are degrees now')
      : moved(desk, { digits, string }, `digits are frets now, on the ${stringName(desk, string)}`);
  });

const stringName = ({ lesson, instrument }: Desk, string: number): string => {
  const open = instrument.openStrings[string - 1];
  return open === undefined
    ? `string ${string}`
    : `${formatNameIn(lesson.noteNames ?? 'letters', open)} string`;
};

/** To the next higher (−1) or lower (1) string, for writing frets. */
export const goString = (way: 1 | -1): Gesture =>
  onLine((desk) => {
    const string = desk.pencil.string + way;
    return string < 1 || string > desk.instrument.openStrings.length
      ? refused(desk, 'no such string')
      : moved(desk, { string: stringNumber(string) }, stringName(desk, string));
  });

/** The pencil behind the note at hand, after its length has changed. */
export function followed(desk: Desk, duration: number): Partial<Pencil> {
  const { pencil } = desk;
  return pencil.next === null ? {} : { next: onwards(desk, pencil.bar, pencil.tick + duration) };
}
