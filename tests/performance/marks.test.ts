import { describe, expect, test } from 'vitest';
import { bpm, type DynamicSign, ticks } from '../../src/core/base';
import type { LineSheet } from '../../src/core/lesson';
import { buildPerformance, type PitchedEvent } from '../../src/core/performance';
import { sheetOf } from './sheets';

const played = (sheet: LineSheet, humaniseSeed?: number): readonly PitchedEvent[] =>
  buildPerformance(sheet, {
    tempo: bpm(120),
    countIn: 0,
    passage: null,
    ...(humaniseSeed === undefined ? {} : { humaniseSeed }),
  }).events.flatMap((event) => (event.part === 'bass' ? [event] : []));

const line = (...bars: readonly string[]): LineSheet =>
  sheetOf({
    chart: bars
      .map(() => '| C ')
      .join('')
      .concat('|'),
    bars,
    feel: 'disco',
  });

describe('notes that are not plucked', () => {
  test('a hammer-on and a pull-off are softer and say how they begin', () => {
    const [first, second, third, fourth] = played(line('1 C2 q {hammer}, 2 D2 q {hammer}, 3 C2 q, 4 C2 q'));
    expect([first, second, third, fourth].map((note) => note?.attack)).toEqual([
      undefined,
      'hammered',
      'hammered',
      undefined,
    ]);
    expect(second?.velocity).toBeLessThan(fourth?.velocity ?? 0);
    expect(first?.duration).toBe(960);
  });

  test('a slide glides to the next note, which goes on', () => {
    const [from, to] = played(line('1 C2 h {slide}, 3 G2 h'));
    expect(from?.glides).toEqual([{ at: 'end', halfSteps: 7, duration: 480 }]);
    expect(to?.attack).toBe('joined');
  });

  test('lead over the bar line and through a tie', () => {
    const notes = played(line('1 C2 h, 3 D2 h ~', '1 D2 q {slur}, 2 E2 q'));
    expect(notes.map(({ attack }) => attack)).toEqual([undefined, undefined, 'joined']);
  });

  test('are plucked after a silence, and by a mark of their own', () => {
    const [, afterRest, popped] = played(line('1 C2 q {hammer}, 3 D2 q {hammer}, 4 F2 q {pop}'));
    expect(afterRest?.attack).toBeUndefined();
    expect(popped).toMatchObject({ tone: 'popped' });
    expect(popped?.attack).toBeUndefined();
  });
});

describe('what else is marked', () => {
  test('slides in and out bend the note itself', () => {
    const [into, out] = played(line('1 C2 h {slide from below}, 3 C2 h {slide down}'));
    expect(into?.glides).toEqual([{ at: 'beginning', halfSteps: -2, duration: 240 }]);
    expect(out?.glides).toMatchObject([{ at: 'end', halfSteps: -5 }]);
  });

  test('palm mute, slap and pop have their colours, i and m have none', () => {
    const notes = played(line('1 C2 q {palm mute}, 2 C2 q {slap}, 3 C2 q {pop}, 4 C2 q {i}'));
    expect(notes.map(({ tone }) => tone)).toEqual(['palm muted', 'slapped', 'popped', undefined]);
    expect(notes.every(({ muted }) => !muted)).toBe(true);
  });

  test('a note that rings sounds under the next ones, humanised or not', () => {
    const sheet = line('1 C2 q {let ring}, 2 E2 q, 3 G2 q, 4 E2 q');
    const fingered = {
      ...sheet,
      bars: sheet.bars.map((bar) => ({
        ...bar,
        notes: bar.notes.map((note, index) => ({
          ...note,
          fingered: { string: index === 0 || index === 3 ? 3 : 2, fret: 3, finger: 2, position: 2 },
        })),
      })),
    } as unknown as LineSheet;
    expect(played(fingered)[0]?.duration).toBe(3 * 960);
    expect(played(fingered, 4)[0]?.duration).toBeGreaterThan(2 * 960);
    expect(played(sheet, 4)[1]?.duration).toBeLessThanOrEqual(960);
  });

  // A sixteenth's place swings and a triplet's does not: this note's end would come before its beginning.
  test.each(['let ring', null] as const)(
    'a very short note is played as long as it is written: %s',
    (length) => {
      const sheet = sheetOf({ chart: '| C |', bars: ['1 C2 q {let ring}'], feel: 'shuffle-blues' });
      const bars = sheet.bars.map((bar) => ({
        ...bar,
        notes: bar.notes.map((sheetNote) => {
          const { marks: _, ...note } = sheetNote.note;
          return {
            ...sheetNote,
            note: {
              ...note,
              start: ticks(600),
              duration: ticks(40),
              ...(length === null ? {} : { marks: { length } }),
            },
          };
        }),
      }));
      expect(played({ ...sheet, bars }).map(({ duration }) => duration)).toEqual([40]);
    },
  );
});

describe('dynamics', () => {
  const strengths = (...dynamics: readonly (readonly DynamicSign[])[]): readonly number[] => {
    const sheet = line(...dynamics.map(() => '1 C2 q, 2 C2 q, 3 C2 q, 4 C2 q'));
    const bars = sheet.bars.map((bar, index) => ({ ...bar, dynamics: dynamics[index] ?? [] }));
    return played({ ...sheet, bars }).map(({ velocity }) => velocity);
  };
  const sign = (at: number, more: Omit<DynamicSign, 'at'> = {}): DynamicSign => ({ at: ticks(at), ...more });

  test('hold until the next sign; without any, a line is mezzo forte', () => {
    const [, plain = 0] = strengths([]);
    expect(strengths([sign(0, { level: 'mf' })])[1]).toBe(plain);
    const notes = strengths([sign(0, { level: 'p' }), sign(1920, { level: 'f' })], []);
    const [, soft = 0, , loud = 0, , stays] = notes;
    expect(soft).toBeLessThan(plain);
    expect(loud).toBeGreaterThan(plain);
    expect(stays).toBe(loud);
  });

  test('grow evenly over a hairpin, across bar lines, to the level that ends it', () => {
    const notes = strengths([sign(0, { level: 'p', hairpin: 'crescendo' })], [sign(960, { level: 'ff' })]);
    const [, two = 0, three = 0, four = 0, , six] = notes;
    expect(Math.abs(three - two - (four - three))).toBeLessThanOrEqual(1);
    expect(three).toBeGreaterThan(two);
    expect(six).toBe(118);
  });

  test('fall by about a level where nothing says how far', () => {
    const notes = strengths([sign(0, { level: 'f', hairpin: 'diminuendo' }), sign(1920)]);
    expect(notes[2]).toBe(90);
    expect(notes[3]).toBe(90);
  });
});
