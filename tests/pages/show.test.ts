import { describe, expect, test } from 'vitest';
import { barsOf, type Choices, largerWays, shownOf } from '../../src/app/pages/show/choices';
import { nextLight, showKey } from '../../src/app/pages/show/keys';
import {
  ARRANGEMENTS,
  canBeReadAcross,
  drawnIn,
  layOutLarge,
  TIGHTEST,
} from '../../src/app/pages/show/large-layout';
import { turnRows } from '../../src/app/pages/show/page-turn';
import {
  DIGIT_HEIGHT,
  guessedInches,
  inMetres,
  isReadAcross,
  pixelOf,
  readFrom,
} from '../../src/app/pages/show/reading';
import { musicRoom } from '../../src/app/pages/show/room';
import { barAfterTurn } from '../../src/app/pages/show/seen';
import { silencesOf, silenceWord } from '../../src/app/pages/show/silence';
import { largestSize, readableSize, type Size, textSizesFor } from '../../src/app/pages/show/sizes';
import { turnAt } from '../../src/app/pages/show/turn';
import { ticks } from '../../src/core/base';
import {
  deriveSheet,
  deriveSheets,
  type Light,
  type LineSheet,
  lightsOf,
  sampleLesson,
} from '../../src/core/lesson';
import { performanceOf } from '../../src/core/performance';
import type { TextInk } from '../../src/score';
import { engrave } from '../../src/score/engrave';
import { pinnedSample, withLine } from '../support/pinned';

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

test('turning goes on after what is seen and back by as many bars, with a pickup too, and stays at the ends', () => {
  const two = { count: 2, last: 8 };
  expect(barAfterTurn([0, 1], 1, two)).toBe(2);
  expect(barAfterTurn([0, 1, 2], 1, two)).toBe(3);
  expect(barAfterTurn([3, 4], -1, two)).toBe(1);
  expect(barAfterTurn([1, 2], -1, two)).toBe(0);
  expect(barAfterTurn([7, 8], 1, two)).toBe(7);
  expect(barAfterTurn([4, 5, 6, 7], 1, { count: 4, last: 8 })).toBe(8);
  // The last bars with the first ones after them, as in a loop.
  expect(barAfterTurn([8, 0, 1], -1, two)).toBe(6);
});

describe('how large it is drawn', () => {
  const DESK_MM = pixelOf(24, 1920, 1080);
  const READABLE = readableSize(DESK_MM);

  test('what is read across the room is 20 minutes of arc high (ISO 9241-303, from memory) on 24 inches at 3 m', () => {
    // 1920 pixels are 531 mm, and 17.5 mm at 3 m cover 20 minutes of arc.
    expect(DESK_MM).toBeCloseTo(531.3 / 1920, 4);
    expect(READABLE * DIGIT_HEIGHT * DESK_MM).toBeCloseTo(17.45, 2);
    // A tablet of ten inches has smaller pixels, so it takes more of them.
    expect(readableSize(pixelOf(10.1, 1280, 800))).toBeCloseTo(142, 0);
  });

  test('a screen that is touched is taken for a tablet or telephone, another for one on a desk', () => {
    expect(guessedInches(1280, 800, true)).toBe(10);
    expect(guessedInches(390, 844, true)).toBe(6);
    expect(guessedInches(1920, 1080, false)).toBe(24);
  });

  test('the digits come first, then the staff, then both; height, the bars in a row and their size at its smallest are kept', () => {
    const tryAt =
      (digitsAtMost: number) =>
      ({ staffSpace, digits }: Size) => ({
        height: staffSpace * 10 + digits * 5,
        systems: digits > digitsAtMost ? 6 : 4,
        share: 1,
      });
    const largest = (digitsAtMost: number, rows: number, room: number) =>
      largestSize({ tryAt: tryAt(digitsAtMost), rows, staff: false, room, asked: READABLE });
    expect(largest(999, 1, 2000).digits).toBeGreaterThan(READABLE);
    expect(largest(999, 2, 1500).digits).toBeCloseTo(READABLE, 6);
    expect(largest(999, 2, 1500).staffSpace).toBeGreaterThan(READABLE / 4.5);
    expect(largest(60, 1, 2000).digits).toBeCloseTo(60, -1);
    expect(largest(60, 1, 2000).digits).toBeLessThanOrEqual(60);
    expect(largest(999, 2, 10)).toEqual({ staffSpace: 6, digits: 9 });
  });

  const lines = [0, 1].flatMap((index) =>
    deriveSheets(sampleLesson(index, 'sample')).filter((sheet) => sheet.kind === 'line'),
  );
  const EVERYTHING: Choices = {
    ...{ staff: true, tab: true, degrees: true, counting: true, neck: false, four: false },
    ...{ dark: false, hidden: false, answer: true, keys: true, inches: 24 },
  };

  /** From how far the music is read, in metres, on a screen that holds so many pixels below the foot's row. */
  function metres(
    sheet: LineSheet,
    choices: Choices,
    [width, height]: readonly [number, number],
    foot: number,
  ) {
    const millimetres = pixelOf(choices.inches, width, height);
    const room = musicRoom({ width: width - 16, height: height - 8 - foot }, choices.neck);
    const { systems } = layOutLarge(engrave, sheet, {
      shown: shownOf(choices),
      bars: barsOf(choices),
      room,
      millimetres,
    }).layout;
    return (readFrom(systems, { staff: choices.staff, neck: null, millimetres }).music ?? 0) / 1000;
  }

  test('on a desk two bars with everything are read from 3 m, and four with everything but the counting; four with everything from 2.5 m', () => {
    expect(lines.length).toBeGreaterThan(1);
    for (const sheet of lines) {
      const from = (change: Partial<Choices>) =>
        metres(sheet, { ...EVERYTHING, ...change }, [1920, 1080], 110);
      expect(from({})).toBeGreaterThanOrEqual(3.5);
      expect(from({ four: true, counting: false })).toBeGreaterThanOrEqual(3);
      expect(from({ four: true })).toBeGreaterThanOrEqual(2.5);
    }
  });

  test('four bars stand in one row where that is read from farther, in two where both are read from 3 m, and never fewer', () => {
    const drawn = (inches: number, [width, height]: readonly [number, number]) =>
      lines.map((sheet) => {
        const { layout, rows } = layOutLarge(engrave, sheet, {
          shown: shownOf({ ...EVERYTHING, counting: false }),
          bars: 4,
          room: { width, height },
          millimetres: pixelOf(inches, width, height),
        });
        return [rows, Math.max(...layout.systems.map(({ bars }) => bars.length))];
      });
    expect(drawn(24, [1904, 962])).toEqual(lines.map(() => [1, 4]));
    expect(drawn(60, [1904, 962])).toEqual(lines.map(() => [2, 2]));
    expect(drawn(6, [390, 740])).toEqual(lines.map(() => [2, 2]));
  });

  const pinned = ([0, 1] as const).flatMap((index) =>
    deriveSheets(pinnedSample(index, 'pinned')).filter((sheet) => sheet.kind === 'line'),
  );

  /** Held quarters before eighths: much is counted that is not struck, and the counting fills the width. */
  const held = deriveSheets(
    withLine(sampleLesson(1, 'held'), [
      'A1/1.5 B1/.5 C2/1> r/1',
      'r/1.5 D2/.5 A1/1 F1/.5 G1/.5',
      'A1/1.5 B1/.5 C2/1> r/1',
      'E2/1.5 D2/.5 E2/1 r/1',
      'F2/1.5 E2/.5 F2/1> r/1',
      'r/1.5 G2/.5 D2/1 C2/.5 B1/.5',
      'A1/1.5 E2/.5 A2/1> r/1',
      'E2/1.5 D2/.5 B1/1 E1/.5 G♯1/.5',
    ]),
  ).filter((sheet) => sheet.kind === 'line');

  test('where counting fills the width, its texts stand closer, so that they are larger', () => {
    for (const sheet of held)
      expect(metres(sheet, { ...EVERYTHING, four: true }, [1920, 1080], 110)).toBeGreaterThanOrEqual(2.7);
  });

  test('the word of a silence stands on no line, sign or text, with staff and tab, or one of them alone', () => {
    for (const parts of [
      {},
      { staff: false },
      { tab: false },
      { tab: false, counting: false, degrees: false },
    ] as const)
      for (const sheet of [...pinned.slice(1), ...held]) {
        const room = { width: 1904, height: 960 };
        const millimetres = pixelOf(24, 1920, 1080);
        const shown = shownOf({ ...EVERYTHING, ...parts });
        const { layout } = layOutLarge(engrave, sheet, { shown, bars: 2, room, millimetres });
        for (const system of layout.systems) {
          const rests = system.ink.filter(({ role }) => role === 'rest');
          for (const { box } of rests) {
            const width = (box.right - box.left) * system.scale * 2;
            const { top, size } = silenceWord(system, width);
            expect(size).toBeGreaterThan(0);
            // The letters, without what a line of type has over and under them.
            const word = {
              ...{ left: box.left * system.scale, right: box.right * system.scale },
              ...{ top: top + size * 0.14, bottom: top + size * 0.86 },
            };
            const under = system.ink.filter(
              ({ box: other }) =>
                other.left * system.scale < word.right &&
                other.right * system.scale > word.left &&
                other.top * system.scale < word.bottom &&
                other.bottom * system.scale > word.top,
            );
            expect(under.map(({ role }) => role).filter((role) => role !== 'brace')).toEqual([]);
          }
        }
      }
  });

  test('what ends the growth is the room, at every size of a screen', () => {
    for (const [width, height] of [
      [1180, 820],
      [1920, 1080],
      [1280, 800],
      [1366, 1024],
    ] as const)
      for (const sheet of [...pinned, ...held, ...lines]) {
        const room = { width: width - 16, height: height - 60 };
        const millimetres = pixelOf(guessedInches(width, height, true), width, height);
        const shown = shownOf({ ...EVERYTHING, degrees: false });
        const { layout, rows } = layOutLarge(engrave, sheet, { shown, bars: 2, room, millimetres });
        const { systems } = layout;
        const used = (rows * Math.max(...systems.map((system) => system.height))) / room.height;
        if (used > 0.85) continue;
        expect(pinned).not.toContain(sheet);
        // It is the width that is filled: a twenty-fifth larger, as many of its bars have no room in it.
        const staffSpace = (systems[0]?.scale ?? 0) * 10 * 1.04;
        const frets = systems.flatMap(({ ink, scale }) =>
          ink.flatMap((mark) =>
            mark.kind === 'text' && mark.role === 'fret' ? [mark.size * scale * 1.04] : [],
          ),
        );
        const larger = engrave(sheet, {
          ...{ ...shown, width: room.width, staffSpace, fingers: false, measureNumbers: true },
          textSizes: textSizesFor({ staffSpace, digits: Math.min(...frets) }),
          ...{ barsPerSystem: 2 / rows, strictly: true, tightest: TIGHTEST },
        }).systems;
        const fits =
          larger.length <= systems.length && larger.every(({ scale }) => scale * 10 > staffSpace - 1e-6);
        expect(fits).toBe(false);
      }
  });

  test('on a telephone held upright two bars stand one below the other, as that is read from farther', () => {
    const shown = shownOf({ ...EVERYTHING, degrees: false });
    const busy = [...pinned.slice(1), ...held];
    expect(busy).toHaveLength(2);
    for (const [width, height] of [
      [360, 640],
      [390, 844],
    ] as const)
      for (const sheet of [...pinned, ...held, ...lines]) {
        const millimetres = pixelOf(guessedInches(width, height, true), width, height);
        const room = { width: width - 16, height: height - 110 };
        const wanted = { shown, bars: 2, room, millimetres } as const;
        const { layout, rows } = layOutLarge(engrave, sheet, wanted);
        const longest = Math.max(...layout.systems.map(({ bars }) => bars.length));
        // Few notes may be read from as far side by side; whatever is chosen is read from farthest.
        if (busy.includes(sheet)) expect([rows, longest]).toEqual([2, 1]);
        expect(rows * longest).toBe(2);
        const from = ARRANGEMENTS[2].map((each) => drawnIn(engrave, sheet, wanted, each).read.music ?? 0);
        const read = readFrom(layout.systems, { staff: true, neck: null, millimetres }).music ?? 0;
        expect(read).toBeCloseTo(Math.max(...from), 6);
        expect(from[rows - 1]).toBeCloseTo(read, 6);
        const highest = Math.max(...layout.systems.map((system) => system.height));
        if (rows === 2) expect(highest * rows).toBeGreaterThan(room.height * 0.85);
        expect(highest * rows).toBeLessThanOrEqual(room.height);
      }
  });

  test('what is told to be read from 3 m without trying all sizes is what the largest size gives', () => {
    const [sheet] = lines;
    if (sheet === undefined) throw new Error('the samples have lines');
    for (const change of [{}, { four: true }, { four: true, staff: false, degrees: false }, { neck: true }]) {
      const choices = { ...EVERYTHING, ...change };
      const told = canBeReadAcross(engrave, sheet, {
        shown: shownOf(choices),
        bars: barsOf(choices),
        room: musicRoom({ width: 1904, height: 962 }, choices.neck),
        millimetres: DESK_MM,
      });
      expect(told).toBe(metres(sheet, choices, [1920, 1080], 110) >= 3);
    }
  });

  test('on a tablet of ten inches two bars of tab are read from 3 m', () => {
    for (const sheet of lines) {
      const choices = { ...EVERYTHING, staff: false, degrees: false, counting: false, inches: 10 };
      expect(metres(sheet, choices, [1280, 800], 52)).toBeGreaterThanOrEqual(3);
    }
  });

  test('what is read is told by its smallest part, and never as farther than it is', () => {
    const system = (size: number, scale = 1) => ({
      scale,
      ink: [
        { kind: 'text', role: 'fret', size } as TextInk,
        { kind: 'text', role: 'bar-number', size: 5 } as TextInk,
      ],
    });
    // A digit of 14 mm covers 16 minutes of arc from 3 m.
    const size = 14 / DIGIT_HEIGHT;
    const { music } = readFrom([system(size), system(size * 2)], {
      staff: false,
      neck: null,
      millimetres: 1,
    });
    expect(music).toBeCloseTo(3008, 0);
    expect(readFrom([system(size, 0.5)], { staff: false, neck: null, millimetres: 1 }).music).toBeCloseTo(
      1504,
      0,
    );
    expect(readFrom([system(size)], { staff: true, neck: size / 2, millimetres: 1 })).toEqual({
      music: expect.closeTo(3008, 0),
      neck: expect.closeTo(1504, 0),
    });
    expect(inMetres(2380)).toBe('2.3 m');
    expect(isReadAcross({ music: 3200, neck: 1500 })).toBe(false);
    expect(isReadAcross({ music: 3200 })).toBe(true);
  });

  test('what is offered to be left out is there, one thing before several, and never staff and tab both', () => {
    const ways = largerWays({ ...EVERYTHING, four: true, counting: false });
    expect(ways[0]).toEqual({ change: { four: false }, words: ['with two bars'] });
    expect(ways.map(({ words }) => words.length)).toEqual([...ways.map(({ words }) => words.length)].sort());
    expect(ways.some(({ change }) => 'neck' in change || 'counting' in change)).toBe(false);
    for (const { change } of ways) if (change.staff === false) expect(change.tab).toBe(true);
    expect(largerWays({ ...EVERYTHING, staff: false, degrees: false, counting: false })).toEqual([]);
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

  test('silence can be lit up where a line teaches none and still rests', () => {
    const written = (places: readonly number[]) => {
      const bars = piece.bars.map((bar) => {
        const [note] = piece.bars.flatMap(({ notes }) => notes);
        if (note === undefined) throw new Error('the sample has notes');
        const { tiedOn: _, pins: __, ...plain } = note;
        return {
          ...bar,
          notes: places.map((beat) => ({ ...plain, start: ticks(beat * 960), duration: ticks(960) })),
        };
      });
      const line = { ...piece, bars };
      const derived = deriveSheet(line, lesson.instrument, 'letters');
      if (derived.kind !== 'line') throw new Error('the sheet of a line is a line');
      return lightsOf(line, derived, lesson.instrument).filter(({ kind }) => kind === 'silence');
    };
    expect(written([0, 2, 3])).toEqual([
      {
        kind: 'silence',
        name: 'Silence',
        sentence: 'Nothing sounds through a whole beat in every bar: stop the string, and count on.',
        bars: piece.bars.map((_, index) => index),
      },
    ]);
    expect(written([0, 1, 2, 3])).toEqual([]);
  });

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
