import { describe, expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { type Lesson, newLesson, setChartText, setLevel, setNotes } from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import { applyPreset, HANDOUT_PRESETS } from '../../src/handout';
import { breakPages, rowsHeight } from '../../src/handout/layout/breaks';
import type { Mark } from '../../src/handout/layout/marks';
import { headedRows, type Row } from '../../src/handout/layout/rows';
import { withLine } from '../support/pinned';
import { layOutForPrint } from './drawn';
import { lessonWith } from './lessons';

const FIRST_LESSON = HANDOUT_PRESETS.find(({ id }) => id === 'first lesson');

/** A composed line of plain chords, printed as for a first lesson. */
function firstLesson(bars: number, level: Level = 1): Lesson {
  const fresh = newLesson('first', 'First lesson');
  const id = fresh.pieces[0]?.id ?? '';
  const chart = Array.from({ length: bars / 4 }, () => '| C7 | F7 | G7 | C7 |').join('\n');
  const { lesson } = composePiece(setChartText(setLevel(fresh, id, level), id, chart), id);
  if (FIRST_LESSON === undefined) throw new Error('the preset is gone');
  return { ...lesson, handout: applyPreset(lesson.handout, FIRST_LESSON) };
}

const words = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
const kinds = (marks: readonly Mark[]) => marks.map(({ kind }) => kind);

describe('a first lesson', () => {
  test.each([8, 12])('of %i bars takes two pages at most, its music first', (bars) => {
    const { pages } = layOutForPrint(firstLesson(bars));
    expect(pages.length).toBeLessThanOrEqual(2);
    const first = kinds(pages[0]?.marks ?? []);
    expect(first).toContain('system');
    const neck = first.indexOf('neck');
    if (neck !== -1) expect(first.lastIndexOf('system')).toBeLessThan(neck);
  });

  test('shows the shapes of what its line plays: at level 1 root, fifth and octave', () => {
    const { pages } = layOutForPrint(firstLesson(8));
    const shown = pages.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === 'neck' ? mark.request.notes.map(({ degree }) => degree) : [])),
    );
    expect([...new Set(shown)].sort()).toEqual(['5', 'R']);
  });
});

describe('what only explains the music', () => {
  const SONG = '| C | Am | F | G |\n| C7 | F7 | G7 | C7 |\n| Dm | G | Em | Am |';
  const BARS = [
    'C2/1 D2/.5 E2/.5 G2/1 E2/1',
    'A1/1 E2/1 C2/1 E2/1',
    'F2/1 E2/.5 D2/.5 C2/1 A1/1',
    'G1/1 D2/.5 E2/.5 r/1 G2/.5 D2/.5',
    'C2/1 B♭1/.5 C2/.5 E2/1 G2/1',
    'F2/1 E♭2/1 C2/1 F2/1',
    'G2/1 F2/1 D2/1 B1/1',
    'C2/1 B♭1/1 G1/1 C2/1',
    'D2/1 E2/.5 F2/.5 A2/1 F2/1',
    'G2/1 F2/1 E2/1 D2/1',
    'E2/1 D2/.5 C2/.5 B1/1 G1/1',
    'A1/1 B1/1 C2/1 A1/.5 B1/.5',
  ];
  /** A line of level 4 that is written out, so that there is as much to tell of it whatever is composed. */
  const written = (
    chart: string,
    bars: readonly string[],
    occasion: string,
    paper: Lesson['handout']['paper'],
  ) => {
    const lesson = newLesson('lesson', 'Harbour steps');
    const id = lesson.pieces[0]?.id ?? '';
    const line = withLine(setChartText(setLevel(lesson, id, 4), id, chart), bars);
    const preset = HANDOUT_PRESETS.find((each) => each.id === occasion);
    if (preset === undefined) throw new Error('the preset is gone');
    const handout = { ...applyPreset(line.handout, preset), paper };
    return layOutForPrint(
      setNotes({ ...line, handout }, 'Slowly, and with a click on two and four. '.repeat(3)),
    );
  };

  test('is left out, and said to be, rather than that a third page is begun: the shapes first', () => {
    const { pages, remarks } = written(SONG, BARS, 'first lesson', 'Letter');
    expect(pages.length).toBe(2);
    const marks = pages.flatMap((page) => page.marks);
    expect(words(marks)).toContain('What to practise');
    expect(kinds(marks)).not.toContain('neck');
    expect(remarks).toEqual(['4 shapes to learn are left out, which saves a page.']);
  });

  test('is left out of homework where one page is wished for and little is too much', () => {
    const chart = `(1) | G |\n|: C | Am | F |1. G :|2. C |\nBridge:\n${SONG.split('\n').slice(1).join('\n')}`;
    const before = [
      'G1/.5 B1/.5',
      'C2/1 G1/1 A1/1 B1/1',
      'A1/1 C2/1 D2/1 E2/1',
      'F2/1 E2/.5 D2/.5 r/1 C2/.5 A1/.5',
      'G1/1 A1/.5 B1/.5 D2/1 B1/1',
      'C2/1 G1/1 A1/1 B1/1',
    ];
    const { pages, remarks } = written(chart, [...before, ...BARS.slice(4)], 'homework', 'Letter');
    expect(pages.length).toBe(1);
    expect(words(pages[0]?.marks ?? [])).toContain('Practice');
    expect(remarks).toEqual(['What to practise is left out, which saves a page.']);
  });
});

describe('the cautions', () => {
  const linesOf = (lesson: Lesson) => {
    const { pages } = layOutForPrint(lesson);
    const [first] = pages;
    const texts = (first?.marks ?? []).flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    const heading = texts.find(({ text }) => text.startsWith('Hands and ears'));
    const number = texts.find(({ text }) => text.startsWith('Page 1'));
    if (heading === undefined || number === undefined) throw new Error('there are no cautions');
    const lines = texts.filter(({ y, text }) => y >= heading.y - 0.1 && !text.startsWith('Page 1'));
    return { lines: new Set(lines.map(({ y }) => Math.round(y))).size, below: number.y - heading.y };
  };

  test('stand in two lines at the foot of the first page', () => {
    const { lines, below } = linesOf(lessonWith({}));
    expect(lines).toBe(2);
    expect(below).toBeLessThan(45);
  });

  test('never have a page to themselves, however long the music is', () => {
    const plain = lessonWith({});
    for (const rows of [4, 5, 6, 11]) {
      const chart = Array.from({ length: rows }, () => '| F | Dm | Gm | C7 |').join('\n');
      const { pages } = layOutForPrint(setChartText(plain, plain.pieces[0]?.id ?? '', chart));
      for (const { marks } of pages) expect(kinds(marks), `${rows} rows`).toContain('system');
    }
  });

  test('stand where the teacher puts them, when something follows', () => {
    const { pages } = layOutForPrint(lessonWith({ blocks: ['cautions', 'facts', 'music'] }));
    const said = words(pages[0]?.marks ?? []);
    expect(said.indexOf('Hands and ears:')).toBeLessThan(said.indexOf('Ferry queue'));
  });
});

describe('a part that goes on', () => {
  const style = { size: 10, bold: true };
  const rows: readonly Row[] = Array.from({ length: 6 }, () => ({
    height: 100,
    gap: 5,
    keepWithNext: false,
    marks: [],
  }));

  test('has its heading again on the next page, which then still has room for it', () => {
    const room = { first: 320, later: 300 };
    const pages = breakPages(headedRows('Shapes to learn', style, 10, rows), room);
    expect(pages.length).toBe(3);
    for (const page of pages.slice(1)) {
      expect(words(page[0]?.marks ?? [])).toEqual(['Shapes to learn, continued']);
      expect(rowsHeight(page)).toBeLessThanOrEqual(room.later);
    }
  });

  test('does not repeat it where the page begins with the heading itself', () => {
    const before: Row = { height: 300, gap: 0, keepWithNext: false, marks: [] };
    const [, second] = breakPages([before, ...headedRows('Notes', style, 10, rows.slice(0, 2))], {
      first: 310,
      later: 300,
    });
    expect(words(second?.[0]?.marks ?? [])).toEqual(['Notes']);
  });

  test('a lesson’s long notes say on each page whose they are', () => {
    const { pages } = layOutForPrint(
      lessonWith({}, { notes: 'Slowly, and with a click on two. '.repeat(250) }),
    );
    expect(pages.length).toBeGreaterThan(1);
    expect(words(pages[1]?.marks ?? [])).toContain('Notes, continued');
  });
});
