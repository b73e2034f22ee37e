import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import { failure, type Result, success } from '../../base';
import { describeLessonProblem, type Lesson, type LessonProblem, parseLesson } from '../../lesson';
import { fromBase64Url, toBase64Url } from './base64url';

const MARK = '#lesson=';

/** Longer links are refused unread; a browser's address bar takes about two million signs. */
const LONGEST_LINK = 2_000_000;

/** A lesson's text may grow to this; a link that unpacks to more was made to harm. */
const LARGEST_LESSON = 5_000_000;

/** Packed bytes handed to the unpacker at a time: each may grow a thousandfold before the next look at the sum. */
const PORTION = 4_096;

/** Takes are for the teacher to choose from; a link is to be short. */
const withoutTakes = (lesson: Lesson): Lesson => ({
  ...lesson,
  pieces: lesson.pieces.map((piece) => (piece.kind === 'line' ? { ...piece, takes: [] } : piece)),
});

/**
 * An address that holds the whole lesson, but for the takes that can be recalled, after its `#`, packed (DEFLATE, RFC 1951) and written in the alphabet of
 * addresses. What follows a `#` stays in the browser: no server ever sees it.
 * @param page The address of the app, with or without a `#` of its own.
 */
export function writeLessonLink(lesson: Lesson, page: string): string {
  const [address = ''] = page.split('#');
  const packed = deflateSync(strToU8(JSON.stringify(withoutTakes(lesson))), { level: 9 });
  return address + MARK + toBase64Url(packed);
}

/** Whether an address, or its part after the `#`, claims to hold a lesson. */
export const holdsLesson = (address: string): boolean => address.includes(MARK);

function unpack(bytes: Uint8Array): Uint8Array | null {
  const parts: Uint8Array[] = [];
  let size = 0;
  let finished = false;
  const inflate = new Inflate((part, final) => {
    parts.push(part);
    size += part.length;
    finished = final;
  });
  for (let from = 0; from < bytes.length; from += PORTION) {
    inflate.push(bytes.subarray(from, from + PORTION), from + PORTION >= bytes.length);
    if (size > LARGEST_LESSON) return null;
  }
  if (!finished) return null;
  const whole = new Uint8Array(size);
  let filled = 0;
  for (const part of parts) {
    whole.set(part, filled);
    filled += part.length;
  }
  return whole;
}

/** Why a link gives no lesson: a sentence, and what the validator found where there was something to be read. */
export interface LinkProblem {
  readonly message: string;
  readonly found?: LessonProblem;
}

const broken = (): Result<Lesson, LinkProblem> =>
  failure({
    message:
      'The lesson in this link cannot be read. Perhaps the link was cut off on its way; ask for it again.',
  });

/**
 * Reads the lesson in an address. Whatever stands there, nothing is thrown and nothing happens: the answer is a
 * lesson that the one validator has passed, or a sentence for the person who opened the link.
 */
export function readLessonLink(address: string): Result<Lesson, LinkProblem> {
  const start = address.indexOf(MARK);
  if (start < 0) return failure({ message: 'There is no lesson in this link.' });
  if (address.length > LONGEST_LINK) return failure({ message: 'This link is too long to be a lesson.' });
  const packed = fromBase64Url(address.slice(start + MARK.length));
  if (packed === null || packed.length === 0) return broken();
  let text: string;
  try {
    const bytes = unpack(packed);
    if (bytes === null) return broken();
    text = strFromU8(bytes);
  } catch {
    // The unpacker says what is wrong with the bytes; the person can only ask for the link again.
    return broken();
  }
  const read = parseLesson(text);
  if (read.ok) return success(read.value);
  return failure({ message: describeLessonProblem(read.problem), found: read.problem });
}
