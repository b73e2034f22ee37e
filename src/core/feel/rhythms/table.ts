import { type Metre, metreName } from '../../base';
import type { FeelId, RhythmCell } from '../types';
import { BALLAD_CELLS } from './ballad';
import { BOSSA_CELLS } from './bossa';
import { CALYPSO_CELLS } from './calypso';
import { DISCO_CELLS } from './disco';
import { EARLY_SKA_CELLS } from './early-ska';
import { FUNK_CELLS } from './funk';
import { ONE_DROP_CELLS } from './one-drop';
import { REVIVAL_SKA_CELLS } from './revival-ska';
import { ROCKERS_CELLS } from './rockers';
import { ROCKSTEADY_CELLS } from './rocksteady';
import { SHUFFLE_BLUES_CELLS } from './shuffle-blues';
import { SOUL_BACKBEAT_CELLS } from './soul-backbeat';
import { STEPPERS_CELLS } from './steppers';
import { TWO_BEAT_CELLS } from './two-beat';
import type { MetreCells } from './types';
import { WALKING_SWING_CELLS } from './walking-swing';
import { WALTZ_CELLS } from './waltz';

const CELLS: Readonly<Record<FeelId, MetreCells>> = {
  ballad: BALLAD_CELLS,
  bossa: BOSSA_CELLS,
  calypso: CALYPSO_CELLS,
  disco: DISCO_CELLS,
  'early-ska': EARLY_SKA_CELLS,
  funk: FUNK_CELLS,
  'one-drop': ONE_DROP_CELLS,
  'revival-ska': REVIVAL_SKA_CELLS,
  rockers: ROCKERS_CELLS,
  rocksteady: ROCKSTEADY_CELLS,
  'shuffle-blues': SHUFFLE_BLUES_CELLS,
  'soul-backbeat': SOUL_BACKBEAT_CELLS,
  steppers: STEPPERS_CELLS,
  'two-beat': TWO_BEAT_CELLS,
  'walking-swing': WALKING_SWING_CELLS,
  waltz: WALTZ_CELLS,
};

/**
 * The one-bar rhythms of a feel's bass in a metre; null where the feel says nothing about it. They stand apart from the
 * feels, because only the composer and the pencil need them.
 */
export const rhythmCellsOf = (feel: FeelId, metre: Metre): readonly RhythmCell[] | null =>
  CELLS[feel][metreName(metre)] ?? null;
