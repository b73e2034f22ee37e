import { describe, expect, test } from 'vitest';
import { feelById, feelMetre, feelsIn, rhythmsIn, whyNotPlayedIn } from '../../src/core/feel';

const TWO = { count: 2, unit: 4 } as const;
const FIVE = { count: 5, unit: 4 } as const;
const SEVEN = { count: 7, unit: 8 } as const;
const NINE = { count: 9, unit: 8 } as const;
const idsIn = (metre: Parameters<typeof feelsIn>[0]) => feelsIn(metre).map(({ id }) => id);

describe('metres that only some feels are played in', () => {
  test('stand in the feels that make sense of them', () => {
    expect(idsIn(TWO)).toEqual(['revival-ska', 'two-beat', 'calypso']);
    expect(idsIn(FIVE)).toEqual(['walking-swing', 'bossa']);
    expect(idsIn(SEVEN)).toEqual(['revival-ska', 'funk']);
    expect(idsIn(NINE)).toEqual(['ballad']);
  });

  test('are refused elsewhere in one sentence that names feel, metre and who has it', () => {
    expect(whyNotPlayedIn(feelById('one-drop'), SEVEN, false)).toBe(
      'One drop has no rhythms in 7/8; Fast revival ska and Funk in sixteenths have.',
    );
    expect(whyNotPlayedIn(feelById('funk'), NINE, false)).toBe(
      'Funk in sixteenths has no rhythms in 9/8; Ballad in six has.',
    );
    expect(whyNotPlayedIn(feelById('funk'), SEVEN, false)).toBeNull();
    expect(whyNotPlayedIn(feelById('one-drop'), { count: 6, unit: 8 }, false)).toBeNull();
  });

  test('are nothing to choose a feel by where no feel has them: a pickup that comes again', () => {
    for (const metre of [
      { count: 1, unit: 4 },
      { count: 1, unit: 8 },
    ] as const) {
      expect(feelsIn(metre)).toEqual([]);
      expect(whyNotPlayedIn(feelById('one-drop'), metre, true)).toBeNull();
    }
  });

  test('a single bar of two among bars of four is half a bar of the feel', () => {
    const drop = feelById('one-drop');
    expect(feelMetre(drop, TWO)).toBeNull();
    expect(whyNotPlayedIn(drop, TWO, false)).not.toBeNull();
    expect(whyNotPlayedIn(drop, TWO, true)).toBeNull();
    const four = feelMetre(drop, { count: 4, unit: 4 });
    expect(rhythmsIn(drop, TWO)?.drums.map(({ grid }) => grid)).toEqual(
      four?.drums.map(({ grid }) => grid.slice(0, grid.length / 2)),
    );
    expect(rhythmsIn(feelById('waltz'), TWO)).toBeNull();
  });
});
