import { describe, expect, it } from 'vitest';
import { writeMusicXml } from '../../src/core/exchange';
import { parseChord } from '../../src/core/theory';
import { sheetOf } from '../support/score-sheets';

/** The `harmony` element of a symbol in short: kind, then each change as type, degree and alteration. */
function harmonyOf(symbol: string): { readonly short: string; readonly xml: string } {
  const xml = writeMusicXml(sheetOf({ chart: `| ${symbol} |`, notes: '' }), 'Lesson');
  const harmony = /<harmony>[\s\S]*?<\/harmony>/.exec(xml)?.[0] ?? '';
  const kind = />([^<]+)<\/kind>/.exec(harmony)?.[1] ?? '';
  const degrees = [...harmony.matchAll(/<degree [\s\S]*?<\/degree>/g)].map(([degree]) => {
    const read = (name: string): string => new RegExp(`<${name}>([^<]*)<`).exec(degree)?.[1] ?? '';
    return `${read('degree-type')} ${read('degree-value')} ${read('degree-alter')}`;
  });
  return { short: [kind, ...degrees].join(', '), xml: harmony };
}

/**
 * Chord symbols and the kinds and degrees that published lead sheets write for them (OpenEWLD, doi
 * 10.5281/zenodo.4332855, harmony elements of MusicXML files).
 */
const published: readonly (readonly [string, string])[] = [
  ['C', 'major'],
  ['Cm', 'minor'],
  ['G9', 'dominant-ninth'],
  ['G#dim', 'diminished'],
  ['Bb7#5', 'augmented-seventh'],
  ['D7b5', 'dominant, alter 5 -1'],
  ['Abmaj7', 'major-seventh'],
  ['E7sus', 'suspended-fourth, add 7 0'],
  ['Am(maj7)', 'major-minor'],
  ['Em9', 'minor-ninth'],
];

describe('a chord symbol as a MusicXML harmony', () => {
  it.each(published)('%s is %s, as in published lead sheets', (symbol, short) => {
    expect(harmonyOf(symbol).short).toBe(short);
  });

  it.each([
    ['C7(b9,#11)', 'dominant, add 9 -1, add 11 1'],
    ['Cadd9', 'major, add 9 0'],
    ['Bb/D', 'major'],
    ['F5', 'power'],
    ['Bm7b5', 'half-diminished'],
    ['C#dim7', 'diminished-seventh'],
    ['A13', 'dominant-13th, subtract 11 0'],
    ['Gsus2', 'suspended-second'],
  ])('%s is %s', (symbol, short) => {
    expect(harmonyOf(symbol).short).toBe(short);
  });

  it('names a slash bass and keeps the symbol as drawn', () => {
    const { xml } = harmonyOf('Ebmaj7/G');
    expect(xml).toContain('<root-step>E</root-step>');
    expect(xml).toContain('<root-alter>-1</root-alter>');
    expect(xml).toContain('<bass-step>G</bass-step>');
    expect(xml).toContain('<kind text="maj7">major-seventh</kind>');
  });
});

/** Half steps above the root of each kind, by the documentation of kind-value in the schema of MusicXML 4.0. */
const KINDS: Readonly<Record<string, string>> = {
  major: '0 4 7',
  minor: '0 3 7',
  augmented: '0 4 8',
  diminished: '0 3 6',
  dominant: '0 4 7 10',
  'major-seventh': '0 4 7 11',
  'minor-seventh': '0 3 7 10',
  'diminished-seventh': '0 3 6 9',
  'augmented-seventh': '0 4 8 10',
  'half-diminished': '0 3 6 10',
  'major-minor': '0 3 7 11',
  'major-sixth': '0 4 7 9',
  'minor-sixth': '0 3 7 9',
  'dominant-ninth': '0 4 7 10 14',
  'major-ninth': '0 4 7 11 14',
  'minor-ninth': '0 3 7 10 14',
  'dominant-11th': '0 4 7 10 14 17',
  'major-11th': '0 4 7 11 14 17',
  'minor-11th': '0 3 7 10 14 17',
  'dominant-13th': '0 4 7 10 14 17 21',
  'major-13th': '0 4 7 11 14 17 21',
  'minor-13th': '0 3 7 10 14 17 21',
  'suspended-second': '0 2 7',
  'suspended-fourth': '0 5 7',
  power: '0 7',
};
const MAJOR_AND_MINOR_SEVENTH = [0, 2, 4, 5, 7, 9, 10];

/** The pitch classes above the root that a reader of the standard works out. */
function expand(short: string): readonly number[] {
  const [kind = '', ...changes] = short.split(', ');
  const tones = new Set((KINDS[kind] ?? '').split(' ').map((halfSteps) => Number(halfSteps) % 12));
  for (const change of changes) {
    const [type, value = '', alter = ''] = change.split(' ');
    const step = (Number(value) - 1) % 7;
    const plain = MAJOR_AND_MINOR_SEVENTH[step] ?? 0;
    if (type === 'add') tones.add((plain + Number(alter) + 12) % 12);
    else {
      const inKind = [...tones].find((tone) => Math.abs(tone - plain) <= 1 && letterOf(tone, kind) === step);
      if (inKind === undefined) throw new Error(`${short} changes a degree that the kind does not have`);
      tones.delete(inKind);
      if (type === 'alter') tones.add((inKind + Number(alter) + 12) % 12);
    }
  }
  return [...tones].sort((one, other) => one - other);
}

/** The step a tone of a kind stands on; only the diminished seventh and the sixth share a sound. */
function letterOf(tone: number, kind: string): number {
  if (tone === 9) return kind === 'diminished-seventh' ? 6 : 5;
  return [0, 1, 1, 2, 2, 3, 4, 4, 4, 5, 6, 6][tone] ?? 0;
}

const ROOTS = ['C', 'Db', 'F#', 'Bb'];
const SUFFIXES = [
  ...[
    '',
    'm',
    '6',
    'm6',
    '7',
    'maj7',
    'm7',
    'm7b5',
    'dim',
    'dim7',
    'aug',
    'sus2',
    'sus4',
    '7sus4',
    '9',
    'add9',
  ],
  ...[
    'm9',
    'maj9',
    '11',
    'm11',
    '13',
    'maj13',
    'm13',
    '7b9',
    '7#9',
    '7#11',
    '7b5',
    '7#5',
    '7b13',
    'm(maj7)',
    '5',
  ],
  ...['6/9', 'm(add9)', 'maj7#11', '7(b9,#11)', '9sus4', '13b9', 'aug7', 'mmaj9', 'm7b5b9', 'add11', '7#5#9'],
];

describe('kind and degrees, read by the standard, are the tones of the chord', () => {
  it.each(ROOTS.flatMap((root) => SUFFIXES.map((suffix) => root + suffix)))('%s', (symbol) => {
    const chord = parseChord(symbol);
    if (!chord.ok) throw new Error(chord.problem.message);
    const MAJOR = [0, 2, 4, 5, 7, 9, 11];
    const tones = chord.value.tones.map(
      ({ degree }) => ((MAJOR[degree.step - 1] ?? 0) + degree.alteration + 12) % 12,
    );
    expect(expand(harmonyOf(symbol).short)).toEqual([...new Set(tones)].sort((one, other) => one - other));
  });
});
