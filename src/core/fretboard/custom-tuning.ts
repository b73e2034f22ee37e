import { failure, midiOf, type Result, type SpelledPitch, success } from '../base';
import { formatNameIn, formatPitchIn, type Naming, parseNameIn } from '../theory';
import { STANDARD_TUNING } from './instruments';

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
 * @param naming - how the player names notes, in the text and in the answer
 * @returns open strings, the highest (string 1) first
 */
export function readTuning(
  text: string,
  naming: Naming = 'letters',
): Result<readonly SpelledPitch[], { readonly message: string }> {
  const words = text
    .trim()
    .split(/[\s,]+/u)
    .filter((word) => word !== '');
  if (words.length < LEAST_STRINGS || words.length > MOST_STRINGS) {
    return failure({
      message: `Write the open strings from the lowest to the highest, four to six of them, for example ${writeTuning(STANDARD_TUNING.openStrings, naming)}.`,
    });
  }
  const lowestFirst: SpelledPitch[] = [];
  for (const word of words) {
    const [, nameText = '', octaveText] = STRING.exec(word) ?? [];
    const name = parseNameIn(naming, nameText);
    if (!name.ok) {
      return failure({
        message: `“${word}” is not a note name; write a string as ${examples(naming)}, with an octave if you like: ${formatPitchIn(naming, LOW_E)}.`,
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
            ? `${formatPitchIn(naming, pitch)} is lower than a bass string can be tuned; the lowest is ${formatPitchIn(naming, LOW_A)}.`
            : `${formatPitchIn(naming, pitch)} is not higher than ${formatPitchIn(naming, below)}: write the strings from the lowest to the highest.`,
      });
    }
    lowestFirst.push(pitch);
  }
  return success(lowestFirst.reverse());
}

const LOW_A: SpelledPitch = { letter: 'A', alteration: 0, octave: 0 };
const LOW_E: SpelledPitch = { letter: 'E', alteration: 0, octave: 1 };

/** `E, B♭ or F♯`. */
const examples = (naming: Naming): string =>
  `${formatNameIn(naming, LOW_E)}, ${formatNameIn(naming, { letter: 'B', alteration: -1 })} or ${formatNameIn(naming, { letter: 'F', alteration: 1 })}`;

/** Open strings (the highest first) as a player writes them, the lowest first: `E A D G`. */
export const writeTuning = (openStrings: readonly SpelledPitch[], naming: Naming): string =>
  [...openStrings]
    .reverse()
    .map((pitch) => formatNameIn(naming, pitch))
    .join(' ');

/** The octave in which the name first sounds above a MIDI number. */
function octaveAbove(name: SpelledPitch, above: number): number {
  let octave = 0;
  while (midiOf({ ...name, octave }) <= above) octave += 1;
  return octave;
}
