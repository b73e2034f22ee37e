import { beatAt, beatsInBar, beatsOf, type LineNote, midiOf, withMark } from '../base';
import { type BassStress, bassStressOf } from '../feel';
import { type BarModel, type LineModel, stretchAt } from './model';
import type { Level } from './types';

/** The lowest levels whose lines ask for more than pitch and length: off-beats come with 3, sixteenths with 4 (ours). */
const ACCENTS_FROM: Level = 3;
const GHOSTS_FROM: Level = 4;

const endOf = ({ start, duration }: LineNote): number => start + duration;

/** Whether a bar is the first of a pair, counted from where its section begins; a pickup is not counted. */
function opensPair({ bars }: LineModel, { index }: BarModel): boolean {
  const opening = bars.findLastIndex((bar) => bar.index <= index && bar.opensSection);
  const first = bars[Math.max(0, opening)];
  return (index - (first?.index ?? 0) - (first?.pickup === true ? 1 : 0)) % 2 === 0;
}

/** The one note of a bar to lean on; null where none is. */
function leanedOn(accent: BassStress['accent'], bar: BarModel, notes: readonly LineNote[]): LineNote | null {
  if (accent === null) return null;
  if (accent === 'pushes') {
    const pushed = notes.find((note) => {
      const beat = beatAt(bar.metre, note.start);
      return note.start > beat.start && endOf(note) > beat.start + beat.length && note.tiedOn !== true;
    });
    return pushed ?? null;
  }
  if (accent > 0 && beatsInBar(bar.metre) !== 4) return null;
  const place = beatsOf(bar.metre)[accent]?.start;
  return notes.find(({ start }) => start === place) ?? null;
}

/** Whether a note is short and lies where the feel's ghost notes do. */
function liesBetween(ghosts: BassStress['ghosts'], { metre }: BarModel, note: LineNote): boolean {
  const beat = beatAt(metre, note.start);
  const half = beat.length / 2;
  const within = note.start - beat.start;
  return ghosts === 'sixteenths'
    ? within % half !== 0 && note.duration <= half / 2
    : within === half && note.duration <= half;
}

/** Notes of which nothing is lost when they have no pitch: one that its chord has had in this bar, on the way to another. */
function ghostsAmong(ghosts: BassStress['ghosts'], bar: BarModel, notes: readonly LineNote[]) {
  const dead = new Set<LineNote>();
  if (ghosts === null) return dead;
  for (const [index, note] of notes.entries()) {
    const before = notes.slice(0, index);
    const previous = before.at(-1);
    const stretch = stretchAt(bar, note.start);
    const known = before.some(
      (one) =>
        !dead.has(one) && midiOf(one.pitch) === midiOf(note.pitch) && one.start >= (stretch?.start ?? 0),
    );
    if (previous === undefined || dead.has(previous) || index === notes.length - 1) continue;
    if (known && note.tiedOn !== true && liesBetween(ghosts, bar, note)) dead.add(note);
  }
  return dead;
}

/**
 * The notes of a bar with the accents and ghost notes that the feel likes and the level allows: one accent in every second
 * bar at most, ghosts on short repeated notes. Pitches, rhythms and whatever is marked already stay; the same notes in the
 * same bar are always marked alike, so that an idea and the line agree.
 */
export function stressed(model: LineModel, bar: BarModel, notes: readonly LineNote[]): readonly LineNote[] {
  const { level, feel } = model.request;
  if (level < ACCENTS_FROM || bar.pickup || notes.some(({ marks }) => marks !== undefined)) return notes;
  const { accent, ghosts } = bassStressOf(feel.id);
  const loud = opensPair(model, bar) ? leanedOn(accent, bar, notes) : null;
  const dead = ghostsAmong(level < GHOSTS_FROM ? null : ghosts, bar, notes);
  return notes.map((note) =>
    note === loud ? withMark(note, 'accent') : dead.has(note) ? withMark(note, 'ghost') : note,
  );
}
