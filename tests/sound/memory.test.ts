import { expect, test } from 'vitest';
import { createMemory } from '../../src/sound/synthesis/memory';
import { renderHead, renderPiece } from '../../src/sound/synthesis/segment';
import { STEMS } from '../../src/sound/synthesis/stems';
import { createKit } from '../../src/sound/synthesis/voices';
import { skaTune } from './tunes';

test('what is given back is used again, as silence, where it is long enough and not far too long', () => {
  const memory = createMemory();
  const first = memory.take(100).fill(1);
  memory.giveBack([first.buffer as ArrayBuffer]);
  expect(memory.take(101).buffer).not.toBe(first.buffer);
  expect(memory.take(40).buffer).not.toBe(first.buffer);
  const again = memory.take(90);
  expect(again.buffer).toBe(first.buffer);
  expect(again).toEqual(new Float32Array(90));
  expect(memory.take(90).buffer).not.toBe(first.buffer);
});

test('the shortest that will do is taken, and no more is kept than is asked', () => {
  const memory = createMemory(4 * 250);
  const [long, short, third] = [140, 110, 10].map((length) => memory.take(length).buffer as ArrayBuffer);
  memory.giveBack([long, short, third].filter((buffer) => buffer !== undefined));
  expect(memory.take(100).buffer).toBe(short);
  expect(memory.take(100).buffer).toBe(long);
  expect(memory.take(10).buffer).not.toBe(third);
});

test('sound in memory that was used before is the same sound', () => {
  const memory = createMemory();
  const [fresh, used] = [createKit(8000), createKit(8000, memory)];
  const request = { performance: skaTune(), rounds: 'endless', begin: 0, leaving: null } as const;
  const noise = memory.take(60_000).fill(0.5);
  memory.giveBack([noise.buffer as ArrayBuffer]);
  for (let turn = 0; turn < 2; turn += 1) {
    const [one, other] = [fresh, used].map((kit) => ({
      lead: renderHead(request, kit).lead,
      piece: renderPiece(request, kit, 9000, 40_000),
    }));
    for (const stem of STEMS) {
      expect(other?.lead[stem]).toEqual(one?.lead[stem]);
      expect(other?.piece[stem]).toEqual(one?.piece[stem]);
    }
    for (const stem of STEMS)
      memory.giveBack([other?.lead[stem].buffer, other?.piece[stem].buffer] as ArrayBuffer[]);
  }
});
