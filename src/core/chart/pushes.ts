import { barTicks, beatAt, type Metre, ticks } from '../base';
import { sameHarmony } from './harmony';
import type { ChartBar, Harmony, HarmonySpan } from './types';

/** A pushed chord comes an eighth before its beat, as in number charts (common practice, no source). */
export const PUSH = 480;

/** What is written before a pushed chord. */
export const PUSH_SIGN = '<';

/** Whether a bar of a metre has room for the chord of the next one at its end. */
const hasRoom = (spans: readonly HarmonySpan[], metre: Metre): boolean =>
  (spans.at(-1)?.start ?? 0) < barTicks(metre) - PUSH;

/** The spans of a bar into whose end the next bar's chord is pushed. */
export function withTail(
  spans: readonly HarmonySpan[],
  metre: Metre,
  next: Harmony | undefined,
): readonly HarmonySpan[] {
  const last = spans.at(-1);
  if (last === undefined || next === undefined || !hasRoom(spans, metre)) return spans;
  if (sameHarmony(last.harmony, next)) return spans;
  const start = ticks(barTicks(metre) - PUSH);
  return [
    ...spans.slice(0, -1),
    { ...last, duration: ticks(start - last.start) },
    { start, duration: ticks(PUSH), harmony: next },
  ];
}

/** Whether the last chord of a bar is the next bar's, an eighth early. */
export function pushesInto(bar: ChartBar, next: ChartBar | undefined): boolean {
  const last = bar.spans.at(-1);
  const first = next?.spans[0];
  return (
    last !== undefined &&
    first !== undefined &&
    bar.spans.length > 1 &&
    last.start === barTicks(bar.metre) - PUSH &&
    beatAt(bar.metre, last.start).start !== last.start &&
    sameHarmony(last.harmony, first.harmony)
  );
}
