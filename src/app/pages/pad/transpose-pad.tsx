import type { LinePiece, LineSheet } from '../../../core/lesson';
import { describeKeyIn } from '../../../core/theory';
import { Later, laterPart } from '../at-work';

const FIELDS = laterPart('Transposing', async () => (await import('./transpose')).TransposeFields);

interface TransposePadProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** Another key and other names for the notes, folded away: most lessons stay as they are. */
export function TransposePad({ piece, sheet }: TransposePadProps) {
  return (
    <details className="hand-pad">
      <summary>
        <span className="pad__heading">Transpose, note names</span>{' '}
        <span className="hand-pad__facts">{describeKeyIn(sheet.noteNames ?? 'letters', sheet.key)}</span>
      </summary>
      <Later key={piece.id} part={FIELDS} given={{ piece, sheet }} />
    </details>
  );
}
