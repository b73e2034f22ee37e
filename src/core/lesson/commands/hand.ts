import type { Fret, LineNote, Pins } from '../../base';
import { type Fingering, pinsOf } from '../../fretboard';
import type { NotePlace } from '../fingering';
import type { Lesson, LineBar } from '../types';
import { changeLine } from './piece';

/** Written bars by index from 0, both ends included. */
export interface BarRange {
  readonly first: number;
  readonly last: number;
}

/** The lesson with some bars of a piece changed; the very same one when no bar is. */
export function changeBars(
  lesson: Lesson,
  pieceId: string,
  change: (bar: LineBar, index: number) => LineBar,
): Lesson {
  return changeLine(lesson, pieceId, (piece) => {
    const bars = piece.bars.map(change);
    return bars.every((bar, index) => bar === piece.bars[index]) ? piece : { ...piece, bars };
  });
}

function withPins({ pins: _, ...note }: LineNote, pins: Pins | null): LineNote {
  const asks = pins !== null && [pins.string, pins.fret, pins.finger].some((pin) => pin !== undefined);
  return asks ? { ...note, pins } : note;
}

/**
 * Holds notes at a string, a fret or with a finger, in place of the pins they had; null lets the hand choose. A
 * bar with a pinned note is left alone in composing.
 */
export const setPins = (
  lesson: Lesson,
  pieceId: string,
  choices: readonly { readonly at: NotePlace; readonly pins: Pins | null }[],
): Lesson =>
  changeBars(lesson, pieceId, (bar, index) => {
    const chosen = new Map(
      choices.filter(({ at }) => at.bar === index).map(({ at, pins }) => [at.note, pins]),
    );
    if (![...chosen.keys()].some((note) => bar.notes[note] !== undefined)) return bar;
    const notes = bar.notes.map((note, place) => {
      const pins = chosen.get(place);
      return pins === undefined ? note : withPins(note, pins);
    });
    return { ...bar, notes };
  });

/** Lets everything go that holds the hand in some bars: the pins of their notes, and the positions. */
export const clearPins = (lesson: Lesson, pieceId: string, { first, last }: BarRange): Lesson =>
  changeBars(keepPosition(lesson, pieceId, { first, last }, null), pieceId, (bar, index) =>
    index < first || index > last || bar.notes.every(({ pins }) => pins === undefined)
      ? bar
      : { ...bar, notes: bar.notes.map((note) => withPins(note, null)) },
  );

/** Keeps the hand in a position for some bars; null leaves the hand free there. */
export const keepPosition = (
  lesson: Lesson,
  pieceId: string,
  { first, last }: BarRange,
  position: Fret | null,
): Lesson =>
  changeBars(lesson, pieceId, (bar, index) => {
    if (index < first || index > last || bar.position === (position ?? undefined)) return bar;
    const { position: _, ...free } = bar;
    return position === null ? free : { ...free, position };
  });

/**
 * Plays a stretch of the line as in another fingering of it: its notes are pinned there. Where whole bars are
 * taken, the hand is kept in each bar that stays in one position, so that the choice outlasts the notes: another
 * idea for the bar is played there too.
 * @param struck the stretch's notes with their indexes in the fingering
 */
export function takeFingering(
  lesson: Lesson,
  pieceId: string,
  fingering: Fingering,
  struck: readonly { readonly index: number; readonly at: NotePlace }[],
  what: 'notes' | 'bars',
): Lesson {
  const taken = struck.flatMap(({ index, at }) => {
    const note = fingering.notes[index] ?? null;
    return note === null ? [] : [{ at, note }];
  });
  const pinned = setPins(
    lesson,
    pieceId,
    taken.map(({ at, note }) => ({ at, pins: pinsOf(note) })),
  );
  if (what === 'notes') return pinned;
  const bars = new Map<number, Set<Fret>>();
  for (const { at, note } of taken) {
    bars.set(at.bar, (bars.get(at.bar) ?? new Set()).add(note.position));
  }
  return [...bars].reduce((before, [bar, positions]) => {
    const [only = null, ...others] = positions;
    return keepPosition(before, pieceId, { first: bar, last: bar }, others.length === 0 ? only : null);
  }, pinned);
}
