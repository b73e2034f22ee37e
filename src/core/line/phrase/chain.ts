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

/**
 * The cheapest way through all columns, closed to a ring where `ring` holds the prices from the last column back
 * into the first. Exact: what a node costs depends on itself and on how the next one begins, and every beginning
 * of the first column is tried against the end.
 * @param prices by segment, from its column into the next; one fewer than columns
 */
export function cheapestWay(
  columns: readonly Column[],
  prices: readonly Prices[],
  ring: Prices | null,
): Way | null {
  const [first] = columns;
  if (!first || columns.some(({ costs }) => costs.length === 0)) return null;
  let best: Way | null = null;
  for (let entry = 0; entry < (ring ? first.entries : 1); entry += 1) {
    const start = Float64Array.from(first.costs, (cost, node) =>
      !ring || first.entryOf[node] === entry ? cost : Number.POSITIVE_INFINITY,
    );
    const way = run(columns, prices, start, ring, entry);
    if (way && (best === null || way.cost < best.cost)) best = way;
  }
  return best;
}

// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: the loops of one dynamic programme
function run(
  columns: readonly Column[],
  prices: readonly Prices[],
  start: Float64Array,
  ring: Prices | null,
  entry: number,
): Way | null {
  let costs = start;
  const backs: Int32Array[] = [];
  for (let index = 1; index < columns.length; index += 1) {
    const column = columns[index];
    const table = prices[index - 1];
    if (!column || !table) return null;
    const { entries } = column;
    const least = new Float64Array(entries).fill(Number.POSITIVE_INFINITY);
    const from = new Int32Array(entries).fill(-1);
    for (let node = 0; node < costs.length; node += 1) {
      const cost = costs[node] ?? 0;
      if (cost === Number.POSITIVE_INFINITY) continue;
      const row = node * entries;
      for (let to = 0; to < entries; to += 1) {
        const whole = cost + (table[row + to] ?? 0);
        if (whole < (least[to] ?? 0)) {
          least[to] = whole;
          from[to] = node;
        }
      }
    }
    const next = new Float64Array(column.costs.length);
    const back = new Int32Array(column.costs.length);
    for (let node = 0; node < next.length; node += 1) {
      const to = column.entryOf[node] ?? 0;
      next[node] = (least[to] ?? 0) + (column.costs[node] ?? 0);
      back[node] = from[to] ?? -1;
    }
    backs.push(back);
    costs = next;
  }
  let end = -1;
  let least = Number.POSITIVE_INFINITY;
  const entries = columns[0]?.entries ?? 1;
  for (let node = 0; node < costs.length; node += 1) {
    const cost = (costs[node] ?? 0) + (ring ? (ring[node * entries + entry] ?? 0) : 0);
    if (cost < least) [least, end] = [cost, node];
  }
  if (end < 0) return null;
  const nodes = [end];
  for (let index = backs.length - 1; index >= 0; index -= 1)
    nodes.unshift(backs[index]?.[nodes[0] ?? 0] ?? 0);
  return { cost: least, nodes };
}
