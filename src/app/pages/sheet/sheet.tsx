import { Fragment, memo, useEffect } from 'react';
import {
  addPiece,
  deriveSheet,
  LESSON_LIMITS,
  type Lesson,
  lineAtHand,
  type Piece,
  setNotes,
} from '../../../core/lesson';
import { Later, laterPart, SheetAhead, useAtWork, useEditor, useLessonText } from '../at-work';
import { LinePieceView } from './line-piece';
import type { PlaceOnSheet } from './piece-head';

const BLANK = laterPart('The blank bars', async () => (await import('./blank-piece')).BlankPieceView);

interface SheetViewProps {
  readonly settled: Lesson;
  /** Leads to the chord chart, wherever it is. */
  readonly onWriteChart: () => void;
}

/** The sheet on the desk: the pieces in their order, as they will print. */
export const SheetView = memo(function SheetView({ settled, onWriteChart }: SheetViewProps) {
  const { session } = useAtWork();
  const pieceId = useEditor((state) => state.pieceId);
  // Below everything that shows the lesson: once this runs, the sheet has come through.
  useEffect(() => {
    if (settled.id !== '') session.drawn();
  }, [session, settled.id]);
  const atHand = lineAtHand(settled, pieceId);
  return (
    <div className="paper sheet">
      {settled.pieces.map((piece, index) => (
        <Fragment key={piece.id}>
          {piece.kind === 'line' && <SheetAhead piece={piece} instrument={settled.instrument} />}
          <PieceOnSheet
            piece={piece}
            settled={settled}
            place={{ index, count: settled.pieces.length }}
            atHand={piece.id === atHand?.id}
            onWriteChart={onWriteChart}
          />
        </Fragment>
      ))}
      <AddPiece />
      <Notes />
    </div>
  );
});

interface PieceOnSheetProps extends SheetViewProps {
  readonly piece: Piece;
  readonly place: PlaceOnSheet;
  /** Whether it is the line at hand. */
  readonly atHand: boolean;
}

function PieceOnSheet({ piece, settled, place, atHand, onWriteChart }: PieceOnSheetProps) {
  const sheet = deriveSheet(piece, settled.instrument, settled.noteNames);
  if (piece.kind === 'line' && sheet.kind === 'line') {
    return (
      <LinePieceView
        piece={piece}
        sheet={sheet}
        place={place}
        atHand={atHand}
        instrument={settled.instrument}
        handout={settled.handout}
        onWriteChart={onWriteChart}
      />
    );
  }
  return piece.kind === 'blank' && sheet.kind === 'blank' ? (
    <Later part={BLANK} given={{ piece, sheet, place }} />
  ) : null;
}

function AddPiece() {
  const { session } = useAtWork();
  const add = (kind: 'line' | 'blank') => {
    const before = session.lessons.getState().lesson;
    session.lessons.change((lesson) => addPiece(lesson, kind, null), {
      label: kind === 'line' ? 'add a line' : 'add blank bars',
    });
    const added = session.lessons.getState().lesson.pieces.at(-1);
    if (kind === 'line' && added && !before.pieces.includes(added)) session.choosePiece(added.id);
  };
  return (
    <p className="add-piece">
      Add to the sheet:{' '}
      <button type="button" className="word" onClick={() => add('line')}>
        another line
      </button>{' '}
      or{' '}
      <button type="button" className="word" onClick={() => add('blank')}>
        blank bars
      </button>
    </p>
  );
}

function Notes() {
  const { session } = useAtWork();
  const notes = useLessonText('notes');
  return (
    <div className="notes">
      <label className="notes__label" htmlFor="notes">
        Notes for the student
      </label>
      <textarea
        id="notes"
        className="notes__text"
        rows={3}
        maxLength={LESSON_LIMITS.text}
        value={notes}
        onChange={(event) => {
          const text = event.currentTarget.value;
          session.lessons.change((lesson) => setNotes(lesson, text), {
            label: 'change the notes',
            join: 'notes',
          });
        }}
      />
    </div>
  );
}
