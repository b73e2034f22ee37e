/** What the changes of the chords ask a line to let hear, known before a note is written. */
import { pitchClassOf, rememberedFor } from '../../base';
import type { Stretch } from '../harmony';
import type { LineModel } from '../model';

/** Whether a chord has the root of the key's tonic. */
export const isTonic = ({ key, rootClass, chord }: Stretch): boolean =>
  chord !== null && pitchClassOf(key.tonic) === rootClass;

/** By bar: whether it comes home to the tonic from another chord. */
export const homecomings = rememberedFor(({ bars }: LineModel): readonly boolean[] =>
  bars.map(({ stretches: [first], before }) => {
    if (!first || !isTonic(first)) return false;
    return before.some((index) => bars[index]?.stretches.at(-1)?.rootClass !== first.rootClass);
  }),
);

/** The third of a chord that has one and no more, in half steps above its root; null without. */
export const thirdOf = ({ chord, members }: Stretch): number | null => {
  if (!chord || members[3] === members[4]) return null;
  return members[3] ? 3 : 4;
};

/** The stretches whose chord has the root of the one before and another third: F, F minor. */
export const turnedThirds = rememberedFor(({ bars }: LineModel): ReadonlySet<Stretch> => {
  const found = new Set<Stretch>();
  let before: Stretch | undefined;
  for (const stretch of bars.flatMap(({ stretches }) => stretches)) {
    const third = thirdOf(stretch);
    const old = before ? thirdOf(before) : null;
    if (before?.rootClass === stretch.rootClass && third !== null && old !== null && third !== old)
      found.add(stretch);
    before = stretch;
  }
  return found;
});
