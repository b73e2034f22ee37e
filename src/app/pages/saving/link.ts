import type { Lesson } from '../../../core/lesson';
import { practiceAddress } from '../common';

/** The longest message that common messengers send in one piece, in characters (common practice, no source). */
const MESSAGE = 4_000;

/** What came of copying a link. */
export interface CopiedLink {
  readonly sentence: string;
  /** What is offered as a file instead; null where the link does. */
  readonly instead: LinkedPage | null;
}

/** What a link opens. */
export type LinkedPage = 'lesson' | 'practice page';

const WHAT: Readonly<Record<LinkedPage, string>> = {
  lesson: 'It holds the whole lesson; whoever opens it gets a copy of their own.',
  'practice page':
    'It holds the whole lesson and opens the practice page, on which nothing of the lesson can be changed.',
};

const FILES: Readonly<Record<LinkedPage, string>> = {
  lesson: 'the lesson file',
  'practice page': 'the practice page as a file',
};

/** What is said of a link of so many characters. */
export function saidOfLink(length: number, page: LinkedPage, copied: boolean): CopiedLink {
  const long = `${length.toLocaleString('en')} characters`;
  if (!copied) {
    return {
      sentence: `This browser does not let the page copy the link. Send ${FILES[page]} instead: it holds the same lesson.`,
      instead: page,
    };
  }
  const sentence = `The link is copied. ${WHAT[page]} It is ${long} long`;
  return length > MESSAGE
    ? {
        sentence: `${sentence}, more than many messengers send in one piece: ${FILES[page]} is the safer way.`,
        instead: page,
      }
    : { sentence: `${sentence}, which fits into a message.`, instead: null };
}

/** The address of the app itself: without a query, and without a lesson. */
const appAddress = (): string => window.location.href.split(/[?#]/)[0] ?? '';

/** Copies a link that holds the whole lesson, and opens it to be written on or to be practised. */
export async function copyLink(lesson: Lesson, page: LinkedPage): Promise<CopiedLink> {
  const { forNobody, forStudent, writeLessonLink } = await import('../../../core/exchange');
  const sent = forNobody(lesson);
  const link =
    page === 'lesson'
      ? writeLessonLink(sent, appAddress())
      : writeLessonLink(forStudent(sent), practiceAddress(appAddress()));
  const copied = await navigator.clipboard?.writeText(link).then(
    () => true,
    () => false,
  );
  return saidOfLink(link.length, page, copied === true);
}
