import type { SpelledName } from '../base';
import { formatName, type Interval, parseChord, parseKey, splitSymbol, transposeName } from '../theory';
import { splitSlashes } from './bar-reader';
import { rewriteTokens } from './rewrite';
import type { Token } from './scanner';
import { splitKey } from './typed-key';

/** Writes a name with the accidental signs that its text is written in. */
type NameWriter = (name: SpelledName) => string;

const typed: NameWriter = (name) => formatName(name).replace(/♭/g, 'b').replace(/♯/g, '#');

/**
 * The chart text with every chord symbol and key moved by an interval. Layout, comments, section names and
 * whatever is not understood stay letter for letter; the rest of a symbol keeps its own way of writing.
 * Accidentals are written ♭ and ♯ where the text does so already, else b and #.
 */
export function transposeChartText(text: string, interval: Interval): string {
  const write = /[♭♯]/.test(text) ? formatName : typed;
  return rewriteTokens(text, (token) => transposeToken(token, interval, write));
}

/** The token in its new key, or null where nothing changes. */
function transposeToken(token: Token, interval: Interval, write: NameWriter): string | null {
  if (token.kind === 'word') {
    const { push, chord, beats } = splitSlashes(token.text);
    const parts = splitSymbol(chord);
    if (!parts || !parseChord(chord).ok) return null;
    const bass = parts.bass ? `/${write(transposeName(parts.bass, interval))}` : '';
    return push + write(transposeName(parts.root, interval)) + parts.descriptor + bass + '/'.repeat(beats);
  }
  if (token.kind === 'directive') {
    const key = splitKey(token.text);
    const read = key && parseKey(key.name);
    const parts = splitSymbol(key?.name ?? '');
    if (!read?.ok || !parts) return null;
    return `(${key?.word ?? ''}${write(transposeName(read.value.tonic, interval))}${parts.descriptor})`;
  }
  return null;
}
