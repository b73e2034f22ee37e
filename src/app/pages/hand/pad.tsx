import { type InstrumentSettings, type LinePiece, playingHand } from '../../../core/lesson';
import { Later, laterPart, useLesson } from '../at-work';
import { scaleName, sizeOf } from './words';

const FIELDS = laterPart('The settings of the hand', async () => (await import('./fields')).HandFields);

/** What the summary says while the rest is folded away. */
function summaryOf(instrument: InstrumentSettings, piece: LinePiece): string {
  const { hand, level } = piece;
  const size = sizeOf(hand);
  const highest = playingHand(piece).highestFret;
  return [
    `${instrument.frets} frets`,
    scaleName(instrument.scaleLength),
    ...(instrument.leftHanded === true ? ['left-handed'] : []),
    size === 'own' ? `${hand.comfortableSpan} mm hand` : `${size}’s hand`,
    `up to fret ${highest}${highest < hand.highestFret ? ` at level ${level}` : ''}`,
  ].join(', ');
}

/** Instrument and hand of the piece, folded away under one line that says what is set. */
export function HandPad({ piece }: { readonly piece: LinePiece }) {
  const { instrument } = useLesson();
  return (
    <details className="hand-pad">
      <summary>
        <span className="pad__heading">Bass and hand</span>{' '}
        <span className="hand-pad__facts">{summaryOf(instrument, piece)}</span>
      </summary>
      <Later part={FIELDS} given={{ piece }} />
    </details>
  );
}
