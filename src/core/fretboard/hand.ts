import { type Bpm, beatTicks, fret, type Metre } from '../base';
import type { HandSettings } from './types';

/**
 * Hands by size, in millimetres: common practice, no source. The adult's reach lets frets 1 to 4 of a long
 * scale (130 mm) be held at the limit; the comfortable span is that of frets 5 to 8 (103 mm).
 */
export const HAND_SPANS = {
  child: { comfortableSpan: 90, reach: 110 },
  adult: { comfortableSpan: 105, reach: 130 },
} as const;

export const DEFAULT_HAND: HandSettings = {
  openStrings: 'allow',
  ...HAND_SPANS.adult,
  highestFret: fret(12),
};

/** Ticks that pass in a second at this tempo, which counts the metre's beat (dotted in compound time). */
export const ticksPerSecond = (tempo: Bpm, metre: Metre): number => (tempo * beatTicks(metre)) / 60;
