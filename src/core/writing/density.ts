/** How much happens in a bar: easier, busier, sparser, silent on one. */
import { counted, type LineNote, midiOf, type SpelledName, ticks } from '../base';
import { untied } from './arrange';
import { at, type BarAt, harmonyOf, nearestOf, type Outcome, sounds } from './bar-at';
import { notesIn } from './context';
import { type Harmony, nearest, scaleStepFrom } from './pitch';

/** Whether a beat begins at a tick; in an uneven bar the last beat takes what is left over. */
const isOnBeat = ({ length, beat }: BarAt, tick: number): boolean =>
  tick === 0 || (tick % beat === 0 && tick + beat <= length);

/** How weak the place of a note is in its bar: 0 the first beat, then half bar, beat, eighth, and what lies between. */
function weakness(bar: BarAt, tick: number): number {
  const { length, beat } = bar;
  if (tick === 0) return 0;
  if (tick * 2 === length) return 1;
  if (isOnBeat(bar, tick)) return 2;
  return (tick * 2) % beat === 0 ? 3 : 4;
}

/**
 * A step easier, in the order in which a student finds lines hard (common practice, no source): first the notes off
 * the beat go, or come onto it where there are no others, then notes outside the chord become its nearest tone, then
 * only root and fifth stay, then the root; over a slash chord its bass stands for the root.
 */
export function easier(given: BarAt): Outcome {
  const { desk, notes } = given;
  const onBeats = notes.filter(({ start }) => isOnBeat(given, start));
  if (onBeats.length === 0) return ontoBeats(given);
  if (onBeats.length < notes.length) {
    return {
      notes: onBeats.map((note, index) => untilNext(given, note, onBeats[index + 1])),
      detail: `on the beats, ${fewer(notes.length - onBeats.length)}`,
    };
  }
  const chords = notes.flatMap(({ start }) => harmonyOf(given, start).chord ?? []);
  if (chords.length < notes.length) return { why: 'easy without chords' };
  const within = (names: (harmony: Harmony) => readonly SpelledName[], detail: string): Outcome | null => {
    const changed = notes.map((note) => {
      const allowed = names(harmonyOf(given, note.start));
      if (allowed.some((name) => sounds(name, note.pitch))) return note;
      const pitch = nearestOf(desk, allowed, note.pitch);
      return pitch === null ? note : at(note, pitch);
    });
    return changed.some((note, index) => note !== notes[index]) ? { notes: changed, detail } : null;
  };
  const slash = chords.some((chord) => !sounds(chord.bass, chord.root));
  return (
    within(tonesOf, 'chord tones only') ??
    within(
      ({ chord }) => rootAndFifth(chord),
      slash ? 'bass notes and fifths only' : 'root and fifth only',
    ) ??
    within(({ chord }) => (chord === null ? [] : [chord.bass]), slash ? 'bass notes only' : 'roots only') ?? {
      why: 'easy already',
    }
  );
}

/** Over a slash chord its bass is one of them. */
const tonesOf = ({ chord }: Harmony): readonly SpelledName[] =>
  chord === null ? [] : [chord.bass, ...chord.tones.map(({ name }) => name)];

const fewer = (count: number): string => `${counted(count, 'note')} fewer`;

/** Where every note is off the beat, the first of each beat comes onto it, and the others go. */
function ontoBeats(given: BarAt): Outcome {
  const { notes, length, beat } = given;
  const beats = new Map<number, LineNote>();
  for (const note of notes) {
    const within = Math.floor(note.start / beat) * beat;
    // What is left over behind the last whole beat belongs to it.
    const start = within + beat <= length ? within : Math.max(0, within - beat);
    if (!beats.has(start)) beats.set(start, note);
  }
  const moved = [...beats].map(([start, note]) => ({ ...note, start: ticks(start) }));
  const gone = notes.length - moved.length;
  return {
    notes: moved.map((note, index) => untilNext(given, note, moved[index + 1])),
    detail: gone === 0 ? 'on the beats' : `on the beats, ${fewer(gone)}`,
  };
}

const rootAndFifth = (chord: Harmony['chord']): readonly SpelledName[] =>
  chord === null
    ? []
    : [chord.bass, ...chord.tones.filter(({ degree }) => degree.step === 5).map(({ name }) => name)];

/** As long as it was, or longer up to a beat where the note behind it went. */
function untilNext({ length, beat }: BarAt, note: LineNote, next: LineNote | undefined): LineNote {
  const room = (next?.start ?? length) - note.start;
  return { ...untied(note), duration: ticks(Math.min(room, Math.max(note.duration, beat))) };
}

/** When the second of two notes begins in the time of one, on the grid that the note is on: sixteenths, or triplet eighths. */
const halfOf = (duration: number): number => {
  const grid = duration % 240 !== 0 && duration % 320 === 0 ? 320 : 240;
  return duration % (2 * grid) === 0 ? duration / 2 : Math.floor(duration / (2 * grid)) * grid;
};

/** The longest note is struck twice: the second time it is on its way to the next note, or it repeats. */
export function busier(given: BarAt): Outcome {
  const { desk, bar, notes } = given;
  const longest = notes.reduce((best, note) => (note.duration > best.duration ? note : best));
  if (longest.duration < 480) return { why: 'busy already' };
  const half = halfOf(longest.duration);
  const following = notes.find(({ start }) => start > longest.start) ?? notesIn(desk, bar + 1)[0];
  const harmony = harmonyOf(given, longest.start + half);
  const aim = following === undefined ? midiOf(longest.pitch) : midiOf(following.pitch);
  const way = aim >= midiOf(longest.pitch) ? 1 : -1;
  const step = scaleStepFrom(longest.pitch, way, harmony, desk.instrument);
  const apart = Math.abs(aim - midiOf(longest.pitch));
  const between =
    harmony.chord === null || apart < 3
      ? longest.pitch
      : apart <= 5 && half <= 480
        ? (step ?? longest.pitch)
        : (nearestOf(
            desk,
            harmony.chord.tones.map(({ name }) => name).filter((name) => !sounds(name, longest.pitch)),
            longest.pitch,
          ) ?? longest.pitch);
  const second: LineNote = {
    start: ticks(longest.start + half),
    duration: ticks(longest.duration - half),
    pitch: between,
    ...(longest.tiedOn === true && midiOf(between) === midiOf(longest.pitch) ? { tiedOn: true } : {}),
  };
  return {
    notes: notes.flatMap((note) =>
      note === longest ? [{ ...untied(note), duration: ticks(half) }, second] : [note],
    ),
    detail: 'one more note',
  };
}

/** The note in the weakest place becomes silence; the first of the bar is the last to go. */
export function sparser(given: BarAt): Outcome {
  const { notes } = given;
  if (notes.length < 2) return { why: 'sparse already' };
  const weakest = notes.reduce((best, note) =>
    weakness(given, note.start) >= weakness(given, best.start) ? note : best,
  );
  return { notes: notes.filter((note) => note !== weakest), detail: 'one note less' };
}

/**
 * Beat one becomes silent; what comes first then is the root, or the bass of a slash chord, so that the chord is heard
 * within two beats.
 */
export function silentOnOne(given: BarAt): Outcome {
  const { desk, notes, beat, length } = given;
  const opening = notes[0];
  if (opening === undefined) return { why: 'bar is silent' };
  if (opening.start >= beat) return { why: 'silent on one already' };
  if (length <= beat) return { why: 'one beat only' };
  const later = notes.filter(({ start }) => start >= beat);
  const first = later[0];
  const catches = first !== undefined && first.start < 2 * beat;
  const { chord } = harmonyOf(given, catches ? first.start : beat);
  const pitch = (chord && nearest(chord.bass, midiOf(opening.pitch), desk.instrument)) ?? opening.pitch;
  const what = chord === null ? 'its note' : sounds(chord.bass, chord.root) ? 'the root' : 'the bass note';
  if (catches) {
    // Where no chord sounds, no note is its root: the notes that follow stay what they are.
    if (chord === null) return { notes: later, detail: 'it begins after it' };
    const root = sounds(first.pitch, pitch) ? first : at(first, pitch);
    return { notes: [root, ...later.slice(1)], detail: `${what} comes after it` };
  }
  const end = Math.min(first?.start ?? length, 2 * beat);
  const caught: LineNote = { start: ticks(beat), duration: ticks(end - beat), pitch };
  return { notes: [caught, ...later], detail: `${what} comes on two` };
}
