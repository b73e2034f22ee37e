import { describe, expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import type { FeelId } from '../../src/core/feel';
import {
  addPiece,
  copyPiece,
  type Lesson,
  newLesson,
  type Paper,
  setChartText,
  setFeel,
  setLevel,
  setNotes,
} from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import { applyPreset, HANDOUT_PRESETS } from '../../src/handout';
import type { Mark, PageLayout } from '../../src/handout/layout/marks';
import type { HandoutLayout } from '../../src/handout/layout/pages';
import { points } from '../../src/handout/layout/paper';
import { layOutForPrint } from './drawn';

/*
 * What a teacher prints, by its length. How full a page is to be is common practice without a source: a last page that
 * holds less than a third is wasted, and no page before it is left with a third of itself white.
 */
const LAST_PAGE = 1 / 3;
const OTHER_PAGES = 0.65;

const MARGIN = points(15);

const isRead = ({ tag }: Mark): boolean => tag?.role !== 'Artifact';
const isHeading = ({ tag }: Mark): boolean => tag?.role === 'H2' || tag?.role === 'H3';

const bottomOf = (mark: Mark, layout: HandoutLayout): number => {
  if (mark.kind === 'text') return mark.y;
  if (mark.kind === 'system')
    return mark.y + (layout.scores[mark.score]?.systems[mark.system]?.height ?? Number.NaN);
  return mark.y + mark.height;
};

/** The marks over the cautions at the foot of the page, and where those begin. */
function bodyOf({ marks, height, width }: PageLayout): {
  readonly body: readonly Mark[];
  readonly end: number;
} {
  const foot = marks.find(
    (mark) => mark.kind === 'rule' && mark.width > width - 3 * MARGIN && mark.y > height * 0.75,
  );
  const end = foot?.y ?? height - MARGIN;
  return { body: marks.filter((mark) => isRead(mark) && mark.y < end), end };
}

/** Which part of the room between top margin and foot is used. */
function fillOf(page: PageLayout, layout: HandoutLayout): number {
  const { body, end } = bodyOf(page);
  return (Math.max(...body.map((mark) => bottomOf(mark, layout))) - MARGIN) / (end - MARGIN);
}

/** The last heading of a page has something under it. */
function hasHeadingAlone(page: PageLayout, layout: HandoutLayout): boolean {
  const { body } = bodyOf(page);
  const last = body.filter(isHeading).at(-1);
  return last !== undefined && !body.some((mark) => bottomOf(mark, layout) > last.y + 2);
}

interface Written {
  readonly bars: number;
  readonly level: Level;
  readonly paper: Paper;
  readonly chart: string;
  readonly feel?: FeelId;
  /** Beside the first: another line, or blank bars. */
  readonly more?: 'line' | 'blank';
  /** Of the usual sheet, of homework, of a first lesson in large print, of a test, and of a rhythm to clap. */
  readonly pages: readonly [number, number, number, number, number];
}

const SONG = '| C | Am | F | G |\n| C7 | F7 | G7 | C7 |\n| Dm | G | Em | Am |\n| C | F | G | C |';

const PICKED_UP = '(1) | G |\n|: C | Am | F |1. G :|2. C |\nBridge:\n';

const TABLE: readonly Written[] = [
  { bars: 4, level: 0, paper: 'A4', chart: '| C | F | G | C |', pages: [1, 1, 1, 1, 1] },
  { bars: 4, level: 2, paper: 'Letter', chart: '| C | F | G | C |', more: 'blank', pages: [1, 1, 2, 1, 1] },
  {
    bars: 6,
    level: 5,
    paper: 'Letter',
    chart: '(1) | G |\n| C | Am | F |\n| G | C | C |',
    pages: [1, 1, 2, 1, 1],
  },
  {
    bars: 8,
    level: 1,
    paper: 'Letter',
    chart: '(1) | G |\n| C | Am | F | G |\n| C | F | G | C |',
    pages: [1, 1, 2, 1, 1],
  },
  {
    bars: 8,
    level: 4,
    paper: 'A4',
    chart: '| C | Am | F | G |\n| C7 | F7 | G7 | C7 |',
    more: 'line',
    pages: [2, 2, 4, 1, 1],
  },
  {
    bars: 10,
    level: 0,
    paper: 'A4',
    chart: `${PICKED_UP}| C7 | F7 | G7 | C7 | C |`,
    pages: [1, 1, 2, 1, 1],
  },
  { bars: 12, level: 4, paper: 'A4', chart: SONG.split('\n').slice(0, 3).join('\n'), pages: [1, 1, 2, 1, 1] },
  {
    bars: 12,
    level: 4,
    paper: 'Letter',
    chart: SONG.split('\n').slice(0, 3).join('\n'),
    pages: [1, 1, 2, 1, 1],
  },
  {
    bars: 14,
    level: 4,
    paper: 'Letter',
    chart: `${PICKED_UP}| C7 | F7 | G7 | C7 |\n| Dm | G | Em | Am | C |`,
    pages: [1, 1, 3, 1, 1],
  },
  {
    bars: 14,
    level: 2,
    paper: 'A4',
    chart: `${PICKED_UP}| C7 | F7 | G7 | C7 |\n| Dm | G | Em | Am | C |`,
    pages: [1, 1, 3, 1, 1],
  },
  {
    bars: 14,
    level: 3,
    paper: 'Letter',
    chart: 'Verse:\n| Em | G | C | D |\n| Em | G | C D | Em |\nChorus:\n| C | D | G | Em |\n| C | D |',
    pages: [1, 1, 2, 1, 1],
  },
  {
    bars: 14,
    level: 5,
    paper: 'A4',
    chart: `${SONG.split('\n').slice(0, 3).join('\n')}\n| F | G |`,
    pages: [1, 1, 3, 1, 1],
  },
  {
    bars: 16,
    level: 1,
    paper: 'A4',
    feel: 'rocksteady',
    chart:
      '|: Dm7 | G7 | Cmaj7 | Am7 |\n| Dm7 | G7 | Cmaj7 | A7 :|\n| Gm7 | C7 | Fmaj7 | Fmaj7 |\n| Dm7b5 | G7 | Cmaj7 | Am7 |',
    pages: [1, 2, 3, 1, 1],
  },
  {
    bars: 16,
    level: 3,
    paper: 'Letter',
    chart: `[A]\n${SONG.replace('\n| Dm', '\n[B]\n| Dm')}`,
    pages: [2, 2, 3, 1, 1],
  },
  {
    bars: 24,
    level: 2,
    paper: 'Letter',
    chart: `${SONG}\n${SONG.split('\n').slice(0, 2).join('\n')}`,
    pages: [2, 2, 4, 1, 1],
  },
  { bars: 32, level: 5, paper: 'A4', chart: `[A]\n${SONG}\n[B]\n${SONG}`, pages: [2, 2, 6, 2, 2] },
];

const NOTES =
  'Slowly, and with a click on two and four. Listen to the organ before you begin; sing the roots. Bars three and four are the hard ones: loop them.';

function written({ bars, level, paper, chart, feel, more }: Written): Lesson {
  const untouched = newLesson('lesson', `A song of ${bars} bars`);
  const id = untouched.pieces[0]?.id ?? '';
  const fresh = feel === undefined ? untouched : setFeel(untouched, id, feel);
  const { lesson } = composePiece(setChartText(setLevel(fresh, id, level), id, chart), id);
  const whole =
    more === undefined ? lesson : more === 'line' ? copyPiece(lesson, id) : addPiece(lesson, 'blank', id);
  return setNotes({ ...whole, handout: { ...whole.handout, paper } }, NOTES);
}

const OCCASIONS = ['as usual', 'homework', 'first lesson', 'test', 'clapping'] as const;

function printed(lesson: Lesson, occasion: (typeof OCCASIONS)[number]): HandoutLayout {
  const preset = HANDOUT_PRESETS.find(({ id }) => id === occasion);
  const handout = preset === undefined ? lesson.handout : applyPreset(lesson.handout, preset);
  return layOutForPrint({ ...lesson, handout });
}

describe('a lesson on paper', () => {
  test.each(TABLE)('of $bars bars at level $level on $paper fills its pages', (row) => {
    const lesson = written(row);
    for (const [index, occasion] of OCCASIONS.entries()) {
      const layout = printed(lesson, occasion);
      const { pages } = layout;
      const fills = pages.map((page) => fillOf(page, layout));
      const told = `${occasion}: ${fills.map((fill) => fill.toFixed(2)).join(' ')}`;
      expect(pages.length, told).toBeLessThanOrEqual(row.pages[index] ?? 0);
      expect(pages[0]?.marks.some(({ kind }) => kind === 'system')).toBe(true);
      for (const fill of fills.slice(0, -1)) expect(fill, told).toBeGreaterThan(OTHER_PAGES);
      if (pages.length > 1) expect(fills.at(-1), told).toBeGreaterThan(LAST_PAGE);
      for (const page of pages) expect(hasHeadingAlone(page, layout), told).toBe(false);
    }
  });
});
