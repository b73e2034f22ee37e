import { useState } from 'react';
import { chordsOnNeck, type LinePiece, type LineSheet } from '../../../core/lesson';
import { formatChordIn } from '../../../core/theory';
import { Later, laterPart } from '../at-work';

const SHAPES = laterPart('The shapes', async () => (await import('./chord-shapes')).ChordShapes);

interface ShapesFoldProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** The shapes of the chart's chords, folded away under one line that names the chords. */
export function ShapesFold({ piece, sheet }: ShapesFoldProps) {
  const [open, setOpen] = useState(false);
  const chords = chordsOnNeck(sheet);
  if (chords.length === 0) return null;
  const names = chords.map(({ chord }) => formatChordIn(sheet.noteNames ?? 'letters', chord));
  return (
    <details className="shapes" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="shapes__title">Shapes of the chords</span>{' '}
        <span className="shapes__chords">{names.join(' · ')}</span>
      </summary>
      {open && <Later part={SHAPES} given={{ sheet, hand: piece.hand }} />}
    </details>
  );
}
