import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import type { FeelId } from '../../src/core/feel';
import { buildPerformance } from '../../src/core/performance';
import { createKit, renderRounds, type StereoSound } from '../../src/sound';
import { levelled, TARGET } from '../../src/tracks/level';
import { integratedLoudness, TRACK_RATE, truePeak } from '../../src/tracks/loudness';
import { sheetOf } from '../performance/sheets';
import { SKA_LINE, skaTune } from '../sound/tunes';
import { loudnessByOthers, truePeakByOthers } from '../support/ebur128';

const kit = createKit(TRACK_RATE);
const EVERYONE = { bass: true, drums: true, chops: true, organ: true, click: false };
const BASS = { ...EVERYONE, drums: false, chops: false, organ: false };
const WITHOUT_BASS = { ...EVERYONE, bass: false };

const tune = (feel: FeelId) =>
  buildPerformance(sheetOf({ chart: '| F | Dm | Gm | C7 |', feel, bars: SKA_LINE }), {
    tempo: bpm(126),
    countIn: 1,
    passage: null,
    drumSeed: 1,
    humaniseSeed: 1,
  });

const sine = (hertz: number, level: number, phase = 0): StereoSound => {
  const left = Float32Array.from(
    { length: 2 * TRACK_RATE },
    (_, index) => level * Math.sin((2 * Math.PI * hertz * index) / TRACK_RATE + phase),
  );
  return { sampleRate: TRACK_RATE, left, right: left };
};

describe('the meter', () => {
  // EBU Tech 3341, test case 1: a stereo sine of 1 kHz at −23 dBFS measures −23 LUFS, within 0.1 LU.
  test('knows the sine of EBU Tech 3341', () => {
    expect(integratedLoudness(sine(1000, 10 ** (-23 / 20)))).toBeCloseTo(-23, 1);
  });

  // EBU Tech 3341, test case 16: a quarter of the rate at −6 dBFS, 45° off, peaks between the samples (+0.2, −0.4 dB).
  test('hears a peak between the samples', () => {
    const { left } = sine(TRACK_RATE / 4, 0.5, Math.PI / 4);
    expect(Math.max(...left)).toBeLessThan(0.36);
    expect(truePeak(left)).toBeGreaterThan(-6.4);
    expect(truePeak(left)).toBeLessThan(-5.8);
  });

  test('agrees with the meter of other people', () => {
    const sound = renderRounds([skaTune()], EVERYONE, kit, { repeats: false });
    expect(Math.abs(integratedLoudness(sound) - loudnessByOthers(sound))).toBeLessThan(0.1);
    const peak = Math.max(truePeak(sound.left), truePeak(sound.right));
    expect(Math.abs(peak - truePeakByOthers(sound))).toBeLessThan(0.2);
  });
});

describe('the level of a track', () => {
  test.each([
    ['early-ska', EVERYONE],
    ['revival-ska', EVERYONE],
    ['ballad', WITHOUT_BASS],
    ['funk', BASS],
    ['walking-swing', { ...WITHOUT_BASS, chops: false, organ: false }],
  ] as const)('%s: −16 LUFS within 0.5 LU and under −1 dBTP, by another meter', (feel, mix) => {
    const sound = levelled(renderRounds([tune(feel)], mix, kit, { repeats: false }), false);
    expect(Math.abs(loudnessByOthers(sound) - TARGET)).toBeLessThan(0.5);
    expect(truePeakByOthers(sound)).toBeLessThan(-1);
  });

  test('of silence is silence', () => {
    const silent = sine(100, 0);
    expect(levelled(silent, false)).toBe(silent);
  });

  test('turns peaks down without a click, also over the seam of what repeats', () => {
    const beats = Float32Array.from({ length: 2 * TRACK_RATE }, (_, index) => {
      const hit =
        Math.exp(-(index % 24_000) / 800) * Math.sin((2 * Math.PI * 80 * (index % 24_000)) / TRACK_RATE);
      return 0.02 * Math.sin((2 * Math.PI * 300 * index) / TRACK_RATE) + hit;
    });
    const sound = { sampleRate: TRACK_RATE, left: beats, right: beats };
    const { left } = levelled(sound, true);
    const gains = left.map((sample, index) =>
      Math.abs(beats[index] ?? 0) > 0.001 ? sample / (beats[index] ?? 1) : 0,
    );
    const steps = gains.map((gain, index) => {
      const next = (index + 1) % gains.length;
      const heard = Math.min(Math.abs(beats[index] ?? 0), Math.abs(beats[next] ?? 0)) > 0.001;
      return heard ? Math.abs((gains[next] ?? 0) - gain) : 0;
    });
    expect(Math.max(...steps)).toBeLessThan(0.02 * Math.max(...gains));
  });
});

describe('rounds one after the other', () => {
  const round = (seed: number, countIn: 0 | 1) =>
    skaTune({ countIn, drumSeed: seed, humaniseSeed: seed, tempo: bpm(150) });

  test('begin where they should, and each rings on into the next', () => {
    const [first, second] = [round(1, 1), round(2, 0)];
    const both = renderRounds([first, second], EVERYONE, kit, { repeats: false });
    const alone = renderRounds([second], EVERYONE, kit, { repeats: false });
    // One bar of count-in and four bars at 150 bpm.
    const seam = Math.round(((5 * 4 * 60) / 150) * TRACK_RATE);
    expect(both.left.length - alone.left.length).toBe(seam);
    // Long after the seam only the second round is heard.
    const later = 5 * TRACK_RATE;
    for (let index = later; index < later + 1000; index += 1)
      expect(both.left[seam + index]).toBeCloseTo(alone.left[index] ?? 0, 4);
    // Right behind it the first one still rings.
    const rest = both.left.slice(seam, seam + 2000).map((sample, index) => sample - (alone.left[index] ?? 0));
    expect(Math.max(...rest.map(Math.abs))).toBeGreaterThan(0.001);
  });

  test('that repeat are as long as their bars, and lead into their beginning', () => {
    const once = renderRounds([round(1, 0)], EVERYONE, kit, { repeats: true });
    expect(once.left.length).toBe(Math.round(((4 * 4 * 60) / 150) * TRACK_RATE));
    const thrice = renderRounds([round(1, 0), round(1, 0), round(1, 0)], EVERYONE, kit, { repeats: true });
    const { length } = once.left;
    for (const [index, sample] of once.left.entries()) {
      if (index % 997 === 0) expect(thrice.left[length + index]).toBeCloseTo(sample, 4);
    }
  });
});
