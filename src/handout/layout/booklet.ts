import type { Lesson, Sheet } from '../../core/lesson';
import type { Steps } from '../../score';
import { atFoot, cautionFoot } from '../blocks/cautions';
import { headRow, type Logo } from '../blocks/head';
import type { LessonCode } from '../code/lesson-code';
import { type FullSettings, fullSettings } from '../model/settings';
import { breakPages } from './breaks';
import type { Tools } from './compose';
import { roomOver } from './fit';
import { pageAddress, type Tag, type TextMeasure, tagged } from './marks';
import { type HandoutLayout, handoutPages } from './pages';
import { sheetOf } from './paper';
import { numberedPage, placePage, roomOn } from './place';
import { headedRows, joinRows, type Row, textRow, wrap } from './rows';
import { sizesFor } from './sizes';

/** A lesson of a booklet. */
export interface BookletPart {
  /** Its place in the term, such as *Week 3*; '' for none. */
  readonly place: string;
  /** What it is, in a few words under its title in the contents; '' for none. */
  readonly brief: string;
  readonly lesson: Lesson;
  /** One a piece of the lesson, in its order. */
  readonly sheets: readonly Sheet[];
}

/** What a booklet has besides its lessons. */
export interface BookletWishes {
  readonly title: string;
  /** The student or class on the first page; '' for nobody. */
  readonly student: string;
  /** For paper that is printed on both sides: each lesson begins on a sheet of its own. */
  readonly sheets: boolean;
}

/** A page of a booklet: one of a layout, with its number in the one run of all pages. */
export interface BookletPage {
  readonly layout: HandoutLayout;
  readonly index: number;
  /** What leads to it; none where it goes on with the page before. */
  readonly bookmark?: string;
}

const NO_TITLE = 'Without a title';

/** A lesson's title as it stands in the contents. */
export const partTitle = ({ lesson }: Pick<BookletPart, 'lesson'>): string => lesson.title.trim() || NO_TITLE;

/** How the whole booklet is printed: the first lesson's paper, print and margins, its header and what is warned of. */
function bookletSettings(parts: readonly BookletPart[], { student }: BookletWishes): FullSettings {
  const all = parts.map(({ lesson }) => fullSettings(lesson.handout));
  const first = all[0] ?? fullSettings({ paper: 'A4', degrees: true, fingers: true });
  const header = all.find((each) => each.header.trim() !== '')?.header ?? '';
  const warns = all.some(({ blocks }) => blocks.includes('cautions'));
  return { ...first, header, student, twoUp: false, blocks: warns ? ['cautions'] : [] };
}

/** A lesson as it stands among others: without what the booklet says once for all of them, and without answers. */
function asChapter({ lesson, place }: BookletPart, { paper, print, binding }: FullSettings): Lesson {
  const { logo: _, ...own } = lesson.handout;
  const blocks = fullSettings(own).blocks.filter((block) => block !== 'cautions' && block !== 'answers');
  return {
    ...lesson,
    title: partTitle({ lesson }),
    handout: { ...own, paper, print, binding, blocks, header: place, student: '', twoUp: false },
  };
}

/** The pages of one lesson of a booklet, still without their numbers. */
export const chapterPages = (
  parts: readonly BookletPart[],
  part: BookletPart,
  wishes: BookletWishes,
  tools: Tools,
  code: LessonCode | null,
): Steps<HandoutLayout> =>
  handoutPages(asChapter(part, bookletSettings(parts, wishes)), part.sheets, null, tools, code, false);

/**
 * Puts the lessons of a booklet behind its page of contents, in one run of page numbers.
 * @param chapters - the pages of each part, as `chapterPages` lays them out
 * @param logo - of the booklet's first page
 */
export function bookletPages(
  parts: readonly BookletPart[],
  chapters: readonly HandoutLayout[],
  logo: Logo | null,
  wishes: BookletWishes,
  measure: TextMeasure,
): readonly BookletPage[] {
  const settings = bookletSettings(parts, wishes);
  const even = (pages: number): number => (wishes.sheets ? pages + (pages % 2) : pages);
  // How many pages the contents take does not depend on the numbers in them.
  const ahead = even(
    contentsPages(
      parts,
      parts.map(() => 0),
      logo,
      wishes,
      measure,
    ).length,
  );
  let next = ahead + 1;
  const starts = chapters.map(({ pages }) => {
    const start = next;
    next += even(pages.length);
    return start;
  });
  const contents: HandoutLayout = {
    paper: settings.paper,
    title: wishes.title,
    pages: contentsPages(parts, starts, logo, wishes, measure),
    answerPages: 0,
    scores: [],
    remarks: [],
  };
  const count = next - 1;
  const paper = sheetOf(settings.paper, settings);
  return [contents, ...chapters].flatMap((chapter, order) => {
    const start = order === 0 ? 1 : (starts[order - 1] ?? 1);
    const empty = even(chapter.pages.length) - chapter.pages.length;
    const { width, height } = paper;
    const layout = {
      ...chapter,
      pages: [
        ...chapter.pages.map((page, index) => numberedPage(page, start + index, count, settings, paper)),
        ...Array.from({ length: empty }, () => ({ width, height, marks: [] })),
      ],
    };
    const part = parts[order - 1];
    return layout.pages.map((_, index) => ({
      layout,
      index,
      ...(index === 0 && part !== undefined ? { bookmark: calledInContents(part) } : {}),
    }));
  });
}

/** What leads to a lesson in the file. */
const calledInContents = (part: BookletPart): string =>
  part.place === '' ? partTitle(part) : `${part.place}: ${partTitle(part)}`;

/** The head of the booklet and its contents. */
function contentsPages(
  parts: readonly BookletPart[],
  starts: readonly number[],
  logo: Logo | null,
  wishes: BookletWishes,
  measure: TextMeasure,
) {
  const settings = bookletSettings(parts, wishes);
  const sizes = sizesFor(settings.print);
  const paper = sheetOf(settings.paper, settings);
  const width = paper.right - paper.left;
  const [{ blockGap }] = sizes.spacings;
  const columns = columnsFor(parts, width, settings, measure);
  const rows = [
    headRow(wishes.title, logo, { settings, sizes, measure, width }),
    ...headedRows(
      'Contents',
      sizes.heading,
      blockGap * 2,
      parts.map((part, index) => entryRow(part, starts[index] ?? 0, columns, settings, measure)),
    ),
  ];
  const foot = atFoot(settings.blocks) ? cautionFoot(width, sizes, measure) : null;
  return breakPages(rows, roomOver(foot, roomOn(paper, settings))).map((own, index) => {
    const folio = { isFirst: index === 0, title: wishes.title, foot: index === 0 ? foot : null };
    return placePage(own, folio, settings, paper, measure);
  });
}

interface Columns {
  /** Where the titles begin. */
  readonly title: number;
  /** Where the page numbers end. */
  readonly number: number;
  /** Of a title's lines. */
  readonly width: number;
}

/** Between two columns of the contents, in ems. */
const COLUMN_GAP = 1;
/** Wide enough for `999` and a few dots before it, in ems. */
const NUMBER_ROOM = 4;

function columnsFor(
  parts: readonly BookletPart[],
  width: number,
  { print }: FullSettings,
  measure: TextMeasure,
): Columns {
  const { body } = sizesFor(print);
  const widest = Math.max(0, ...parts.map(({ place }) => measure(place, body)));
  const title = widest === 0 ? 0 : widest + COLUMN_GAP * body.size;
  return { title, number: width, width: width - title - NUMBER_ROOM * body.size };
}

const UNREAD: Tag = { role: 'Artifact' };

/** A lesson in the contents: its place and title, dots that lead the eye, and the number of its page. */
function entryRow(
  part: BookletPart,
  start: number,
  columns: Columns,
  { print }: FullSettings,
  measure: TextMeasure,
): Row {
  const { body, small, spacings } = sizesFor(print);
  const lines = wrap(partTitle(part), columns.width, (text) => measure(text, body));
  const rows = lines.map((line) => textRow(line, body, { x: columns.title }));
  const last = lines.at(-1) ?? '';
  const number = String(start);
  const y = body.size * 0.95;
  const text = { kind: 'text', ...body, y } as const;
  const from = columns.title + measure(last, body) + body.size / 2;
  const to = columns.number - measure(number, body) - body.size / 2;
  // Each dot has its place on the page, so those of all lines stand under each other.
  const first = Math.ceil(from / body.size);
  const count = Math.max(0, Math.floor(to / body.size) - first + 1);
  const dots = Array.from({ length: count }, (_, index) => ({
    ...text,
    text: '.',
    x: (first + index) * body.size,
    anchor: 'middle' as const,
    tag: UNREAD,
  }));
  const words = joinRows(rows);
  const down = words.height - (rows.at(-1)?.height ?? 0);
  const place = { x: 0, y: 0, width: columns.number, height: words.height };
  const read = tagged(
    [
      { kind: 'link', address: pageAddress(start), ...place },
      ...(part.place === '' ? [] : [{ ...text, text: part.place, x: 0, anchor: 'start' as const }]),
      ...words.marks,
      { ...text, y: y + down, text: number, x: columns.number, anchor: 'end' as const },
    ],
    { role: 'Link', alternative: `To page ${number}: ${calledInContents(part)}` },
  );
  const brief = wrap(part.brief, columns.width, (each) => measure(each, small)).map((line) =>
    textRow(line, small, { x: columns.title }),
  );
  const entry: Row = {
    ...words,
    marks: [...read, ...dots.map((dot) => ({ ...dot, y: dot.y + down }))],
  };
  const whole = joinRows([entry, ...brief]);
  return { ...whole, gap: spacings[0].blockGap / 2, keepWithNext: false };
}
