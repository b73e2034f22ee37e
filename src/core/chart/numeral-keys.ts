import { type Key, parseKey, sameKey } from '../theory';
import { isNumeral } from './bar-reader';
import type { Chart } from './types';

/** Keys that lie well under the hand on a bass in standard tuning, the easiest first (common practice, no source). */
const EASY: Readonly<Record<'major' | 'minor', string>> = {
  major: 'C G F D A Bb E Eb',
  minor: 'Am Em Dm Gm Bm Cm F#m Fm',
};
/** As many keys are offered at once. */
const MOST = 4;

/** Numerals that say which mode they count in: the tonic's own first, else those that only one mode has. */
const TONIC = /^[iI1](?![vViI])/;
const MINOR_TONIC = /^(?:i(?![iv])|1(?:-|m(?!aj)))/;
const OF_MAJOR = /^(?:ii|iii|vi)(?![iv])|^[236](?:-|m(?!aj))/;
const OF_MINOR = /^(?:iv|v|III|VI|VII)(?![ivIV])|^[45](?:-|m(?!aj))/;

function modeOf(numerals: readonly string[]): 'major' | 'minor' {
  const tonics = numerals.filter((text) => TONIC.test(text));
  const decisive = tonics.length > 0 ? tonics : numerals;
  const minor = tonics.length > 0 ? MINOR_TONIC : OF_MINOR;
  const points = decisive.filter((text) => minor.test(text)).length;
  const against = decisive.filter((text) => (tonics.length > 0 ? !minor.test(text) : OF_MAJOR.test(text)));
  return points > against.length ? 'minor' : 'major';
}

/**
 * The keys in which the numerals of a chart can be read that names none, the likeliest first; empty where no numeral
 * waits for a key.
 * @param heard - keys that speak for themselves: of the chords beside the numerals, of other pieces
 */
export function numeralKeys({ bars }: Chart, heard: readonly Key[] = []): readonly Key[] {
  const numerals = bars.flatMap(({ spans }) =>
    spans.flatMap(({ harmony }) =>
      harmony.kind === 'unknown' && isNumeral(harmony.text) ? [harmony.text] : [],
    ),
  );
  if (numerals.length === 0) return [];
  const easy = EASY[modeOf(numerals)].split(' ').flatMap((text) => {
    const key = parseKey(text);
    return key.ok ? [key.value] : [];
  });
  const all = [...heard, ...easy];
  return all.filter((key, index) => all.findIndex((other) => sameKey(other, key)) === index).slice(0, MOST);
}
