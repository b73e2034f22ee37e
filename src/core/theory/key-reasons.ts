import { capitalised, listed } from '../base';
import { describeKeyIn, formatChordIn, formatNameIn, type Naming } from './naming';
import type { Chord, Key } from './types';

/** What speaks for a key besides the chords that belong to it. */
interface Home {
  readonly begins: boolean;
  readonly ends: boolean;
  /** A dominant that goes home. */
  readonly cadence: Chord | null;
}

/** How many chords there are, which different ones, and which of these do not belong to the key. */
interface Belonging {
  readonly count: number;
  readonly kinds: readonly Chord[];
  readonly strangers: readonly Chord[];
}

/** Why chords are heard in a key, in one sentence. */
export function reasonFor(
  key: Key,
  { count, kinds, strangers }: Belonging,
  { begins, ends, cadence }: Home,
  naming: Naming,
): string {
  const strange = [...new Set(strangers.map((chord) => formatChordIn(naming, chord)))];
  const distinct = kinds.length;
  const name = describeKeyIn(naming, key);
  const tonic = formatNameIn(naming, key.tonic);
  const belonging =
    strange.length === 0
      ? distinct === 1
        ? `the only chord belongs to ${name}`
        : `every chord belongs to ${name}`
      : strange.length <= 3 && strange.length < distinct
        ? `every chord except ${listed(strange)} belongs to ${name}`
        : `${distinct - strange.length} of ${distinct} different chords belong to ${name}`;
  const home =
    begins && ends && count > 1
      ? `it begins and ends on ${tonic}`
      : begins
        ? `it begins on ${tonic}`
        : ends
          ? `it ends on ${tonic}`
          : null;
  const leads = cadence ? `${formatChordIn(naming, cadence)} leads back to ${tonic}` : null;
  const sentence = listed([belonging, home, leads].filter((part) => part !== null));
  return `${capitalised(sentence)}.`;
}
