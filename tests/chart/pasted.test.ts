import { describe, expect, it } from 'vitest';
import { nextSigns, parseChart, pastedOffer } from '../../src/core/chart';
import { chord, written } from '../theory/read';

const METRE = { count: 4, unit: 4 } as const;
const problems = (text: string) => parseChart(text, METRE).problems;

describe('a text that is pasted', () => {
  it.each([
    ['C F G C', 'Make each chord a bar', '| C | F | G | C |'],
    ['C\tF\nAm\tG', 'Make each chord a bar', '| C | F |\n| Am | G |'],
    ['C  F G  Am', 'Make each column a bar', '| C | F G | Am |'],
    ['I vi IV V', 'Make each chord a bar', '| I | vi | IV | V |'],
    [
      '[Verse]\nC       G\nI walked along the road today\nAm   F',
      'Make each chord a bar',
      '[Verse]\n| C | G |\n; I walked along the road today\n| Am | F |',
    ],
    [
      '| C | F |\nDown by the river we go',
      'Keep the words as comments',
      '| C | F |\n; Down by the river we go',
    ],
    [
      'Verse\n| C | F |\nA\n| G | C | ; soft',
      'Make the words sections',
      'Verse:\n| C | F |\nA:\n| G | C | ; soft',
    ],
  ])('%j is offered as %s', (text, deed, expected) => {
    const offer = pastedOffer(text);
    expect([offer?.deed, offer?.text]).toEqual([deed, expected]);
    // What is offered needs no further question.
    expect(pastedOffer(offer?.text ?? '')).toBeNull();
    expect(problems(offer?.text ?? '').filter(({ message }) => !/counts from the key/.test(message))).toEqual(
      [],
    );
  });

  it.each(['', 'C', '| C | F |', 'C / / G', 'Verse:\n| C |', '[A]\n| C |', '(key: D) | D | G |'])(
    '%j is written as charts are',
    (text) => {
      expect(pastedOffer(text)).toBeNull();
    },
  );

  it('has sections in brackets', () => {
    const { chart } = parseChart('[A]\n| C | F |\n[Verse 2]\n| G |\nA', METRE);
    expect(chart.sections.map(({ name, length }) => `${name} ${length}`)).toEqual([
      'A 2',
      'Verse 2 1',
      'A 2',
    ]);
  });

  it('makes no bar of what is no chord, and asks', () => {
    const read = parseChart('A\n| C | F |\nI walked along the road\n| G | C |', METRE);
    expect(read.chart.bars).toHaveLength(4);
    expect(read.problems.map(({ suggestion }) => suggestion)).toEqual(['A:', '; I walked along the road']);
  });
});

describe('the next sign', () => {
  const { chart } = parseChart('| C | F | C | G7 |', METRE);
  it.each([
    ['', '| '],
    ['| ', 'C'],
    ['| B', 'b'],
    ['| C7', ' | '],
    ['| C ', '| '],
  ])('behind %j is %j first', (before, sign) => {
    expect(nextSigns(before, chart)[0]).toBe(sign);
  });
});

// The notes are common practice, no source.
it.each([
  ['Csus4(b7)', 'C7sus4', 'C F G B♭'],
  ['Csus2(b7)', 'C7sus2', 'C D G B♭'],
  ['Cmaj9(no7)', 'Cadd9', 'C E G D'],
  ['Cm7(no5,b6)', 'Cm7(add♭6,no5)', 'C E♭ B♭ A♭'],
])('%s is %s', (typed, symbol, notes) => {
  expect(chord(typed).symbol).toBe(symbol);
  expect(written(chord(typed).tones.map(({ name }) => name))).toBe(notes);
});
