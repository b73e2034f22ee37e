import type { LineSheet } from '../lesson';
import { type Key, keySignature } from '../theory';

/** The key in force at a written bar: the chart's own where it names one, else the piece's. */
export const keyAt = (sheet: LineSheet, index: number): Key => sheet.chart.bars[index]?.key ?? sheet.key;

/** Sharps or flats of the signature; a key beyond seven has none, its accidentals stand at the notes. */
export function signatureOf(key: Key): number {
  const fifths = keySignature(key);
  return Math.abs(fifths) <= 7 ? fifths : 0;
}
