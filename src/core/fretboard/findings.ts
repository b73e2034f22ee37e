import { type Fault, faultsOf } from './faults';
import type { FingeredLine } from './fingered-line';
import { type PlayingRepair, repairFor } from './repairs';

/** Something about playing a line that a careful colleague would point out, and what would mend it. */
export interface PlayingFinding extends Fault {
  /** Tried on the line before it is offered; null where only the player can mend the fault. */
  readonly repair: PlayingRepair | null;
}

/** All findings about playing a line, in the order of its notes. */
export const playingFindings = (line: FingeredLine): readonly PlayingFinding[] =>
  faultsOf(line).map((fault) => ({ ...fault, repair: repairFor(line, fault) }));
