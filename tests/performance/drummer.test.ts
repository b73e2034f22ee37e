import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { barTicks, bpm, COMMON_TIME } from '../../src/core/base';
import {
  type DrumRow,
  type DrumSound,
  type DrumWay,
  FEEL_IDS,
  FEELS,
  type FeelId,
  feelMetre,
  homeMetre,
  readGrid,
  swingRatio,
} from '../../src/core/feel';
import { deriveSheet, newLesson, setChartText, setFeel, setPlaying } from '../../src/core/lesson';
import {
  buildPerformance,
  type DrumEvent,
  type Performance,
  performanceOf,
} from '../../src/core/performance';
import { fillsOf } from '../../src/core/performance/drummer';
import { swung } from '../../src/core/performance/swing';
import { swingsEighths } from '../../src/core/playing';
import { describeWithReferenceData } from '../support/reference-data';
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
  ['one-drop', 'reggae', 31.8, 'closed hat', 26, 0.49],
  ['funk', 'funk', 26.6, 'snare', 44, 0.51],
  ['funk', 'funk', 26.6, 'closed hat', 36, 0.46],
  ['calypso', 'afrocuban/calypso', 30.9, 'snare', 34, 0.3],
  ['walking-swing', 'jazz/mediumfast', 31.7, 'snare', 22, 0.72],
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
      expect(Math.abs(share - ghosts), `${share} ghosts`).toBeLessThan(0.33);
    },
  );
});

describeWithReferenceData('the table of ten drummers', GROOVE.length, (read) => {
  const styles = z
    .record(
      z.string(),
      z.object({
        distinct_bars_in_32: z.number(),
        parts: z.record(z.string(), z.object({ velocity_sd: z.number(), share_under_50: z.number() })),
      }),
    )
    .parse(JSON.parse(read('groove/stats.json')));

  test.each(GROOVE)('%s: %s is as it was counted', (_, style, distinct, sound, deviation, ghosts) => {
    const counted = styles[style];
    expect(counted?.distinct_bars_in_32).toBe(distinct);
    expect(counted?.parts[sound]).toMatchObject({ velocity_sd: deviation, share_under_50: ghosts });
  });
});

// Where publications disagree, the teacher chooses; their patterns are held against them in the feel's tests.
describe('a pattern that was chosen', () => {
  const struck = (feel: FeelId, sound: DrumSound, drumWay?: DrumWay) =>
    drums(
      buildPerformance(sheetOf({ chart: '| C | Am | F | G |', feel }), {
        tempo: bpm(110),
        countIn: 0,
        passage: null,
        ...(drumWay === undefined ? {} : { drumWay }),
      }),
    ).flatMap((event) =>
      event.sound === sound && event.start < 3840 ? [Math.round(event.start / 480)] : [],
    );

  test('takes the place of the feel’s own', () => {
    expect(struck('rockers', 'snare')).toEqual([4]);
    expect(struck('rockers', 'snare', 'usual')).toEqual([4]);
    expect(struck('rockers', 'snare', 'snare on two and four')).toEqual([2, 6]);
    expect(struck('rockers', 'kick', 'kick on every eighth')).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(struck('steppers', 'rim', 'snare on three')).toEqual([]);
    expect(struck('steppers', 'snare', 'snare on three')).toEqual([4]);
  });

  test('says nothing to a feel that does not offer it', () => {
    expect(struck('disco', 'snare', 'snare on three')).toEqual(struck('disco', 'snare'));
  });

  // Drummer magazine 98, "Reggae part 2: the stepper": straight or swung; it states no ratio.
  test.each([
    ['usual', false],
    ['snare on three', false],
    ['rim on three, swung', true],
    ['snare on three, swung', true],
  ] as const)(
    'a stepper with the %s: swung is %s for the whole band, on paper and in the ear',
    (drumWay, swings) => {
      const empty = newLesson('lesson', 'Lesson');
      const id = empty.pieces[0]?.id ?? '';
      const lesson = setPlaying(setFeel(setChartText(empty, id, '| Am | G |'), id, 'steppers'), id, {
        drumWay,
      });
      const [piece] = lesson.pieces;
      const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
      if (piece?.kind !== 'line' || sheet?.kind !== 'line') throw new Error('The lesson has no line');
      expect(swingsEighths(sheet)).toBe(swings);
      const { events, countIn } = performanceOf(piece, sheet, 'notes');
      for (const part of ['drums', 'organ'] as const) {
        const ands = events
          .filter((event) => event.part === part && event.start >= countIn)
          .map((event) => (event.start - countIn) % 960)
          .filter((place) => place > 400 && place < 700);
        expect(ands.length).toBeGreaterThan(4);
        // An odd sixteenth of the drummer's may lie elsewhere; the & of a swung beat is at 1.8 / 2.8 of it.
        expect(ands.filter((place) => Math.abs(place - (swings ? 617 : 480)) > 2)).toEqual([]);
      }
    },
  );

  test('stays through the form, however the drummer varies it', () => {
    const { events } = buildPerformance(
      sheetOf({ chart: '| C | Am | F | G |'.repeat(4).replaceAll('||', '|'), feel: 'rockers' }),
      { tempo: bpm(110), countIn: 0, passage: null, drumSeed: 3, drumWay: 'kick on every eighth' },
    );
    for (const bar of [2, 6, 10]) {
      const kicks = events.filter(
        (event) => event.part === 'drums' && event.sound === 'kick' && Math.floor(event.start / 3840) === bar,
      );
      expect(kicks.length, `bar ${bar}`).toBeGreaterThanOrEqual(8);
    }
  });
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
      // The first bars of the phrases of the first half: no fill, and no other hats or kick yet.
      const kept = (events: readonly DrumEvent[]) =>
        events.filter(({ start }) => start < 16 * 3840 && Math.floor(start / 3840) % 4 < 1);
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

  test.each(FEELS.map((feel) => [feel.id, feel] as const))(
    '%s: other hats and another kick by place in the form, in the metre it is at home in',
    (id, feel) => {
      const metre = homeMetre(feel);
      const { variants } = feelMetre(feel, metre) ?? {};
      expect(variants?.hats.length).toBeGreaterThanOrEqual(2);
      expect(variants?.strokes.length).toBeGreaterThanOrEqual(2);
      const bars = '| C | Am | F | G | C | Am | F | G |';
      const performance = buildPerformance(
        sheetOf({ chart: `Verse:\n${bars}\nBridge:\n${bars}`, feel: id, metre }),
        { tempo: bpm(110), countIn: 0, passage: null, drumSeed: 1 },
      );
      /** What the drummer plays in a written bar and does not only add here and there. */
      const strokes = (bar: number, sounds: readonly DrumSound[]) =>
        drums(performance)
          .filter(({ start }) => Math.floor(start / barTicks(metre)) === bar)
          .filter(({ sound }) => sounds.includes(sound))
          .map(({ sound, start }) => `${sound} ${start % barTicks(metre)}`);
      const played = (bar: number, rows: readonly DrumRow[] = []) =>
        rows.every((row) =>
          readGrid(row.grid, metre).every(({ start }) =>
            strokes(bar, ['kick', 'snare', 'ride', 'closed hat', 'open hat', 'foot hat']).includes(
              `${row.grid.includes('o') && row.grid[(start * row.grid.length) / barTicks(metre)] === 'o' ? 'open hat' : row.sound} ${swing(start)}`,
            ),
          ),
        );
      const ratio = swingRatio(feel, bpm(110));
      const swing = (start: number) => swung(start, metre, ratio);
      // Second half of the verse, then the bridge and its second half.
      expect(played(4, variants?.hats[0])).toBe(true);
      expect(played(8, variants?.hats[0])).toBe(true);
      expect(played(12, variants?.hats[1])).toBe(true);
      expect(played(2, variants?.strokes.slice(0, 1))).toBe(true);
      expect(played(6, variants?.strokes.slice(1, 2))).toBe(true);
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
