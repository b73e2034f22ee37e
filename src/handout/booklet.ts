import { forNobody } from '../core/exchange';
import { inTurns, layoutInSteps, loadScoreFonts } from '../score';
import { codeOf } from './code/lesson-code';
import { createMeasure, drawPage } from './draw';
import {
  type BookletPart,
  type BookletWishes,
  bookletPages,
  chapterPages,
  partTitle,
} from './layout/booklet';
import type { TextMeasure } from './layout/marks';
import type { HandoutLayout } from './layout/pages';
import { logoOf } from './logo';
import { fullSettings } from './model/settings';
import type { Handout, HandoutPage } from './types';

const LOGO_LOST = 'The logo could not be read and is left out.';

const ANSWERS_KEPT = 'The answers to its questions are kept out of the booklet; its own handout has them.';

const remarksOn = ({ lesson }: BookletPart): readonly string[] =>
  fullSettings(lesson.handout).blocks.includes('answers') ? [ANSWERS_KEPT] : [];

interface BookletOptions {
  /** Of the practice page, for the QR codes of lessons that print one. */
  readonly address: string;
  readonly signal: AbortSignal;
  /** Told how much of the booklet is laid out, from 0 to 1. */
  readonly onShare: (share: number) => void;
}

/** The pages of one lesson and what is to be said of them; null where it was called off. */
async function chapterInTurns(
  parts: readonly BookletPart[],
  part: BookletPart,
  wishes: BookletWishes,
  measure: TextMeasure,
  { address, signal }: Pick<BookletOptions, 'address' | 'signal'>,
): Promise<{ readonly layout: HandoutLayout; readonly remarks: readonly string[] } | null> {
  const isCoded = part.lesson.handout.code === true;
  const { code, remark } = isCoded ? codeOf(part.lesson, address) : { code: null, remark: null };
  const tools = { measure, engrave: layoutInSteps };
  const layout = await inTurns(chapterPages(parts, part, wishes, tools, code), () => !signal.aborted);
  return layout === null
    ? null
    : { layout, remarks: [...remarksOn(part), ...(remark === null ? [] : [remark]), ...layout.remarks] };
}

/**
 * Lays out and draws the lessons of a term as one booklet: a page of contents, then lesson after lesson in one run of
 * page numbers. What is alike for all of them, the header, the logo and the cautions, stands on the first page.
 * @returns null where it was called off
 * @throws the network's error when the score's fonts cannot be fetched
 */
export async function buildBooklet(
  asked: readonly BookletPart[],
  wishes: BookletWishes,
  { address, signal, onShare }: BookletOptions,
): Promise<Handout | null> {
  const parts = asked.map((part) => ({ ...part, lesson: forNobody(part.lesson) }));
  const source = parts.find(({ lesson }) => lesson.handout.logo !== undefined)?.lesson.handout.logo;
  const [logo] = await Promise.all([source === undefined ? null : logoOf(source), loadScoreFonts()]);
  const measure = createMeasure();
  const chapters: HandoutLayout[] = [];
  const remarks: string[] = source !== undefined && logo === null ? [LOGO_LOST] : [];
  for (const part of parts) {
    const chapter = await chapterInTurns(parts, part, wishes, measure, { address, signal });
    if (chapter === null) return null;
    chapters.push(chapter.layout);
    remarks.push(...chapter.remarks.map((remark) => `“${partTitle(part)}”: ${remark}`));
    onShare(chapters.length / parts.length);
    await new Promise((resolve) => setTimeout(resolve));
  }
  const planned = bookletPages(parts, chapters, logo, wishes, measure);
  const pages: HandoutPage[] = [];
  for (const [index, { layout, index: place, bookmark }] of planned.entries()) {
    if (signal.aborted) return null;
    const page = drawPage(layout, place);
    page.svg.setAttribute('aria-label', `Page ${index + 1} of ${planned.length}: ${layout.title}`);
    pages.push({ ...page, number: index + 1, ...(bookmark === undefined ? {} : { bookmark }) });
    await new Promise((resolve) => setTimeout(resolve));
  }
  const [first] = chapters;
  return {
    paper: first?.paper ?? 'A4',
    title: wishes.title,
    author: parts.map(({ lesson }) => (lesson.handout.header ?? '').trim()).find((each) => each !== '') ?? '',
    language: 'en',
    pages,
    remarks,
  };
}
