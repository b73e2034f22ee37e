import type { DrumSound } from '../../core/feel';
import type { PerformanceEvent } from '../../core/performance';
import { PARTS, type Part } from '../../core/playing';

/**
 * Hats and ride have a stem of their own, because they stand to the side of the kit, and the count-in, because it is
 * heard when the click is switched off.
 */
export type Stem = Part | 'hats' | 'count-in';
export const STEMS: readonly Stem[] = [...PARTS, 'hats', 'count-in'];

const TO_THE_SIDE: ReadonlySet<DrumSound> = new Set(['closed hat', 'open hat', 'foot hat', 'ride']);

/** The stem that an event sounds in. */
export function stemOf(event: PerformanceEvent): Stem {
  if (event.part === 'click') return event.countIn ? 'count-in' : 'click';
  return event.part === 'drums' && TO_THE_SIDE.has(event.sound) ? 'hats' : event.part;
}

/** The part that a stem belongs to; null for the count-in. */
export const partOf = (stem: Stem): Part | null =>
  stem === 'count-in' ? null : stem === 'hats' ? 'drums' : stem;

/** Samples of every stem, all of one length. */
export type Stems = Readonly<Record<Stem, Float32Array>>;

/** @param take - gives samples that are all zero */
export const silence = (
  length: number,
  take = (samples: number): Float32Array => new Float32Array(samples),
): Record<Stem, Float32Array> => ({
  bass: take(length),
  drums: take(length),
  chops: take(length),
  organ: take(length),
  click: take(length),
  hats: take(length),
  'count-in': take(length),
});
