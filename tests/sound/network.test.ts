/** The room block by block, against the same room reckoned plainly, sample by sample. */
import { describe, expect, test } from 'vitest';
import { createRandom } from '../../src/core/base';
import { biquad } from '../../src/sound/synthesis/filters';
import { createNetwork, letSound } from '../../src/sound/synthesis/network';
import { CORNERS, inRoom, roomed, roomedRound, roomTail } from '../../src/sound/synthesis/room';
import { silence } from '../../src/sound/synthesis/stems';

type Room = (typeof CORNERS)[number]['room'];
type Sides = readonly [Float64Array, Float64Array];

/** −114 dB: what is left where the room is taken to be silent, and what single precision rounds. */
const TOLERANCE = 2e-6;

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
function plainly(dry: Float32Array, room: Room, rate: number): Sides {
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

function furthest(samples: Float32Array, expected: Float64Array): number {
  expect(samples.length).toBe(expected.length);
  return samples.reduce((most, sample, at) => Math.max(most, Math.abs(sample - (expected[at] ?? 0))), 0);
}

/** Full noise in some stretches, from and up to a sample; silence elsewhere. */
function stretches(length: number, ...sounding: readonly (readonly [from: number, to: number])[]) {
  const { next } = createRandom(5);
  const samples = new Float32Array(length);
  for (const [from, to] of sounding) for (let at = from; at < to; at += 1) samples[at] = next() * 2 - 1;
  return samples;
}

const RATE = 44_100;

/** Longer than the room sounds on. */
const LONG = roomTail(RATE) + 3000;

const SOUNDS: readonly (readonly [what: string, samples: Float32Array, rate: number])[] = [
  ['one sample alone', stretches(1, [0, 1]), RATE],
  ['a block less one sample', stretches(255, [0, 255]), RATE],
  ['a block and one sample', stretches(257, [0, 257]), RATE],
  ['longer than every line, ending within a block', stretches(9001, [0, 9001]), RATE],
  ['silence that begins and ends within a block', stretches(9000, [3, 700], [733, 4000], [8100, 8101]), RATE],
  [
    'silence until the room is silent, and on from there',
    stretches(2 * LONG, [100, 2000], [LONG, LONG + 999]),
    RATE,
  ],
  ['so soft that it hardly is a number', stretches(9000, [0, 5000]).map((sample) => sample * 1e-38), RATE],
  ['lines that are shorter than a block', stretches(5000, [7, 3001]), 8000],
  ['at 48,000 Hz', stretches(9001, [11, 5000]), 48_000],
];

describe.each(CORNERS.map((corner) => [corner.from.join(' and '), corner] as const))(
  'the room of %s is what it is sample by sample',
  (_, { room }) => {
    test.each(SOUNDS)('%s', (_what, dry, rate) => {
      const expected = plainly(dry, room, rate);
      for (const [side, wet] of inRoom(dry, room, rate).entries()) {
        expect(furthest(wet, expected[side] ?? new Float64Array())).toBeLessThan(TOLERANCE);
      }
    });

    test('works on with no numbers in silence that are too small to be quick', () => {
      const network = createNetwork(room, RATE, roomTail(RATE));
      letSound(network, [stretches(200, [0, 200]), undefined]);
      for (let at = 200; at < roomTail(RATE); at += 256) {
        letSound(network, [new Float32Array(256), undefined]);
        expect([...network.highState].filter((value) => value !== 0 && Math.abs(value) < 1e-35)).toEqual([]);
      }
    });
  },
);

describe('on the stage', () => {
  const [kit] = CORNERS;
  if (kit === undefined) throw new Error('The kit has no room');
  const drums = stretches(6000, [0, 2000]);
  const hats = stretches(6000, [500, 5500]);
  const both = drums.map((sample, at) => sample + (hats[at] ?? 0));
  const dry = () => ({ ...silence(6000), drums: drums.slice(), hats: hats.slice() });

  test('drums and hats enter one room, each has a side of it, and what was ahead of the window goes', () => {
    const [one, other] = plainly(both, kit.room, RATE);
    const stems = roomed(dry(), 1000, RATE);
    const expected = (of: Float32Array, side: Float64Array) => side.map((wet, at) => wet + (of[at] ?? 0));
    expect(furthest(stems.drums, expected(drums, one).subarray(1000))).toBeLessThan(TOLERANCE);
    expect(furthest(stems.hats, expected(hats, other).subarray(1000))).toBeLessThan(TOLERANCE);
    expect(stems.bass).toEqual(new Float32Array(5000));
  });

  test.each([
    ['shorter than the room sounds on', 6000],
    ['as long as it', roomTail(RATE)],
    ['longer', roomTail(RATE) + 777],
  ])('a round that is %s is what it is after many', (_, length) => {
    const round = stretches(length, [0, 1500], [5000, 5900]);
    const rounds = Math.ceil(roomTail(RATE) / length) + 1;
    const long = new Float32Array(rounds * length);
    for (let turn = 0; turn < rounds; turn += 1) long.set(round, turn * length);
    const [one] = plainly(long, kit.room, RATE);
    const { drums: wet } = roomedRound({ ...silence(length), drums: round.slice() }, RATE);
    const expected = one.subarray(-length).map((sample, at) => sample + (round[at] ?? 0));
    expect(furthest(wet, expected)).toBeLessThan(TOLERANCE);
  });

  test('a round without length stays so', () => {
    expect(roomedRound(silence(0), RATE).drums.length).toBe(0);
  });
});
