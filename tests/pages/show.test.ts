import { describe, expect, test } from 'vitest';
import { nextLight, showKey } from '../../src/app/pages/show/keys';
import { turnRows } from '../../src/app/pages/show/page-turn';
import { silencesOf } from '../../src/app/pages/show/silence';
import {
  DIGIT_HEIGHT,
  largestSize,
  minutesOfArc,
  READABLE_SIZE,
  type Size,
  textSizesFor,
} from '../../src/app/pages/show/sizes';
import { turnAt } from '../../src/app/pages/show/turn';
import { deriveSheets, type Light, type LineSheet, lightsOf, sampleLesson } from '../../src/core/lesson';
import { performanceOf } from '../../src/core/performance';
import { engrave } from '../../src/score/engrave';

describe('the rows of the large view', () => {
  const empty = { rows: [null, null], at: 0 };

  test('what is played never moves; what comes next stands where the last row was', () => {
    const first = turnRows(empty, 0, 1);
    expect(first).toEqual({ rows: [0, 1], at: 0 });
    const second = turnRows(first, 1, 2);
    expect(second).toEqual({ rows: [2, 1], at: 1 });
    expect(turnRows(second, 2, 3)).toEqual({ rows: [2, 3], at: 0 });
    expect(turnRows(second, 1, 2)).toBe(second);
  });

  test('a jump is shown in the row that is read; a loop of one row has nothing beside it', () => {
    expect(turnRows({ rows: [2, 1], at: 1 }, 5, 6)).toEqual({ rows: [6, 5], at: 1 });
    expect(turnRows(empty, 4, 4)).toEqual({ rows: [4, null], at: 0 });
    expect(turnRows({ rows: [null], at: 0 }, 3, 4)).toEqual({ rows: [3], at: 0 });
  });
});

describe('how large it is drawn', () => {
  test('what is read across the room is 20 minutes of arc high (ISO 9241-303, from memory) on 24 inches at 3 m', () => {
    // 1920 pixels are 531 mm, and 17.5 mm at 3 m cover 20 minutes of arc.
    expect(READABLE_SIZE * DIGIT_HEIGHT * (531.3 / 1920)).toBeCloseTo(17.45, 1);
    expect(minutesOfArc(READABLE_SIZE * DIGIT_HEIGHT)).toBeCloseTo(20, 6);
  });

  test('the digits come first, then the staff; height, the bars in a row and their size at its smallest are kept', () => {
    const tryAt =
      (digitsAtMost: number) =>
      ({ staffSpace, digits }: Size) => ({
        height: staffSpace * 10 + digits * 5,
        systems: digits > digitsAtMost ? 6 : 4,
        share: 1,
      });
    expect(largestSize(tryAt(999), 1, 2000)).toEqual({ staffSpace: 44, digits: READABLE_SIZE });
    expect(largestSize(tryAt(999), 2, 1500).digits).toBeCloseTo(READABLE_SIZE, 6);
    expect(largestSize(tryAt(60), 1, 2000).digits).toBeCloseTo(60, -1);
    expect(largestSize(tryAt(60), 1, 2000).digits).toBeLessThanOrEqual(60);
    expect(largestSize(tryAt(999), 2, 10)).toEqual({ staffSpace: 8, digits: 12 });
  });

  const lines = [0, 1].flatMap((index) =>
    deriveSheets(sampleLesson(index, 'sample')).filter((sheet) => sheet.kind === 'line'),
  );

  /** The smallest fret, degree or count as it is drawn, in minutes of arc. */
  function smallestRead(sheet: LineSheet, rows: 1 | 2, shown: { degrees: boolean; counting: boolean }) {
    // Below 1920 × 1080 without the buttons.
    const [width, room] = [1880, 980];
    const at = (size: Size) =>
      engrave(sheet, {
        ...shown,
        width,
        staffSpace: size.staffSpace,
        textSizes: textSizesFor(size),
        fingers: false,
        barsPerSystem: 2,
        strictly: true,
        measureNumbers: true,
      }).systems;
    const size = largestSize(
      (tried) => {
        const systems = at(tried);
        return {
          systems: systems.length,
          height: Math.max(...systems.map(({ height }) => height)),
          share: Math.min(...systems.map(({ scale }) => (scale * 10) / tried.staffSpace)),
        };
      },
      rows,
      room,
    );
    const sizes = at(size).flatMap(({ ink, scale }) =>
      ink.flatMap((mark) =>
        mark.kind === 'text' && ['fret', 'degree', 'counting'].includes(mark.role) ? [mark.size * scale] : [],
      ),
    );
    return minutesOfArc(Math.min(...sizes) * DIGIT_HEIGHT);
  }

  test('two bars with staff, tab, degrees and counting are read from 3 m; four are read as small print is', () => {
    expect(lines.length).toBeGreaterThan(1);
    for (const sheet of lines) {
      expect(smallestRead(sheet, 1, { degrees: true, counting: true })).toBeGreaterThanOrEqual(19.9);
      expect(smallestRead(sheet, 2, { degrees: false, counting: false })).toBeGreaterThanOrEqual(16);
      // What is read in passing needs 10 minutes at least (ISO 9241-3, from memory).
      expect(smallestRead(sheet, 2, { degrees: true, counting: true })).toBeGreaterThanOrEqual(12);
    }
  });
});

test('silence is told from half a beat on, at the beginning, in the middle and at the end of a bar', () => {
  const metre = { count: 4, unit: 4 } as const;
  const notes = [
    { start: 960, duration: 900 },
    { start: 1920, duration: 480 },
  ];
  expect(silencesOf(notes, metre)).toEqual([
    { start: 0, end: 960 },
    { start: 2400, end: 3840 },
  ]);
  expect(silencesOf([], metre)).toEqual([{ start: 0, end: 3840 }]);
  expect(silencesOf([{ start: 0, duration: 3840 }], metre)).toEqual([]);
});

describe('in class', () => {
  const lesson = sampleLesson(1, 'sample');
  const [piece] = lesson.pieces;
  const [sheet] = deriveSheets(lesson);
  if (piece?.kind !== 'line' || sheet?.kind !== 'line') throw new Error('the sample begins with a line');

  test('what can be lit up is where to listen, then the silence, then the techniques, each with its bars', () => {
    const lights = lightsOf(piece, sheet, lesson.instrument);
    expect(lights[0]?.kind).toBe('listen');
    const silent = lights.find(({ name }) => name === 'Beat one silent');
    expect(silent?.kind).toBe('silence');
    expect(silent?.bars).toEqual(
      sheet.bars.flatMap(({ notes }, bar) => ((notes[0]?.note.start ?? 0) > 0 ? [bar] : [])),
    );
    expect(lights.at(-1)?.kind).toBe('technique');
  });

  test('a presenter’s remote goes on and back through it, and letters go to their own kind', () => {
    const lights = (['listen', 'silence', 'technique', 'technique'] as const).map(
      (kind): Light => ({ kind, name: kind, sentence: '', bars: [] }),
    );
    const press = (lit: number | null, key: string) => {
      const found = showKey(key);
      if (found?.kind !== 'light' && found?.kind !== 'lights') throw new Error(`${key} lights nothing`);
      return nextLight(lights, lit, found);
    };
    expect([null, 0, 1, 2, 3].map((lit) => press(lit, 'PageDown'))).toEqual([0, 1, 2, 3, null]);
    expect([null, 0, 1, 2, 3].map((lit) => press(lit, 'PageUp'))).toEqual([3, null, 0, 1, 2]);
    expect([null, 1, 2, 3].map((lit) => press(lit, 'N'))).toEqual([2, 2, 3, null]);
    expect([null, 1].map((lit) => press(lit, 's'))).toEqual([1, null]);
    expect(showKey('x')).toBeNull();
  });

  test('each call is answered in the bars that it had', () => {
    const byTurns = {
      ...piece,
      playing: { ...piece.playing, bassPlan: { kind: 'call and response', bars: 2 } },
    };
    const performance = performanceOf(byTurns as typeof piece, sheet, 'notes');
    const turn = (playedBar: number | null) =>
      turnAt({ performance, playedBar, bar: null, tick: 0, place: { rung: 0, round: 0, playedBar: 0 } });
    expect([0, 1, 2, 3, 4].map(turn)).toEqual([
      { kind: 'call', bars: [0, 1] },
      { kind: 'call', bars: [0, 1] },
      { kind: 'answer', bars: [0, 1] },
      { kind: 'answer', bars: [0, 1] },
      { kind: 'call', bars: [2, 3] },
    ]);
    expect(turn(null)).toBeNull();
    const whole = performanceOf(piece, sheet, 'notes');
    expect(
      turnAt({
        performance: whole,
        playedBar: 0,
        bar: 0,
        tick: 0,
        place: { rung: 0, round: 0, playedBar: 0 },
      }),
    ).toBeNull();
  });
});
