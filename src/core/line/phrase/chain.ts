/** The nodes of a segment as the search sees them: their own cost, and the ways they meet what comes. */
export interface Column {
  /** Cost of each node under the plan. */
  readonly costs: Float64Array;
  /** By node, the number of its beginning (first note, model it goes on with) among the column's beginnings. */
  readonly entryOf: Int32Array;
  readonly entries: number;
  /** What each node costs beside that, where it is dear to tell: asked for with the only beginning 0. */
  readonly aside?: Prices;
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

export const NOWHERE = Number.POSITIVE_INFINITY;

/** What sums of the same prices may differ by. */
export const ROUNDING = 1e-9;

/** The least that the rest of a way costs from each beginning of a column on, and those first from which it is cheapest. */
export interface Rest {
  readonly least: Float64Array;
  readonly order: Int32Array;
}

/** By column, what the rest of the way costs at least. */
export type Bounds = readonly Rest[];

/** The prices of the last column's nodes on the way out. */
export type Out = Pick<Prices, 'least'> & { at(node: number): number };

/** Nothing to pay on the way out. */
export const NO_WAY_OUT: Out = { least: FREE.least, at: () => 0 };

/** By column and node, 1 where a way is open; all are where there is no such list. */
export type Open = readonly Uint8Array[];

/** Where a way can go on: the beginnings of the next column. */
export interface Ahead {
  readonly prices: Prices;
  readonly rest: Rest;
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

export const aheadOf = (prices: Prices | undefined, rest: Rest | undefined): Ahead | null =>
  prices && rest ? { prices, rest } : null;

/** The least that the rest of a way costs, wherever it begins. */
export const leastOf = ({ least, order }: Rest): number => least[order[0] ?? 0] ?? 0;

/** What a node costs, all of it. */
export const costOf = ({ costs, aside }: Column, node: number): number =>
  aside ? (costs[node] ?? 0) + aside.at(node, 0, NOWHERE) : (costs[node] ?? 0);

/** The least that the way costs from each beginning of a column on. */
function leastFrom(column: Column, ahead: Ahead | null, out: Out, ways: Uint8Array | undefined) {
  const { costs, entryOf, entries, aside } = column;
  const least = new Float64Array(entries).fill(NOWHERE);
  const bounds = (ahead?.prices ?? out).least;
  const after = ahead ? leastOf(ahead.rest) : 0;
  for (let node = 0; node < costs.length; node += 1) {
    if (ways?.[node] === 0) continue;
    const own = costs[node] ?? 0;
    const entry = entryOf[node] ?? 0;
    const known = least[entry] ?? 0;
    const onward = (bounds[node] ?? 0) + after;
    if (own + (aside?.least[node] ?? 0) + onward >= known) continue;
    const cost = aside ? own + aside.at(node, 0, known - own - onward + ROUNDING) : own;
    if (cost + onward >= known) continue;
    const whole = cost + (ahead ? leastOnward(ahead, node, known - cost) : out.at(node));
    if (whole < known) least[entry] = whole;
  }
  return least;
}

/** By column, the least that the rest of the way costs from each beginning on. */
export function restOf(
  columns: readonly Column[],
  prices: readonly Prices[],
  out: Out,
  open: Open | null = null,
): Bounds {
  const rests: Rest[] = [];
  for (let index = columns.length - 1; index >= 0; index -= 1) {
    const ahead = aheadOf(prices[index], rests[index + 1]);
    const least = leastFrom(columns[index] as Column, ahead, out, open?.[index]);
    rests[index] = { least, order: inOrder(least) };
  }
  return rests;
}

/** The least that comes after a node; where that is no less than a limit, the limit at least. */
function leastOnward({ prices, rest: { least: rest, order } }: Ahead, node: number, limit: number): number {
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
function bestEntry(
  { prices, rest: { least: rest, order } }: Ahead,
  node: number,
): { entry: number; cost: number } {
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
export function trace(
  columns: readonly Column[],
  prices: readonly Prices[],
  rest: Bounds,
  begin: number,
  out: Out,
  open: Open | null = null,
): readonly number[] {
  let entry = begin;
  return columns.map((column, index) => {
    const ahead = aheadOf(prices[index], rest[index + 1]);
    const ways = open?.[index];
    let [best, least, onward] = [-1, NOWHERE, entry];
    for (let node = 0; node < column.costs.length; node += 1) {
      if (column.entryOf[node] !== entry || ways?.[node] === 0) continue;
      const next = ahead ? bestEntry(ahead, node) : { entry, cost: out.at(node) };
      const whole = costOf(column, node) + next.cost;
      if (whole < least) [best, least, onward] = [node, whole, next.entry];
    }
    entry = onward;
    return best;
  });
}
