import { ticks } from '../base';
import type { ChartBar, HarmonySpan } from './types';

/** The spans of a bar as they are written in it: without the chord that the next bar pushes into its end. */
export function ownSpans({ spans, tail }: Pick<ChartBar, 'spans' | 'tail'>): readonly HarmonySpan[] {
  const [last, pushed] = spans.slice(-2);
  if (tail !== true || last === undefined || pushed === undefined) return spans;
  return [...spans.slice(0, -2), { ...last, duration: ticks(last.duration + pushed.duration) }];
}
