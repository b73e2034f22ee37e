import { remembered } from '../../core/base';
import type { Lesson, Paper, Sheet } from '../../core/lesson';
import type { Engravable, ScoreLayout, ScoreOptions } from '../../score';
import type { Logo } from '../blocks/head';
import type { LessonCode } from '../code/lesson-code';
import { fullSettings } from '../model/settings';
import { spreadOut } from './breaks';
import type { Tools } from './compose';
import { fitPages, footOf, roomOver } from './fit';
import type { PageLayout } from './marks';
import { sheetOf } from './paper';
import { numberedPage, placePage, roomOn } from './place';
import { sideBySide } from './side-by-side';

export interface HandoutLayout {
  readonly paper: Paper;
  readonly title: string;
  readonly pages: readonly PageLayout[];
  /** What the system marks refer to. */
  readonly scores: readonly ScoreLayout[];
  readonly remarks: readonly string[];
}

/**
 * Lays the handout out on paper. Pages break only between systems, lines of text and boxes, and no page is left
 * with a few lines as long as others can give it some of theirs.
 * @param sheets - one a piece of the lesson, in its order
 * @param logo - what the lesson's logo was read as
 * @param code - of the lesson's link, when it is wanted and fits
 * @param numbered - whether the pages say which they are of how many; those of a booklet are numbered with the others
 */
export function handoutPages(
  lesson: Lesson,
  sheets: readonly Sheet[],
  logo: Logo | null,
  tools: Tools,
  code: LessonCode | null = null,
  numbered = true,
): HandoutLayout {
  const settings = fullSettings(lesson.handout);
  const paper = sheetOf(settings.paper, settings);
  const room = roomOn(paper, settings);
  const copy = { lesson, sheets, settings, logo, code, width: paper.right - paper.left };
  const { pages, scores, remarks } = fitPages(copy, room, { ...tools, engrave: engraveOnce(tools.engrave) });
  const foot = footOf(copy, tools);
  const free = roomOver(foot, room);
  return {
    paper: settings.paper,
    title: lesson.title,
    pages: sideBySide(
      settings.twoUp,
      pages.map((rows, index) => {
        const isLast = index === pages.length - 1;
        const spread = isLast ? rows : spreadOut(rows, index === 0 ? free.first : free.later);
        const folio = { isFirst: index === 0, title: lesson.title, foot: index === 0 ? foot : null };
        const page = placePage(spread, folio, settings, paper, tools.measure);
        return numbered ? numberedPage(page, index + 1, pages.length, settings, paper) : page;
      }),
    ),
    scores,
    remarks,
  };
}

/** The same text for the same staves of one handout. */
export function engravedAs(sheet: Engravable, options: ScoreOptions): string {
  if (sheet.kind === 'keyboard') return JSON.stringify([sheet.line.id, sheet.kind, options]);
  if (sheet.kind === 'part') return JSON.stringify([sheet.line.id, sheet.part, options]);
  const bars = sheet.kind === 'line' ? sheet.bars.map(({ written }) => written.number).join() : sheet.bars;
  const excerpt = sheet.kind === 'line' && sheet.excerpt === true;
  return JSON.stringify([sheet.id, bars, excerpt, options]);
}

/** Several spacings are tried, most of them with the same staves. */
function engraveOnce(engrave: Tools['engrave']): Tools['engrave'] {
  const done = new Map<string, ScoreLayout>();
  return (sheet, options) => remembered(done, engravedAs(sheet, options), () => engrave(sheet, options));
}
