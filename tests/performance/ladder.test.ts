import { expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { proposeLadder } from '../../src/core/playing';

// A ladder from half the tempo: studygeniuspro.com, a weak source; the rungs between are our own.
test.each([
  [126, [63, 79, 95, 110, 126]],
  [140, [70, 88, 105, 123, 140]],
  [40, [20, 25, 30, 35, 40]],
])('a ladder to %i bpm begins at half of it and ends on it', (tempo, tempos) => {
  expect(proposeLadder(bpm(tempo)).map((rung) => Number(rung.tempo))).toEqual(tempos);
});

test('every proposed ladder rises, is short, and ends at the tempo', () => {
  for (let tempo = 20; tempo <= 400; tempo += 1) {
    const rungs = proposeLadder(bpm(tempo)).map((rung) => Number(rung.tempo));
    expect(rungs.length).toBeLessThanOrEqual(5);
    expect(rungs).toEqual([...new Set(rungs)].sort((one, other) => one - other));
    expect(rungs.at(-1)).toBe(tempo);
  }
});
