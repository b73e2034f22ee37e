import { describe, expect, it, vi } from 'vitest';
import { transposeChartText } from '../../src/core/chart';
import {
  ALL_KEYS,
  bestEnharmonicKey,
  describeKey,
  type Key,
  keySignature,
  parseNumeral,
  transpositionBy,
  transpositionTo,
} from '../../src/core/theory';

// Many cases in one test; a busy machine needs its time.
vi.setConfig({ testTimeout: 60_000 });

/** Keys people play in: up to six sharps or flats. */
const KEYS = ALL_KEYS.filter((each) => Math.abs(keySignature(each)) <= 6);
const NUMERALS: Partial<Record<Key['mode'], string>> = {
  major: 'I vi7 | ii7 V7 | Imaj7 V7/ii | ii V7/V | V7 IV6 | iv bVII7 | viio7/V V65 | bVI I',
  minor: 'i VI | iiø7 V7 | i7 V7/iv | iv V7/V | V7 III6 | viio7 i | bII6 V | i',
};

/** The same music written in a key. */
const chartIn = (key: Key): string =>
  `(key: ${describeKey(key)})\n| ${(NUMERALS[key.mode] ?? '').replace(/[^\s|]+/g, (text) => {
    const chord = parseNumeral(text, key);
    if (!chord.ok) throw new Error(chord.problem.message);
    return chord.value.symbol;
  })} | ; the end`;

describe('transposing a chart to a key', () => {
  it.each(KEYS.map((from) => [describeKey(from), from] as const))(
    'from %s to every key and back',
    (_, from) => {
      for (const to of KEYS.filter((each) => each.mode === from.mode)) {
        const there = transpositionTo(from, to.tonic);
        const back = transpositionTo(to, from.tonic);
        const moved = transposeChartText(chartIn(from), there.interval);
        // Spelled as the target key spells it: what the numerals give there.
        expect(moved.replace(/b/g, '♭').replace(/#/g, '♯')).toBe(chartIn(to).replace(/b/g, '♭'));
        expect(transposeChartText(moved, back.interval).replace(/b/g, '♭')).toBe(
          chartIn(from).replace(/b/g, '♭'),
        );
      }
    },
  );

  it.each(KEYS.map((from) => [describeKey(from), from] as const))(
    'from %s by any number of half steps',
    (_, from) => {
      for (let halfSteps = -11; halfSteps <= 11; halfSteps += 1) {
        const { key, interval } = transpositionBy(from, halfSteps);
        expect(bestEnharmonicKey(key)).toEqual(key);
        const moved = transposeChartText(chartIn(from), interval);
        expect(moved.replace(/b/g, '♭').replace(/#/g, '♯')).toBe(chartIn(key).replace(/b/g, '♭'));
        const back = { steps: -interval.steps, halfSteps: -interval.halfSteps };
        expect(transposeChartText(moved, back).replace(/b/g, '♭')).toBe(chartIn(from).replace(/b/g, '♭'));
      }
    },
  );
});
