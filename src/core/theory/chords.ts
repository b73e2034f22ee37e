import { failure, type Result, remembering, type SpelledName, sameName, success } from '../base';
import { nameOfDegree } from './degrees';
import { transposeName } from './intervals';
import { formatName, leadingName } from './names';
import { readDescriptor } from './symbol-reader';
import type { Chord, Interval } from './types';

/** A chord symbol taken apart; the texts joined with the slash give the symbol as typed. */
export interface SymbolParts {
  readonly root: SpelledName;
  readonly rootText: string;
  readonly descriptor: string;
  /** Null without a slash. */
  readonly bass: SpelledName | null;
  readonly bassText: string;
}

/** Takes a symbol apart at its root and its slash (the one in `6/9` is none); null without a root. */
export function splitSymbol(text: string): SymbolParts | null {
  const leading = leadingName(text);
  if (!leading) return null;
  const rest = text.slice(leading.length);
  const slash = rest.lastIndexOf('/');
  const bassText = slash < 0 ? '' : rest.slice(slash + 1);
  const bass = leadingName(bassText);
  const hasBass = bass !== null && bass.length === bassText.length;
  return {
    root: leading.name,
    rootText: text.slice(0, leading.length),
    descriptor: hasBass ? rest.slice(0, slash) : rest,
    bass: hasBass ? bass.name : null,
    bassText: hasBass ? bassText : '',
  };
}

/**
 * A typed text as a sentence or a drawing shows it: a long one, which is no chord, by its first characters. No character
 * is cut in two.
 * @param most - characters that are shown
 */
export function shortened(text: string, most = 20): string {
  if (text.length <= most) return text;
  const characters = [...text];
  return characters.length <= most ? text : `${characters.slice(0, most).join('')}…`;
}

/** Why a text is no chord symbol, in one sentence with its names as it is typed, which another naming may write otherwise. */
export function unreadableSymbol(
  text: string,
  root: string | null,
  examples: string,
): { readonly message: string } {
  const shown = shortened(text);
  if (text === '') return { message: 'A chord symbol is missing here.' };
  return {
    message: root
      ? `“${shown}” begins like a chord on ${root}, but the rest is not understood. Write for example ${root}m7 or ${root}7.`
      : `“${shown}” is not a chord symbol. Write for example ${examples}.`,
  };
}

function problemWith(text: string): { readonly message: string } {
  if (/^[a-g]/.test(text)) {
    return {
      message: `“${shortened(text)}” does not begin with a capital letter. Chord symbols do: A minor is Am, A major is A.`,
    };
  }
  if (/(?:^|\/)H/.test(text)) {
    return {
      message: `“${shortened(text)}” has an H: in letters the German H is B, and the German B is B♭. German names can be chosen as note names.`,
    };
  }
  const parts = splitSymbol(text);
  return unreadableSymbol(text, parts && formatName(parts.root), 'Dm7, B♭maj7 or F/A');
}

/** More characters than any chord symbol has, with all its tensions in brackets. */
export const LONGEST_SYMBOL = 80;

/**
 * Reads a chord symbol as musicians write it (`Bbm7`, `B♭-7`, `F#m7b5`, `CΔ`, `F/A`). The symbol comes back
 * normalised for drawing, so that two spellings of one chord look the same. Never throws; the problem is one
 * sentence.
 */
export const parseChord: (text: string) => Result<Chord, { readonly message: string }> = remembering(
  (text) => {
    const trimmed = text.trim();
    if (trimmed.length > LONGEST_SYMBOL) return failure({ message: tooLong(trimmed) });
    const parts = splitSymbol(trimmed);
    const descriptor = parts && readDescriptor(parts.descriptor);
    if (!parts || !descriptor) return failure(problemWith(trimmed));
    const { root } = parts;
    const bass = parts.bass ?? root;
    return success({
      symbol: drawnSymbol(root, descriptor.suffix, bass),
      root,
      bass,
      tones: descriptor.degrees.map((degree) => ({ degree, name: nameOfDegree(root, degree) })),
      family: descriptor.family,
    });
  },
);

const tooLong = (text: string): string =>
  `“${shortened(text)}” is too long for a chord symbol (${text.length} characters; ${LONGEST_SYMBOL} at most). What is not a chord goes behind a semicolon.`;

function drawnSymbol(root: SpelledName, suffix: string, bass: SpelledName): string {
  // `E♭♭5` would read as E♭ with a flat fifth.
  const drawn = suffix === '5' && Math.abs(root.alteration) === 2 ? '(no3)' : suffix;
  return formatName(root) + drawn + (sameName(root, bass) ? '' : `/${formatName(bass)}`);
}

/** The chord an interval away, every note spelled by its function above the new root. */
export function transposeChord(chord: Chord, interval: Interval): Chord {
  const slash = sameName(chord.root, chord.bass) ? '' : `/${formatName(chord.bass)}`;
  const suffix = chord.symbol.slice(formatName(chord.root).length, slash === '' ? undefined : -slash.length);
  const root = transposeName(chord.root, interval);
  const bass = transposeName(chord.bass, interval);
  return {
    symbol: drawnSymbol(root, suffix === '(no3)' ? '5' : suffix, bass),
    root,
    bass,
    tones: chord.tones.map(({ degree }) => ({ degree, name: nameOfDegree(root, degree) })),
    family: chord.family,
  };
}
