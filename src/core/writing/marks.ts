import type { Articulation, LineNote } from '../base';
import { type Desk, notesIn, refused, rewritten } from './context';
import { selectedNotes } from './places';
import type { Gesture } from './types';
import { onLine } from './write';

/** Puts a mark on each selected note; where all of them have it, it goes. */
export const mark = (what: Articulation): Gesture =>
  onLine((desk: Desk) => {
    const chosen = selectedNotes(desk);
    if (chosen.size === 0) return refused(desk, 'no note at hand');
    const notes = [...chosen.values()].flatMap((each) => [...each]);
    const has = ({ articulations = [] }: LineNote) => articulations.includes(what);
    const goes = notes.every(has);
    const changes = new Map(
      [...chosen].map(([bar, selected]) => [
        bar,
        notesIn(desk, bar).map((note) =>
          selected.has(note) && has(note) === goes ? marked(note, what, !goes) : note,
        ),
      ]),
    );
    return rewritten(desk, changes, {}, { kind: 'mark', bars: [...chosen.keys()], detail: what });
  });

function marked({ articulations = [], ...note }: LineNote, what: Articulation, on: boolean): LineNote {
  const marks = on ? [...articulations, what] : articulations.filter((each) => each !== what);
  return marks.length === 0 ? note : { ...note, articulations: marks };
}
