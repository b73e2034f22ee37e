import { COMMON_PRACTICE, OURS } from './rows';
import type { FeelId, Source } from './types';

/** What a bassist leans on in a feel, and which repeated notes are only touched. */
export interface BassStress {
  /**
   * A beat of a bar of four, counted from 0 (another metre has only its first); or `pushes`, the notes between two beats
   * that hold over the second one. Null where the line goes evenly.
   */
  readonly accent: 0 | 1 | 2 | 'pushes' | null;
  /** Where a note that comes again may be dead: between two eighths, or between two beats; null nowhere. */
  readonly ghosts: 'sixteenths' | 'off-beats' | null;
  readonly source: Source;
}

const EVEN: BassStress = { accent: null, ghosts: null, source: 'ours: even, every note alike' };
const PUSHED: BassStress = { accent: 'pushes', ghosts: null, source: COMMON_PRACTICE };
const ON_ONE: BassStress = { accent: 0, ghosts: null, source: OURS };

const STRESS: Readonly<Record<FeelId, BassStress>> = {
  'early-ska': EVEN,
  rocksteady: PUSHED,
  'one-drop': { accent: 2, ghosts: null, source: 'common practice: with the drop on three' },
  rockers: ON_ONE,
  steppers: ON_ONE,
  'revival-ska': PUSHED,
  'soul-backbeat': { accent: 0, ghosts: 'sixteenths', source: OURS },
  'two-beat': EVEN,
  'shuffle-blues': { accent: 1, ghosts: 'off-beats', source: 'common practice: with the backbeat' },
  'walking-swing': {
    accent: 1,
    ghosts: 'off-beats',
    source: 'common practice: two and four carry the swing',
  },
  bossa: { accent: 2, ghosts: null, source: 'common practice: the low drum of samba is stronger on three' },
  disco: PUSHED,
  waltz: PUSHED,
  ballad: EVEN,
  funk: { accent: 0, ghosts: 'sixteenths', source: 'common practice: everybody meets on one' },
  calypso: PUSHED,
};

export const bassStressOf = (feel: FeelId): BassStress => STRESS[feel];
