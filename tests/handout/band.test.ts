import { describe, expect, test } from 'vitest';
import { ticks } from '../../src/core/base';
import { deriveSheets, type Lesson, setChartText, setFeel } from '../../src/core/lesson';
import type { Mark } from '../../src/handout/layout/marks';
import { points } from '../../src/handout/layout/paper';
import { applyPreset, HANDOUT_PRESETS } from '../../src/handout/model/presets';
import { layOutForPrint, measureAsPrinted } from './drawn';
import { layOut, lessonWith } from './lessons';

const words = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
const marksOf = (lesson: ReturnType<typeof lessonWith>) =>
  layOutForPrint(lesson).pages.flatMap(({ marks }) => marks);
const alternatives = (marks: readonly Mark[]) =>
  marks.flatMap(({ tag }) => (tag?.alternative === undefined ? [] : [tag.alternative]));
const preset = (name: string) => {
  const found = HANDOUT_PRESETS.find((each) => each.name === name);
  if (found === undefined) throw new Error(`There is no occasion ${name}`);
  return found;
};

describe('the rhythm to clap', () => {
  test('fits on one page, and tells beats and rests without a pitch or a chord', () => {
    const lesson = lessonWith(applyPreset(lessonWith({}).handout, preset('Rhythm')));
    const layout = layOutForPrint({ ...lesson, pieces: lesson.pieces.slice(0, 1) });
    expect(layout.pages.length).toBe(1);
    const told = alternatives(layout.pages.flatMap(({ marks }) => marks)).join(' ');
    expect(told).toMatch(/^Bar 1: (note|rest) on /);
    expect(told).not.toMatch(/[A-G][♭♯]?\d|fret|string|Dm|C7/);
  });

  test('tells neither key nor hand, which the line with its notes tells', () => {
    const facts = (blocks: Lesson['handout']['blocks'] & {}) =>
      words(marksOf(lessonWith({ blocks }))).filter((text) => / · /.test(text));
    const [rhythm, whole] = [facts(['facts', 'clapping']), facts(['facts', 'clapping', 'music'])];
    expect(rhythm.length).toBeGreaterThan(0);
    expect(rhythm.join()).toMatch(/♩ = \d+.*level/);
    expect(rhythm.join()).not.toMatch(/major|minor|flat|sharp|position/);
    expect(whole.join()).toMatch(/(major|minor).*position/);
  });

  test.each([
    { bars: 'with rests', duration: 480, whispers: true },
    { bars: 'without rests', duration: 960, whispers: false },
  ])('$bars: whispering them is told $whispers', ({ duration, whispers }) => {
    const lesson = lessonWith({ blocks: ['clapping'] });
    const [first] = lesson.pieces;
    if (first?.kind !== 'line') throw new Error('the sample has a line');
    const note = first.bars.flatMap(({ notes }) => notes)[0];
    if (note === undefined) throw new Error('the sample has notes');
    const notes = [0, 960, 1920, 2880].map((start) => ({
      ...note,
      tiedOn: false,
      start: ticks(start),
      duration: ticks(duration),
    }));
    const pieces = [{ ...first, bars: first.bars.map((bar) => ({ ...bar, notes })) }];
    expect(words(marksOf({ ...lesson, pieces })).some((text) => text.includes('whisper'))).toBe(whispers);
  });
});

describe('a band class', () => {
  const base = lessonWith(applyPreset(lessonWith({}).handout, preset('Band class')));
  const lesson = { ...base, pieces: base.pieces.slice(0, 1) };

  test('has the line, chops, both hands of the organ and the drums, each read aloud', () => {
    const marks = marksOf(lesson);
    const said = words(marks);
    for (const heading of ['Chops', 'Organ', 'Drums']) expect(said).toContain(heading);
    const told = alternatives(marks).join(' ');
    expect(told).toMatch(/kick( and [a-z ]+)? on \d/);
    expect(told).toMatch(/[A-G][♭♯]?\d, [A-G][♭♯]?\d and [A-G][♭♯]?\d on /);
  });

  test('a feel without chops says so instead of printing nothing', () => {
    const [first] = lesson.pieces;
    const silent = setChartText(lesson, first?.id ?? '', '| N.C. | N.C. |');
    expect(words(marksOf(silent)).some((text) => text.includes('has no chops over these chords'))).toBe(true);
  });

  test('another feel has other drums', () => {
    const [first] = lesson.pieces;
    const told = (feel: 'one-drop' | 'disco') =>
      alternatives(marksOf(setFeel(lesson, first?.id ?? '', feel))).join(' ');
    expect(told('one-drop')).not.toBe(told('disco'));
    expect(told('one-drop')).toContain('rim');
  });
});

test('the line on the neck shows every place that the line is played at, once', () => {
  const lesson = lessonWith({ blocks: ['neck'] });
  const [sheet] = deriveSheets(lesson);
  if (sheet?.kind !== 'line') throw new Error('the sample has a line');
  const places = new Set(
    sheet.bars.flatMap(({ notes }) =>
      notes.flatMap(({ fingered }) => (fingered === null ? [] : [`${fingered.string} ${fingered.fret}`])),
    ),
  );
  const necks = marksOf({ ...lesson, pieces: lesson.pieces.slice(0, 1) }).flatMap((mark) =>
    mark.kind === 'neck' ? [mark.request] : [],
  );
  expect(necks.length).toBe(1);
  expect(necks[0]?.frets).toEqual({ first: 1, last: 12 });
  expect(new Set(necks[0]?.notes.map(({ string, fret }) => `${string} ${fret}`))).toEqual(places);
});

describe('paper', () => {
  test('a margin to be punched clears the holes: 25 mm at the left (ISO 838: they reach 15 mm into the sheet)', () => {
    const [page] = layOut(lessonWith({ binding: true })).pages;
    const left = Math.min(...(page?.marks ?? []).map(({ x }) => x));
    expect(left).toBeGreaterThanOrEqual(points(25) - 0.01);
    expect(page?.width).toBeCloseTo(points(210), 2);
  });

  test('two pages a sheet stand side by side on paper that lies on its side', () => {
    const { pages } = layOut(lessonWith({ twoUp: true, blocks: ['music', 'practice', 'diary'] }));
    const [sheet] = pages;
    expect(sheet?.width).toBeCloseTo(points(297), 2);
    expect(sheet?.height).toBeCloseTo(points(210), 2);
    const numbers = words(pages.flatMap(({ marks }) => marks)).filter((text) => text.startsWith('Page '));
    const { length } = numbers;
    expect(length).toBeGreaterThan(1);
    expect(numbers).toEqual(Array.from({ length }, (_, index) => `Page ${index + 1} of ${length}`));
    expect(pages.length).toBe(Math.ceil(length / 2));
  });

  test.each([
    { print: 'normal', twoUp: true },
    { print: 'large', twoUp: false },
    { print: 'large', twoUp: true },
  ] as const)('the columns of a diary hold their heads, print $print, two a sheet $twoUp', (settings) => {
    const lesson = lessonWith({ ...settings, blocks: ['diary'] });
    const [page] = layOutForPrint({ ...lesson, pieces: [] }).pages;
    const marks = page?.marks ?? [];
    const edges = marks.flatMap((mark) => (mark.kind === 'rule' && mark.width === 0 ? [mark.x] : []));
    const half = (page?.width ?? 0) / (settings.twoUp ? 2 : 1);
    const heads = marks.flatMap((mark) =>
      mark.kind === 'text' && mark.x < half && edges.some((edge) => Math.abs(mark.x - edge - 4) < 0.1)
        ? [mark]
        : [],
    );
    expect(heads.length).toBeGreaterThanOrEqual(11);
    for (const head of heads) {
      const next = Math.min(...edges.filter((edge) => edge > head.x));
      expect(head.x + measureAsPrinted(head.text, head), head.text).toBeLessThan(next);
    }
  });

  test('a page that is the only one stands there twice', () => {
    const { pages } = layOut(lessonWith({ twoUp: true, blocks: ['notes'], paper: 'Letter' }));
    expect(pages.length).toBe(1);
    expect(pages[0]?.width).toBeCloseTo(11 * 72, 2);
    const titles = (pages[0]?.marks ?? []).filter(
      (mark) => mark.kind === 'text' && mark.text === 'Ferry queue, week 3',
    );
    expect(titles.length).toBe(2);
    const [left = 0, right = 0] = titles.map(({ x }) => x);
    expect(right - left).toBeCloseTo((11 * 72) / 2, 2);
  });
});
