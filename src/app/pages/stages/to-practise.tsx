import '../../styles/stages.css';
import { useId } from 'react';
import type { InstrumentSettings, LinePiece, LineSheet } from '../../../core/lesson';
import { PlayStages, type StageRows, Stages } from './stages';

interface StagesToPractiseProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
  readonly rows: StageRows;
}

/** A line's build-up as the student practises it. */
export function StagesToPractise({ piece, sheet, instrument, rows }: StagesToPractiseProps) {
  const id = useId();
  return (
    <section className="stages" aria-labelledby={id}>
      <h3 id={id}>Build-up of {piece.name}</h3>
      <PlayStages piece={piece} />
      <Stages
        piece={piece}
        instrument={instrument}
        noteNames={sheet.noteNames}
        rows={rows}
        large
        edits={false}
        onSave={null}
      />
    </section>
  );
}
