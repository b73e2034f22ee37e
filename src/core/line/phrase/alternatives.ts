import { remembered } from '../../base';
import { type BarSlot, type Contour, type MetrePhrases, phraseBookOf, type Theme } from '../../feel';
import type { HeardLine } from '../hearing';
import type { BarModel, LineModel } from '../model';
import type { Tone } from '../tones';
import type { Prices } from './chain';
import { manyOrders } from './drills';
import { edgeMaker } from './edges';
import { type Finisher, finisherFor, type Goal, type Leading } from './finish';
import { JOIN_WEIGHT, nodeRulesFor, phrasesIn } from './manner';
import { type Pool, type PoolMaker, poolMaker } from './pools';
import { type Segment, segmentsOf } from './segments';
import { bitOf, type Techniques } from './shown';
import { looseThemesFor } from './themes';

/** Another way of playing one bar of a line, with the composer's price beside the bar's neighbours. */
export interface Alternative {
  readonly tones: readonly Tone[];
  readonly cost: number;
}

/** What the bars of a chart have in common, however often one of them is asked about. */
export interface Alternatives {
  /** Ways to play a bar, the cheapest first, each once. */
  inBar(heard: HeardLine, bar: BarModel): readonly Alternative[];
}

/** What a bar may do in its phrase, wherever it stands. */
const SLOTS: readonly BarSlot[] = ['S', 'A', 'L', 'C', 'T'];

/** How many ways are followed up, of each kind: those with beat one, those without it, and walks. */
interface Share {
  readonly onOne: number;
  readonly late: number;
  readonly walks: number;
}

/** Beginnings of a bar of several chords; the ways that are priced in all, in one part and in several. */
const FOLLOWED: Share = { onOne: 120, late: 20, walks: 0 };
const PRICED: Share = { onOne: 240, late: 60, walks: 60 };
const PRICED_IN_PARTS: Share = { onOne: 1600, late: 80, walks: 0 };

/** Choices that one theme has for a bar: as good as all. */
const MOST_NODES = 300;

/** The kinds that are looked for by themselves, since the book's own bars seldom hold them. */
const SOUGHT = ['scale steps', 'beat one silent', 'octave', 'approach note', 'anticipation'] as const;

/** A way through the first parts of a bar. */
interface Start {
  readonly nodes: readonly number[];
  readonly cost: number;
}

/** What the choices of one metre's book share. */
interface Shelf {
  readonly metre: MetrePhrases;
  readonly themes: readonly Theme[];
  readonly pools: PoolMaker;
}

/** The other ways to play the bars of a chart, from the phrases and at the prices of the composer. */
export function alternativesFor(model: LineModel): Alternatives {
  const book = phraseBookOf(model.request.feel.id);
  const rules = nodeRulesFor(model, book);
  const shelves = new Map<MetrePhrases, Shelf>();
  const finisher = finisherFor(model, {
    longChromatics: rules.longChromatics,
    walk: book.manner === 'walk',
  });

  function shelfFor(bar: BarModel): Shelf {
    const metre = phrasesIn(book, bar.metre);
    return remembered(shelves, metre, () => ({
      metre,
      themes: [...looseThemesFor(metre, model, 0), manyOrders(metre)],
      pools: poolMaker(model, rules, metre, MOST_NODES),
    }));
  }

  /** By part of the bar, every choice that the book has for it. */
  function choicesOf(shelf: Shelf, bar: BarModel, parts: readonly Segment[]): Pool[][] {
    const asked: Techniques[] = SOUGHT.filter((one) => bar.demands.techniques.has(one)).map(bitOf);
    const [first] = shelf.themes;
    return parts.map((segment) => {
      if (!segment.ladder) return [shelf.pools.givenPool(segment, [])];
      const place = { models: null, tuneBar: null, asks: 0, wide: false };
      const slots = segment.whole ? SLOTS : SLOTS.slice(0, 1);
      const plain = shelf.themes.flatMap((theme) =>
        slots.map((slot) => shelf.pools.poolOf(segment, { ...place, theme, slot })),
      );
      const special = asked.flatMap((asks) =>
        first ? [shelf.pools.poolOf(segment, { ...place, theme: first, slot: 'A', asks })] : [],
      );
      const wide =
        first && !segment.whole
          ? [shelf.pools.poolOf(segment, { ...place, theme: first, slot: 'S', wide: true })]
          : [];
      return [...plain, ...special, ...wide];
    });
  }

  return {
    inBar(heard, bar) {
      const shelf = shelfFor(bar);
      const given = model.bars.map(({ index }) => index !== bar.index);
      const segments = segmentsOf(model, shelf.metre.metre, given);
      const parts = segments.filter((segment) => segment.bar === bar);
      const pools = choicesOf(shelf, bar, parts).map((list) => shelf.pools.joined(list));
      return waysThrough({
        model,
        finisher,
        heard,
        segments,
        parts,
        pools,
        pooled: shelf.pools,
        manner: book.manner,
      });
    },
  };
}

interface Bar {
  readonly model: LineModel;
  readonly finisher: Finisher;
  readonly heard: HeardLine;
  readonly segments: readonly Segment[];
  readonly parts: readonly Segment[];
  readonly pools: readonly Pool[];
  readonly pooled: PoolMaker;
  readonly manner: 'walk' | 'riff';
}

/** The ways through the parts of a bar, each finished against what comes next. */
function waysThrough(about: Bar): readonly Alternative[] {
  const { model, finisher, heard, segments, parts, pools, pooled, manner } = about;
  const edges = edgeMaker(model, finisher, JOIN_WEIGHT[manner]);
  const [first] = parts;
  const last = parts.at(-1);
  const [firstPool] = pools;
  const lastPool = pools.at(-1);
  if (!first || !last || !firstPool || !lastPool) return [];
  const { bar } = first;
  const poolIn = (segment: Segment): Pool => pooled.givenPool(segment, heard[segment.bar.index] ?? []);
  const headOf = (index: number): Segment | undefined =>
    index === bar.index ? first : segments.find((segment) => segment.bar.index === index);

  /** What the bars that come before make of each beginning of this one. */
  const entering = bar.before.flatMap((index) => {
    const from =
      index === bar.index ? undefined : segments.findLast((segment) => segment.bar.index === index);
    if (!from) return [];
    return [edges.between({ from, pool: poolIn(from), to: first, into: firstPool, extras: [], asks: 0 })];
  });
  /** Where a way goes on to, from the way's own beginning where the bar follows itself. */
  const goalsFor = (from: Segment, own: number): readonly Goal[] =>
    bar.after.flatMap((index) => {
      const to = headOf(index);
      const pool = to === first ? firstPool : to && poolIn(to);
      const begins = pool?.entries[to === first ? own : 0];
      return to && begins ? (edges.goalOf(to, begins, from) ?? []) : [];
    });

  const entryIn = (pool: Pool, node: number): number => pool.entryOf[node] ?? 0;
  let ways: readonly Start[] = Array.from(firstPool.nodes, ({ cost }, node): Start => {
    const entry = entryIn(firstPool, node);
    return { nodes: [node], cost: entering.reduce((sum, prices) => sum + prices.at(0, entry, FAR), cost) };
  });
  parts.slice(1).forEach((to, index) => {
    const [from, pool, into] = [parts[index], pools[index], pools[index + 1]];
    if (!from || !pool || !into) return;
    const prices = edges.between({ from, pool, to, into, extras: [], asks: 0 });
    ways = cheapest(ways, firstPool, FOLLOWED).flatMap(({ nodes, cost }) =>
      into.nodes.map((node, place) => ({
        nodes: [...nodes, place],
        cost: cost + node.cost + prices.at(nodes.at(-1) ?? 0, entryIn(into, place), FAR),
      })),
    );
  });

  function tonesOf(nodes: readonly number[], homeward: Leading): readonly Tone[] {
    return parts.flatMap((segment, index) => {
      const node = pools[index]?.nodes[nodes[index] ?? 0];
      if (!node || node.last < 0) return [];
      const next = parts[index + 1];
      const into = pools[index + 1];
      const begins = into?.entries[entryIn(into, nodes[index + 1] ?? 0)];
      const inside = next && begins ? edges.goalOf(next, begins, segment) : null;
      const leading = next ? finisher.leading(segment, inside ? [inside] : [], 0) : homeward;
      return finisher.finish(segment, node, finisher.leadOf(segment, node, leading), leading).tones;
    });
  }

  const found = new Map<string, Alternative>();
  const onward = new Map<number, { readonly leading: Leading; readonly prices: Prices }>();
  const followsItself = bar.after.includes(bar.index);
  for (const { nodes, cost } of cheapest(ways, firstPool, parts.length > 1 ? PRICED_IN_PARTS : PRICED)) {
    const own = entryIn(firstPool, nodes[0] ?? 0);
    const { leading, prices } = remembered(onward, followsItself ? own : -1, () => {
      const goals = goalsFor(last, own);
      return {
        leading: finisher.leading(last, goals, 0),
        prices: edges.between({ from: last, pool: lastPool, to: null, into: null, extras: goals, asks: 0 }),
      };
    });
    const tones = tonesOf(nodes, leading);
    const text = tones.map(({ start, duration, midi }) => `${start} ${duration} ${midi}`).join();
    const whole = cost + prices.at(nodes.at(-1) ?? 0, 0, FAR);
    const known = found.get(text);
    if (tones.length > 0 && (!known || whole < known.cost)) found.set(text, { tones, cost: whole });
  }
  return [...found.values()].sort((one, other) => one.cost - other.cost);
}

/** Beyond any price. */
const FAR = Number.POSITIVE_INFINITY;

const walking = new WeakMap<Contour, boolean>();

/** Whether the last notes of a contour go on by step in one direction. */
const walks = (contour: Contour): boolean =>
  remembered(walking, contour, () => {
    const steps = contour.roles
      .slice(-4)
      .map((role) => (role.kind === 'step' ? role.step + 7 * role.octave : NaN));
    const moves = steps.slice(1).map((step, index) => step - (steps[index] ?? step));
    return moves.length === 3 && Math.abs(moves[0] ?? 0) === 1 && moves.every((move) => move === moves[0]);
  });

/** The cheapest ways of each kind: walks and a silent beat one would be crowded out. */
function cheapest(ways: readonly Start[], pool: Pool, share: Share): readonly Start[] {
  const inOrder = ways.toSorted((one, other) => one.cost - other.cost);
  const kindOf = ({ nodes }: Start): keyof Share => {
    const node = pool.nodes[nodes[0] ?? 0];
    if (node?.late) return 'late';
    return share.walks > 0 && node?.contour && walks(node.contour) ? 'walks' : 'onOne';
  };
  const left = { ...share };
  return inOrder.filter((way) => {
    const kind = kindOf(way);
    left[kind] -= 1;
    return left[kind] >= 0;
  });
}
