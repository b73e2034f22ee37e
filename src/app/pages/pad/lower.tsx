import type { LinePiece, LineSheet } from '../../../core/lesson';
import { TuningField } from '../aims';
import { HandPad } from '../hand';
import { HandoutChoices } from '../handout';
import { TransposePad } from './transpose-pad';

interface LowerPadProps {
  /** The line at hand and what is derived from it; null where the lesson has no line. */
  readonly line: { readonly piece: LinePiece; readonly sheet: LineSheet } | null;
}

/** What is set once for an instrument, a hand or a class; it lies below the first look. */
export function LowerPad({ line }: LowerPadProps) {
  return (
    <>
      {line !== null && (
        <>
          <TuningField />
          <HandPad piece={line.piece} />
          <TransposePad piece={line.piece} sheet={line.sheet} />
        </>
      )}
      <HandoutChoices />
    </>
  );
}
