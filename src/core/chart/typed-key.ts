import { formatName, type Key } from '../theory';

/** A key as it is typed in a chart: `(key: Bb)`, `(key: F#m)`. */
export const typedKey = ({ tonic, mode }: Key): string =>
  `(key: ${formatName(tonic).replace(/♭/g, 'b').replace(/♯/g, '#')}${mode === 'minor' ? 'm' : ''})`;
