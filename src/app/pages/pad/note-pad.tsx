import { type KeyboardEvent, memo, useEffect, useRef } from 'react';
import { chartReading, type Lesson, lineAtHand } from '../../../core/lesson';
import { Aims, FurtherAims, Techniques } from '../aims';
import { Later, laterPart, useAtWork, useEditor, useLessonButNotes } from '../at-work';
import { ChartField } from '../chart';
import { Remarks } from './remarks';

const LOWER = laterPart('Tuning, hand and paper', async () => (await import('./lower')).LowerPad);

interface NotePadProps {
  /** The lesson everything computed is shown from; it may be a moment older than what is being typed. */
  readonly settled: Lesson;
  /** How to put the pad away, where it does not always stand beside the sheet. */
  readonly onClose: (() => void) | null;
  /** Whether it lies over the sheet and takes the focus when it opens. */
  readonly overSheet: boolean;
}

const CHECK = laterPart('The lesson check', async () => (await import('../answers')).LessonCheck);

const TAKES = laterPart('The list of takes', async () => (await import('../answers')).Takes);

/**
 * Chart and aims of the piece at hand, in the order of the work: what a teacher writes down before the line is
 * composed, what there is to say about the line, and what is set once for an instrument or a class.
 */
export const NotePad = memo(function NotePad({ settled, onClose, overSheet }: NotePadProps) {
  const { session } = useAtWork();
  const lesson = useLessonButNotes(settled);
  const pieceId = useEditor((state) => state.pieceId);
  const root = useRef<HTMLElement>(null);
  const piece = lineAtHand(lesson, pieceId);
  const settledPiece = lineAtHand(settled, piece?.id ?? pieceId);
  const reading = settledPiece && chartReading(settledPiece, settled.noteNames);

  useEffect(() => {
    if (overSheet) root.current?.querySelector<HTMLElement>('textarea, button')?.focus();
  }, [overSheet]);

  /** Where the pad lies over the sheet, it makes way for the new line. */
  const compose = (work: () => void) => () => {
    work();
    if (overSheet) onClose?.();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && onClose !== null) {
      event.stopPropagation();
      onClose();
    }
  };

  return (
    <aside className="pad" id="note-pad" aria-label="Note pad" ref={root} onKeyDown={onKeyDown}>
      {overSheet && onClose !== null && (
        <div className="pad__top">
          <h2 className="pad__title">Chart and aims</h2>
          <button type="button" className="button" onClick={onClose}>
            Back to the sheet
          </button>
        </div>
      )}
      {piece !== null && reading !== null ? (
        <>
          {lesson.pieces.filter((each) => each.kind === 'line').length > 1 && (
            <p className="pad__piece">For “{piece.name}”</p>
          )}
          <ChartField piece={piece} reading={reading} />
          <Aims piece={piece} reading={reading} />
          <Techniques piece={piece} />
          <FurtherAims piece={piece} settled={settled} />
          <div className="pad__compose">
            {piece.bars.length === 0 ? (
              <p className="pad__hint">Write the chords first; then their line can be composed.</p>
            ) : (
              <>
                <button
                  type="button"
                  className="button button--main"
                  onClick={compose(() => void session.composeLine())}
                >
                  Compose line
                </button>
                <button type="button" className="button" onClick={compose(() => void session.anotherTake())}>
                  Another take
                </button>
              </>
            )}
          </div>
          <Remarks />
        </>
      ) : (
        <p>This lesson has no line yet: add one under the sheet.</p>
      )}
      <Later part={CHECK} given={{ lesson: settled }} />
      {piece !== null && piece.bars.length > 0 && <Later part={TAKES} given={{ piece }} />}
      <Later part={LOWER} given={{ piece, settled }} />
    </aside>
  );
});
