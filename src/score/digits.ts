const HUNDREDTHS = Array.from({ length: 100 }, (_, index) => String(index / 100).slice(1));

/**
 * A coordinate in decimal digits, to a hundredth of a unit: put together of whole numbers, whose digits the browser
 * remembers, which takes a third of the time that a fraction takes.
 */
export function digitsOf(value: number): string {
  const all = Math.round(value * 100);
  const size = Math.abs(all);
  const rest = size % 100;
  const digits = `${(size - rest) / 100}${HUNDREDTHS[rest]}`;
  return all < 0 ? `-${digits}` : digits;
}
