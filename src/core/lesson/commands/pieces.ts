import { hashText } from '../../base';
import { newBlankPiece, newLineLike, newLinePiece } from '../create';
import { freshIds } from '../identity';
import { LESSON_LIMITS } from '../limits';
import type { BlankPrompt, Lesson, Piece } from '../types';
import { changePiece } from './piece';

/** The name with the first free number behind it: `Line`, `Line 2`, `Line 3`. */
function freeName(lesson: Lesson, name: string): string {
  // Room for the number, however long the name is.
  const stem = name.replace(/ \d+$/, '').slice(0, LESSON_LIMITS.title - 5);
  const taken = new Set(lesson.pieces.map((piece) => piece.name));
  let candidate = stem;
  for (let count = 2; taken.has(candidate); count += 1) {
    candidate = `${stem} ${count}`;
  }
  return candidate;
}

function insertAfter(lesson: Lesson, pieceId: string | null, piece: Piece): Lesson {
  const index = lesson.pieces.findIndex((candidate) => candidate.id === pieceId);
  const at = index < 0 ? lesson.pieces.length : index + 1;
  return { ...lesson, pieces: [...lesson.pieces.slice(0, at), piece, ...lesson.pieces.slice(at)] };
}

/** Adds an empty piece after the given one, or at the end. A new line takes feel, tempo and level from it. */
export function addPiece(lesson: Lesson, kind: Piece['kind'], afterId: string | null): Lesson {
  const id = freshIds(lesson)('piece');
  if (kind === 'blank') {
    return insertAfter(lesson, afterId, newBlankPiece(id, freeName(lesson, 'Your own line')));
  }
  const own = [id, freeName(lesson, 'Line'), hashText(`${lesson.id} ${id}`)] as const;
  const model = lesson.pieces.find((piece) => piece.id === afterId);
  return insertAfter(
    lesson,
    afterId,
    model?.kind === 'line' ? newLineLike(model, ...own) : newLinePiece(...own),
  );
}

/** Puts a copy of a piece right after it; the copy's bars get ids of their own. */
export function copyPiece(lesson: Lesson, pieceId: string): Lesson {
  const original = lesson.pieces.find((piece) => piece.id === pieceId);
  if (original === undefined) {
    return lesson;
  }
  const fresh = freshIds(lesson);
  const id = fresh('piece');
  const name = freeName(lesson, original.name);
  if (original.kind === 'blank') {
    return insertAfter(lesson, pieceId, { ...original, id, name });
  }
  const ids = new Map<string, string>();
  const renewed = <Part extends { readonly id: string }>(
    parts: readonly Part[],
    kind: 'bar' | 'section' | 'take',
  ) =>
    parts.map((part) => {
      const own = fresh(kind);
      ids.set(part.id, own);
      return { ...part, id: own };
    });
  const parts = {
    bars: renewed(original.bars, 'bar'),
    parked: renewed(original.parked, 'bar'),
    sections: renewed(original.sections, 'section'),
    parkedSections: renewed(original.parkedSections, 'section'),
    takes: renewed(original.takes, 'take'),
  };
  const aims = original.aims.map((aim) =>
    aim.where.kind === 'line'
      ? aim
      : { ...aim, where: { ...aim.where, id: ids.get(aim.where.id) ?? aim.where.id } },
  );
  const { buildUp } = original;
  const stages =
    buildUp === undefined
      ? {}
      : {
          buildUp: {
            ...buildUp,
            edits: buildUp.edits.map((edit) => ({ ...edit, bar: ids.get(edit.bar) ?? edit.bar })),
          },
        };
  return insertAfter(lesson, pieceId, { ...original, ...parts, ...stages, id, name, aims });
}

/** Moves a piece up (−1) or down (+1) on the sheet; at either end nothing changes. */
export function movePiece(lesson: Lesson, pieceId: string, by: -1 | 1): Lesson {
  const from = lesson.pieces.findIndex((piece) => piece.id === pieceId);
  const to = from + by;
  const moving = lesson.pieces[from];
  if (moving === undefined || to < 0 || to >= lesson.pieces.length) {
    return lesson;
  }
  const rest = lesson.pieces.filter((piece) => piece !== moving);
  return { ...lesson, pieces: [...rest.slice(0, to), moving, ...rest.slice(to)] };
}

/** Takes a piece off the sheet; the last one stays, since a lesson is never empty. */
export function removePiece(lesson: Lesson, pieceId: string): Lesson {
  const pieces = lesson.pieces.filter((piece) => piece.id !== pieceId);
  return pieces.length === 0 || pieces.length === lesson.pieces.length ? lesson : { ...lesson, pieces };
}

export const renamePiece = (lesson: Lesson, pieceId: string, name: string): Lesson =>
  changePiece(lesson, pieceId, (piece) => ({ ...piece, name }));

/** What blank bars ask for; null for nothing. */
export const setBlankPrompt = (lesson: Lesson, pieceId: string, prompt: BlankPrompt | null): Lesson =>
  changePiece(lesson, pieceId, (piece) => {
    if (piece.kind !== 'blank') return piece;
    const { prompt: _, ...free } = piece;
    return prompt === null ? free : { ...free, prompt };
  });

/** Number of empty bars of a blank piece, 1–64. */
export const setBlankBars = (lesson: Lesson, pieceId: string, bars: number): Lesson =>
  changePiece(lesson, pieceId, (piece) =>
    piece.kind === 'blank' ? { ...piece, bars: Math.min(64, Math.max(1, Math.round(bars))) } : piece,
  );
