import { beatTicks, isCompound, type Metre, metreName, unitTicks } from '../base';

/** Metres a chart may change to. */
export const CHART_METRES: readonly Metre[] = [
  { count: 4, unit: 4 },
  { count: 3, unit: 4 },
  { count: 2, unit: 2 },
  { count: 6, unit: 8 },
  { count: 12, unit: 8 },
  { count: 2, unit: 4 },
  { count: 5, unit: 4 },
  { count: 7, unit: 8 },
  { count: 9, unit: 8 },
];

/** Their names in a sentence, `4/4, 3/4 and 7/8`. */
export const chartMetreNames = (): readonly string[] => CHART_METRES.map(metreName);

/** How often a passage may be played in all. */
export const MOST_TIMES = 20;

/** How a chart says the length of a pickup: by beats, halves allowed, or, where beats are dotted, by eighths. */
export type PickupLength = { readonly beats: number } | { readonly eighths: number };

/** The eighths of a pickup that is shorter than a dotted beat, `1/8` or `2/8`; null for any other text. */
export function pickupOfEighths(text: string): number | null {
  const [, eighths] = /^([12])\s*\/\s*8$/.exec(text) ?? [];
  return eighths === undefined ? null : Number(eighths);
}

/** The metre of a pickup before bars of a metre; halves of a unit count in the next smaller one. */
export function pickupMetre(length: PickupLength, metre: Metre): Metre {
  if ('eighths' in length)
    return length.eighths === 2 && !isCompound(metre)
      ? { count: 1, unit: 4 }
      : { count: length.eighths, unit: 8 };
  const units = (length.beats * beatTicks(metre)) / unitTicks(metre);
  if (Number.isInteger(units)) return { count: units, unit: metre.unit };
  // Half a dotted beat is refused where it is written; behind a metre that comes later it is two eighths.
  if (isCompound(metre)) return { count: Math.ceil(units), unit: 8 };
  return { count: units * 2, unit: metre.unit === 2 ? 4 : 8 };
}

/** How many bars, and how many sections, a chart can have: one that goes on is cut there, with a problem. */
export const MOST_BARS = 2000;
