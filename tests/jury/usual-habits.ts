import { FEEL_IDS, type FeelId } from '../../src/core/feel/types';
import { countedIn } from '../../src/core/line/phrase/counted';
import { featuresOf } from '../../src/core/line/phrase/features';
import { HABIT_NAMES, type Habits, habitsOf } from '../../src/core/line/phrase/habits';
import type { UsualHabits } from '../../src/core/line/phrase/unusual';
import { meanOf, type ReadLine } from './read-lines';

const LEVELS = [0, 1, 2, 3, 4, 5];

/** The mean mark from which a line is one that readers liked: the marks agree best with habits learned from these. */
const LIKED = 7.4;

/** Levels off at which a line tells a third as much of what is usual. */
const NEAR = 1.5;

/** A habit that hardly differs counts by this part of a thousand at least. */
const LEAST_SPREAD = 10;

const habitsOfRead = ({ model, heard }: ReadLine): Habits =>
  habitsOf(countedIn(model, heard), featuresOf(model, heard));

/** The lines that were read with their habits in parts of a thousand, which are counted once. */
export const withHabits = (lines: readonly ReadLine[]) =>
  lines.map((line) => {
    const habits = habitsOfRead(line);
    return { ...line, habits, parts: HABIT_NAMES.map((name) => habits[name] * 1000) };
  });

export type LineWithHabits = ReturnType<typeof withHabits>[number];

/** What is usual in each feel by level: means over the lines that readers liked, near levels before far ones. */
export function usualOf(lines: readonly LineWithHabits[]): UsualHabits {
  const usualAt = (feel: FeelId, level: number): readonly number[] => {
    const liked = lines
      .filter((line) => line.feel === feel && line.mark >= LIKED)
      .map(({ parts, level: own }) => ({ parts, weight: Math.exp(-Math.abs(own - level) / NEAR) }));
    const whole = liked.reduce((sum, { weight }) => sum + weight, 0);
    return HABIT_NAMES.map((_, at) =>
      Math.round(liked.reduce((sum, { parts, weight }) => sum + weight * (parts[at] ?? 0), 0) / whole),
    );
  };
  return {
    usual: new Map(FEEL_IDS.map((feel) => [feel, LEVELS.map((level) => usualAt(feel, level))])),
    spreads: HABIT_NAMES.map((_, at) => {
      const mean = meanOf(lines.map(({ parts }) => parts[at] ?? 0));
      const spread = Math.sqrt(meanOf(lines.map(({ parts }) => ((parts[at] ?? 0) - mean) ** 2)));
      return Math.max(LEAST_SPREAD, Math.round(spread));
    }),
  };
}
