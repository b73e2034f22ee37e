import { type Bpm, barTicks, beatsOf, isDotted, isUneven, type Metre, type MetreBeat, ticks } from '../base';
import type { ClickPlan } from '../lesson';
import type { PlannedBar } from './plan';
import { swung } from './swing';
import type { ClickEvent } from './types';

const STRENGTH = { accent: 118, beat: 96, between: 56 } as const;

/** How long a click lasts in a file that writes lengths down; its sound dies away by itself. */
const LENGTH = 120;

/** Below this many beats a minute the count-in sounds the eighths as well (common practice, no source). */
const SLOW = 60;

function click(start: number, velocity: number, accent: boolean, countIn: boolean): ClickEvent {
  return { part: 'click', start: ticks(start), duration: ticks(LENGTH), velocity, accent, countIn };
}

/** Where a beat is divided: at its half, or at its thirds where it is dotted. */
const divisions = (beat: MetreBeat): readonly number[] =>
  isDotted(beat) ? [beat.length / 3, (beat.length * 2) / 3] : [beat.length / 2];

/**
 * Clicks from tick 0 up to `end`; the first beat of each bar is accented. Where beats differ in length the eighths
 * sound at every tempo, or the long beat could not be heard coming (common practice, no source).
 */
export function countInEvents(metre: Metre, end: number, tempo: Bpm): readonly ClickEvent[] {
  const divided = tempo < SLOW || isUneven(metre);
  const bars = Array.from({ length: Math.ceil(end / barTicks(metre)) }, (_, bar) => bar * barTicks(metre));
  return bars
    .flatMap((bar) =>
      beatsOf(metre).flatMap((beat) => {
        const start = bar + beat.start;
        const accent = beat.index === 0;
        const between = divided ? divisions(beat) : [];
        return [
          click(start, accent ? STRENGTH.accent : STRENGTH.beat, accent, true),
          ...between.map((after) => click(start + after, STRENGTH.between, false, true)),
        ];
      }),
    )
    .filter(({ start }) => start < end);
}

function clicksOfBar(bar: PlannedBar, plan: ClickPlan, ratio: number): readonly ClickEvent[] {
  const { metre, start } = bar;
  const every = beatsOf(metre);
  switch (plan.beats) {
    case 'every beat':
      return every.map((beat) =>
        click(
          start + beat.start,
          beat.index === 0 ? STRENGTH.accent : STRENGTH.beat,
          beat.index === 0,
          false,
        ),
      );
    case 'two and four': {
      const strong = ({ index }: MetreBeat): boolean =>
        index === 0 || (every.length % 2 === 0 && index % 2 === 0);
      return every
        .filter((beat) => !strong(beat))
        .map((beat) => click(start + beat.start, STRENGTH.beat, false, false));
    }
    case 'off-beats':
      return every.map((beat) => {
        const after = divisions(beat).at(-1) ?? 0;
        return click(start + swung(beat.start + after, metre, ratio), STRENGTH.beat, false, false);
      });
  }
}

/** The click by its plan; bars that drop out are counted from the beginning of the round. */
export function clickEvents(
  bars: readonly PlannedBar[],
  plan: ClickPlan,
  ratio: number,
): readonly ClickEvent[] {
  const { dropOut } = plan;
  return bars.flatMap((bar, index) => {
    const sounds =
      dropOut === null || index % Math.max(1, dropOut.sounding + dropOut.silent) < dropOut.sounding;
    return sounds ? clicksOfBar(bar, plan, ratio) : [];
  });
}
