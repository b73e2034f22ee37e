/** Students who play a line with known faults. */
import { bpm } from '../../src/core/base';
import { type ExpectedNote, expectedOf, type HeardNote, type PlayedRound } from '../../src/core/listening';
import { buildPerformance, type Performance, secondsAt } from '../../src/core/performance';
import { sheetOf } from '../performance/sheets';

/** Four bars with a rest on beat one, a long silence, short notes and low ones. */
const BARS = [
  '2 A1 q, 3 C2 8, 3& E2 8, 4 A1 q',
  '1 D2 q, 1& D2 8, 3 A1 q',
  '2 E1 8, 2& G1 8, 3 B1 q, 4 E2 8',
  '1 A1 q., 2& G1 8, 3 A1 h',
] as const;

export const lineOf = (tempo: number, bars: readonly string[] = BARS, chart = '| Am | Dm | Em | Am |') =>
  buildPerformance(sheetOf({ chart, feel: 'one-drop', bars }), {
    tempo: bpm(tempo),
    countIn: 0,
    passage: null,
  });

/** Rounds that follow each other without a gap. */
export const roundsOf = (performance: Performance, count: number, origin = 1): readonly PlayedRound[] =>
  Array.from({ length: count }, (_, round) => ({
    performance,
    round,
    origin: origin + round * secondsAt(performance, performance.end),
  }));

/** Plays what is written, as an ear hears it. */
export const heardAs = ({ start, end, midi, dead }: ExpectedNote): HeardNote => ({
  start,
  end,
  midi: dead ? null : midi,
});

export const expectedAt = (tempo: number, rounds = 1) => expectedOf(roundsOf(lineOf(tempo), rounds));
