import { TICKS_PER_QUARTER } from '../units';

/** Lengths in ticks that have a name, the longest first. */
const NAMED: readonly (readonly [ticks: number, name: string])[] = (
  [
    [6, 'dotted whole'],
    [4, 'whole'],
    [3, 'dotted half'],
    [2, 'half'],
    [1.5, 'dotted quarter'],
    [4 / 3, 'triplet half'],
    [1, 'quarter'],
    [0.75, 'dotted eighth'],
    [2 / 3, 'triplet quarter'],
    [0.5, 'eighth'],
    [0.375, 'dotted sixteenth'],
    [1 / 3, 'triplet eighth'],
    [0.25, 'sixteenth'],
    [1 / 6, 'triplet sixteenth'],
    [0.125, 'thirty-second'],
  ] as const
).map(([quarters, name]) => [Math.round(quarters * TICKS_PER_QUARTER), name]);

/** How long a note or a rest is: `dotted quarter`, `half and eighth`; what has no name is told in quarters. */
export function lengthWords(ticks: number): string {
  const whole = NAMED.find(([length]) => length === ticks);
  if (whole !== undefined) return whole[1];
  const [length, name] = NAMED.find(([each]) => each < ticks) ?? [0, ''];
  const rest = NAMED.find(([each]) => each === ticks - length);
  return rest === undefined ? `${(ticks / TICKS_PER_QUARTER).toFixed(2)} quarters` : `${name} and ${rest[1]}`;
}
