import { describe, expect, it } from 'vitest';
import { harmonyText, nextSigns, numeralKeys, parseChart, pastedOffer } from '../../src/core/chart';
import { describeKey, parseKey } from '../../src/core/theory';
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
    ['C - F, G', 'Make each chord a bar', '| C | F | G |'],
    ['• C\n• F', 'Make each chord a bar', '| C |\n| F |'],
    ['C F G x2', 'Make each chord a bar', '|: C | F | G :|'],
    ['(key: C)\nI IV V', 'Make each chord a bar', '(key: C)\n| I | IV | V |'],
    ['Intro: C F', 'Make each chord a bar', 'Intro:\n| C | F |'],
    ['Chorus | C | F |', 'Make the words sections', 'Chorus:\n| C | F |'],
    [
      'Verse\n| C | F |\nBridge\n| G |\nVerse',
      'Make the words sections',
      'Verse:\n| C | F |\nBridge:\n| G |\nVerse',
    ],
    ['4/4\nKey: G\n| G | C |', 'Read them as they are meant', '(4/4)\n(key: G)\n| G | C |'],
    [
      'Tempo: 120\nVerse (2x)\n| C | F |',
      'Keep the words as comments',
      '; Tempo: 120\nVerse: ; 2x\n| C | F |',
    ],
    ['C . . . F', 'Count them into bars', '| C | F |'],
    ['C / / / F / / /', 'Count them into bars', '| C | F |'],
    ['C.. F..', 'Count them into bars', '| C / / F | F |'],
    ['C//// F////', 'Count them into bars', '| C | F |'],
    ['| C . . . | F . G . |', 'Write them as a chart has them', '| C / / / | F / G / |'],
    ['1\tC\tF\n5\tG\tC', 'Make each chord a bar', '| C | F | ; 1\n| G | C | ; 5'],
    ['Bar 1: C\nBar 2: F', 'Make each chord a bar', '| C | ; 1\n| F | ; 2'],
    ['| C | F | x4', 'Write them as a chart has them', '|: C | F :| x4'],
    ['| C | F | repeat 4 times', 'Write them as a chart has them', '|: C | F :| x4'],
    ['[C F G C] x2', 'Make each chord a bar', '|: C | F | G | C :|'],
    ['C x4 F x4', 'Make each chord a bar', '|: C :| x4 |: F :| x4'],
    ['| (N.C.) | no chord | C |', 'Write them as a chart has them', '| N.C. | N.C. | C |'],
    ['| C | ./. | // |', 'Write them as a chart has them', '| C | % | % |'],
    ['| E7 | | | |', 'Write them as a chart has them', '| E7 | % | % | % |'],
    ['C-F-G', 'Make each chord a bar', '| C | F | G |'],
    ['C; F; G', 'Make each chord a bar', '| C | F | G |'],
    ['B H Fism', 'Read the names as German', '| Bb | B | F#m |'],
    ['[Intro] C F', 'Make each chord a bar', 'Intro:\n| C | F |'],
    ['Intro (x2): C F', 'Make each chord a bar', 'Intro:\n|: C | F :|'],
    [
      'Verse:\n| C |\nBridge:\n| F |\nRepeat Verse',
      'Write them as a chart has them',
      'Verse:\n| C |\nBridge:\n| F |\nVerse',
    ],
    ['[C]Down by the [F]river', 'Make each chord a bar', '| C | F |\n; Down by the river'],
    ['4/4 | C | F |', 'Write them as a chart has them', '(4/4)\n| C | F |'],
    ['| C (fine) | F |\nD.C. al Fine', 'Write them as a chart has them', '| C (fine) | F (D.C. al fine) |'],
    [
      '| Segno C | F To Coda | G7 D.S. al Coda | Coda C |',
      'Write them as a chart has them',
      '| (segno) C | F (to coda) | G7 (D.S. al coda) | (coda) C |',
    ],
    ['| C Fine | G7 D.C. al Fine |', 'Write them as a chart has them', '| C (fine) | G7 (D.C. al fine) |'],
    ['‖: C | F :‖', 'Write them as a chart has them', '||: C | F :||'],
    ['A minor | D minor', 'Write them as a chart has them', 'Am | Dm'],
    ['C maj7 | G on B', 'Write them as a chart has them', 'Cmaj7 | G/B'],
    ['A\nC F G C\nB\nAm F', 'Make each chord a bar', 'A:\n| C | F | G | C |\nB:\n| Am | F |'],
    ['iim7 V7 Imaj7', 'Make each chord a bar', '| ii7 | V7 | Imaj7 |'],
  ])('%j is offered as %s', (text, deed, expected) => {
    const offer = pastedOffer(text, METRE);
    expect([offer?.deed, offer?.text]).toEqual([deed, expected]);
    // What is offered needs no further question.
    expect(pastedOffer(offer?.text ?? '', METRE)).toBeNull();
    expect(problems(offer?.text ?? '').filter(({ message }) => !/count from a key/.test(message))).toEqual(
      [],
    );
  });

  it.each([
    '',
    'C',
    '| C | F |',
    'C / / G',
    'Verse:\n| C |',
    '[A]\n| C |',
    '| C | |',
    'C(4)',
    '|: C | F :| x3',
    '| C / F / |',
    '(key: D) | D | G |',
  ])('%j is written as charts are', (text) => {
    expect(pastedOffer(text, METRE)).toBeNull();
  });

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

describe('lines that hold no bar', () => {
  it.each([
    ['4/4\n| C | F |', '(4/4)'],
    ['Key: G\n| C | F |', '(key: G)'],
    ['Key of F#m\n| C | F |', '(key: F#m)'],
    ['Tempo: 120\n| C | F |', '; Tempo: 120'],
    ['Capo 2\n| C | F |', '; Capo 2'],
    ['(Verse)\n| C | F |', 'Verse:'],
    ['Verse (2x)\n| C | F |', 'Verse:'],
    ['e|---0---|\n| C | F |', '; e|---0---|'],
    ['Chorus | C | F |', undefined],
    ['Intro: | C | F |', undefined],
  ])('%j makes no extra bar, and is asked about', (text, suggestion) => {
    const { chart, problems: found } = parseChart(text, METRE);
    expect(chart.bars.map(({ spans }) => spans.map(({ harmony }) => harmonyText(harmony)))).toEqual([
      ['C'],
      ['F'],
    ]);
    expect(found.map((each) => each.suggestion)).toEqual([suggestion]);
  });
});

describe('numerals without a key', () => {
  const keysFor = (text: string, heard: readonly string[] = []) =>
    numeralKeys(
      parseChart(text, METRE).chart,
      heard.flatMap((name) => {
        const key = parseKey(name);
        return key.ok ? [key.value] : [];
      }),
    ).map(describeKey);

  it('are asked about once, and understood in each key that is offered', () => {
    const text = '| I | vi | ii7 | V7 |';
    expect(problems(text)).toHaveLength(1);
    for (const name of keysFor(text)) {
      const key = parseKey(name);
      expect(key.ok && parseChart(text, METRE, key.value).problems).toEqual([]);
    }
  });

  it.each([
    ['| I | vi | IV | V |', 'C major'],
    ['| vi | IV | V |', 'C major'],
    ['| 1 | 4 | 5 |', 'C major'],
    ['| i | VII | VI | V |', 'A minor'],
    ['| i7 | iv7 |', 'A minor'],
    ['| 1- | 4- | 5 |', 'A minor'],
  ])('%s are likeliest in %s', (text, key) => {
    expect(keysFor(text)[0]).toBe(key);
    expect(keysFor(text)).toHaveLength(4);
  });

  it('are likeliest in the key of what stands beside them', () => {
    expect(keysFor('| I | IV |', ['Eb'])).toEqual(['E♭ major', 'C major', 'G major', 'F major']);
  });

  it.each(['| C | F |', '(key: G) | I | IV |', 'Verse:\n| Foo |', ''])('%j asks for no key', (text) => {
    expect(keysFor(text)).toEqual([]);
  });
});

describe('the next sign', () => {
  const { chart } = parseChart('| C | F | C | G7 |', METRE);
  it.each([
    ['', '| '],
    ['| ', 'C'],
    ['| B', 'b'],
    ['| C7', ' | '],
    ['| Bb', ' | '],
    ['| C ', '| '],
  ])('behind %j is %j first', (before, sign) => {
    const signs = nextSigns(before, chart);
    expect(signs[0]).toBe(sign);
    // No two buttons look alike.
    expect(new Set(signs.map((each) => each.trim())).size).toBe(signs.length);
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
