import type { Part } from '../../core/playing';

/**
 * What a plain note of each part is scaled by: the balance of the mix, found by measuring loudness (see the
 * tests of the mix), with headroom for everything at once.
 */
const LEVEL: Readonly<Record<Part, number>> = {
  bass: 0.303,
  drums: 0.405,
  chops: 0.1025,
  organ: 0.0695,
  click: 0.339,
};

/** The MIDI velocity at which a voice has its plain level, the exponent of its growth, and the greatest there is. */
const PLAIN_VELOCITY = 92;
const GROWTH = 1.4;
const GREATEST_VELOCITY = 127;

/** What a note of a part is scaled by, by its MIDI velocity. */
export const levelOf = (part: Part, velocity: number): number =>
  LEVEL[part] * (velocity / PLAIN_VELOCITY) ** GROWTH;

/** What the loudest note of a part is scaled by. */
export const loudestOf = (part: Part): number => levelOf(part, GREATEST_VELOCITY);
