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

/** What a note is scaled by. @param velocity - of MIDI, 1 to 127 */
export const gainOf = ({ part, velocity }: { readonly part: Part; readonly velocity: number }): number =>
  LEVEL[part] * (velocity / PLAIN_VELOCITY) ** GROWTH;

/** What the loudest note of a part is scaled by. */
export const loudestOf = (part: Part): number => gainOf({ part, velocity: GREATEST_VELOCITY });
