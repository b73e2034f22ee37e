/** A rhythm that is tapped: how its bar is counted in, and what the taps are read as. */
import { beatTicks, isCompound, isUneven, TICKS_PER_QUARTER, ticks, unitTicks } from '../base';
import { feelById, feelInWay, isSwung, swingRatio, unswung } from '../feel';
import { ticksPerSecond } from '../fretboard';
import { type Desk, lengthOf, metreAt, refused } from './context';
import { barAhead } from './passages';
import { inRhythm, type Struck } from './rhythms';
import type { Gesture } from './types';
import { onLine } from './write';

/** The bar at hand in time: how it is counted in, in eighths where its beats differ in length, and how its taps are read. */
export function barTime(desk: Desk): {
  readonly beats: number;
  readonly beatMs: number;
  readonly ticksPerMs: number;
} {
  const bar = barAhead(desk);
  const ticksPerMs = ticksPerSecond(desk.piece.tempo, desk.bars[0]?.metre ?? desk.piece.metre) / 1000;
  const metre = metreAt(desk, bar);
  const beat = isUneven(metre) ? unitTicks(metre) : beatTicks(metre);
  return {
    beats: Math.max(1, Math.round(lengthOf(desk, bar) / beat)),
    beatMs: beat / ticksPerMs,
    ticksPerMs,
  };
}

/** A tap, in ticks from the bar's beginning at the tempo in which it was tapped. */
export interface Tap {
  readonly down: number;
  readonly up: number;
}

const EIGHTH = 480;
const SIXTEENTH = 240;
const TRIPLET = 320;
/** A grid of triplets is believed where it fits this much better, since a hurried sixteenth looks like one (common practice, no source). */
const CLEARLY_BETTER = 0.6;
/** A note that is held for this share of the way to the next one was meant to last until then. */
const HELD = 0.6;
/** A tap so far before a quarter, in ticks, is on it. */
const EARLY = 80;
/** Taps that show a triplet within a bar that has others: one alone may be a hurried eighth (common practice, no source). */
const TRIPLET_TAPS = 2;

const onto = (tick: number, grid: number): number => Math.max(0, Math.round(tick / grid) * grid);

const miss = (tick: number, grid: number): number => Math.abs(tick - Math.round(tick / grid) * grid);

const missBy = (downs: readonly number[], grid: number): number =>
  downs.reduce((sum, down) => sum + miss(down, grid), 0);

/** Where a swung moment of a bar would be written; one before the bar is in the beat before. */
function straightened(tick: number, ratio: number): number {
  const beat = Math.floor(tick / TICKS_PER_QUARTER) * TICKS_PER_QUARTER;
  return beat + unswung(tick - beat, ratio);
}

/** Whether a tap lies between two quarters, on the grid of triplets. */
const isOffBeat = (down: number): boolean => onto(down, TRIPLET) % TICKS_PER_QUARTER !== 0;

/** Which stretches of the bar are triplets, from tick to tick: all of it, or a quarter or two among others. */
function tripletStretches(
  downs: readonly number[],
  straight: readonly number[],
  swings: boolean,
  length: number,
): readonly { readonly from: number; readonly to: number }[] {
  const quarterOf = (place: number): number => Math.floor(((downs[place] ?? 0) + EARLY) / TICKS_PER_QUARTER);
  // Three in a swung quarter are a triplet, though two sixteenths and an eighth would sound the same when swung.
  const steps = downs.map((_, place) => {
    const here = [...downs.keys()].filter((other) => quarterOf(other) === quarterOf(place)).length;
    return swings && here <= 3 ? EIGHTH : SIXTEENTH;
  });
  const isBetter = (places: readonly number[]) =>
    places.reduce((sum, place) => sum + miss(downs[place] ?? 0, TRIPLET), 0) <
    places.reduce((sum, place) => sum + miss(straight[place] ?? 0, steps[place] ?? SIXTEENTH), 0) *
      CLEARLY_BETTER;
  if (isBetter([...downs.keys()])) return [{ from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY }];
  const found: { from: number; to: number }[] = [];
  for (const quarters of [1, 2]) {
    for (let from = 0; from + quarters * TICKS_PER_QUARTER <= length; from += TICKS_PER_QUARTER) {
      const to = from + quarters * TICKS_PER_QUARTER;
      const within = [...downs.keys()].filter((place) => {
        const down = downs[place] ?? 0;
        return down >= from - EARLY && down < to - EARLY;
      });
      const shown = within.filter((place) => isOffBeat(downs[place] ?? 0));
      const taken = found.some((each) => each.from < to && from < each.to);
      if (!taken && shown.length >= TRIPLET_TAPS && isBetter(within))
        found.push({ from: from - EARLY, to: to - EARLY });
    }
  }
  return found;
}

/**
 * What was tapped as a rhythm of whole steps: sixteenths, or triplet eighths where they fit clearly better, in the bar
 * or in a quarter or two of it. Eighths that were tapped swung are eighths, as the feel writes them. Two taps on one
 * step are one.
 * @param length - of the bar in ticks
 * @param ratio - long eighth to short one in the feel; 1 where nothing is swung
 */
export function quantised(taps: readonly Tap[], length: number, ratio = 1): readonly Struck[] {
  const downs = taps.map(({ down }) => down);
  const swings = isSwung(ratio);
  const swung = swings ? downs.map((down) => straightened(down, ratio)) : downs;
  const isStraight = missBy(downs, SIXTEENTH) < missBy(swung, SIXTEENTH) * CLEARLY_BETTER;
  const straight = isStraight ? downs : swung;
  const triplets = tripletStretches(downs, straight, swings && !isStraight, length);
  const gridAt = (tick: number) =>
    triplets.some(({ from, to }) => tick >= from && tick < to) ? TRIPLET : SIXTEENTH;
  const steps = new Map<number, number>();
  taps.forEach(({ down, up }, place) => {
    const grid = gridAt(down);
    const start = onto(grid === TRIPLET ? down : (straight[place] ?? down), grid);
    if (start < length && !steps.has(start)) steps.set(start, up - down);
  });
  const starts = [...steps.keys()].sort((one, other) => one - other);
  return starts.map((start, index) => {
    const room = (starts[index + 1] ?? length) - start;
    const held = steps.get(start) ?? 0;
    const end = Math.max(start + gridAt(start), onto(start + held, gridAt(start + held)));
    return { start: ticks(start), duration: ticks(held >= room * HELD ? room : Math.min(room, end - start)) };
  });
}

/** Long eighth to short one in a bar, as the band plays it. */
function ratioIn({ piece, bars }: Desk, bar: number): number {
  const metre = bars[bar]?.metre ?? piece.metre;
  if (metre.unit === 8 || isCompound(metre)) return 1;
  return swingRatio(feelInWay(feelById(piece.feel), piece.metre, piece.playing.drumWay), piece.tempo);
}

/** The bar at hand in a rhythm that was tapped; taps that got no note of their own are told. */
export const tapped = (taps: readonly Tap[]): Gesture =>
  onLine((desk) => {
    const bar = barAhead(desk);
    const rhythm = quantised(taps, lengthOf(desk, bar), ratioIn(desk, bar));
    if (rhythm.length === 0) return refused(desk, 'nothing tapped');
    const done = inRhythm(desk, bar, rhythm, 'tapped');
    const leftOut = taps.length - rhythm.length;
    return done.did.kind === 'refused' || leftOut === 0 ? done : { ...done, did: { ...done.did, leftOut } };
  });
