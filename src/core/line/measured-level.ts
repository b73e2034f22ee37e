import { levelFindings } from './bar-findings';
import { hearLine, struck } from './hearing';
import { notesPerSecond } from './level';
import { modelOf } from './read-request';
import { LEVELS, type Level, type LineNotes, type LineRequest } from './types';

/** What a line asks of a player. */
export interface MeasuredLevel {
  readonly level: Level;
  /** Notes a second of its busiest bar, at the tempo of the request. */
  readonly notesPerSecond: number;
}

/** Of so many bars one may be beyond the level: a single hard bar makes no hard line (common practice, no source). */
const BARS_FOR_ONE = 10;

/**
 * The lowest level that a line keeps to: its rhythms, its notes a second and its steps over the chords in nine bars of ten,
 * its frets in all. What no level holds is of the last.
 */
export function measuredLevel(request: LineRequest, line: LineNotes): MeasuredLevel {
  const keepsTo = (level: Level): boolean => {
    const model = modelOf({ ...request, level });
    const heard = hearLine(model, line);
    const sounding = model.bars.filter(({ index }) => (heard[index]?.length ?? 0) > 0);
    const found = sounding.map((bar) =>
      levelFindings({ model, bar, tones: heard[bar.index] ?? [], notes: line[bar.index] ?? [] }),
    );
    const offNeck = found.flat().some(({ kind }) => kind === 'fret');
    const beyond = found.filter((findings) => findings.length > 0).length;
    return !offNeck && beyond * BARS_FOR_ONE <= sounding.length;
  };
  const last = LEVELS[LEVELS.length - 1] ?? 5;
  const model = modelOf({ ...request, level: last });
  const heard = hearLine(model, line);
  const speeds = model.bars.map((bar) =>
    notesPerSecond(struck(heard[bar.index] ?? []).length, bar.metre, request.tempo),
  );
  return { level: LEVELS.find(keepsTo) ?? last, notesPerSecond: Math.max(0, ...speeds) };
}
