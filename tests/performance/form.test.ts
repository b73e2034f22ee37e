/** Intro, last hit and lay-back. What a band does at the beginning and the end of a tune: common practice, no source. */
import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { FEEL_IDS, FEELS, feelById, homeMetre } from '../../src/core/feel';
import { buildPerformance, type PerformanceOptions } from '../../src/core/performance';
import { sheetOf } from './sheets';

const PLAIN: PerformanceOptions = { tempo: bpm(120), countIn: 0, passage: null };
const LINE = ['1 F1 q, 2 A1 q, 3 C2 q, 4 A1 q', '1 C2 q, 2 E2 q, 3 G1 q, 4 C2 q'];

describe('the last hit', () => {
  const ended = (chart: string, options: Partial<PerformanceOptions> = {}) => {
    const performance = buildPerformance(sheetOf({ chart, bars: LINE }), {
      ...PLAIN,
      ending: true,
      ...options,
    });
    const { ending } = performance;
    return {
      performance,
      hits: performance.events.filter(({ start }) => ending !== null && start >= ending),
    };
  };

  test('comes in a bar of its own after the last one, where everybody sounds the tonic of the key', () => {
    const { performance, hits } = ended('| F | G7 |');
    expect(performance.ending).toBe(2 * 3840);
    expect(performance.end).toBe(3 * 3840);
    expect(performance.bars).toHaveLength(2);
    expect(new Set(hits.map(({ part }) => part))).toEqual(new Set(['bass', 'drums', 'chops', 'organ']));
    for (const hit of hits) expect(hit.start).toBe(2 * 3840);
    // The key is C major: the bass on C, near to where it was, the others on C, E and G.
    const pitches = hits.flatMap((hit) => ('midi' in hit ? [[hit.part, hit.midi % 12, hit.midi]] : []));
    expect(pitches.filter(([part]) => part === 'bass')).toEqual([['bass', 0, 36]]);
    expect(new Set(pitches.map(([, pitchClass]) => pitchClass))).toEqual(new Set([0, 4, 7]));
  });

  test('takes the tonic as the line has it, and the minor triad in minor', () => {
    const sheet = sheetOf({ chart: '| Am | E7 |', bars: LINE });
    const minor = { ...sheet, key: { tonic: { letter: 'E', alteration: 0 }, mode: 'minor' } } as const;
    const classes = (key: typeof sheet.key) =>
      new Set(
        buildPerformance({ ...sheet, key }, { ...PLAIN, ending: true }).events.flatMap((event) =>
          'midi' in event && event.start >= 7680 ? [event.midi % 12] : [],
        ),
      );
    expect(classes(minor.key)).toEqual(new Set([4, 8, 11, 2]));
    expect(classes({ tonic: { letter: 'D', alteration: 0 }, mode: 'minor' })).toEqual(new Set([2, 5, 9]));
  });

  test('is the student’s where the bass rests in the last bar, and none without bars', () => {
    const { hits } = ended('| F | C |', { bass: { kind: 'every second round' } });
    expect(hits.some(({ part }) => part === 'bass')).toBe(false);
    expect(ended('').performance.ending).toBeNull();
  });

  test.each(FEEL_IDS)('%s: is struck as the feel ends', (id) => {
    const feel = feelById(id);
    const sheet = sheetOf({ chart: '| C |', feel: id, metre: homeMetre(feel), bars: ['1 C2 q'] });
    const { events, ending } = buildPerformance(sheet, { ...PLAIN, ending: true });
    const last = events.filter(({ start }) => start === ending);
    expect(last.flatMap((event) => (event.part === 'drums' ? [event.sound] : []))).toEqual(feel.ending.drums);
    expect(feel.ending.drums).toContain('kick');
    expect(feel.ending.drums.includes('crash') && feel.crash === undefined).toBe(false);
    expect(last.filter(({ part }) => part === 'bass')).toHaveLength(1);
    // What is held is held for a beat at least.
    const longest = Math.max(...last.flatMap((event) => (event.part === 'organ' ? [event.duration] : [])));
    expect(longest > 480).toBe(feel.ending.held);
  });
});

describe('the intro', () => {
  test('is a bar of the rhythm section before the first one, after the count-in, once', () => {
    const performance = buildPerformance(sheetOf({ chart: '| F | C |', bars: LINE }), {
      ...PLAIN,
      countIn: 1,
      intro: true,
    });
    expect(performance.countIn).toBe(2 * 3840);
    expect(performance.intro).toBe(3840);
    expect(performance.bars[0]?.start).toBe(2 * 3840);
    const early = performance.events.filter(({ start }) => start < performance.countIn);
    const counted = early.filter(({ start }) => start < 3840);
    expect(counted.every((event) => event.part === 'click' && event.countIn)).toBe(true);
    expect(counted).toHaveLength(4);
    const parts = new Set(early.filter(({ start }) => start >= 3840).map(({ part }) => part));
    expect(parts).toEqual(new Set(['drums', 'chops', 'organ', 'click']));
    expect(early.some((event) => event.part === 'click' && event.countIn && event.start >= 3840)).toBe(false);
  });

  test('a pickup comes at its end', () => {
    const { countIn, intro, bars } = buildPerformance(sheetOf({ chart: '(1) C | F |' }), {
      ...PLAIN,
      countIn: 1,
      intro: true,
    });
    expect([Number(countIn), Number(intro)]).toEqual([3840 + 3840 + 2880, 3840 + 2880]);
    expect(bars[0]?.start).toBe(countIn);
  });
});

describe('lay-back', () => {
  test.each(FEELS.map((feel) => [feel.id, feel] as const))(
    '%s: by its milliseconds, at every tempo',
    (id, feel) => {
      for (const tempo of [60, 180]) {
        const metre = homeMetre(feel);
        const chart = Array.from({ length: 32 }, () => '| C ').join('');
        const sheet = sheetOf({
          chart: `${chart}|`,
          feel: id,
          metre,
          bars: Array.from({ length: 32 }, () => '1 C2 q'),
        });
        const options = { ...PLAIN, tempo: bpm(tempo) };
        const starts = (humaniseSeed?: number) =>
          buildPerformance(sheet, {
            ...options,
            ...(humaniseSeed === undefined ? {} : { humaniseSeed }),
          }).events.flatMap((event) => (event.part === 'bass' ? [Number(event.start)] : []));
        const exact = starts();
        const late = starts(1).map((start, index) => start - (exact[index] ?? 0));
        const mean = late.slice(1).reduce((sum, one) => sum + one, 0) / (late.length - 1);
        const beat = metre.unit === 8 ? 1440 : 960;
        expect(Math.abs((mean / beat) * (60_000 / tempo) - feel.layBack.bass)).toBeLessThan(2.5);
      }
    },
  );
});
