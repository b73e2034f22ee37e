import { type Bpm, barTicks, beatTicks, type Metre, type MidiNumber, ticks } from '../base';
import type { ClickPlan } from '../lesson';
import { clickEvents } from './click';
import type { PlannedBar } from './plan';
import type { Performance } from './types';

/**
 * The click by itself: as many bars as its dropping out takes to come round, or one.
 * @param tempo of the metre's beats
 */
export function clickAlone(tempo: Bpm, metre: Metre, plan: ClickPlan): Performance {
  const { dropOut } = plan;
  const count = dropOut === null ? 1 : dropOut.sounding + dropOut.silent;
  const duration = barTicks(metre);
  const bars = Array.from(
    { length: count },
    (_, index): PlannedBar => ({
      bar: index,
      sheetBar: null,
      metre,
      start: index * duration,
      duration,
      bassPlays: false,
    }),
  );
  return {
    tempo,
    beat: beatTicks(metre),
    countIn: ticks(0),
    intro: ticks(0),
    ending: null,
    end: ticks(count * duration),
    bars: bars.map(({ start }, bar) => ({ bar, start: ticks(start), duration: ticks(duration) })),
    events: clickEvents(bars, plan, 1),
  };
}

/** A single bass note, held for eight seconds and struck anew: to tune by. */
export function toneAlone(tempo: Bpm, midi: MidiNumber): Performance {
  const beat = 960;
  const length = ticks(Math.round((8 * tempo * beat) / 60));
  return {
    tempo,
    beat: ticks(beat),
    countIn: ticks(0),
    intro: ticks(0),
    ending: null,
    end: length,
    bars: [{ bar: 0, start: ticks(0), duration: length }],
    events: [{ part: 'bass', midi, start: ticks(0), duration: length, velocity: 96, muted: false }],
  };
}
