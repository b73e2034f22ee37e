import type { Theme } from '../../feel';
import type { HeardLine } from '../hearing';
import type { LineModel } from '../model';
import { NO_WAY_OUT, ROUNDING, type Way } from './chain';
import type { Figure } from './figure';
import { figuresOf } from './figures';
import type { BarPlan, Plan } from './plan';
import type { Pool } from './pools';
import type { Segment } from './segments';
import type { Sound } from './sounding';
import { type Settled, type Stage, stagingFor, UNSETTLED } from './staging';
import { cheapestWay, cheapestWithin, costOfWay, type Narrow, type Passage, passageWithin } from './ways';
import type { Workshop } from './workshop';

/** Price of what cannot be: a model broken off, another beginning where one is settled. */
const NEVER = 1e6;

/** Beginnings of the bars that repeats lead back to: all are tried where that is so many ways, else by turns. */
const MOST_WAYS = 600;
const MOST_BEGINNINGS = 8;

/** How often the nodes are gone through for the first way of a plan, and for the first with its beginnings settled. */
const WALKS = 4;

/** A way of playing a plan. */
export interface Found {
  readonly heard: HeardLine;
  readonly cost: number;
}

export interface PlanSearch {
  /** Figures that the tune can be made of, the cheapest first. */
  readonly figures: readonly Figure[];
  /** The cheapest way through a plan; null where there is none. */
  best(plan: Plan): Found | null;
  /** How many nodes were looked at for the ways that were asked for, those again that are passed again. */
  looked(): number;
  /** How many nodes each segment chooses from under a plan. */
  choices(plan: Plan): readonly number[];
  /** What a choice of one node a segment costs under a plan, by their numbers. */
  costOf(plan: Plan, nodes: readonly number[]): number;
}

/**
 * The search through the plans of a theme.
 * @param wide bars that are offered other forms of the book's contours as well
 */
export function searchOver(
  model: LineModel,
  workshop: Workshop,
  theme: Theme,
  wide: ReadonlySet<number>,
): PlanSearch {
  const { segments, given, pools, finisher, edges, route, sounding } = workshop;
  const { onward, firstOf, anchors } = route;
  const { asksOf, goesOn, extrasOf, pricesFrom, chainOf, leastChainOf, stageOf } = stagingFor(workshop);
  const fixed = new Map<number, Pool>();
  let looked = 0;

  function poolAt(segment: Segment, plan: Plan): Pool {
    const known = fixed.get(segment.index);
    if (known) return known;
    const tones = given[segment.bar.index];
    if (!segment.kept && segment.ladder) {
      const bar = plan.bars[segment.bar.index];
      const pool = pools.poolOf(segment, {
        theme,
        slot: bar?.slot ?? 'S',
        models: bar ? modelPlace(segment, bar) : null,
        tuneBar: bar?.tuneBar ?? null,
        asks: bar?.asks ?? 0,
        wide: wide.has(segment.bar.index),
        lends: true,
      });
      if (pool.nodes.length > 0) return pool;
    }
    const pool = pools.givenPool(segment, segment.kept ? (tones ?? []) : []);
    fixed.set(segment.index, pool);
    return pool;
  }

  const poolsOf = (plan: Plan): readonly Pool[] => segments.map((segment) => poolAt(segment, plan));

  /** A model needs all of its bars free and whole, and nothing else asked of them. */
  function modelPlace(segment: Segment, bar: BarPlan) {
    if (!bar.models || !segment.whole) return null;
    const length = bar.models.slots.split('+').length;
    const first = segment.bar.index - bar.models.place;
    for (let index = first; index < first + length; index += 1) {
      const other = segments[firstOf.get(index) ?? -1];
      if (!other?.whole || other.kept || !other.ladder || other.bar.demands.wanted.size > 0) return null;
    }
    return bar.models;
  }

  const affordable = <Affordable extends Way>(way: Affordable | null): Affordable | null =>
    way && way.cost < NEVER ? way : null;

  /** By anchor, the first segment that knows how it begins: itself, or one before it that leads there. */
  const differsFrom = new Map(
    anchors.map((anchor) => [
      anchor,
      Math.min(anchor, ...onward.flatMap(({ back }, index) => (back.includes(anchor) ? [index] : []))),
    ]),
  );

  /** The cheapest way with no beginning settled: the ring alone is closed. */
  function solve(stage: Stage): Way | null {
    looked += WALKS * stage.pools.reduce((sum, { nodes }) => sum + nodes.length, 0);
    const { columns, prices, ring } = chainOf(stage, UNSETTLED);
    return affordable(cheapestWay(columns, prices, ring));
  }

  /** Where a way begins in the anchors. */
  const beginnings = (way: Way, list: readonly Pool[]): Map<number, number> =>
    new Map(anchors.map((index) => [index, list[index]?.entryOf[way.nodes[index] ?? 0] ?? 0]));

  /** The cheapest way where repeats lead back: over all beginnings of those bars, or over one after the other. */
  function solveWithJumps(stage: Stage, first: Way): Way | null {
    const list = stage.pools;
    const sizes = anchors.map((index) => list[index]?.entries.length ?? 1);
    const leastChain = leastChainOf(stage);
    const { bounds } = leastChain;
    let passage: Passage | null = null;
    const narrowed = (only: Settled, same?: Narrow['same']): Narrow => ({
      ...chainOf(stage, only),
      out: NO_WAY_OUT,
      bounds,
      only,
      passable: passage?.passable,
      same,
    });
    const settled = beginnings(first, list);
    const start = narrowed(settled);
    let best = affordable(
      cheapestWithin(start, Math.min(NEVER, costOfWay(start.columns, start.prices, start.out, first.nodes))),
    );
    // What no way can pass that is as cheap need not be looked at again.
    passage = best ? passageWithin(leastChain, best.cost) : null;
    const nodes = list.reduce((sum, pool, index) => sum + (passage?.passable[index] ?? pool.nodes).length, 0);
    looked += WALKS * nodes;
    const tries: Tries = (other, before) => {
      const limit = best?.cost ?? NEVER;
      if (passage && isBeyond(passage, other, limit)) return false;
      looked += Math.round(nodes * (1 - before / segments.length));
      const same = best ? { front: best.front, before } : undefined;
      const way = affordable(cheapestWithin(narrowed(other, same), limit));
      if (!way || (best !== null && way.cost >= best.cost)) return false;
      best = way;
      return true;
    };
    if (sizes.reduce((all, size) => all * size, 1) * segments.length <= MOST_WAYS) {
      for (const choice of choicesOf(sizes))
        tries(new Map(anchors.map((index, place) => [index, choice[place] ?? 0])), 0);
      return best;
    }
    triesByTurns(list, settled, tries);
    return best;
  }

  /** Tries other beginnings of one anchor after the other, and stays with what is better. */
  function triesByTurns(list: readonly Pool[], first: Settled, tries: Tries): void {
    let settled = first;
    for (const anchor of anchors) {
      const size = Math.min(MOST_BEGINNINGS, list[anchor]?.entries.length ?? 1);
      for (let entry = 0; entry < size; entry += 1) {
        if (settled.get(anchor) === entry) continue;
        const other = new Map(settled).set(anchor, entry);
        if (tries(other, differsFrom.get(anchor) ?? 0)) settled = other;
      }
    }
  }

  /** What it costs to go on from a node of a segment. */
  function wayOn(stage: Stage, segment: Segment, settled: Settled, node: number, following: number): number {
    const into = goesOn(segment.index) ? stage.pools[segment.index + 1] : undefined;
    return pricesFrom(stage, segment, settled).at(node, into?.entryOf[following] ?? 0, 2 * NEVER);
  }

  /** The notes of a way, heard in their own bars. */
  function play(plan: Plan, list: readonly Pool[], way: Way): HeardLine {
    const bars = model.bars.map((bar): Sound[] => {
      const tones = given[bar.index];
      return tones ? [sounding.partOf(bar, tones)] : [];
    });
    const settled = beginnings(way, list);
    const at = (index: number) => list[index]?.nodes[way.nodes[index] ?? 0];
    segments.forEach((segment, index) => {
      const node = at(index);
      if (!node || segment.kept || node.last < 0) return;
      const next = onward[index]?.next ? segments[index + 1] : undefined;
      const begins = list[index + 1]?.entries[list[index + 1]?.entryOf[way.nodes[index + 1] ?? 0] ?? 0];
      const goal = next && begins ? edges.goalOf(next, begins, segment) : null;
      const goals = [...(goal ? [goal] : []), ...extrasOf(segment, list, settled)];
      const leading = finisher.leading(segment, goals, asksOf(segment, plan));
      const { tones } = finisher.finish(segment, node, finisher.leadOf(segment, node, leading), leading);
      bars[segment.bar.index]?.push(sounding.partOf(segment.bar, tones));
    });
    return sounding.lineOf(bars);
  }

  /** Anything but the way round from the last segment to the first. */
  const hasJumps = onward.some(({ back }, index) =>
    back.some((to) => to !== 0 || index < segments.length - 1),
  );

  return {
    figures: figuresOf(workshop, theme),
    best(plan) {
      const stage = stageOf(plan, poolsOf(plan));
      const first = solve(stage);
      if (!first) return null;
      const way = hasJumps ? solveWithJumps(stage, first) : first;
      return way ? { heard: play(plan, stage.pools, way), cost: way.cost } : null;
    },
    looked: () => looked,
    choices: (plan) => poolsOf(plan).map(({ nodes }) => nodes.length),
    costOf(plan, nodes) {
      const stage = stageOf(plan, poolsOf(plan));
      const settled = beginnings({ cost: 0, nodes }, stage.pools);
      return segments.reduce((cost, segment, index) => {
        const own = stage.columns[index]?.costs[nodes[index] ?? 0] ?? 0;
        return cost + own + wayOn(stage, segment, settled, nodes[index] ?? 0, nodes[index + 1] ?? 0);
      }, 0);
    },
  };
}

/** Whether other beginnings are better; segments before one know as much of them as of those that are settled. */
type Tries = (other: Settled, before: number) => boolean;

/** Whether it is certain that no way with such beginnings is as cheap as a limit. */
function isBeyond({ through }: Passage, beginnings: Settled, limit: number): boolean {
  for (const [index, entry] of beginnings) if ((through[index]?.[entry] ?? 0) > limit + ROUNDING) return true;
  return false;
}

/** Every choice of one number below each size. */
function* choicesOf(sizes: readonly number[]): Generator<readonly number[]> {
  const [size, ...others] = sizes;
  if (size === undefined) yield [];
  else for (const rest of choicesOf(others)) for (let one = 0; one < size; one += 1) yield [one, ...rest];
}
