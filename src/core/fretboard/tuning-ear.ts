import { midiOf, type SpelledPitch } from '../base';

/** A4, to which instruments are tuned (ISO 16). */
const A4 = { hz: 440, midi: 69 } as const;

/** Hz of a note in equal temperament. */
export const hzOf = (midi: number): number => A4.hz * 2 ** ((midi - A4.midi) / 12);

/** Cents that count as in tune: hardly anyone hears less on a bass (common practice, no source). */
const IN_TUNE = 5;

/** How a string stands that is being tuned. */
export interface HeardString {
  /** Index into the open strings. */
  readonly string: number;
  /** Hundredths of a half step; above 0 it is too high. */
  readonly cents: number;
  readonly verdict: 'in tune' | 'too low' | 'too high';
}

/** The open string nearest to what is heard; null where the instrument has none. */
export function nearestString(hz: number, openStrings: readonly SpelledPitch[]): HeardString | null {
  const distances = openStrings.map((pitch, string) => ({
    string,
    cents: 1200 * Math.log2(hz / hzOf(midiOf(pitch))),
  }));
  const [nearest] = distances.sort((one, other) => Math.abs(one.cents) - Math.abs(other.cents));
  if (nearest === undefined) return null;
  const cents = Math.round(nearest.cents);
  const verdict = Math.abs(cents) <= IN_TUNE ? 'in tune' : cents < 0 ? 'too low' : 'too high';
  return { string: nearest.string, cents, verdict };
}
