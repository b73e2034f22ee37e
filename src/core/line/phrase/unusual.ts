import { FEEL_IDS, type FeelId } from '../../feel';
import type { Level } from '../types';
import { HABIT_NAMES, type Habits } from './habits';
import { SPREADS, USUAL } from './usual';

/** Spreads from where on farther off is no worse: one odd habit is no other style. */
const FAR = 2;

/** The usual habits of a feel by level, and how far lines differ in each; parts in a thousand, in the order of {@link HABIT_NAMES}. */
export interface UsualHabits {
  readonly usual: ReadonlyMap<FeelId, readonly (readonly number[])[]>;
  readonly spreads: readonly number[];
}

const FROM_READERS: UsualHabits = {
  usual: new Map(FEEL_IDS.map((feel) => [feel, USUAL[feel]])),
  spreads: SPREADS,
};

/**
 * How far a line's habits lie from those of lines in its feel and near its level that blind readers marked well: the
 * mean over all habits, in spreads of that habit, from 0 to {@link FAR}.
 */
export function unusualIn(
  feel: FeelId,
  level: Level,
  habits: Habits,
  { usual, spreads }: UsualHabits = FROM_READERS,
): number {
  const own = usual.get(feel)?.[level] ?? [];
  let all = 0;
  HABIT_NAMES.forEach((name, index) => {
    const off = Math.abs(habits[name] * 1000 - (own[index] ?? 0)) / (spreads[index] ?? 1);
    all += Math.min(off, FAR);
  });
  return all / HABIT_NAMES.length;
}
