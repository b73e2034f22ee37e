import { remembered, rememberedFor } from '../../base';
import type { Contour } from '../../feel';
import type { HeardLine } from '../hearing';
import type { BarModel, LineModel } from '../model';
import { soloBreaches } from '../rules/check';
import type { Tone } from '../tones';
import { type EdgeMaker, type Ending, edgeMaker } from './edges';
import type { Finisher, Goal, Leading } from './finish';
import { JOIN_WEIGHT } from './manner';
import type { Choices, Pool, PoolMaker } from './pools';
import type { Segment } from './segments';

/** Another way of playing one bar of a line, with the composer's price beside the bar's neighbours. */
export interface Alternative {
  readonly tones: readonly Tone[];
  readonly cost: number;
  /** The rules that it breaks by itself, as bits. */
  readonly solo: number;
}

/** A bar that is looked at, and what it is looked at with. */
interface Bar {
  readonly model: LineModel;
  readonly finisher: Finisher;
  readonly manner: 'walk' | 'riff';
  readonly heard: HeardLine;
  readonly pools: PoolMaker;
  /** The segment of another bar, whose notes are given; none where it has no harmony. */
  givenOf(bar: BarModel): readonly Segment[];
  /** The segments of the bar, and what each chooses from. */
  readonly parts: readonly Segment[];
  readonly choices: readonly Choices[];
}

/** How many ways are followed up, of each kind: those with beat one, those without it, and walks. */
const KINDS = ['onOne', 'late', 'walks'] as const;
type Share = Readonly<Record<(typeof KINDS)[number], number>>;

/** Beginnings of a bar of several chords; the ways that are priced in all, in one part and in several. */
const FOLLOWED: Share = { onOne: 120, late: 20, walks: 0 };
const PRICED: Share = { onOne: 150, late: 50, walks: 60 };
const PRICED_IN_PARTS: Share = { onOne: 1600, late: 80, walks: 0 };

/** Beyond any price. */
const FAR = Number.POSITIVE_INFINITY;

/** Ways through the first parts of a bar, by number. */
interface Ways {
  readonly costs: Float64Array;
  /** The choice for the first part. */
  firstOf(way: number): number;
  /** By part, the node. */
  nodesOf(way: number): readonly number[];
}

/** The ways through the parts of a bar, each finished against what comes next: the cheapest first, each once. */
export function waysThrough(about: Bar): readonly Alternative[] {
  const { model, finisher, manner, parts, choices } = about;
  const edges = edgeMaker(model, finisher, JOIN_WEIGHT[manner]);
  const [first] = parts;
  const last = parts.at(-1);
  const [firstChoices] = choices;
  const lastPool = choices.at(-1)?.pool;
  if (!first || !last || !firstChoices || !lastPool) return [];
  const kinds = kindsOf(firstChoices);
  let ways: Ways = {
    costs: enteredCosts(about, edges, first, firstChoices),
    firstOf: (way) => way,
    nodesOf: (way) => [firstChoices.nodeOf[way] ?? 0],
  };
  parts.slice(1).forEach((to, index) => {
    const [from, out, into] = [parts[index], choices[index], choices[index + 1]];
    if (from && out && into) ways = waysOn(edges, kinds, ways, { from, out, to, into });
  });

  const found = new Map<string, Alternative>();
  const passed = new Set<string>();
  const endOf = ender(about, edges, { first: firstChoices.pool, last: lastPool });
  for (const way of cheapest(ways, kinds, parts.length > 1 ? PRICED_IN_PARTS : PRICED)) {
    const nodes = ways.nodesOf(way);
    // The same nodes are led on alike and cost the same from there: what came first is cheapest.
    const path = nodes.join();
    if (passed.has(path)) continue;
    passed.add(path);
    const ending = endOf(last, nodes);
    const before = tonesBefore(about, edges, nodes);
    const ends = ending?.finished.tones ?? [];
    const tones = before.length > 0 ? [...before, ...ends] : ends;
    const cost = (ways.costs[way] ?? 0) + (ending?.cost ?? 0);
    const text = textOf(tones);
    const known = found.get(text);
    if (tones.length === 0 || (known && known.cost <= cost)) continue;
    const solo = ending && last.whole ? ending.finished.solo : soloBreaches(model, first.bar, tones);
    found.set(text, { tones, cost, solo });
  }
  return [...found.values()].sort((one, other) => one.cost - other.cost);
}

/** Finishes the last part of a way by its nodes; null where that rests. */
function ender(about: Bar, edges: EdgeMaker, pools: { readonly first: Pool; readonly last: Pool }) {
  const leadings = new Map<number, Leading>();
  return (last: Segment, nodes: readonly number[]): Ending | null => {
    const node = pools.last.nodes[nodes.at(-1) ?? 0];
    if (!node || node.last < 0) return null;
    const followsItself = last.bar.after.includes(last.bar.index);
    const entry = followsItself ? (pools.first.entryOf[nodes[0] ?? 0] ?? 0) : -1;
    const leading = remembered(leadings, entry, () =>
      about.finisher.leading(last, goalsFor(about, edges, entry), 0),
    );
    return edges.onwardFrom(last, node, leading);
  };
}

/** The segments of another bar, whose notes are given. */
function besides({ model, givenOf }: Bar, index: number): readonly Segment[] {
  const other = model.bars[index];
  return other ? givenOf(other) : [];
}

const givenPool = ({ pools, heard }: Bar, segment: Segment): Pool =>
  pools.givenPool(segment, heard[segment.bar.index] ?? []);

/** What the choices for the first part cost, with what the bars that come before make of their beginnings. */
function enteredCosts(
  about: Bar,
  edges: EdgeMaker,
  to: Segment,
  { costs, nodeOf, pool: into }: Choices,
): Float64Array {
  const { bar } = to;
  const sums = costs.slice();
  for (const index of bar.before) {
    const from = index === bar.index ? undefined : besides(about, index).at(-1);
    if (!from) continue;
    const prices = edges.between({ from, pool: givenPool(about, from), to, into, extras: [], asks: 0 });
    const met = into.entries.map((_, entry) => prices.at(0, entry, FAR));
    for (let choice = 0; choice < sums.length; choice += 1)
      sums[choice] = (sums[choice] ?? 0) + (met[into.entryOf[nodeOf[choice] ?? 0] ?? 0] ?? 0);
  }
  return sums;
}

/** Where a way goes on to; where the bar follows itself, to one of its beginnings. */
function goalsFor(about: Bar, edges: EdgeMaker, entry: number): readonly Goal[] {
  const { parts, choices } = about;
  const [first] = parts;
  const last = parts.at(-1);
  if (!first || !last) return [];
  return first.bar.after.flatMap((index) => {
    const [to] = index === first.bar.index ? parts : besides(about, index);
    const begins = to === first ? choices[0]?.pool.entries[entry] : to && givenPool(about, to).entries[0];
    return to && begins ? (edges.goalOf(to, begins, last) ?? []) : [];
  });
}

/** The tones of a way before its last part, finished. */
const tonesBefore = (
  { parts, choices, finisher }: Bar,
  edges: EdgeMaker,
  nodes: readonly number[],
): readonly Tone[] =>
  parts.slice(0, -1).flatMap((segment, part) => {
    const node = choices[part]?.pool.nodes[nodes[part] ?? 0];
    const [to, into] = [parts[part + 1], choices[part + 1]?.pool];
    if (!node || node.last < 0) return [];
    const begins = into?.entries[into.entryOf[nodes[part + 1] ?? 0] ?? 0];
    const goal = to && begins ? edges.goalOf(to, begins, segment) : null;
    const leading = finisher.leading(segment, goal ? [goal] : [], 0);
    return finisher.finish(segment, node, finisher.leadOf(segment, node, leading), leading).tones;
  });

/** Where one part of a bar goes over into the next. */
interface Join {
  readonly from: Segment;
  readonly out: Choices;
  readonly to: Segment;
  readonly into: Choices;
}

/** The cheapest ways so far, each gone on with by every choice for the next part. */
function waysOn(edges: EdgeMaker, kinds: Uint8Array, before: Ways, { from, out, to, into }: Join): Ways {
  const { pool } = into;
  const prices = edges.between({ from, pool: out.pool, to, into: pool, extras: [], asks: 0 });
  const followed = cheapest(before, kinds, FOLLOWED);
  const width = into.costs.length;
  const costs = new Float64Array(followed.length * width);
  followed.forEach((way, place) => {
    const node = before.nodesOf(way).at(-1) ?? 0;
    const cost = before.costs[way] ?? 0;
    for (let next = 0; next < width; next += 1) {
      const entry = pool.entryOf[into.nodeOf[next] ?? 0] ?? 0;
      costs[place * width + next] = cost + (into.costs[next] ?? 0) + prices.at(node, entry, FAR);
    }
  });
  const startOf = (way: number): number => followed[Math.floor(way / width)] ?? 0;
  return {
    costs,
    firstOf: (way) => before.firstOf(startOf(way)),
    nodesOf: (way) => [...before.nodesOf(startOf(way)), into.nodeOf[way % width] ?? 0],
  };
}

const textOf = (tones: readonly Tone[]): string => {
  let text = '';
  for (const { start, duration, midi } of tones) text += `${start} ${duration} ${midi},`;
  return text;
};

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

/** By choice, the number of its kind. */
const kindsOf = rememberedFor(
  ({ pool, nodeOf, contours }: Choices): Uint8Array =>
    Uint8Array.from(contours, (contour, choice) => {
      if (pool.nodes[nodeOf[choice] ?? 0]?.late) return KINDS.indexOf('late');
      return KINDS.indexOf(contour && walks(contour) ? 'walks' : 'onOne');
    }),
);

/** The cheapest ways of each kind, in their order: walks and a silent beat one would be crowded out. */
function cheapest({ costs, firstOf }: Ways, kinds: Uint8Array, share: Share): readonly number[] {
  const found: number[] = [];
  for (const kind of KINDS) {
    const own: number[] = [];
    for (let way = 0; way < costs.length; way += 1) {
      const named = KINDS[kinds[firstOf(way)] ?? 0] ?? 'onOne';
      // Where walks have no share of their own, they are ways like others.
      if ((named === 'walks' && share.walks === 0 ? 'onOne' : named) === kind) own.push(way);
    }
    found.push(...cheapestAmong(own, costs, share[kind]));
  }
  return found.sort((one, other) => (costs[one] ?? 0) - (costs[other] ?? 0) || one - other);
}

/** So many of some ways that cost least, of equal ones the first. */
function cheapestAmong(ways: readonly number[], costs: Float64Array, count: number): readonly number[] {
  if (ways.length <= count) return ways;
  const inOrder = Float64Array.from(ways, (way) => costs[way] ?? 0).sort();
  const dearest = inOrder[count - 1] ?? FAR;
  let equal = count - inOrder.findIndex((cost) => cost >= dearest);
  return ways.filter((way) => {
    const cost = costs[way] ?? 0;
    if (cost !== dearest) return cost < dearest;
    equal -= 1;
    return equal >= 0;
  });
}
