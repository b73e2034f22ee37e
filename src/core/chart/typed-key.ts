import { formatName, type Key, type Mode } from '../theory';

/** The word of a key with what sets it off, so that every character is in one of the two: `key: ` and `Bb`. */
interface SplitKey {
  readonly word: string;
  readonly name: string;
}

/** Cuts what stands in the brackets of a key; null where no key stands there. */
export function splitKey(text: string): SplitKey | null {
  const word = /^key\s*(?::\s*)?/i.exec(text)?.[0];
  return word === undefined ? null : { word, name: text.slice(word.length) };
}

/** A key as it is typed in a chart: `(key: Bb)`, `(key: F#m)`, `(key: D dorian)`. */
export const typedKey = ({ tonic, mode }: Key): string =>
  `(key: ${formatName(tonic).replace(/♭/g, 'b').replace(/♯/g, '#')}${ending(mode)})`;

function ending(mode: Mode): string {
  if (mode === 'major') return '';
  return mode === 'minor' ? 'm' : ` ${mode}`;
}
