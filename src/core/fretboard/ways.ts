import { COST } from './costs';
import { type Line, solve } from './line';
import { costOf, type Path } from './path';
import type { State } from './states';

/** A stretch of a line by the indexes of its first and last note, both included. */
export interface NoteRange {
  readonly first: number;
  readonly last: number;
}

/** A part of all the ways to play a line, with its best member. */
interface Part {
  readonly path: Path;
  /** Costs of the ways by themselves, Infinity where this part bars them. */
  readonly own: readonly Float64Array[];
  /** Notes of the line before this one are settled in this part. */
  readonly settled: number;
}

/**
 * The cheapest ways through a line that differ within a stretch, best first: exact, by Lawler's partition (E. L.
 * Lawler, A procedure for computing the K best solutions, Management Science 18(7), 1972). Each way found
 * divides the rest into the ways that first leave it at one note, and the cheapest of each is searched anew.
 *
 * Two ways differ when a note lies at another place, or when the first fretted note of the stretch is held by
 * another finger: the finger that begins decides the shape.
 * @param stretch indexes into the notes that lie on the instrument
 */
export function cheapestWays(line: Line, stretch: NoteRange, most: number): readonly Path[] {
  const found: Path[] = [];
  const open: Part[] = [{ path: solve(line), own: line.track.own, settled: stretch.first }];
  while (found.length < most) {
    const best = takeCheapest(open);
    if (best === undefined) break;
    found.push(best.path);
    open.push(...partition(line, stretch, best));
  }
  return found;
}

function takeCheapest(parts: Part[]): Part | undefined {
  let least = 0;
  parts.forEach((part, index) => {
    if (part.path.cost < (parts[least]?.path.cost ?? 0)) least = index;
  });
  return parts.splice(least, 1)[0];
}

function partition(line: Line, stretch: NoteRange, part: Part): readonly Part[] {
  const parts: Part[] = [];
  const own = [...part.own];
  let begun = false;
  for (let index = stretch.first; index <= stretch.last; index += 1) {
    const chosen = stateAt(line, part.path, index);
    const costs = own[index];
    if (chosen === undefined || costs === undefined) break;
    const alike = likeness(chosen, begun);
    const states = line.played[index]?.layer.states ?? [];
    if (index >= part.settled) {
      const elsewhere = barred(costs, states, (state) => !alike(state));
      const others = own.with(index, elsewhere);
      const path = solve(line, others);
      if (Number.isFinite(path.cost)) parts.push({ path, own: others, settled: index });
    }
    own[index] = barred(costs, states, alike);
    begun ||= chosen.finger !== 0;
  }
  return parts;
}

const stateAt = (line: Line, path: Path, index: number): State | undefined =>
  line.played[index]?.layer.states[path.choice[index] ?? 0];

/** @param begun a note of the stretch before this one is fretted */
const likeness =
  (chosen: State, begun: boolean) =>
  (state: State): boolean =>
    state.string === chosen.string && state.fret === chosen.fret && (begun || state.finger === chosen.finger);

const barred = (
  costs: Float64Array,
  states: readonly State[],
  allowed: (state: State) => boolean,
): Float64Array =>
  costs.map((cost, way) => {
    const state = states[way];
    return state !== undefined && allowed(state) ? cost : Number.POSITIVE_INFINITY;
  });

/** Cost a fret by which the hand leaves the position that a way is to stay around. */
const PULL = 0.5;

/**
 * For every hand position up to a fret the cheapest way to play a line around it, as it comes, without open
 * strings, and with as many as possible; cheapest first, the best of all ways among them.
 */
export function waysAroundPositions(line: Line, highest: number): readonly Path[] {
  const ways = [solve(line)];
  for (let position = 1; position <= highest; position += 1) {
    for (const open of [0, COST.openAvoided, -COST.openAvoided]) {
      const own = line.played.map(({ layer }, index) =>
        (line.track.own[index] ?? layer.own).map((cost, way) => {
          const state = layer.states[way];
          if (state === undefined) return cost;
          return state.finger === 0 ? cost + open : cost + PULL * Math.abs(state.position - position);
        }),
      );
      const { choice } = solve(line, own);
      ways.push({ choice, cost: costOf(line.track, choice, line.loop) });
    }
  }
  return ways.sort((one, other) => one.cost - other.cost);
}
