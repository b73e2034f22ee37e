import { hashText } from '../../base';
import type { Lesson, LinePiece, MeantFinding } from '../types';
import { changeLine } from './piece';

/** What a finding says, as far as it is known again by it. */
interface Said {
  readonly about: MeantFinding['about'];
  /** Index of the written bar; null for the line. */
  readonly bar: number | null;
  readonly message: string;
}

const meantOf = (piece: LinePiece, { about, bar, message }: Said): MeantFinding => ({
  about,
  bar: bar === null ? null : (piece.bars[bar]?.id ?? null),
  fingerprint: hashText(message),
});

const same = (one: MeantFinding, other: MeantFinding): boolean =>
  one.about === other.about && one.bar === other.bar && one.fingerprint === other.fingerprint;

/** Whether the teacher has answered a finding with *I mean it*. */
export function isMeant(piece: LinePiece, finding: Said): boolean {
  const { meant = [] } = piece;
  return meant.length > 0 && meant.some((each) => same(each, meantOf(piece, finding)));
}

/** Answers a finding with *I mean it*: it is not said again until it says something else. */
export const meanIt = (lesson: Lesson, pieceId: string, finding: Said): Lesson =>
  changeLine(lesson, pieceId, (piece) =>
    isMeant(piece, finding) ? piece : { ...piece, meant: [...(piece.meant ?? []), meantOf(piece, finding)] },
  );

/** Has every finding of a piece said again. */
export const forgetMeant = (lesson: Lesson, pieceId: string): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const { meant, ...rest } = piece;
    return meant === undefined ? piece : rest;
  });
