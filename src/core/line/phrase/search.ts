import type { Contour, MetrePhrases, PhraseBook, Theme } from '../../feel';
import type { HeardLine } from '../hearing';
import type { LineModel } from '../model';
import { type Tone, toneOf } from '../tones';
import { type Column, cheapestWay, FREE, type Prices, type Way } from './chain';
import { turnedThirds } from './counted-tune';
import { type EdgeMaker, edgeMaker } from './edges';
import { type Finisher, finisherFor, type Goal } from './finish';
import { type Liking, likingFor } from './liking';
import { JOIN_WEIGHT, nodeRulesFor } from './manner';
import type { BarPlan, Plan } from './plan';
import { type Pool, type PoolMaker, poolMaker } from './pools';
import { onwardOf, type Route } from './route';
import { type Segment, segmentsOf } from './segments';

/** Price of what cannot be: a model broken off, another beginning where one is settled. */
const NEVER = 1e6;

/** Beginnings of the bars that repeats lead back to: all are tried where that is so many ways, else by turns. */
const MOST_WAYS = 600;
const MOST_BEGINNINGS = 8;

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

  type Settled = ReadonlyMap<number, number>;

  /** Goals of a segment beside the next one as written, for settled beginnings. */
  const extrasOf = (segment: Segment, list: readonly Pool[], settled: Settled): readonly Goal[] =>
    (onward[segment.index]?.back ?? []).flatMap((index) => {
      const to = segments[index];
      const begins = list[index]?.entries[settled.get(index) ?? -1];
      return to && begins ? (edges.goalOf(to, begins, segment) ?? []) : [];
    });

  const settledColumn = (column: Column, entry: number | undefined): Column =>
    entry === undefined
      ? column
      : {
          ...column,
          costs: column.costs.map((cost, node) =>
            column.entryOf[node] === entry ? cost : Number.POSITIVE_INFINITY,
          ),
        };

  /** The cheapest way for settled beginnings of the anchors; with none settled, the ring alone is closed. */
  function solve({ plan, pools: list, columns: base, prices: known }: Stage, settled: Settled): Way | null {
    const columns = base.map((column, index) => settledColumn(column, settled.get(index)));
    const prices: Prices[] = [];
    let ring: Prices | null = null;
    segments.forEach((segment, index) => {
      const table = known[index];
      if (table) {
        prices.push(table);
        return;
      }
      const [pool, into, next, start] = [list[index], list[index + 1], segments[index + 1], segments[0]];
      if (!pool) return;
      const asks = asksOf(segment, plan);
      const extras = extrasOf(segment, list, settled);
      if (onward[index]?.next && next && into) {
        prices.push(edges.between({ from: segment, pool, to: next, into, extras, asks }));
        return;
      }
      if (!next && settled.size === 0 && onward[index]?.back.includes(0) && start && list[0]) {
        ring = edges.between({ from: segment, pool, to: start, into: list[0], extras: [], asks });
        return;
      }
      const alone = edges.between({ from: segment, pool, to: null, into: null, extras, asks });
      const column = columns[index];
      if (column)
        columns[index] = {
          ...column,
          costs: column.costs.map((cost, node) => cost + alone.at(node, 0, 2 * NEVER)),
        };
      if (into) prices.push(FREE);
    });
    const way = cheapestWay(columns, prices, ring);
    return way && way.cost < NEVER ? way : null;
  }

  /** Where a way begins in the anchors. */
  const beginnings = (way: Way, list: readonly Pool[]): Map<number, number> =>
    new Map(anchors.map((index) => [index, list[index]?.entryOf[way.nodes[index] ?? 0] ?? 0]));

  /** The cheapest way where repeats lead back: over all beginnings of those bars, or over one after the other. */
  function solveWithJumps(stage: Stage, first: Way): Way | null {
    const list = stage.pools;
    const sizes = anchors.map((index) => list[index]?.entries.length ?? 1);
    let settled: Settled = beginnings(first, list);
    let best = solve(stage, settled);
    if (sizes.reduce((all, size) => all * size, 1) * segments.length <= MOST_WAYS) {
      const all = [...choicesOf(sizes)].map((choice) =>
        solve(stage, new Map(anchors.map((index, place) => [index, choice[place] ?? 0]))),
      );
      return all.reduce((one, other) => (one && (!other || one.cost <= other.cost) ? one : other), best);
    }
    for (const anchor of anchors) {
      const size = Math.min(MOST_BEGINNINGS, list[anchor]?.entries.length ?? 1);
      for (let entry = 0; entry < size; entry += 1) {
        const other = new Map(settled).set(anchor, entry);
        const way = solve(stage, other);
        if (way && (best === null || way.cost < best.cost)) [best, settled] = [way, other];
      }
    }
    return best;
  }

  /** What it costs to go on from a node of a segment. */
  function wayOn(stage: Stage, segment: Segment, settled: Settled, node: number, following: number): number {
    const { index } = segment;
    const [pool, into, next] = [stage.pools[index], stage.pools[index + 1], segments[index + 1]];
    if (!pool) return 0;
    const extras = extrasOf(segment, stage.pools, settled);
    const asks = asksOf(segment, stage.plan);
    if (onward[index]?.next !== true || !into || !next)
      return edges
        .between({ from: segment, pool, to: null, into: null, extras, asks })
        .at(node, 0, 2 * NEVER);
    const table = edges.between({ from: segment, pool, to: next, into, extras, asks });
    return table.at(node, into.entryOf[following] ?? 0, 2 * NEVER);
  }

  /** The notes of a way, heard in their own bars. */
  function play(plan: Plan, list: readonly Pool[], way: Way): HeardLine {
    const bars: Tone[][] = model.bars.map((bar) => [...(given[bar.index] ?? [])]);
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
      for (const { start, duration, midi, name, tiedOn } of tones)
        bars[segment.bar.index]?.push({ ...toneOf(segment.bar, start, duration, midi, name), tiedOn });
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
      const first = solve(stage, new Map());
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
