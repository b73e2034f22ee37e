import { barName } from '../../../core/base';
import { signatureText } from '../../../core/chart';
import {
  fitsBehind,
  isOwn,
  type LineBar,
  type LinePiece,
  MOST_PARKED,
  putParkedBack,
} from '../../../core/lesson';
import { formatNameIn, type Naming } from '../../../core/theory';
import { useAtWork, useEditor } from '../at-work';

const notesOf = (bar: LineBar, naming: Naming): string =>
  bar.notes.map(({ pitch }) => formatNameIn(naming, pitch)).join(' ');

const counted = (count: number): string => (count === 1 ? 'One bar is' : `${count} bars are`);

interface ParkedProps {
  readonly piece: LinePiece;
  readonly noteNames: Naming;
}

/** Bars of the line that the chart has no place for: what they hold, and how they come back. */
export function ParkedBars({ piece, noteNames }: ParkedProps) {
  // What was only composed comes back by itself with its chords, or is composed again.
  const parked = piece.parked.filter(isOwn);
  const count = parked.length;
  return (
    <div className={count > 0 ? 'parked-bars harmony' : 'parked-bars parked-bars--none'}>
      <p role="status">
        {count > 0 &&
          `${counted(count)} parked: the chart has no place for ${count === 1 ? 'its' : 'their'} notes now. They are kept outside the line, and come back when their chords are written again.`}
      </p>
      {count > 0 && (
        <details className="chords-at-work">
          <summary>What is parked</summary>
          <ul aria-label="Parked bars">
            {parked.map((bar) => (
              <li key={bar.id}>
                <Parked bar={bar} noteNames={noteNames} />
              </li>
            ))}
          </ul>
          {piece.parked.length >= MOST_PARKED && (
            <p>More than {MOST_PARKED} are not kept: the oldest give way, those first that were composed.</p>
          )}
          <p>Choose a bar on the sheet to put one back behind it.</p>
        </details>
      )}
    </div>
  );
}

function Parked({ bar, noteNames }: { readonly bar: LineBar; readonly noteNames: Naming }) {
  return (
    <>
      <span className="chords-at-work__numeral">{signatureText(bar.harmony, noteNames)}</span>{' '}
      {notesOf(bar, noteNames)}
    </>
  );
}

interface PutBackProps extends ParkedProps {
  /** Index of the chosen bar, and its number. */
  readonly bar: number;
  readonly number: number;
  /** After a bar was put back; the index where it is. */
  readonly onBack: (index: number) => void;
}

/** In the drawer of a bar: what the last change parked, and the parked bars that can stand behind this one. */
export function PutBack({ piece, noteNames, bar, number, onBack }: PutBackProps) {
  const { session } = useAtWork();
  const justParked = useEditor((state) => state.justParked);
  const just = piece.parked.filter(({ id }) => justParked.includes(id));
  const back = ({ id }: LineBar) => {
    session.lessons.change((each) => putParkedBack(each, piece.id, id, bar), {
      label: 'put a parked bar back',
    });
    const now = session.lessons.getState().lesson.pieces.find((each) => each.id === piece.id);
    if (now?.kind === 'line') onBack(now.bars.findIndex((each) => each.id === id));
  };
  return (
    <>
      <p role="status" className="bar-chords__parked">
        {just.length > 0 &&
          `${counted(just.length)} parked, kept outside the line, because the chart has no place for ${just.length === 1 ? 'its' : 'their'} notes now: ${just.map((each) => `${signatureText(each.harmony, noteNames)} (${notesOf(each, noteNames)})`).join(', ')}. Undo brings ${just.length === 1 ? 'it' : 'them'} back, and so do the chords.`}
      </p>
      {piece.parked.length > 0 && (
        <details className="chords-at-work bar-chords__parked">
          <summary>Parked bars: {piece.parked.length}</summary>
          <ul aria-label={`Parked bars to put behind ${barName(number)}`}>
            {piece.parked.map((each) => (
              <li key={each.id}>
                <Parked bar={each} noteNames={noteNames} />{' '}
                {fitsBehind(piece, each, bar) ? (
                  <button
                    type="button"
                    className="word"
                    aria-label={`Put ${signatureText(each.harmony, noteNames)} (${notesOf(each, noteNames)}) back behind ${barName(number)}`}
                    onClick={() => back(each)}
                  >
                    Put it back here
                  </button>
                ) : (
                  '(put back behind a bar of its length)'
                )}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
