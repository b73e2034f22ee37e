import type { Haste } from './model';
import type { Link } from './transition';

/** A line as the search sees it: the ways of each note, and what lies between a note and the one before it. */
export interface Track {
  /** What each way of each note costs by itself; Infinity where the way is barred. */
  readonly own: readonly Float64Array[];
  /** `steps[i]` leads from note i − 1 to note i; the first one is the seam of a loop. */
  readonly steps: readonly Step[];
}

export interface Step {
  readonly link: Link;
  readonly haste: Haste;
}

export interface Path {
  /** Index of the chosen way of each note. */
  readonly choice: readonly number[];
  readonly cost: number;
}

const INFINITE = Number.POSITIVE_INFINITY;

/**
 * Cheapest cost up to every way of a note, given those of the note before it.
 * @param own what each way of the note costs by itself
 * @param origins when given, receives the way of the note before from which each way is reached
 */
export function advance(
  costs: Float64Array,
  step: Step,
  own: Float64Array,
  origins?: Int16Array,
): Float64Array {
  const next = new Float64Array(own.length).fill(INFINITE);
  for (let from = 0; from < costs.length; from += 1) {
    const soFar = costs[from] ?? INFINITE;
    if (soFar < INFINITE) relax(next, soFar, step, from, origins);
  }
  for (let to = 0; to < next.length; to += 1) next[to] = (next[to] ?? 0) + (own[to] ?? 0);
  return next;
}

/** Lowers the costs of the ways that are reached more cheaply from one way of the note before. */
function relax(next: Float64Array, soFar: number, step: Step, from: number, origins?: Int16Array): void {
  const { plain, urgent, open } = step.link;
  const isOpen = open[from] === 1;
  const haste = isOpen ? step.haste.open : step.haste.fretted;
  const left = isOpen ? soFar + step.haste.ringing : soFar;
  const row = from * next.length;
  for (let to = 0; to < next.length; to += 1) {
    const cost = left + (plain[row + to] ?? 0) + haste * (urgent[row + to] ?? 0);
    if (cost < (next[to] ?? 0)) {
      next[to] = cost;
      if (origins !== undefined) origins[to] = from;
    }
  }
}

/** The other way: what must at least follow after every way of a note, given the same for the note after it. */
function retreat(rest: Float64Array, step: Step, own: Float64Array, rows: number): Float64Array {
  const { plain, urgent, open } = step.link;
  const width = own.length;
  const before = new Float64Array(rows);
  for (let from = 0; from < rows; from += 1) {
    const isOpen = open[from] === 1;
    const haste = isOpen ? step.haste.open : step.haste.fretted;
    const row = from * width;
    let least = INFINITE;
    for (let to = 0; to < width; to += 1) {
      const follows = (rest[to] ?? 0) + (own[to] ?? 0);
      least = Math.min(least, follows + (plain[row + to] ?? 0) + haste * (urgent[row + to] ?? 0));
    }
    before[from] = isOpen ? least + step.haste.ringing : least;
  }
  return before;
}

interface Forward {
  /** Of the last note. */
  readonly costs: Float64Array;
  readonly origins: readonly Int16Array[];
}

interface Bound {
  /** What must at least follow after each way of each note. */
  readonly rest: readonly Float64Array[];
  /** The cost to beat. */
  readonly most: number;
}

function forward(track: Track, start: Float64Array, bound?: Bound): Forward {
  const origins: Int16Array[] = [];
  let costs = start;
  track.own.forEach((own, index) => {
    const step = track.steps[index];
    if (index === 0 || step === undefined) return;
    const from = new Int16Array(own.length);
    costs = advance(costs, step, own, from);
    if (bound !== undefined) prune(costs, bound, index);
    origins.push(from);
  });
  return { costs, origins };
}

function prune(costs: Float64Array, bound: Bound, index: number): void {
  const rest = bound.rest[index];
  for (let way = 0; way < costs.length; way += 1) {
    if ((costs[way] ?? 0) + (rest?.[way] ?? 0) >= bound.most) costs[way] = INFINITE;
  }
}

function walkBack(origins: readonly Int16Array[], last: number): number[] {
  const choice = [last];
  let way = last;
  for (let index = origins.length - 1; index >= 0; index -= 1) {
    way = origins[index]?.[way] ?? 0;
    choice.push(way);
  }
  return choice.reverse();
}

function leastIndex(costs: Float64Array): number {
  let least = 0;
  for (let index = 1; index < costs.length; index += 1) {
    if ((costs[index] ?? 0) < (costs[least] ?? 0)) least = index;
  }
  return least;
}

const NOTHING: Path = { choice: [], cost: 0 };

/** The cheapest way through a line that is played once. */
export function cheapestPath(track: Track): Path {
  const first = track.own[0];
  if (first === undefined) return NOTHING;
  const { costs, origins } = forward(track, first);
  const last = leastIndex(costs);
  return { choice: walkBack(origins, last), cost: costs[last] ?? 0 };
}

/** What must at least follow after each way of each note, when the round may close on any first way. */
function restOfRound(track: Track): readonly Float64Array[] {
  const count = track.own.length;
  const rests: Float64Array[] = [];
  let rest: Float64Array = new Float64Array(track.own[0]?.length ?? 0);
  for (let index = count - 1; index >= 0; index -= 1) {
    const own = track.own[index];
    const after = track.own[(index + 1) % count];
    const step = track.steps[(index + 1) % count];
    if (own === undefined || after === undefined || step === undefined) continue;
    const free = index === count - 1 ? new Float64Array(after.length) : after;
    rest = retreat(rest, step, free, own.length);
    rests.push(rest);
  }
  return rests.reverse();
}

/**
 * The cheapest way through a line that is played round and round, the seam included. Exact: every way of the
 * first note is tried as the closing point unless a lower bound proves that it cannot win.
 */
export function cheapestRound(track: Track): Path {
  const first = track.own[0];
  const seam = track.steps[0];
  if (first === undefined || seam === undefined) return NOTHING;
  const rest = restOfRound(track);
  const bounds = first.map((own, way) => own + (rest[0]?.[way] ?? 0));
  const order = Array.from(bounds.keys()).sort((one, other) => (bounds[one] ?? 0) - (bounds[other] ?? 0));
  // The opening counts the first note's own cost; the way back to it must not count it again.
  const free = new Float64Array(first.length);
  let best: Path = { choice: [], cost: INFINITE };
  for (const start of order) {
    if ((bounds[start] ?? 0) >= best.cost) break;
    const opening = new Float64Array(first.length).fill(INFINITE);
    opening[start] = first[start] ?? 0;
    const { costs, origins } = forward(track, opening, { rest, most: best.cost });
    const ends = new Int16Array(first.length);
    const closed = advance(costs, seam, free, ends);
    const cost = closed[start] ?? INFINITE;
    if (cost < best.cost) best = { choice: walkBack(origins, ends[start] ?? 0), cost };
  }
  return best;
}

/** What a given way through a line costs. */
export function costOf(track: Track, choice: readonly number[], loop: boolean): number {
  let cost = 0;
  track.own.forEach((own, index) => {
    const to = choice[index] ?? 0;
    const from = choice.at(index - 1) ?? 0;
    const step = track.steps[index];
    cost += own[to] ?? 0;
    if (step === undefined || (index === 0 && !loop)) return;
    const { plain, urgent, open } = step.link;
    const at = from * own.length + to;
    const isOpen = open[from] === 1;
    const haste = isOpen ? step.haste.open : step.haste.fretted;
    if (isOpen) cost += step.haste.ringing;
    cost += (plain[at] ?? 0) + haste * (urgent[at] ?? 0);
  });
  return cost;
}
