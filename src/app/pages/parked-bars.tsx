import { signatureText } from '../../core/chart';
import type { LineBar, LinePiece } from '../../core/lesson';
import { formatNameIn, type Naming } from '../../core/theory';

const notesOf = (bar: LineBar, naming: Naming): string =>
  bar.notes.map(({ pitch }) => formatNameIn(naming, pitch)).join(' ');

/** Bars of the line that the chart has no place for: what they hold, so that they can be called back. */
export function ParkedBars({ piece, noteNames }: { readonly piece: LinePiece; readonly noteNames: Naming }) {
  if (piece.parked.length === 0) return null;
  return (
    <details className="chords-at-work">
      <summary>Parked bars: {piece.parked.length}</summary>
      <p>They come back when their chords are written again.</p>
      <ul aria-label="Parked bars">
        {piece.parked.map((bar) => (
          <li key={bar.id}>
            <span className="chords-at-work__numeral">{signatureText(bar.harmony, noteNames)}</span>{' '}
            {notesOf(bar, noteNames)}
          </li>
        ))}
      </ul>
    </details>
  );
}
