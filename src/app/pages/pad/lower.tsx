import { type Lesson, type LinePiece, sheetAtHand } from '../../../core/lesson';
import { TuningField } from '../aims';
import { HandPad } from '../hand';
import { HandoutChoices } from '../handout';
import { TransposePad } from './transpose-pad';

interface LowerPadProps {
  /** The line at hand, as it is this moment but for notes and chart; null where the lesson has no line. */
  readonly piece: LinePiece | null;
  /** The lesson as everything computed shows it, perhaps a moment older. */
  readonly settled: Lesson;
}

/** What is set once for an instrument, a hand or a class; it lies below the first look. */
export function LowerPad({ piece, settled }: LowerPadProps) {
  const sheet = piece && sheetAtHand(settled, piece.id);
  return (
    <>
      {piece !== null && sheet !== null && (
        <>
          <TuningField />
          <HandPad piece={piece} />
          <TransposePad piece={piece} sheet={sheet} />
        </>
      )}
      <HandoutChoices />
    </>
  );
}
