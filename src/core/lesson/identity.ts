import type { Lesson, Piece } from './types';

const NAMED_PARTS = ['bars', 'parked', 'sections', 'parkedSections', 'takes'] as const;

/** A lesson without its ids' bookkeeping: every id in use, whatever it names. */
function idsOf(pieces: readonly Piece[]): string[] {
  return pieces.flatMap((piece) =>
    piece.kind === 'line'
      ? [piece.id, ...NAMED_PARTS.flatMap((part) => piece[part].map(({ id }) => id))]
      : [piece.id],
  );
}

/**
 * A source of ids that the lesson does not use yet: `piece-4`, `bar-17`. Ids come from the lesson alone, so the
 * same edit of the same lesson gives the same document.
 */
export function freshIds(
  lesson: Pick<Lesson, 'pieces'>,
): (kind: 'piece' | 'bar' | 'section' | 'take') => string {
  let last = 0;
  for (const id of idsOf(lesson.pieces)) {
    const count = Number(/-(\d+)$/.exec(id)?.[1] ?? 0);
    last = Math.max(last, count);
  }
  return (kind) => {
    last += 1;
    return `${kind}-${last}`;
  };
}
