import { describe, expect, test } from 'vitest';
import { fret, stringNumber } from '../../src/core/base';
import { createInstrument } from '../../src/core/fretboard';
import type { LineSheet, Sheet } from '../../src/core/lesson';
import { excerptOf } from '../../src/handout/excerpt';
import { engrave } from '../../src/score/engrave';
import { textWidth } from '../../src/score/metrics/measure';
import { layoutFretboard } from '../../src/score/neck/layout';
import type { Ink, InkRole, ScoreOptions, TextInk } from '../../src/score/types';
import { FACES } from '../handout/pages';
import { NOTES_ONLY, sheetOf } from '../support/score-sheets';

const BRAVURA = FACES.find(({ family }) => family === 'Bravura')?.font;

const inkOf = (sheet: Sheet, role: InkRole, options: Partial<ScoreOptions> = {}): readonly Ink[] =>
  engrave(sheet, { ...NOTES_ONLY, ...options }).systems.flatMap(({ ink }) =>
    ink.filter((one) => one.role === role),
  );

const lineOf = (given: Parameters<typeof sheetOf>[0]): LineSheet => {
  const sheet = sheetOf(given);
  if (sheet.kind !== 'line') throw new Error('no line');
  return sheet;
};

describe('a tie', () => {
  test('between near heads reaches over them, but not over one with a sign at it', () => {
    const beginsAt = (notes: string): number => {
      const sheet = sheetOf({ key: 'C', chart: '| C |', notes });
      const [tie] = inkOf(sheet, 'tie', { width: 230 });
      const before = inkOf(sheet, 'note', { width: 230 }).filter(
        ({ box }) => box.left < (tie?.box.left ?? 0),
      );
      return (tie?.box.left ?? Number.NaN) - Math.max(...before.map(({ box }) => box.right));
    };
    const rest = 'C2/.25 G1/.75 C2/.25 G1/.75 C2/.25 G1/.75 C2/.25 G1/.5';
    expect(beginsAt(`r/.25 ${rest}`)).toBeLessThan(1);
    expect(beginsAt(`r/.25 ${rest.replaceAll('G1/.75', 'G1/.75>')}`)).toBeGreaterThan(1);
  });

  const tied = (chart: string, notes: string) => inkOf(sheetOf({ key: 'C', chart, notes }), 'tie').length;

  test('is not drawn where nothing follows it', () => {
    expect(tied('| C | C |', 'C2/4 | C2/4~')).toBe(0);
    expect(tied('| C | C |', 'C2/4~ | E2/4')).toBe(0);
  });

  test('is drawn into the next bar, and back to where a repeat begins', () => {
    expect(tied('| C | C |', 'C2/4~ | C2/4')).toBe(1);
    expect(tied('|: C | C :|', 'C2/4 | C2/4~')).toBe(2);
    expect(tied('| F | F |: C | C :|', 'F1/4 | F1/4 | C2/4 | C2/4~')).toBe(2);
  });

  test('does not lead through a repeat’s end into the ending that stands behind it', () => {
    expect(tied('|: C | F |1. G :|2. G |', 'C2/4 | F1/4 | G1/4~ | G1/4')).toBe(0);
  });

  const dotsOf = (sheet: Sheet) => inkOf(sheet, 'bar-line').filter(({ box }) => box.right - box.left === 4);
  const [left, right] = [
    (one: Ink | undefined) => one?.box.left ?? Number.NaN,
    (one: Ink | undefined) => one?.box.right ?? Number.NaN,
  ];

  // E. Gould, "Behind Bars" (2011), ties into repeats and endings: a short tie before the note (from memory).
  test.each([
    { chart: '|: C | C :|', notes: 'F♯1/2 C2/2 | C2/2 F♯1/2~' },
    { chart: '| F |: C | C :|', notes: 'F1/4 | F♯1/2 C2/2 | C2/2 F♯1/2~' },
  ])('from the end of $chart keeps clear of dots, signs and heads at both ends', ({ chart, notes }) => {
    const sheet = sheetOf({ key: 'C', chart, notes });
    const ties = [...inkOf(sheet, 'tie')].sort((one, other) => left(one) - left(other));
    const dots = dotsOf(sheet);
    const opens = Math.min(...dots.map(right));
    const closes = Math.max(...dots.map(left));
    const [sign] = inkOf(sheet, 'accidental');
    expect(ties.length).toBe(2);
    expect(left(ties[0])).toBeGreaterThan(opens + 1);
    expect(right(ties[0])).toBeLessThan(left(sign));
    expect(right(ties[0]) - left(ties[0])).toBeGreaterThan(10);
    expect(right(ties[1])).toBeLessThan(closes - 1);
    expect(right(ties[1]) - left(ties[1])).toBeGreaterThan(10);
  });

  test('is held in an ending, and struck where a repeat begins: fret, finger, degree and sign say so', () => {
    const sheet = sheetOf({
      key: 'C',
      chart: '|: C | G |1. G :|2. G |',
      notes: 'F♯1/2 C2/2 | C2/2 G1/2~ | G1/2 F♯1/2~ | G1/4',
    });
    const options = { parts: 'both', fingers: true, degrees: true } as const;
    const texts = (role: InkRole) =>
      inkOf(sheet, role, options).flatMap((one) => (one.kind === 'text' ? [one.text] : []));
    expect(texts('fret')).toEqual(['2', '3', '3', '3', '(3)', '2', '(3)']);
    expect(texts('finger').length).toBe(5);
    expect(texts('degree').length).toBe(5);
    expect(texts('accidental').length).toBe(2);
  });

  test('hangs clear of the fret numbers under a tab alone', () => {
    const sheet = sheetOf({
      key: 'C',
      chart: '|: C | G |1. G :|2. G |',
      notes: 'F♯1/2 C2/2 | C2/2 G1/2~ | G1/2 F♯1/2~ | G1/4',
    });
    for (const tab of [15, 20]) {
      const textSizes = { chord: 20, tab, degree: 12, finger: 12, counting: 12, section: 14, small: 11 };
      const options = { parts: 'tab', textSizes } as const;
      const ties = inkOf(sheet, 'tie', options);
      expect(ties.length).toBe(4);
      const numbers = inkOf(sheet, 'fret', options);
      for (const tie of ties)
        for (const { box } of numbers)
          expect(box.right < tie.box.left || box.left > tie.box.right || box.bottom < tie.box.top).toBe(true);
    }
  });
});

// E. Gould, "Behind Bars" (2011), upbeats and divided bars: what completes a bar is no new metre (from memory).
test('a bar that a pickup completes changes no metre, neither in its system nor before the next', () => {
  const signs = (chart: string, notes: string) =>
    inkOf(sheetOf({ key: 'C', chart, notes }), 'time-signature', { barsPerSystem: 2 }).length;
  const verse = 'G1/1 | C2/4 | F1/4 | C2/3';
  const once = signs('| C | F |', 'C2/4 | F1/4');
  expect(once).toBeGreaterThan(0);
  expect(signs('Verse:\n(1) | G | C | F | (3/4) C |\nVerse', `${verse} | ${verse}`)).toBe(once);
  expect(signs('(1) |: G | C | F | (3/4) C :|', verse)).toBe(once);
  expect(signs('| C | (3/4) F | (4/4) G |', 'C2/4 | F1/3 | G1/4')).toBeGreaterThan(once);
});

test('the end of a bar is counted as the end', () => {
  const verse = 'G1/1 | C2/4 | F1/4 | C2/3';
  const sheet = sheetOf({
    key: 'C',
    chart: 'Verse:\n(1) | G | C | F | (3/4) C |\nVerse',
    notes: `${verse} | ${verse}`,
  });
  const counts = inkOf(sheet, 'counting', { counting: true }).map((one) =>
    one.kind === 'text' ? one.text : '',
  );
  const form = '4 1 (2) (3) (4) 1 (2) (3) (4) 1 (2) (3)';
  expect(counts.join(' ')).toBe(`${form} ${form}`);
});

test('the rows under a piece say what they are, clear of what stands in them', () => {
  const options = { fingers: true, degrees: true, counting: true, numerals: true } as const;
  for (const parts of ['both', 'tab', 'staff'] as const) {
    const sheet = sheetOf({ key: 'C', chart: '| C | F | G | C |', notes: 'C2/4 | F1/4 | G1/4 | C2/4' });
    const names = inkOf(sheet, 'row-name', { ...options, parts });
    expect(names.map((one) => (one.kind === 'text' ? one.text : ''))).toEqual([
      'finger',
      'degree',
      'count',
      'numeral',
    ]);
    const texts = (['finger', 'degree', 'counting', 'numeral'] as const).flatMap((role) =>
      inkOf(sheet, role, { ...options, parts }),
    );
    const end = Math.max(...names.map(({ box }) => box.right));
    expect(Math.min(...texts.map(({ box }) => box.left))).toBeGreaterThan(end + 2);
  }
});

test('bars taken out of a line end as bars within it do', () => {
  const line = lineOf({ key: 'C', chart: '| C | F | G | C |', notes: 'C2/4 | F1/4 | G1/4 | C2/4' });
  const widest = (sheet: LineSheet): number =>
    Math.max(
      ...inkOf(sheet, 'bar-line').map(({ box }) => (box.bottom - box.top > 60 ? box.right - box.left : 0)),
    );
  const last = (sheet: LineSheet): number =>
    inkOf(sheet, 'bar-line').filter(({ box }) => box.left > 40 && box.bottom - box.top > 60).length;
  expect(last(line)).toBe(5);
  expect(last(excerptOf(line, 1, 2))).toBe(2);
  expect(widest(line)).toBeGreaterThan(4);
});

// T. Ross, "The Art of Music Engraving and Processing" (1970): beams of a beat slant by a space at most (from memory).
test('a beam rises a staff space at most, that of a triplet too', () => {
  const sheet = sheetOf({
    key: 'C',
    chart: '| C | C |',
    notes: 'E1/1/3 C2/1/3 C3/1/3 C3/1/3 C2/1/3 E1/1/3 r/2 | E1/.5 C3/.5 C3/.5 E1/.5 r/2',
  });
  const beams = inkOf(sheet, 'beam');
  expect(beams.length).toBeGreaterThan(2);
  // A beam is half a space thick.
  for (const { box } of beams) expect(box.bottom - box.top).toBeLessThanOrEqual(10 + 5.5);
});

// E. Gould, "Behind Bars" (2011): a clear space between an accidental and its head (from memory). The font draws sign and
// brackets as one glyph, wider than the three of them, so its own layout is asked how far they reach.
test.each([
  { sign: '♮', notes: 'C♯2/4 | C2/4' },
  { sign: '♮', notes: 'B♭1/4 | B1/.5 C2/.5 r/3' },
  { sign: '♭', notes: 'B1/4 | B♭1/1 r/3', key: 'F' },
  { sign: '♯', notes: 'F1/4 | F♯1/1 r/3', key: 'G' },
])('the brackets of a courtesy $sign do not touch its head ($notes)', ({ notes, key = 'C' }) => {
  const sheet = sheetOf({ key, chart: '| C | C |', notes });
  const signs = inkOf(sheet, 'accidental').filter((one): one is TextInk => one.kind === 'text');
  const courtesy = signs.find(({ text }) => [...text].length === 3);
  if (courtesy === undefined || BRAVURA === undefined) throw new Error('nothing in brackets');
  const drawn = BRAVURA.layout(courtesy.text);
  const right = courtesy.x + (drawn.advanceWidth / BRAVURA.unitsPerEm) * courtesy.size;
  const head = Math.min(
    ...inkOf(sheet, 'note').flatMap(({ box }) => (box.left > courtesy.x ? [box.left] : [])),
  );
  expect(head - right).toBeGreaterThanOrEqual(2.4);
  expect(head - right).toBeLessThan(8);
});

test('extensions stand raised and smaller, in one text with their root', () => {
  const sheet = sheetOf({ key: 'C', chart: '| F♯m7♭5/C |', notes: 'C2/4' });
  const [chord] = inkOf(sheet, 'chord').filter((one): one is TextInk => one.kind === 'text');
  expect(chord?.text).toBe('F♯m7♭5/C');
  expect(chord?.runs?.map(({ text }) => text)).toEqual(['F♯m', '7♭5', '/C']);
  expect(chord?.runs?.map(({ rise }) => rise > 0)).toEqual([false, true, false]);
});

describe('a chord’s numeral', () => {
  const numerals = (chart: string) =>
    inkOf(sheetOf({ key: 'C', chart, notes: 'C2/4' }), 'numeral', { numerals: true }).filter(
      (one): one is TextInk => one.kind === 'text',
    );

  // E. Aldwell and C. Schachter, "Harmony and Voice Leading": figures of inversion stand one over the other (from memory).
  test.each([
    ['C/G', 'I', '6', '4'],
    ['G7/B', 'V', '6', '5'],
    ['G7/D', 'V', '4', '3'],
    ['G7/F', 'V', '4', '2'],
    ['Bdim7/D', 'vii°', '6', '5'],
  ])('of %s has its figures one over the other', (chord, base, upper, lower) => {
    const [numeral] = numerals(`| ${chord} |`);
    expect(numeral?.text).toBe(base + upper + lower);
    const [root, over, under] = numeral?.runs ?? [];
    expect([root?.text, over?.text, under?.text]).toEqual([base, upper, lower]);
    if (root === undefined || over === undefined || under === undefined || numeral === undefined) return;
    // A figure is seven tenths of its size high: they do not touch, and begin at one place.
    expect(over.rise - under.rise).toBeGreaterThan(0.7 * under.size);
    expect(under.back).toBeCloseTo(textWidth(upper, over.size, true), 3);
    expect(numeral.box.bottom - numeral.box.top).toBeGreaterThan(over.rise - under.rise + 0.7 * over.size);
    const width = textWidth(base, root.size, true) + textWidth(lower, under.size, true);
    expect(numeral.box.right - numeral.box.left).toBeCloseTo(width, 0);
  });

  test('tells an added sixth and ninth from figures, and what a dominant leads to from both', () => {
    expect(numerals('| C6/9 |')[0]?.runs?.map(({ text }) => text)).toEqual(['I', '6/9']);
    expect(numerals('| A7/G | Dm |')[0]?.runs?.map(({ text }) => text)).toEqual(['V', '4', '2', '/ii']);
  });
});

test('swing is an equation of notes beside its words', () => {
  const swung = sheetOf({ key: 'C', feel: 'early-ska', tempo: 120, chart: '| C |', notes: 'C2/4' });
  const words = inkOf(swung, 'feel');
  const notes = inkOf(swung, 'swing');
  expect(words.length).toBe(1);
  expect(notes.length).toBeGreaterThan(8);
  expect(Math.min(...notes.map(({ box }) => box.left))).toBeGreaterThan(words[0]?.box.right ?? 0);
});

test('plates on neighbouring frets do not touch, narrow as the frets may be', () => {
  const instrument = createInstrument();
  const notes = Array.from({ length: 12 }, (_, index) => ({
    string: stringNumber(1),
    fret: fret(index + 1),
    degree: index % 3 === 0 ? 'R' : '♭♭7',
    name: 'C',
    finger: null,
  }));
  for (const width of [205, 300, 600]) {
    const { marks } = layoutFretboard({
      title: 'neck',
      instrument,
      noteNames: 'letters',
      notes: notes.slice(0, 5),
      show: 'degree',
      position: null,
      width,
    });
    const plates = marks.flatMap((mark) => (mark.kind === 'plate' ? [mark] : []));
    plates.forEach((plate, index) => {
      const next = plates[index + 1];
      if (next === undefined) return;
      // The rim of a root is three units wide, half of it outside.
      expect(next.x - next.width / 2 - (plate.x + plate.width / 2)).toBeGreaterThanOrEqual(3);
    });
  }
});

// The lead of a bar is no time and is not stretched like it: common practice, no source.
test('a bar that is stretched leaves its first note near the bar line', () => {
  const sheet = sheetOf({ key: 'C', chart: '| C | C |', notes: 'E♭2/2 C2/2 | E♭2/2 C2/2' });
  const [, second] = engrave(sheet, { ...NOTES_ONLY, barsPerSystem: 2 }).systems[0]?.bars ?? [];
  const [first, next] = second?.positions ?? [];
  const scale = engrave(sheet, NOTES_ONLY).systems[0]?.scale ?? 0;
  expect(((first?.x ?? 0) - (second?.x ?? 0)) / scale).toBeLessThan(45);
  expect((next?.x ?? 0) - (first?.x ?? 0)).toBeGreaterThan(3 * ((first?.x ?? 0) - (second?.x ?? 0)));
});

describe('a tab alone', () => {
  const sheet = sheetOf({
    key: 'C',
    chart: '| C | C | C |',
    notes: 'C2/1 r/1 C2/.5 C2/.5 C2/.5 r/.5 | C2/2 C2/1.5 C2/.5~ | C2/4',
  });
  const roles = (role: InkRole) => inkOf(sheet, role, { parts: 'tab' });

  test('has stems under its lines for all but whole notes, beams, flags, dots and ties', () => {
    expect(roles('stem').length).toBe(7);
    expect(roles('beam').length).toBe(1);
    expect(roles('flag').length).toBe(2);
    expect(roles('dot').length).toBe(1);
    expect(roles('tie').length).toBe(1);
    const lowest = Math.max(...roles('tab-line').map(({ box }) => box.bottom));
    for (const { box } of roles('stem')) expect(box.top).toBeGreaterThan(lowest);
  });

  test('has a rest where it is silent', () => {
    expect(roles('rest').length).toBe(2);
    expect(inkOf(sheet, 'rest', { parts: 'both' }).length).toBe(2);
  });

  test('beside a staff leaves the rhythm to the staff', () => {
    expect(inkOf(sheet, 'stem', { parts: 'both' }).length).toBe(
      inkOf(sheet, 'stem', { parts: 'staff' }).length,
    );
  });
});
