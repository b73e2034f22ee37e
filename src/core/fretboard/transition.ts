import { COST } from './costs';
import type { State } from './states';
import type { HandSettings, Joint } from './types';

/** The costs between all the ways of two successive notes, row by row: one row a way of the first note. */
export interface Link {
  /** Costs the same at any speed; Infinity where the hand cannot do it. */
  readonly plain: Float64Array;
  /** To be multiplied by the urgency of the moment. */
  readonly urgent: Float64Array;
  /** 1 for rows whose note is an open string, after which the hand has been free for longer. */
  readonly open: Uint8Array;
}

/**
 * @param samePitch the second note repeats the first
 * @param joint how the first note leads to the second without a pluck; null where both are plucked
 */
export function createLink(
  before: readonly State[],
  after: readonly State[],
  samePitch: boolean,
  hand: HandSettings,
  joint: Joint | null,
): Link {
  const size = before.length * after.length;
  const plain = new Float64Array(size);
  const urgent = new Float64Array(size);
  let index = 0;
  for (const from of before) {
    for (const to of after) {
      plain[index] = plainCost(from, to, samePitch, hand.reach) + jointCost(from, to, joint);
      urgent[index] = urgentCost(from, to, samePitch, hand.comfortableSpan);
      index += 1;
    }
  }
  return { plain, urgent, open: Uint8Array.from(before, (state) => (state.finger === 0 ? 1 : 0)) };
}

/** What going from one way of holding a note to the next note's costs at any speed. */
export function plainCost(from: State, to: State, samePitch: boolean, reach: number): number {
  // The hand stays where it is during an open string; a shift that begins on it belongs to the next note.
  if (to.finger === 0 && from.position !== to.position) return Number.POSITIVE_INFINITY;
  const strings = Math.abs(from.string - to.string);
  const crossing = strings === 0 ? 0 : COST.crossing + COST.skippedString * (strings - 1);
  const beyond = spanHeld(from, to) > reach ? COST.beyondReach : 0;
  const leaving = from.position === to.position ? 0 : COST.leaving;
  return crossing + leaving + beyond + (samePitch ? repeatCost(from, to) : 0);
}

/** What it costs to sound the second note without a pluck. */
export function jointCost(from: State, to: State, joint: Joint | null): number {
  if (joint === null) return 0;
  if (from.string !== to.string) return COST.joinedApart;
  const open = from.finger === 0 || to.finger === 0;
  if (joint === 'by slide')
    return open ? COST.joinedApart : from.finger === to.finger ? 0 : COST.joinedFinger;
  return open || from.finger !== to.finger ? 0 : COST.joinedFinger;
}

/** What it costs by the urgency of the moment. */
export function urgentCost(from: State, to: State, samePitch: boolean, comfortableSpan: number): number {
  const across = sameFingerCost(from, to);
  if (from.position !== to.position) return across + shiftCost(from, to, samePitch);
  const excess = spanHeld(from, to) - comfortableSpan;
  return excess > 0 ? across + COST.stretchPerSquare * excess * excess : across;
}

/** Millimetres that the hand must span to go from one note to the other without leaving its position. */
function spanHeld(from: State, to: State): number {
  if (from.position !== to.position || from.finger === 0 || to.finger === 0) return 0;
  return Math.abs(from.fretAt - to.fretAt);
}

function repeatCost(from: State, to: State): number {
  if (from.string !== to.string) return COST.repeatMoves;
  return from.finger === to.finger ? 0 : COST.repeatChangesFinger;
}

function sameFingerCost(from: State, to: State): number {
  if (from.finger === 0 || from.finger !== to.finger) return 0;
  if (from.string === to.string) {
    return from.position === to.position && from.fret !== to.fret ? COST.slide : 0;
  }
  return from.fret === to.fret ? COST.sameFingerAcross : COST.sameFingerJump;
}

function shiftCost(from: State, to: State, samePitch: boolean): number {
  const whole = COST.shift + COST.shiftPerMillimetre * Math.abs(from.handAt - to.handAt);
  if (from.string !== to.string) return whole;
  if (samePitch) return whole * COST.shiftOnRepeat;
  return from.finger === to.finger && from.finger !== 0 ? whole * COST.guideFinger : whole;
}
