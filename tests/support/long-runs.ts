import fc from 'fast-check';

/** What people and attackers hold a key down on: digits, brackets, blanks, separators, accidentals and letters. */
export const RUN_PIECES = [
  '1',
  '12.',
  '1-2,',
  '(',
  ')',
  '()',
  ' ',
  '\t',
  '\u00a0',
  '.',
  ',',
  '-',
  ':',
  '/',
  'b',
  '#',
  '♭',
  'bb',
  'C#',
  'a',
  'Solo',
  'm7',
  'key:',
  'key ',
  '(b9',
  'W3 ',
] as const;

/** A run of one piece as long as asked, with what may stand before and behind it. */
export const runOf = (piece: string, length: number, before = '', behind = ''): string =>
  before + piece.repeat(Math.ceil(length / piece.length)) + behind;

/** Runs of up to so many characters, closed by something else or by nothing. */
export const longRuns = (maxLength: number): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...RUN_PIECES),
      fc.integer({ min: 20, max: maxLength }),
      fc.constantFrom('', 'C | ', '| C7', '(key: ', '(', '1', 'Verse'),
      fc.constantFrom('', '!', '.', ')', ':', ' |', 'x', '5'),
    )
    .map(([piece, length, before, behind]) => runOf(piece, length, before, behind));
