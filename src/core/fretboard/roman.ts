const NUMERALS: readonly (readonly [number, string])[] = [
  [10, 'X'],
  [9, 'IX'],
  [5, 'V'],
  [4, 'IV'],
  [1, 'I'],
];

/** A hand position as the trade writes it: 1 is I, 9 is IX. Whole numbers from 1 to 36. */
export function romanNumeral(position: number): string {
  let rest = position;
  let text = '';
  for (const [value, numeral] of NUMERALS) {
    while (rest >= value) {
      text += numeral;
      rest -= value;
    }
  }
  return text;
}
