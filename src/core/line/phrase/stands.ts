import { fret, rememberedFor } from '../../base';
import { type HandSettings, handSpan, type UnderHand, underHand } from '../../fretboard';
import type { LineModel } from '../model';
import type { Node } from './nodes';
import type { Pool } from './pools';
import type { Segment } from './segments';
import { tasteOf } from './taste';

/* Where the hand stands while a line is played: a plan has a position for it, and likes what lies there. */

/** What each way out of the plan's hand position costs (hand-set). */
const AWAY = 5;

/** What each stretch within it costs (hand-set). */
const STRETCH = 4.5;

/** What a position may cost more than the easiest one, by the segment, that plans try as well (hand-set). */
const NEARLY = 0.3;

/** The last position that a line is planned in: higher up its low notes lie behind the hand. */
const LAST_POSITION = 5;

/** Bars after which the hand may look for another place, as it may where a section opens. */
const BARS_IN_PLACE = 8;

export interface Stands {
  /** By segment, the position of the hand under the plan with a seed. */
  positionsFor(pools: readonly Pool[], seed: number): readonly number[];
  /** By node, what it costs beside a hand that stays in a position. */
  costsAt(pool: Pool, position: number): Float64Array;
}

/** The hand as the line is fingered for: no higher than the level goes. */
export const playingHandOf = ({ request, neck }: LineModel): HandSettings => ({
  ...request.hand,
  highestFret: fret(neck.highestFret),
});

/** How often the hand leaves a position for notes that do not lie there; an open string that may not ring on is none. */
function waysOut({ tones, leads, rests }: Node, { frets, open }: UnderHand, muted: boolean): number {
  let [count, away] = [0, false];
  tones.forEach(({ start, duration, midi }, index) => {
    const next = tones[index + 1]?.start ?? leads[0]?.start;
    const silent = next === undefined ? rests : next > start + duration;
    const there = (frets[midi] ?? 0) > 0 || (open[midi] === true && !(muted && silent));
    if (!there && !away) count += 1;
    away = !there;
  });
  return count;
}

/** How often two notes in a row lie wider apart than the hand spans with ease; an open string between them lets it. */
function stretchesIn(
  { tones }: Node,
  { frets, open }: UnderHand,
  wide: (from: number, to: number) => boolean,
): number {
  let count = 0;
  for (let index = 1; index < tones.length; index += 1) {
    const [from, to] = [tones[index - 1]?.midi ?? 0, tones[index]?.midi ?? 0];
    if (open[from] || open[to]) continue;
    if (wide(frets[from] ?? 0, frets[to] ?? 0)) count += 1;
  }
  return count;
}

/** The places where segments begin that a hand may come to anew. */
const beginningsOf = (segments: readonly Segment[]): readonly number[] => {
  let begun = 0;
  return segments.flatMap(({ bar, opensSection, start }, index) => {
    const anew = opensSection || (start === 0 && bar.index - begun >= BARS_IN_PLACE);
    if (index > 0 && !anew) return [];
    begun = bar.index;
    return [index];
  });
};

/** Where the hand may stand for the segments of a request. */
export function standsFor(model: LineModel, segments: readonly Segment[]): Stands {
  const { instrument, feel } = model.request;
  const hand = playingHandOf(model);
  const { muted } = feel.bassTouch;
  const last = Math.max(1, Math.min(LAST_POSITION, hand.highestFret - 1));
  const positions = Array.from({ length: last }, (_, index) => index + 1);
  const under = positions.map((position) => underHand(position, instrument, hand));
  const begins = beginningsOf(segments);
  const parts = begins.map((from, part) => ({ from, to: begins[part + 1] ?? segments.length }));

  const wide = (from: number, to: number): boolean =>
    from > 0 && to > 0 && handSpan(from, to, instrument.scaleLength) > hand.comfortableSpan;

  const costsOf = rememberedFor((pool: Pool) =>
    under.map((reach) =>
      Float64Array.from(
        pool.nodes,
        (node) => AWAY * waysOut(node, reach, muted) + STRETCH * stretchesIn(node, reach, wide),
      ),
    ),
  );
  /** By position, what the cheapest node of a pool costs there. */
  const leastOf = rememberedFor((pool: Pool): readonly number[] =>
    costsOf(pool).map((costs) =>
      pool.nodes.reduce(
        (least, { cost }, node) => Math.min(least, cost + (costs[node] ?? 0)),
        Number.POSITIVE_INFINITY,
      ),
    ),
  );

  /** By part of the chart and position, what the cheapest nodes cost there. */
  const sumsOf = (pools: readonly Pool[]): readonly (readonly number[])[] =>
    parts.map(({ from, to }) =>
      positions.map((_, place) =>
        pools.slice(from, to).reduce((sum, pool) => sum + (leastOf(pool)[place] ?? 0), 0),
      ),
    );

  return {
    positionsFor(pools, seed) {
      const sums = sumsOf(pools);
      const whole = positions.map((_, place) => sums.reduce((sum, part) => sum + (part[place] ?? 0), 0));
      const least = Math.min(...whole);
      const near = positions
        .map((_, place) => place)
        .filter((place) => (whole[place] ?? 0) <= least + NEARLY * segments.length)
        .sort((one, other) => (whole[one] ?? 0) - (whole[other] ?? 0));
      const home = near[Math.floor(near.length * tasteOf(seed, 5, 0) ** 2)] ?? 0;
      return parts.flatMap(({ from, to }, part) => {
        const here = sums[part] ?? [];
        const best = Math.min(...here);
        const place = best + 3 * AWAY < (here[home] ?? 0) ? here.indexOf(best) : home;
        return new Array<number>(to - from).fill(positions[place] ?? 1);
      });
    },
    costsAt: (pool, position) => costsOf(pool)[position - 1] ?? new Float64Array(pool.nodes.length),
  };
}
