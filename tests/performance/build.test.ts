import { describe, expect, test } from 'vitest';
import { bpm, COMMON_TIME, type Metre } from '../../src/core/base';
import { type FeelId, feelById, swingRatio } from '../../src/core/feel';
import {
  buildPerformance,
  type ClickEvent,
  type DrumEvent,
  type Performance,
  type PerformanceEvent,
  type PerformanceOptions,
  type PitchedEvent,
  playedBarAt,
  secondsAt,
  tickAt,
} from '../../src/core/performance';
import { PARTS, type Part } from '../../src/core/playing';
import { sheetOf } from './sheets';

const PLAIN: PerformanceOptions = { tempo: bpm(140), countIn: 0, passage: null };

const bassIn = ({ events }: Performance): PitchedEvent[] =>
  events.filter((event): event is PitchedEvent => event.part === 'bass');
const drumsIn = ({ events }: Performance): DrumEvent[] => events.filter((event) => event.part === 'drums');
const clicksIn = ({ events }: Performance): ClickEvent[] => events.filter((event) => event.part === 'click');
const eventsOf = ({ events }: Performance, part: Part): PerformanceEvent[] =>
  events.filter((event) => event.part === part);

/** Onsets of a part in beats from the first round's beginning, straight quarters counted from 1. */
const onsets = (performance: Performance, part: Part): number[] =>
  eventsOf(performance, part).map((event) => (event.start - performance.countIn) / 960 + 1);

const bassOf = (bars: readonly string[], chart: string, options: Partial<PerformanceOptions> = {}) =>
  bassIn(buildPerformance(sheetOf({ chart, bars }), { ...PLAIN, ...options })).map(
    ({ start, duration, midi, velocity, muted }) => ({
      start,
      duration,
      midi: Number(midi),
      velocity,
      muted,
    }),
  );

describe('the order of playing', () => {
  const written = (chart: string, options: Partial<PerformanceOptions> = {}) =>
    buildPerformance(sheetOf({ chart }), { ...PLAIN, ...options }).bars.map((bar) => bar.bar + 1);

  test('repeats are unfolded, endings too', () => {
    expect(written('| C | F |')).toEqual([1, 2]);
    expect(written('|: C | F :| G |')).toEqual([1, 2, 1, 2, 3]);
    expect(written('|: C | F :| x3 G |')).toEqual([1, 2, 1, 2, 1, 2, 3]);
    expect(written('|: C | 1. F :| 2. G |')).toEqual([1, 2, 1, 3]);
  });

  test('a passage is played once, with the repeats that lie in it', () => {
    expect(written('| C | F | G | C |', { passage: { first: 2, last: 3 } })).toEqual([2, 3]);
    expect(written('|: C | F | G | C :|', { passage: { first: 2, last: 3 } })).toEqual([2, 3]);
    expect(written('|: C | F :| G | C |', { passage: { first: 1, last: 3 } })).toEqual([1, 2, 1, 2, 3]);
    expect(written('|: C | F | 1. G :| 2. C |', { passage: { first: 3, last: 4 } })).toEqual([3, 4]);
    expect(written('|: C | F | 1. G :| 2. C |', { passage: { first: 2, last: 4 } })).toEqual([2, 3, 2, 4]);
  });

  test('a passage counts bars as they are written: a pickup is bar 0', () => {
    const chart = '(1) C | F | G | C |';
    expect(written(chart, { passage: { first: 0, last: 1 } })).toEqual([1, 2]);
    expect(written(chart, { passage: { first: 1, last: 2 } })).toEqual([2, 3]);
  });

  test('a passage that begins with the pickup is counted in as the whole piece is', () => {
    const countedIn = (passage: PerformanceOptions['passage']) =>
      Number(
        buildPerformance(sheetOf({ chart: '(1) C | F | G |' }), { ...PLAIN, countIn: 1, passage }).countIn,
      );
    expect(countedIn(null)).toBe(3840 + 2880);
    expect(countedIn({ first: 0, last: 1 })).toBe(3840 + 2880);
    expect(countedIn({ first: 1, last: 2 })).toBe(3840);
  });

  test('a passage beyond the chart plays what is there', () => {
    expect(written('| C | F |', { passage: { first: 2, last: 9 } })).toEqual([2]);
    expect(written('| C | F |', { passage: { first: 5, last: 9 } })).toEqual([]);
  });

  test('bars follow each other from the end of the count-in to the end', () => {
    const performance = buildPerformance(sheetOf({ chart: '|: C | (3/4) F :| (4/4) G |' }), {
      ...PLAIN,
      countIn: 2,
    });
    let at: number = performance.countIn;
    for (const bar of performance.bars) {
      expect(bar.start).toBe(at);
      at += bar.duration;
    }
    expect(performance.countIn).toBe(2 * 3840);
    expect(performance.end).toBe(at);
    expect(performance.bars.map((bar) => bar.duration)).toEqual([3840, 2880, 3840, 2880, 3840]);
  });
});

describe('the bass', () => {
  test('sounds the written pitches at their place', () => {
    expect(bassOf(['1 E1 q, 3 G#1 h'], '| E |')).toEqual([
      { start: 0, duration: 960, midi: 28, velocity: 98, muted: false },
      { start: 1920, duration: 1920, midi: 32, velocity: 92, muted: false },
    ]);
  });

  test('a tied note is struck once, through bar lines and repeats', () => {
    const line = bassOf(['1 C2 q, 4 G1 q ~', '1 G1 h'], '|: C | C :|');
    expect(line.map(({ start, duration, midi }) => [start, duration, midi])).toEqual([
      [0, 960, 36],
      [2880, 2880, 31],
      [7680, 960, 36],
      [7680 + 2880, 2880, 31],
    ]);
  });

  test('a tie over three bars is one note', () => {
    const line = bassOf(['1 C2 w ~', '1 C2 w ~', '1 C2 h'], '| C | C | C |');
    expect(line).toMatchObject([{ start: 0, duration: 3840 * 2 + 1920 }]);
  });

  test('a tie leads into both endings', () => {
    const line = bassOf(['1 C2 w ~', '1 C2 h', '1 C2 q'], '|: C | 1. C :| 2. C |');
    expect(line.map(({ start, duration }) => [start, duration])).toEqual([
      [0, 3840 + 1920],
      [7680, 3840 + 960],
    ]);
  });

  test('a continuation at the beginning of a passage is struck', () => {
    const line = bassOf(['1 C2 w ~', '1 C2 h'], '| C | C |', { passage: { first: 2, last: 2 } });
    expect(line).toMatchObject([{ start: 0, duration: 1920, midi: 36 }]);
  });

  test('articulations change length and strength', () => {
    const line = bassOf(["1 C2 q ', 2 C2 q >, 3 C2 q x, 4 C2 q"], '| C |');
    expect(line.map(({ duration, muted }) => [duration, muted])).toEqual([
      [480, false],
      [960, false],
      [240, true],
      [960, false],
    ]);
    const [, accent, ghost, plain] = line.map(({ velocity }) => velocity);
    expect(accent).toBeGreaterThan(plain ?? 0);
    expect(ghost).toBeLessThan(plain ?? 0);
  });
});

describe('swing', () => {
  const swungBass = (tempo: number, metre?: Metre) => {
    const chart = '| C |';
    const bars = ['1 C2 8, 1& D2 8, 2 E2 8, 2& F2 16, 2a G2 16, 3 C2 t, 3+ D2 t, 3++ E2 t'];
    const sheet = sheetOf({ chart, bars, feel: 'early-ska', ...(metre ? { metre } : {}) });
    const performance = buildPerformance(sheet, { ...PLAIN, tempo: bpm(tempo) });
    return bassIn(performance).map((event) => event.start);
  };

  test('moves the off-beat eighth by the ratio of the feel at the tempo, rounded to a tick', () => {
    const ratio = swingRatio(feelById('early-ska'), bpm(126));
    const off = Math.round((960 * ratio) / (1 + ratio));
    expect(off).toBeGreaterThan(480);
    const [one, and, two, twoAnd] = swungBass(126);
    expect([one, and, two, twoAnd]).toEqual([0, off, 960, 960 + off]);
  });

  test('sixteenths share their eighth evenly; triplets stay', () => {
    const line = swungBass(110);
    const off = Math.round((960 * 1.7) / 2.7);
    expect(line[4]).toBe(960 + Math.round(off + (960 - off) / 2));
    expect(line.slice(5)).toEqual([1920, 2240, 2560]);
  });

  test('a swung note still ends where the next begins', () => {
    const sheet = sheetOf({ chart: '| C |', bars: ['1 C2 8, 1& D2 8, 2 E2 q'], feel: 'early-ska' });
    const line = bassIn(buildPerformance(sheet, { ...PLAIN, tempo: bpm(110) }));
    for (const [index, event] of line.entries()) {
      const next = line[index + 1];
      if (next !== undefined) {
        expect(event.start + event.duration).toBe(next.start);
      }
    }
  });

  test('every part swings alike', () => {
    const sheet = sheetOf({
      chart: '| C |',
      bars: ['1& C2 8, 2& C2 8, 3& C2 8, 4& C2 8'],
      feel: 'early-ska',
    });
    const performance = buildPerformance(sheet, { ...PLAIN, tempo: bpm(120) });
    expect(new Set(onsets(performance, 'chops'))).toEqual(new Set(onsets(performance, 'bass')));
  });
});

describe('count-in and click', () => {
  const clicks = (options: Partial<PerformanceOptions>, chart = '| C | F |', metre = COMMON_TIME) => {
    const performance = buildPerformance(sheetOf({ chart, metre }), { ...PLAIN, ...options });
    const all = clicksIn(performance);
    return {
      countIn: all.filter((event) => event.countIn),
      playing: all.filter((event) => !event.countIn).map((event) => event.start - performance.countIn),
      performance,
    };
  };

  test('one click a beat, the first of the bar accented', () => {
    const { countIn, performance } = clicks({ countIn: 1 });
    expect(countIn.map((event) => [event.start, event.accent])).toEqual([
      [0, true],
      [960, false],
      [1920, false],
      [2880, false],
    ]);
    expect(performance.countIn).toBe(3840);
    expect(clicks({ countIn: 0 }).countIn).toEqual([]);
    expect(clicks({ countIn: 2 }).countIn).toHaveLength(8);
  });

  test('below 60 bpm the eighths are heard as well, softer', () => {
    const { countIn } = clicks({ countIn: 1, tempo: bpm(59) });
    expect(countIn.map((event) => event.start)).toEqual([0, 480, 960, 1440, 1920, 2400, 2880, 3360]);
    expect(countIn[1]?.velocity).toBeLessThan(countIn[2]?.velocity ?? 0);
    expect(clicks({ countIn: 1, tempo: bpm(60) }).countIn).toHaveLength(4);
  });

  test('counts in the metre of the first bar played', () => {
    expect(clicks({ countIn: 1 }, '| C | F |', { count: 3, unit: 4 }).countIn).toHaveLength(3);
    expect(clicks({ countIn: 1 }, '| C | F |', { count: 6, unit: 8 }).countIn).toHaveLength(2);
    const changed = clicks({ countIn: 1, passage: { first: 2, last: 2 } }, '| C | (3/4) F |');
    expect(changed.countIn).toHaveLength(3);
  });

  // A loop goes on in time: the last bar has its beats, so one follows it. Common practice, no source.
  test('a pickup leads into the first round of a loop only', () => {
    const chart = '(1) G | C | F |';
    const sheet = sheetOf({ chart, bars: ['1 G1 q', '1 C2 w', '1 F1 w'] });
    const looped = buildPerformance(sheet, { ...PLAIN, countIn: 1, goesRound: true, humaniseSeed: 7 });
    const once = buildPerformance(sheet, { ...PLAIN, countIn: 1 });
    // Three beats complete the bar that the pickup ends.
    expect(once.countIn).toBe(3840 + 2880);
    expect(looped.countIn).toBe(once.countIn + 960);
    expect(looped.end - looped.countIn).toBe(2 * 3840);
    expect(looped.bars.map(({ bar }) => bar)).toEqual([0, 1, 2]);
    const inRound = looped.events.filter(({ part, start }) => part === 'bass' && start >= looped.countIn);
    expect(inRound).toHaveLength(2);
    const later = buildPerformance(sheet, { ...PLAIN, countIn: 0, goesRound: true, pickup: false });
    expect([later.countIn, later.bars.map(({ bar }) => bar)]).toEqual([0, [1, 2]]);
  });

  test('a pickup does not come again where the student takes turns with the bass', () => {
    const sheet = sheetOf({ chart: '(1) G | C | F |', bars: ['1 G1 q', '1 C2 w', '1 F1 w'] });
    const turns = buildPerformance(sheet, { ...PLAIN, countIn: 0, bass: { kind: 'every second round' } });
    expect(turns.bars.map(({ bar }) => bar)).toEqual([0, 1, 2, 1, 2]);
  });

  // 3+2, 2+2+3 and 3+3+3 eighths: common practice, no source.
  test.each([
    [{ count: 2, unit: 4 }, [0, 960], [0, 960]],
    [{ count: 5, unit: 4 }, [0, 960, 1920, 2880, 3840], [0, 960, 1920, 2880, 3840]],
    [{ count: 7, unit: 8 }, [0, 480, 960, 1440, 1920, 2400, 2880], [0, 960, 1920]],
    [{ count: 9, unit: 8 }, [0, 1440, 2880], [0, 1440, 2880]],
  ] as const)('counts in and clicks in $count/$unit', (metre, before, beats) => {
    const { countIn, playing, performance } = clicks({ countIn: 1 }, '| C |', metre);
    expect(countIn.map(({ start }) => start)).toEqual(before);
    expect(playing).toEqual(beats);
    const accents = countIn.filter(({ accent }) => accent).map(({ start }) => start);
    expect(accents).toEqual([0]);
    expect(performance.countIn).toBe((3840 * metre.count) / metre.unit);
  });

  test('the eighths between the uneven beats are softer', () => {
    const { countIn } = clicks({ countIn: 1 }, '| C |', { count: 7, unit: 8 });
    const loud = countIn.filter(({ velocity }) => velocity > 90).map(({ start }) => start);
    expect(loud).toEqual([0, 960, 1920]);
  });

  test('a quarter is as long in 7/8 as in 4/4 at the same tempo', () => {
    const seconds = (metre: typeof COMMON_TIME) =>
      secondsAt(clicks({ countIn: 0, tempo: bpm(120) }, '| C |', metre).performance, 960);
    expect(seconds({ count: 7, unit: 8 })).toBe(0.5);
    expect(seconds(COMMON_TIME)).toBe(0.5);
  });

  test('a pickup completes the bar that the count-in has begun', () => {
    const { performance, countIn } = clicks({ countIn: 1 }, '(2) C | C | F |');
    expect(performance.bars.map((bar) => bar.duration)).toEqual([1920, 3840, 3840]);
    expect(countIn.map((event) => event.start)).toEqual([0, 960, 1920, 2880, 3840, 4800]);
  });

  test('on every beat, on two and four, on the off-beats, or dropping out', () => {
    expect(clicks({}).playing).toEqual([0, 960, 1920, 2880, 3840, 4800, 5760, 6720]);
    expect(clicks({ click: { beats: 'two and four', dropOut: null } }).playing).toEqual([
      960, 2880, 4800, 6720,
    ]);
    expect(
      clicks({ click: { beats: 'two and four', dropOut: null } }, '| C |', { count: 3, unit: 4 }).playing,
    ).toEqual([960, 1920]);
    const late = Math.round((960 * swingRatio(feelById('early-ska'), bpm(140))) / (1 + 1.2));
    expect(clicks({ click: { beats: 'off-beats', dropOut: null } }, '| C |').playing).toEqual(
      [0, 960, 1920, 2880].map((beat) => beat + late),
    );
    const dropping = clicks(
      { click: { beats: 'every beat', dropOut: { sounding: 1, silent: 2 } } },
      '| C | C | C | C |',
    );
    expect(dropping.playing.map((start) => Math.floor(start / 3840))).toEqual([0, 0, 0, 0, 3, 3, 3, 3]);
  });
});

describe('rounds with and without the bass', () => {
  const plan = (options: Partial<PerformanceOptions>, chart = '| C | F | G | C |') => {
    const bars = Array.from({ length: 4 }, () => '1 C2 w');
    const performance = buildPerformance(sheetOf({ chart, bars }), { ...PLAIN, ...options });
    const withBass = new Set(
      bassIn(performance).map((event) => playedBarAt(performance, event.start)?.index ?? -1),
    );
    return {
      performance,
      text: performance.bars.map((bar, index) => `${bar.bar + 1}${withBass.has(index) ? '' : '-'}`).join(' '),
    };
  };

  test('every second round is the student’s', () => {
    expect(plan({ bass: { kind: 'every second round' } }).text).toBe('1 2 3 4 1- 2- 3- 4-');
  });

  test('call and response', () => {
    expect(plan({ bass: { kind: 'call and response', bars: 2 } }).text).toBe('1 2 1- 2- 3 4 3- 4-');
    expect(plan({ bass: { kind: 'call and response', bars: 1 }, passage: { first: 1, last: 2 } }).text).toBe(
      '1 1- 2 2-',
    );
  });

  test('a note held into a bar without the bass ends with its own bar', () => {
    const bars = ['1 C2 w ~', '1 C2 w'];
    const performance = buildPerformance(sheetOf({ chart: '| C | C |', bars }), {
      ...PLAIN,
      bass: { kind: 'call and response', bars: 1 },
    });
    expect(bassIn(performance).map(({ start, duration }) => [start, duration])).toEqual([
      [0, 3840],
      [7680, 3840],
    ]);
  });

  test('an empty bar after the round, where only the click goes on', () => {
    const { performance } = plan({ emptyBar: true });
    expect(performance.bars).toHaveLength(4);
    expect(performance.end).toBe(5 * 3840);
    const late = performance.events.filter((event) => event.start >= 4 * 3840);
    expect(late.length).toBe(4);
    expect(late.every((event) => event.part === 'click')).toBe(true);
    expect(playedBarAt(performance, 4 * 3840 + 10)).toBeNull();
  });
});

describe('the rhythm section', () => {
  const EIGHT = '| F | Dm | Gm | C7 | F | F7 | Bb C | F |';

  const grid = (performance: Performance, bar: number, sound: string): string => {
    const played = performance.bars[bar];
    if (played === undefined) {
      return '';
    }
    const hits = drumsIn(performance).filter(
      (event) => event.sound === sound && playedBarAt(performance, event.start)?.index === bar,
    );
    const steps = hits.map((hit) => Math.floor((hit.start - played.start) / 240));
    return Array.from({ length: 16 }, (_, step) => (steps.includes(step) ? 'x' : '-')).join('');
  };

  test('the drums play the feel’s grid', () => {
    const performance = buildPerformance(sheetOf({ chart: EIGHT, feel: 'one-drop' }), PLAIN);
    expect(grid(performance, 0, 'kick')).toBe('--------x-------');
    expect(grid(performance, 0, 'rim')).toBe('--------x-------');
    const ska = buildPerformance(sheetOf({ chart: EIGHT, feel: 'early-ska' }), PLAIN);
    expect(grid(ska, 1, 'snare')).toBe('----x-------x---');
  });

  test('the last bar of four is a fill, and no other', () => {
    const performance = buildPerformance(sheetOf({ chart: EIGHT, feel: 'early-ska' }), PLAIN);
    const plain = grid(performance, 0, 'snare');
    const differing = performance.bars.flatMap((_, bar) =>
      grid(performance, bar, 'snare') === plain ? [] : [bar + 1],
    );
    expect(differing).toEqual([4, 8]);
  });

  test('a pattern of two bars alternates in every section, also after a pickup', () => {
    const rims = (chart: string, feel: FeelId): string[] => {
      const performance = buildPerformance(sheetOf({ chart, feel }), PLAIN);
      return performance.bars.map((_, bar) => grid(performance, bar, 'rim'));
    };
    const [first, second] = ['x-----x-----x---', '----x-----x-----'];
    expect(rims('| C | F | C |\nBridge:\n| F | C |', 'bossa')).toEqual([first, second, first, first, second]);
    expect(rims('(1) C | F | G | C |', 'bossa').slice(1)).toEqual([first, second, first]);
    expect(rims('(1) C | F | G | C | F |', 'bossa').at(-1)).toBe('----x---x-x-x-x-');
    expect(new Set(rims('| C | F | C |', 'one-drop')).size).toBe(1);
  });

  test('a crash opens the section after a fill', () => {
    const performance = buildPerformance(sheetOf({ chart: `Verse:\n${EIGHT}\nBridge:\n| F | C |` }), PLAIN);
    const crashes = drumsIn(performance).filter((event) => event.sound === 'crash');
    expect(crashes.map((event) => event.start)).toEqual([8 * 3840]);
  });

  test('accents of the grid are stronger', () => {
    const performance = buildPerformance(sheetOf({ chart: '| Am |', feel: 'one-drop' }), PLAIN);
    const hats = drumsIn(performance).filter((event) => event.sound === 'closed hat');
    const strength = (beat: number) =>
      hats.find((hat) => Math.floor(hat.start / 960) === beat)?.velocity ?? 0;
    expect(strength(1)).toBeGreaterThan(strength(0));
    expect(strength(3)).toBeGreaterThan(strength(2));
  });

  test('a metre the feel says nothing about is kept plainly', () => {
    const performance = buildPerformance(sheetOf({ chart: '| C |', metre: { count: 6, unit: 8 } }), PLAIN);
    const drums = drumsIn(performance);
    expect(drums.map((event) => [event.sound, event.start])).toEqual([
      ['kick', 0],
      ['closed hat', 0],
      ['closed hat', 1440],
    ]);
  });

  test('all parts are there whatever is heard', () => {
    const performance = buildPerformance(sheetOf({ chart: EIGHT, bars: ['1 F1 q'] }), PLAIN);
    expect(new Set(performance.events.map((event) => event.part))).toEqual(new Set(PARTS));
  });
});

describe('humanising', () => {
  const sheet = sheetOf({
    chart: '| C | F | G | C |',
    bars: Array.from({ length: 4 }, () => '1 C2 q, 2 E2 h, 4 G1 q'),
  });
  const straight = buildPerformance(sheet, { ...PLAIN, countIn: 1 });
  const moved = buildPerformance(sheet, { ...PLAIN, countIn: 1, humaniseSeed: 7 });

  test('the same seed gives the same performance, another seed another', () => {
    expect(buildPerformance(sheet, { ...PLAIN, countIn: 1, humaniseSeed: 7 })).toEqual(moved);
    expect(buildPerformance(sheet, { ...PLAIN, countIn: 1, humaniseSeed: 8 })).not.toEqual(moved);
  });

  test('a seed moves a bar as it always did, so that a line that was heard sounds the same again', () => {
    const placed = (part: 'bass' | 'drums') =>
      eventsOf(moved, part)
        .slice(0, 6)
        .map(({ start, velocity }) => [start, velocity]);
    expect(placed('bass')).toEqual([
      [3847, 95],
      [4802, 91],
      [6728, 89],
      [7690, 93],
      [8643, 88],
      [10_563, 89],
    ]);
    expect(placed('drums')).toEqual([
      [3841, 84],
      [4364, 54],
      [4801, 87],
      [4803, 86],
      [4805, 89],
      [5326, 91],
    ]);
  });

  test('deviations are small, the click has none, and nothing begins too early', () => {
    for (const part of PARTS) {
      const before = eventsOf(straight, part).map((event) => event.start);
      const after = eventsOf(moved, part).map((event) => event.start);
      expect(after).toHaveLength(before.length);
      const sorted = [...after].sort((one, other) => one - other);
      for (const [index, start] of [...before].sort((one, other) => one - other).entries()) {
        // At most 10 ticks either way, and the bass as far behind as it lies in the feel.
        const late = part === 'bass' ? Math.round((sheet.feel.layBack.bass * 140 * 960) / 60_000) : 0;
        const by = (sorted[index] ?? 0) - start - late;
        expect(Math.abs(by)).toBeLessThanOrEqual(part === 'click' ? 0 : 10);
      }
    }
    const first = moved.events.filter((event) => event.part !== 'click').map((event) => event.start);
    expect(Math.min(...first)).toBeGreaterThanOrEqual(moved.countIn);
  });

  test('the bass stays one note at a time', () => {
    const line = bassIn(moved);
    for (const [index, event] of line.entries()) {
      const next = line[index + 1];
      if (next !== undefined) {
        expect(event.start + event.duration).toBeLessThanOrEqual(next.start);
      }
    }
  });
});

describe('time', () => {
  const performance = buildPerformance(sheetOf({ chart: '| C | F |' }), {
    ...PLAIN,
    tempo: bpm(90),
    countIn: 1,
  });

  test('a beat at 90 bpm lasts two thirds of a second', () => {
    expect(secondsAt(performance, 960)).toBeCloseTo(2 / 3, 12);
    expect(tickAt(performance, 2 / 3)).toBeCloseTo(960, 9);
  });

  test('in compound time the dotted beat is counted', () => {
    const sheet = sheetOf({ chart: '| C |', metre: { count: 6, unit: 8 } });
    const compound = buildPerformance(sheet, { ...PLAIN, tempo: bpm(60) });
    expect(compound.beat).toBe(1440);
    expect(secondsAt(compound, compound.end)).toBeCloseTo(2, 12);
  });

  test('finds the bar that is played', () => {
    expect(playedBarAt(performance, 0)).toBeNull();
    expect(playedBarAt(performance, 3839)).toBeNull();
    expect(playedBarAt(performance, 3840)?.bar.bar).toBe(0);
    expect(playedBarAt(performance, 7679.5)?.index).toBe(0);
    expect(playedBarAt(performance, 7680)?.index).toBe(1);
    expect(playedBarAt(performance, 11520)).toBeNull();
  });
});

test('an empty chart is an empty performance', () => {
  const performance = buildPerformance(sheetOf({ chart: '' }), { ...PLAIN, countIn: 1 });
  expect(performance.bars).toEqual([]);
  expect(performance.end).toBe(performance.countIn);
});
