import type { Glide } from '../../performance';
import type { TrackEvent } from './bytes';

/** Half steps that the wheel reaches each way: an octave, so that every slide of a line is within it. */
const RANGE = 12;
/** Between two places of the wheel, in ticks: a thirty-second of a quarter note. */
const STEP = 30;
const CENTRE = 8192;

/** Sets the reach of a channel's wheel: registered parameter 0, data entry, and the parameter let go (MIDI 1.0). */
export const bendRange = (channel: number): readonly TrackEvent[] =>
  [
    [101, 0],
    [100, 0],
    [6, RANGE],
    [38, 0],
    [101, 127],
    [100, 127],
  ].map((bytes) => ({ tick: 0, bytes: [0xb0 | channel, ...bytes] }));

function bend(tick: number, channel: number, halfSteps: number): TrackEvent {
  const reach = Math.min(RANGE, Math.max(-RANGE, halfSteps)) / RANGE;
  const value = Math.min(16383, Math.round(CENTRE + reach * CENTRE));
  return { tick, bytes: [0xe0 | channel, value & 0x7f, value >> 7] };
}

/** The slides of a note as places of the wheel, which is back in its middle where the note ends. */
export function bendsOf(
  note: { readonly start: number; readonly end: number; readonly channel: number },
  glides: readonly Glide[],
): readonly TrackEvent[] {
  const { start, end, channel } = note;
  return glides.flatMap(({ at, halfSteps, duration }) => {
    const steps = Math.max(1, Math.round(duration / STEP));
    const from = at === 'beginning' ? start : end - duration;
    const places = Array.from({ length: steps + 1 }, (_, step) => {
      const share = at === 'beginning' ? 1 - step / steps : step / steps;
      const tick = from + Math.round((duration * step) / steps);
      // The wheel is back before anything else begins at the note's end.
      return bend(Math.min(tick, end - 1), channel, halfSteps * share);
    });
    return at === 'beginning' ? places : [...places, bend(end, channel, 0)];
  });
}
