import { formatName, type Key, type Mode } from '../theory';

/** A key as it is typed in a chart: `(key: Bb)`, `(key: F#m)`, `(key: D dorian)`. */
export const typedKey = ({ tonic, mode }: Key): string =>
  `(key: ${formatName(tonic).replace(/♭/g, 'b').replace(/♯/g, '#')}${ending(mode)})`;

function ending(mode: Mode): string {
  if (mode === 'major') return '';
  return mode === 'minor' ? 'm' : ` ${mode}`;
}
