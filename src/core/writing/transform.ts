import { type LineNote, midiOf, pitchClassOf, type SpelledName, type SpelledPitch, ticks } from '../base';
import { untied } from './arrange';
import { beatOf, type Desk, harmonyAt, lengthOf, notesIn, playable, refused, rewritten } from './context';
import { type Harmony, nearest, octaveFrom, scaleStepFrom, spell } from './pitch';
import type { DidKind, Done, Gesture, Refusal } from './types';
import { onLine } from './write';

/** What a bar can be asked to become. */
export const BAR_WISHES = [
  'easier',
  'busier',
  'sparser',
  'silent on one',
  'an octave up',
  'an octave down',
  'inverted',
  'leading to the next chord',
] as const;
export type BarWish = (typeof BAR_WISHES)[number];

interface BarAt {
  readonly desk: Desk;
  readonly bar: number;
  readonly notes: readonly LineNote[];
  readonly length: number;
  readonly beat: number;
}

/** What becomes of the notes, and what is said about it; or why nothing does. */
type Outcome = { readonly notes: readonly LineNote[]; readonly detail: string } | { readonly why: Refusal };

const harmonyOf = ({ desk, bar }: BarAt, tick: number): Harmony => harmonyAt(desk, { bar, tick });

const sounds = (one: SpelledName, other: SpelledName): boolean => pitchClassOf(one) === pitchClassOf(other);

/** Another pitch in the same place. */
const at = (note: LineNote, pitch: SpelledPitch): LineNote => {
  const { pins: _, ...free } = note;
  return { ...untied(free), pitch };
};

/** The nearest of some names to a pitch, on the instrument. */
function nearestOf(desk: Desk, names: readonly SpelledName[], to: SpelledPitch): SpelledPitch | null {
  const aim = midiOf(to);
  return names.reduce<SpelledPitch | null>((best, name) => {
    const pitch = nearest(name, aim, desk.instrument);
    if (pitch === null) return best;
    return best === null || Math.abs(midiOf(pitch) - aim) < Math.abs(midiOf(best) - aim) ? pitch : best;
  }, null);
}

/** How weak the place of a note is in its bar: 0 the first beat, then half bar, beat, eighth, and what lies between. */
function weakness({ length, beat }: BarAt, tick: number): number {
  if (tick === 0) return 0;
  if (tick * 2 === length) return 1;
  if (tick % beat === 0) return 2;
  return (tick * 2) % beat === 0 ? 3 : 4;
}

/**
 * A step easier, in the order in which a student finds lines hard (common practice, no source): first the notes off
 * the beat go, then notes outside the chord become its nearest tone, then only root and fifth stay, then the root.
 */
function easier(given: BarAt): Outcome {
  const { desk, notes, beat } = given;
  const onBeats = notes.filter(({ start }) => start % beat === 0);
  if (onBeats.length > 0 && onBeats.length < notes.length) {
    return {
      notes: onBeats.map((note, index) => untilNext(given, note, onBeats[index + 1])),
      detail: 'on the beats',
    };
  }
  const within = (names: (harmony: Harmony) => readonly SpelledName[], detail: string): Outcome | null => {
    const changed = notes.map((note) => {
      const allowed = names(harmonyOf(given, note.start));
      if (allowed.length === 0 || allowed.some((name) => sounds(name, note.pitch))) return note;
      const pitch = nearestOf(desk, allowed, note.pitch);
      return pitch === null ? note : at(note, pitch);
    });
    return changed.some((note, index) => note !== notes[index]) ? { notes: changed, detail } : null;
  };
  return (
    within(({ chord }) => chord?.tones.map(({ name }) => name) ?? [], 'chord tones only') ??
    within(({ chord }) => rootAndFifth(chord), 'root and fifth only') ??
    within(({ chord }) => (chord === null ? [] : [chord.bass]), 'roots only') ?? { why: 'easy already' }
  );
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

/** The longest note is struck twice: the second time it is on its way to the next note, or it repeats. */
function busier(given: BarAt): Outcome {
  const { desk, bar, notes } = given;
  const longest = notes.reduce((best, note) => (note.duration > best.duration ? note : best));
  if (longest.duration < 480) return { why: 'busy already' };
  const half = longest.duration % 480 === 0 ? longest.duration / 2 : Math.floor(longest.duration / 480) * 240;
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
function sparser(given: BarAt): Outcome {
  const { notes } = given;
  if (notes.length < 2) return { why: 'sparse already' };
  const weakest = notes.reduce((best, note) =>
    weakness(given, note.start) >= weakness(given, best.start) ? note : best,
  );
  return { notes: notes.filter((note) => note !== weakest), detail: 'one note less' };
}

/** Beat one becomes silent; what comes first then is the root, so that the chord is heard within two beats. */
function silentOnOne(given: BarAt): Outcome {
  const { desk, notes, beat, length } = given;
  if ((notes[0]?.start ?? beat) >= beat) return { why: 'silent on one already' };
  const later = notes.filter(({ start }) => start >= beat);
  const first = later[0];
  const { chord } = harmonyOf(given, first?.start ?? beat);
  const opening = notes[0];
  if (opening === undefined) return { why: 'bar is silent' };
  const pitch = (chord && nearest(chord.bass, midiOf(opening.pitch), desk.instrument)) ?? opening.pitch;
  const catches = first !== undefined && first.start < 2 * beat;
  if (catches) {
    const root = sounds(first.pitch, pitch) ? first : at(first, pitch);
    return { notes: [root, ...later.slice(1)], detail: 'the root comes after it' };
  }
  const end = Math.min(first?.start ?? length, 2 * beat);
  const caught: LineNote = { start: ticks(beat), duration: ticks(Math.max(240, end - beat)), pitch };
  return { notes: [caught, ...later], detail: 'the root comes on two' };
}

function octave(way: 1 | -1) {
  return ({ desk, notes }: BarAt): Outcome => {
    const changed = notes.map((note) => {
      const pitch = octaveFrom(note.pitch, way, desk.instrument);
      return pitch === null ? null : at(note, pitch);
    });
    return changed.every((note) => note !== null)
      ? { notes: changed, detail: way === 1 ? 'up' : 'down' }
      : { why: 'off the instrument' };
  };
}

/** Upside down around its first note: as many steps of the scale down as it went up. */
function inverted(given: BarAt): Outcome {
  const { desk, notes } = given;
  const axis = notes[0]?.pitch;
  if (axis === undefined) return { why: 'bar is silent' };
  const turned = notes.map((note) => {
    const harmony = harmonyOf(given, note.start);
    const pitch = mirrored(desk, axis, note.pitch, harmony);
    return pitch === null ? null : midiOf(pitch) === midiOf(note.pitch) ? note : at(note, pitch);
  });
  if (!turned.every((note) => note !== null)) return { why: 'off the instrument' };
  return turned.some((note, index) => note !== notes[index])
    ? { notes: turned, detail: 'around its first note' }
    : { why: 'turns on itself' };
}

function mirrored(
  desk: Desk,
  axis: SpelledPitch,
  pitch: SpelledPitch,
  harmony: Harmony,
): SpelledPitch | null {
  const way = midiOf(pitch) >= midiOf(axis) ? 1 : -1;
  let steps = 0;
  for (
    let at: SpelledPitch | null = axis;
    at !== null && (midiOf(pitch) - midiOf(at)) * way > 0;
    steps += 1
  ) {
    at = scaleStepFrom(at, way, harmony, desk.instrument);
  }
  let turned: SpelledPitch | null = axis;
  for (let step = 0; step < steps && turned !== null; step += 1) {
    turned = scaleStepFrom(turned, way === 1 ? -1 : 1, harmony, desk.instrument);
  }
  // Where the neck ends, the same step an octave higher keeps the turn's notes.
  return turned ?? nearestAbove(desk, axis, steps, harmony);
}

function nearestAbove(desk: Desk, axis: SpelledPitch, steps: number, harmony: Harmony): SpelledPitch | null {
  const up = octaveFrom(axis, 1, desk.instrument);
  let turned = up;
  for (let step = 0; step < steps && turned !== null; step += 1) {
    turned = scaleStepFrom(turned, -1, harmony, desk.instrument);
  }
  return turned;
}

/**
 * The last note leads into the next bar's first: by a scale step or half step from below or above, or by its fifth
 * above or below. Asked again, the next of these ways is taken.
 */
function leading(given: BarAt): Outcome {
  const { desk, bar, notes, length, beat } = given;
  const next = bar + 1 < desk.piece.bars.length ? bar + 1 : 0;
  const opening = notesIn(desk, next)[0];
  const { chord } = harmonyAt(desk, { bar: next, tick: opening?.start ?? 0 });
  const last = notes.at(-1);
  if (last === undefined) return { why: 'bar is silent' };
  const aim =
    opening?.pitch ?? (chord === null ? null : nearest(chord.bass, midiOf(last.pitch), desk.instrument));
  if (aim === null) return { why: 'no chord' };
  const own = harmonyOf(given, length - 1);
  const ways = [
    { pitch: scaleStepFrom(aim, -1, own, desk.instrument), words: 'from below' },
    { pitch: scaleStepFrom(aim, 1, own, desk.instrument), words: 'from above' },
    { pitch: halfAway(desk, aim, -1, own), words: 'by a half step from below' },
    { pitch: halfAway(desk, aim, 1, own), words: 'by a half step from above' },
  ].flatMap(({ pitch, words }) => (pitch === null ? [] : [{ pitch, words }]));
  const now = ways.findIndex(({ pitch }) => midiOf(pitch) === midiOf(last.pitch));
  const way = ways.slice(now + 1).find(({ pitch }) => midiOf(pitch) !== midiOf(last.pitch)) ?? ways[0];
  if (way === undefined) return { why: 'off the instrument' };
  const late = last.start >= length - beat;
  const lead: LineNote = late
    ? at(last, way.pitch)
    : { start: ticks(length - beat), duration: ticks(beat), pitch: way.pitch };
  const kept = late ? notes.slice(0, -1) : notes.map((note) => shortenedTo(note, length - beat));
  return { notes: [...kept, lead], detail: way.words };
}

/** The half step on one side of a note, where the scale has another step there; spelled on its way to the note. */
function halfAway(desk: Desk, aim: SpelledPitch, way: 1 | -1, harmony: Harmony): SpelledPitch | null {
  const midi = midiOf(aim) + way;
  const step = scaleStepFrom(aim, way, harmony, desk.instrument);
  if (!playable(desk.instrument, midi) || (step !== null && midiOf(step) === midi)) return null;
  return spell(midi, harmony, way === -1 ? 'up' : 'down');
}

const shortenedTo = (note: LineNote, end: number): LineNote =>
  note.start + note.duration <= end ? note : { ...untied(note), duration: ticks(end - note.start) };

const WISHES: Readonly<
  Record<BarWish, { readonly kind: DidKind; readonly make: (given: BarAt) => Outcome }>
> = {
  easier: { kind: 'easier', make: easier },
  busier: { kind: 'busier', make: busier },
  sparser: { kind: 'sparser', make: sparser },
  'silent on one': { kind: 'silent on one', make: silentOnOne },
  'an octave up': { kind: 'octave', make: octave(1) },
  'an octave down': { kind: 'octave', make: octave(-1) },
  inverted: { kind: 'inverted', make: inverted },
  'leading to the next chord': { kind: 'leading', make: leading },
};

/** Makes the bar at hand what is asked; it says what it did. */
export const wish = (what: BarWish): Gesture =>
  onLine((desk): Done => {
    const { bar } = desk.pencil;
    const notes = notesIn(desk, bar);
    const length = lengthOf(desk, bar);
    if (notes.length === 0) return refused(desk, 'bar is silent');
    // What is too much is mended first: a wish is about what the bar plays.
    if (notes.some((note) => note.start + note.duration > length))
      return refused(desk, 'too much in the bar');
    const { kind, make } = WISHES[what];
    const outcome = make({ desk, bar, notes, length, beat: beatOf(desk, bar) });
    if ('why' in outcome) return refused(desk, outcome.why);
    const tick = outcome.notes[0]?.start ?? 0;
    return rewritten(
      desk,
      new Map([[bar, outcome.notes]]),
      { bar, tick, next: null, from: null },
      {
        kind,
        bars: [bar],
        detail: outcome.detail,
      },
    );
  });
