import { beatsInBar, isCompound, type Metre, metreName } from '../base';
import { type Key, parseKey, suggestKey } from '../theory';
import { CHART_METRES, chartMetreNames, type PickupLength, pickupOfEighths } from './limits';
import { splitKey, typedKey } from './typed-key';

/** What stands in brackets before a bar: a metre, a key, the beats of a pickup, or nothing that is understood. */
export type Directive =
  | { readonly kind: 'metre'; readonly metre: Metre }
  | { readonly kind: 'key'; readonly key: Key }
  | { readonly kind: 'pickup'; readonly length: PickupLength }
  | { readonly kind: 'problem'; readonly message: string; readonly suggestion?: string };

const problem = (message: string): Directive => ({ kind: 'problem', message });

export const BRACKETS_HOLD =
  'Brackets before a bar hold a metre (3/4), a key (key: D), or, before the first bar, the beats of a pickup (1).';

/**
 * Reads a directive.
 * @param text what stands in the brackets
 * @param metre the metre in force
 * @param first whether no bar stands before it: only then it can be a pickup
 */
export function readDirective(text: string, metre: Metre, first: boolean): Directive {
  const eighths = pickupOfEighths(text);
  if (eighths !== null)
    return first ? { kind: 'pickup', length: { eighths } } : problem('Only the first bar can be a pickup.');
  const fraction = /^(\d{1,2})\s*\/\s*(\d{1,2})$/.exec(text);
  if (fraction) return metreOf(Number(fraction[1]), Number(fraction[2]));
  const key = splitKey(text);
  if (key) return keyOf(key.name);
  if (/^\d{1,2}(?:\.5)?$/.test(text)) return pickupOf(Number(text), metre, first);
  const named = /^pickup[\s:]{0,2}(\d{1,2}(?:\.5)?)$/i.exec(text);
  if (named) {
    const message = 'A pickup is written by its beats alone, before the first bar.';
    return { kind: 'problem', message, suggestion: `(${named[1]})` };
  }
  return problem(BRACKETS_HOLD);
}

function metreOf(count: number, unit: number): Directive {
  const metre = CHART_METRES.find((known) => known.count === count && known.unit === unit);
  if (metre) return { kind: 'metre', metre };
  const known = chartMetreNames().join(', ');
  return problem(
    `${metreName({ count, unit })} is not a metre this program can write for; it knows ${known}.`,
  );
}

function keyOf(text: string): Directive {
  const read = parseKey(text);
  if (read.ok) return { kind: 'key', key: read.value };
  const guess = suggestKey(text);
  const { message } = read.problem;
  return { kind: 'problem', message, ...(guess === null ? {} : { suggestion: typedKey(guess) }) };
}

function pickupOf(beats: number, metre: Metre, first: boolean): Directive {
  if (!first) return problem('Only the first bar can be a pickup.');
  const most = beatsInBar(metre);
  if (isCompound(metre) && !Number.isInteger(beats)) {
    const message = `A beat of ${metreName(metre)} is a dotted quarter, which a pickup does not halve: write whole beats, or (1/8) for an eighth and (2/8) for two.`;
    return { kind: 'problem', message, ...(beats === 0.5 ? { suggestion: '(1/8)' } : {}) };
  }
  return beats === 0 || beats >= most
    ? problem(`A pickup is shorter than a bar: write fewer than ${most} beats.`)
    : { kind: 'pickup', length: { beats } };
}
