import type { BarModel, LineModel } from '../model';
import type { End, Field, Prices } from './field';

export interface Found {
  /** Index of the chosen candidate, by bar. */
  readonly choice: readonly number[];
  readonly cost: number;
}

/** An end of a bar that a later bar still has to meet. */
interface Open {
  readonly bar: number;
  readonly end: End;
}

/** The ends that are still open after a bar: those that a later bar leads into or follows. */
function openAfter(bars: readonly BarModel[], index: number, before: readonly Open[]): readonly Open[] {
  const here = bars[index];
  const isOpen = ({ bar, end }: Open): boolean =>
    (end === 'entry' ? bars[bar]?.before : bars[bar]?.after)?.some((other) => other > index) === true;
  const own: readonly Open[] = here
    ? [
        { bar: index, end: 'entry' },
        { bar: index, end: 'exit' },
      ]
    : [];
  return [...before, ...own].filter(isOpen);
}

/** One bar's layer of the search: the cheapest way to each state, by the number of the state. */
interface Layer {
  readonly costs: Float64Array;
  /** The candidate that leads there; −1 where no way does. */
  readonly candidates: Int32Array;
  /** The state before. */
  readonly before: Int32Array;
}

/** A meeting that a bar's candidates have with an end that is already chosen. */
interface Met {
  /** Which of the open ends it is: its digit in the number of a state. */
  readonly digit: Digit;
  readonly table: Float64Array;
  readonly width: number;
  /** The open end leads into this bar; otherwise this bar leads back to it. */
  readonly leads: boolean;
}

function metBy(
  model: LineModel,
  fields: readonly Field[],
  bar: BarModel,
  field: Field,
  open: readonly Open[],
  digits: readonly Digit[],
  prices: Prices,
): readonly Met[] {
  return open.flatMap(({ bar: index, end }, place): Met[] => {
    const digit = digits[place];
    const [other, otherField] = [model.bars[index], fields[index]];
    if (!other || !otherField || !digit) return [];
    if (end === 'exit' && bar.before.includes(index)) {
      const table = prices(other, otherField, bar, field);
      return [{ digit, table, width: field.entry.options.length, leads: true }];
    }
    if (end === 'entry' && bar.after.includes(index)) {
      const table = prices(bar, field, other, otherField);
      return [{ digit, table, width: otherField.entry.options.length, leads: false }];
    }
    return [];
  });
}

/** Cost of each candidate by itself; a bar that follows itself meets its own end. */
function ownCosts(bar: BarModel, field: Field, prices: Prices): readonly number[] {
  if (!bar.after.includes(bar.index)) return field.candidates.map(({ cost }) => cost);
  const table = prices(bar, field, bar, field);
  const width = field.entry.options.length;
  return field.candidates.map(
    ({ cost }, index) =>
      cost + (table[(field.exit.of[index] ?? 0) * width + (field.entry.of[index] ?? 0)] ?? 0),
  );
}

/** An open end within the number of a state: states count the open ends like digits, each in its own base. */
interface Digit {
  readonly stride: number;
  /** How many different ends there are. */
  readonly size: number;
}

const digitOf = (state: number, { stride, size }: Digit): number => Math.floor(state / stride) % size;

function digitsOf(fields: readonly Field[], open: readonly Open[]): readonly Digit[] {
  let stride = 1;
  return open.map(({ bar, end }) => {
    const size = fields[bar]?.[end].options.length ?? 1;
    const digit = { stride, size };
    stride *= size;
    return digit;
  });
}

const countOf = (digits: readonly Digit[]): number =>
  digits.reduce((count, { size }) => count * Math.max(1, size), 1);

/**
 * The cheapest choice of one candidate a bar: exact dynamic programming over the written bars in order. A state
 * remembers the ends that later bars still meet: the end of the last bar, the beginning of the first (the line
 * loops) and of a repeated passage, the end of the bar before a first ending. The work grows with the number
 * of bars; each open end multiplies it by the number of different ends its bar has.
 */
export function cheapest(model: LineModel, fields: readonly Field[], prices: Prices): Found {
  let open: readonly Open[] = [];
  let digits: readonly Digit[] = [];
  let last: Layer = { costs: new Float64Array(1), candidates: new Int32Array(1), before: new Int32Array(1) };
  const layers: Layer[] = [last];
  for (const bar of model.bars) {
    const field = fields[bar.index];
    if (!field) break;
    const next = openAfter(model.bars, bar.index, open);
    const nextDigits = digitsOf(fields, next);
    last = advance(last, field, {
      own: ownCosts(bar, field, prices),
      met: metBy(model, fields, bar, field, open, digits, prices),
      moved: movedBy(open, digits, next, nextDigits),
      kept: keptBy(bar, field, next, nextDigits),
      states: countOf(nextDigits),
    });
    layers.push(last);
    open = next;
    digits = nextDigits;
  }
  return trace(layers);
}

/** A digit that is carried from the number of one state into the number of the next. */
interface Moved {
  readonly from: Digit;
  readonly stride: number;
}

const movedBy = (
  open: readonly Open[],
  digits: readonly Digit[],
  next: readonly Open[],
  nextDigits: readonly Digit[],
): readonly Moved[] =>
  next.flatMap(({ bar, end }, place) => {
    const from = digits[open.findIndex((one) => one.bar === bar && one.end === end)];
    const to = nextDigits[place];
    return from && to ? [{ from, stride: to.stride }] : [];
  });

/** By candidate, what the bar's own open ends add to the number of the next state. */
const keptBy = (
  bar: BarModel,
  field: Field,
  next: readonly Open[],
  nextDigits: readonly Digit[],
): readonly number[] =>
  field.candidates.map((_, candidate) =>
    next.reduce(
      (key, end, place) =>
        end.bar === bar.index
          ? key + (field[end.end].of[candidate] ?? 0) * (nextDigits[place]?.stride ?? 0)
          : key,
      0,
    ),
  );

/** What one bar does to the states. */
interface Move {
  readonly own: readonly number[];
  readonly met: readonly Met[];
  readonly moved: readonly Moved[];
  readonly kept: readonly number[];
  readonly states: number;
}

/** Adds what each entry and each exit of a bar costs beside the ends that a state has left open. */
function meet(state: number, met: readonly Met[], entry: Float64Array, exit: Float64Array): void {
  entry.fill(0);
  exit.fill(0);
  for (const { digit, table, width, leads } of met) {
    const end = digitOf(state, digit);
    if (leads)
      for (let own = 0; own < entry.length; own += 1)
        entry[own] = (entry[own] ?? 0) + (table[end * width + own] ?? 0);
    else
      for (let own = 0; own < exit.length; own += 1)
        exit[own] = (exit[own] ?? 0) + (table[own * width + end] ?? 0);
  }
}

function advance(last: Layer, field: Field, { own, met, moved, kept, states }: Move): Layer {
  const costs = new Float64Array(states).fill(Number.POSITIVE_INFINITY);
  const candidates = new Int32Array(states).fill(-1);
  const before = new Int32Array(states);
  const entry = new Float64Array(field.entry.options.length);
  const exit = new Float64Array(field.exit.options.length);
  const [entryOf, exitOf] = [field.entry.of, field.exit.of];
  for (let state = 0; state < last.costs.length; state += 1) {
    const base = last.costs[state] ?? Number.POSITIVE_INFINITY;
    if (base === Number.POSITIVE_INFINITY) continue;
    meet(state, met, entry, exit);
    let carried = 0;
    for (const { from, stride } of moved) carried += digitOf(state, from) * stride;
    for (let candidate = 0; candidate < own.length; candidate += 1) {
      const cost =
        base +
        (own[candidate] ?? 0) +
        (entry[entryOf[candidate] ?? 0] ?? 0) +
        (exit[exitOf[candidate] ?? 0] ?? 0);
      const to = carried + (kept[candidate] ?? 0);
      if (cost >= (costs[to] ?? 0)) continue;
      costs[to] = cost;
      candidates[to] = candidate;
      before[to] = state;
    }
  }
  return { costs, candidates, before };
}

function trace(layers: readonly Layer[]): Found {
  const end = layers.at(-1)?.costs ?? new Float64Array(1);
  let state = 0;
  for (let index = 1; index < end.length; index += 1) {
    if ((end[index] ?? 0) < (end[state] ?? 0)) state = index;
  }
  const cost = end[state] ?? 0;
  const choice: number[] = [];
  for (let index = layers.length - 1; index > 0; index -= 1) {
    choice.push(layers[index]?.candidates[state] ?? 0);
    state = layers[index]?.before[state] ?? 0;
  }
  return { choice: choice.reverse(), cost };
}
