import { remembered } from '../../base';
import {
  ALL_KEYS,
  bestEnharmonicKey,
  findKey,
  type Key,
  keySignature,
  keysOfMode,
  transposeName,
} from '../../theory';
import type { FoundChord, FoundNote } from '../reading/found';
import type { RawKey } from './raw';

/** The keys that a signature can mean, as they sound: in all modes where the file names none. */
export function soundingKeys({ fifths, mode, interval }: RawKey): readonly Key[] {
  const written = (mode === null ? ALL_KEYS : keysOfMode(mode)).filter((key) => keySignature(key) === fifths);
  const still = interval.steps % 7 === 0 && interval.halfSteps % 12 === 0;
  return written.map((key) =>
    still ? key : bestEnharmonicKey({ tonic: transposeName(key.tonic, interval), mode: key.mode }),
  );
}

/** The key of a signature; where the file does not say major or minor, the one that chords and notes tell. */
export function keyReader(
  chords: readonly FoundChord[],
  notes: readonly FoundNote[],
): (raw: RawKey | null) => Key | null {
  const known = new Map<string, Key | null>();
  const guesses = findKey(
    chords.flatMap(({ chord }) => (chord === null ? [] : [{ chord, weight: 1 }])),
    { notes: notes.map(({ pitch, duration }) => ({ name: pitch, weight: duration })) },
  );
  const rank = (key: Key): number =>
    guesses.findIndex(
      ({ key: guess }) => keySignature(guess) === keySignature(key) && guess.mode === key.mode,
    );
  const read = (raw: RawKey): Key | null =>
    [...soundingKeys(raw)].sort((one, other) => rank(one) - rank(other))[0] ?? null;
  return (raw) => {
    if (raw === null) return null;
    return remembered(known, JSON.stringify(raw), () => read(raw));
  };
}
