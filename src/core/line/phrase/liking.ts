import type { Contour } from '../../feel';
import type { Column } from './chain';
import { type Kinship, kinship } from './motif';
import type { Node } from './nodes';
import { type BarPlan, KINSHIP_WORTH, type Plan } from './plan';
import type { Pool } from './pools';
import type { Segment } from './segments';
import { tasteOf } from './taste';

/** How far a plan's tastes move the price of a contour: for the whole chart, for its half, for the bar (hand-set). */
const TASTES = { walk: [0.9, 0.7, 0.4], riff: [1.2, 0.7, 0.2] } as const;
const PART_TASTES = [0.5, 0.3] as const;

/** What a half step away from the planned height costs, and below or above the summit (hand-set). */
const HEIGHT = 0.085;
const BELOW_SUMMIT = 0.22;
const AT_SUMMIT = 0.7;
const ABOVE_SUMMIT = 0.35;

/** What a lent contour costs from level 2 on, and below (hand-set). */
const BORROWED = 5;
const BORROWED_EARLY = 3;

/** What it costs to sound beat one where the plan leaves it empty, and to leave it out elsewhere (hand-set). */
const UNPLANNED_ONE = 3;

/** What the plan's model is worth in each half of the form, and each lead at the end of the form (hand-set). */
const OWN_MODEL = [1.3, 0.8];
const TURNING = 0.5;

export interface Liking {
  /** What each node of a pool costs under a plan. */
  columnOf(segment: Segment, pool: Pool, plan: Plan): Column;
}

/** The books stay as they are, so two contours are compared once. */
const between = new WeakMap<Contour, WeakMap<Contour, Kinship>>();

function kinshipOf(motif: Contour | null, contour: Contour | null): Kinship {
  if (!motif || !contour) return 'other';
  const row = between.get(motif) ?? new WeakMap<Contour, Kinship>();
  between.set(motif, row);
  const kind = row.get(contour) ?? kinship(motif, contour);
  row.set(contour, kind);
  return kind;
}

/** What plans like and dislike, in a manner and at a level. */
export function likingFor(manner: 'walk' | 'riff', level: number): Liking {
  const kin = new Map<Contour | null, Map<Pool, readonly Kinship[]>>();
  const [chart, half, each] = TASTES[manner];

  /** How each node of a pool is kin to the plan's motif. */
  function kinOf(motif: Contour | null, pool: Pool): readonly Kinship[] {
    const table = kin.get(motif) ?? new Map<Pool, readonly Kinship[]>();
    kin.set(motif, table);
    const known = table.get(pool) ?? pool.nodes.map(({ contour }) => kinshipOf(motif, contour));
    table.set(pool, known);
    return known;
  }

  /** What the plan makes of a whole bar. */
  function barCost(plan: Plan, bar: BarPlan, place: number, node: Node, tag: number, kind: Kinship): number {
    let cost = chart * tasteOf(plan.seed, 1, tag) + half * tasteOf(plan.seed, 2 + bar.half, tag);
    cost += each * tasteOf(plan.seed, 8 + place, tag);
    if (!node.link) cost -= KINSHIP_WORTH[bar.operation][kind] ?? 0;
    else if (plan.motifModel?.id === node.link.model) cost -= OWN_MODEL[bar.half] ?? 0;
    if (bar.empty !== null && node.late !== bar.empty) cost += UNPLANNED_ONE;
    return bar.crest ? cost + BELOW_SUMMIT * Math.max(0, plan.summit - node.top) : cost;
  }

  const partCost = (plan: Plan, place: number, tag: number): number =>
    PART_TASTES[0] * tasteOf(plan.seed, 1, tag) + PART_TASTES[1] * tasteOf(plan.seed, 8 + place, tag);

  return {
    columnOf(segment, pool, plan) {
      const bar = plan.bars[segment.bar.index];
      const costs = Float64Array.from(pool.nodes, ({ cost }) => cost);
      const column = { costs, entryOf: pool.entryOf, entries: pool.entries.length };
      if (!bar || segment.kept || pool.nodes[0]?.contour === null) return column;
      const kinds = kinOf(plan.motif, pool);
      const turns =
        bar.slot === 'T' && segment.bar.index === plan.bars.length - 1 && segment.end === segment.bar.ticks;
      const lent = pool.ownSome && segment.whole ? (level >= 2 ? BORROWED : BORROWED_EARLY) : 0;
      const crested = bar.crest && segment.whole;
      pool.nodes.forEach((node, index) => {
        const tag = pool.tags[index] ?? 0;
        let cost = HEIGHT * Math.abs(node.mean - bar.height) + (node.borrowed ? lent : 0);
        cost += segment.whole
          ? barCost(plan, bar, segment.bar.index, node, tag, kinds[index] ?? 'other')
          : partCost(plan, segment.index, tag);
        if (!crested && node.top >= plan.summit) cost += AT_SUMMIT + ABOVE_SUMMIT * (node.top - plan.summit);
        if (turns) cost -= TURNING * Math.min(2, node.leads.length);
        costs[index] = (costs[index] ?? 0) + cost;
      });
      return column;
    },
  };
}
