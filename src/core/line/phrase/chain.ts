/** The nodes of a segment as the search sees them: their own cost, and the ways they meet what comes. */
export interface Column {
  /** Cost of each node under the plan. */
  readonly costs: Float64Array;
  /** By node, the number of its beginning (first note, model it goes on with) among the column's beginnings. */
  readonly entryOf: Int32Array;
  readonly entries: number;
}

/** Prices of going from the nodes of a column into the beginnings of the next, worked out when they are asked for. */
export interface Prices {
  /** By node: no price of it is lower. */
  readonly least: Float64Array;
  /** The price; where that is beyond a limit, anything beyond it that is no higher. */
  at(node: number, entry: number, limit: number): number;
}

/** Prices that cost nothing. */
export const FREE: Prices = { least: new Float64Array(), at: () => 0 };

export interface Way {
  readonly cost: number;
  /** By segment, the number of the node. */
  readonly nodes: readonly number[];
}

const NOWHERE = Number.POSITIVE_INFINITY;

/** What sums of the same prices may differ by. */
const ROUNDING = 1e-9;

/** By column, the least that the rest of the way costs from each beginning on. */
type Rest = readonly Float64Array[];

/** The prices of the last column's nodes on the way out. */
type Out = Pick<Prices, 'least'> & { at(node: number): number };

/** Where a way can go on: the beginnings of the next column, those first from which the rest is cheapest. */
interface Ahead {
  readonly prices: Prices;
  readonly rest: Float64Array;
  readonly order: Int32Array;
}

/** The numbers of a list, those of the lowest values first, equal ones as they stand. */
function inOrder(values: Float64Array): Int32Array {
  const order = new Int32Array(values.length);
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index] ?? 0;
    let place = index;
    while (place > 0 && (values[order[place - 1] ?? 0] ?? 0) > value) {
      order[place] = order[place - 1] ?? 0;
      place -= 1;
    }
    order[place] = index;
  }
  return order;
}

const aheadOf = (prices: Prices | undefined, rest: Float64Array | undefined): Ahead | null =>
  prices && rest ? { prices, rest, order: inOrder(rest) } : null;

/** By column, the least that the rest of the way costs from each beginning on. */
function restOf(columns: readonly Column[], prices: readonly Prices[], out: Out): Rest {
  const rest: Float64Array[] = Array.from(columns, () => new Float64Array());
  for (let index = columns.length - 1; index >= 0; index -= 1) {
    const { costs, entryOf, entries } = columns[index] as Column;
    const ahead = aheadOf(prices[index], rest[index + 1]);
    const least = new Float64Array(entries).fill(NOWHERE);
    const bounds = (ahead?.prices ?? out).least;
    const after = ahead?.rest[ahead.order[0] ?? 0] ?? 0;
    for (let node = 0; node < costs.length; node += 1) {
      const cost = costs[node] ?? 0;
      const entry = entryOf[node] ?? 0;
      const known = least[entry] ?? 0;
      if (cost + ((bounds[node] ?? 0) + after) >= known) continue;
      const whole = cost + (ahead ? leastOnward(ahead, node, known - cost) : out.at(node));
      if (whole < known) least[entry] = whole;
    }
    rest[index] = least;
  }
  return rest;
}

/** The least that comes after a node; where that is no less than a limit, the limit at least. */
function leastOnward({ prices, rest, order }: Ahead, node: number, limit: number): number {
  let best = NOWHERE;
  const least = prices.least[node] ?? 0;
  for (let place = 0; place < order.length; place += 1) {
    const entry = order[place] ?? 0;
    const after = rest[entry] ?? 0;
    const bound = least + after;
    if (bound >= best || bound >= limit) break;
    const whole = prices.at(node, entry, Math.min(best, limit) - after + ROUNDING) + after;
    if (whole < best) best = whole;
  }
  return best;
}

/** The beginning that the cheapest way from a node goes into: of equal ones the first, whatever the order. */
function bestEntry({ prices, rest, order }: Ahead, node: number): { entry: number; cost: number } {
  let [best, least] = [0, NOWHERE];
  const bound = prices.least[node] ?? 0;
  for (const entry of order) {
    const after = rest[entry] ?? 0;
    if (bound + after > least) break;
    const whole = prices.at(node, entry, least - after + ROUNDING) + after;
    if (whole < least || (whole === least && entry < best)) [best, least] = [entry, whole];
  }
  return { entry: best, cost: least };
}

/** The nodes of a cheapest way that begins with an entry of the first column. */
function trace(
  columns: readonly Column[],
  prices: readonly Prices[],
  rest: Rest,
  begin: number,
  out: Out,
): readonly number[] {
  let entry = begin;
  return columns.map((column, index) => {
    const ahead = aheadOf(prices[index], rest[index + 1]);
    let [best, least, onward] = [-1, NOWHERE, entry];
    for (let node = 0; node < column.costs.length; node += 1) {
      if (column.entryOf[node] !== entry) continue;
      const next = ahead ? bestEntry(ahead, node) : { entry, cost: out.at(node) };
      const whole = (column.costs[node] ?? 0) + next.cost;
      if (whole < least) [best, least, onward] = [node, whole, next.entry];
    }
    entry = onward;
    return best;
  });
}

/**
 * The cheapest way through all columns, closed to a ring where `ring` holds the prices from the last column back
 * into the first. Exact: what a node costs depends on itself and on how the next one begins. Round a ring, the way
 * from each beginning is at least as dear as it is where the end may go back to any: the beginnings are tried in
 * that order until none can be better.
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
  const bound = bounds[0] as Float64Array;
  const order = Array.from(bound.keys()).sort((one, other) => (bound[one] ?? 0) - (bound[other] ?? 0));
  if (!ring) {
    const [entry = 0] = order;
    return { cost: bound[entry] ?? NOWHERE, nodes: trace(columns, prices, bounds, entry, anywhere) };
  }
  let best: Way | null = null;
  for (const entry of order) {
    if (best !== null && (bound[entry] ?? NOWHERE) >= best.cost) break;
    const out = backTo(entry);
    const rest = restOf(columns, prices, out);
    const cost = rest[0]?.[entry] ?? NOWHERE;
    if (best === null || cost < best.cost) best = { cost, nodes: trace(columns, prices, rest, entry, out) };
  }
  return best;
}
