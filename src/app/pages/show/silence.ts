import { barTicks, beatTicks, type Metre } from '../../../core/base';

interface Sounding {
  readonly start: number;
  readonly duration: number;
}

/** A stretch of a bar in ticks from its beginning. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Where nothing sounds for half a beat or longer. */
export function silencesOf(notes: readonly Sounding[], metre: Metre): readonly Stretch[] {
  const least = beatTicks(metre) / 2;
  const gaps: Stretch[] = [];
  let from = 0;
  for (const { start, duration } of [...notes, { start: barTicks(metre), duration: 0 }]) {
    if (start - from >= least) gaps.push({ start: from, end: start });
    from = Math.max(from, start + duration);
  }
  return gaps;
}
