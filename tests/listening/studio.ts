/** Basses that play notes at given times, from two independent sources, and what a room adds to them. */
import { readFileSync } from 'node:fs';
import { createRandom, midiNumber, ticks } from '../../src/core/base';
import type { PitchedEvent } from '../../src/core/performance';
import { createKit } from '../../src/sound';

export const RATE = 44_100;

/** A note as a student plays it; seconds. */
export interface StruckNote {
  readonly start: number;
  readonly end: number;
  readonly midi: number;
  /** 1–127 */
  readonly velocity: number;
}

/** Plays notes into silence of so many seconds, begun at sample precision. */
export type Bass = (notes: readonly StruckNote[], seconds: number) => Float32Array;

const kit = createKit(RATE);

/** Our own synthesis, note by note. */
export const ownBass: Bass = (notes, seconds) => {
  const sound = new Float32Array(Math.ceil(seconds * RATE));
  for (const { start, end, midi, velocity } of notes) {
    const event: PitchedEvent = {
      ...{ part: 'bass', start: ticks(0), duration: ticks(960), velocity, muted: false },
      midi: midiNumber(midi),
    };
    const { samples, gain, length, release } = kit.voice(event, end - start, 0, []);
    addFaded(sound, samples, Math.round(start * RATE), gain, length, release);
  }
  return sound;
};

function addFaded(
  sound: Float32Array,
  samples: Float32Array,
  at: number,
  gain: number,
  length: number,
  release: number,
): void {
  for (let index = 0; index < Math.min(length, samples.length) && at + index < sound.length; index += 1) {
    const fade = Math.min(1, (length - index) / Math.max(1, release));
    sound[at + index] = (sound[at + index] ?? 0) + gain * fade * (samples[index] ?? 0);
  }
}

/** Recordings of an electric bass (tonejs-instrument-bass-electric-wav 1.1.2, CC BY 3.0), by the names of their files. */
const RECORDED = ['E1', 'G1', 'As1', 'Cs2', 'E2', 'G2', 'As2', 'Cs3', 'E3'] as const;
/** Half steps above C. */
const STEPS: Readonly<Record<string, number>> = { Cs: 1, E: 4, G: 7, As: 10 };

/** Samples of a WAV file of one channel and 16 bits, as these are. */
function readRecording(name: string): Float32Array {
  const path = new URL(`../../node_modules/tonejs-instrument-bass-electric-wav/${name}.wav`, import.meta.url);
  const bytes = readFileSync(path);
  let chunk = 12;
  while (bytes.toString('latin1', chunk, chunk + 4) !== 'data') chunk += 8 + bytes.readUInt32LE(chunk + 4);
  const first = chunk + 8;
  const length = Math.min(4 * RATE, Math.floor((bytes.length - first) / 2));
  return Float32Array.from({ length }, (_, index) => bytes.readInt16LE(first + index * 2) / 32_768);
}

const recordings = new Map<number, Float32Array>();

function recordingNear(midi: number): { readonly at: number; readonly samples: Float32Array } {
  if (recordings.size === 0)
    for (const name of RECORDED) {
      const octave = Number(name.at(-1));
      recordings.set((octave + 1) * 12 + (STEPS[name.slice(0, -1)] ?? 0), readRecording(name));
    }
  const at =
    [...recordings.keys()].sort((one, other) => Math.abs(one - midi) - Math.abs(other - midi))[0] ?? 0;
  return { at, samples: recordings.get(at) ?? new Float32Array(1) };
}

/** A recorded bass, each note from the nearest recording, faster or slower as its pitch asks. */
export const recordedBass: Bass = (notes, seconds) => {
  const sound = new Float32Array(Math.ceil(seconds * RATE));
  for (const { start, end, midi, velocity } of notes) {
    const { at, samples } = recordingNear(midi);
    const speed = 2 ** ((midi - at) / 12);
    const length = Math.round((end - start) * RATE);
    const moved = Float32Array.from({ length }, (_, index) => {
      const place = index * speed;
      const whole = Math.floor(place);
      const [here, next] = [samples[whole] ?? 0, samples[whole + 1] ?? 0];
      return here + (next - here) * (place - whole);
    });
    addFaded(sound, moved, Math.round(start * RATE), 0.4 * (velocity / 92), length, Math.round(0.03 * RATE));
  }
  return sound;
};

/** Root mean square. */
export const rmsOf = (sound: Float32Array): number =>
  Math.sqrt(sound.reduce((sum, value) => sum + value * value, 0) / Math.max(1, sound.length));

/** A sound with another one under it, so many decibels softer on average; what is too short for it comes round again. */
export function under(sound: Float32Array, other: Float32Array, decibels: number): Float32Array {
  const gain = (rmsOf(sound) / Math.max(1e-9, rmsOf(other))) * 10 ** (decibels / 20);
  return sound.map((value, index) => value + gain * (other[index % other.length] ?? 0));
}

/** Mains hum with two of its harmonics. */
export const hum = Float32Array.from({ length: RATE }, (_, index) =>
  [1, 0.5, 0.3].reduce(
    (sum, level, at) => sum + level * Math.sin((2 * Math.PI * 50 * (at + 1) * index) / RATE),
    0,
  ),
);

export const hiss = (() => {
  const { next } = createRandom(5);
  return Float32Array.from({ length: 3 * RATE }, () => next() * 2 - 1);
})();

/** A small room: a few walls, and what they send back and forth, gone in some 0.3 s. */
export function roomed(sound: Float32Array): Float32Array {
  const out = Float32Array.from(sound);
  for (const [seconds, gain] of [
    [0.0113, 0.35],
    [0.0171, 0.3],
    [0.0297, 0.25],
  ] as const) {
    const delay = Math.round(seconds * RATE);
    const echo = new Float32Array(sound.length);
    for (let index = delay; index < sound.length; index += 1)
      echo[index] = 0.5 * (echo[index - delay] ?? 0) + (sound[index - delay] ?? 0);
    for (let index = 0; index < out.length; index += 1)
      out[index] = (out[index] ?? 0) + gain * (echo[index] ?? 0);
  }
  return out;
}
