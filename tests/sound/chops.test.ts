import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { FEEL_IDS, type FeelId, feelById, homeMetre } from '../../src/core/feel';
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

/** How long the first chop of a feel is at a tempo, in milliseconds. */
function chopIn(feel: FeelId, tempo: number): number {
  const sheet = sheetOf({ chart: '| Fmaj7 |', feel, metre: homeMetre(feelById(feel)) });
  const tune = buildPerformance(sheet, { tempo: bpm(tempo), countIn: 0, passage: null });
  const chops = tune.events.filter(({ part }) => part === 'chops');
  // In six, and fast, the next one comes before this one could be measured.
  const events = chops.filter(({ start }) => start === chops[0]?.start);
  const { left } = renderMix({ ...tune, events }, CHOPS, kit);
  const first = left.findIndex((sample) => Math.abs(sample) > 1e-4);
  return fallsAfter(left.subarray(first, first + 200 * MILLISECOND));
}

describe('a chop is a stroke of 60 to 90 ms (common practice, no source)', () => {
  test.each(FEEL_IDS)('%s: at half speed and fast', (feel) => {
    for (const tempo of [45, 180]) {
      expect(chopIn(feel, tempo), `${tempo} a minute`).toBeGreaterThan(60);
      expect(chopIn(feel, tempo), `${tempo} a minute`).toBeLessThan(90);
    }
  });

  test.each([63, 90, 126])('at %i a minute', (tempo) => {
    const ms = chopIn('early-ska', tempo);
    expect(ms).toBeGreaterThan(60);
    expect(ms).toBeLessThan(90);
  });
});
