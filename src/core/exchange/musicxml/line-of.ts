import { marksOf, midiOf, type NoteMarks, type Pins, type SpelledPitch, withMark } from '../../base';
import { TUNINGS } from '../../fretboard';
import type { FoundNote, FoundTuning } from '../reading/found';
import { CLOSE, type NoteReading, oneByOne } from '../reading/one-by-one';
import type { Remarks } from '../reading/remarks';
import type { Candidate } from './candidates';
import type { RawNote } from './raw';

const together = (one: RawNote, other: RawNote): boolean => Math.abs(one.start - other.start) < CLOSE;

/** The marks of a note whose later piece has some of its own, which are those of its end. */
const joinedMarks = (first: NoteMarks | null, later: NoteMarks | null): NoteMarks | null =>
  marksOf({ ...(later && { marks: later }) }).reduce<{ readonly marks?: NoteMarks }>(withMark, {
    ...(first && { marks: first }),
  }).marks ?? null;

/** Notes tied within a bar are one note. */
function withoutTies(notes: readonly RawNote[]): readonly RawNote[] {
  const line: RawNote[] = [];
  for (const note of notes) {
    const last = line.at(-1);
    const goesOn =
      last?.tieStart === true &&
      note.tieStop &&
      midiOf(last.pitch) === midiOf(note.pitch) &&
      Math.abs(last.start + last.duration - note.start) < CLOSE;
    if (goesOn) {
      const { tieStart, letRing } = note;
      line[line.length - 1] = {
        ...last,
        marks: joinedMarks(last.marks, note.marks),
        duration: note.start + note.duration - last.start,
        tieStart,
        letRing,
      };
    } else line.push(note);
  }
  return line;
}

/** Where the notes of the tab lie: string and fret by bar and start. */
function tabPlaces(candidate: Candidate, bar: number): (note: RawNote) => Pins {
  const tab = candidate.tab?.notes[bar] ?? [];
  return (note) => {
    const found = tab.find(
      (each) => together(each, note) && midiOf(each.pitch) % 12 === midiOf(note.pitch) % 12,
    );
    return found?.pins ?? {};
  };
}

/** The notes of a bar of a candidate as a line. */
export function lineOf(candidate: Candidate, bar: number, remarks: Remarks): readonly FoundNote[] {
  const placeOf = tabPlaces(candidate, bar);
  const reading: NoteReading<RawNote> = {
    spanOf: ({ start, duration, pitch }) => ({ start, end: start + duration, key: midiOf(pitch) }),
    cutOff: (note, end) => ({ ...note, duration: end - note.start }),
    barOf: () => bar,
  };
  return withoutTies(oneByOne(candidate.notes[bar] ?? [], candidate.end, reading, remarks)).map(
    (note): FoundNote => ({
      start: note.start,
      duration: note.duration,
      pitch: note.pitch,
      tiedOn: note.tieStart || note.letRing,
      // A damped note does not ring, whatever its tie says: it keeps its own mark.
      marks:
        note.letRing && note.marks?.damping === undefined
          ? joinedMarks(note.marks, { length: 'let ring' })
          : note.marks,
      pins: { ...placeOf(note), ...note.pins },
    }),
  );
}

type OpenStrings = readonly SpelledPitch[];

const shifted = (strings: OpenStrings, octaves: number): OpenStrings =>
  strings.map((pitch) => ({ ...pitch, octave: pitch.octave + octaves }));

/** How many of the notes with string and fret sound there on these strings. */
const agreeing = (strings: OpenStrings, notes: readonly FoundNote[]): number =>
  notes.filter(({ pitch, pins: { string, fret } }) => {
    const open = string === undefined ? undefined : strings[string - 1];
    return open !== undefined && fret !== undefined && midiOf(open) + fret === midiOf(pitch);
  }).length;

const FEWEST_STRINGS = 3;
const MOST_STRINGS = 8;

/** The strings as the tab names them, the highest first. */
function namedStrings({ facts }: Candidate): OpenStrings | null {
  const lines = [...(facts.tuning?.lines ?? [])].sort(([one], [other]) => other - one);
  return lines.length < FEWEST_STRINGS || lines.length > MOST_STRINGS
    ? null
    : lines.map(([, pitch]) => pitch);
}

/**
 * The tuning that the file names, in the octave in which its strings and frets sound the notes (files differ in
 * whether a tab is written as it sounds); where it names none, a usual one on which all strings and frets agree.
 * @returns null where there is nothing to go by
 */
export function tuningOf(candidate: Candidate, notes: readonly FoundNote[]): FoundTuning | null {
  const placed = notes.filter(({ pins }) => pins.string !== undefined && pins.fret !== undefined);
  const named = namedStrings(candidate.tab ?? candidate) ?? namedStrings(candidate);
  const tunings =
    named === null
      ? TUNINGS.map(({ openStrings }) => openStrings)
      : [0, -1, 1].map((octaves) => shifted(named, octaves));
  const inRange = tunings.filter((strings) => strings.every(({ octave }) => octave >= 0 && octave <= 6));
  const [first, ...others] = inRange;
  if (first === undefined || (named === null && placed.length === 0)) return null;
  const best = others.reduce(
    (found, strings) => (agreeing(strings, placed) > agreeing(found, placed) ? strings : found),
    first,
  );
  if (named === null && agreeing(best, placed) < placed.length) return null;
  return { openStrings: best };
}
