import { COST } from './costs';
import { handSpan } from './neck';
import type { State } from './states';
import type { HandSettings } from './types';

/** The cost of going from one way of holding a note to the next note's. */
export interface Transition {
  /** Costs the same at any speed; Infinity where the hand cannot do it. */
  readonly plain: number;
  /** To be multiplied by the urgency of the moment. */
  readonly urgent: number;
}

const IMPOSSIBLE: Transition = { plain: Number.POSITIVE_INFINITY, urgent: 0 };

/**
 * @param samePitch the second note repeats the first
 * @param scaleLength millimetres from nut to bridge
 */
export function transition(
  from: State,
  to: State,
  samePitch: boolean,
  hand: HandSettings,
  scaleLength: number,
): Transition {
  const stays = from.position === to.position;
  // The hand stays where it is during an open string; a shift that begins on it belongs to the next note.
  if (to.finger === 0 && !stays) return IMPOSSIBLE;
  const strings = Math.abs(from.string - to.string);
  const plain = crossingCost(strings) + (samePitch ? repeatCost(from, to) : 0);
  const across = sameFingerCost(from, to);
  if (!stays) return { plain, urgent: across + shiftCost(from, to, samePitch, scaleLength) };
  if (from.finger === 0 || to.finger === 0) return { plain, urgent: across };
  const span = handSpan(from.fret, to.fret, scaleLength);
  const beyond = span > hand.reach ? COST.beyondReach : 0;
  const stretch = COST.stretchPerSquare * Math.max(0, span - hand.comfortableSpan) ** 2;
  return { plain: plain + beyond, urgent: across + stretch };
}

const crossingCost = (strings: number): number =>
  strings === 0 ? 0 : COST.crossing + COST.skippedString * (strings - 1);

function repeatCost(from: State, to: State): number {
  if (from.string !== to.string) return COST.repeatMoves;
  return from.finger === to.finger ? 0 : COST.repeatChangesFinger;
}

function sameFingerCost(from: State, to: State): number {
  if (from.finger === 0 || from.finger !== to.finger || from.string === to.string) return 0;
  return from.fret === to.fret ? COST.sameFingerAcross : COST.sameFingerJump;
}

function shiftCost(from: State, to: State, samePitch: boolean, scaleLength: number): number {
  const whole = COST.shift + COST.shiftPerMillimetre * handSpan(from.position, to.position, scaleLength);
  if (from.string !== to.string) return whole;
  if (samePitch) return whole * COST.shiftOnRepeat;
  return from.finger === to.finger && from.finger !== 0 ? whole * COST.guideFinger : whole;
}
