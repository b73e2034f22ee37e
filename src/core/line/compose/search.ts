import { entryKey, exitKey } from '../bar-rules';
import type { BarModel, LineModel } from '../model';
import type { Option } from '../options';

/** A way of playing a bar within a plan. */
export interface Candidate {
  readonly option: Option;
  /** Own cost and the cost of its role. */
  readonly cost: number;
}

/** What going from the end of one option into the beginning of another costs. */
export type Meeting = (from: BarModel, one: Option, to: BarModel, other: Option) => number;

/** The candidates of a bar, with equal ends counted as one. */
export interface Field {
  /** Tells fields apart, so that their meetings are priced once. */
  readonly id: number;
  readonly candidates: readonly Candidate[];
  /** The least cost of any candidate. */
  readonly least: number;
  readonly entry: Ends;
  readonly exit: Ends;
}

interface Ends {
  /** By candidate, the number of its end among the different ends. */
  readonly of: readonly number[];
  /** One option that has the end, by number. */
  readonly options: readonly Option[];
}

export interface Found {
  /** Index of the chosen candidate, by bar. */
  readonly choice: readonly number[];
  readonly cost: number;
}

type End = 'entry' | 'exit';

function keyOf(option: Option, end: End): string {
  if (end === 'entry') return option.entry ? entryKey(option.entry) : '';
  return option.exit ? exitKey(option.exit) : '';
}

function endsOf(candidates: readonly Candidate[], end: End): Ends {
  const numbers = new Map<string, number>();
  const options: Option[] = [];
  const of = candidates.map(({ option }) => {
    const key = keyOf(option, end);
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, options.length);
    options.push(option);
    return options.length - 1;
  });
  return { of, options };
}

/**
 * A field of the best candidates. One that another equals at both ends at a lower cost is left out: no bar
 * around them can tell the two apart, so the best line never needs the dearer one.
 * @param most how many stay
 */
export function fieldOf(id: number, candidates: readonly Candidate[], most: number): Field {
  const seen = new Set<string>();
  const lasting: Candidate[] = [];
  for (const candidate of [...candidates].sort((one, other) => one.cost - other.cost)) {
    if (lasting.length === most) break;
    const key = `${keyOf(candidate.option, 'entry')} / ${keyOf(candidate.option, 'exit')}`;
    if (seen.has(key)) continue;
    seen.add(key);
    lasting.push(candidate);
  }
  return {
    id,
    candidates: lasting,
    least: lasting[0]?.cost ?? 0,
    entry: endsOf(lasting, 'entry'),
    exit: endsOf(lasting, 'exit'),
  };
}

/** Prices of all meetings of two fields: by number of the exit, then of the entry. */
export type Prices = (from: BarModel, one: Field, to: BarModel, other: Field) => Float64Array;

/** Fields are numbered below this, so that a pair of them makes one number. */
const MOST_FIELDS = 1 << 20;

export function rememberPrices(meeting: Meeting): Prices {
  const tables = new Map<number, Float64Array>();
  return (from, one, to, other) => {
    const key = one.id * MOST_FIELDS + other.id;
    const known = tables.get(key);
    if (known) return known;
    const width = other.entry.options.length;
    const table = new Float64Array(one.exit.options.length * width);
    one.exit.options.forEach((exit, row) => {
      other.entry.options.forEach((entry, column) => {
        table[row * width + column] = meeting(from, exit, to, entry);
      });
    });
    tables.set(key, table);
    return table;
  };
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

/** One bar's layer of the search: the cheapest way to each state. */
interface Layer {
  readonly costs: readonly number[];
  readonly candidates: readonly number[];
  /** Index of the state before. */
  readonly before: readonly number[];
  /** By state, the numbers of the open ends. */
  readonly open: readonly (readonly number[])[];
}

/** A meeting that a bar's candidates have with an end that is already chosen. */
interface Met {
  /** Place of the end among the open ones. */
  readonly place: number;
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
  prices: Prices,
): readonly Met[] {
  return open.flatMap(({ bar: index, end }, place): Met[] => {
    const [other, otherField] = [model.bars[index], fields[index]];
    if (!other || !otherField) return [];
    if (end === 'exit' && bar.before.includes(index)) {
      const table = prices(other, otherField, bar, field);
      return [{ place, table, width: field.entry.options.length, leads: true }];
    }
    if (end === 'entry' && bar.after.includes(index)) {
      const table = prices(bar, field, other, otherField);
      return [{ place, table, width: otherField.entry.options.length, leads: false }];
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

/**
 * The cheapest choice of one candidate a bar: exact dynamic programming over the written bars in order. A state
 * remembers the ends that later bars still meet: the end of the last bar, the beginning of the first (the line
 * loops) and of a repeated passage, the end of the bar before a first ending. The work grows with the number
 * of bars; each open end multiplies it by the number of different ends its bar has.
 */
export function cheapest(model: LineModel, fields: readonly Field[], prices: Prices): Found {
  let open: readonly Open[] = [];
  const layers: Layer[] = [{ costs: [0], candidates: [-1], before: [-1], open: [[]] }];
  for (const bar of model.bars) {
    const field = fields[bar.index];
    const last = layers.at(-1);
    if (!field || !last) break;
    const met = metBy(model, fields, bar, field, open, prices);
    const next = openAfter(model.bars, bar.index, open);
    const places = next.map((end) => open.findIndex((one) => one.bar === end.bar && one.end === end.end));
    const sizes = next.map((end) => fields[end.bar]?.[end.end].options.length ?? 1);
    layers.push(advance(last, field, ownCosts(bar, field, prices), met, { ends: next, places, sizes }));
    open = next;
  }
  return trace(layers);
}

interface Next {
  readonly ends: readonly Open[];
  /** Where each open end stood before; −1 for this bar's own. */
  readonly places: readonly number[];
  /** How many different ends each can have. */
  readonly sizes: readonly number[];
}

/** What each entry and each exit of a field costs beside the ends that a state has left open. */
function meetingsOf(
  open: readonly number[],
  met: readonly Met[],
  field: Field,
): { entry: number[]; exit: number[] } {
  const entry = field.entry.options.map(() => 0);
  const exit = field.exit.options.map(() => 0);
  for (const { place, table, width, leads } of met) {
    const end = open[place] ?? 0;
    if (leads)
      for (let own = 0; own < entry.length; own += 1)
        entry[own] = (entry[own] ?? 0) + (table[end * width + own] ?? 0);
    else
      for (let own = 0; own < exit.length; own += 1)
        exit[own] = (exit[own] ?? 0) + (table[own * width + end] ?? 0);
  }
  return { entry, exit };
}

/** By open end, what a step of its number adds to the number of a state. */
function stridesOf(sizes: readonly number[]): readonly number[] {
  let stride = 1;
  return sizes.map((size) => {
    const own = stride;
    stride *= size;
    return own;
  });
}

/** The number of this bar's own end in a candidate. */
const ownEnd = (field: Field, end: Open, candidate: number): number => field[end.end].of[candidate] ?? 0;

function advance(last: Layer, field: Field, own: readonly number[], met: readonly Met[], next: Next): Layer {
  const strides = stridesOf(next.sizes);
  const keyOfOwn = own.map((_, candidate) =>
    next.ends.reduce(
      (key, end, place) =>
        (next.places[place] ?? -1) < 0 ? key + ownEnd(field, end, candidate) * (strides[place] ?? 0) : key,
      0,
    ),
  );
  const costs: number[] = [];
  const candidates: number[] = [];
  const before: number[] = [];
  const reached = new Map<number, number>();
  last.costs.forEach((base, state) => {
    const open = last.open[state] ?? [];
    const meetings = meetingsOf(open, met, field);
    const carried = next.places.reduce(
      (key, from, place) => (from >= 0 ? key + (open[from] ?? 0) * (strides[place] ?? 0) : key),
      0,
    );
    for (let candidate = 0; candidate < own.length; candidate += 1) {
      const cost =
        base +
        (own[candidate] ?? 0) +
        (meetings.entry[field.entry.of[candidate] ?? 0] ?? 0) +
        (meetings.exit[field.exit.of[candidate] ?? 0] ?? 0);
      const key = carried + (keyOfOwn[candidate] ?? 0);
      const known = reached.get(key) ?? costs.length;
      if (known === costs.length) reached.set(key, known);
      else if (cost >= (costs[known] ?? 0)) continue;
      costs[known] = cost;
      candidates[known] = candidate;
      before[known] = state;
    }
  });
  const open = costs.map((_, state) =>
    next.ends.map((end, place) => {
      const from = next.places[place] ?? -1;
      return from >= 0
        ? (last.open[before[state] ?? 0]?.[from] ?? 0)
        : ownEnd(field, end, candidates[state] ?? 0);
    }),
  );
  return { costs, candidates, before, open };
}

function trace(layers: readonly Layer[]): Found {
  const end = layers.at(-1);
  let state = 0;
  (end?.costs ?? []).forEach((cost, index) => {
    if (cost < (end?.costs[state] ?? 0)) state = index;
  });
  const cost = end?.costs[state] ?? 0;
  const choice: number[] = [];
  for (let index = layers.length - 1; index > 0; index -= 1) {
    choice.unshift(layers[index]?.candidates[state] ?? 0);
    state = layers[index]?.before[state] ?? 0;
  }
  return { choice, cost };
}
