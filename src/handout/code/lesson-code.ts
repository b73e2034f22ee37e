import { encode } from 'uqr';
import { writeLessonLink } from '../../core/exchange';
import type { Lesson } from '../../core/lesson';
import { outlineOf } from './outline';

/** A QR code as a drawing. */
export interface LessonCode {
  /** Modules (the small squares) along one side. */
  readonly modules: number;
  /** The outline of everything dark, as SVG path data in modules from the top left corner. */
  readonly outline: string;
}

/**
 * Bytes that the largest code holds: version 40, error correction level L (ISO/IEC 18004, capacity in byte mode).
 * Level L is enough for paper, and gives the largest modules.
 */
const CAPACITY = 2_953;

type Wanted = { readonly code: LessonCode | null; readonly remark: string | null };

/**
 * The code that opens a lesson, or the sentence that says why there is none.
 * @param address - of the app, without the lesson
 */
export function codeOf(lesson: Lesson, address: string): Wanted {
  const link = writeLessonLink(lesson, address);
  const length = bytesOf(link);
  if (length > CAPACITY) return { code: null, remark: tooLong(lesson, address, length) };
  const { size, data } = encode(link, { ecc: 'L', boostEcc: false, border: 0 });
  return { code: { modules: size, outline: outlineOf(data) }, remark: null };
}

const bytesOf = (text: string): number => new TextEncoder().encode(text).length;

function tooLong(lesson: Lesson, address: string, length: number): string {
  const { logo, ...handout } = lesson.handout;
  const fitsWithoutLogo =
    logo !== undefined && bytesOf(writeLessonLink({ ...lesson, handout }, address)) <= CAPACITY;
  const remark = `The lesson is too long for a QR code: its link has ${length} characters, and a code holds ${CAPACITY}.`;
  return fitsWithoutLogo ? `${remark} Without the logo it fits.` : remark;
}
