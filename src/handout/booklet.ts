import { forNobody } from '../core/exchange';
import { loadScoreFonts } from '../score';
import { codeOf } from './code/lesson-code';
import { createMeasure, drawPage } from './draw';
import { engraveInTurns } from './engrave-in-turns';
import {
  type BookletPart,
  type BookletWishes,
  bookletPages,
  chapterPages,
  partTitle,
} from './layout/booklet';
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
    if (signal.aborted) return null;
    const coded =
      part.lesson.handout.code === true ? codeOf(part.lesson, address) : { code: null, remark: null };
    const chapter = await engraveInTurns((engrave) =>
      chapterPages(parts, part, wishes, { measure, engrave }, coded.code),
    );
    chapters.push(chapter);
    for (const remark of [
      ...remarksOn(part),
      ...(coded.remark === null ? [] : [coded.remark]),
      ...chapter.remarks,
    ])
      remarks.push(`“${partTitle(part)}”: ${remark}`);
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
