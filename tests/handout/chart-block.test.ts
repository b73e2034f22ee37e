import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deriveSheets, type LineSheet, newLesson, setChartText } from '../../src/core/lesson';
import { chartRows } from '../../src/handout/blocks/chart';
import type { BlockContext } from '../../src/handout/blocks/context';
import { rowsHeight } from '../../src/handout/layout/breaks';
import type { Mark } from '../../src/handout/layout/marks';
import { points } from '../../src/handout/layout/paper';
import { joinRows } from '../../src/handout/layout/rows';
import { sizesFor } from '../../src/handout/layout/sizes';
import { fullSettings } from '../../src/handout/model/settings';
import { randomCharts } from '../chart/random-charts';
import { measureAsPrinted } from './drawn';

const WIDTH = points(180);

function context(print: 'normal' | 'large'): BlockContext {
  const sizes = sizesFor(print);
  return {
    width: WIDTH,
    settings: fullSettings({ paper: 'A4', degrees: false, fingers: false, print }),
    sizes,
    spacing: sizes.spacings[0],
    measure: measureAsPrinted,
    asks: false,
    engrave: () => {
      throw new Error('a chord chart engraves nothing');
    },
  };
}

function sheetOf(text: string): LineSheet {
  const lesson = newLesson('chart', 'Chart');
  const [sheet] = deriveSheets(setChartText(lesson, lesson.pieces[0]?.id ?? '', text));
  if (sheet?.kind !== 'line') throw new Error('no line');
  return sheet;
}

const block = (text: string, print: 'normal' | 'large' = 'normal') =>
  joinRows(chartRows(sheetOf(text), context(print)));

interface Box {
  readonly what: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The signs of repeated bars and the dots are glyphs of the music font, whose widths the text face does not know. */
const isMusic = (text: string): boolean => /[\u{1D100}-\u{1D1FF}]/u.test(text);

function boxOf(mark: Mark): Box | null {
  if (mark.kind === 'block') {
    const { x, y, width, height } = mark;
    return { what: 'bar line', left: x, right: x + width, top: y, bottom: y + height };
  }
  if (mark.kind !== 'text' || isMusic(mark.text)) return null;
  const width = measureAsPrinted(mark.text, mark);
  const left = { start: mark.x, middle: mark.x - width / 2, end: mark.x - width }[mark.anchor];
  return {
    what: mark.text,
    left,
    right: left + width,
    top: mark.y - mark.size * 0.72,
    bottom: mark.y + mark.size * 0.05,
  };
}

const boxes = (marks: readonly Mark[]): readonly Box[] => marks.flatMap((mark) => boxOf(mark) ?? []);

const meet = (one: Box, other: Box): boolean =>
  one.left < other.right - 0.2 &&
  other.left < one.right - 0.2 &&
  one.top < other.bottom - 0.2 &&
  other.top < one.bottom - 0.2;

function collisions(marks: readonly Mark[]): readonly string[] {
  const all = boxes(marks);
  return all.flatMap((one, index) =>
    all
      .slice(index + 1)
      .filter((other) => meet(one, other) && !(one.what === 'bar line' && other.what === 'bar line'))
      .map((other) => `${one.what} and ${other.what}`),
  );
}

const words = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
const count = (marks: readonly Mark[], text: string) => words(marks).filter((word) => word === text).length;

/** Ordinary charts on which the block once overprinted. */
const CHARTS: Readonly<Record<string, string>> = {
  'split bars with long symbols': '| Gbmaj7#11 Ebm7b5/A | Abm7 Db13b9 | Bbm7b5 Eb7alt | Abm9 Db7sus4 |',
  'a pickup and endings in 3/4': '(3/4) (1) | G7 |\n|: C | Am |1. Dm | G7 :|2. C | C |',
  'the way through':
    '[Verse]\n(segno) |: Em | G | C D | Em D (to coda) :| x3\n| Am | B7 (D.S. al coda) |\n(coda) | Em |',
  'an ending under the segno': '|: C | (segno) F |1. (coda) G :|2. G (fine) | C (D.C. al fine) |',
  'one bar wider than the page': `| ${Array.from({ length: 8 }, () => 'C#m7b5').join(' ')} |`,
  'keys and metres': '| Am7 | D7 |\n(key: C) | (3/4) Dm7 G7 | C |\n(4/4) | C / / G | C <G7 |',
};

describe.each(['normal', 'large'] as const)('a chord chart in %s print', (print) => {
  test.each(Object.entries(CHARTS))('has room for %s', (_, text) => {
    const { marks, height } = block(text, print);
    expect(collisions(marks)).toEqual([]);
    for (const box of boxes(marks)) {
      expect(box.left, box.what).toBeGreaterThanOrEqual(-0.01);
      expect(box.right, box.what).toBeLessThanOrEqual(WIDTH + 0.01);
      expect(box.top, box.what).toBeGreaterThanOrEqual(-0.01);
      expect(box.bottom, box.what).toBeLessThanOrEqual(height + 0.01);
    }
  });
});

test('a chord chart has room for whatever a chart can say', () => {
  fc.assert(
    fc.property(randomCharts, (text) => {
      const { marks } = block(text);
      expect(collisions(marks)).toEqual([]);
      for (const { what, right } of boxes(marks)) expect(right, what).toBeLessThanOrEqual(WIDTH + 0.01);
    }),
    { seed: 20, numRuns: 60 },
  );
});

describe('what a chord chart says', () => {
  test('its key, where the facts of the piece do not tell it', () => {
    const facts = context('normal');
    const alone = { ...facts, settings: { ...facts.settings, blocks: ['chart' as const] } };
    const sheet = sheetOf('(key: Bb) | Bb | Gm | Cm7 | F7 |');
    const said = (own: BlockContext) => words(joinRows(chartRows(sheet, own)).marks).join(' ');
    expect(said(alone)).toMatch(/^Chords B♭ major: two flats/);
    expect(said({ ...alone, settings: { ...alone.settings, blocks: ['facts', 'chart'] } })).not.toContain(
      'major',
    );
  });

  const ONE_BAR = '\u{1D10E}';
  const TWO_BARS = '\u{1D10F}';
  const DOTS = '\u{1D108}';

  test('an ending has one number and one bracket, whatever bars it holds', () => {
    const { marks } = block('|: C | F |1. G | G7 :|2. C | C |');
    expect(count(marks, '1.')).toBe(1);
    expect(count(marks, '2.')).toBe(1);
    // Down where an ending begins, and where it leads back.
    expect(marks.filter((mark) => mark.kind === 'rule' && mark.width === 0).length).toBe(3);
  });

  test('a repeat has thick and thin lines and its dots, and says how often where it is not twice', () => {
    const { marks } = block('|: C | F | G | C :| x3');
    expect(count(marks, DOTS)).toBe(2);
    expect(count(marks, 'x3')).toBe(1);
    const widths = marks.flatMap((mark) => (mark.kind === 'block' ? [mark.width] : []));
    expect(widths.filter((width) => width > 2).length).toBe(2);
  });

  test('the numbers of endings say how often', () => {
    const { marks } = block('|: C |1. F :|2. G :|3. C |');
    expect(count(marks, '3.')).toBe(1);
    expect(count(marks, 'x3')).toBe(0);
  });

  test('a bar like the one before is written as one, two like the two before across their bar line', () => {
    expect(count(block('| C | C | F | F |').marks, ONE_BAR)).toBe(2);
    const pair = block('| C | Am | C | Am |').marks;
    expect(count(pair, TWO_BARS)).toBe(1);
    expect(count(pair, 'C')).toBe(1);
    const sign = pair.find((mark) => mark.kind === 'text' && mark.text === TWO_BARS);
    const line = pair.filter((mark) => mark.kind === 'block').map((mark) => mark.x);
    expect(line.some((x) => Math.abs(x - (sign?.x ?? 0)) < 1)).toBe(true);
  });

  // E. Gould, "Behind Bars" (2011), repeated bars: not at the beginning of a system (from memory).
  test('no line, section, ending or repeat begins with a sign for repeated bars', () => {
    const eight = block('| C | C | C | C | C | C | C | C |').marks;
    expect(count(eight, 'C')).toBe(2);
    expect(count(block('[A]\n| C | C |\n[B]\n| C | C |').marks, 'C')).toBe(2);
    expect(count(block('|: C |1. C :|2. C |').marks, ONE_BAR)).toBe(0);
  });

  test('a bar shared unevenly shows its beats, an even one does not', () => {
    expect(count(block('| C / / G |').marks, '/')).toBe(2);
    expect(count(block('| C G |').marks, '/')).toBe(0);
    expect(count(block('(3/4) | C G |').marks, '/')).toBe(1);
    // The third beat of 7/8 is the longer one.
    expect(count(block('(7/8) | C F / |').marks, '/')).toBe(1);
    expect(count(block('(7/8) | C / F |').marks, '/')).toBe(1);
  });

  test('the metre stands where it is new, and a key where it changes', () => {
    const { marks } = block('| Am7 | D7 |\n(key: C) | (3/4) Dm7 | C |');
    expect(count(marks, '3')).toBe(1);
    expect(count(marks, 'C major')).toBe(1);
  });

  test('the coda begins a line behind a double bar line, its sign apart from the words that lead to it', () => {
    const { marks } = block('(segno) | Em | C (to coda) | Am | B7 (D.S. al coda) |\n(coda) | Em | D | Em |');
    const at = (text: string) =>
      marks.flatMap((mark) => (mark.kind === 'text' && mark.text.includes(text) ? [mark] : []));
    const [words] = at('D.S. al Coda');
    const signs = at('\u{1D10C}');
    const [first] = at('Am');
    const heights = new Set(at('Em').map(({ y }) => Math.round(y)));
    expect(signs.length).toBe(2);
    expect(heights.size).toBe(2);
    const coda = signs.reduce((low, sign) => (sign.y > low.y ? sign : low));
    expect(coda.y).toBeGreaterThan((first?.y ?? 0) + 5);
    expect(coda.y).toBeGreaterThan((words?.y ?? 0) + 5);
  });

  test('what is added to a triad is raised', () => {
    const { marks } = block('| F#m7b5/C |');
    const at = (text: string) => marks.find((mark) => mark.kind === 'text' && mark.text === text)?.y ?? 0;
    expect(at('7♭5')).toBeLessThan(at('F♯m'));
    expect(at('/C')).toBe(at('F♯m'));
  });

  test('bars stand under each other in fours, each section beginning a line', () => {
    const { marks } = block('[A]\n| C | F | G | C | Am | F |\n[B]\n| C | F | G | C |');
    const at = (text: string) =>
      marks.flatMap((mark) => (mark.kind === 'text' && mark.text === text ? [Math.round(mark.x)] : []));
    expect(new Set(at('F')).size).toBe(1);
    expect(rowsHeight(chartRows(sheetOf('| C |'), context('normal')))).toBeGreaterThan(0);
  });
});

test('the coda’s sign stands where the coda begins, and behind the words that lead to it', () => {
  const { marks } = block('| F | C (to coda) | F | C (D.C. al coda) |\n| (coda) F | F |');
  const at = (wanted: string) =>
    marks.flatMap((mark) => (mark.kind === 'text' && mark.text === wanted ? [mark] : []));
  const [words] = at('To Coda');
  const signs = at('\u{1D10C}');
  expect(signs.length).toBe(2);
  const behind = signs.find(({ y }) => y === words?.y);
  const end = (words?.x ?? 0) + measureAsPrinted('To Coda', words ?? { size: 0, bold: false });
  expect(behind?.x).toBeGreaterThan(end);
});
