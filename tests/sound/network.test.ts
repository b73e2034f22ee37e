/** The room block by block, against the same room reckoned plainly, sample by sample. */
import { describe, expect, test } from 'vitest';
import { createRandom } from '../../src/core/base';
import { createNetwork, letSound } from '../../src/sound/synthesis/network';
import { CORNERS, roomTail } from '../../src/sound/synthesis/room';
import { furthest, inRoom, plainly } from './plain-room';

/** −114 dB: what is left where the room is taken to be silent, and what single precision rounds. */
const TOLERANCE = 2e-6;

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

describe.each(CORNERS.map((corner) => [corner.stems.join(' and '), corner] as const))(
  'the room of %s is what it is sample by sample',
  (_, { room }) => {
    test.each(SOUNDS)('%s', (_what, dry, rate) => {
      const expected = plainly(dry, room, rate);
      for (const [side, wet] of inRoom(dry, room, rate).entries()) {
        expect(furthest(wet, expected[side] ?? new Float64Array())).toBeLessThan(TOLERANCE);
      }
    });

    test('works on with no numbers in silence that are too small to be quick', () => {
      const network = createNetwork(room, RATE);
      letSound(network, stretches(200, [0, 200]), [null, null]);
      for (let at = 200; at < roomTail(RATE); at += 256) {
        letSound(network, new Float32Array(256), [null, null]);
        expect([...network.highState].filter((value) => value !== 0 && Math.abs(value) < 1e-35)).toEqual([]);
      }
    });
  },
);
