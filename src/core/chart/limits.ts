import { beatTicks, type Metre, metreName, unitTicks } from '../base';

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

/** The metre of a pickup of so many beats (halves allowed): halves of a unit count in the next smaller one. */
export function pickupMetre(beats: number, metre: Metre): Metre {
  const units = (beats * beatTicks(metre)) / unitTicks(metre);
  if (Number.isInteger(units)) return { count: units, unit: metre.unit };
  return { count: Math.round(units * 2), unit: metre.unit === 2 ? 4 : 8 };
}

/** How many bars, and how many sections, a chart can have: one that goes on is cut there, with a problem. */
export const MOST_BARS = 2000;
