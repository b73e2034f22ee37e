import { describe, expect, test } from 'vitest';
import { bpm, COMMON_TIME } from '../../src/core/base';
import { type DrumSound, FEEL_IDS, FEELS, type FeelId, feelMetre } from '../../src/core/feel';
import { buildPerformance, type DrumEvent, type Performance } from '../../src/core/performance';
import { fillsOf } from '../../src/core/performance/drummer';
import { sheetOf } from './sheets';

const BARS = 32;
const play = (feel: FeelId, drumSeed?: number): Performance =>
  buildPerformance(sheetOf({ chart: '| C | Am | F | G |'.repeat(BARS / 4).replaceAll('||', '|'), feel }), {
    tempo: bpm(110),
    countIn: 0,
    passage: null,
    ...(drumSeed === undefined ? {} : { drumSeed, humaniseSeed: drumSeed }),
  });
const drums = (performance: Performance): readonly DrumEvent[] =>
  performance.events.flatMap((event) => (event.part === 'drums' ? [event] : []));

/** The sets of struck sixteenths, as the table below counts them. */
const distinctBars = (events: readonly DrumEvent[]): number => {
  const bars = Array.from({ length: BARS }, (_, bar) =>
    events
      .filter(({ start }) => Math.floor(start / 3840) === bar)
      .map(({ sound, start }) => `${sound} ${Math.round(((start % 3840) / 3840) * 16)}`)
      .sort()
      .join(),
  );
  return new Set(bars).size;
};

const spread = (numbers: readonly number[]): number => {
  const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  return Math.sqrt(numbers.reduce((sum, one) => sum + (one - mean) ** 2, 0) / numbers.length);
};

/**
 * Counted over the 4/4 beats of some styles of the Groove MIDI Dataset (Gillick, Roberts, Engel, Eck and Bamman, "Learning
 * to groove with inverse sequence transformations", ICML 2019; CC BY 4.0): different bars in 32, and of one drum the
 * deviation of its MIDI velocities and the share of its strokes under 50.
 */
const GROOVE: readonly (readonly [
  feel: FeelId,
  style: string,
  distinct: number,
  sound: DrumSound,
  deviation: number,
  ghosts: number,
])[] = [
  ['rocksteady', 'reggae', 31.8, 'closed hat', 26, 0.49],
  ['rocksteady', 'reggae', 31.8, 'snare', 40, 0.61],
  ['rockers', 'reggae', 31.8, 'closed hat', 26, 0.49],
  ['steppers', 'reggae', 31.8, 'rim', 19, 0.23],
  ['soul-backbeat', 'soul', 31.7, 'snare', 43, 0.53],
  ['soul-backbeat', 'soul', 31.7, 'closed hat', 34, 0.45],
  ['disco', 'dance/disco', 23.8, 'snare', 46, 0.33],
  ['two-beat', 'country', 23.3, 'snare', 34, 0.59],
  ['walking-swing', 'jazz/mediumfast', 31.7, 'ride', 17, 0.02],
  ['shuffle-blues', 'rock/shuffle', 28.4, 'snare', 36, 0.6],
  ['bossa', 'latin/brazilian-bossa', 31.9, 'rim', 20, 0.67],
];

describe('beside ten drummers', () => {
  test.each(GROOVE)(
    '%s and %s: as various, as much between loud and soft',
    (feel, _, distinct, sound, deviation, ghosts) => {
      const events = drums(play(feel, 7));
      expect(distinctBars(events)).toBeGreaterThan(distinct * 0.75);
      const velocities = events.filter((event) => event.sound === sound).map(({ velocity }) => velocity);
      expect(spread(velocities), 'deviation').toBeGreaterThan(deviation * 0.5);
      expect(spread(velocities), 'deviation').toBeLessThan(deviation * 1.5);
      const share = velocities.filter((velocity) => velocity < 50).length / velocities.length;
      expect(Math.abs(share - ghosts), `${share} ghosts`).toBeLessThan(0.4);
    },
  );
});

describe('the drummer', () => {
  test.each(FEEL_IDS)(
    '%s: the same for the same seed, another for another, as written without one',
    (feel) => {
      expect(drums(play(feel, 3))).toEqual(drums(play(feel, 3)));
      expect(drums(play(feel, 3))).not.toEqual(drums(play(feel, 4)));
      expect(distinctBars(drums(play(feel)))).toBeLessThan(6);
    },
  );

  test.each(FEELS.map((feel) => [feel.id, feel] as const))(
    '%s: never loses what the pattern says',
    (id, feel) => {
      const known = feelMetre(feel, COMMON_TIME);
      if (known === null) return;
      const plain = drums(play(id));
      const seeded = drums(
        buildPerformance(sheetOf({ chart: '| C | Am | F | G |'.repeat(8).replaceAll('||', '|'), feel: id }), {
          tempo: bpm(110),
          countIn: 0,
          passage: null,
          drumSeed: 5,
        }),
      );
      // Bars that end no phrase: the first three of every four.
      const kept = (events: readonly DrumEvent[]) =>
        events.filter(({ start }) => Math.floor(start / 3840) % 4 < 1);
      for (const { sound, start } of kept(plain)) {
        expect(
          seeded.some((event) => event.sound === sound && event.start === start),
          `${sound} ${start}`,
        ).toBe(true);
      }
    },
  );

  test.each(FEELS.map((feel) => [feel.id, feel] as const))(
    '%s: at least four fills in 4/4, each a bar of its metre',
    (_, feel) => {
      const known = feelMetre(feel, COMMON_TIME);
      if (known === null) return;
      const fills = fillsOf(known);
      expect(
        new Set(fills.map((rows) => rows.map(({ sound, grid }) => `${sound} ${grid}`).join())).size,
      ).toBeGreaterThanOrEqual(4);
      for (const row of fills.flat()) expect([8, 12, 16]).toContain(row.grid.length);
    },
  );

  test('a crash opens a section only where the feel has one', () => {
    const crashes = (feel: FeelId) => {
      const chart = 'Verse:\n| C | Am | F | G |\nBridge:\n| F | G | C | C |';
      const performance = buildPerformance(sheetOf({ chart, feel }), {
        tempo: bpm(110),
        countIn: 0,
        passage: null,
      });
      return drums(performance).filter(({ sound }) => sound === 'crash').length;
    };
    expect(crashes('soul-backbeat')).toBe(1);
    expect(crashes('bossa')).toBe(0);
    expect(crashes('one-drop')).toBe(0);
  });
});
