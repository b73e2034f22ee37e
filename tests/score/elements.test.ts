import { expect, test } from 'vitest';
import { digitsOf } from '../../src/score/digits';
import { together } from '../../src/score/elements';
import { engrave } from '../../src/score/engrave';
import type { Ink } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';
import { blankSheet } from '../support/score-sheets';

const OPTIONS = {
  width: 800,
  degrees: true,
  fingers: true,
  counting: true,
  numerals: true,
  positions: true,
  barsPerSystem: 4,
  measureNumbers: true,
} as const;

/** What people look for on a page and copy from it. */
const WORDS = ['chord', 'section', 'words', 'feel', 'numeral', 'way'];

const sixteenths = SCORE_FIXTURES['low-sixteenths'] ?? (() => blankSheet(1));

const systems = Object.values(SCORE_FIXTURES).flatMap((make) => engrave(make(), OPTIONS).systems);

test('no mark is lost where marks share an element, and none is drawn twice', () => {
  for (const { ink } of systems) {
    const drawn: Ink[] = together(ink).flatMap((one) => [...one.ink]);
    expect(drawn.length).toBe(ink.length);
    expect(new Set(drawn)).toEqual(new Set(ink));
  }
});

test('what shares an element looks the same, and words are texts of their own', () => {
  for (const { ink } of systems) {
    for (const { ink: shared } of together(ink)) {
      const looks = shared.map((one) =>
        one.kind === 'path' ? [one.role, one.stroke] : [one.role, one.font, one.size, one.bold, one.italic],
      );
      expect(new Set(looks.map(String)).size).toBe(1);
      if (WORDS.includes(shared[0].role) && shared[0].kind === 'text') expect(shared).toHaveLength(1);
    }
  }
});

test('a system of many notes is drawn with few elements', () => {
  const [system] = engrave(sixteenths(), OPTIONS).systems;
  const ink = system?.ink ?? [];
  expect(ink.length).toBeGreaterThan(100);
  expect(together(ink).length).toBeLessThan(40);
});

test('coordinates are written to a hundredth, as a number would be', () => {
  const values = Array.from({ length: 90_000 }, (_, index) => index * 0.0137 - 20);
  const other = values.filter((value) => digitsOf(value) !== String(Math.round(value * 100) / 100));
  expect(other).toEqual([]);
  expect([0, -0.001, 7, -0.5, 12.305, 99.999].map(digitsOf)).toEqual(['0', '0', '7', '-0.5', '12.31', '100']);
});
