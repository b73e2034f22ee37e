/** How the marks of a note sound, measured by other means than they are made with. */
import { describe, expect, test } from 'vitest';
import { frequencyOf, midiNumber, ticks } from '../../src/core/base';
import type { PitchedEvent } from '../../src/core/performance';
import { bassNote } from '../../src/sound/synthesis/bass';
import { slid } from '../../src/sound/synthesis/glide';
import { createKit } from '../../src/sound/synthesis/voices';
import { cents, decibels, pitchOf, rms } from './measure';

const RATE = 44_100;

const note = (tone?: 'palm muted' | 'slapped' | 'popped') =>
  bassNote(
    { frequency: frequencyOf(midiNumber(33)), seconds: 1, force: 0.6, muted: false, ...(tone && { tone }) },
    RATE,
  );

/** Share of a sound that changes from sample to sample: more for brighter ones. */
const brightness = (samples: Float32Array): number =>
  rms(samples.map((sample, index) => sample - (samples[index - 1] ?? 0))) / rms(samples);

describe('colours', () => {
  test('a slap and a pop are brighter than a finger, a palm mute is darker and shorter', () => {
    const early = (samples: Float32Array) => brightness(samples.subarray(0, 0.1 * RATE));
    expect(early(note('slapped'))).toBeGreaterThan(1.3 * early(note()));
    expect(early(note('popped'))).toBeGreaterThan(1.3 * early(note()));
    expect(early(note('palm muted'))).toBeLessThan(0.8 * early(note()));
    const left = (samples: Float32Array) =>
      decibels(rms(samples.subarray(0.5 * RATE, 0.6 * RATE)) / rms(samples.subarray(0, 0.1 * RATE)));
    expect(left(note('palm muted'))).toBeLessThan(left(note()) - 12);
  });

  test('all are in tune', () => {
    for (const tone of ['palm muted', 'slapped', 'popped'] as const) {
      const measured = pitchOf(note(tone).subarray(0.1 * RATE, 0.4 * RATE), RATE, 45, 66);
      expect(Math.abs(cents(measured, 55)), tone).toBeLessThan(8);
    }
  });
});

describe('slides', () => {
  test('end at the other pitch, and begin at it', () => {
    const source = bassNote(
      { frequency: frequencyOf(midiNumber(40)), seconds: 3, force: 0.6, muted: false },
      RATE,
    );
    const wanted = frequencyOf(midiNumber(40));
    const up = slid(source, 1.2, [{ at: 'end', halfSteps: 5, seconds: 0.2 }], RATE);
    const before = pitchOf(up.subarray(0.3 * RATE, 0.6 * RATE), RATE, wanted * 0.8, wanted * 1.2);
    expect(Math.abs(cents(before, wanted))).toBeLessThan(8);
    const high = pitchOf(up.subarray(1.17 * RATE, 1.2 * RATE), RATE, wanted * 1.1, wanted * 1.5);
    expect(cents(high, wanted)).toBeGreaterThan(400);
    const into = slid(source, 1.2, [{ at: 'beginning', halfSteps: -2, seconds: 0.3 }], RATE);
    const settled = pitchOf(into.subarray(0.5 * RATE, 0.8 * RATE), RATE, wanted * 0.8, wanted * 1.2);
    expect(Math.abs(cents(settled, wanted))).toBeLessThan(8);
    const first = pitchOf(into.subarray(0, 0.06 * RATE), RATE, wanted * 0.7, wanted * 1.1);
    expect(cents(first, wanted)).toBeLessThan(-100);
  });
});

describe('attacks', () => {
  const event: PitchedEvent = {
    part: 'bass',
    midi: midiNumber(40),
    start: ticks(0),
    duration: ticks(960),
    velocity: 92,
    muted: false,
  };
  const loudest = (attack?: 'hammered' | 'joined'): number => {
    const { samples } = createKit(RATE).voice({ ...event, ...(attack && { attack }) }, 0.5, 0, []);
    return brightness(samples.subarray(0, 0.02 * RATE));
  };

  test('what is not plucked has no pluck', () => {
    expect(loudest('hammered')).toBeLessThan(loudest());
    expect(loudest('joined')).toBeLessThan(loudest());
    const soft = createKit(RATE).voice({ ...event, attack: 'joined' }, 0.5, 0, []).samples;
    expect(rms(soft.subarray(0, 60))).toBeLessThan(0.2 * rms(soft.subarray(2000, 4000)));
  });

  test('between a note and the one it is hammered on to there is no hole', () => {
    const kit = createKit(RATE);
    const first = kit.voice({ ...event, leadsOn: true }, 0.5, 0, []);
    const second = kit.voice({ ...event, midi: midiNumber(42), attack: 'hammered' }, 0.5, 0, []);
    const seam = Math.round(0.5 * RATE);
    const heard = new Float32Array(seam + RATE / 2);
    const add = (voice: typeof first, at: number) => {
      for (let index = 0; index < voice.length && at + index < heard.length; index += 1) {
        const left = voice.length - index;
        const fade = left < voice.release ? left / voice.release : 1;
        heard[at + index] = (heard[at + index] ?? 0) + fade * (voice.samples[index] ?? 0);
      }
    };
    add(first, 0);
    add(second, seam);
    const level = (from: number) => decibels(rms(heard.subarray(from, from + 0.012 * RATE)));
    const around = level(seam - 0.05 * RATE);
    for (let offset = -0.02; offset < 0.03; offset += 0.002) {
      expect(level(seam + Math.round(offset * RATE)), `${offset} s`).toBeGreaterThan(around - 12);
    }
  });
});
