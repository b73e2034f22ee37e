/** The nodes of a segment as the search sees them: their own cost, and the ways they meet what comes. */
export interface Column {
  /** Cost of each node under the plan. */
  readonly costs: Float64Array;
  /** By node, the number of its beginning (first note, model it goes on with) among the column's beginnings. */
  readonly entryOf: Int32Array;
  readonly entries: number;
}

/** Price of going from a node of a column into a beginning of the next: `node * entries + entry`. */
export type Prices = Float64Array;

export interface Way {
  readonly cost: number;
  /** By segment, the number of the node. */
  readonly nodes: readonly number[];
}

const NOWHERE = Number.POSITIVE_INFINITY;

/** By column, the least that the rest of the way costs from each beginning on. */
type Rest = readonly Float64Array[];

/** The prices of the last column's nodes on the way out. */
type Out = (node: number) => number;

/** By column and node, the cheapest way on from the node, itself included. */
function restOf(columns: readonly Column[], prices: readonly Prices[], out: Out): Rest {
  const rest: Float64Array[] = [];
  for (let index = columns.length - 1; index >= 0; index -= 1) {
    const column = columns[index] as Column;
    const table = prices[index];
    const next = rest[0];
    const least = new Float64Array(column.entries).fill(NOWHERE);
    const { costs, entryOf } = column;
    for (let node = 0; node < costs.length; node += 1) {
      const whole = (costs[node] ?? 0) + onward(table, next, node, out);
      const entry = entryOf[node] ?? 0;
      if (whole < (least[entry] ?? 0)) least[entry] = whole;
    }
    rest.unshift(least);
  }
  return rest;
}

/** The least that comes after a node. */
function onward(table: Prices | undefined, next: Float64Array | undefined, node: number, out: Out): number {
  if (!table || !next) return out(node);
  let best = NOWHERE;
  const row = node * next.length;
  for (let entry = 0; entry < next.length; entry += 1) {
    const whole = (table[row + entry] ?? 0) + (next[entry] ?? 0);
    if (whole < best) best = whole;
  }
  return best;
}

/** The cheapest node of a column among those with a beginning. */
function bestNode(column: Column, entry: number, costOn: (node: number) => number): number {
  let [best, least] = [-1, NOWHERE];
  for (let node = 0; node < column.costs.length; node += 1) {
    if (column.entryOf[node] !== entry) continue;
    const whole = (column.costs[node] ?? 0) + costOn(node);
    if (whole < least) [best, least] = [node, whole];
  }
  return best;
}

/** The beginning that the cheapest way from a node goes into. */
function bestEntry(table: Prices, next: Float64Array, node: number): number {
  let [best, least] = [0, NOWHERE];
  for (let entry = 0; entry < next.length; entry += 1) {
    const whole = (table[node * next.length + entry] ?? 0) + (next[entry] ?? 0);
    if (whole < least) [best, least] = [entry, whole];
  }
  return best;
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
    const table = prices[index];
    const next = rest[index + 1];
    const best = bestNode(column, entry, (node) => onward(table, next, node, out));
    if (table && next) entry = bestEntry(table, next, best);
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
  const backTo =
    (entry: number): Out =>
    (node) =>
      ring?.[node * entries + entry] ?? 0;
  const anywhere: Out = (node) => {
    if (!ring) return 0;
    let least = NOWHERE;
    for (let entry = 0; entry < entries; entry += 1)
      least = Math.min(least, ring[node * entries + entry] ?? 0);
    return least;
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
