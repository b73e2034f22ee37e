import type { HeardLine } from '../hearing';
import { hearLine, struck } from '../hearing';
import { type BarModel, isStrongBeat, type LineModel } from '../model';
import { modelOf } from '../read-request';
import type { Tone } from '../tones';
import type { LineNotes, LineRequest } from '../types';

/** How far a line lies from another one over the same chart, each from 0 (the same) to 1. */
export interface LineDistance {
  /** Of the places where either strikes a note, the share where only one of them does. */
  readonly rhythm: number;
  /**
   * Of all pairs of places in a bar, the share that the two lines move between otherwise: up, down or not at all. It is
   * one less the similarity of two contours by their comparison matrices (Marvin and Laprade, Journal of Music Theory
   * 31, 1987; from memory), each contour read at the places of both.
   */
  readonly contour: number;
  /** Of the strong beats, the share that sounds otherwise; the same note in another octave counts half. */
  readonly strongBeats: number;
  /** The mean of the three (ours). */
  readonly whole: number;
}

const NEAR: LineDistance = { rhythm: 0, contour: 0, strongBeats: 0, whole: 0 };

const startsOf = (tones: readonly Tone[]): readonly number[] => struck(tones).map(({ start }) => start);

/** The note that sounded last at a tick, or the first where none did. */
const lastAt = (tones: readonly Tone[], tick: number): Tone | undefined =>
  tones.findLast(({ start }) => start <= tick) ?? tones[0];

function rhythmApart(one: readonly Tone[], other: readonly Tone[]): number {
  const [here, there] = [new Set(startsOf(one)), new Set(startsOf(other))];
  const all = new Set([...here, ...there]);
  const shared = [...here].filter((start) => there.has(start)).length;
  return all.size === 0 ? 0 : 1 - shared / all.size;
}

function contourApart(one: readonly Tone[], other: readonly Tone[]): number {
  if (one.length === 0 || other.length === 0) return one.length === other.length ? 0 : 1;
  const places = [...new Set([...one, ...other].map(({ start }) => start))].sort((a, b) => a - b);
  const heights = (tones: readonly Tone[]) => places.map((tick) => lastAt(tones, tick)?.midi ?? 0);
  const [here, there] = [heights(one), heights(other)];
  let pairs = 0;
  let otherwise = 0;
  for (let from = 0; from < places.length; from += 1) {
    for (let to = from + 1; to < places.length; to += 1) {
      const way = (line: readonly number[]) => Math.sign((line[to] ?? 0) - (line[from] ?? 0));
      pairs += 1;
      if (way(here) !== way(there)) otherwise += 1;
    }
  }
  return pairs === 0 ? 0 : otherwise / pairs;
}

/** What sounds at a tick, as a MIDI number; null for silence. */
const soundingAt = (tones: readonly Tone[], tick: number): number | null =>
  tones.find(({ start, duration }) => start <= tick && tick < start + duration)?.midi ?? null;

function strongBeatsApart(bar: BarModel, one: readonly Tone[], other: readonly Tone[]): number {
  let beats = 0;
  let apart = 0;
  for (let tick = 0; tick < bar.ticks; tick += bar.beat) {
    if (!isStrongBeat(bar, tick)) continue;
    const [here, there] = [soundingAt(one, tick), soundingAt(other, tick)];
    beats += 1;
    if (here === there) continue;
    apart += here !== null && there !== null && (here - there) % 12 === 0 ? 0.5 : 1;
  }
  return beats === 0 ? 0 : apart / beats;
}

/** How far a bar as one line has it lies from the other line's. */
export function barDistance(bar: BarModel, one: readonly Tone[], other: readonly Tone[]): LineDistance {
  const [rhythm, contour] = [rhythmApart(one, other), contourApart(one, other)];
  const strongBeats = strongBeatsApart(bar, one, other);
  return { rhythm, contour, strongBeats, whole: (rhythm + contour + strongBeats) / 3 };
}

/** The mean over the written bars in which either line has notes. */
export function heardDistance(model: LineModel, one: HeardLine, other: HeardLine): LineDistance {
  const bars = model.bars.filter(({ index }) => (one[index]?.length ?? 0) + (other[index]?.length ?? 0) > 0);
  const apart = bars.map((bar) => barDistance(bar, one[bar.index] ?? [], other[bar.index] ?? []));
  const mean = (of: keyof LineDistance) =>
    apart.reduce((sum, each) => sum + each[of], 0) / Math.max(1, apart.length);
  return apart.length === 0
    ? NEAR
    : {
        rhythm: mean('rhythm'),
        contour: mean('contour'),
        strongBeats: mean('strongBeats'),
        whole: mean('whole'),
      };
}

/** How far two lines over the chart of a request lie apart. */
export function lineDistance(request: LineRequest, one: LineNotes, other: LineNotes): LineDistance {
  const model = modelOf(request);
  return heardDistance(model, hearLine(model, one), hearLine(model, other));
}
