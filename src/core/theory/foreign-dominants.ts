import { sameName } from '../base';
import { nameOfDegree } from './degrees';
import { keyNames } from './keys';
import type { Chord, Key } from './types';

export const leadsTo = (chord: Chord, next: Chord): boolean =>
  sameName(next.root, nameOfDegree(chord.root, { step: 4, alteration: 0 }));

/**
 * Whether a dominant with a note from outside the key's signature goes where dominants lead, a fifth down: F7 to B♭ in
 * F major, A7 to Dm in D minor.
 */
export const isForeignDominantOf = (chord: Chord, next: Chord, key: Key): boolean =>
  chord.family === 'dominant' &&
  leadsTo(chord, next) &&
  chord.tones.some(({ name }) => !keyNames(key).some((own) => sameName(own, name)));
