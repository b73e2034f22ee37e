import { barName } from '../../../core/base';
import type { LinePiece, LineSheet } from '../../../core/lesson';
import { Later } from '../at-work';
import { EDITOR } from './later-editor';
import { wordsAt } from './places';

interface BarAimsProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  /** Index of the written bar, and its number. */
  readonly bar: number;
  readonly number: number;
}

/** What is asked of one bar apart from the rest of the line, folded away under what it says. */
export function BarAims({ piece, sheet, bar, number }: BarAimsProps) {
  const place = { kind: 'bar', bar } as const;
  const words = wordsAt(piece, sheet, place);
  return (
    <details className="hand-pad aims-of-bar">
      <summary>
        <span className="fingering__title">Aims for {barName(number)}</span>{' '}
        <span className="hand-pad__facts">{words === '' ? 'as for the line' : words}</span>
      </summary>
      <Later part={EDITOR} given={{ piece, sheet, place }} />
    </details>
  );
}
