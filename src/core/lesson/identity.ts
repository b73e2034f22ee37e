import type { Lesson, Piece } from './types';

const NAMED_PARTS = ['bars', 'parked', 'sections', 'parkedSections', 'takes'] as const;

/** Every id in use in some pieces, whatever it names. */
export function idsOf(pieces: readonly Piece[]): string[] {
  return pieces.flatMap((piece) =>
    piece.kind === 'line'
      ? [piece.id, ...NAMED_PARTS.flatMap((part) => piece[part].map(({ id }) => id))]
      : [piece.id],
  );
}

/** The highest number that ids end with; 0 where none does. */
export const lastNumber = (ids: Iterable<string>): number => {
  let last = 0;
  for (const id of ids) last = Math.max(last, Number(/-(\d+)$/.exec(id)?.[1] ?? 0));
  return last;
};

/**
 * A source of ids that the lesson does not use yet: `piece-4`, `bar-17`. Ids come from the lesson alone, so the
 * same edit of the same lesson gives the same document.
 */
export function freshIds(
  lesson: Pick<Lesson, 'pieces' | 'idsUpTo'>,
): (kind: 'piece' | 'bar' | 'section' | 'take') => string {
  let last = Math.max(lesson.idsUpTo ?? 0, lastNumber(idsOf(lesson.pieces)));
  return (kind) => {
    last += 1;
    return `${kind}-${last}`;
  };
}
