import { expect } from 'vitest';
import { biquad } from '../../src/sound/synthesis/filters';
import { createNetwork, letSound, type Room } from '../../src/sound/synthesis/network';

/** What the two sides hear. */
type Sides<Samples> = readonly [Samples, Samples];

/** What the room alone makes of a sound. */
export function inRoom(dry: Float32Array, room: Room, rate: number): Sides<Float32Array> {
  const sides = [new Float32Array(dry.length), new Float32Array(dry.length)] as const;
  letSound(createNetwork(room, rate), dry, sides);
  return sides;
}

/** Rows and columns of the Hadamard matrix of the order 4 (Sylvester's). */
const HADAMARD = [
  [1, 1, 1, 1],
  [1, -1, 1, -1],
  [1, 1, -1, -1],
  [1, -1, -1, 1],
] as const;

/** What each side hears of the four lines. */
const HEARD = [
  [1, 1, -1, 1],
  [1, -1, 1, 1],
] as const;

const product = (row: readonly number[], column: readonly number[]): number =>
  row.reduce((sum, value, index) => sum + value * (column[index] ?? 0), 0);

/** In the order of Jot and Chaigne: lines with low-passes, what is heard of them, and the level and high-pass last. */
export function plainly(dry: Float32Array, room: Room, rate: number): Sides<Float64Array> {
  const lengths = room.delays.map((delay) => Math.round((delay * rate) / 1000));
  const gains = lengths.map((length) => 0.5 * 10 ** ((-3 * length) / (room.decay * rate)));
  const lines = lengths.map(() => new Float64Array(dry.length));
  const pole = Math.exp((-2 * Math.PI * room.treble) / rate);
  const heard = [new Float64Array(dry.length), new Float64Array(dry.length)] as const;
  let low: readonly number[] = [0, 0, 0, 0];
  for (let at = 0; at < dry.length; at += 1) {
    low = low.map((before, line) => {
      const out = lines[line]?.[at - (lengths[line] ?? 0)] ?? 0;
      return before + (1 - pole) * (out - before);
    });
    for (const [side, row] of HEARD.entries()) heard[side]?.fill(room.level * product(row, low), at, at + 1);
    for (const [line, row] of HADAMARD.entries())
      lines[line]?.fill((dry[at] ?? 0) + (gains[line] ?? 0) * product(row, low), at, at + 1);
  }
  const { b0, b1, b2, a1, a2 } = biquad('high-pass', room.low, rate);
  for (const side of heard) {
    let [s1, s2] = [0, 0];
    for (const [at, sample] of side.entries()) {
      const out = b0 * sample + s1;
      s1 = b1 * sample - a1 * out + s2;
      s2 = b2 * sample - a2 * out;
      side[at] = out;
    }
  }
  return heard;
}

/** How far samples lie from what they should be, at most. */
export function furthest(samples: Float32Array, expected: Float64Array): number {
  expect(samples.length).toBe(expected.length);
  return samples.reduce((most, sample, at) => Math.max(most, Math.abs(sample - (expected[at] ?? 0))), 0);
}
