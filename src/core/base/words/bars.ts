import { listed } from './text';

/** The number that a pickup has in the data: it leads into bar 1 and nobody counts it. */
const PICKUP = 0;

/** How a bar is called in a sentence, by its written number: `bar 3`, `the pickup`. */
export const barName = (number: number): string => (number === PICKUP ? 'the pickup' : `bar ${number}`);

/** `bar 3`, `bars 3, 5 and 8`, `the pickup and bar 3`. */
export function barNames(numbers: readonly number[]): string {
  const counted = numbers.filter((number) => number !== PICKUP);
  const bars = counted.length === 0 ? [] : [`${counted.length === 1 ? 'bar' : 'bars'} ${listed(counted)}`];
  return listed([...(counted.length < numbers.length ? [barName(PICKUP)] : []), ...bars]);
}

/** Bars that follow each other: `bar 3`, `bars 3 to 6`, `the pickup to bar 4`. */
export function barRange(first: number, last: number): string {
  if (first === last) return barName(first);
  return first === PICKUP ? `${barName(first)} to ${barName(last)}` : `bars ${first} to ${last}`;
}
