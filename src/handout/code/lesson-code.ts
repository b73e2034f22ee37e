import { encode } from 'uqr';
import { forNobody, forStudent, writeLessonLink } from '../../core/exchange';
import type { Lesson } from '../../core/lesson';
import { outlineOf } from './outline';

/** A QR code as a drawing. */
export interface LessonCode {
  /** Modules (the small squares) along one side. */
  readonly modules: number;
  /** The outline of everything dark, as SVG path data in modules from the top left corner. */
  readonly outline: string;
  /** The address that it leads to. */
  readonly link: string;
}

/**
 * Bytes that the largest code holds: version 40, error correction level L (ISO/IEC 18004, capacity in byte mode).
 * Level L is enough for paper, and gives the largest modules.
 */
const CAPACITY = 2_953;

type Wanted = { readonly code: LessonCode | null; readonly remark: string | null };

/** The lesson with what practising needs, and without what only its teacher works with: the shorter, the coarser the code. */
function lean(lesson: Lesson): Lesson {
  const { logo: _, ...handout } = lesson.handout;
  const pieces = lesson.pieces.map((piece) =>
    piece.kind === 'line' ? { ...piece, aims: [], parked: [], parkedSections: [] } : piece,
  );
  return forStudent({ ...lesson, handout, pieces });
}

/**
 * The code that opens a lesson for practising, or the sentence that says why there is none.
 * @param address - of the practice page, without the lesson
 */
export function codeOf(lesson: Lesson, address: string): Wanted {
  const link = writeLessonLink(forNobody(lean(lesson)), address);
  const length = bytesOf(link);
  if (length > CAPACITY) return { code: null, remark: tooLong(length) };
  const { size, data } = encode(link, { ecc: 'L', boostEcc: false, border: 0 });
  return { code: { modules: size, outline: outlineOf(data), link }, remark: null };
}

const bytesOf = (text: string): number => new TextEncoder().encode(text).length;

const tooLong = (length: number): string =>
  `The lesson is too long for a QR code: its link has ${length} characters, and a code holds ${CAPACITY}.`;
