import { BROKEN_RUN } from './broken-run';
import { CLOSING } from './closing';
import { DOWNBEAT } from './downbeat';
import { DROP_ON_THREE } from './drop';
import { EARLY_ROOT } from './early-root';
import { EVENNESS } from './evenness';
import { EXPOSED_NOTES } from './exposed-notes';
import { FIFTH_BELOW } from './fifth-below';
import { LEAPS } from './leaps';
import { MINOR_SEVENTH } from './minor-seventh';
import { RULE_NUMBERS, type RuleNumber } from './numbers';
import { RESOLUTION } from './resolution';
import { RINGING } from './ringing';
import { SHARED_RHYTHM } from './shared-rhythm';
import { TRITONE_LEAP } from './tritone';
import type { Rule } from './types';
import { WRONG_COLOURS } from './wrong-colours';
import { WRONG_NOTES } from './wrong-notes';

/** The rules by number. Whatever the program knows of a rule stands in its row; everything else loops over the rows. */
export const RULES: Readonly<Record<RuleNumber, Rule>> = {
  1: EXPOSED_NOTES,
  2: WRONG_NOTES,
  3: MINOR_SEVENTH,
  4: RESOLUTION,
  5: TRITONE_LEAP,
  6: EARLY_ROOT,
  7: BROKEN_RUN,
  8: LEAPS,
  9: DOWNBEAT,
  10: CLOSING,
  11: FIFTH_BELOW,
  12: EVENNESS,
  13: SHARED_RHYTHM,
  14: DROP_ON_THREE,
  15: RINGING,
  16: WRONG_COLOURS,
};

export const RULE_ROWS: readonly Rule[] = RULE_NUMBERS.map((number) => RULES[number]);
