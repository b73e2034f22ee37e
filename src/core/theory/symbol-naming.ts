import type { SpelledName } from '../base';
import { parseChord, splitSymbol } from './chords';
import { parseKey } from './keys';
import { formatName, leadingName } from './names';
import { formatNameIn, type Naming, parseNameIn } from './naming';
import { suggestChord } from './suggestions';

/** No note name is longer, in any naming. */
const LONGEST_NAME = 5;

interface Leading {
  readonly name: SpelledName;
  readonly length: number;
}

/** Every note name that a text begins with, the longest first: `Asus4` with As and with A. */
function leadingNames(naming: Naming, text: string): readonly Leading[] {
  const found: Leading[] = [];
  for (let length = Math.min(LONGEST_NAME, text.length); length > 0; length -= 1) {
    const start = text.slice(0, length);
    // `Hb5` is H with a flat fifth: nobody writes `Hb` for what is called B.
    const read = /\s|^H[b♭]/.test(start) ? null : parseNameIn(naming, start);
    if (read?.ok) found.push({ name: read.value, length });
  }
  return found;
}

/** Flats and sharps as typed, `b` and `#`, unless the text they are for has real signs already. */
const typedLike = (model: string, name: string): string =>
  /[♭♯]/.test(model) ? name : name.replace(/♭/g, 'b').replace(/♯/g, '#');

/** A symbol with its names written anew; in brackets where a `b` or `#` would else be taken for the root's. */
const written = (root: string, descriptor: string, bass: string, bracketed: boolean): string =>
  root + (bracketed ? `(${descriptor})` : descriptor) + (bass === '' ? '' : `/${bass}`);

const FORMS = [false, true] as const;

/** The bass that a text behind the last slash names, with that slash taken off; the text as it is without one. */
function splitBass(
  naming: Naming,
  text: string,
): { readonly rest: string; readonly bass: SpelledName | null } {
  const slash = text.lastIndexOf('/');
  const bass = slash < 0 ? null : parseNameIn(naming, text.slice(slash + 1));
  return bass?.ok ? { rest: text.slice(0, slash), bass: bass.value } : { rest: text, bass: null };
}

function lettersOf(naming: Naming, text: string, { name, length }: Leading): string {
  const { rest, bass } = splitBass(naming, text.slice(length));
  const root = typedLike(text, formatName(name));
  const bassText = bass ? typedLike(text, formatName(bass)) : '';
  const forms = FORMS.map((bracketed) => written(root, rest, bassText, bracketed));
  return (
    forms.find((form) => splitSymbol(form)?.rootText === root && parseChord(form).ok) ?? forms[0] ?? text
  );
}

/** Whether a text in letters is a chord, or nearly one; words are no symbols, and stay as they are typed. */
const isSymbol = (text: string): boolean => parseChord(text).ok || suggestChord(text) !== null;

/**
 * A chord symbol that is typed with the names of a naming, in letters, which every chart is stored in: German `Hm7`
 * is `Bm7`, `Asus4` stays an A, `Sol7/Si` is `G7/B`. Where the rest is not understood, names are exchanged as long as
 * there is a guess at what was meant; any other text is given back.
 */
export function symbolInLetters(naming: Naming, text: string): string {
  if (naming === 'letters') return text;
  const readings = leadingNames(naming, text).map((each) => lettersOf(naming, text, each));
  const chord = readings.find((reading) => parseChord(reading).ok);
  if (chord !== undefined) return chord;
  if (naming === 'fixed do' && parseChord(text).ok) return text;
  return readings.find(isSymbol) ?? text;
}

/**
 * A chord symbol in letters as it is typed with the names of a naming; {@link symbolInLetters} gives the same chord
 * back.
 */
export function typedSymbolIn(naming: Naming, text: string): string {
  const parts = naming === 'letters' || !isSymbol(text) ? null : splitSymbol(text);
  if (!parts) return text;
  const named = (name: SpelledName) => typedLike(text, formatNameIn(naming, name));
  const bass = parts.bass ? named(parts.bass) : '';
  const forms = FORMS.map((bracketed) => written(named(parts.root), parts.descriptor, bass, bracketed));
  const chord = parseChord(text);
  const comesBack = (form: string): boolean => {
    const back = parseChord(symbolInLetters(naming, form));
    return chord.ok && back.ok && back.value.symbol === chord.value.symbol;
  };
  return forms.find(comesBack) ?? forms[0] ?? text;
}

/** A key that is typed with the names of a naming, in letters: German `B` is `Bb`, `Fis minor` is `F# minor`. */
export function keyInLetters(naming: Naming, text: string): string {
  if (naming === 'letters') return text;
  const readings = leadingNames(naming, text).map(
    ({ name, length }) => typedLike(text, formatName(name)) + text.slice(length),
  );
  return readings.find((reading) => parseKey(reading).ok) ?? text;
}

/** A key in letters as it is typed with the names of a naming. */
export function typedKeyIn(naming: Naming, text: string): string {
  const leading = naming === 'letters' || !parseKey(text).ok ? null : leadingName(text);
  return leading ? typedLike(text, formatNameIn(naming, leading.name)) + text.slice(leading.length) : text;
}
