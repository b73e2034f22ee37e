import { type Accidental, accidentalsOf, type WrittenPitch } from '../../core/notation';
import { type Key, keySignature, sameKey } from '../../core/theory';

/** A key beyond seven sharps or flats has no signature; its accidentals stand at the notes. */
export function signatureOf(key: Key): number {
  const fifths = keySignature(key);
  return Math.abs(fifths) <= 7 ? fifths : 0;
}

/** The signature that was in force before, where it changes. */
export function signatureChange(
  before: Key | undefined,
  now: Key | undefined,
): { readonly from: number } | null {
  if (!before || !now) return null;
  const from = signatureOf(before);
  return from === signatureOf(now) ? null : { from };
}

/** Accidentals start afresh with every signature. */
export function lineAccidentals(
  bars: readonly (readonly WrittenPitch[])[],
  keys: readonly Key[],
): readonly (readonly (Accidental | null)[])[] {
  const signs: (readonly (Accidental | null)[])[] = [];
  while (signs.length < bars.length) {
    const first = signs.length;
    const key = keys[first];
    if (!key) break;
    const change = keys.findIndex((other, index) => index > first && !sameKey(other, key));
    signs.push(...accidentalsOf(bars.slice(first, change < 0 ? bars.length : change), key));
  }
  return signs;
}
