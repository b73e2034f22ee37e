import type { Lesson, Paper, Sheet } from '../../core/lesson';
import type { Engravable, ScoreLayout, ScoreOptions, Steps } from '../../score';
import type { Logo } from '../blocks/head';
import type { LessonCode } from '../code/lesson-code';
import { answerSettings, askedRemarks, studentSettings } from '../model/asked';
import { type FullSettings, fullSettings } from '../model/settings';
import { movedApart, type Room, spreadOut } from './breaks';
import type { Copy, Tools } from './compose';
import { type FittedPages, fitPages, footOf, roomOver } from './fit';
import type { PageLayout } from './marks';
import { sheetOf } from './paper';
import { numberedPage, placePage, roomOn } from './place';
import type { Row } from './rows';
import { sideBySide } from './side-by-side';

export interface HandoutLayout {
  readonly paper: Paper;
  readonly title: string;
  readonly pages: readonly PageLayout[];
  /** How many pages at the end hold the answers to questions; none of the others has any. */
  readonly answerPages: number;
  /** What the system marks refer to. */
  readonly scores: readonly ScoreLayout[];
  readonly remarks: readonly string[];
}

/**
 * Lays the handout out on paper. Pages break only between systems, lines of text and boxes, and no page is left
 * with a few lines as long as others can give it some of theirs. In steps, so that a long piece holds nobody up.
 * @param sheets - one a piece of the lesson, in its order
 * @param logo - what the lesson's logo was read as
 * @param code - of the lesson's link, when it is wanted and fits
 * @param numbered - whether the pages say which they are of how many; those of a booklet are numbered with the others
 */
export function* handoutPages(
  lesson: Lesson,
  sheets: readonly Sheet[],
  logo: Logo | null,
  tools: Tools,
  code: LessonCode | null = null,
  numbered = true,
): Steps<HandoutLayout> {
  const settings = fullSettings(lesson.handout);
  const paper = sheetOf(settings.paper, settings);
  const room = roomOn(paper, settings);
  const width = paper.right - paper.left;
  const copy = {
    lesson,
    title: lesson.title,
    sheets,
    settings: studentSettings(settings),
    logo,
    code,
    width,
  };
  const once = { ...tools, engrave: engraveOnce(tools.engrave) };
  const { pages, scores, remarks } = yield* fitPages(copy, room, once);
  const key = yield* answerPages(copy, settings, room, once);
  const foot = footOf(copy, tools);
  const free = roomOver(foot, room);
  const placed = (
    rows: readonly Row[],
    [number, count]: readonly [number, number],
    folio: Parameters<typeof placePage>[1],
  ) => {
    const page = placePage(rows, folio, settings, paper, tools.measure);
    return numbered ? numberedPage(page, number, count, settings, paper) : page;
  };
  // Each is numbered by itself: what is kept back is not missed on the other.
  const answers = sideBySide(
    settings.twoUp,
    key.pages.map((rows, index) => {
      const folio = { isFirst: index === 0, title: key.title, foot: null };
      return placed(withScoresFrom(scores.length, rows), [index + 1, key.pages.length], folio);
    }),
  );
  return {
    paper: settings.paper,
    title: lesson.title,
    pages: [
      ...sideBySide(
        settings.twoUp,
        pages.map((rows, index) => {
          const isLast = index === pages.length - 1;
          const height = index === 0 ? free.first : free.later;
          const spread = isLast ? movedApart(rows, height) : spreadOut(rows, height);
          const folio = { isFirst: index === 0, title: lesson.title, foot: index === 0 ? foot : null };
          return placed(spread, [index + 1, pages.length], folio);
        }),
      ),
      ...answers,
    ],
    answerPages: answers.length,
    scores: [...scores, ...key.scores],
    remarks: [...askedRemarks(settings), ...remarks],
  };
}

interface Answers extends Pick<FittedPages, 'pages' | 'scores'> {
  readonly title: string;
}

/** The answers never share a page with what they answer, so that they can be kept back. */
function* answerPages(copy: Copy, settings: FullSettings, room: Room, tools: Tools): Steps<Answers> {
  const title = `Answers: ${copy.title}`;
  const own = answerSettings(settings);
  if (own === null) return { pages: [], scores: [], title };
  const sheets = copy.sheets.filter(({ kind }) => kind === 'line');
  const key = { ...copy, title, sheets, settings: own, logo: null, code: null };
  return { ...(yield* fitPages(key, room, tools)), title };
}

/** Rows whose systems are of scores that stand behind others. */
const withScoresFrom = (first: number, rows: readonly Row[]): readonly Row[] =>
  rows.map((row) => ({
    ...row,
    marks: row.marks.map((mark) => (mark.kind === 'system' ? { ...mark, score: first + mark.score } : mark)),
  }));

/** The same text for the same staves of one handout. */
export function engravedAs(sheet: Engravable, options: ScoreOptions): string {
  if (sheet.kind === 'keyboard') return JSON.stringify([sheet.line.id, sheet.kind, options]);
  if (sheet.kind === 'part') return JSON.stringify([sheet.line.id, sheet.part, options]);
  const bars = sheet.kind === 'line' ? sheet.bars.map(({ written }) => written.number).join() : sheet.bars;
  const [excerpt, toWrite] = sheet.kind === 'line' ? [sheet.excerpt === true, sheet.toWrite] : [false];
  return JSON.stringify([sheet.id, bars, excerpt, toWrite, options]);
}

/** Several spacings are tried, most of them with the same staves. */
function engraveOnce(engrave: Tools['engrave']): Tools['engrave'] {
  const done = new Map<string, ScoreLayout>();
  return function* (sheet, options) {
    const key = engravedAs(sheet, options);
    const layout = done.get(key) ?? (yield* engrave(sheet, options));
    done.set(key, layout);
    return layout;
  };
}
