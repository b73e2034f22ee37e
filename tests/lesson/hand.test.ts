import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createLessonStore } from '../../src/app/state/lesson-store';
import { fret, type Letter, midiOf, type Pins, stringNumber, ticks } from '../../src/core/base';
import { anotherTake, checkLesson, composePiece, ideasFor } from '../../src/core/composing';
import { FEELS } from '../../src/core/feel';
import { type FingeredNote, HAND_SPANS, readTuning, SHORT_SCALE } from '../../src/core/fretboard';
import {
  clearPins,
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
  takeIdea,
  transposeLesson,
  waysToPlay,
} from '../../src/core/lesson';
import { LEVELS, type Level } from '../../src/core/line';
import { oddInstruments } from '../fretboard/arbitrary';

const ID = 'piece-1';
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

/** Whether the first note of a bar lies elsewhere on the neck as well. */
const canBePinned = (lesson: Lesson, bar: number): boolean =>
  sheet(lesson).bars[bar]?.notes[0] !== undefined &&
  waysToPlay(piece(lesson), lesson.instrument, { kind: 'note', bar, note: 0 }).some(
    ({ way }) => !way.current,
  );

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

  it('sticks: a bar played in one position stays there through later edits', () => {
    // The first bar between two others that can be played in another position.
    const [first] = [2, 5, 1, 4, 6].flatMap((place) => {
      const ways = waysToPlay(piece(ferry), ferry.instrument, { kind: 'bar', bar: place });
      const way = ways.find(
        ({ way: { current, effort }, take }) =>
          !current &&
          effort.positions.length === 1 &&
          piece(take(ferry)).bars[place]?.position === effort.positions[0],
      );
      return way ? [{ bar: place, found: way }] : [];
    });
    if (first === undefined) throw new Error('no other way in one position');
    const { bar, found } = first;
    const ways = waysToPlay(piece(ferry), ferry.instrument, { kind: 'bar', bar });
    const [position] = found.way.effort.positions;
    const taken = found.take(ferry);
    expect(piece(taken).bars[bar]?.position).toBe(position);
    const positionsOf = (lesson: Lesson) => [
      ...new Set(sheet(lesson).bars[bar]?.notes.map(({ fingered }) => fingered?.position)),
    ];
    const others = [bar - 1, bar + 1, bar + 2, bar - 2]
      .filter((place) => canBePinned(taken, place))
      .slice(0, 2);
    expect(others.length).toBeGreaterThan(0);
    const other = others.reduce(pinnedElsewhere, taken);
    for (const later of [
      anotherTake(taken, ID).lesson,
      setTempo(taken, ID, 60),
      setHand(taken, ID, { openStrings: 'prefer' }),
      setHand(taken, ID, HAND_SPANS.child),
      other,
    ]) {
      expect(positionsOf(later)).toEqual([position]);
    }
    // Other notes for the bar are played in the position, too.
    const [idea] = ideasFor(piece(taken), taken.instrument, bar).filter(
      ({ notes }) => JSON.stringify(notes) !== JSON.stringify(piece(taken).bars[bar]?.notes),
    );
    if (idea === undefined) throw new Error('no idea');
    expect(piece(takeIdea(taken, ID, bar, idea)).bars[bar]?.position).toBe(position);
    // Another way can still be asked for, the first one among them, and all can be let go.
    const again = waysToPlay(piece(taken), taken.instrument, { kind: 'bar', bar });
    expect(again.map(({ places }) => places)).toEqual(ways.map(({ places }) => places));
    expect(again.find(({ way }) => way.current)?.places).toEqual(found.places);
    expect(clearPins(taken, ID, { first: bar, last: bar })).toEqual(ferry);
  });

  it('keeps the position of every bar of a line that stays in one', () => {
    const found = waysToPlay(piece(ferry), ferry.instrument, { kind: 'line' }).find(
      ({ way }) => !way.current,
    );
    if (found === undefined) throw new Error('no other way');
    const taken = found.take(ferry);
    const kept = sheet(taken).bars.map((bar, index) => {
      const positions = new Set(bar.notes.map(({ fingered }) => fingered?.position));
      return positions.size === 1 ? [...positions][0] === piece(taken).bars[index]?.position : true;
    });
    expect(kept.every(Boolean)).toBe(true);
    expect(piece(taken).bars.some(({ position }) => position !== undefined)).toBe(true);
  });

  it('pins a note alone where only the note is asked for', () => {
    expect(piece(pinnedElsewhere(ferry, 1)).bars.every(({ position }) => position === undefined)).toBe(true);
  });

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
  const playing = (lesson: Lesson) => checkLesson(lesson).filter(({ about }) => about === 'hand');

  it('has nothing to say about the samples', () => {
    for (const sample of samples) expect(playing(sample)).toEqual([]);
  });

  it('has nothing to say about composed lines of any feel and level but that open strings must be stopped', () => {
    FEELS.forEach(({ id }, index) => {
      const level = LEVELS[index % LEVELS.length] ?? 0;
      const { lesson } = composePiece(setLevel(setFeel(ferry, ID, id), ID, level), ID);
      // A low E in a muted style must be stopped, whoever composes: one finding for all of them.
      const findings = playing(lesson);
      const others = findings.filter(({ message }) => !/the open string rings on/.test(message));
      expect({ id, level, others }).toEqual({ id, level, others: [] });
      expect(findings.length).toBeLessThanOrEqual(1);
    });
  });

  /** The finding goes away by its repair, one command, and comes back by one undo; gives the lesson mended. */
  function expectMended(lesson: Lesson, says: RegExp, label: RegExp): Lesson {
    const found = playing(lesson).find(({ message }) => says.test(message));
    if (found === undefined) {
      throw new Error(`No finding says ${says}: ${playing(lesson).map(({ message }) => message)}`);
    }
    const repair = found.repair?.() ?? null;
    if (repair === null) throw new Error(`No repair for: ${found.message}`);
    expect(found.message).toMatch(/^Bar \d+, (after )?beat \d+: .+\.$/);
    expect(repair.label).toMatch(label);
    const store = createLessonStore(lesson);
    store.change(repair.apply, { label: repair.label });
    const mended = store.getState().lesson;
    const after = playing(mended).map(({ message }) => message);
    expect(after).not.toContain(found.message);
    expect(after.length).toBeLessThan(playing(lesson).length);
    store.undo();
    expect(store.getState().lesson).toBe(lesson);
    expect(parseLesson(printLesson(mended))).toEqual({ ok: true, value: mended });
    return mended;
  }

  /** What a repair has changed stays: composing leaves its bar alone. */
  function expectKept(lesson: Lesson, bar: number): void {
    const before = piece(lesson).bars[bar];
    expect(before?.kept).toBe(true);
    for (const again of [composePiece(lesson, ID), anotherTake(lesson, ID)]) {
      expect(piece(again.lesson).bars[bar]).toEqual(before);
    }
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
    const mended = expectMended(
      one,
      /^Bar 1, beat 2: C1 does not lie on this instrument\.$/,
      /^Play it an octave higher$/,
    );
    expect(pitches(mended)[0]).toEqual([41, 36, 41, 41]);
    expectKept(mended, 0);
  });

  it('says when a pin does not fit, and lets it go', () => {
    const wrong = pin(ferry, 1, 0, { string: stringNumber(1), fret: fret(9) });
    expect(pinsIn(expectMended(wrong, /is not obeyed\.$/, /^Let the hand choose$/))).toEqual([]);
  });

  it('says when a fret lies beyond the hand’s settings, and plays it lower', () => {
    const high = setHand(
      setLevel(
        written([
          ['F', 2],
          ['B', 2],
          ['F', 2],
          ['F', 2],
        ]),
        ID,
        5,
      ),
      ID,
      { highestFret: fret(3) },
    );
    expectMended(
      high,
      /^Bar 1, beat 2: fret 4 is beyond fret 3, the last of the hand’s settings\.$/,
      /^Play it an octave lower$/,
    );
  });

  const beyond = setLevel(
    written([
      ['C', 2],
      ['D', 2],
      ['C', 2],
      ['C', 2],
    ]),
    ID,
    1,
  );

  it('says when a fret lies beyond the level, and plays the note lower', () => {
    const far = pin(beyond, 0, 0, { string: stringNumber(4) });
    const mended = expectMended(
      far,
      /^Bar 1, beat 1: fret 8 is beyond fret 5, the last of level 1\.$/,
      /^Play it lower on the neck$/,
    );
    expect(sheet(mended).bars[0]?.notes[0]?.fingered).toMatchObject({ string: 3, fret: 3 });
  });

  it('keeps the hand within the level’s frets by itself, up to the last level, which leaves the neck free', () => {
    const scale = written([
      ['F', 2],
      ['A', 2],
      ['C', 3],
      ['F', 2],
    ]);
    const highest = (level: Level) =>
      Math.max(...sheet(setLevel(scale, ID, level)).fingering.notes.map((note) => note?.fret ?? 0));
    expect(highest(2)).toBe(5);
    const free = setHand(setLevel(scale, ID, 5), ID, { highestFret: fret(17) });
    expect(playing(pin(free, 0, 0, { string: stringNumber(4), fret: fret(13) }))).toEqual([]);
  });

  it('raises the level where a note has no place before its last fret', () => {
    const sharp = written([
      ['C', 2],
      ['C', 2],
      ['C', 2],
      ['C', 2],
    ]);
    const bars = piece(sharp).bars.map((bar, index) => ({
      ...bar,
      notes: bar.notes.map((note, at) =>
        index === 0 && at === 2 ? { ...note, pitch: { ...note.pitch, alteration: 1 as const } } : note,
      ),
    }));
    const first = setLevel({ ...sharp, pieces: [{ ...piece(sharp), bars }] }, ID, 0);
    const mended = expectMended(
      first,
      /^Bar 1, beat 3: fret 4 is beyond fret 3, the last of level 0\.$/,
      /^Raise the level to 1$/,
    );
    expect(piece(mended).level).toBe(1);
  });

  /** The hand at the nut and at once at the tenth fret: F1 and F3. */
  const leap = (tempo: number): Lesson =>
    setLevel(
      written(
        [
          ['F', 1],
          ['F', 3],
          ['F', 3],
          ['F', 3],
        ],
        tempo,
      ),
      ID,
      5,
    );
  const SHIFT =
    /^Bar 1, beat 2: the hand has only 0\.\d\d seconds for the shift from position I+ to position [VIX]+\.$/;

  it('says when the hand cannot be there in time, and gives it time', () => {
    expect(playing(leap(60))).toEqual([]);
    const mended = expectMended(leap(135), SHIFT, /^Shorten the note before$/);
    const [first] = piece(mended).bars[0]?.notes ?? [];
    expect(first?.duration).toBeLessThan(960);
    expect((first?.duration ?? 1) % 240).toBe(0);
    expectKept(mended, 0);
  });

  it('slows the tempo down where no shorter note helps', () => {
    const mended = expectMended(leap(220), SHIFT, /^Set the tempo to 1\d\d bpm$/);
    expect(piece(mended).tempo).toBeLessThan(220);
  });

  it('lets pins go that ask for the shift', () => {
    const near = written(
      [
        ['F', 1],
        ['C', 2],
        ['F', 1],
        ['C', 2],
      ],
      200,
    );
    const far = pin(setLevel(near, ID, 5), 0, 1, { string: stringNumber(4), fret: fret(8) });
    const mended = expectMended(far, /^Bar 1, beat 2: the hand has only/, /^Let the hand choose$/);
    expect(places(mended)).toEqual(places(setLevel(near, ID, 5)));
  });

  it('lets the hand leave a position that asks for the shift', () => {
    const near = written(
      [
        ['F', 1],
        ['C', 2],
        ['F', 1],
        ['C', 2],
        ['C', 2],
        ['C', 2],
        ['C', 2],
        ['C', 2],
      ],
      200,
    );
    const kept = keepPosition(setLevel(near, ID, 5), ID, { first: 1, last: 1 }, fret(8));
    const mended = expectMended(
      kept,
      /^Bar 1, beat 4: the hand has only/,
      /^Let the hand leave its position$/,
    );
    expect(piece(mended).bars[1]?.position).toBeUndefined();
  });

  it('says when a stretch is wider than the hand, and lets go what asks for it', () => {
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
    expectMended(
      keepPosition(lesson, ID, { first: 0, last: 1 }, fret(1)),
      /mm; the hand reaches 60 mm\.$/,
      /^Let the hand /,
    );
  });

  /** Only the first note of the first bar, then silence. */
  const alone = (midis: readonly (readonly [Letter, number])[]): Lesson => {
    const lesson = written(midis);
    const bars = piece(lesson).bars.map((bar) => ({ ...bar, notes: bar.notes.slice(0, 1) }));
    return { ...lesson, pieces: [{ ...piece(lesson), bars }] };
  };
  const RINGS = /^Bar 1, beat 1: the open string rings on into the rest, where this style wants silence/;

  it('says when an open string rings into a rest of a muted style, and frets it', () => {
    const held = pin(alone([['A', 1]]), 0, 0, { string: stringNumber(3), fret: fret(0) });
    expect(playing(setFeel(held, ID, 'walking-swing'))).toEqual([]);
    for (const muted of [
      setFeel(held, ID, 'one-drop'),
      setHand(setFeel(held, ID, 'walking-swing'), ID, { openStrings: 'avoid' }),
    ]) {
      const mended = expectMended(muted, RINGS, /^Play it on a fretted string$/);
      expect(sheet(mended).bars[0]?.notes[0]?.fingered).toMatchObject({ string: 4, fret: 5 });
    }
  });

  it('frets what it can by itself where the style is muted, open strings preferred or not', () => {
    const dry = setHand(setFeel(alone([['A', 1]]), ID, 'one-drop'), ID, { openStrings: 'prefer' });
    const free = setFeel(dry, ID, 'walking-swing');
    expect(sheet(free).bars[0]?.notes[0]?.fingered?.fret).toBe(0);
    expect(sheet(dry).bars[0]?.notes[0]?.fingered?.fret).toBe(5);
  });

  it('marks open strings short that have no fretted place, all of them at once', () => {
    const low: readonly [Letter, number] = ['E', 1];
    const one = setFeel(alone([low]), ID, 'one-drop');
    const mended = expectMended(one, RINGS, /^Mark it short$/);
    expect(piece(mended).bars[0]?.notes[0]?.marks).toEqual({ length: 'staccato' });
    expectKept(mended, 0);

    const two = setFeel(alone([low, low, low, low, low]), ID, 'one-drop');
    expect(playing(two)).toHaveLength(1);
    const both = expectMended(two, /so does a later note\.$/, /^Mark them short and keep their bars$/);
    expectKept(both, 0);
    expectKept(both, 1);
  });
});

describe('a lesson on any instrument', () => {
  it('says of every note off the neck where it is and what brings it back, and changes no pitch by itself', () => {
    let off = 0;
    fc.assert(
      fc.property(
        oddInstruments,
        fc.boolean(),
        fc.constantFrom(...samples),
        (instrument, leftHanded, sample) => {
          const lesson = setInstrument(sample, { ...instrument, leftHanded });
          expect(pitches(lesson)).toEqual(pitches(sample));
          const { bars } = sheet(lesson);
          const missing = bars.flatMap((bar, index) =>
            bar.notes.flatMap((note) => (note.fingered === null ? [index] : [])),
          );
          const found = checkLesson(lesson).filter(({ message }) =>
            /does not lie on this instrument/.test(message),
          );
          expect(found.map(({ bar }) => bar)).toEqual(missing);
          off += missing.length;
          const [first] = found;
          if (first === undefined) return;
          const repair = first.repair?.() ?? null;
          expect(repair?.label).toMatch(/^Play it (an octave|\d octaves) (higher|lower)$/);
          const after = repair === null ? lesson : repair.apply(lesson);
          expect(checkLesson(after).map(({ message }) => message)).not.toContain(first.message);
        },
      ),
      { seed: 9, numRuns: 60 },
    );
    expect(off).toBeGreaterThan(50);
  });
});
