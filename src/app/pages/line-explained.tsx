import { useEffect, useState } from 'react';
import { explainPiece } from '../../core/composing';
import type { InstrumentSettings, LinePiece, LineSheet } from '../../core/lesson';
import { whenIdle } from './hooks';

interface LineExplainedProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
}

/** What the whole line teaches, where it leads and what to listen for; told when the page is at rest. */
export function LineExplained({ piece, sheet, instrument }: LineExplainedProps) {
  const [told, setTold] = useState<readonly string[]>([]);
  useEffect(
    () => whenIdle(() => setTold(explainPiece(piece, sheet, instrument)), 1000),
    [piece, sheet, instrument],
  );
  return <p className="piece__explained">{told.join(' ')}</p>;
}
