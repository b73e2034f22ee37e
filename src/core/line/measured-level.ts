import { isBeyondLimits } from './bar-findings';
import { hearLine, struck } from './hearing';
import { notesPerSecond, rhythmLevelIn } from './level';
import { boundsOf, modelOf } from './read-request';
import type { Tone } from './tones';
import { LEVELS, type Level, type LineNotes, type LineRequest } from './types';

/** What a line asks of a player. */
export interface MeasuredLevel {
  readonly level: Level;
  /** Notes a second of its busiest bar, at the tempo of the request. */
  readonly notesPerSecond: number;
}

/** Of so many bars one may be beyond the level: a single hard bar makes no hard line (common practice, no source). */
const BARS_FOR_ONE = 10;

/** What a bar asks of a player, whatever the level. */
interface Asked {
  readonly tones: readonly Tone[];
  readonly rhythm: Level;
  readonly speed: number;
}

/**
 * The lowest level that a line keeps to: its rhythms, its notes a second and its steps over the chords in nine bars of ten,
 * its frets in all. What no level holds is of the last.
 */
export function measuredLevel(request: LineRequest, line: LineNotes): MeasuredLevel {
  // How the chart is heard does not depend on the level: it is read once.
  const model = modelOf(request);
  const heard = hearLine(model, line);
  const bars = model.bars.map(({ index, metre }): Asked => {
    const tones = heard[index] ?? [];
    return {
      tones,
      rhythm: rhythmLevelIn(tones, metre, request.feel.bassRole),
      speed: notesPerSecond(struck(tones).length, metre, request.tempo),
    };
  });
  const sounding = bars.filter(({ tones }) => tones.length > 0);
  const keepsTo = (level: Level): boolean => {
    const { limits, neck } = boundsOf({ ...request, level });
    if (sounding.some(({ tones }) => tones.some(({ midi }) => neck.onNeck[midi] !== true))) return false;
    const beyond = sounding.filter(
      ({ tones, rhythm, speed }) =>
        rhythm > level || speed > limits.notesPerSecond || tones.some((tone) => isBeyondLimits(limits, tone)),
    );
    return beyond.length * BARS_FOR_ONE <= sounding.length;
  };
  const last = LEVELS[LEVELS.length - 1] ?? 5;
  return {
    level: LEVELS.find(keepsTo) ?? last,
    notesPerSecond: Math.max(0, ...bars.map(({ speed }) => speed)),
  };
}
