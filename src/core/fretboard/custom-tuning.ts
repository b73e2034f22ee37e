import { failure, midiOf, type Result, type SpelledPitch, success } from '../base';
import { formatPitch, parseName } from '../theory';

/** The lowest pitch that a lowest string without an octave can mean: A0, a whole step below the low B. */
const LOWEST = 21;
const LEAST_STRINGS = 4;
const MOST_STRINGS = 6;
/** A string name with an octave of its own (`Eb1`), or without. */
const STRING = /^(.*?)([0-4])?$/u;

/**
 * Reads a tuning as a player writes it, the lowest string first, in sounding pitch: `D A D G`, or with octaves
 * `D1 A1 D2 G2`. Without an octave the lowest string lies from A0 to G♯1 and each further one is the nearest
 * such pitch above the string before it.
 * @returns open strings, the highest (string 1) first
 */
export function readTuning(text: string): Result<readonly SpelledPitch[], { readonly message: string }> {
  const words = text
    .trim()
    .split(/[\s,]+/u)
    .filter((word) => word !== '');
  if (words.length < LEAST_STRINGS || words.length > MOST_STRINGS) {
    return failure({
      message: `Write the open strings from the lowest to the highest, four to six of them, for example E A D G.`,
    });
  }
  const lowestFirst: SpelledPitch[] = [];
  for (const word of words) {
    const [, nameText = '', octaveText] = STRING.exec(word) ?? [];
    const name = parseName(nameText);
    if (!name.ok) {
      return failure({
        message: `“${word}” is not a note name; write a string as E, B♭ or F♯, with an octave if you like: E1.`,
      });
    }
    const below = lowestFirst.at(-1);
    const above = below === undefined ? LOWEST - 1 : midiOf(below);
    const octave =
      octaveText === undefined ? octaveAbove({ ...name.value, octave: 0 }, above) : Number(octaveText);
    const pitch = { ...name.value, octave };
    if (midiOf(pitch) <= above) {
      return failure({
        message:
          below === undefined
            ? `${formatPitch(pitch)} is lower than a bass string can be tuned; the lowest is A0.`
            : `${formatPitch(pitch)} is not higher than ${formatPitch(below)}: write the strings from the lowest to the highest.`,
      });
    }
    lowestFirst.push(pitch);
  }
  return success(lowestFirst.reverse());
}

/** The octave in which the name first sounds above a MIDI number. */
function octaveAbove(name: SpelledPitch, above: number): number {
  let octave = 0;
  while (midiOf({ ...name, octave }) <= above) octave += 1;
  return octave;
}
