import { expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { proposeLadder } from '../../src/core/performance';

test.each([
  [126, [63, 76, 89, 102, 115, 126]],
  [140, [70, 84, 98, 112, 126, 140]],
  [60, [30, 36, 42, 48, 54, 60]],
  [40, [20, 25, 30, 35, 40]],
])('a ladder to %i bpm begins at half of it and ends on it', (tempo, tempos) => {
  expect(proposeLadder(bpm(tempo)).map((rung) => Number(rung.tempo))).toEqual(tempos);
});

test('every proposed ladder rises, is short, and ends at the tempo', () => {
  for (let tempo = 20; tempo <= 400; tempo += 1) {
    const rungs = proposeLadder(bpm(tempo)).map((rung) => Number(rung.tempo));
    expect(rungs.length).toBeLessThanOrEqual(6);
    expect(rungs).toEqual([...new Set(rungs)].sort((one, other) => one - other));
    expect(rungs.at(-1)).toBe(tempo);
  }
});
