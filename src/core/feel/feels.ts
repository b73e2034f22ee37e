import { type Bpm, bpm, type Metre, remembered, rememberedFor, sameMetre, TICKS_PER_QUARTER } from '../base';
import { BALLAD } from './ballad';
import { BOSSA } from './bossa';
import { CALYPSO } from './calypso';
import { DISCO } from './disco';
import { EARLY_SKA } from './early-ska';
import { FUNK } from './funk';
import { ONE_DROP } from './one-drop';
import { REVIVAL_SKA } from './revival-ska';
import { ROCKERS } from './rockers';
import { ROCKSTEADY } from './rocksteady';
import { SHUFFLE_BLUES } from './shuffle-blues';
import { SOUL_BACKBEAT } from './soul-backbeat';
import { STEPPERS } from './steppers';
import { TWO_BEAT } from './two-beat';
import { type DrumWay, FEEL_IDS, type Feel, type FeelId, type FeelMetre } from './types';
import { WALKING_SWING } from './walking-swing';
import { WALTZ } from './waltz';

const BY_ID: Readonly<Record<FeelId, Feel>> = {
  'early-ska': EARLY_SKA,
  rocksteady: ROCKSTEADY,
  'one-drop': ONE_DROP,
  rockers: ROCKERS,
  steppers: STEPPERS,
  'revival-ska': REVIVAL_SKA,
  'soul-backbeat': SOUL_BACKBEAT,
  'two-beat': TWO_BEAT,
  'shuffle-blues': SHUFFLE_BLUES,
  'walking-swing': WALKING_SWING,
  bossa: BOSSA,
  disco: DISCO,
  waltz: WALTZ,
  ballad: BALLAD,
  funk: FUNK,
  calypso: CALYPSO,
};

/** Every feel, in the order in which a teacher is offered them. */
export const FEELS: readonly Feel[] = FEEL_IDS.map((id) => BY_ID[id]);

export const feelById = (id: FeelId): Feel => BY_ID[id];

/** Whether a text names a feel: for text that comes from outside. */
export const isFeelId = (text: string): text is FeelId => Object.hasOwn(BY_ID, text);

/** What a feel says about a metre; null where the feel is not played in it. */
export const feelMetre = (feel: Feel, metre: Metre): FeelMetre | null =>
  feel.metres.find((row) => sameMetre(row.metre, metre)) ?? null;

/** The metre that a feel is at home in: the first of those it is played in, 3/4 for a waltz. */
export function homeMetre({ id, metres: [home] }: Feel): Metre {
  if (home === undefined) throw new RangeError(`${id} is played in no metre`);
  return home.metre;
}

/** How many beats of a feel's tempo a beat of a metre holds; by the note value of the beat where the feel says nothing. */
export const feelBeats = (feel: Feel, metre: Metre): number =>
  feelMetre(feel, metre)?.beats ?? (feelMetre(feel, metre) === null && metre.unit === 2 ? 2 : 1);

/** The tempi of a feel in beats of a metre: 70 to 90 half notes a minute in 2/2 for 140 to 180 quarters. */
export function feelTempo(
  feel: Feel,
  metre: Metre,
): { readonly least: Bpm; readonly usual: Bpm; readonly most: Bpm } {
  const beats = feelBeats(feel, metre);
  const { least, usual, most } = feel.tempo;
  return { least: bpm(least / beats), usual: bpm(usual / beats), most: bpm(most / beats) };
}

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

const inWays = rememberedFor((_: Feel) => new Map<DrumWay, Feel>());

/**
 * The feel as the band plays it where another pattern of the drums was chosen: its eighths are swung as that pattern is.
 * The same object again for the same choice.
 */
export function feelInWay(feel: Feel, metre: Metre, way: DrumWay | undefined): Feel {
  const chosen = feelMetre(feel, metre)?.ways?.others.find(({ name }) => name === way);
  if (chosen?.swing === undefined) return feel;
  const { ratio } = chosen.swing;
  return remembered(inWays(feel), chosen.name, () => ({
    ...feel,
    swing: [{ bpm: feel.tempo.usual, ratio }],
  }));
}

/** From here on the long eighth is heard as swung; trade usage, common practice, no source. */
const LEAST_SWING = 1.15;

/** Whether a pair of eighths in this ratio, long to short, is heard as swung. */
export const isSwung = (ratio: number): boolean => ratio >= LEAST_SWING;

/**
 * Where a swung place is written straight; a fraction is kept.
 * @param place ticks from the beginning of a quarter note
 * @param ratio of its eighths, long to short
 */
export function unswung(place: number, ratio: number): number {
  const half = TICKS_PER_QUARTER / 2;
  const long = (TICKS_PER_QUARTER * ratio) / (1 + ratio);
  return place <= long ? (place * half) / long : half + ((place - long) * half) / (TICKS_PER_QUARTER - long);
}
