import type { SpelledName, SpelledPitch } from '../../src/core/base';
import { type Chord, formatName, type Key, parseChord, parseKey, parseName } from '../../src/core/theory';

/** The tests' own notation: names, chords and keys as text; anything unreadable fails the test at once. */
function must<Value>(
  read: { ok: true; value: Value } | { ok: false; problem: { message: string } },
  text: string,
): Value {
  if (!read.ok) throw new Error(`${text}: ${read.problem.message}`);
  return read.value;
}

export const name = (text: string): SpelledName => must(parseName(text), text);
export const chord = (text: string): Chord => must(parseChord(text), text);
export const key = (text: string): Key => must(parseKey(text), text);
export const chords = (text: string): readonly Chord[] => text.split(/\s+/).map(chord);

/** `Bb1` or `B♭1`. */
export const pitch = (text: string): SpelledPitch => ({
  ...name(text.replace(/-?\d+$/, '')),
  octave: Number(/-?\d+$/.exec(text)?.[0]),
});

export const written = (names: readonly SpelledName[]): string => names.map(formatName).join(' ');
