import type { FeelId } from '../types';
import { BALLAD_PHRASES } from './ballad';
import { BOSSA_PHRASES } from './bossa';
import { CALYPSO_PHRASES } from './calypso';
import { DISCO_PHRASES } from './disco';
import { EARLY_SKA_PHRASES } from './early-ska';
import { FUNK_PHRASES } from './funk';
import { ONE_DROP_PHRASES } from './one-drop';
import { REVIVAL_SKA_PHRASES } from './revival-ska';
import { ROCKERS_PHRASES } from './rockers';
import { ROCKSTEADY_PHRASES } from './rocksteady';
import { SHUFFLE_BLUES_PHRASES } from './shuffle-blues';
import { SOUL_PHRASES } from './soul-backbeat';
import { STEPPERS_PHRASES } from './steppers';
import { TWO_BEAT_PHRASES } from './two-beat';
import type { PhraseBook } from './types';
import { WALKING_SWING_PHRASES } from './walking-swing';
import { WALTZ_PHRASES } from './waltz';

/** The phrases of every feel. */
export const PHRASE_BOOKS: Readonly<Record<FeelId, PhraseBook>> = {
  'early-ska': EARLY_SKA_PHRASES,
  rocksteady: ROCKSTEADY_PHRASES,
  'one-drop': ONE_DROP_PHRASES,
  rockers: ROCKERS_PHRASES,
  steppers: STEPPERS_PHRASES,
  'revival-ska': REVIVAL_SKA_PHRASES,
  'soul-backbeat': SOUL_PHRASES,
  'two-beat': TWO_BEAT_PHRASES,
  'shuffle-blues': SHUFFLE_BLUES_PHRASES,
  'walking-swing': WALKING_SWING_PHRASES,
  bossa: BOSSA_PHRASES,
  disco: DISCO_PHRASES,
  waltz: WALTZ_PHRASES,
  ballad: BALLAD_PHRASES,
  funk: FUNK_PHRASES,
  calypso: CALYPSO_PHRASES,
};

export const phraseBookOf = (feel: FeelId): PhraseBook => PHRASE_BOOKS[feel];
