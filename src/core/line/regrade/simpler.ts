import type { LineNote } from '../../base';
import { notesPerSecond, type Onset, onsetLevelIn } from '../level';
import { type BarModel, isStrongBeat, type LineModel } from '../model';

/** A note of a bar's rhythm as a simpler rhythm has it. */
export interface PlacedOnset extends Onset {
  /** Index of the note in the bar that it comes from. */
  readonly from: number;
}

/** A simpler rhythm, and how much of the bar's own it gives up. */
export interface SimplerRhythm {
  readonly onsets: readonly PlacedOnset[];
  readonly cost: number;
}

/** How much is lost with a note, by where it stands: strong beat, beat, eighth, and what lies between (ours). */
function weightAt({ metre, ...bar }: BarModel, tick: number): number {
  if (isStrongBeat({ metre, ...bar }, tick)) return 4;
  if (tick % bar.beat === 0) return 2;
  return (tick * 2) % bar.beat === 0 ? 1 : 0.7;
}

/** What it costs to move a note to a beat, and to give it another length, beside leaving it out (ours). */
const MOVED = 0.6;
const LENGTHENED = 0.08;
const SHORTENED = 0.05;

/** Rhythms that are followed up with the same last note, and that are offered in the end. */
const FOLLOWED = 3;
const OFFERED = 10;

interface Begun extends SimplerRhythm {
  readonly last: PlacedOnset | undefined;
}

/** Where a note can stand in a simpler rhythm: where it is, or on the beats around it. */
function placesOf(bar: BarModel, start: number): readonly number[] {
  const beat = start - (start % bar.beat);
  if (beat === start) return [start];
  return [start, beat, ...(beat + bar.beat < bar.ticks ? [beat + bar.beat] : [])];
}

/** Lengths that a note can have from a place: its own, up to a later note, what fills the beat, and plain values. */
function lengthsOf(bar: BarModel, start: number, own: number, later: readonly number[]): readonly number[] {
  const toBeat = bar.beat - (start % bar.beat);
  const all = [
    own,
    ...later.map((each) => each - start),
    toBeat,
    bar.beat,
    2 * bar.beat,
    toBeat / 2,
    bar.beat / 2,
  ];
  return [...new Set(all)].filter((length) => length > 0 && start + length <= bar.ticks);
}

const costOfLength = (bar: BarModel, own: number, length: number): number =>
  length === own ? 0 : ((length > own ? LENGTHENED : SHORTENED) * Math.abs(length - own)) / bar.beat;

/**
 * The rhythms of a level that are nearest to a bar's own, the nearest first: notes are left out, the weakest first, moved
 * to the beat, or given another length. The bar's own rhythm is among them where the level has it. Exact but for the
 * number of rhythms that are followed up at once.
 */
export function simplerRhythms(
  model: LineModel,
  bar: BarModel,
  notes: readonly LineNote[],
): readonly SimplerRhythm[] {
  const { level, feel, tempo } = model.request;
  const fits = (onset: Onset, before: Onset | undefined) =>
    onsetLevelIn(onset, before, bar.metre, feel.bassRole) <= level;
  let begun: readonly Begun[] = [{ onsets: [], cost: 0, last: undefined }];
  for (const [from, note] of notes.entries()) {
    const weight = weightAt(bar, note.start);
    const later = [...notes.slice(from + 1).map((each) => Number(each.start)), bar.ticks];
    const ways = placesOf(bar, note.start).flatMap((start) =>
      lengthsOf(bar, start, note.duration, later).map((duration) => ({
        onset: { start, duration, from },
        cost: (start === note.start ? 0 : MOVED * weight) + costOfLength(bar, note.duration, duration),
      })),
    );
    const grown = begun.flatMap((one): readonly Begun[] => {
      const end = one.last === undefined ? 0 : one.last.start + one.last.duration;
      const taken = ways
        .filter(({ onset }) => onset.start >= end && fits(onset, one.last))
        .map(({ onset, cost }) => ({ onsets: [...one.onsets, onset], cost: one.cost + cost, last: onset }));
      return [...taken, { ...one, cost: one.cost + weight }];
    });
    begun = nearest(grown);
  }
  const most = (one: Begun) =>
    notesPerSecond(one.onsets.length, bar.metre, tempo) <= model.limits.notesPerSecond;
  return begun
    .filter((one) => one.onsets.length > 0 && most(one))
    .sort((one, other) => one.cost - other.cost)
    .slice(0, OFFERED)
    .map(({ onsets, cost }) => ({ onsets, cost }));
}

/** The best few of those that go on from the same note in the same way with as many notes. */
function nearest(all: readonly Begun[]): readonly Begun[] {
  const groups = new Map<string, Begun[]>();
  for (const one of [...all].sort((a, b) => a.cost - b.cost)) {
    const id = `${one.last?.start ?? -1} ${one.last?.duration ?? 0} ${one.onsets.length}`;
    const group = groups.get(id);
    if (group === undefined) groups.set(id, [one]);
    else if (group.length < FOLLOWED) group.push(one);
  }
  return [...groups.values()].flat();
}
