/** The room, measured by other means than it is made with. */
import { describe, expect, test } from 'vitest';
import { renderMix } from '../../src/sound/synthesis/mix';
import { CORNERS } from '../../src/sound/synthesis/room';
import { placePerformance, renderWindow } from '../../src/sound/synthesis/score';
import { createKit } from '../../src/sound/synthesis/voices';
import { decibels, rms } from './measure';
import { inRoom } from './plain-room';
import { shortTune, skaTune } from './tunes';

const RATE = 44_100;
const impulse = (): Float32Array => {
  const samples = new Float32Array(RATE);
  samples[0] = 1;
  return samples;
};

/** Seconds to −60 dB, from the slope between −5 and −35 dB of the energy that is still to come (ISO 3382-1, 5.3.3 and annex A). */
function reverberationTime(samples: Float32Array): number {
  const left = new Float64Array(samples.length + 1);
  for (let index = samples.length - 1; index >= 0; index -= 1) {
    left[index] = (left[index + 1] ?? 0) + (samples[index] ?? 0) ** 2;
  }
  const whole = left[0] ?? 1;
  const at = (level: number) => left.findIndex((energy) => 10 * Math.log10(energy / whole) < level);
  return ((at(-35) - at(-5)) / RATE) * 2;
}

describe.each(CORNERS.map((corner) => [corner.stems.join(' and '), corner] as const))(
  'the room of %s',
  (_, { room }) => {
    const [one, other] = inRoom(impulse(), room, RATE);

    test('is short, dies away as long as it says, and is over in twice that time', () => {
      for (const side of [one, other]) {
        // Treble dies sooner, so that the whole is a little shorter.
        expect(reverberationTime(side)).toBeGreaterThan(room.decay * 0.6);
        expect(reverberationTime(side)).toBeLessThan(room.decay * 1.1);
        expect(rms(side.subarray(Math.round(2 * room.decay * RATE)))).toBeLessThan(1e-7);
      }
    });

    test('lies well behind what is struck, and its two sides are unlike', () => {
      const energy = (side: Float32Array) => side.reduce((sum, sample) => sum + sample * sample, 0);
      for (const side of [one, other]) {
        expect(10 * Math.log10(energy(side))).toBeLessThan(-10);
        expect(10 * Math.log10(energy(side))).toBeGreaterThan(-30);
      }
      const product = one.reduce((sum, sample, index) => sum + sample * (other[index] ?? 0), 0);
      expect(Math.abs(product) / Math.sqrt(energy(one) * energy(other))).toBeLessThan(0.5);
    });
  },
);

describe('in the mix', () => {
  const kit = createKit(RATE);

  test('the bass stays dry, and the kit is heard on after its last stroke', () => {
    const placed = placePerformance(shortTune(), kit);
    const kick = { ...placed, within: placed.within.filter(({ stem }) => stem === 'drums').slice(0, 1) };
    const stroke = kick.within[0];
    const end = (stroke?.at ?? 0) + (stroke?.length ?? 0);
    const after = renderWindow(kick, 1, 0, end, end + 2000).drums;
    expect(decibels(rms(after))).toBeGreaterThan(-90);
    const bass = { ...placed, within: placed.within.filter(({ stem }) => stem === 'bass').slice(0, 1) };
    const note = bass.within[0];
    const over = (note?.at ?? 0) + (note?.length ?? 0);
    const window = renderWindow(bass, 1, 0, over, over + 2000);
    expect(Object.values(window).every((stem) => stem.every((sample) => sample === 0))).toBe(true);
  });

  test('the hats stand to one side, kick and snare in the middle', () => {
    const performance = skaTune({ countIn: 0 });
    const alone = { bass: false, drums: true, chops: false, organ: false, click: false };
    const balance = (sounds: readonly string[]) => {
      const events = performance.events.filter(
        (event) => event.part === 'drums' && sounds.includes(event.sound),
      );
      const { left, right } = renderMix({ ...performance, events }, alone, kit);
      return decibels(rms(right) / rms(left));
    };
    expect(balance(['closed hat', 'open hat'])).toBeGreaterThan(2);
    expect(balance(['closed hat', 'open hat'])).toBeLessThan(6);
    expect(Math.abs(balance(['kick', 'snare']))).toBeLessThan(0.5);
  });
});

describe('volumes', () => {
  test('half is 6 dB less, of that part alone', () => {
    const performance = skaTune({ countIn: 0 });
    const kit = createKit(RATE);
    const mix = { bass: true, drums: false, chops: false, organ: false, click: false };
    const level = (volumes?: { readonly bass?: number; readonly drums?: number }) =>
      decibels(rms(renderMix(performance, volumes ? { ...mix, volumes } : mix, kit).left));
    expect(level() - level({ bass: 0.5 })).toBeCloseTo(6.02, 1);
    expect(level({ drums: 0.1 })).toBeCloseTo(level(), 6);
  });
});
