import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { buildPerformance } from '../../src/core/performance';
import { renderMix } from '../../src/sound/synthesis/mix';
import { createKit } from '../../src/sound/synthesis/voices';
import { sheetOf } from '../performance/sheets';
import { decibels, rms } from './measure';

const RATE = 44_100;
const kit = createKit(RATE);
const CHOPS = { bass: false, drums: false, chops: true, organ: false, click: false };
const MILLISECOND = RATE / 1000;

/** Milliseconds from the beginning of the sound until it stays 20 dB under its loudest five milliseconds. */
function fallsAfter(samples: Float32Array): number {
  const first = samples.findIndex((sample) => Math.abs(sample) > 1e-4);
  const levels = Array.from({ length: 400 }, (_, index) =>
    decibels(rms(samples.subarray(first + (index - 2.5) * MILLISECOND, first + (index + 2.5) * MILLISECOND))),
  );
  return levels.findLastIndex((level) => level > Math.max(...levels) - 20);
}

describe('a chop is a stroke of 60 to 90 ms (common practice, no source)', () => {
  test.each([45, 63, 90, 126, 180])('at %i a minute', (tempo) => {
    for (const feel of ['early-ska', 'rocksteady', 'revival-ska', 'soul-backbeat', 'disco'] as const) {
      const tune = buildPerformance(sheetOf({ chart: '| Fmaj7 |', feel }), {
        tempo: bpm(tempo),
        countIn: 0,
        passage: null,
      });
      const { left } = renderMix(tune, CHOPS, kit);
      const first = left.findIndex((sample) => Math.abs(sample) > 1e-4);
      const ms = fallsAfter(left.subarray(first, first + 200 * MILLISECOND));
      expect(ms, feel).toBeGreaterThan(60);
      expect(ms, feel).toBeLessThan(90);
    }
  });
});
