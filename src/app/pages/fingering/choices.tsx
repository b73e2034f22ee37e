import { useState } from 'react';
import { barName } from '../../../core/base';
import { deriveSheet } from '../../../core/lesson';
import { useNoteNames } from '../at-work';
import { BarFingering } from './bar';
import { type BarOnNeck, placesText } from './bar-on-neck';
import { Elsewhere } from './elsewhere';

/** Where and how a bar is played: its notes with their pins, the hand's position, and other ways to play it. */
export function FingeringChoices({ piece, instrument, bar }: Omit<BarOnNeck, 'sheet'>) {
  const sheet = deriveSheet(piece, instrument, useNoteNames());
  const [open, setOpen] = useState(false);
  const shown = sheet.kind === 'line' ? sheet.bars[bar] : undefined;
  if (sheet.kind !== 'line' || shown === undefined || shown.notes.length === 0) return null;
  const number = shown.written.number;
  const places = placesText(
    sheet,
    shown.notes.map(({ fingered }) => fingered),
  );
  const pinned = shown.notes.some(({ note }) => note.pins !== undefined);
  return (
    <details className="fingering" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="fingering__title">Fingering of {barName(number)}</span>{' '}
        <span className="fingering__places">
          {places}
          {pinned && ', pinned: the bar is kept'}
        </span>
      </summary>
      {open && (
        <div className="fingering__body">
          <BarFingering piece={piece} instrument={instrument} sheet={sheet} bar={bar} />
          <Elsewhere piece={piece} instrument={instrument} sheet={sheet} bar={bar} />
        </div>
      )}
    </details>
  );
}
