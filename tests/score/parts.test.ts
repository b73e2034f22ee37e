import { describe, expect, test } from 'vitest';
import { engrave } from '../../src/score/engrave';
import type { InkRole, ScoreOptions } from '../../src/score/types';
import { sheetOf } from '../support/score-sheets';

const OPTIONS: ScoreOptions = {
  width: 700,
  degrees: true,
  fingers: false,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: true,
};

/** From the lowest position up the neck and back, so that the hand must move. */
const SHEET = sheetOf({
  key: 'F',
  chart: '|: F | Dm :|',
  notes: 'F1/1 A1/1 C2/1 F1/1 | D3/1 E3/1 F3/1 A3/1',
});

const inkOf = (options: Partial<ScoreOptions>) =>
  engrave(SHEET, { ...OPTIONS, ...options }).systems.flatMap(({ ink }) => ink);

const rolesOf = (options: Partial<ScoreOptions>): ReadonlySet<InkRole> =>
  new Set(inkOf(options).map(({ role }) => role));

const textsOf = (role: InkRole, options: Partial<ScoreOptions>): readonly string[] =>
  inkOf(options).flatMap((ink) => (ink.kind === 'text' && ink.role === role ? [ink.text] : []));

describe('a staff alone', () => {
  test('has every note and its degree, and no tab', () => {
    const roles = rolesOf({ parts: 'staff' });
    expect(roles.has('staff-line') && roles.has('note')).toBe(true);
    expect(roles.has('tab-line') || roles.has('fret')).toBe(false);
    expect(textsOf('degree', { parts: 'staff' })).toEqual(textsOf('degree', {}));
  });

  test('keeps its bar lines to itself, and the degrees under the lowest note', () => {
    const [system] = engrave(SHEET, { ...OPTIONS, parts: 'staff' }).systems;
    if (system === undefined) throw new Error('the line has no system');
    const inUnits = (pixels: number) => pixels / system.scale;
    const boxes = (role: InkRole) => system.ink.filter((ink) => ink.role === role).map(({ box }) => box);
    for (const { top, bottom } of boxes('bar-line')) {
      expect(top).toBeGreaterThan(inUnits(system.staff.top) - 2);
      expect(bottom).toBeLessThan(inUnits(system.staff.bottom) + 2);
    }
    const lowest = Math.max(...boxes('note').map(({ bottom }) => bottom));
    expect(Math.min(...boxes('degree').map(({ top }) => top))).toBeGreaterThan(lowest);
  });
});

describe('a tab alone', () => {
  test('has every fret and chord, and no staff', () => {
    const roles = rolesOf({ parts: 'tab' });
    expect(roles.has('staff-line') || roles.has('note') || roles.has('rest')).toBe(false);
    expect(textsOf('fret', { parts: 'tab' })).toEqual(textsOf('fret', {}));
    expect(textsOf('chord', { parts: 'tab' })).toEqual(['F', 'Dm']);
  });

  test('is lower than both', () => {
    const height = (options: Partial<ScoreOptions>) => engrave(SHEET, { ...OPTIONS, ...options }).height;
    expect(height({ parts: 'tab' })).toBeLessThan(height({}) * 0.75);
  });
});

describe('hand positions', () => {
  /** The position of every fretted note, runs of the same one taken together. */
  const taken = SHEET.bars
    .flatMap(({ notes }) => notes)
    .flatMap(({ fingered }) => (fingered === null || fingered.fret === 0 ? [] : [Number(fingered.position)]))
    .filter((position, index, all) => position !== all[index - 1]);

  test('stand where the hand takes another one, and nowhere else', () => {
    expect(taken.length).toBeGreaterThan(1);
    const numerals = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII'];
    expect(textsOf('position', { positions: true })).toEqual(
      taken.map((position) => `pos. ${numerals[position - 1]}`),
    );
    expect(textsOf('position', {})).toEqual([]);
  });
});

test('the name of the feel can be left out of an excerpt', () => {
  const swung = sheetOf({ chart: '| F |', notes: 'F1/4', feel: 'early-ska', tempo: 126 });
  const feel = (options: Partial<ScoreOptions>) =>
    engrave(swung, { ...OPTIONS, ...options }).systems.flatMap(({ ink }) =>
      ink.filter(({ role }) => role === 'feel'),
    );
  expect(feel({ feel: false })).toEqual([]);
  expect(feel({}).length).toBe(1);
});

describe("the chords' numerals", () => {
  // A dominant of another degree has a stroke, a borrowed chord a flat: common practice, no source.
  const sheet = sheetOf({
    key: 'C',
    chart: '| C A7 | Dm C7 | F Ab | % G7 |',
    notes: 'C2/4 | D2/4 | F2/4 | G2/4',
  });
  const numerals = (options: Partial<ScoreOptions>) =>
    engrave(sheet, { ...OPTIONS, ...options }).systems.flatMap(({ ink }) =>
      ink.flatMap((one) => (one.kind === 'text' && one.role === 'numeral' ? [one] : [])),
    );

  test('name what each chord is in its key, once a change', () => {
    expect(numerals({ numerals: true }).map(({ text }) => text)).toEqual([
      'I',
      'V7/ii',
      'ii',
      'V7/IV',
      'IV',
      '♭VI',
      'V7',
    ]);
    expect(numerals({})).toEqual([]);
  });

  test('stand each under its chord, on one line a system', () => {
    for (const { ink } of engrave(sheet, { ...OPTIONS, numerals: true }).systems) {
      const texts = (role: InkRole) =>
        ink.flatMap((one) => (one.kind === 'text' && one.role === role ? [one] : []));
      expect(texts('numeral').map(({ x }) => x)).toEqual(texts('chord').map(({ x }) => x));
      expect(new Set(texts('numeral').map(({ y }) => y)).size).toBe(1);
    }
  });
});
