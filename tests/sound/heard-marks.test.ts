/**
 * Whatever the pencil can write is heard: each mark, alone at one note of a line, measured on the line's rendered sound
 * against the same line without it. The measures are other than what the marks are made with; their thresholds are ours.
 */
import { describe, expect, test } from 'vitest';
import { bpm, type DynamicSign, MARKS, type Mark, ticks } from '../../src/core/base';
import { buildPerformance } from '../../src/core/performance';
import { renderMix } from '../../src/sound/synthesis/mix';
import { createKit } from '../../src/sound/synthesis/voices';
import { sheetOf } from '../performance/sheets';
import { decibels, pitchOf, rms } from './measure';

const RATE = 44_100;
const kit = createKit(RATE);
const ALONE = { bass: true, drums: false, chops: false, organ: false, click: false };
/** A beat at 120 a minute, in samples. */
const BEAT = RATE / 2;

/** The line's sound: A, the marked D and the F that it may lead to, and A again. */
function sound(mark: Mark | null, dynamics?: readonly DynamicSign[]): Float32Array {
  const marked = mark === null ? '' : ` {${mark}}`;
  const sheet = sheetOf({
    chart: '| Dm |',
    feel: 'soul-backbeat',
    bars: [`1 A1 q, 2 D2 q${marked}, 3 F2 q, 4 A1 q`],
  });
  /** D is on a string of its own, as a note that rings on must be. */
  const strings = [3, 2, 1, 3];
  const bars = sheet.bars.map((bar) => ({
    ...bar,
    ...(dynamics && { dynamics }),
    notes: bar.notes.map((note, index) => ({
      ...note,
      fingered: { string: strings[index], fret: 3, finger: 2, position: 2 },
    })),
  })) as unknown as typeof sheet.bars;
  const tune = buildPerformance(
    { ...sheet, bars, feel: { ...sheet.feel, bassTouch: { ...sheet.feel.bassTouch, muted: false } } },
    { tempo: bpm(120), countIn: 0, passage: null },
  );
  return renderMix(tune, ALONE, kit).left;
}

const PLAIN = sound(null);
/** A stretch of the sound from one beat to another, counted from 0. */
const stretch = (samples: Float32Array, from: number, until: number) =>
  samples.subarray(Math.round(from * BEAT), Math.round(until * BEAT));
/** How much louder than the plain line, in decibels. */
const louder = (mark: Mark, from: number, until: number): number =>
  decibels(rms(stretch(sound(mark), from, until)) / rms(stretch(PLAIN, from, until)));
/** Share of a sound that changes from sample to sample, against the plain line's: over 1 where it is brighter. */
function brighter(mark: Mark, from: number, until: number): number {
  const of = (samples: Float32Array) =>
    rms(samples.map((sample, index) => sample - (samples[index - 1] ?? sample))) / rms(samples);
  return of(stretch(sound(mark), from, until)) / of(stretch(PLAIN, from, until));
}
/** Half steps above D2 at some place. */
const height = (samples: Float32Array, from: number, until: number): number =>
  12 * Math.log2(pitchOf(stretch(samples, from, until), RATE, 50, 140) / 73.416);

/** What a listener can measure of each mark. */
const HEARD: Readonly<Record<Exclude<Mark, 'i' | 'm' | 'fermata'>, () => void>> = {
  accent: () => expect(louder('accent', 1, 1.5)).toBeGreaterThan(2),
  'strong accent': () => expect(louder('strong accent', 1, 1.5)).toBeGreaterThan(louder('accent', 1, 1.5)),
  staccato: () => expect(louder('staccato', 1.6, 1.9)).toBeLessThan(-40),
  tenuto: () => expect(louder('tenuto', 1, 1.5)).toBeGreaterThan(0.4),
  portato: () => expect(louder('portato', 1.85, 1.95)).toBeLessThan(-40),
  'let ring': () => expect(louder('let ring', 2.2, 2.9)).toBeGreaterThan(0.3),
  ghost: () => {
    expect(louder('ghost', 1, 1.2)).toBeLessThan(-6);
    expect(louder('ghost', 1.5, 1.9)).toBeLessThan(-40);
  },
  'palm mute': () => {
    expect(louder('palm mute', 1.6, 1.9)).toBeLessThan(-6);
    expect(brighter('palm mute', 1.2, 1.5)).toBeLessThan(0.85);
  },
  slap: () => expect(brighter('slap', 1, 1.2)).toBeGreaterThan(1.3),
  pop: () => expect(brighter('pop', 1, 1.2)).toBeGreaterThan(1.3),
  'slide from below': () => expect(height(sound('slide from below'), 1.005, 1.1)).toBeLessThan(-0.5),
  'slide from above': () => expect(height(sound('slide from above'), 1.005, 1.1)).toBeGreaterThan(0.5),
  // Led to without a pluck: the next note begins softer.
  hammer: () => expect(louder('hammer', 2, 2.1)).toBeLessThan(-1),
  slur: () => expect(louder('slur', 2, 2.1)).toBeLessThan(-1),
  slide: () => expect(height(sound('slide'), 1.9, 1.99)).toBeGreaterThan(1),
  'slide down': () => expect(height(sound('slide down'), 1.85, 1.97)).toBeLessThan(-1),
  'slide up': () => expect(height(sound('slide up'), 1.85, 1.97)).toBeGreaterThan(1),
};

describe('every mark is heard', () => {
  test.each(Object.entries(HEARD))('%s', (_, measure) => measure());

  test('but a finger’s name and the hold that is the player’s own', () => {
    const unheard = MARKS.filter((mark) => !Object.hasOwn(HEARD, mark));
    expect(unheard).toEqual(['i', 'm', 'fermata']);
  });
});

describe('dynamics are heard', () => {
  const level = (dynamics: readonly DynamicSign[], beat: number) =>
    decibels(rms(stretch(sound(null, dynamics), beat, beat + 0.9)));

  test('piano is softer and forte louder than no sign', () => {
    const at = ticks(0);
    expect(level([{ at, level: 'p' }], 1)).toBeLessThan(level([], 1) - 3);
    expect(level([{ at, level: 'f' }], 1)).toBeGreaterThan(level([], 1) + 1);
  });

  test('hairpins grow and fall', () => {
    const rise = (hairpin: 'crescendo' | 'diminuendo') => {
      const dynamics = [{ at: ticks(0), level: 'mp', hairpin }] as const;
      return level(dynamics, 3) - level(dynamics, 0);
    };
    expect(rise('crescendo')).toBeGreaterThan(1);
    expect(rise('diminuendo')).toBeLessThan(-1);
  });
});
