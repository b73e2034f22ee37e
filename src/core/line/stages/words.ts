import { capitalised, countedInWords } from '../../base';
import type { StageThing } from './things';

/** What each thing is called in the name of a stage. */
const NAMES: Readonly<Record<StageThing, string>> = {
  roots: 'roots in the line’s places',
  'strong beats': 'its strong beats',
  rhythm: 'its rhythm',
  'chord tones': 'its chord tones',
  'silence on one': 'its silence on one',
  'steps and leads': 'its steps and leads',
  touch: 'its touch',
};

/** What a thing adds, as a part of a sentence: `its rhythm`. */
export const stageThingName = (thing: StageThing): string => NAMES[thing];

/** What to do at a stage that adds a thing, for the student. */
const TASKS: Readonly<Record<StageThing, string>> = {
  roots: 'Play one root where the line changes its chord, and know each by name.',
  'strong beats': 'Play the root again where the line plays on a strong beat.',
  rhythm: 'Play every note of the rhythm on the root.',
  'chord tones': 'Take the notes of the chord in their places.',
  'silence on one': 'Leave beat one empty where the line does, and count it.',
  'steps and leads': 'Put in the steps between the chord tones, and those that lead to the next chord.',
  touch: 'Play it with its accents, short notes and other marks.',
};

export const stageTask = (thing: StageThing): string => TASKS[thing];

/** Fewer stages than a build-up has as a rule. */
const FEW = 3;

/**
 * How many stages a build-up has, and why where they are few: the line has no more, or the teacher left the others out.
 * @param things - how many it could have, one at least
 */
export function stagesCounted(stages: number, things: number): string {
  if (stages >= FEW) return `${stages} stages`;
  const count = capitalised(countedInWords(stages, 'stage'));
  if (stages < things) return `${count}: what is left out comes with ${stages === 1 ? 'it' : 'the next'}`;
  return `${count}: the line ${stages === 1 ? 'is as simple as that' : 'has no more to add'}`;
}
