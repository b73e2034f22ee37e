import { hasMark, type LineNote, type Mark, midiOf, SIGNS, signOf, withMark, withoutMark } from '../base';
import { type Desk, notesIn, refused, rewritten } from './context';
import { selectedNotes } from './places';
import type { Gesture } from './types';
import { onLine } from './write';

/** What a mark is called at a note: by the note that follows, a hammer-on or a pull-off. */
function wordFor(desk: Desk, bar: number, note: LineNote, what: Mark): string {
  const following = notesIn(desk, bar).find(({ start }) => start > note.start) ?? notesIn(desk, bar + 1)[0];
  return SIGNS[signOf(what, midiOf(note.pitch), following === undefined ? null : midiOf(following.pitch))]
    .word;
}

/** Puts a mark on each selected note, in the place of those it excludes; where all of them have it, it goes. */
export const mark = (what: Mark): Gesture =>
  onLine((desk: Desk) => {
    const chosen = selectedNotes(desk);
    if (chosen.size === 0) return refused(desk, 'no note at hand');
    const goes = [...chosen.values()].every((notes) => [...notes].every((note) => hasMark(note, what)));
    const changed = (note: LineNote) => (goes ? withoutMark(note, what) : withMark(note, what));
    const changes = new Map(
      [...chosen].map(([bar, selected]) => [
        bar,
        notesIn(desk, bar).map((note) => (selected.has(note) ? changed(note) : note)),
      ]),
    );
    const words = new Set(
      [...chosen].flatMap(([bar, selected]) => [...selected].map((note) => wordFor(desk, bar, note, what))),
    );
    const detail = [...words].map((word) => (goes ? `no ${word}` : word)).join(', ');
    return rewritten(desk, changes, {}, { kind: 'mark', bars: [...chosen.keys()], detail });
  });
