import type * as z from 'zod/mini';
import { rememberedFor } from '../base';
import { LESSON_LIMITS } from './limits';
import { lessonHeadSchema } from './schema';
import { lineBarSchema } from './schema/notes';
import { blankPieceSchema, linePieceSchema, takeSchema } from './schema/pieces';
import { versionBarSchema, versionLineSchema, versionSchema } from './schema/versions';
import {
  BAR_WORDS_LENGTH,
  type Lesson,
  type LessonVersion,
  type Piece,
  PRACTICE_STEPS,
  type VersionLine,
} from './types';

/** Parts of documents that are known to be read again as they are; documents never change in place. */
const known = new WeakSet<object>();

/** Where in a part the validator stops, as names of fields; null where it does not. */
function faultIn(schema: z.ZodMiniType, part: object, tested: object = part): readonly string[] | null {
  if (known.has(part)) return null;
  const read = schema.safeParse(tested);
  if (!read.success) {
    return (read.error.issues[0]?.path ?? []).filter((step) => typeof step === 'string');
  }
  known.add(part);
  return null;
}

const faultInAll = (schema: z.ZodMiniType, parts: readonly object[]): readonly string[] | null => {
  for (const part of parts) {
    const fault = faultIn(schema, part);
    if (fault !== null) return fault;
  }
  return null;
};

/** Only what changed is tested: a key press in a chart of many bars tests that piece and the new bars. */
function faultInPiece(piece: Piece): readonly string[] | null {
  if (known.has(piece)) return null;
  if (piece.kind === 'blank') return faultIn(blankPieceSchema, piece);
  if (Math.max(piece.bars.length, piece.parked.length) > LESSON_LIMITS.bars) return ['bars'];
  if (piece.takes.length > LESSON_LIMITS.takes) return ['takes'];
  return (
    faultInAll(lineBarSchema, piece.bars) ??
    faultInAll(lineBarSchema, piece.parked) ??
    faultInAll(takeSchema, piece.takes) ??
    faultIn(linePieceSchema, piece, { ...piece, bars: [], parked: [], takes: [] })
  );
}

function faultInPieces(pieces: readonly Piece[]): readonly string[] | null {
  if (pieces.length > LESSON_LIMITS.pieces) return ['pieces'];
  for (const piece of pieces) {
    const fault = faultInPiece(piece);
    if (fault !== null) return fault;
  }
  return null;
}

const faultInVersionLine = (line: VersionLine): readonly string[] | null =>
  known.has(line)
    ? null
    : (faultInAll(versionBarSchema, line.bars ?? []) ??
      faultInAll(lineBarSchema, line.added ?? []) ??
      faultIn(versionLineSchema, line, { ...line, bars: [], added: [] }));

function faultInVersion(version: LessonVersion): readonly string[] | null {
  if (known.has(version)) return null;
  for (const line of version.lines) {
    const fault = faultInVersionLine(line);
    if (fault !== null) return fault;
  }
  return (
    faultInPieces(version.pieces ?? []) ??
    faultIn(versionSchema, version, { ...version, lines: [], pieces: [] })
  );
}

function faultInLesson(lesson: Lesson): readonly string[] | null {
  const { pieces, versions = [], ...head } = lesson;
  if (pieces.length === 0) return ['pieces'];
  const inPieces = faultInPieces(pieces);
  if (inPieces !== null) return inPieces;
  if (versions.length > LESSON_LIMITS.versions) return ['versions'];
  for (const version of versions) {
    const fault = faultInVersion(version);
    if (fault !== null) return fault;
  }
  return faultIn(lessonHeadSchema, lesson, head);
}

/** Bytes of a part in a file: signs beyond ASCII take up to three (UTF-8, RFC 3629). */
function bytesOf(part: unknown): number {
  const text = JSON.stringify(part);
  return text.length + 2 * text.replace(/[ -~]+/g, '').length;
}

const bytesOfPart = rememberedFor(bytesOf);
const bytesOfAll = (parts: readonly object[]): number =>
  parts.reduce((sum, part) => sum + bytesOfPart(part) + 1, 0);

/** Only what changed is measured again. */
const bytesOfPiece = rememberedFor((piece: Piece): number =>
  piece.kind === 'blank'
    ? bytesOf(piece)
    : bytesOf({ ...piece, bars: [], parked: [], takes: [] }) +
      bytesOfAll(piece.bars) +
      bytesOfAll(piece.parked) +
      bytesOfAll(piece.takes),
);

const bytesOfPieces = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, piece) => sum + bytesOfPiece(piece), 0);

const bytesOfVersion = rememberedFor(
  ({ lines, pieces = [], ...rest }: LessonVersion): number =>
    bytesOf(rest) +
    bytesOfPieces(pieces) +
    lines.reduce(
      (sum, { bars = [], added = [], ...line }) => sum + bytesOf(line) + bytesOfAll(bars) + bytesOfAll(added),
      0,
    ),
);

/** A logo is long, and is in the handout's settings. */
const bytesOfLesson = ({ pieces, versions = [], handout, ...head }: Lesson): number =>
  versions.reduce(
    (sum, version) => sum + bytesOfVersion(version) + 1,
    bytesOf(head) + bytesOfPart(handout) + bytesOfPieces(pieces),
  );

const TOO_LARGE =
  'A lesson has room for about 4.8 MB, and this would make it larger: go on in another lesson. The lesson is as it was.';

const inThousands = (count: number): string => count.toLocaleString('en');

/** What each part may be at most, by the name of the field that is over it. */
const SAID: Readonly<Record<string, string>> = {
  chartText: `A chart has at most ${inThousands(LESSON_LIMITS.text)} characters, and this would make it longer`,
  notes: `Notes have at most ${inThousands(LESSON_LIMITS.text)} characters, and a bar has at most ${LESSON_LIMITS.notesInBar} notes`,
  title: `A title has at most ${LESSON_LIMITS.title} characters`,
  name: `A name has at most ${LESSON_LIMITS.title} characters`,
  header: `A heading has at most ${LESSON_LIMITS.title} characters`,
  student: `A name has at most ${LESSON_LIMITS.title} characters`,
  words: `The words above a bar have at most ${BAR_WORDS_LENGTH} characters`,
  steps: `A handout has at most ${PRACTICE_STEPS.most} practice steps of ${PRACTICE_STEPS.length} characters`,
  logo: 'This picture is too large for a logo',
  versions: `A lesson has at most ${LESSON_LIMITS.versions} versions`,
  pieces: `A lesson has at most ${LESSON_LIMITS.pieces} pieces`,
  bars: `A line has at most ${inThousands(LESSON_LIMITS.bars)} bars`,
  aims: 'There are more aims than a line can keep',
};

/**
 * Why a changed lesson could not be read again once it is saved, in one sentence; null where it can. It is asked of
 * every edit before the edit is made, so that nothing is saved which the validator refuses.
 */
export function whyNotKept(lesson: Lesson): string | null {
  const fault = faultInLesson(lesson);
  if (fault === null) return bytesOfLesson(lesson) > LESSON_LIMITS.whole ? TOO_LARGE : null;
  const said = fault.flatMap((field) => SAID[field] ?? []).at(-1);
  return `${said ?? `A lesson cannot hold this (${fault.join(', ')})`}. The lesson is as it was.`;
}
