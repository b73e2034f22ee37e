/** Where a bar's notes go: an octave away, upside down, into the next chord. */
import { barName, type LineNote, midiOf, type SpelledPitch, ticks } from '../base';
import { untied } from './arrange';
import { at, type BarAt, harmonyOf, type Outcome } from './bar-at';
import { type Desk, harmonyAt, notesIn, playable } from './context';
import { type Harmony, nearest, octaveFrom, scaleStepFrom, spell } from './pitch';

/** The whole bar an octave up or down. */
export function octave(way: 1 | -1) {
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

/**
 * Upside down around its first note: as many steps of the scale down as it went up. Where the neck ends before the
 * turn does, the whole bar is turned an octave higher or lower, and says so.
 */
export function inverted(given: BarAt): Outcome {
  const axis = given.notes[0]?.pitch;
  if (axis === undefined) return { why: 'bar is silent' };
  if (given.notes.every(({ pitch }) => midiOf(pitch) === midiOf(axis))) return { why: 'turns on itself' };
  const turns = [
    { by: 0, detail: 'around its first note' },
    { by: 1, detail: 'around its first note, an octave up' },
    { by: -1, detail: 'around its first note, an octave down' },
  ] as const;
  for (const { by, detail } of turns) {
    const centre = by === 0 ? axis : octaveFrom(axis, by, given.desk.instrument);
    const notes = centre === null ? null : turnedAround(given, axis, centre);
    if (notes !== null) return { notes, detail };
  }
  return { why: 'off the instrument' };
}

/** The bar's notes as far below a centre as they lie above the axis, and the other way; null where one is off the neck. */
function turnedAround(given: BarAt, axis: SpelledPitch, centre: SpelledPitch): readonly LineNote[] | null {
  const turned = given.notes.map((note) => {
    const pitch = mirrored(given.desk, axis, centre, note.pitch, harmonyOf(given, note.start));
    return pitch === null ? null : midiOf(pitch) === midiOf(note.pitch) ? note : at(note, pitch);
  });
  return turned.every((note) => note !== null) ? turned : null;
}

function mirrored(
  desk: Desk,
  axis: SpelledPitch,
  centre: SpelledPitch,
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
  let turned: SpelledPitch | null = centre;
  for (let step = 0; step < steps && turned !== null; step += 1) {
    turned = scaleStepFrom(turned, way === 1 ? -1 : 1, harmony, desk.instrument);
  }
  return turned;
}

/**
 * The last note leads into the next bar's first: by a scale step or half step from below or above, or by its fifth
 * above or below. Asked again, the next of these ways is taken.
 */
export function leading(given: BarAt): Outcome {
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
  // Behind the last bar the line begins again.
  const back = next === 0 ? `back to ${barName(desk.bars[next]?.number ?? 1)} ` : '';
  return { notes: [...kept, lead], detail: `${back}${way.words}` };
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
