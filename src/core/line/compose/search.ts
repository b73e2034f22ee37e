import type { LineModel } from '../model';
import type { Option } from '../options';

/** A way of playing a bar within a plan. */
export interface Candidate {
  readonly option: Option;
  /** Own cost and the cost of its role. */
  readonly cost: number;
}

/** What going from one candidate into the next costs. */
export type Meeting = (from: number, one: Option, to: number, other: Option) => number;

export interface Found {
  /** Index of the chosen candidate, by bar. */
  readonly choice: readonly number[];
  readonly cost: number;
}

/** An end of a bar that a later bar still has to meet. */
interface Open {
  readonly bar: number;
  readonly end: 'entry' | 'exit';
}

interface State {
  readonly cost: number;
  readonly candidate: number;
  readonly before: State | null;
  /** Candidates that stand for the open ends, in the order of the step's list. */
  readonly open: readonly number[];
}

const keyOf = (option: Option, end: 'entry' | 'exit'): string =>
  (end === 'entry' ? option.entry?.key : option.exit?.key) ?? '';

/** The ends that are still open after a bar: those that a later bar leads into or follows. */
function openAfter(model: LineModel, index: number): readonly Open[] {
  const open: Open[] = [];
  for (const bar of model.bars) {
    if (bar.index > index) break;
    if (bar.before.some((other) => other > index)) open.push({ bar: bar.index, end: 'entry' });
    if (bar.after.some((other) => other > index)) open.push({ bar: bar.index, end: 'exit' });
  }
  return open;
}

/**
 * Drops candidates that another one equals at both ends at a lower cost: no bar around them can tell the two
 * apart, so the best line never needs the dearer one.
 */
export function undominated(candidates: readonly Candidate[]): readonly Candidate[] {
  const best = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const key = `${keyOf(candidate.option, 'entry')} / ${keyOf(candidate.option, 'exit')}`;
    const known = best.get(key);
    if (!known || candidate.cost < known.cost) best.set(key, candidate);
  }
  return [...best.values()];
}

/** For each candidate, the first one that has the same end: what the open ends are counted by. */
function classes(candidates: readonly Candidate[], end: 'entry' | 'exit'): readonly number[] {
  const first = new Map<string, number>();
  return candidates.map(({ option }, index) => {
    const key = keyOf(option, end);
    const known = first.get(key);
    if (known !== undefined) return known;
    first.set(key, index);
    return index;
  });
}

/**
 * The cheapest choice of one candidate a bar: exact dynamic programming over the written bars in order. A state
 * remembers the ends that later bars still meet: the end of the last bar, the beginning of the first (the line
 * loops), of a repeated passage, and the end of the bar before a first ending. The work grows with the number
 * of bars; each open end multiplies it by the number of different ends its bar has.
 */
export function cheapest(
  model: LineModel,
  candidates: readonly (readonly Candidate[])[],
  meeting: Meeting,
): Found {
  let states: readonly State[] = [{ cost: 0, candidate: -1, before: null, open: [] }];
  let open: readonly Open[] = [];
  for (const bar of model.bars) {
    const here = candidates[bar.index] ?? [];
    const next = openAfter(model, bar.index);
    const carried = next.map((end) => open.findIndex((one) => one.bar === end.bar && one.end === end.end));
    const own = { entry: classes(here, 'entry'), exit: classes(here, 'exit') };
    const met = open.flatMap(({ bar: other, end }, place) => {
      const leads = end === 'exit' && bar.before.includes(other);
      const follows = end === 'entry' && bar.after.includes(other);
      return leads || follows ? [{ place, other, leads }] : [];
    });
    const self = bar.after.includes(bar.index);
    const step = (state: State, option: Option): number => {
      let cost = self ? meeting(bar.index, option, bar.index, option) : 0;
      for (const { place, other, leads } of met) {
        const ended = candidates[other]?.[state.open[place] ?? 0]?.option;
        if (!ended) continue;
        cost += leads ? meeting(other, ended, bar.index, option) : meeting(bar.index, option, other, ended);
      }
      return cost;
    };
    const reached = new Map<string, State>();
    for (const state of states) {
      here.forEach((candidate, index) => {
        const cost = state.cost + candidate.cost + step(state, candidate.option);
        const ends = next.map(({ end }, place) => {
          const from = carried[place] ?? -1;
          return from >= 0 ? (state.open[from] ?? 0) : (own[end][index] ?? 0);
        });
        const key = ends.join(' ');
        const known = reached.get(key);
        if (!known || cost < known.cost)
          reached.set(key, { cost, candidate: index, before: state, open: ends });
      });
    }
    states = [...reached.values()];
    open = next;
  }
  const best = states.reduce<State | null>(
    (least, state) => (least === null || state.cost < least.cost ? state : least),
    null,
  );
  const choice: number[] = [];
  for (let state = best; state?.before; state = state.before) choice.unshift(state.candidate);
  return { choice, cost: best?.cost ?? 0 };
}
