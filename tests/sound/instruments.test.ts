import { describe, expect, test } from 'vitest';
import { frequencyOf, midiNumber } from '../../src/core/base';
import type { DrumSound } from '../../src/core/feel';
import { bassNote } from '../../src/sound/synthesis/bass';
import { clickSound } from '../../src/sound/synthesis/click';
import { drumHit } from '../../src/sound/synthesis/drums';
import { guitarNote } from '../../src/sound/synthesis/guitar';
import { organNote } from '../../src/sound/synthesis/organ';
import { cents, decibels, peak, pitchOf, rms } from './measure';

/** Low B of a five-string bass to the 24th fret of its G string. */
const LOWEST = 23;
const HIGHEST = 67;
const NOTES = Array.from({ length: HIGHEST - LOWEST + 1 }, (_, index) => midiNumber(LOWEST + index));

/** Equal temperament at A4 = 440 Hz, ISO 16:1975: some values to two decimals, as tables print them. */
const ISO_16: readonly (readonly [midi: number, hertz: number])[] = [
  [23, 30.87],
  [28, 41.2],
  [33, 55],
  [38, 73.42],
  [43, 98],
  [55, 196],
  [67, 392],
];

const bass = (midi: number, force = 0.6, sampleRate = 44_100, seconds = 0.8) =>
  bassNote({ frequency: frequencyOf(midiNumber(midi)), seconds, force, muted: false }, sampleRate);

/** A stretch of the note that has settled, long enough for several periods. */
const settled = (samples: Float32Array, sampleRate: number) =>
  samples.subarray(Math.round(0.12 * sampleRate), Math.round(0.42 * sampleRate));

/** Level of the partial at a frequency, by the discrete Fourier sum under a Hann window. */
function partial(samples: Float32Array, frequency: number, sampleRate: number): number {
  let real = 0;
  let imaginary = 0;
  for (const [index, sample] of samples.entries()) {
    const window = 0.5 - 0.5 * Math.cos((2 * Math.PI * index) / samples.length);
    const angle = (2 * Math.PI * frequency * index) / sampleRate;
    real += sample * window * Math.cos(angle);
    imaginary += sample * window * Math.sin(angle);
  }
  return Math.hypot(real, imaginary);
}

describe('the bass', () => {
  test.each(ISO_16)('MIDI %i sounds at %f Hz as the standard’s table says', (midi, hertz) => {
    const measured = pitchOf(settled(bass(midi), 44_100), 44_100, hertz * 0.7, hertz * 2.6);
    expect(Math.abs(cents(measured, hertz))).toBeLessThan(5);
  });

  test.each([44_100, 48_000])('is in tune within 5 cents on every fret at %i Hz', (sampleRate) => {
    for (const midi of NOTES) {
      const wanted = frequencyOf(midi);
      const samples = settled(bass(midi, 0.6, sampleRate), sampleRate);
      const measured = pitchOf(samples, sampleRate, wanted * 0.85, wanted * 1.15);
      expect(Math.abs(cents(measured, wanted)), `MIDI ${midi}`).toBeLessThan(5);
    }
  });

  test('stays in tune at 96 kHz and at any strength', () => {
    for (const [sampleRate, force] of [
      [96_000, 0.6],
      [44_100, 0],
      [44_100, 1],
    ] as const) {
      for (const midi of [28, 43, 60]) {
        const wanted = frequencyOf(midiNumber(midi));
        const samples = settled(bass(midi, force, sampleRate), sampleRate);
        expect(
          Math.abs(cents(pitchOf(samples, sampleRate, wanted * 0.8, wanted * 1.3), wanted)),
        ).toBeLessThan(5);
      }
    }
  });

  test('has a strong fundamental: within 3 dB of its strongest partial up to the twelfth fret of the G string', () => {
    for (let midi = LOWEST; midi <= 55; midi += 1) {
      const samples = settled(bass(midi), 44_100);
      const base = frequencyOf(midiNumber(midi));
      const partials = [1, 2, 3, 4, 5, 6].map((number) => partial(samples, base * number, 44_100));
      expect(decibels((partials[0] ?? 0) / Math.max(...partials)), `MIDI ${midi}`).toBeGreaterThan(-3);
    }
  });

  test('is heard on a small loudspeaker: its fourth to sixth partials within 16 dB of the first, on the low strings', () => {
    for (const [midi, fret] of [
      [28, 0],
      [33, 0],
      [38, 0],
    ] as const) {
      const note = bassNote(
        { frequency: frequencyOf(midiNumber(midi)), seconds: 0.8, force: 0.6, muted: false, fret },
        44_100,
      );
      const base = frequencyOf(midiNumber(midi));
      const early = note.subarray(0.02 * 44_100, 0.32 * 44_100);
      const under = [4, 5, 6].map((number) =>
        decibels(partial(early, base, 44_100) / partial(early, base * number, 44_100)),
      );
      expect(Math.max(...under), `MIDI ${midi}`).toBeLessThan(16);
    }
  });

  test('the same pitch sounds darker high up a lower string, and is in tune there', () => {
    const at = (fret: number) =>
      bassNote(
        { frequency: frequencyOf(midiNumber(43)), seconds: 0.8, force: 0.6, muted: false, fret },
        44_100,
      );
    const bright = (samples: Float32Array) =>
      partial(settled(samples, 44_100), 98 * 5, 44_100) / partial(settled(samples, 44_100), 98, 44_100);
    expect(bright(at(0))).toBeGreaterThan(1.5 * bright(at(10)));
    for (let fret = 0; fret <= 24; fret += 1) {
      const wanted = frequencyOf(midiNumber(28 + fret));
      const note = bassNote({ frequency: wanted, seconds: 0.8, force: 0.6, muted: false, fret }, 44_100);
      const measured = pitchOf(settled(note, 44_100), 44_100, wanted * 0.85, wanted * 1.15);
      expect(Math.abs(cents(measured, wanted)), `fret ${fret}`).toBeLessThan(5);
    }
  });

  test('a hand on the strings makes it darker and shorter, and leaves it in tune', () => {
    const wanted = frequencyOf(midiNumber(33));
    const damped = bassNote(
      { frequency: wanted, seconds: 1, force: 0.6, muted: false, fret: 0, damped: true },
      44_100,
    );
    const open = bass(33, 0.6, 44_100, 1);
    const late = (samples: Float32Array) =>
      decibels(rms(samples.subarray(0.5 * 44_100, 0.6 * 44_100)) / rms(samples.subarray(0, 0.1 * 44_100)));
    expect(late(damped)).toBeLessThan(late(open) - 4);
    expect(Math.abs(cents(pitchOf(settled(damped, 44_100), 44_100, 40, 70), wanted))).toBeLessThan(5);
  });

  test('leaves no direct current, nor does the organ', () => {
    const mean = (samples: Float32Array) => samples.reduce((sum, sample) => sum + sample, 0) / samples.length;
    for (const midi of [28, 33, 43, 50]) {
      expect(decibels(Math.abs(mean(settled(bass(midi), 44_100)))), `bass ${midi}`).toBeLessThan(-45);
    }
    const held = organNote(frequencyOf(midiNumber(60)), 1, 44_100);
    expect(decibels(Math.abs(mean(settled(held, 44_100))))).toBeLessThan(-45);
  });

  test('is plucked: loudest at once, then dying away, its upper partials first', () => {
    for (const midi of [28, 40, 55]) {
      const samples = bass(midi, 0.6, 44_100, 1.6);
      const stretch = (from: number) => samples.subarray(from * 44_100, (from + 0.2) * 44_100);
      const base = frequencyOf(midiNumber(midi));
      const levels = [0, 0.4, 0.8, 1.2].map((from) => rms(stretch(from)));
      expect(levels).toEqual([...levels].sort((one, other) => other - one));
      const fall = (number: number) =>
        decibels(partial(stretch(0.1), base * number, 44_100) / partial(stretch(0.9), base * number, 44_100));
      expect(fall(12)).toBeGreaterThan(fall(1) + 3);
    }
  });

  test('a harder stroke is brighter', () => {
    const brightness = (force: number) => {
      const samples = settled(bass(33, force), 44_100);
      return partial(samples, 55 * 8, 44_100) / partial(samples, 55, 44_100);
    };
    expect(brightness(1)).toBeGreaterThan(brightness(0.5));
    expect(brightness(0.5)).toBeGreaterThan(brightness(0));
  });

  test('a muted note is a knock: 20 dB down within a tenth of a second', () => {
    const knock = bassNote(
      { frequency: frequencyOf(midiNumber(33)), seconds: 1, force: 0.3, muted: true },
      44_100,
    );
    expect(knock.length).toBeLessThan(0.3 * 44_100);
    const late = rms(knock.subarray(0.12 * 44_100, 0.16 * 44_100));
    expect(decibels(late / rms(knock.subarray(0, 0.04 * 44_100)))).toBeLessThan(-20);
  });
});

describe('guitar and organ', () => {
  test('are in tune within 5 cents over their register', () => {
    for (const midi of [52, 57, 60, 64, 69, 76, 79]) {
      const wanted = frequencyOf(midiNumber(midi));
      const chop = guitarNote({ frequency: wanted, seconds: 0.5, muted: false }, 44_100);
      const held = organNote(wanted, 0.6, 44_100);
      const guitarPitch = pitchOf(chop.subarray(2000, 15_000), 44_100, wanted * 0.8, wanted * 1.3);
      expect(Math.abs(cents(guitarPitch, wanted)), `guitar ${midi}`).toBeLessThan(5);
      // The drawbar an octave below makes the organ's period twice as long.
      const organPitch = pitchOf(settled(held, 44_100), 44_100, wanted * 0.4, wanted * 0.65) * 2;
      expect(Math.abs(cents(organPitch, wanted)), `organ ${midi}`).toBeLessThan(5);
    }
  });

  test('an organ note holds its level', () => {
    const held = organNote(frequencyOf(midiNumber(60)), 1, 44_100);
    const early = rms(held.subarray(4410, 13_230));
    const late = rms(held.subarray(30_870, 39_690));
    expect(Math.abs(decibels(late / early))).toBeLessThan(2);
  });
});

describe('the drums', () => {
  const SOUNDS: readonly DrumSound[] = [
    'kick',
    'snare',
    'rim',
    'closed hat',
    'open hat',
    'foot hat',
    'ride',
    'crash',
  ];

  /** Share of the energy below a frequency, by splitting with one pole. */
  const centre = (samples: Float32Array): number => {
    const spectrum = Array.from({ length: 60 }, (_, index) => {
      const frequency = 40 * 2 ** (index / 6.8);
      return { frequency, level: partial(samples.subarray(0, 4096), frequency, 44_100) };
    });
    const total = spectrum.reduce((sum, { level }) => sum + level, 0);
    return spectrum.reduce((sum, { frequency, level }) => sum + frequency * level, 0) / total;
  };

  test.each(SOUNDS)('%s begins at once and has died away at its end', (sound) => {
    const hit = drumHit(sound, 0, 44_100);
    const loudest = peak(hit);
    const first = hit.findIndex((sample) => Math.abs(sample) > loudest * 0.1);
    expect(first).toBeLessThan(0.003 * 44_100);
    expect(decibels(peak(hit.subarray(-200)) / loudest)).toBeLessThan(-40);
  });

  test('lie where drums lie: kick low, snare in the middle, hats high', () => {
    const [kick = 0, snare = 0, , hat = 0] = SOUNDS.map((sound) => centre(drumHit(sound, 0, 44_100)));
    expect(kick).toBeLessThan(700);
    expect(snare).toBeGreaterThan(kick);
    expect(hat).toBeGreaterThan(snare);
    expect(hat).toBeGreaterThan(5000);
  });

  test('an open hat rings longer than a closed one, a crash longest', () => {
    const ring = (sound: DrumSound) => {
      const hit = drumHit(sound, 0, 44_100);
      const loudest = peak(hit);
      return hit.findLastIndex((sample) => Math.abs(sample) > loudest * 0.03) / 44_100;
    };
    expect(ring('closed hat')).toBeLessThan(0.15);
    expect(ring('open hat')).toBeGreaterThan(2 * ring('closed hat'));
    expect(ring('crash')).toBeGreaterThan(ring('open hat'));
    expect(ring('ride')).toBeGreaterThan(ring('open hat'));
  });

  test('hits of one drum differ and are the same each time they are made', () => {
    expect(drumHit('snare', 0, 44_100)).not.toEqual(drumHit('snare', 1, 44_100));
    expect(drumHit('snare', 1, 44_100)).toEqual(drumHit('snare', 1, 44_100));
  });
});

test('the click is short, and its accent higher', () => {
  const [plain, accent] = [clickSound(false, 44_100), clickSound(true, 44_100)];
  expect(peak(plain.subarray(0.1 * 44_100))).toBeLessThan(0.01);
  const strongest = (samples: Float32Array): number => {
    const levels = Array.from({ length: 300 }, (_, step) => partial(samples, 1000 + step * 10, 44_100));
    return 1000 + levels.indexOf(Math.max(...levels)) * 10;
  };
  expect(strongest(accent)).toBeGreaterThan(strongest(plain) * 1.2);
});
