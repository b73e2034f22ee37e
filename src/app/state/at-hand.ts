import type { Lesson } from '../../core/lesson';
import type { EditorStore } from './editor-store';
import type { LessonStore } from './lesson-store';

export const firstPiece = (lesson: Lesson): string => lesson.pieces[0]?.id ?? '';

const parkedIn = (lesson: Lesson): readonly string[] =>
  lesson.pieces.flatMap((piece) => (piece.kind === 'line' ? piece.parked.map(({ id }) => id) : []));

/** Ids of the bars that were in their lines before a change and are parked after it. */
function newlyParked(lesson: Lesson, before: Lesson): readonly string[] {
  const known = new Set(parkedIn(before));
  return parkedIn(lesson).filter((id) => !known.has(id));
}

/** Keeps a piece of the lesson at hand, and a bar of that piece or none, whatever becomes of the lesson. */
export function startAtHand(lessons: LessonStore, editor: EditorStore) {
  /** The piece or bar at hand may have gone with an undo or a removal; then the first piece or the last bar is at hand. */
  lessons.subscribe(({ lesson }) => {
    const { pieceId, bar } = editor.getState();
    const piece = lesson.pieces.find((each) => each.id === pieceId);
    if (piece === undefined) {
      editor.setState({ pieceId: firstPiece(lesson), bar: null, pencil: null });
    } else if (bar !== null && (piece.kind !== 'line' || bar >= piece.bars.length)) {
      const last = piece.kind === 'line' ? piece.bars.length - 1 : -1;
      editor.setState({ bar: last < 0 ? null : last });
    }
  });

  lessons.subscribe(({ lesson, redoLabel, document }, { lesson: before, document: documentBefore }) => {
    const { justParked } = editor.getState();
    const isSame = lesson.id === before.id && document.open === documentBefore.open;
    // What undoing parks was parked before.
    const parked = isSame && redoLabel === null ? newlyParked(lesson, before) : [];
    if (parked.length > 0 || justParked.length > 0) editor.setState({ justParked: parked });
  });

  return {
    choosePiece: (pieceId: string) => editor.setState({ pieceId, bar: null, pencil: null, remarks: [] }),
    /**
     * Opens the ideas of a written bar (index from 0); null closes them. The pencil goes along to another bar of its
     * piece, and is put away with the bar.
     */
    chooseBar: (pieceId: string, bar: number | null) => {
      const { pencil } = editor.getState();
      const goes = pencil !== null && bar !== null && pencil.pieceId === pieceId;
      const there = goes && pencil.bar !== bar ? { ...pencil, bar, tick: 0, next: null, from: null } : pencil;
      editor.setState({ pieceId, bar, pencil: goes ? there : null });
    },
  };
}
