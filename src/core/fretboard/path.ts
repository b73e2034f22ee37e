import type { HandModel, Haste, Layer } from './model';

/** A line as the search sees it: layer after layer, with what lies between a layer and the one before it. */
export interface Track {
  readonly layers: readonly Layer[];
  /** `gaps[i]` lies between layer i − 1 and layer i; the first one is the seam of a loop. */
  readonly gaps: readonly Gap[];
}

export interface Gap {
  readonly samePitch: boolean;
  readonly haste: Haste;
}

export interface Path {
  /** The chosen way in each layer. */
  readonly choice: readonly number[];
  readonly cost: number;
}

/** Cheapest cost up to every way of a layer, given those of the layer before it; and where each came from. */
export function advance(
  model: HandModel,
  before: Layer,
  costs: Float64Array,
  gap: Gap,
  after: Layer,
  origins?: Int16Array,
): Float64Array {
  const next = new Float64Array(after.own.length);
  for (let to = 0; to < next.length; to += 1) {
    let least = Number.POSITIVE_INFINITY;
    let origin = -1;
    for (let from = 0; from < costs.length; from += 1) {
      const soFar = costs[from] ?? Number.POSITIVE_INFINITY;
      if (soFar >= least) continue;
      const cost = soFar + model.step(before, from, after, to, gap.samePitch, gap.haste);
      if (cost < least) {
        least = cost;
        origin = from;
      }
    }
    next[to] = least + (after.own[to] ?? 0);
    if (origins !== undefined) origins[to] = origin;
  }
  return next;
}

/** Forward pass from the given costs of the first layer, with the origins to walk back along. */
function forward(model: HandModel, track: Track, start: Float64Array, bound?: Bound): Forward {
  const origins: Int16Array[] = [];
  let costs = start;
  track.layers.forEach((layer, index) => {
    const before = track.layers[index - 1];
    const gap = track.gaps[index];
    if (before === undefined || gap === undefined) return;
    const from = new Int16Array(layer.own.length);
    costs = advance(model, before, costs, gap, layer, from);
    if (bound !== undefined) prune(costs, bound, index);
    origins.push(from);
  });
  return { costs, origins };
}

interface Forward {
  /** Of the last layer. */
  readonly costs: Float64Array;
  readonly origins: readonly Int16Array[];
}

interface Bound {
  /** What must at least follow after each way of each layer. */
  readonly rest: readonly Float64Array[];
  /** The cost to beat. */
  readonly most: number;
}

function prune(costs: Float64Array, bound: Bound, index: number): void {
  const rest = bound.rest[index];
  for (let state = 0; state < costs.length; state += 1) {
    if ((costs[state] ?? 0) + (rest?.[state] ?? 0) >= bound.most) costs[state] = Number.POSITIVE_INFINITY;
  }
}

function walkBack(origins: readonly Int16Array[], last: number): number[] {
  const choice = [last];
  let state = last;
  for (let index = origins.length - 1; index >= 0; index -= 1) {
    state = origins[index]?.[state] ?? 0;
    choice.unshift(state);
  }
  return choice;
}

function leastIndex(costs: ArrayLike<number>): number {
  let least = 0;
  for (let index = 1; index < costs.length; index += 1) {
    if ((costs[index] ?? 0) < (costs[least] ?? 0)) least = index;
  }
  return least;
}

/** The cheapest way through a line that is played once. */
export function cheapestPath(model: HandModel, track: Track): Path {
  const first = track.layers[0];
  if (first === undefined) return { choice: [], cost: 0 };
  const { costs, origins } = forward(model, track, first.own);
  const last = leastIndex(costs);
  return { choice: walkBack(origins, last), cost: costs[last] ?? 0 };
}

/** What must at least follow after each way, when the round may close on any way of the first layer. */
function restCosts(model: HandModel, track: Track): Float64Array[] {
  const count = track.layers.length;
  const rests: Float64Array[] = new Array(count);
  for (let index = count - 1; index >= 0; index -= 1) {
    const layer = track.layers[index];
    const closes = index === count - 1;
    const after = track.layers[closes ? 0 : index + 1];
    const gap = track.gaps[closes ? 0 : index + 1];
    if (layer === undefined || after === undefined || gap === undefined) continue;
    const beyond = closes ? null : (rests[index + 1] ?? null);
    const rest = new Float64Array(layer.own.length);
    for (let from = 0; from < rest.length; from += 1) {
      let least = Number.POSITIVE_INFINITY;
      for (let to = 0; to < after.own.length; to += 1) {
        const fixed = beyond === null ? 0 : (beyond[to] ?? 0) + (after.own[to] ?? 0);
        if (fixed >= least) continue;
        least = Math.min(least, fixed + model.step(layer, from, after, to, gap.samePitch, gap.haste));
      }
      rest[from] = least;
    }
    rests[index] = rest;
  }
  return rests;
}

/**
 * The cheapest way through a line that is played round and round, the seam included. Exact: every way of the
 * first layer is tried as the closing point unless a lower bound proves that it cannot win.
 */
export function cheapestRound(model: HandModel, track: Track): Path {
  const first = track.layers[0];
  const last = track.layers.at(-1);
  const seam = track.gaps[0];
  if (first === undefined || last === undefined || seam === undefined) return { choice: [], cost: 0 };
  const rest = restCosts(model, track);
  const bounds = Array.from(first.own, (own, state) => own + (rest[0]?.[state] ?? 0));
  const order = bounds
    .map((_, state) => state)
    .sort((one, other) => (bounds[one] ?? 0) - (bounds[other] ?? 0));
  let best: Path = { choice: [], cost: Number.POSITIVE_INFINITY };
  for (const start of order) {
    if ((bounds[start] ?? 0) >= best.cost) break;
    const opening = new Float64Array(first.own.length).fill(Number.POSITIVE_INFINITY);
    opening[start] = first.own[start] ?? 0;
    const { costs, origins } = forward(model, track, opening, { rest, most: best.cost });
    const closed = costs.map(
      (cost, state) => cost + model.step(last, state, first, start, seam.samePitch, seam.haste),
    );
    const end = leastIndex(closed);
    const cost = closed[end] ?? Number.POSITIVE_INFINITY;
    if (cost < best.cost) best = { choice: walkBack(origins, end), cost };
  }
  return best;
}
