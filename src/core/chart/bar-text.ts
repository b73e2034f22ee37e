import { barTicks, beatsInBar, type Metre } from '../base';
import { defaultSpans, finestShares, shareStarts } from './bar-reader';
import { harmonyText } from './harmony';
import { ownSpans } from './own-spans';
import { PUSH, PUSH_SIGN } from './pushes';
import type { ChartBar, Harmony } from './types';

const sameNumbers = (one: readonly number[], other: readonly number[]): boolean =>
  one.length === other.length && one.every((number, index) => number === other[index]);

/** Whether a bar goes on with the ending of the bar before it. */
export const continuesEnding = (bar: ChartBar, before: ChartBar | undefined): boolean =>
  bar.ending !== null &&
  before !== undefined &&
  before.ending !== null &&
  before.repeatEnd === null &&
  !bar.repeatStart &&
  sameNumbers(bar.ending, before.ending);

export function closing(bar: ChartBar, next: ChartBar | undefined): string {
  if (bar.repeatEnd !== null) return bar.repeatEnd === 2 ? ':|' : `:| x${bar.repeatEnd}`;
  const endsEnding = bar.ending !== null && !(next && continuesEnding(next, bar));
  return endsEnding ? '||' : '|';
}

/**
 * The harmonies of a bar as they are written in it, with slashes only where the beats would be shared out differently
 * without them, and `<` before chords that come an eighth early. The chord that the next bar pushes into its end is
 * written there.
 */
export function barText(bar: Pick<ChartBar, 'spans' | 'metre' | 'pushed' | 'tail'>): string {
  const spans = ownSpans(bar);
  const { metre } = bar;
  const texts = spans.map(({ harmony }, index) =>
    index === 0 && bar.pushed ? PUSH_SIGN + harmonyText(harmony) : harmonyText(harmony),
  );
  const harmonies = spans.map(({ harmony }) => harmony);
  const beats = shareStarts(beatsInBar(metre), metre);
  const isBeat = (tick: number): boolean => beats.includes(tick);
  const starts = spans.map(({ start }) => Number(start));
  const shared = sharedStarts(harmonies, metre);
  if (sameNumbers(starts, shared)) return texts.join(' ');
  if (starts.every(isBeat)) return withSlashes(texts, starts, beats, metre);
  const onBeat = starts.map((start) => (isBeat(start) ? start : start + PUSH));
  const pushes = onBeat.every((at, index) => isBeat(at) && at > (starts[index - 1] ?? -1));
  const apart = onBeat.every((at, index) => index === 0 || at > (onBeat[index - 1] ?? 0));
  const roomy = onBeat.every((at, index) => index === 0 || at - PUSH > (starts[index - 1] ?? 0));
  if (pushes && apart && roomy) {
    const signed = texts.map((text, index) => (starts[index] === onBeat[index] ? text : PUSH_SIGN + text));
    return sameNumbers(onBeat, shared) ? signed.join(' ') : withSlashes(signed, onBeat, beats, metre);
  }
  const eighths = shareStarts(barTicks(metre) / PUSH, metre);
  const parts = [shareStarts(finestShares(metre), metre), eighths];
  const part = parts.find((each) => starts.every((start) => each.includes(start))) ?? eighths;
  return withSlashes(texts, starts, part, metre);
}

const sharedStarts = (harmonies: readonly Harmony[], metre: Metre): readonly number[] =>
  defaultSpans(harmonies, metre).map(({ start }) => start);

/** Each chord with a slash for every further part of the bar that it holds. */
const withSlashes = (
  texts: readonly string[],
  starts: readonly number[],
  parts: readonly number[],
  metre: Metre,
): string =>
  texts
    .map((text, index) => {
      const end = starts[index + 1] ?? barTicks(metre);
      const held = parts.filter((part) => part > (starts[index] ?? 0) && part < end);
      return [text, ...held.map(() => '/')].join(' ');
    })
    .join(' ');
