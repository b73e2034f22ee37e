import { type Bpm, type Metre, sameMetre } from '../base';
import { EARLY_SKA } from './early-ska';
import { ONE_DROP } from './one-drop';
import type { Feel, FeelId, FeelMetre } from './types';

/** Every feel, in the order in which a teacher is offered them. */
export const FEELS: readonly Feel[] = [EARLY_SKA, ONE_DROP];

const BY_ID: Readonly<Record<FeelId, Feel>> = { 'early-ska': EARLY_SKA, 'one-drop': ONE_DROP };

export const feelById = (id: FeelId): Feel => BY_ID[id];

/** Whether a text names a feel: for text that comes from outside. */
export const isFeelId = (text: string): text is FeelId => Object.hasOwn(BY_ID, text);

/** What a feel says about a metre; null where the feel is not played in it. */
export const feelMetre = (feel: Feel, metre: Metre): FeelMetre | null =>
  feel.metres.find((row) => sameMetre(row.metre, metre)) ?? null;

/**
 * Long to short within a pair of eighths at a tempo: 1 is straight, 2 the triplet shuffle. Linear between the
 * entries of the feel's table and constant beyond its ends.
 */
export function swingRatio(feel: Feel, tempo: Bpm): number {
  let below = feel.swing[0];
  if (!below || tempo <= below.bpm) return below?.ratio ?? 1;
  for (const above of feel.swing) {
    if (tempo <= above.bpm) {
      const share = (tempo - below.bpm) / Math.max(1, above.bpm - below.bpm);
      return below.ratio + share * (above.ratio - below.ratio);
    }
    below = above;
  }
  return below.ratio;
}
