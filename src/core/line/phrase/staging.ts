import { remembered } from '../../base';
import { type Column, FREE, type Out, type Prices, restOf } from './chain';
import type { EdgePrices } from './edges';
import type { Goal } from './finish';
import type { Plan } from './plan';
import type { Pool } from './pools';
import type { Segment } from './segments';
import type { Narrow } from './ways';
import type { Workshop } from './workshop';

/** By anchor, the beginning that is settled. */
export type Settled = ReadonlyMap<number, number>;
export const UNSETTLED: Settled = new Map();

/** Prices that are known by node alone. */
const atLeast = (least: Float64Array): Prices => ({ least, at: (node) => least[node] ?? 0 });

/** A plan with its choices and what they cost, before any beginning is settled. */
export interface Stage {
  readonly plan: Plan;
  readonly pools: readonly Pool[];
  readonly columns: readonly Column[];
  /** Into the next segment, where a segment goes nowhere else. */
  readonly prices: readonly (Prices | null)[];
}

/** A stage as a chain of columns; `ring` leads from the last one back to the first. */
export interface Chain {
  readonly columns: readonly Column[];
  readonly prices: readonly Prices[];
  readonly ring: Prices | null;
}

export interface Staging {
  /** @param pools - what each segment chooses from under the plan */
  stageOf(plan: Plan, pools: readonly Pool[]): Stage;
  /** What is asked of a segment's leads. */
  asksOf(segment: Segment, plan: Plan): number;
  /** Whether a segment goes into the next one as written. */
  goesOn(index: number): boolean;
  /** Goals of a segment beside the next one as written, for settled beginnings. */
  extrasOf(segment: Segment, pools: readonly Pool[], settled: Settled): readonly Goal[];
  /** Prices of the way on from a segment for settled beginnings: into the next where it goes there, else by itself. */
  pricesFrom(stage: Stage, segment: Segment, settled: Settled): EdgePrices;
  /** A stage as a chain: a segment that goes nowhere as written has its way on beside what its nodes cost. */
  chainOf(stage: Stage, settled: Settled): Chain;
  /** The chain of a stage at prices that are no higher, whatever beginnings are settled, with none of them settled. */
  leastChainOf(stage: Stage): Narrow;
}

/** How the plans of a request become chains that the shortest way is looked for in. */
export function stagingFor({ segments, edges, liking, stands, route: { onward } }: Workshop): Staging {
  const asksOf = (segment: Segment, plan: Plan): number => plan.bars[segment.bar.index]?.asks ?? 0;

  function stageOf(plan: Plan, list: readonly Pool[]): Stage {
    const positions = stands.positionsFor(list, plan.seed);
    return {
      plan,
      pools: list,
      columns: segments.map((segment, index) =>
        liking.columnOf(segment, list[index] as Pool, plan, positions[index] ?? 1),
      ),
      prices: segments.map((segment, index) => {
        const [pool, into, next] = [list[index], list[index + 1], segments[index + 1]];
        const { next: goesOn = false, back = [] } = onward[index] ?? {};
        if (!goesOn || back.length > 0 || !pool || !into || !next) return null;
        return edges.between({
          from: segment,
          pool,
          to: next,
          into,
          extras: [],
          asks: asksOf(segment, plan),
        });
      }),
    };
  }

  const extrasOf = (segment: Segment, list: readonly Pool[], settled: Settled): readonly Goal[] =>
    (onward[segment.index]?.back ?? []).flatMap((index) => {
      const to = segments[index];
      const begins = list[index]?.entries[settled.get(index) ?? -1];
      return to && begins ? (edges.goalOf(to, begins, segment) ?? []) : [];
    });

  const goesOn = (index: number): boolean =>
    onward[index]?.next === true && segments[index + 1] !== undefined;

  const asked = new WeakMap<Stage, Map<string, EdgePrices>>();

  function pricesFrom(stage: Stage, segment: Segment, settled: Settled): EdgePrices {
    const known = remembered(asked, stage, () => new Map<string, EdgePrices>());
    let key = `${segment.index}`;
    for (const back of onward[segment.index]?.back ?? []) key += ` ${settled.get(back) ?? -1}`;
    return remembered(known, key, () => pricesOnward(stage, segment, settled));
  }

  function pricesOnward({ plan, pools: list }: Stage, segment: Segment, settled: Settled): EdgePrices {
    const { index } = segment;
    return edges.between({
      from: segment,
      pool: list[index] as Pool,
      to: (goesOn(index) && segments[index + 1]) || null,
      into: (goesOn(index) && list[index + 1]) || null,
      extras: extrasOf(segment, list, settled),
      asks: asksOf(segment, plan),
    });
  }

  /** Prices of the way back from the last segment to the first, where nothing is settled and it leads there. */
  function ringOf({ plan, pools: list }: Stage, from: Segment, settled: Settled): Prices | null {
    const [start] = segments;
    const [pool, into] = [list[from.index], list[0]];
    const closes = settled.size === 0 && onward[from.index]?.back.includes(0) === true;
    if (!closes || from.index < segments.length - 1 || !start || !pool || !into) return null;
    return edges.between({ from, pool, to: start, into, extras: [], asks: asksOf(from, plan) });
  }

  function chainOf(stage: Stage, settled: Settled): Chain {
    const columns = stage.columns.slice();
    const prices: Prices[] = [];
    let ring: Prices | null = null;
    for (const segment of segments) {
      const { index } = segment;
      const column = columns[index] as Column;
      if (goesOn(index)) prices.push(stage.prices[index] ?? pricesFrom(stage, segment, settled));
      else {
        const round = ringOf(stage, segment, settled);
        if (round) ring = round;
        else columns[index] = { ...column, aside: pricesFrom(stage, segment, settled) };
        if (index < segments.length - 1) prices.push(FREE);
      }
    }
    return { columns, prices, ring };
  }

  function leastChainOf(stage: Stage): Narrow {
    const under = segments.map((segment, index): Prices => {
      const known = stage.prices[index];
      if (known) return known;
      if (goesOn(index)) return pricesFrom(stage, segment, UNSETTLED).under;
      const [back = -1] = onward[index]?.back ?? [];
      const [to, into] = [segments[back] ?? null, stage.pools[back] ?? null];
      const asks = asksOf(segment, stage.plan);
      const pool = stage.pools[index] as Pool;
      return atLeast(edges.between({ from: segment, pool, to, into, extras: [], asks }).under.least);
    });
    const last = under.pop() ?? FREE;
    const out: Out = { least: last.least, at: (node) => last.at(node, 0, 0) };
    const { columns } = stage;
    return { columns, prices: under, out, bounds: restOf(columns, under, out), only: UNSETTLED };
  }

  return { stageOf, asksOf, goesOn, extrasOf, pricesFrom, chainOf, leastChainOf };
}
