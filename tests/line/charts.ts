import fc from 'fast-check';
import type { FeelId } from '../../src/core/feel';
import { FEELS } from '../../src/core/feel';
import { type Level, TECHNIQUES } from '../../src/core/line';
import type { Wish } from './notation';

const ROOTS = ['C', 'D', 'E', 'F', 'G', 'A', 'B', 'B♭', 'E♭', 'A♭', 'F♯', 'D♭'];
const KINDS = [
  '',
  '',
  '',
  'm',
  'm',
  '7',
  '7',
  'm7',
  'maj7',
  '6',
  'm6',
  'dim7',
  'm7♭5',
  'sus4',
  '9',
  'add9',
  'aug',
];
const IN_C = ['C', 'Dm', 'Em', 'F', 'G', 'G7', 'Am', 'Am7', 'Dm7'];

const anyChord = fc
  .tuple(fc.constantFrom(...ROOTS), fc.constantFrom(...KINDS))
  .map(([root, kind]) => root + kind);
const chord = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...IN_C) },
  { weight: 1, arbitrary: anyChord },
);
const slash = fc.tuple(chord, fc.constantFrom(...ROOTS)).map(([over, bass]) => `${over}/${bass}`);
const bar = fc.oneof(
  { weight: 8, arbitrary: chord },
  { weight: 2, arbitrary: fc.tuple(chord, chord).map((two) => two.join(' ')) },
  { weight: 1, arbitrary: slash },
  { weight: 1, arbitrary: fc.constant('N.C.') },
);

/** Charts of 1 to 12 bars, mostly in C, some with a repeat, some in three. */
export const charts: fc.Arbitrary<string> = fc
  .tuple(fc.array(bar, { minLength: 1, maxLength: 12 }), fc.nat(3), fc.nat(4))
  .map(([bars, repeat, metre]) => {
    const first = bars.slice(0, 4).join(' | ');
    const rest = bars.slice(4).join(' | ');
    const whole = repeat === 0 ? `|: ${first} :| ${rest}${rest ? ' |' : ''}` : `| ${bars.join(' | ')} |`;
    return metre === 0 ? `(3/4) ${whole}` : whole;
  });

const levels: fc.Arbitrary<Level> = fc.constantFrom(0, 1, 2, 3, 4, 5);
const feels: fc.Arbitrary<FeelId> = fc.constantFrom(...FEELS.map((feel) => feel.id));

/** Wishes with any feel, level and seed, and any set of techniques. */
export const wishes: fc.Arbitrary<Wish> = fc.record({
  feel: feels,
  level: levels,
  seed: fc.nat(1000),
  techniques: fc.oneof(fc.constant(undefined), fc.subarray([...TECHNIQUES])),
});
