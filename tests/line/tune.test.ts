import { describe, expect, test } from 'vitest';
import { TICKS_PER_QUARTER } from '../../src/core/base';
import { composeLine, type Level } from '../../src/core/line';
import { hearLine } from '../../src/core/line/hearing';
import { type FeatureVector, featuresOf } from '../../src/core/line/phrase/features';
import { modelOf } from '../../src/core/line/read-request';
import { line, request, type Wish } from './notation';

/*
 * What blind readers missed in easy lines (tests/jury/readings.md): the lines here are written by hand, each with the
 * fault and without it, and composed ones keep clear of it.
 */

/** Bars in quarters, `-` a rest. */
const quarters = (text: string) =>
  line(text.replace(/[^\s|]+/g, (note) => (note === '-' ? '- -' : `${note} .`)));

const counted = (chart: string, wish: Wish, text: string): FeatureVector => {
  const asked = request(chart, wish);
  const model = modelOf(asked);
  return featuresOf(model, hearLine(model, quarters(text)));
};

describe('the features hear', () => {
  const vamp = '| Dm | Dm | Dm | Dm |';

  test('a pair of bars that is one bar twice', () => {
    const twice = 'D2 A1 D2 A1 | D2 A1 D2 A1 | D2 D2 A1 A1 | A1 A1 D2 D2';
    expect(counted(vamp, {}, twice).unanswered).toBe(0.5);
    expect(
      counted('| Dm | C | Dm | C |', {}, 'D2 A1 - - | C2 G1 - - | D2 A1 - - | C2 - G1 C2').unanswered,
    ).toBe(0.5);
  });

  test('a last bar that ends on the notes of the bar before', () => {
    const turn = '| Dm | Dm | A7 D7 | Gm D7 |';
    const rest = 'D2 E2 F2 A2 | A2 G2 F2 D2 |';
    expect(counted(turn, {}, `${rest} A1 E2 D2 F♯2 | G1 B♭1 D2 F♯2`).saidTwice).toBe(1);
    expect(counted(turn, {}, `${rest} A1 E2 D2 F♯2 | G1 B♭1 D2 A1`).saidTwice).toBe(0);
    expect(counted(turn, {}, `${rest} A1 E2 D2 F♯2 | G1 B♭1 F♯2 D2`).saidTwice).toBe(0);
  });

  test('root, fifth, third, fifth as a drill, and not once in four bars', () => {
    const drill = 'D2 A1 F1 A1 | D2 A1 F1 A1 | D2 A1 F1 A1 | D2 A1 F1 A1';
    expect(counted(vamp, {}, drill).drill).toBe(0.75);
    expect(counted(vamp, {}, 'D2 A1 F1 A1 | D2 F2 A2 F2 | D2 E2 F2 A2 | A2 F2 D2 E2').drill).toBe(0.25);
    expect(counted(vamp, {}, 'D2 A1 F1 A1 | D2 E2 F2 A2 | D2 E2 F2 A2 | A2 F2 D2 E2').drill).toBe(0);
  });

  test('a cadence that strikes its note again', () => {
    const head = 'D2 A1 F1 A1 | D2 A1 F1 A1 | D2 A1 F1 A1 | ';
    expect(counted(vamp, {}, `${head}D2 - A1 A1`).flatCadence).toBe(1);
    expect(counted(vamp, {}, `${head}D2 - A1 C2`).flatCadence).toBe(0);
  });

  test('an empty one in a bar that comes home', () => {
    const chart = '| G | Am | D7 | G |';
    const wish: Wish = { feel: 'calypso', level: 2 };
    expect(counted(chart, wish, 'G1 - D2 - | A1 - E2 - | D2 - A1 F♯1 | - B1 D2 G1').homeEmpty).toBe(1);
    expect(counted(chart, wish, 'G1 - D2 - | - A1 E2 - | D2 - A1 F♯1 | G1 B1 D2 -').homeEmpty).toBe(0);
  });

  test('a chord whose bass note is nowhere', () => {
    const bare = 'G1 - D2 - | - - C2 E2 | D2 - A1 F♯1 | G1 - D2 -';
    expect(counted('| G | Am | D7 | G |', {}, bare).unrooted).toBe(0.25);
  });

  test('the third that turns, and the one before the beginning', () => {
    const chart = '| F | Fm | C | G7 |';
    const wish: Wish = { level: 2 };
    const deaf = counted(chart, wish, 'F1 A1 C2 - | F1 C2 F1 - | C2 E2 G1 - | G1 D2 G1 D2');
    expect([deaf.thirdUntold, deaf.endUntold]).toEqual([1, 1]);
    const told = counted(chart, wish, 'F1 A1 C2 - | F1 A♭1 C2 - | C2 E2 G1 - | G1 D2 - B1');
    expect([told.thirdUntold, told.endUntold]).toEqual([0, 0]);
  });

  test('a dance floor without its fourth beat', () => {
    const chart = '| Am | Am | F | G |';
    const wish: Wish = { feel: 'disco', level: 1 };
    const silent = 'A1 A1 E2 - | A1 A1 E2 - | F1 F1 C2 - | G1 G1 D2 -';
    expect(counted(chart, wish, silent).silentFours).toBe(0.875);
    expect(counted(chart, wish, silent.replaceAll('-', 'E2')).silentFours).toBe(0);
  });

  test('a sixth inside a bar of a walk', () => {
    const chart = '| Em7 | A7 |';
    const wish: Wish = { feel: 'walking-swing' };
    expect(counted(chart, wish, 'E2 G1 B1 D2 | A1 C♯2 E2 G2').lurches).toBeCloseTo(1 / 6);
    expect(counted(chart, wish, 'E2 D2 B1 D2 | A1 C♯2 E2 G2').lurches).toBe(0);
  });

  test('leaps from note to note where there could be steps, and turns at every note', () => {
    const leaping = counted(vamp, { level: 3 }, 'D2 F2 A2 D2 | D2 A1 F1 A1 | D2 A1 D2 A1 | F2 A2 F2 D2');
    expect([leaping.arpeggios, leaping.zigzags]).toEqual([1, 0.25]);
    const sung = counted(vamp, { level: 3 }, 'D2 E2 F2 A2 | A2 G2 F2 D2 | F2 G2 A2 F2 | A2 F2 E2 D2');
    expect([sung.arpeggios, sung.zigzags]).toEqual([0, 0]);
    expect(counted(vamp, { level: 2 }, 'D2 F2 A2 D2 | D2 A1 F1 A1 | D2 - - - | D2 - - -').arpeggios).toBe(0);
  });

  test('one rhythm in bar after bar of a riff', () => {
    const wish: Wish = { feel: 'rockers', level: 3 };
    expect(counted(vamp, wish, 'D2 - A1 - | D2 - A1 - | D2 - F2 - | D2 - A1 -').march).toBeCloseTo(0.65);
    expect(counted(vamp, wish, 'D2 - A1 - | D2 A1 F1 - | D2 - A1 - | D2 - - A1').march).toBe(0);
  });

  test('two phrases that end alike, and two bars of several chords that do', () => {
    const chart = '| C | F | C | G | C | F | F G | C G |';
    const head = 'C2 - E2 - | F2 - A2 - | C2 - E2 - |';
    const alike = counted(
      chart,
      {},
      `${head} G1 - B1 D2 | C2 - E2 - | F2 - A2 - | F2 A2 G2 B2 | C2 E2 G1 B1`,
    );
    expect([alike.endsAlike, alike.splitTwins]).toEqual([0, 0.5]);
    const same = counted(chart, {}, `${head} G1 - G1 B1 | C2 - E2 - | F2 - A2 - | F2 - G2 B2 | C2 E2 G1 B1`);
    expect([same.endsAlike, same.splitTwins]).toEqual([1, 0]);
  });

  test('half steps that pull into another chord', () => {
    expect(counted('| C | F |', {}, 'C2 - G2 E2 | F2 - C2 B1').halfStepJoins).toBe(0.5);
    expect(counted('| C | F |', {}, 'C2 - E2 G2 | F2 - C2 D2').halfStepJoins).toBe(0);
  });

  test('a figure that wears', () => {
    const chart = '| C | F | G | F |';
    const worn = counted(chart, {}, 'C2 E2 - G2 | F2 A2 - C2 | G1 B1 - D2 | F1 A1 - C2');
    expect(worn.wornFigure).toBeCloseTo(0.55);
    expect(counted(chart, {}, 'C2 E2 - G2 | F2 C2 - A1 | G1 B1 - D2 | F2 E2 - D2').wornFigure).toBeLessThan(
      0.1,
    );
  });
});

describe('composed lines', () => {
  const seeds = [1, 2, 3, 4];
  const sum = (chart: string, wish: Wish, name: keyof FeatureVector): number =>
    seeds.reduce((all, seed) => {
      const asked = request(chart, { ...wish, seed, techniques: ['chord tones', 'octave'] });
      const model = modelOf(asked);
      return all + featuresOf(model, hearLine(model, composeLine(asked).bars))[name];
    }, 0);

  test('of an easy walk are no drill', () => {
    const chart = '| B♭ | Gm7 | Cm7 | F7 | Dm7 | G7 | Cm7 F7 | B♭ |';
    expect(sum(chart, { feel: 'walking-swing', level: 2 }, 'drill')).toBeLessThan(0.3);
  });

  test('answer their first bar in a vamp, where it is easy to play one bar eight times', () => {
    for (const [feel, level] of [
      ['rockers', 1],
      ['steppers', 1],
      ['soul-backbeat', 2],
    ] as const satisfies readonly (readonly [Wish['feel'], Level])[])
      expect(sum('| Dm | Dm | C | C | B♭ | C | Dm | A |', { feel, level }, 'unanswered')).toBeLessThan(0.8);
  });

  test('come home on the one, and let every new chord be heard', () => {
    const chart = '| G | Am | D7 | G | Em | Am | D7 | G |';
    for (const feel of ['calypso', 'rocksteady'] as const) {
      expect(sum(chart, { feel, level: 2 }, 'homeEmpty')).toBe(0);
      expect(sum(chart, { feel, level: 2 }, 'unrooted')).toBe(0);
    }
  });

  /** How many bars of four seeds' lines sound on a beat, counted from 0. */
  const soundingOn = (feel: NonNullable<Wish['feel']>, level: Level, beat: number): number =>
    seeds.reduce((all, seed) => {
      const chart = '| G | Em | C | D7 | G | Em | Am | D7 |';
      const techniques = feel === 'disco' ? (['chord tones', 'octave'] as const) : (['chord tones'] as const);
      const { bars } = composeLine(request(chart, { feel, level, seed, techniques }));
      return all + bars.filter((bar) => bar.some(({ start }) => start === beat * TICKS_PER_QUARTER)).length;
    }, 0);

  test.each([1, 2, 3, 4] as const)('of calypso bounce from the one in every bar at level %i', (level) => {
    expect(soundingOn('calypso', level, 0)).toBe(32);
    expect(soundingOn('calypso', level, 1)).toBe(0);
    expect(soundingOn('calypso', level, 1.5)).toBe(32);
  });

  test.each([1, 2, 3, 4] as const)('of disco pump through two beats of every bar at level %i', (level) => {
    for (const beat of [0, 0.5, 1, 1.5]) expect(soundingOn('disco', level, beat)).toBe(32);
  });

  test.each([1, 2, 3, 4] as const)(
    'of bossa point on from the and of four in all bars but the breath at level %i',
    (level) => {
      expect(soundingOn('bossa', level, 3.5)).toBeGreaterThanOrEqual(28);
    },
  );

  test('of a funk and a blues for beginners have the flat seventh', () => {
    expect(sum('| E7 | E7 | A7 | E7 |', { feel: 'funk', level: 2 }, 'seventhsHeard')).toBeGreaterThan(1);
    const blues = '| G7 | C7 | G7 | G7 | C7 | C7 | G7 | G7 | D7 | C7 | G7 | D7 |';
    expect(sum(blues, { feel: 'shuffle-blues', level: 2 }, 'seventhsHeard')).toBeGreaterThan(1);
  });
});
