import { describe, expect, it } from 'vitest';
import { chordFunctions, findChartKeys } from '../../src/core/chart';
import { describeKey } from '../../src/core/theory';
import { key } from '../theory/read';
import { chart } from './read';

const numerals = (text: string, where: string, sections = false) => {
  const read = chart(text);
  return chordFunctions(read, key(where), sections ? findChartKeys(read).sections : [])
    .map((bar) => bar.map((each) => each?.numeral ?? '-').join(' '))
    .join(' | ');
};

describe('what the chords of a chart do', () => {
  it.each([
    ['C', 'C | C7 | F | Fm | G7', 'I | V7/IV | IV | iv | V7'],
    ['C', 'C7 | F7 | C7 | G7', 'V7/IV | IV7 | I7 | V7'],
    ['F', 'F D7 | Gm C7 | N.C. | F', 'I V7/ii | ii V7 | - | I'],
    ['Am', 'Am | G7 | C | E7 | Am', 'i | V7/III | III | V7 | i'],
    ['C', 'C | (key: G) C | D7 | G', 'I | IV | V7 | I'],
  ])('in %s: %s', (where, text, expected) => {
    expect(numerals(text, where)).toBe(expected);
  });

  it('goes by the key of the section', () => {
    const text = 'A:\nC | F | G7 | C\nB:\nE | A | B7 | E';
    expect(numerals(text, 'C', true)).toBe('I | IV | V7 | I | I | IV | V7 | I');
  });
});

describe('the keys of a chart', () => {
  const keys = (text: string) =>
    findChartKeys(chart(text))
      .sections.map((each) => each && describeKey(each))
      .join(', ');

  it.each([
    ['A:\nC | F | G7 | C\nB:\nE | A | B7 | E', 'C major, E major'],
    ['A:\nF | Dm | Gm | C7\nB:\nBb | Gm | F | C7', 'F major, F major'],
    ['A:\nF | Dm | Gm | C7\nB:\n(key: Bb) Bb | F7', 'F major, B♭ major'],
    ['Am | Dm | E7 | Am\nB:\nC | F | G7 | C', 'A minor, C major'],
    ['A:\nG | G/B | C D/F# | Em D\nB:\nAm7 | D/F# | N.C. | Bm7 E7\nA', 'G major, G major, G major'],
    ['N.C.', ''],
  ])('%j: %s', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });

  it('come with a runner-up', () => {
    const { guesses } = findChartKeys(chart('Am | F | C | G'));
    expect(guesses.slice(0, 2).map((guess) => describeKey(guess.key))).toEqual(['A minor', 'C major']);
  });
});
