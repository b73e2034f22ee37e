import type { Finger } from '../base';
import { COST } from './costs';
import { handSpan } from './neck';
import type { HandSettings, HandSystem, Instrument } from './types';

/** A finger's place in a hand position. */
export interface Grip {
  readonly finger: Exclude<Finger, 0>;
  readonly fret: number;
  /** What it costs beyond the finger's own weight. */
  readonly extra: number;
}

/**
 * The frets that the fingers hold in a position, by the hand system. One finger per fret: in position n finger
 * k plays fret n + k − 1 (Bandwagon Music Studios, Bass Level 1, p. 10). 1-2-4: a whole step from the first
 * finger to the fourth, the second on the half step between (F. Simandl, New Method for the Double Bass, from
 * memory, no page; the American School of Double Bass, asodb.com, states the same rule). In every system the first and the fourth finger may reach one fret further, as far as the hand's reach allows.
 */
export function gripsOf(position: number, instrument: Instrument, hand: HandSettings): readonly Grip[] {
  const grips = homeGrips(position, instrument, hand);
  const top = Math.max(...grips.map((grip) => grip.fret));
  const reached: Grip[] = [];
  if (canHold(position - 1, top, instrument, hand)) {
    reached.push({ finger: 1, fret: position - 1, extra: COST.extension });
  }
  if (canHold(position, top + 1, instrument, hand)) {
    reached.push({ finger: 4, fret: top + 1, extra: COST.extension });
  }
  return [...grips, ...reached].filter((grip) => grip.fret <= instrument.frets);
}

function homeGrips(position: number, instrument: Instrument, hand: HandSettings): readonly Grip[] {
  const grip = (finger: Grip['finger'], offset: number, extra = 0): Grip => ({
    finger,
    fret: position + offset,
    extra,
  });
  switch (systemAt(position, instrument, hand)) {
    case 'one finger per fret':
      return [grip(1, 0), grip(2, 1), grip(3, 2), grip(4, 3)];
    case '1-2-4':
      return [grip(1, 0), grip(2, 1), grip(4, 2)];
    case 'automatic':
      return [grip(1, 0), grip(2, 1), grip(4, 2), grip(3, 2, COST.wideGrip), grip(4, 3, COST.wideGrip)];
  }
}

/** The system in force in a position: `automatic` only where four frets are wider than comfortable. */
function systemAt(position: number, instrument: Instrument, hand: HandSettings): HandSystem {
  switch (hand.system) {
    case '1-2-4':
      return hand.oneTwoFourBelow === undefined || position < hand.oneTwoFourBelow
        ? '1-2-4'
        : 'one finger per fret';
    case 'automatic':
      return handSpan(position, position + 3, instrument.scaleLength) > hand.comfortableSpan
        ? 'automatic'
        : 'one finger per fret';
    default:
      return 'one finger per fret';
  }
}

const canHold = (low: number, high: number, instrument: Instrument, hand: HandSettings): boolean =>
  low >= 1 && high <= instrument.frets && handSpan(low, high, instrument.scaleLength) <= hand.reach;
