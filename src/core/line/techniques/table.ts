import { TECHNIQUES, type Technique } from '../types';
import { ANTICIPATION } from './anticipation';
import { APPROACH_NOTE } from './approach-note';
import { CHORD_TONES } from './chord-tones';
import type { Freedom } from './freedoms';
import { LONG_SILENCES } from './long-silences';
import { OCTAVE } from './octave';
import { SCALE_STEPS } from './scale-steps';
import { SILENT_ONE } from './silent-one';
import type { TechniqueRow } from './types';

/** The techniques by name. Whatever the program knows of one stands in its row; everything else loops over the rows. */
export const TECHNIQUE_TABLE: Readonly<Record<Technique, TechniqueRow>> = {
  'chord tones': CHORD_TONES,
  'scale steps': SCALE_STEPS,
  'beat one silent': SILENT_ONE,
  'long silences': LONG_SILENCES,
  octave: OCTAVE,
  'approach note': APPROACH_NOTE,
  anticipation: ANTICIPATION,
};

/** The rows in the order in which a teacher is offered them. */
export const TECHNIQUE_ROWS: readonly TechniqueRow[] = TECHNIQUES.map((each) => TECHNIQUE_TABLE[each]);

/** Everything that a set of techniques allows. */
export const freedomsOf = (techniques: ReadonlySet<Technique>): ReadonlySet<Freedom> =>
  new Set(TECHNIQUE_ROWS.flatMap((row) => (techniques.has(row.technique) ? row.allows : [])));
