import type { Feel } from '../feel';
import { type Level, TECHNIQUE_ROWS, type Technique } from '../line';

/** What a line in a feel teaches at a level as long as nobody chose: each technique that belongs to both. */
export const usualTechniques = (feel: Feel, level: Level): readonly Technique[] =>
  TECHNIQUE_ROWS.filter((row) => row.belongs(feel) && row.from <= level).map(({ technique }) => technique);
