import { listed } from '../base';
import { romanNumeral } from '../fretboard';
import { describeKeyIn, describeSignature } from '../theory';
import { keyChanges } from './key-changes';
import type { ChartReading, LineSheet } from './sheet-types';

/** Where the hand stands in the line: `hand in position I, open strings`; '' for a line without notes. */
export function handStatement(sheet: LineSheet): string {
  const fingered = sheet.fingering.notes.filter((note) => note !== null);
  const stopped = fingered.filter((note) => note.fret > 0);
  const open = fingered.length > stopped.length;
  const positions = [...new Set(stopped.map((note) => note.position))].sort((one, other) => one - other);
  if (positions.length === 0) return open ? 'open strings' : '';
  const places =
    positions.length > 3
      ? `positions ${romanNumeral(positions[0] ?? 0)} to ${romanNumeral(positions.at(-1) ?? 0)}`
      : `position${positions.length === 1 ? '' : 's'} ${listed(positions.map(romanNumeral))}`;
  return `hand in ${places}${open ? ', open strings' : ''}`;
}

/** The key at the beginning: `F major: one flat (B♭)`, in the note names of the lesson. */
export const keyStatement = ({ key, noteNames = 'letters' }: ChartReading): string =>
  `${describeKeyIn(noteNames, key)}: ${describeSignature(key, noteNames)}`;

/** The same, and where other keys begin. */
export const keysStatement = (sheet: ChartReading): string =>
  [keyStatement(sheet), ...keyChanges(sheet)].join(', ');
