import type { PlayPosition } from '../../../sound';

/** Whose turn it is where the bass calls and the student answers, and in which written bars, by their indices. */
export interface Turn {
  readonly kind: 'call' | 'answer';
  readonly bars: readonly number[];
}

/** The turn that sounds; null where nothing is answered, or nothing of the line sounds. */
export function turnAt({ performance, playedBar }: PlayPosition): Turn | null {
  const { bars } = performance;
  const here = playedBar === null ? undefined : bars[playedBar];
  if (playedBar === null || here === undefined || bars.every(({ answer }) => answer !== true)) return null;
  const same = (index: number): boolean => bars[index] !== undefined && bars[index].answer === here.answer;
  let [first, last] = [playedBar, playedBar];
  while (same(first - 1)) first -= 1;
  while (same(last + 1)) last += 1;
  return {
    kind: here.answer === true ? 'answer' : 'call',
    bars: bars.slice(first, last + 1).map(({ bar }) => bar),
  };
}

export const sameTurn = (one: Turn | null, other: Turn | null): boolean =>
  one?.kind === other?.kind && one?.bars.join() === other?.bars.join();
