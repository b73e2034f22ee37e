import type { BarModel } from '../model';
import type { Option } from '../options';
import { entryKey, exitKey } from '../rules/ends';

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

export interface Ends {
  /** By candidate, the number of its end among the different ends. */
  readonly of: readonly number[];
  /** One option that has the end, by number. */
  readonly options: readonly Option[];
}

export type End = 'entry' | 'exit';

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
