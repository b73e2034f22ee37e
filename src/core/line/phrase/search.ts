import { remembered } from '../../base';
import type { Contour, MetrePhrases, PhraseBook, Theme } from '../../feel';
import type { HeardLine } from '../hearing';
import type { BarModel, LineModel } from '../model';
import { type Tone, toneOf } from '../tones';
import { type Bounds, type Column, FREE, NO_WAY_OUT, type Prices, restOf, type Way } from './chain';
import { turnedThirds } from './counted-tune';
import { type EdgeMaker, type EdgePrices, edgeMaker } from './edges';
import { type Finisher, finisherFor, type Goal } from './finish';
import { type Liking, likingFor } from './liking';
import { JOIN_WEIGHT, nodeRulesFor } from './manner';
import type { BarPlan, Plan } from './plan';
import { type Pool, type PoolMaker, poolMaker } from './pools';
import { onwardOf, type Route } from './route';
import { type Segment, segmentsOf } from './segments';
import { cheapestWay, cheapestWithin, costOfWay, type Narrow } from './ways';

/** Price of what cannot be: a model broken off, another beginning where one is settled. */
const NEVER = 1e6;

/** Beginnings of the bars that repeats lead back to: all are tried where that is so many ways, else by turns. */
const MOST_WAYS = 600;
const MOST_BEGINNINGS = 8;

/** By anchor, the beginning that is settled. */
type Settled = ReadonlyMap<number, number>;
const UNSETTLED: Settled = new Map();

/** Prices that are known by node alone. */
const atLeast = (least: Float64Array): Prices => ({ least, at: (node) => least[node] ?? 0 });

/** A way of playing a plan. */
export interface Found {
  readonly heard: HeardLine;
  readonly cost: number;
}

export interface PlanSearch {
  /** Contours that can be the motif. */
  readonly motifs: readonly Contour[];
  /** The cheapest way through a plan; null where there is none. */
  best(plan: Plan): Found | null;
  /** How many nodes each segment chooses from under a plan. */
  choices(plan: Plan): readonly number[];
  /** What a choice of one node a segment costs under a plan, by their numbers. */
  costOf(plan: Plan, nodes: readonly number[]): number;
}

/** What the searches of a request share: its segments, their choices, and what was ever priced. */
export interface Workshop {
  readonly segments: readonly Segment[];
  /** By bar: the tones that are given, or null. */
  readonly given: readonly (readonly Tone[] | null)[];
  readonly pools: PoolMaker;
  readonly finisher: Finisher;
  readonly edges: EdgeMaker;
  readonly liking: Liking;
  readonly route: Route;
}

/**
 * Opens what the searches of a request share.
 * @param given by bar: the tones that are given, or null
 * @param mostNodes that a segment chooses from; as many as usual when left out
 */
export function openWorkshop(
  model: LineModel,
  book: PhraseBook,
  metre: MetrePhrases,
  given: readonly (readonly Tone[] | null)[],
  mostNodes?: number,
): Workshop {
  const rules = nodeRulesFor(model, book);
  const finisher = finisherFor(model, {
    longChromatics: rules.longChromatics,
    walk: book.manner === 'walk',
  });
  const kept = given.map((tones) => tones !== null);
  const segments = segmentsOf(model, metre.metre, kept);
  return {
    segments,
    given,
    pools: poolMaker(model, rules, metre, mostNodes),
    finisher,
    edges: edgeMaker(model, finisher, JOIN_WEIGHT[book.manner]),
    liking: likingFor(book.manner, model.request.level, turnedThirds(model)),
    route: onwardOf(segments),
  };
}

/**
 * The search through the plans of a theme.
 * @param wide bars that are offered other forms of the book's contours as well
 */
export function searchOver(
  model: LineModel,
  { segments, given, pools, finisher, edges, liking, route }: Workshop,
  theme: Theme,
  wide: ReadonlySet<number>,
): PlanSearch {
  const { onward, firstOf, anchors } = route;
  const fixed = new Map<number, Pool>();
  const placed = new WeakMap<readonly Tone[], Map<BarModel, readonly Tone[]>>();

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
        asks: bar?.asks ?? 0,
        wide: wide.has(segment.bar.index),
      });
      if (pool.nodes.length > 0) return pool;
    }
    const pool = pools.givenPool(segment, segment.kept ? (tones ?? []) : []);
    fixed.set(segment.index, pool);
    return pool;
  }

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

  const asksOf = (segment: Segment, plan: Plan): number => plan.bars[segment.bar.index]?.asks ?? 0;

  /** A plan with its choices and what they cost, before any beginning is settled. */
  interface Stage {
    readonly plan: Plan;
    readonly pools: readonly Pool[];
    readonly columns: readonly Column[];
    /** Into the next segment, where a segment goes nowhere else. */
    readonly prices: readonly (Prices | null)[];
  }

  function stageOf(plan: Plan): Stage {
    const list = segments.map((segment) => poolAt(segment, plan));
    return {
      plan,
      pools: list,
      columns: segments.map((segment, index) => liking.columnOf(segment, list[index] as Pool, plan)),
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

  /** Goals of a segment beside the next one as written, for settled beginnings. */
  const extrasOf = (segment: Segment, list: readonly Pool[], settled: Settled): readonly Goal[] =>
    (onward[segment.index]?.back ?? []).flatMap((index) => {
      const to = segments[index];
      const begins = list[index]?.entries[settled.get(index) ?? -1];
      return to && begins ? (edges.goalOf(to, begins, segment) ?? []) : [];
    });

  /** Whether a segment goes into the next one as written. */
  const goesOn = (index: number): boolean =>
    onward[index]?.next === true && segments[index + 1] !== undefined;

  /** Prices of the way on from a segment for settled beginnings: into the next where it goes there, else by itself. */
  function pricesFrom({ plan, pools: list }: Stage, segment: Segment, settled: Settled): EdgePrices {
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

  /** A stage as a chain: a segment that goes nowhere as written has its way on beside what its nodes cost. */
  function chainOf(stage: Stage, settled: Settled) {
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

  /** What the rest of a way costs at least, whatever beginnings are settled. */
  function boundsOf(stage: Stage): Bounds {
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
    return restOf(stage.columns, under, { least: last.least, at: (node) => last.at(node, 0, 0) });
  }

  const affordable = (way: Way | null): Way | null => (way && way.cost < NEVER ? way : null);

  /** The cheapest way with no beginning settled: the ring alone is closed. */
  function solve(stage: Stage): Way | null {
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
    const bounds = boundsOf(stage);
    const narrowed = (only: Settled): Narrow => ({
      ...chainOf(stage, only),
      out: NO_WAY_OUT,
      bounds,
      only,
    });
    let settled: Settled = beginnings(first, list);
    const start = narrowed(settled);
    let best = affordable(
      cheapestWithin(start, Math.min(NEVER, costOfWay(start.columns, start.prices, start.out, first.nodes))),
    );
    /** Whether other beginnings are better. */
    function tries(other: Settled): boolean {
      const way = affordable(cheapestWithin(narrowed(other), best?.cost ?? NEVER));
      if (!way || (best !== null && way.cost >= best.cost)) return false;
      best = way;
      return true;
    }
    if (sizes.reduce((all, size) => all * size, 1) * segments.length <= MOST_WAYS) {
      for (const choice of choicesOf(sizes))
        tries(new Map(anchors.map((index, place) => [index, choice[place] ?? 0])));
      return best;
    }
    for (const anchor of anchors) {
      const size = Math.min(MOST_BEGINNINGS, list[anchor]?.entries.length ?? 1);
      for (let entry = 0; entry < size; entry += 1) {
        const other = new Map(settled).set(anchor, entry);
        if (tries(other)) settled = other;
      }
    }
    return best;
  }

  /** What it costs to go on from a node of a segment. */
  function wayOn(stage: Stage, segment: Segment, settled: Settled, node: number, following: number): number {
    const into = goesOn(segment.index) ? stage.pools[segment.index + 1] : undefined;
    return pricesFrom(stage, segment, settled).at(node, into?.entryOf[following] ?? 0, 2 * NEVER);
  }

  /** Tones that several bars may share, as they stand in one: equal ones are the same list. */
  const tonesIn = (bar: BarModel, tones: readonly Tone[]): readonly Tone[] =>
    remembered(
      remembered(placed, tones, () => new Map()),
      bar,
      () =>
        tones.map(({ start, duration, midi, name, tiedOn }) => ({
          ...toneOf(bar, start, duration, midi, name),
          tiedOn,
        })),
    );

  /** The notes of a way, heard in their own bars. */
  function play(plan: Plan, list: readonly Pool[], way: Way): HeardLine {
    const bars: (readonly Tone[])[] = model.bars.map((bar) => given[bar.index] ?? []);
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
      const own = tonesIn(segment.bar, tones);
      const before = bars[segment.bar.index] ?? [];
      bars[segment.bar.index] = before.length > 0 ? [...before, ...own] : own;
    });
    return bars;
  }

  const statement = segments.find((segment) => segment.whole && !segment.kept && segment.ladder);
  const stating = statement
    ? pools.poolOf(statement, { theme, slot: 'S', models: null, asks: 0, wide: false })
    : null;
  // A motif is of the theme itself where it has any for the chord.
  const motifs = (stating?.nodes ?? []).flatMap(({ contour, borrowed }) =>
    contour && contour.tags.length === 0 && !(borrowed && stating?.ownSome) ? [contour] : [],
  );
  /** Anything but the way round from the last segment to the first. */
  const hasJumps = onward.some(({ back }, index) =>
    back.some((to) => to !== 0 || index < segments.length - 1),
  );

  return {
    motifs: [...new Set(motifs)],
    best(plan) {
      const stage = stageOf(plan);
      const first = solve(stage);
      if (!first) return null;
      const way = hasJumps ? solveWithJumps(stage, first) : first;
      return way ? { heard: play(plan, stage.pools, way), cost: way.cost } : null;
    },
    choices: (plan) => segments.map((segment) => poolAt(segment, plan).nodes.length),
    costOf(plan, nodes) {
      const stage = stageOf(plan);
      const settled = beginnings({ cost: 0, nodes }, stage.pools);
      return segments.reduce((cost, segment, index) => {
        const own = stage.columns[index]?.costs[nodes[index] ?? 0] ?? 0;
        return cost + own + wayOn(stage, segment, settled, nodes[index] ?? 0, nodes[index + 1] ?? 0);
      }, 0);
    },
  };
}

/** Every choice of one number below each size. */
function* choicesOf(sizes: readonly number[]): Generator<readonly number[]> {
  const [size, ...others] = sizes;
  if (size === undefined) yield [];
  else for (const rest of choicesOf(others)) for (let one = 0; one < size; one += 1) yield [one, ...rest];
}
