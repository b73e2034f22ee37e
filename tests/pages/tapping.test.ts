import { describe, expect, it } from 'vitest';
import { tapper } from '../../src/app/pages/pencil/tapping';

describe('taps', () => {
  it('of two fingers that overlap are two, the first as long as until the second', () => {
    const taps = tapper();
    taps.down('KeyJ', 100);
    taps.down('KeyK', 220);
    taps.up('KeyJ', 250);
    taps.up('KeyK', 400);
    taps.down('KeyJ', 500);
    expect(taps.struck().map(({ down, up }) => [down, up])).toEqual([
      [100, 220],
      [220, 400],
      [500, null],
    ]);
  });
});
