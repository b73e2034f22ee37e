import { hasMark, type LineNote, type Mark, withMark, withoutMark } from '../base';
import { type Desk, notesIn, refused, rewritten } from './context';
import { selectedNotes } from './places';
import type { Gesture } from './types';
import { onLine } from './write';

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
    const detail = goes ? `no ${what}` : what;
    return rewritten(desk, changes, {}, { kind: 'mark', bars: [...chosen.keys()], detail });
  });
