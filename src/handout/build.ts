import type { Lesson, Sheet } from '../core/lesson';
import { inTurns, layoutInSteps, loadScoreFonts } from '../score';
import { codeOf } from './code/lesson-code';
import { createMeasure, drawPage } from './draw';
import { loadFaces } from './fonts/load';
import { handoutPages } from './layout/pages';
import { logoOf } from './logo';
import { pictureText } from './pdf/fallback';
import { loadWriter, writePdf } from './pdf/write';
import type { Handout, HandoutPage, HandoutPdf } from './types';

/** The words on the page are English; the teacher's own may be anything. */
const LANGUAGE = 'en';
const LOGO_LOST =
  'The lesson’s logo could not be read, or is a picture of very many pixels, and is left out. Choose it again.';

const NO_CODE = { code: null, remark: null };

/** Lets the page answer before the next piece of work. */
const nextTurn = () => new Promise((resolve) => setTimeout(resolve));

/**
 * Lays out and draws the printed sheet of a lesson, in turns with whatever else the page has to do, so that nobody who
 * types meanwhile waits for it.
 * @param sheets - one a piece of the lesson, in its order (see `deriveSheets`)
 * @param address - of the practice page, for the QR code of the lesson's link; no code is printed without it
 * @throws the network's error when the score's fonts cannot be fetched
 */
export async function buildHandout(
  lesson: Lesson,
  sheets: readonly Sheet[],
  address?: string,
): Promise<Handout> {
  const handout = await buildWhileWanted(lesson, sheets, address, () => true);
  if (handout === null) throw new Error('A handout that is always wanted was not built.');
  return handout;
}

/**
 * The same as long as it is wanted: what is overtaken by another change is built no further.
 * @param isWanted - asked before each turn
 * @returns null when it was wanted no longer
 */
export async function buildWhileWanted(
  lesson: Lesson,
  sheets: readonly Sheet[],
  address: string | undefined,
  isWanted: () => boolean,
): Promise<Handout | null> {
  const { logo: source, code: wanted = false } = lesson.handout;
  const [logo] = await Promise.all([source === undefined ? null : logoOf(source), loadScoreFonts()]);
  const measure = createMeasure();
  const { code, remark } = wanted && address !== undefined ? codeOf(lesson, address) : NO_CODE;
  const tools = { measure, engrave: layoutInSteps };
  const layout = await inTurns(handoutPages(lesson, sheets, logo, tools, code), isWanted);
  if (layout === null) return null;
  const pages: HandoutPage[] = [];
  for (const index of layout.pages.keys()) {
    await nextTurn();
    if (!isWanted()) return null;
    const page = drawPage(layout, index);
    const answers = index >= layout.pages.length - layout.answerPages;
    pages.push(answers ? { ...page, answers } : page);
  }
  const lost = source !== undefined && logo === null ? [LOGO_LOST] : [];
  return {
    paper: layout.paper,
    title: layout.title,
    author: (lesson.handout.header ?? '').trim(),
    language: LANGUAGE,
    pages,
    remarks: [...lost, ...(remark === null ? [] : [remark]), ...layout.remarks],
  };
}

/** A handout in two: what goes to the student, and its answers, which are kept back; null where it has none. */
export function withAnswersApart(handout: Handout): {
  readonly sheet: Handout;
  readonly key: Handout | null;
} {
  const key = handout.pages.filter(({ answers }) => answers === true);
  const sheet = { ...handout, pages: handout.pages.filter((page) => !key.includes(page)) };
  return {
    sheet,
    key:
      key.length === 0 ? null : { ...handout, title: `Answers: ${handout.title}`, pages: key, remarks: [] },
  };
}

/**
 * Fetches what a PDF is written with, so that the first one is made without waiting. What does not arrive is asked
 * for again when it is needed, and only then missed.
 */
export async function preparePdf(): Promise<void> {
  await Promise.allSettled([loadFaces(), loadWriter()]);
}

/**
 * Writes a handout as a PDF file: vector, its fonts embedded as subsets, its text selectable.
 * @param onProgress - called after every page
 * @throws Error when a font file cannot be fetched
 */
export async function handoutPdf(
  handout: Handout,
  onProgress?: (done: number, all: number) => void,
): Promise<HandoutPdf> {
  return writePdf(handout.pages, handout, await loadFaces(), pictureText, onProgress);
}
