import { describe, expect, it } from 'vitest';
import { bpm, fret, type Letter, midiOf, type Pins, stringNumber, ticks } from '../../src/core/base';
import { FEELS } from '../../src/core/feel';
import { type FingeredNote, HAND_SPANS, readTuning, SHORT_SCALE } from '../../src/core/fretboard';
import {
  anotherTake,
  checkLesson,
  clearPins,
  composePiece,
  deriveSheet,
  handLine,
  keepPosition,
  type Lesson,
  type LinePiece,
  type LineSheet,
  linePiece,
  newLesson,
  parseLesson,
  pinPlace,
  printLesson,
  sampleLesson,
  setChartText,
  setFeel,
  setHand,
  setInstrument,
  setLevel,
  setPins,
  setTempo,
  transposeLesson,
  waysToPlay,
} from '../../src/core/lesson';
import type { Level } from '../../src/core/line';

const ID = 'piece-1';
const LEVELS: readonly Level[] = [0, 1, 2, 3, 4, 5];
const samples = [sampleLesson(0, 'test'), sampleLesson(1, 'test')] as const;
const [ferry] = samples;

function piece(lesson: Lesson): LinePiece {
  const found = linePiece(lesson, ID);
  if (found === null) throw new Error('the line piece is gone');
  return found;
}

function sheet(lesson: Lesson): LineSheet {
  const derived = deriveSheet(piece(lesson), lesson.instrument, lesson.noteNames);
  if (derived.kind !== 'line') throw new Error('not a line');
  return derived;
}

const places = (lesson: Lesson) =>
  sheet(lesson).bars.map((bar) => bar.notes.map(({ fingered }) => `${fingered?.string}:${fingered?.fret}`));

const pitches = (lesson: Lesson) =>
  piece(lesson).bars.map((bar) => bar.notes.map(({ pitch }) => midiOf(pitch)));

const pinsIn = (lesson: Lesson) =>
  piece(lesson).bars.flatMap((bar) => bar.notes.flatMap(({ pins }) => (pins === undefined ? [] : [pins])));

const pin = (lesson: Lesson, bar: number, note: number, pins: Pins | null): Lesson =>
  setPins(lesson, ID, [{ at: { bar, note }, pins }]);

/** The first note of a bar, held one string lower than the hand would play it, where there is one. */
function pinnedElsewhere(lesson: Lesson, bar: number): Lesson {
  const note = sheet(lesson).bars[bar]?.notes[0];
  const found = waysToPlay(piece(lesson), lesson.instrument, { kind: 'note', bar, note: 0 }).find(
    ({ way }) => !way.current,
  );
  if (note === undefined || found === undefined) throw new Error('nothing to pin');
  return found.take(lesson);
}

/** A line written by hand in quarter notes, over two bars of F. */
function written(midis: readonly (readonly [Letter, number])[], tempo = 120): Lesson {
  const lesson = setTempo(setChartText(newLesson('test', 'Test'), ID, '| F | F |'), ID, tempo);
  return {
    ...lesson,
    pieces: lesson.pieces.map((each) =>
      each.kind !== 'line'
        ? each
        : {
            ...each,
            bars: each.bars.map((bar, index) => ({
              ...bar,
              notes: midis.slice(index * 4, index * 4 + 4).map(([letter, octave], beat) => ({
                start: ticks(beat * 960),
                duration: ticks(960),
                pitch: { letter, alteration: 0 as const, octave },
              })),
            })),
          },
    ),
  };
}

describe('pins', () => {
  const quarters = written([
    ['A', 1],
    ['D', 2],
    ['A', 1],
    ['D', 2],
  ]);

  it('put a note where the teacher wants it, and let it go again', () => {
    const low = pin(quarters, 0, 1, { string: stringNumber(4) });
    expect(sheet(quarters).bars[0]?.notes[1]?.fingered?.string).not.toBe(4);
    expect(sheet(low).bars[0]?.notes[1]?.fingered).toMatchObject({ string: 4, fret: 10 });
    expect(places(pin(low, 0, 1, null))).toEqual(places(quarters));
    expect(clearPins(low, ID, { first: 0, last: 7 })).toEqual(quarters);
    expect(clearPins(ferry, ID, { first: 0, last: 7 })).toBe(ferry);
    expect(pin(ferry, 99, 0, { fret: fret(1) })).toBe(ferry);
  });

  it('keep their bar through composing', () => {
    const pinned = pinnedElsewhere(ferry, 1);
    const before = piece(pinned).bars[1];
    for (const { lesson } of [anotherTake(pinned, ID), composePiece(pinned, ID)]) {
      expect(piece(lesson).bars[1]).toEqual(before);
    }
    expect(pitches(anotherTake(pinned, ID).lesson)).not.toEqual(pitches(pinned));
    expect(sheet(pinned).bars[1]?.kept).toBe(true);
  });

  it('move along the neck in transposing, and come back with it', () => {
    const pinned = pin(quarters, 0, 1, { string: stringNumber(4), fret: fret(10), finger: 3 });
    const up = transposeLesson(pinned, { steps: 1, halfSteps: 2 });
    expect(pinsIn(up)).toEqual([{ string: 4, fret: 12, finger: 3 }]);
    expect(sheet(up).bars[0]?.notes[1]?.fingered).toMatchObject({ string: 4, fret: 12, finger: 3 });
    expect(transposeLesson(up, { steps: -1, halfSteps: -2 })).toEqual(pinned);
  });

  it('are let go in transposing where the neck ends', () => {
    const pinned = pin(quarters, 0, 1, { string: stringNumber(4), fret: fret(10) });
    expect(pinsIn(transposeLesson(pinned, { steps: 7, halfSteps: 12 }))).toEqual([]);
  });

  it('survive saving and opening', () => {
    const own = readTuning('D A D G');
    if (!own.ok) throw new Error(own.problem.message);
    const set = setHand(
      setInstrument(keepPosition(pinnedElsewhere(ferry, 2), ID, { first: 0, last: 1 }, fret(3)), {
        openStrings: own.value,
        frets: 24,
        scaleLength: SHORT_SCALE,
        leftHanded: true,
      }),
      ID,
      { system: '1-2-4', oneTwoFourBelow: fret(5), ...HAND_SPANS.child },
    );
    const opened = parseLesson(printLesson(set));
    expect(opened).toEqual({ ok: true, value: set });
    expect(sheet(set).instrument).toMatchObject({ frets: 24, scaleLength: SHORT_SCALE, leftHanded: true });
  });
});

describe('a kept hand position', () => {
  it('holds for its bars and no others, and moves along in transposing', () => {
    const kept = keepPosition(ferry, ID, { first: 0, last: 1 }, fret(5));
    const positions = sheet(kept)
      .bars.slice(0, 2)
      .flatMap((bar) => bar.notes.map(({ fingered }) => fingered?.position));
    expect(positions.filter((position) => position === 5).length).toBeGreaterThan(positions.length / 2);
    expect(positions).not.toEqual(
      sheet(ferry)
        .bars.slice(0, 2)
        .flatMap((bar) => bar.notes.map(({ fingered }) => fingered?.position)),
    );
    const up = transposeLesson(kept, { steps: 1, halfSteps: 2 });
    expect(piece(up).bars.map((bar) => bar.position)).toEqual([7, 7, ...new Array(6).fill(undefined)]);
    expect(keepPosition(kept, ID, { first: 0, last: 7 }, null)).toEqual(ferry);
  });

  it('does not keep its bar from being composed again', () => {
    const kept = keepPosition(ferry, ID, { first: 0, last: 7 }, fret(5));
    const { lesson } = anotherTake(kept, ID);
    expect(pitches(lesson)).not.toEqual(pitches(ferry));
    expect(piece(lesson).bars.every((bar) => bar.position === 5)).toBe(true);
  });
});

describe('elsewhere on the neck', () => {
  /** A reach may count from either position: the hand is the same. */
  const gripOf = (note: FingeredNote | null) =>
    note && { string: note.string, fret: note.fret, finger: note.finger };
  const held = (lesson: Lesson) => sheet(lesson).fingering.notes.map(gripOf);

  it.each([{ kind: 'note', bar: 2, note: 0 }, { kind: 'bar', bar: 2 }, { kind: 'line' }] as const)(
    'offers other ways for a $kind, each to be taken as shown',
    (passage) => {
      const ways = waysToPlay(piece(ferry), ferry.instrument, passage);
      expect(ways.length).toBeGreaterThan(1);
      expect(ways.filter(({ way }) => way.current)).toHaveLength(1);
      expect(new Set(ways.map(({ places }) => JSON.stringify(places))).size).toBe(ways.length);
      for (const { way, take } of ways) {
        expect(way.description).toMatch(/position|open string/i);
        const taken = take(ferry);
        expect(pitches(taken)).toEqual(pitches(ferry));
        expect(held(taken)).toEqual(way.fingering.notes.map(gripOf));
      }
    },
  );

  it('has nothing to offer for an empty bar', () => {
    expect(waysToPlay(piece(ferry), ferry.instrument, { kind: 'bar', bar: 99 })).toEqual([]);
  });

  it('pins a tied note where it is struck', () => {
    const lesson = written([
      ['F', 2],
      ['F', 2],
      ['F', 2],
      ['F', 2],
      ['F', 2],
      ['F', 2],
      ['F', 2],
      ['F', 2],
    ]);
    const bars = piece(lesson).bars.map((bar, index) => ({
      ...bar,
      notes: bar.notes.map((note, at) => (index === 0 && at === 3 ? { ...note, tiedOn: true } : note)),
    }));
    const tied = { ...piece(lesson), bars };
    const hand = handLine(tied, lesson.instrument);
    if (hand === null) throw new Error('not a line');
    expect(hand.line.notes).toHaveLength(7);
    expect(pinPlace(hand, { bar: 1, note: 0 }).at).toEqual({ bar: 0, note: 3 });
  });
});

describe('the playing side of the lesson check', () => {
  const playing = (lesson: Lesson) => checkLesson(lesson).filter(({ repair }) => repair !== undefined);

  it('has nothing to say about the samples', () => {
    for (const sample of samples) expect(playing(sample)).toEqual([]);
  });

  it('has nothing to say about composed lines of any feel and level', () => {
    FEELS.forEach(({ id }, index) => {
      const level = LEVELS[index % LEVELS.length] ?? 0;
      const { lesson } = composePiece(setLevel(setFeel(ferry, ID, id), ID, level), ID);
      expect({ id, level, findings: playing(lesson) }).toEqual({ id, level, findings: [] });
    });
  });

  /** Every finding with a repair goes away by it, in one command, and nothing else comes. */
  function expectMended(lesson: Lesson, says: RegExp): void {
    const found = playing(lesson).find(({ message }) => says.test(message));
    if (found === undefined) {
      throw new Error(`No finding says ${says}: ${playing(lesson).map(({ message }) => message)}`);
    }
    const repair = found.repair?.() ?? null;
    if (repair === null) throw new Error(`No repair for: ${found.message}`);
    expect(repair.label).toMatch(/^[A-Z]/);
    const after = playing(repair.apply(lesson)).map(({ message }) => message);
    expect(after).not.toContain(found.message);
    expect(after.length).toBeLessThan(playing(lesson).length);
  }

  it('says where a note leaves the neck, and moves it by an octave', () => {
    const low = transposeLesson(ferry, { steps: -14, halfSteps: -24 });
    expect(playing(low).length).toBeGreaterThan(4);
    expect(playing(low)[0]?.message).toMatch(
      /^Bar \d, (after )?beat \d: .* does not lie on this instrument\.$/,
    );
    const one = written([
      ['F', 2],
      ['C', 1],
      ['F', 2],
      ['F', 2],
    ]);
    expectMended(one, /^Bar 1, beat 2: C1 does not lie on this instrument\.$/);
  });

  it('says when a pin does not fit, and lets it go', () => {
    expectMended(pin(ferry, 1, 0, { string: stringNumber(1), fret: fret(9) }), /is not obeyed\.$/);
  });

  it('says when a fret lies beyond the highest, and plays it lower', () => {
    expectMended(pin(ferry, 1, 0, { fret: fret(15) }), /not obeyed|beyond fret 12/);
    const low = setHand(
      written([
        ['F', 2],
        ['B', 2],
        ['F', 2],
        ['F', 2],
      ]),
      ID,
      { highestFret: fret(3) },
    );
    expectMended(low, /^Bar 1, beat 2: fret 4 is beyond fret 3/);
  });

  it('says when the hand cannot be there in time, and where it could be', () => {
    const far = pin(
      pin(
        written(
          [
            ['F', 2],
            ['G', 2],
            ['F', 2],
            ['F', 2],
          ],
          220,
        ),
        0,
        0,
        { string: stringNumber(3), fret: fret(8) },
      ),
      0,
      1,
      { string: stringNumber(4), fret: fret(15) },
    );
    const fast = {
      ...far,
      pieces: far.pieces.map((each) => (each.kind === 'line' ? { ...each, tempo: bpm(400) } : each)),
    };
    expectMended(fast, /^Bar 1, beat 2: .*(shift|beyond)/);
  });

  it('says when a stretch is wider than the hand', () => {
    const lesson = setHand(
      pin(
        pin(
          written([
            ['F', 1],
            ['C', 2],
            ['F', 1],
            ['C', 2],
          ]),
          0,
          0,
          { fret: fret(1), finger: 1 },
        ),
        0,
        1,
        { fret: fret(3), finger: 3 },
      ),
      ID,
      { comfortableSpan: 60, reach: 60 },
    );
    expectMended(keepPosition(lesson, ID, { first: 0, last: 1 }, fret(1)), /mm; the hand reaches 60 mm/);
  });

  it('says when an open string rings into a rest, only where open strings are avoided', () => {
    const rest = written([
      ['A', 1],
      ['F', 1],
    ]);
    const held = pin(rest, 0, 0, { string: stringNumber(3), fret: fret(0) });
    const gap = {
      ...held,
      pieces: held.pieces.map((each) =>
        each.kind === 'line'
          ? {
              ...each,
              bars: each.bars.map((bar) => ({ ...bar, notes: bar.notes.filter((_, at) => at === 0) })),
            }
          : each,
      ),
    };
    expect(playing(gap)).toEqual([]);
    expectMended(setHand(gap, ID, { openStrings: 'avoid' }), /^Bar 1, beat 1: the open string rings on/);
  });
});
