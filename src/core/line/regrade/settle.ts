import type { LineNote } from '../../base';
import { composeLine } from '../compose/compose';
import { type HeardLine, hearLine, hearWith } from '../hearing';
import type { BarModel, LineModel } from '../model';
import { breachesNear, findBreaches } from '../rules/check';
import type { LineNotes } from '../types';
import { costBeside, costOf, type Desk, fitsLevel, type Way } from './desk';
import { barDistance, heardDistance } from './distance';

/** Ways of two neighbours that are tried together, and rounds over the line. */
const PAIRED = 12;
const PAIRED_OF = 60;
const ROUNDS = 4;

const withBar = (line: LineNotes, bar: number, notes: readonly LineNote[]): LineNotes =>
  line.map((each, index) => (index === bar ? notes : each));

interface State {
  readonly line: LineNotes;
  readonly heard: HeardLine;
}

interface Tried extends State {
  readonly cost: number;
}

function tried(desk: Desk, { line, heard }: State, bar: BarModel, { notes, base }: Way): Tried {
  const there = hearWith(desk.model, heard, bar.index, notes);
  return {
    line: withBar(line, bar.index, notes),
    heard: there,
    cost: base + costBeside(desk, there, bar, notes, line),
  };
}

/** The way of a bar that costs least beside the line as it stands, where it costs less than what stands there. */
function bestWay(desk: Desk, state: State, bar: BarModel): Tried | null {
  let most = costOf(desk, state.heard, bar, state.line[bar.index] ?? [], state.line);
  let best: Tried | null = null;
  for (const way of desk.ways[bar.index] ?? []) {
    if (way.base >= most) break;
    const one = tried(desk, state, bar, way);
    if (one.cost < most) {
      best = one;
      most = one.cost;
    }
  }
  return best;
}

/** Each bar in turn gets the way that costs least beside the others, until none changes. */
function settled(desk: Desk, start: State): State {
  let state = start;
  for (let round = 0; round < ROUNDS; round += 1) {
    let moved = false;
    for (const bar of desk.model.bars) {
      const best = bestWay(desk, state, bar);
      if (best === null) continue;
      state = best;
      moved = true;
    }
    if (!moved) break;
  }
  return state;
}

/** Neighbours that break a rule together are changed together. */
function settledInPairs(desk: Desk, start: State): State {
  let state = start;
  for (const bar of desk.model.bars) {
    for (const next of bar.after) {
      const other = desk.model.bars[next];
      if (other === undefined || next === bar.index || breachesNear(desk.model, state.heard, bar.index) === 0)
        continue;
      const both = (at: State) =>
        costOf(desk, at.heard, bar, at.line[bar.index] ?? [], at.line) +
        costOf(desk, at.heard, other, at.line[next] ?? [], at.line);
      let best = { state, cost: both(state) };
      const few = (of: BarModel) =>
        (desk.ways[of.index] ?? [])
          .slice(0, PAIRED_OF)
          .map((way) => ({ way, cost: tried(desk, state, of, way).cost }))
          .sort((one, two) => one.cost - two.cost)
          .slice(0, PAIRED)
          .map(({ way }) => way);
      const others = few(other);
      for (const one of few(bar)) {
        const first = tried(desk, state, bar, one);
        for (const two of others) {
          const at = tried(desk, first, other, two);
          const cost = both(at);
          if (cost < best.cost) best = { state: at, cost };
        }
      }
      state = best.state;
    }
  }
  return state;
}

/** How many rules a line breaks, and how many of its bars are beyond the level. */
const faultsIn = (model: LineModel, { line, heard }: State): number =>
  findBreaches(model, heard).length +
  model.bars.filter((bar) => !fitsLevel(model, bar, heard, line[bar.index] ?? [])).length;

/**
 * Bars that stay at odds with a rule beside their neighbours are composed anew between the others.
 * @param seeds how many such lines are tried; where it is several, the bars before them are composed, too
 */
function composedWhereBroken(desk: Desk, state: State, seeds = 1): State {
  const { model } = desk;
  const broken = new Set(
    findBreaches(model, state.heard).flatMap(({ bar }) => {
      const there = model.bars[bar];
      return [...(seeds > 1 ? (there?.before ?? []) : []), bar, ...(there?.after ?? [])];
    }),
  );
  for (const bar of model.bars) {
    if (!fitsLevel(model, bar, state.heard, state.line[bar.index] ?? [])) broken.add(bar.index);
  }
  if (broken.size === 0) return state;
  let best = state;
  for (let seed = 1; seed <= seeds && faultsIn(model, best) > 0; seed += 1) {
    const { bars } = composeLine({
      ...model.request,
      seed,
      kept: state.line.map((notes, index) => (broken.has(index) ? null : notes)),
    });
    const anew = { line: bars, heard: hearLine(model, bars) };
    if (faultsIn(model, anew) < faultsIn(model, best)) best = anew;
  }
  return best;
}

/** Beyond this distance newly composed lines are tried as the start, too: the tune's own bars may be stuck. */
const FAR = 0.25;

/** How many of them are tried: more where a rule is broken or the level is not kept. */
const ANEW = { far: 1, faulty: 3 } as const;

/** Of two lines the one with fewer faults, and of equals the nearer one. */
function nearerOf({ model, origin }: Desk, one: State, other: State): State {
  const fewer = faultsIn(model, one) - faultsIn(model, other);
  const nearer =
    heardDistance(model, origin, one.heard).whole - heardDistance(model, origin, other.heard).whole;
  return fewer < 0 || (fewer === 0 && nearer <= 0) ? one : other;
}

function nearestStart(desk: Desk, state: State): State {
  const { model, origin, below } = desk;
  if (below !== null) return state;
  const isFaulty = faultsIn(model, state) > findBreaches(model, origin).length;
  if (!isFaulty && heardDistance(model, origin, state.heard).whole <= FAR) return state;
  return Array.from({ length: isFaulty ? ANEW.faulty : ANEW.far }, (_, seed) => seed + 1).reduce(
    (best, seed) => {
      const { bars } = composeLine({ ...model.request, seed, kept: model.bars.map(() => null) });
      const anew = { line: bars, heard: hearLine(model, bars) };
      return nearerOf(desk, nearerOf(desk, best, anew), settled(desk, anew));
    },
    state,
  );
}

/** The state with a bar's own notes again, where that costs no more; null where it does, or they do not fit the level. */
function givenBack(desk: Desk, state: State, bar: BarModel): State | null {
  const own = desk.line[bar.index] ?? [];
  const now = state.line[bar.index] ?? [];
  if (own === now) return null;
  const heard = hearWith(desk.model, state.heard, bar.index, own);
  if (!fitsLevel(desk.model, bar, heard, own)) return null;
  if (costOf(desk, heard, bar, own, state.line) > costOf(desk, state.heard, bar, now, state.line))
    return null;
  return { line: withBar(state.line, bar.index, own), heard };
}

/** Bars that can be as they were without a fault, and cost no more so, get their own notes back. */
function withoutNeed(desk: Desk, start: State): State {
  let state = start;
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = state;
    for (const bar of desk.model.bars) state = givenBack(desk, state, bar) ?? state;
    if (state === before) break;
  }
  return state;
}

/** A harder line has what is new in half of its bars: the others stay, the farthest from the tune first. */
const RICH = 0.5;

function halfRich(desk: Desk, start: State): State {
  const { model, below, origin, line } = desk;
  if (below === null) return start;
  let state = start;
  const apart = (bar: BarModel) =>
    barDistance(bar, origin[bar.index] ?? [], state.heard[bar.index] ?? []).whole;
  const changed = model.bars
    .filter(({ index }) => state.line[index] !== line[index])
    .sort((one, other) => apart(other) - apart(one));
  let rich = changed.length;
  const most = Math.max(
    1,
    Math.ceil(RICH * model.bars.filter(({ index }) => (line[index]?.length ?? 0) > 0).length),
  );
  for (const bar of changed) {
    if (rich <= most) break;
    const own = line[bar.index] ?? [];
    const heard = hearWith(model, state.heard, bar.index, own);
    if (breachesNear(model, heard, bar.index) > breachesNear(model, state.heard, bar.index)) continue;
    if (!fitsLevel(model, bar, heard, own)) continue;
    state = { line: withBar(state.line, bar.index, own), heard };
    rich -= 1;
  }
  return state;
}

/** The line of a desk at its level: the best that is found, each bar beside its neighbours. */
export function lineFor(desk: Desk): LineNotes {
  const { model, ways, line } = desk;
  const first = model.bars.map((bar) => ways[bar.index]?.[0]?.notes ?? line[bar.index] ?? []);
  let state = settled(desk, { line: first, heard: hearLine(model, first) });
  state = settled(desk, settledInPairs(desk, state));
  state = nearestStart(desk, composedWhereBroken(desk, state));
  const last = withoutNeed(desk, halfRich(desk, state));
  // Bars that were settled one after the other can be at odds when all of them stand.
  const isFaulty = faultsIn(model, last) > findBreaches(model, desk.origin).length;
  return (isFaulty ? withoutNeed(desk, composedWhereBroken(desk, last, ANEW.faulty)) : last).line;
}
