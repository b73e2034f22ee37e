import { hashText } from '../../base';
import type { Lesson, LinePiece, MeantFinding } from '../types';
import { changeLine } from './piece';

/** A finding, as far as it is known again by it. */
interface Said {
  readonly about: MeantFinding['about'];
  /** Index of the written bar; null for the line. */
  readonly bar: number | null;
  /** What it finds, of data alone: other words for it are the same finding. */
  readonly id: string;
  readonly message: string;
}

const meantOf = (piece: LinePiece, { about, bar }: Said, what: string): MeantFinding => ({
  about,
  bar: bar === null ? null : (piece.bars[bar]?.id ?? null),
  fingerprint: hashText(what),
});

const same = (one: MeantFinding, other: MeantFinding): boolean =>
  one.about === other.about && one.bar === other.bar && one.fingerprint === other.fingerprint;

/** Whether the teacher has answered a finding with *I mean it*. */
export function isMeant(piece: LinePiece, finding: Said): boolean {
  const { meant = [] } = piece;
  // What was answered before findings had ids is known by its words.
  const names = meant.length === 0 ? [] : [finding.id, finding.message];
  return names.some((name) => meant.some((each) => same(each, meantOf(piece, finding, name))));
}

/** Answers a finding with *I mean it*: it is not said again until something else is found. */
export const meanIt = (lesson: Lesson, pieceId: string, finding: Said): Lesson =>
  changeLine(lesson, pieceId, (piece) =>
    isMeant(piece, finding)
      ? piece
      : { ...piece, meant: [...(piece.meant ?? []), meantOf(piece, finding, finding.id)] },
  );

/** Has every finding of a piece said again. */
export const forgetMeant = (lesson: Lesson, pieceId: string): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const { meant, ...rest } = piece;
    return meant === undefined ? piece : rest;
  });
