import { type LineNote, samePitch } from '../base';
import { untied } from './arrange';
import { type Desk, lengthOf, notesIn } from './context';

/** The first note of the next bar, where the last note of a bar goes on in it. */
function heldInto(desk: Desk, bar: number, last: LineNote): LineNote | null {
  const first = notesIn(desk, bar + 1)[0];
  const goesOn =
    last.tiedOn === true &&
    last.start + last.duration === lengthOf(desk, bar) &&
    first?.start === 0 &&
    samePitch(first.pitch, last.pitch);
  return goesOn ? first : null;
}

/**
 * What changes in the line when a note of a bar becomes another or goes: where it is tied, the other half of the tie
 * gets the same pitch, and a tie to nothing is let go.
 * @param notes the bar's notes after the change
 * @param was the note before, `is` the one after; null where it went
 */
export function retied(
  desk: Desk,
  bar: number,
  notes: readonly LineNote[],
  was: LineNote,
  is: LineNote | null,
): ReadonlyMap<number, readonly LineNote[]> {
  const changes = new Map<number, readonly LineNote[]>([[bar, notes]]);
  const sounds = is !== null && samePitch(is.pitch, was.pitch);
  if (sounds) return changes;
  let [note, at]: [LineNote, number] = [was, bar];
  for (let held = heldInto(desk, at, note); held !== null; held = heldInto(desk, at, note)) {
    at += 1;
    const first = held;
    if (is === null) break;
    changes.set(at, replaced(notesIn(desk, at), first, { ...freed(first), pitch: is.pitch }));
    note = first;
  }
  [note, at] = [was, bar];
  for (let last = leadingInto(desk, at, note); last !== null; last = leadingInto(desk, at, note)) {
    at -= 1;
    const tied = last;
    changes.set(
      at,
      replaced(notesIn(desk, at), tied, is === null ? untied(tied) : { ...freed(tied), pitch: is.pitch }),
    );
    if (is === null) break;
    note = tied;
  }
  return changes;
}

/** The last note of the bar before, where it goes on in a note at the beginning of this one. */
function leadingInto(desk: Desk, bar: number, first: LineNote): LineNote | null {
  const last = notesIn(desk, bar - 1).at(-1);
  return last !== undefined && first.start === 0 && heldInto(desk, bar - 1, last) === first ? last : null;
}

/** A bar with other notes: a tie into it that would lead to another pitch, or to silence, is let go. */
export function letGoInto(
  desk: Desk,
  bar: number,
  notes: readonly LineNote[],
): ReadonlyMap<number, readonly LineNote[]> {
  const changes = new Map([[bar, notes]]);
  const [was, is] = [notesIn(desk, bar)[0], notes[0]];
  const last = was === undefined ? null : leadingInto(desk, bar, was);
  const goesOn = last !== null && is?.start === 0 && samePitch(is.pitch, last.pitch);
  if (last !== null && !goesOn) changes.set(bar - 1, replaced(notesIn(desk, bar - 1), last, untied(last)));
  return changes;
}

/** Another pitch is played elsewhere on the neck. */
function freed({ pins: _, ...note }: LineNote): LineNote {
  return note;
}

const replaced = (notes: readonly LineNote[], one: LineNote, other: LineNote): readonly LineNote[] =>
  notes.map((note) => (note === one ? other : note));
