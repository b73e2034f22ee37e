import {
  type Ahead,
  aheadOf,
  type Bounds,
  type Column,
  costOf,
  FREE,
  leastOf,
  NOWHERE,
  type Open,
  type Out,
  type Prices,
  type Rest,
  ROUNDING,
  restOf,
  trace,
  type Way,
} from './chain';

/** A task whose ways cost at least what is known of another. */
export interface Narrow {
  readonly columns: readonly Column[];
  readonly prices: readonly Prices[];
  readonly out: Out;
  /** By column, no rest of a way costs less. */
  readonly bounds: Bounds;
  /** By column, the only beginning that counts, where one is settled. */
  readonly only: ReadonlyMap<number, number>;
  /** By column, the only nodes that count, where that is known. */
  readonly passable?: readonly Int32Array[] | undefined;
  /** What another task with no lower limit found of the columns before one, where both have the same. */
  readonly same?: { readonly front: Front; readonly before: number } | undefined;
}

/** What is found from the front of the ways that are no dearer than a limit. */
export interface Front {
  /** The nodes that they can pass. */
  readonly open: Open;
  /** By column and beginning, the least that it costs to come there. */
  readonly reached: readonly Float64Array[];
}

/** A way, and what was found on the way to it. */
export interface Searched extends Way {
  readonly front: Front;
}

/** Looks from the front for the ways no dearer than a limit; null where there is none. */
// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: three loops, one inside the other
function frontOf(task: Narrow, limit: number): Front | null {
  const { columns, prices, out, bounds, only, passable, same } = task;
  const most = limit + ROUNDING;
  const begin = same?.before ?? 0;
  const open = same ? same.front.open.slice(0, begin) : [];
  const all = same ? same.front.reached.slice(0, begin) : [];
  let before = same?.front.reached[begin] ?? new Float64Array(columns[0]?.entries ?? 0);
  for (let index = begin; index < columns.length; index += 1) {
    const { costs, entryOf, aside } = columns[index] as Column;
    const own = bounds[index]?.least;
    const ahead = aheadOf(prices[index], bounds[index + 1]);
    const settled = only.get(index);
    const { least } = ahead?.prices ?? out;
    const after = ahead ? leastOf(ahead.rest) : 0;
    const reached = new Float64Array(columns[index + 1]?.entries ?? 0).fill(NOWHERE);
    const ways = new Uint8Array(costs.length);
    const among = passable?.[index];
    const count = among ? among.length : costs.length;
    let some = false;
    for (let place = 0; place < count; place += 1) {
      const node = among ? (among[place] ?? 0) : place;
      const entry = entryOf[node] ?? 0;
      if (settled !== undefined && entry !== settled) continue;
      const here = before[entry] ?? NOWHERE;
      if (here + (own?.[entry] ?? 0) > most) continue;
      let cost = here + (costs[node] ?? 0);
      const onward = (least[node] ?? 0) + after;
      if (cost + (aside?.least[node] ?? 0) + onward > most) continue;
      if (aside) cost += aside.at(node, 0, most - cost - onward);
      if (cost + onward > most) continue;
      if (ahead ? reach(ahead, node, cost, most, reached) : cost + out.at(node) <= most) {
        ways[node] = 1;
        some = true;
      }
    }
    if (!some) return null;
    open.push(ways);
    all.push(before);
    before = reached;
  }
  return { open, reached: all };
}

/** What the ways no dearer than a limit can pass. */
export interface Passage {
  /** By column and beginning, the least that a way through it costs; what is dearer than the limit need not be told apart. */
  readonly through: readonly Float64Array[];
  /** By column, the nodes. */
  readonly passable: readonly Int32Array[];
}

function nodesIn(ways: Uint8Array): Int32Array {
  const nodes = new Int32Array(ways.length);
  let count = 0;
  for (let node = 0; node < ways.length; node += 1) {
    if (ways[node] === 0) continue;
    nodes[count] = node;
    count += 1;
  }
  return nodes.subarray(0, count);
}

/** What can be passed within a limit; null where no way is. */
export function passageWithin(task: Narrow, limit: number): Passage | null {
  const front = frontOf(task, limit);
  if (!front) return null;
  return {
    through: front.reached.map((reached, index) =>
      reached.map((cost, entry) => cost + (task.bounds[index]?.least[entry] ?? 0)),
    ),
    passable: front.open.map((ways) => nodesIn(ways)),
  };
}

/** Notes what it costs to reach the beginnings that a node can go on to within a limit; whether there are any. */
function reach(
  { prices, rest: { least: rest, order } }: Ahead,
  node: number,
  cost: number,
  most: number,
  reached: Float64Array,
): boolean {
  const floor = prices.least[node] ?? 0;
  let any = false;
  for (let place = 0; place < order.length; place += 1) {
    const entry = order[place] ?? 0;
    const after = rest[entry] ?? 0;
    if (cost + floor + after > most) break;
    // It may be no way at all, but it shortens none.
    if ((reached[entry] ?? NOWHERE) <= cost + floor) {
      any = true;
      continue;
    }
    const price = prices.at(node, entry, most - cost - after);
    if (cost + price + after > most) continue;
    any = true;
    if (cost + price < (reached[entry] ?? NOWHERE)) reached[entry] = cost + price;
  }
  return any;
}

/**
 * The cheapest way of a task that costs no more than a limit; null where none does. Exact: only what no such way can
 * pass is left out.
 */
export function cheapestWithin(task: Narrow, limit: number): Searched | null {
  const front = frontOf(task, limit);
  if (!front) return null;
  const { open } = front;
  const { columns, prices, out } = task;
  const rest = restOf(columns, prices, out, open);
  const [entry = 0] = rest[0]?.order ?? [];
  const cost = rest[0]?.least[entry] ?? NOWHERE;
  return cost === NOWHERE ? null : { cost, nodes: trace(columns, prices, rest, entry, out, open), front };
}

/** What a way costs, added up from its end as the search does it. */
export function costOfWay(
  columns: readonly Column[],
  prices: readonly Prices[],
  out: Out,
  nodes: readonly number[],
): number {
  return nodes.reduceRight((rest, node, index) => {
    const next = columns[index + 1]?.entryOf[nodes[index + 1] ?? 0];
    const onward = next === undefined ? out.at(node) : (prices[index]?.at(node, next, NOWHERE) ?? 0) + rest;
    return costOf(columns[index] as Column, node) + onward;
  }, 0);
}

/**
 * The cheapest way through all columns, closed to a ring where `ring` holds the prices from the last column back
 * into the first. Exact: what a node costs depends on itself and on how the next one begins. Round a ring, the way
 * from each beginning is at least as dear as it is where the end may go back to any: the beginnings are tried in
 * that order until none can be better, each among the nodes only that a better way can pass.
 * @param prices by segment, from its column into the next; one fewer than columns
 */
export function cheapestWay(
  columns: readonly Column[],
  prices: readonly Prices[],
  ring: Prices | null,
): Way | null {
  const [first] = columns;
  if (!first || columns.some(({ costs }) => costs.length === 0)) return null;
  const { entries } = first;
  const { least } = ring ?? FREE;
  const backTo = (entry: number): Out => ({ least, at: (node) => ring?.at(node, entry, NOWHERE) ?? 0 });
  const anywhere: Out = {
    least,
    at(node) {
      if (!ring) return 0;
      let cheapest = NOWHERE;
      for (let entry = 0; entry < entries; entry += 1)
        cheapest = Math.min(cheapest, ring.at(node, entry, cheapest + ROUNDING));
      return cheapest;
    },
  };
  const bounds = restOf(columns, prices, anywhere);
  const { least: bound, order } = bounds[0] as Rest;
  if (!ring) {
    const [entry = 0] = order;
    return { cost: bound[entry] ?? NOWHERE, nodes: trace(columns, prices, bounds, entry, anywhere) };
  }
  let best: Way | null = null;
  for (const entry of order) {
    if (best !== null && (bound[entry] ?? NOWHERE) >= best.cost) break;
    const out = backTo(entry);
    const limit: number =
      best?.cost ?? costOfWay(columns, prices, out, trace(columns, prices, bounds, entry, anywhere));
    const way = cheapestWithin({ columns, prices, out, bounds, only: new Map([[0, entry]]) }, limit);
    if (way !== null && (best === null || way.cost < best.cost)) best = way;
  }
  return best;
}
