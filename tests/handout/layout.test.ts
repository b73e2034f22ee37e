import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breakPages, rowsHeight } from '../../src/handout/layout/breaks';
import { points, sheetOf } from '../../src/handout/layout/paper';
import { type Row, wrap } from '../../src/handout/layout/rows';

describe('paper', () => {
  // ISO 216 for A4; ANSI/ASME Y14.1 for Letter.
  test.each([
    { paper: 'A4' as const, width: 595.28, height: 841.89 },
    { paper: 'Letter' as const, width: 612, height: 792 },
  ])('$paper is $width by $height points with margins of 15 mm', ({ paper, width, height }) => {
    const sheet = sheetOf(paper, { twoUp: false, binding: false });
    expect(sheet.width).toBeCloseTo(width, 2);
    expect(sheet.height).toBeCloseTo(height, 2);
    for (const margin of [sheet.left, sheet.top, sheet.width - sheet.right, sheet.height - sheet.bottom]) {
      expect(margin).toBeCloseTo(points(15), 6);
    }
  });
});

describe('lines of text', () => {
  const letters = (text: string) => [...text].length;

  test('break at spaces, and inside a word only when it is wider than the line', () => {
    expect(wrap('clap the rhythm of bar two', 10, letters)).toEqual(['clap the', 'rhythm of', 'bar two']);
    expect(wrap('a Quartsextakkord', 10, letters)).toEqual(['a', 'Quartsexta', 'kkord']);
    expect(wrap('hand in second, level\u00a03', 20, letters)).toEqual(['hand in second,', 'level 3']);
    expect(wrap('   ', 10, letters)).toEqual([]);
  });

  test('never exceed the width and lose no word', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z♭]{1,14}$/), { maxLength: 30 }),
        fc.integer({ min: 3, max: 40 }),
        (words, width) => {
          const lines = wrap(words.join(' '), width, letters);
          expect(lines.every((line) => letters(line) <= width)).toBe(true);
          expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
        },
      ),
      { seed: 7 },
    );
  });
});

describe('page breaks', () => {
  const row = (height: number, keepWithNext = false): Row => ({ height, gap: 10, keepWithNext, marks: [] });
  const systems = (count: number) => Array.from({ length: count }, () => row(100));
  const lengths = (pages: readonly (readonly Row[])[]) => pages.map((page) => page.length);

  test('a page that holds everything holds everything', () => {
    expect(lengths(breakPages(systems(6), { first: 650, later: 620 }))).toEqual([6]);
  });

  test('one system too many is not left alone: the first page gives up some of its own', () => {
    expect(lengths(breakPages(systems(7), { first: 650, later: 620 }))).toEqual([4, 3]);
  });

  test('a heading stays with what it is about', () => {
    const rows = [...systems(5), row(20, true), ...systems(3)];
    expect(lengths(breakPages(rows, { first: 650, later: 620 }))).toEqual([5, 4]);
  });

  test('what is kept together but taller than a page is cut, not lost and not clipped', () => {
    const rows = Array.from({ length: 9 }, () => row(100, true));
    expect(lengths(breakPages(rows, { first: 350, later: 350 }))).toEqual([3, 3, 3]);
  });

  test('pages hold every row once and in order, none is overfull, and no page more than needed', () => {
    const someRow = fc
      .record({ height: fc.integer({ min: 5, max: 160 }), keepWithNext: fc.boolean() })
      .map(({ height, keepWithNext }) => row(height, keepWithNext));
    fc.assert(
      fc.property(fc.array(someRow, { minLength: 1, maxLength: 40 }), (rows) => {
        const room = { first: 400, later: 380 };
        const pages = breakPages(rows, room);
        expect(pages.flat()).toEqual(rows);
        pages.forEach((page, index) => {
          expect(rowsHeight(page)).toBeLessThanOrEqual(index === 0 ? room.first : room.later);
        });
        expect(pages.length).toBeGreaterThanOrEqual(
          Math.ceil(rows.reduce((sum, { height }) => sum + height, 0) / room.first),
        );
      }),
      { seed: 11 },
    );
  });
});
