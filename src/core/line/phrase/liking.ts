import { hashText, remembered, rememberedFor } from '../../base';
import type { Contour } from '../../feel';
import type { Stretch } from '../harmony';
import type { Column } from './chain';
import { LIKENESS_WORTH, likenessOf } from './figure';
import { plays } from './led-on';
import { type Kinship, kinship } from './motif';
import { type BarPlan, KINSHIP_WORTH, type Plan } from './plan';
import type { Pool } from './pools';
import type { Segment } from './segments';
import type { Stands } from './stands';
import { tasteOf } from './taste';

/** How far a plan's tastes move the price of a contour: for the whole chart, for its half, for the bar (hand-set). */
const TASTES = { walk: [0.9, 0.7, 0.4], riff: [1.2, 0.7, 0.2] } as const;
const PART_TASTES = [0.5, 0.3] as const;

/** How far it moves the price of a part of a bar in which rhythm it is: bars of several chords share one (hand-set). */
const PART_RHYTHM = 0.9;

/** What a half step away from the planned height costs, and below or above the summit (hand-set). */
const HEIGHT = 0.085;
const BELOW_SUMMIT = 0.22;
const AT_SUMMIT = 0.7;
const ABOVE_SUMMIT = 0.35;

/** What a lent contour costs from level 2 on, and below (hand-set). */
const BORROWED = 5;
const BORROWED_EARLY = 3;
/** And in a bar of a tune, which would lose its rhythm (hand-set). */
const BORROWED_IN_TUNE = 12;

/** What it costs to sound beat one where the plan leaves it empty, and to leave it out elsewhere (hand-set). */
const UNPLANNED_ONE = 3;

/** What the way that the plan likes is worth in a bar of a tune, and what its tastes weigh there (hand-set). */
const LIKED_WAY = 3;
const TUNE_TASTE = 2.2;

/** What the plan's model is worth in each half of the form, and each lead at the end of the form (hand-set). */
const OWN_MODEL = [1.3, 0.8];
const TURNING = 0.5;

/** What a bar costs at the end of the form that strikes its last note twice, and that lacks its chord's third (hand-set). */
const FLAT_END = 1.5;
const UNTOLD_END = 1.8;

/** What the last bar costs without a note in its last beat (hand-set). */
const QUIET_END = 2.5;

/** What a chord costs that turns the third of the one before and does not sound it (hand-set). */
const UNTOLD_TURN = 2.5;

export interface Liking {
  /** What each node of a pool costs under a plan, the hand in a position. */
  columnOf(segment: Segment, pool: Pool, plan: Plan, position: number): Column;
}

/** The books stay as they are, so two contours are compared once. */
const between = new WeakMap<Contour, WeakMap<Contour, Kinship>>();

function kinshipOf(motif: Contour | null, contour: Contour | null): Kinship {
  if (!motif || !contour) return 'other';
  const row = remembered(between, motif, () => new WeakMap<Contour, Kinship>());
  return remembered(row, contour, () => kinship(motif, contour));
}

/** What plans ask of the nodes of a pool, each in a row of numbers: plans are many, and pools few. */
interface Traits {
  readonly costs: Float64Array;
  readonly means: Float64Array;
  readonly tops: Int32Array;
  readonly borrowed: Uint8Array;
  readonly late: Uint8Array;
  /** By node: leads that count where the form turns. */
  readonly leads: Uint8Array;
  /** By node, whether it comes to rest on a note struck again, and whether it sounds the third. */
  readonly flat: Uint8Array;
  readonly thirds: Uint8Array;
  /** By node, when the last note ends, in ticks. */
  readonly ends: Int32Array;
  /** By node, a number that stands for its rhythm. */
  readonly rhythms: Int32Array;
  /** By node, the model that it is a bar of. */
  readonly models: readonly (string | null)[];
}

const rhythmTag = (contour: Contour | null): number =>
  hashText(contour?.beats.map(({ start }) => start).join(' ') ?? '') | 0;

const traitsOf = rememberedFor(
  ({ nodes }: Pool): Traits => ({
    costs: Float64Array.from(nodes, ({ cost }) => cost),
    means: Float64Array.from(nodes, ({ mean }) => mean),
    tops: Int32Array.from(nodes, ({ top }) => top),
    borrowed: Uint8Array.from(nodes, ({ borrowed }) => (borrowed ? 1 : 0)),
    late: Uint8Array.from(nodes, ({ late }) => (late ? 1 : 0)),
    leads: Uint8Array.from(nodes, ({ leads }) => Math.min(2, leads.length)),
    flat: Uint8Array.from(nodes, ({ tones, leads }) =>
      leads.length === 0 && tones.length > 1 && tones.at(-1)?.midi === tones.at(-2)?.midi ? 1 : 0,
    ),
    thirds: Uint8Array.from(nodes, ({ tones }) =>
      tones.some(({ interval }) => interval === 3 || interval === 4) ? 1 : 0,
    ),
    ends: Int32Array.from(nodes, ({ tones, leads }) => {
      const last = leads.at(-1) ?? tones.at(-1);
      return last ? last.start + last.duration : 0;
    }),
    rhythms: Int32Array.from(nodes, ({ contour }) => rhythmTag(contour)),
    models: nodes.map(({ link }) => link?.model ?? null),
  }),
);

/** What plans like and dislike, in a manner and at a level. */
export function likingFor(
  manner: 'walk' | 'riff',
  level: number,
  turned: ReadonlySet<Stretch>,
  stands: Stands,
): Liking {
  const kin = new Map<Contour | null, Map<Pool, readonly Kinship[]>>();
  const alike = new WeakMap<Contour, Map<string, WeakMap<Pool, readonly number[]>>>();
  const [chart, half, each] = TASTES[manner];

  /** How each node of a pool is kin to the plan's motif. */
  const kinOf = (motif: Contour | null, pool: Pool): readonly Kinship[] => {
    const table = remembered(kin, motif, () => new Map<Pool, readonly Kinship[]>());
    return remembered(table, pool, () => pool.nodes.map(({ contour }) => kinshipOf(motif, contour)));
  };

  /** What the plan pays for the nodes of a pool by their likeness to the figure. */
  function figureWorth({ figure }: BarPlan, pool: Pool): readonly number[] | null {
    if (!figure) return null;
    const worth = LIKENESS_WORTH[figure.treatment];
    const table = remembered(
      alike,
      figure.contour,
      () => new Map<string, WeakMap<Pool, readonly number[]>>(),
    );
    const row = remembered(table, figure.treatment, () => new WeakMap<Pool, readonly number[]>());
    return remembered(row, pool, () =>
      pool.nodes.map(({ contour }) => (contour ? worth[likenessOf(figure.contour, contour)] : 0)),
    );
  }

  /** What the plan makes of a whole bar, by node. */
  function barLiking(plan: Plan, bar: BarPlan, place: number, pool: Pool): (node: number) => number {
    const { tops, models, late } = traitsOf(pool);
    const kinds = kinOf(plan.motif, pool);
    const worth = KINSHIP_WORTH[bar.operation];
    const liked = plan.motifModel?.id;
    const figure = figureWorth(bar, pool);
    if (bar.tuneBar !== null) {
      const { way } = bar;
      return (node) => {
        let cost = TUNE_TASTE * tasteOf(plan.seed, 1, pool.tags[node] ?? 0);
        if (way !== null && plays(pool.nodes[node]?.contour ?? null, way)) cost -= LIKED_WAY;
        return bar.crest ? cost + BELOW_SUMMIT * Math.max(0, plan.summit - (tops[node] ?? 0)) : cost;
      };
    }
    return (node) => {
      const tag = pool.tags[node] ?? 0;
      let cost = chart * tasteOf(plan.seed, 1, tag) + half * tasteOf(plan.seed, 2 + bar.half, tag);
      cost += each * tasteOf(plan.seed, 8 + place, tag);
      const model = models[node] ?? null;
      if (model === null) cost -= worth[kinds[node] ?? 'other'] ?? 0;
      else if (liked === model) cost -= OWN_MODEL[bar.half] ?? 0;
      cost -= figure?.[node] ?? 0;
      if (bar.empty !== null && (late[node] === 1) !== bar.empty) cost += UNPLANNED_ONE;
      return bar.crest ? cost + BELOW_SUMMIT * Math.max(0, plan.summit - (tops[node] ?? 0)) : cost;
    };
  }

  function partLiking(plan: Plan, place: number, pool: Pool): (node: number) => number {
    const { rhythms } = traitsOf(pool);
    return (node) => {
      const tag = pool.tags[node] ?? 0;
      return (
        PART_TASTES[0] * tasteOf(plan.seed, 1, tag) +
        PART_TASTES[1] * tasteOf(plan.seed, 8 + place, tag) +
        PART_RHYTHM * tasteOf(plan.seed, 4, rhythms[node] ?? 0)
      );
    };
  }

  /** What the plan makes of where a bar lies, and what it makes of lent contours and leads, by node. */
  function placeLiking(segment: Segment, pool: Pool, plan: Plan, bar: BarPlan): (node: number) => number {
    const { means, tops, borrowed } = traitsOf(pool);
    const early = level >= 2 ? BORROWED : BORROWED_EARLY;
    const lent = pool.ownSome && segment.whole ? (bar.tuneBar === null ? early : BORROWED_IN_TUNE) : 0;
    const crested = bar.crest && segment.whole;
    const likingOf = segment.whole
      ? barLiking(plan, bar, segment.bar.index, pool)
      : partLiking(plan, segment.index, pool);
    return (node) => {
      const top = tops[node] ?? 0;
      let cost = HEIGHT * Math.abs((means[node] ?? 0) - bar.height) + (borrowed[node] === 1 ? lent : 0);
      cost += likingOf(node);
      if (!crested && top >= plan.summit) cost += AT_SUMMIT + ABOVE_SUMMIT * (top - plan.summit);
      return cost;
    };
  }

  /** What the plan makes of how a node ends the form, and of thirds that have to be heard, by node. */
  function endLiking(segment: Segment, pool: Pool, bar: BarPlan, isLast: boolean): (node: number) => number {
    const { leads, flat, thirds, ends } = traitsOf(pool);
    const quietBefore = segment.end - segment.unit;
    const last = isLast && segment.end === segment.bar.ticks;
    const turning = bar.slot === 'T' && last ? TURNING : 0;
    const flatEnd = last && level > 0 ? FLAT_END : 0;
    const turns = segment.stretch !== null && turned.has(segment.stretch);
    const untold = level < 2 ? 0 : (turns ? UNTOLD_TURN : 0) + (last ? UNTOLD_END : 0);
    return (node) =>
      flatEnd * (flat[node] ?? 0) -
      turning * (leads[node] ?? 0) +
      (thirds[node] === 1 ? 0 : untold) +
      (last && (ends[node] ?? 0) <= quietBefore ? QUIET_END : 0);
  }

  return {
    columnOf(segment, pool, plan, position) {
      const bar = plan.bars[segment.bar.index];
      const costs = traitsOf(pool).costs.slice();
      const column = { costs, entryOf: pool.entryOf, entries: pool.entries.length };
      if (!bar || segment.kept || pool.nodes[0]?.contour === null) return column;
      const likingOf = placeLiking(segment, pool, plan, bar);
      const endingOf = endLiking(segment, pool, bar, segment.bar.index === plan.bars.length - 1);
      const away = stands.costsAt(pool, position);
      for (let node = 0; node < costs.length; node += 1)
        costs[node] = (costs[node] ?? 0) + likingOf(node) + endingOf(node) + (away[node] ?? 0);
      return column;
    },
  };
}
