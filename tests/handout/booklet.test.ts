import { describe, expect, test } from 'vitest';
import { deriveSheets, type HandoutSettings, type Lesson, sampleLesson } from '../../src/core/lesson';
import {
  type BookletPart,
  type BookletWishes,
  bookletPages,
  chapterPages,
} from '../../src/handout/layout/booklet';
import { type Mark, pageAddress, type TextMark } from '../../src/handout/layout/marks';
import { engraveInSteps as engrave } from '../../src/score/engrave';
import { finished } from '../../src/score/steps';
import { measureAsPrinted as measure } from './drawn';

const TITLES = ['Harbour', 'Last tram', 'Ferry queue'];

const lessonAt = (
  index: number,
  settings: Partial<HandoutSettings> = {},
  title = TITLES[index] ?? '',
): Lesson => {
  const lesson = { ...sampleLesson(index % 2, `lesson-${index}`), title };
  return { ...lesson, handout: { ...lesson.handout, ...settings } };
};

const partOf = (lesson: Lesson, index: number): BookletPart => ({
  place: `Week ${index + 1}`,
  brief: 'F major · level 2',
  lesson,
  sheets: deriveSheets(lesson),
});

const WISHES: BookletWishes = { title: 'Autumn term', student: '', sheets: false };

function booklet(lessons: readonly Lesson[], wishes: Partial<BookletWishes> = {}) {
  const all = { ...WISHES, ...wishes };
  const parts = lessons.map(partOf);
  const chapters = parts.map((part) => finished(chapterPages(parts, part, all, { measure, engrave }, null)));
  const pages = bookletPages(parts, chapters, null, all, measure);
  return pages.map(({ layout, index, bookmark }) => {
    const page = layout.pages[index];
    if (page === undefined) throw new Error('a page of the booklet is missing');
    return { bookmark, page, texts: textsOf(page.marks) };
  });
}

const textsOf = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.filter((mark): mark is TextMark & Mark => mark.kind === 'text');

const words = (texts: readonly TextMark[]): string => texts.map(({ text }) => text).join(' ');

/** The number that stands in the contents in the line of a title. */
function numberBeside(texts: readonly TextMark[], title: string): number {
  const line = texts.find(({ text }) => text === title);
  const number = texts.find(({ text, y }) => /^\d+$/.test(text) && Math.abs(y - (line?.y ?? 0)) < 0.01);
  return Number(number?.text);
}

const term = () => TITLES.map((_, index) => lessonAt(index));

describe('a booklet', () => {
  test.each([false, true])(
    'leads from its contents to the page where each lesson begins (sheets of their own: %s)',
    (sheets) => {
      const pages = booklet(term(), { sheets });
      const [contents] = pages;
      for (const [index, title] of TITLES.entries()) {
        const number = numberBeside(contents?.texts ?? [], title);
        expect(pages[number - 1]?.bookmark).toBe(`Week ${index + 1}: ${title}`);
        expect(words(pages[number - 1]?.texts ?? [])).toContain(title);
        if (sheets) expect(number % 2).toBe(1);
      }
      expect(pages.filter(({ bookmark }) => bookmark !== undefined).length).toBe(TITLES.length);
    },
  );

  test('goes to the student without the answers to its questions', () => {
    const asking = lessonAt(0, { blocks: ['facts', 'music', 'questions', 'answers'] });
    const texts = booklet([asking, lessonAt(1)]).map((page) => words(page.texts));
    expect(texts.some((text) => text.includes('Questions'))).toBe(true);
    expect(texts.some((text) => text.includes('Answers'))).toBe(false);
  });

  test('is clicked open at the page where a lesson begins', () => {
    const [contents] = booklet(term());
    const links = (contents?.page.marks ?? []).filter((mark) => mark.kind === 'link');
    expect(links.length).toBe(TITLES.length);
    for (const [index, title] of TITLES.entries()) {
      const line = contents?.texts.find(({ text }) => text === title);
      const link = links[index];
      expect(link?.address).toBe(pageAddress(numberBeside(contents?.texts ?? [], title)));
      expect(link?.tag?.alternative).toMatch(new RegExp(`^To page \\d+: Week ${index + 1}: ${title}$`));
      // The place to click is the line itself, from its week to its number.
      expect(line?.y).toBeGreaterThan(link?.y ?? Number.NaN);
      expect(line?.y).toBeLessThan((link?.y ?? 0) + (link?.height ?? 0));
      expect(link?.width).toBeGreaterThan(400);
    }
  });

  test('counts its pages in one run', () => {
    const pages = booklet(term());
    const numbers = pages.map(({ texts }) => words(texts).match(/Page \d+ of \d+/g));
    expect(numbers).toEqual(pages.map((_, index) => [`Page ${index + 1} of ${pages.length}`]));
  });

  test('warns once, on its first page, and not at all where no lesson does', () => {
    const warned = (lessons: readonly Lesson[]) =>
      booklet(lessons).flatMap(({ texts }, index) =>
        words(texts).includes('Hands and ears') ? [index] : [],
      );
    expect(warned(term())).toEqual([0]);
    const silent = term().map((lesson) => ({
      ...lesson,
      handout: { ...lesson.handout, blocks: ['music' as const] },
    }));
    expect(warned(silent)).toEqual([]);
  });

  test('says the teacher’s own line once, and names nobody unless it is asked to', () => {
    const lessons = term().map((lesson) => ({
      ...lesson,
      handout: { ...lesson.handout, header: 'Pier school', student: 'Adalind' },
    }));
    const text = booklet(lessons).map(({ texts }) => words(texts));
    expect(text.join(' ').match(/Pier school/g)?.length).toBe(1);
    expect(text.join(' ')).not.toContain('Adalind');
    const named = booklet(lessons, { student: 'Adalind' }).map(({ texts }) => words(texts));
    expect(named[0]).toContain('Adalind');
  });

  test('is printed on one paper, whatever each lesson is printed on', () => {
    const pages = booklet([lessonAt(0, { paper: 'Letter' }), lessonAt(1, { twoUp: true }), lessonAt(2)]);
    expect(new Set(pages.map(({ page }) => `${page.width} ${page.height}`)).size).toBe(1);
  });

  test('breaks long titles before their page numbers, and goes on with its contents on a second page', () => {
    const long =
      'A very long name of a lesson that tells all of what is in it, and of whom it was made for, at length';
    const lesson = lessonAt(0, { blocks: ['music'] }, long);
    const parts = Array.from({ length: 40 }, (_, index) => partOf(lesson, index));
    const opening = parts[0] ?? partOf(lesson, 0);
    const chapter = finished(chapterPages(parts, opening, WISHES, { measure, engrave }, null));
    const pages = bookletPages(
      parts,
      parts.map(() => chapter),
      null,
      WISHES,
      measure,
    );
    const first = pages.findIndex(({ bookmark }) => bookmark !== undefined);
    expect(first).toBeGreaterThan(1);
    for (const { layout, index } of pages.slice(0, first)) {
      const texts = textsOf(layout.pages[index]?.marks ?? []);
      const numbers = texts.filter(({ text, anchor }) => /^\d+$/.test(text) && anchor === 'end');
      for (const number of numbers) {
        const left = number.x - measure(number.text, number);
        const beside = texts.filter(({ y, text }) => y === number.y && text !== '.' && text !== number.text);
        for (const each of beside) expect(each.x + measure(each.text, each)).toBeLessThan(left);
      }
    }
  });
});
