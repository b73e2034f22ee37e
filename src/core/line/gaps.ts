import { readGrid, rhythmsIn } from '../feel';
import { type Silence, silencesOf } from './hearing';
import type { AnalysedLine } from './line-claims';
import { type BarModel, stretchAt } from './model';
import type { Technique } from './types';

/** A silence of the bass, and its bar. */
export interface Gap extends Silence {
  readonly bar: BarModel;
}

/** The silences that a sentence speaks of: those on beat one, those of half a bar or more, or whole bars. */
export function gapsOf(
  { model, heard }: AnalysedLine,
  bars: readonly number[],
  of: Extract<Technique, 'beat one silent' | 'long silences'> | 'silent bars',
): readonly Gap[] {
  return bars.flatMap((index) => {
    const bar = model.bars[index];
    if (bar === undefined) return [];
    const silences = silencesOf(heard[index] ?? [], bar.ticks).map((silence) => ({ bar, ...silence }));
    return of === 'beat one silent'
      ? silences.filter(({ from }) => from === 0)
      : silences.filter(({ from, to }) => (to - from) * 2 >= bar.ticks);
  });
}

/**
 * Whether the chops are struck within a silence: the feel has a hand for them in the metre, and there is a chord to
 * strike. What falls together with the bass's next note no longer carries the silence.
 */
export function chopsSoundIn({ model }: AnalysedLine, { bar, from, to }: Gap): boolean {
  const rhythms = rhythmsIn(model.request.feel, bar.metre);
  return (
    rhythms !== null &&
    readGrid(rhythms.chops.grid, bar.metre).some(
      ({ start }) => start >= from && start < to && stretchAt(bar, start)?.chord != null,
    )
  );
}
