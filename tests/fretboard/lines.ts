import { midiNumber, ticks } from '../../src/core/base';
import type { FingeredNote, NoteToFinger } from '../../src/core/fretboard';

const EIGHTH = 480;

/** MIDI numbers as a line of eighths (or of another length), without gaps. */
export const run = (midis: readonly number[], length = EIGHTH): NoteToFinger[] =>
  midis.map((midi, index) => ({
    start: ticks(index * length),
    duration: ticks(length),
    midi: midiNumber(midi),
  }));

const STRINGS = '?GDAE';

/** `A3.2 A5.4`: string, fret and finger of each note on a four-string bass. */
export const written = (notes: readonly (FingeredNote | null)[]): string =>
  notes.map((note) => (note === null ? '-' : `${STRINGS[note.string]}${note.fret}.${note.finger}`)).join(' ');
