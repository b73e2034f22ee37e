import { type Bpm, beatsInBar, beatTicks, isCompound, type Metre, ticks } from '../base';
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

/** Where the beat is divided: at its half, or at its thirds in compound time. */
const divisions = (metre: Metre): readonly number[] => {
  const beat = beatTicks(metre);
  return isCompound(metre) ? [beat / 3, (beat * 2) / 3] : [beat / 2];
};

/** Clicks from tick 0 up to `end`; the first beat of each bar is accented. */
export function countInEvents(metre: Metre, end: number, tempo: Bpm): readonly ClickEvent[] {
  const beat = beatTicks(metre);
  const beats = beatsInBar(metre);
  return Array.from({ length: Math.round(end / beat) }, (_, index) => index).flatMap((index) => {
    const accent = index % beats === 0;
    const between = tempo < SLOW ? divisions(metre) : [];
    return [
      click(index * beat, accent ? STRENGTH.accent : STRENGTH.beat, accent, true),
      ...between.map((after) => click(index * beat + after, STRENGTH.between, false, true)),
    ];
  });
}

function clicksOfBar(bar: PlannedBar, plan: ClickPlan, ratio: number): readonly ClickEvent[] {
  const { metre, start } = bar;
  const beat = beatTicks(metre);
  const beats = beatsInBar(metre);
  const every = Array.from({ length: beats }, (_, index) => index);
  switch (plan.beats) {
    case 'every beat':
      return every.map((index) =>
        click(start + index * beat, index === 0 ? STRENGTH.accent : STRENGTH.beat, index === 0, false),
      );
    case 'two and four': {
      const strong = (index: number): boolean => index === 0 || (beats % 2 === 0 && index % 2 === 0);
      return every
        .filter((index) => !strong(index))
        .map((index) => click(start + index * beat, STRENGTH.beat, false, false));
    }
    case 'off-beats': {
      const after = divisions(metre).at(-1) ?? 0;
      return every.map((index) =>
        click(start + swung(index * beat + after, metre, ratio), STRENGTH.beat, false, false),
      );
    }
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
