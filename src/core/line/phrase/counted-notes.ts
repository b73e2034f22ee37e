import { TICKS_PER_QUARTER } from '../../base';
import type { Tone } from '../tones';
import { type Counted, share, sum } from './counted';
import { isPumped } from './node-cost';

const inScale = (tone: Tone): boolean =>
  tone.member || tone.stretch?.steps.some((step) => step?.halfSteps === tone.interval) === true;

/** A short note off the beat: struck once more on the beat, it is its own pickup. */
const pushes = ({ start, duration }: Tone): boolean =>
  start % TICKS_PER_QUARTER !== 0 && duration <= TICKS_PER_QUARTER / 2;

/** Which notes sound, and how each moves from the one before. */
export function notesCounted({ model, bars, lists, flat, count, walk }: Counted) {
  let top = 0;
  let bottom = flat.length > 0 ? 127 : 0;
  let whole = 0;
  for (const { midi } of flat) {
    top = Math.max(top, midi);
    bottom = Math.min(bottom, midi);
    whole += midi;
  }
  const mean = flat.length > 0 ? whole / flat.length : 0;

  let [unturned, tritones, piled, jolts, seesaw, marked, longC, shortC, grinding] = [
    0, 0, 0, 0, 0, 0, 0, 0, 0,
  ];
  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: one pass counts all features
  flat.forEach((tone, index) => {
    const before = flat[index - 1];
    const prior = flat[index - 2];
    const next = flat[index + 1] ?? flat[0];
    const beat = TICKS_PER_QUARTER;
    const move = before ? tone.midi - before.midi : 0;
    const size = Math.abs(move);
    const onward = next ? next.midi - tone.midi : 0;
    if (size >= 8 && size !== 12 && onward * move > 0) unturned += 1;
    if (size === 6 && !(tone.member && before?.member && tone.stretch === before.stretch)) tritones += 1;
    if (
      prior &&
      before &&
      size >= 5 &&
      Math.abs(before.midi - prior.midi) >= 5 &&
      move * (before.midi - prior.midi) > 0
    )
      piled += 1;
    if (size > 12 || size === 10 || size === 11) jolts += 1;
    const older = flat[index - 3];
    if (
      older &&
      prior &&
      before &&
      prior.midi === tone.midi &&
      older.midi === before.midi &&
      size > 0 &&
      size !== 12
    )
      seesaw += 1;
    if (before?.midi === tone.midi && prior?.midi === tone.midi) marked += 1;
    if (tone.stretch?.chord && !inScale(tone)) {
      if (tone.duration > beat / 2) longC += 1;
      else shortC += 1;
    }
    if (tone.stretch?.chord && !tone.member && tone.duration >= beat && (size > 2 || Math.abs(onward) > 2))
      grinding += 1;
  });

  const sevenths = bars.flatMap((bar, index) =>
    bar.stretches.flatMap((stretch) => {
      const seventh = [9, 10, 11].find(
        (at) => stretch.members[at] && stretch.steps[6]?.member && stretch.steps[6].halfSteps === at,
      );
      if (!stretch.chord || seventh === undefined) return [];
      return [
        (lists[index] ?? []).some((tone) => tone.stretch === stretch && tone.interval === seventh) ? 1 : 0,
      ];
    }),
  );
  const pumps = model.request.feel.bassRole.mayPump && model.request.level > 0;
  const octavesOf = (all: readonly number[]) => all.filter((move) => Math.abs(move) === 12).length;
  const moves = (tones: readonly Tone[]): readonly number[] =>
    tones.slice(1).map((tone, index) => tone.midi - (tones[index]?.midi ?? tone.midi));

  return {
    seventhsHeard: share(sum(sevenths), sevenths.length),
    colourHeard: share(lists.filter((tones) => tones.some(({ interval }) => interval >= 9)).length, count),
    bare:
      model.request.level < 2
        ? 0
        : share(
            lists.filter(
              (tones) => tones.length >= 3 && tones.every(({ interval }) => interval !== 3 && interval !== 4),
            ).length,
            count,
          ),
    doubled: share(
      flat.filter((tone, index) => {
        const before = flat[index - 1];
        return before?.midi === tone.midi && !pushes(before);
      }).length,
      flat.length,
    ),
    octaveHops: share(
      sum(lists.map((tones) => (isPumped(tones.map(({ midi }) => midi)) ? 0 : octavesOf(moves(tones))))),
      flat.length,
    ),
    unpumped: pumps ? share(lists.filter((tones) => octavesOf(moves(tones)) < 2).length, count) : 0,
    narrow: count >= 2 ? Math.max(0, 11 - (top - bottom)) / 12 : 0,
    wide: Math.max(0, top - bottom - 19) / 12,
    unturned: share(unturned, flat.length),
    tritones: share(tritones, flat.length),
    piledLeaps: share(piled, flat.length),
    jolts: share(jolts, flat.length),
    longChromatic: share(longC, flat.length),
    shortChromatic: share(shortC, flat.length),
    seesaw: share(seesaw, flat.length),
    scaleRuns: share(
      lists.filter((tones) => {
        const all = moves(tones);
        return (
          all.length >= 3 &&
          Math.abs(sum(all.map(Math.sign))) === all.length &&
          all.every((move) => Math.abs(move) <= 2)
        );
      }).length,
      count,
    ),
    backToRoot: share(
      bars.filter((bar, index) => {
        const tones = lists[index] ?? [];
        const three = tones.find(({ start }) => start === 2 * bar.beat);
        return (
          walk &&
          bar.stretches.length === 1 &&
          three !== undefined &&
          three.midi === tones[0]?.midi &&
          tones.length >= 3
        );
      }).length,
      count,
    ),
    onePitch: share(
      lists.filter((tones) => tones.length > 1 && tones.every(({ midi }) => midi === tones[0]?.midi)).length,
      count,
    ),
    grinding: share(grinding, flat.length),
    strongOutside: share(
      bars.filter((bar, index) =>
        (lists[index] ?? []).some(
          (tone) => tone.stretch?.chord && !tone.member && tone.start > 0 && tone.start === bar.ticks / 2,
        ),
      ).length,
      count,
    ),
    marked: share(marked, flat.length),
    high: Math.max(0, mean - bottom - 12) / 12,
  };
}
