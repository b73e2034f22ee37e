import { readGrid, rhythmsIn } from '../feel';
import type { AnalysedLine } from './line-claims';
import { type BarModel, stretchAt } from './model';
import type { Tone } from './tones';
import type { Technique } from './types';

/** A silence of the bass within a bar, in ticks from the bar's beginning. */
export interface Gap {
  readonly bar: BarModel;
  readonly from: number;
  readonly to: number;
}

function silencesOf(bar: BarModel, tones: readonly Tone[]): readonly Gap[] {
  const gaps: Gap[] = [];
  let from = 0;
  for (const { start, duration } of [...tones, { start: bar.ticks, duration: 0 }]) {
    if (start > from) gaps.push({ bar, from, to: start });
    from = Math.max(from, start + duration);
  }
  return gaps;
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
    const silences = silencesOf(bar, heard[index] ?? []);
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
