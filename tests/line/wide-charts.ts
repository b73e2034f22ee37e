import fc from 'fast-check';
import { barTicks, beatTicks, fret, type Metre, midiNumber } from '../../src/core/base';
import { FEELS } from '../../src/core/feel';
import { type Aim, type ComposeRequest, type Level, TECHNIQUES, type Technique } from '../../src/core/line';
import { type Degree, formatName, nameOfDegree, parseKey } from '../../src/core/theory';
import { request, type Wish } from './notation';

/**
 * Charts as teachers write them, wider than those of `charts`: in every usual key and metre, with pickups, named
 * sections that come again, repeats with endings, changes of key and metre, slash chords, split bars and `N.C.`
 */

const KEYS = [
  ...['C', 'G', 'D', 'A', 'E', 'F', 'B♭', 'E♭', 'A♭', 'D♭'],
  ...['Am', 'Em', 'Bm', 'F♯m', 'Dm', 'Gm', 'Cm', 'Fm'],
];

/** A chord by its root's degree in the key and its kind. */
type Numeral = readonly [step: Degree['step'], alteration: -1 | 0 | 1, kind: string];

/** Of the key, then those that lead or are borrowed; those written twice come twice as often. */
const IN_MAJOR: readonly Numeral[] = [
  [1, 0, ''],
  [1, 0, ''],
  [1, 0, 'maj7'],
  [1, 0, '6'],
  [2, 0, 'm'],
  [2, 0, 'm7'],
  [3, 0, 'm'],
  [4, 0, ''],
  [4, 0, ''],
  [4, 0, 'maj7'],
  [5, 0, ''],
  [5, 0, '7'],
  [5, 0, '7'],
  [5, 0, '9'],
  [5, 0, 'sus4'],
  [6, 0, 'm'],
  [6, 0, 'm7'],
  [1, 0, '7'],
  [2, 0, '7'],
  [3, 0, '7'],
  [6, 0, '7'],
  [4, 0, 'm'],
  [7, -1, ''],
  [6, -1, '7'],
  [1, 1, 'dim7'],
  [7, 0, 'm7♭5'],
];
const IN_MINOR: readonly Numeral[] = [
  [1, 0, 'm'],
  [1, 0, 'm'],
  [1, 0, 'm7'],
  [2, 0, 'm7♭5'],
  [4, 0, 'm'],
  [4, 0, 'm7'],
  [5, 0, '7'],
  [5, 0, '7'],
  [5, 0, 'm'],
  [3, -1, ''],
  [3, -1, 'maj7'],
  [6, -1, ''],
  [6, -1, '7'],
  [7, -1, ''],
  [7, -1, '7'],
  [4, 0, '7'],
  [2, 0, '7'],
  [2, -1, 'maj7'],
  [7, 0, 'dim7'],
];

const keyed = (keyText: string) => {
  const key = parseKey(keyText);
  if (!key.ok) throw new RangeError(`Not a key: ${keyText}`);
  return key.value;
};

function chordIn(keyText: string): fc.Arbitrary<string> {
  const { tonic, mode } = keyed(keyText);
  return fc
    .constantFrom(...(mode === 'minor' ? IN_MINOR : IN_MAJOR))
    .map(([step, alteration, kind]) => formatName(nameOfDegree(tonic, { step, alteration })) + kind);
}

function slashIn(keyText: string): fc.Arbitrary<string> {
  const { tonic, mode } = keyed(keyText);
  const third = { step: 3, alteration: mode === 'minor' ? -1 : 0 } as const;
  const basses = [third, { step: 5, alteration: 0 }, { step: 2, alteration: 0 }] as const;
  return fc
    .tuple(chordIn(keyText), fc.constantFrom(...basses))
    .map(([chord, bass]) => `${chord}/${formatName(nameOfDegree(tonic, bass))}`);
}

/** @param beats most chords in a bar */
function barIn(keyText: string, beats: number): fc.Arbitrary<string> {
  const chord = chordIn(keyText);
  return fc.oneof(
    { weight: 10, arbitrary: chord },
    { weight: 3, arbitrary: fc.tuple(chord, chord).map((two) => two.join(' ')) },
    {
      weight: 1,
      arbitrary: fc.array(chord, { minLength: 1, maxLength: beats }).map((all) => all.join(' ')),
    },
    { weight: 1, arbitrary: slashIn(keyText) },
    { weight: 1, arbitrary: fc.constant('N.C.') },
  );
}

const joined = (bars: readonly string[]): string => bars.join(' | ');

/** Bars as they stand, or with a repeat, some with two endings. */
const formed = (keyText: string, beats: number): fc.Arbitrary<string> => {
  const bars = (minLength: number, maxLength: number) =>
    fc.array(barIn(keyText, beats), { minLength, maxLength });
  return fc.oneof(
    { weight: 4, arbitrary: bars(1, 8).map((all) => `| ${joined(all)} |`) },
    { weight: 1, arbitrary: bars(4, 4).map((four) => `| ${joined([...four, ...four])} |`) },
    {
      weight: 2,
      arbitrary: fc
        .tuple(bars(1, 4), fc.constantFrom('', ' x3'))
        .map(([all, times]) => `|: ${joined(all)} :|${times}`),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(bars(1, 4), bars(1, 2), bars(1, 2))
        .map(([all, first, second]) => `|: ${joined(all)} |1. ${joined(first)} :|2. ${joined(second)} ||`),
    },
  );
};

const NAMES = ['Verse', 'Chorus', 'Bridge'];

/** The metre of a chart, those that it may change to in the middle, and the beats of the shortest of them. */
interface Metres {
  readonly metre: Metre;
  readonly others: readonly string[];
  readonly beats: number;
}

const METRES: readonly Metres[] = [
  { metre: { count: 4, unit: 4 }, others: ['3/4'], beats: 3 },
  { metre: { count: 4, unit: 4 }, others: ['3/4', '12/8'], beats: 3 },
  { metre: { count: 4, unit: 4 }, others: ['2/2', '3/4'], beats: 2 },
  { metre: { count: 3, unit: 4 }, others: ['4/4', '6/8'], beats: 2 },
  { metre: { count: 2, unit: 2 }, others: ['4/4', '3/4'], beats: 2 },
  { metre: { count: 6, unit: 8 }, others: ['12/8', '3/4'], beats: 2 },
  { metre: { count: 12, unit: 8 }, others: ['6/8', '4/4'], beats: 2 },
];

/** A pickup of fewer beats than a bar has. */
const pickupIn = (keyText: string, metre: Metre): fc.Arbitrary<string> =>
  fc
    .tuple(fc.integer({ min: 1, max: barTicks(metre) / beatTicks(metre) - 1 }), chordIn(keyText))
    .map(([beats, chord]) => `| (${beats}) ${chord} `);

interface WideChart {
  readonly text: string;
  readonly key: string;
  readonly metre: Metre;
}

function chartIn(key: string, { metre, others, beats }: Metres): fc.Arbitrary<WideChart> {
  const sections = fc.array(fc.tuple(formed(key, beats), fc.nat(4), fc.nat(5)), {
    minLength: 1,
    maxLength: 3,
  });
  const other = fc.constantFrom(...KEYS);
  const pickup = fc.oneof(pickupIn(key, metre), fc.constant(''), fc.constant(''));
  const form = fc.constantFrom('plain', 'named', 'named, the first again');
  return fc
    .tuple(sections, pickup, form, fc.constantFrom(...others), other)
    .map(([written, before, how, otherMetre, otherKey]) => {
      const parts = written.map(([bars, metreChance, keyChance], index) => {
        const changes = `${index > 0 && metreChance === 0 ? `(${otherMetre}) ` : ''}${index > 0 && keyChance === 0 ? `(key: ${otherKey}) ` : ''}`;
        const opened = bars.replace(/^\|:?/, (sign) => `${sign} ${changes}`.trimEnd());
        const led = index === 0 ? `${before}${opened}` : opened;
        return how === 'plain' ? led : `${NAMES[index]}:\n${led}`;
      });
      const again = how === 'named, the first again' && parts.length > 1 ? [NAMES[0] ?? ''] : [];
      return { text: [...parts, ...again].join('\n'), key, metre };
    });
}

const wideCharts: fc.Arbitrary<WideChart> = fc
  .tuple(fc.constantFrom(...KEYS), fc.constantFrom(...METRES))
  .chain(([key, metre]) => chartIn(key, metre));

const aimTerms = fc.record(
  {
    wanted: fc.subarray([...TECHNIQUES], { maxLength: 2 }),
    allowed: fc.subarray([...TECHNIQUES], { maxLength: 1 }),
    forbidden: fc.subarray<Technique>(
      TECHNIQUES.filter((technique) => technique !== 'chord tones'),
      { maxLength: 2 },
    ),
    density: fc.constantFrom('sparse', 'busy'),
    silence: fc.constantFrom(0.25, 0.5),
    lowest: fc.integer({ min: 28, max: 36 }).map(midiNumber),
    highest: fc.integer({ min: 36, max: 48 }).map(midiNumber),
    position: fc.integer({ min: 1, max: 7 }).map(fret),
  },
  { requiredKeys: [] },
);

const aimPlaces: fc.Arbitrary<Aim['where']> = fc.oneof(
  fc.constant({ kind: 'line' } as const),
  fc.nat(2).map((section) => ({ kind: 'section', section }) as const),
  fc.nat(15).map((bar) => ({ kind: 'bar', bar }) as const),
);

/** One to three aims, each for the line, a section or a bar. */
export const anyAims: fc.Arbitrary<readonly Aim[]> = fc.array(
  fc.tuple(aimPlaces, aimTerms).map(([where, terms]) => ({ where, ...terms })),
  { minLength: 1, maxLength: 3 },
);

/** A request in one record, which a failing property prints. */
export interface WideWish extends Wish {
  readonly chart: string;
  readonly aims: readonly Aim[];
}

const levels: fc.Arbitrary<Level> = fc.constantFrom(0, 1, 2, 3, 4, 5);

/** Any chart in any feel at any level, every third one with aims. */
export const wideWishes: fc.Arbitrary<WideWish> = fc
  .record({
    written: wideCharts,
    feel: fc.constantFrom(...FEELS.map((feel) => feel.id)),
    level: levels,
    seed: fc.nat(1000),
    techniques: fc.oneof(fc.constant(undefined), fc.subarray([...TECHNIQUES])),
    aims: fc.oneof(anyAims, fc.constant([]), fc.constant([])),
  })
  .map(({ written, ...rest }) => ({
    ...rest,
    chart: written.text,
    key: written.key,
    metre: written.metre,
  }));

/** What the composer is asked for a wish; an aim for a bar or a section beyond the chart asks nothing. */
export const wideRequest = ({ chart, aims, ...wish }: WideWish): ComposeRequest => ({
  ...request(chart, wish),
  aims,
});
