import type { PutIn } from './next-signs';

/** What the signs of a chart mean, each with an example that can be put in. */
const SIGNS: readonly (readonly [sign: string, meaning: string, example: string])[] = [
  ['|', 'between bars', '| C | F |'],
  ['C F', 'chords of one bar share its beats', '| C F | G |'],
  ['/', 'the same chord for another beat', '| C / / G |'],
  ['%', 'the same bar again', '| C | % |'],
  ['N.C.', 'no chord', '| N.C. |'],
  ['<', 'a push: the chord an eighth early', '| C | <F |'],
  ['|: :|', 'a repeat, with x3 for three times', '|: C | F :| x3'],
  ['1. 2.', 'endings', '|: C |1. F :|2. G |'],
  ['Verse:', 'names a section, on a line of its own; the name alone repeats it', 'Verse:\n| C | F |'],
  ['(3/4)', 'another metre, before a bar', '| (3/4) C |'],
  ['(1)', 'a pickup of one beat, before the first bar; (1/8) is an eighth', '(1) G7 | C |'],
  ['(key: D)', 'a key, also (key: D dorian)', '| (key: D) D |'],
  [
    '(segno)',
    'the sign, with (D.S. al coda), (to coda) and (coda)',
    '| (segno) C (to coda) | G (D.S. al coda) | (coda) F |',
  ],
  ['(fine)', 'the end after (D.C. al fine) or (D.S. al fine)', '| C (fine) | G (D.C. al fine) |'],
  [';', 'a comment: the rest of the line is not read', '| C | ; softly'],
];

/** The signs of the chart in short, with examples. */
export function ChartSigns({ putIn }: { readonly putIn: PutIn }) {
  return (
    <ul aria-label="Signs of the chart">
      {SIGNS.map(([sign, meaning, example]) => (
        <li key={sign}>
          <code>{sign}</code> {meaning}{' '}
          <button
            type="button"
            className="word"
            aria-label={`Put in ${example.replace('\n', ' ')}`}
            onClick={() => putIn(example)}
          >
            {example.replace('\n', ' ')}
          </button>
        </li>
      ))}
    </ul>
  );
}
