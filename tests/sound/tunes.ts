import { bpm } from '../../src/core/base';
import { buildPerformance, type Performance, type PerformanceOptions } from '../../src/core/performance';
import { sheetOf } from '../performance/sheets';

export const SKA_LINE = [
  '1 F1 q, 2 A1 q, 3 C2 q, 4 D2 q',
  '1 D2 q, 2 A1 q, 3 F1 q, 4 A1 q',
  '1 G1 q, 2 Bb1 q, 3 D2 8, 3& B1 8, 4 C2 q',
  "1 C2 q., 2& G1 8, 3 E1 q ', 4 G1 q >",
] as const;

export const skaTune = (options: Partial<PerformanceOptions> = {}): Performance =>
  buildPerformance(sheetOf({ chart: '| F | Dm | Gm | C7 |', feel: 'early-ska', bars: SKA_LINE }), {
    tempo: bpm(126),
    countIn: 1,
    passage: null,
    ...options,
  });

/** One bar of one drop: shorter than its cymbals ring. */
export const shortTune = (tempo = 150): Performance =>
  buildPerformance(
    sheetOf({ chart: '| Am |', feel: 'one-drop', bars: ["2 A1 q, 3 C2 8, 3& E2 8, 4 A1 q '"] }),
    {
      tempo: bpm(tempo),
      countIn: 0,
      passage: null,
    },
  );
