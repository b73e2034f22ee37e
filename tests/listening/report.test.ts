import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import {
  barMarks,
  barWords,
  type Expected,
  expectedOf,
  type HeardNote,
  type ListeningReport,
  letterOf,
  letterText,
  mendOf,
  offsetOf,
  readLetter,
  reportOf,
  roundWords,
  summaryOf,
  summaryWords,
  tallyOf,
  withoutGuesses,
} from '../../src/core/listening';
import { buildPerformance } from '../../src/core/performance';
import { sheetOf } from '../performance/sheets';
import { expectedAt, heardAs, lineOf, roundsOf } from './players';

const byStart = (heard: readonly HeardNote[]) => heard.toSorted((one, other) => one.start - other.start);
const notesOf = (report: ListeningReport) => report.flatMap(({ bars }) => bars.flatMap((bar) => bar.notes));
const extrasOf = (report: ListeningReport) => report.flatMap(({ bars }) => bars.flatMap((bar) => bar.extras));
const restsOf = (report: ListeningReport) => report.flatMap(({ bars }) => bars.flatMap((bar) => bar.rests));
const kinds = (report: ListeningReport) => notesOf(report).map(({ verdict }) => verdict.kind);
const numbers = { numberOf: (bar: number) => bar + 1, tell: Math.round };

const perfect = (expected: Expected) => expected.notes.map(heardAs);

const tempo = fc.integer({ min: 50, max: 180 });
const place = fc.nat({ max: 13 });

describe('what is expected', () => {
  test('the notes at their seconds, and the silences of half a beat and more, bar by bar', () => {
    // At 60 bpm a beat is a second; the first bar begins at second 1.
    const { notes, rests, bars } = expectedAt(60);
    expect(notes.slice(0, 4).map(({ start, midi }) => [Math.round(start * 20) / 20, midi])).toEqual([
      [2, 33],
      [3, 36],
      // The feel swings its eighths a little.
      [3.55, 40],
      [4, 33],
    ]);
    expect(bars.map(({ start, end }) => [start, end])).toEqual([
      [1, 5],
      [5, 9],
      [9, 13],
      [13, 17],
    ]);
    expect(
      rests.map(({ bar, start, end }) => [bar, Math.round(start * 10) / 10, Math.round(end * 10) / 10]),
    ).toEqual(
      expect.arrayContaining([
        [0, 1, 2],
        [1, 8, 9],
        [2, 9, 10],
        [2, 12.5, 13],
      ]),
    );
  });

  test('where the bass calls, the answers alone are judged, by the notes of the call', () => {
    const performance = buildPerformance(
      sheetOf({ chart: '| Am | Dm |', feel: 'one-drop', bars: ['1 A1 q, 3 C2 q', '1 D2 q, 4 A1 q'] }),
      { tempo: bpm(60), countIn: 0, passage: null, bass: { kind: 'call and response', bars: 1 } },
    );
    const { notes, bars } = expectedOf([{ performance, round: 0, origin: 0 }]);
    expect(notes.map(({ start, midi }) => [start, midi])).toEqual([
      [4, 33],
      [6, 36],
      [12, 38],
      [15, 33],
    ]);
    expect(bars.map(({ start, bar }) => [start, bar])).toEqual([
      [4, 0],
      [12, 1],
    ]);
  });
});

describe('what is reported', () => {
  test('a perfect performance is perfect at every tempo, in every round', () => {
    fc.assert(
      fc.property(tempo, fc.integer({ min: 1, max: 4 }), (bpmOf, rounds) => {
        const expected = expectedAt(bpmOf, rounds);
        const report = reportOf(expected, perfect(expected));
        expect(new Set(kinds(report))).toEqual(new Set(['played']));
        expect(notesOf(report)).toHaveLength(expected.notes.length);
        expect(extrasOf(report)).toEqual([]);
        expect(restsOf(report).every(({ verdict }) => verdict === 'kept')).toBe(true);
        expect(restsOf(report)).toHaveLength(expected.rests.length);
        expect(report.every(({ pace }) => pace === 'steady')).toBe(true);
        expect(summaryOf(report)).toMatchObject({ reached: bpmOf, practise: null, stuck: [] });
      }),
      { numRuns: 40 },
    );
  });

  test('one note that is late or early by up to 80 ms is told so, to the millisecond, and no other', () => {
    fc.assert(
      fc.property(tempo, place, fc.integer({ min: -80, max: 80 }), (bpmOf, index, ms) => {
        const expected = expectedAt(bpmOf);
        const heard = perfect(expected).map((note, at) =>
          at === index ? { ...note, start: note.start + ms / 1000 } : note,
        );
        const report = notesOf(reportOf(expected, byStart(heard)));
        expect(report[index]?.late).toBeCloseTo(ms / 1000, 6);
        expect(report[index]?.lateBeats).toBeCloseTo((ms / 1000 / 60) * bpmOf, 6);
        expect(report.filter(({ late }) => late !== null && Math.abs(late) > 1e-9)).toHaveLength(
          ms === 0 ? 0 : 1,
        );
        expect(report.every(({ verdict }) => verdict.kind === 'played')).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('one note that is left out is left out, and no other', () => {
    fc.assert(
      fc.property(tempo, place, (bpmOf, index) => {
        const expected = expectedAt(bpmOf);
        const report = reportOf(expected, perfect(expected).toSpliced(index, 1));
        expect(kinds(report).flatMap((kind, at) => (kind === 'played' ? [] : [[at, kind]]))).toEqual([
          [index, 'left out'],
        ]);
        expect(extrasOf(report)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test('one other pitch is told by its half steps; an octave may be the ear’s and is none', () => {
    fc.assert(
      fc.property(tempo, place, fc.integer({ min: -14, max: 14 }), (bpmOf, index, halfSteps) => {
        const expected = expectedAt(bpmOf);
        const heard = perfect(expected).map((note, at) =>
          at === index && note.midi !== null ? { ...note, midi: note.midi + halfSteps } : note,
        );
        const report = notesOf(reportOf(expected, heard));
        expect(report[index]?.verdict).toEqual(
          halfSteps % 12 === 0 ? { kind: 'played' } : { kind: 'other pitch', halfSteps },
        );
        expect(report.filter(({ verdict }) => verdict.kind !== 'played').length).toBe(
          halfSteps % 12 === 0 ? 0 : 1,
        );
      }),
      { numRuns: 60 },
    );
  });

  test('a note in the middle of a rest fills it, and is one more than written', () => {
    const expected = expectedAt(80);
    for (const rest of expected.rests) {
      const middle = (rest.start + rest.end) / 2;
      const heard = [...perfect(expected), { start: middle, end: middle + 0.1, midi: 47.2 }];
      const report = reportOf(expected, byStart(heard));
      expect(
        restsOf(report)
          .filter(({ verdict }) => verdict === 'filled')
          .map((each) => each.rest),
      ).toEqual([rest]);
      expect(extrasOf(report)).toHaveLength(1);
      expect(kinds(report).every((kind) => kind === 'played')).toBe(true);
    }
  });

  test('a note held on through a rest fills it; one whose end reaches into it a little does not', () => {
    const expected = expectedAt(80);
    const rest = expected.rests.find(({ bar }) => bar === 1);
    if (!rest) throw new Error('The second bar ends with a rest.');
    const held = (until: number) =>
      perfect(expected).map((note) =>
        Math.abs(note.end - rest.start) < 0.05 ? { ...note, end: until } : note,
      );
    const filledBy = (until: number) =>
      restsOf(reportOf(expected, held(until))).filter(({ verdict }) => verdict === 'filled').length;
    expect(filledBy(rest.end)).toBe(1);
    expect(filledBy(rest.start + 0.05)).toBe(0);
    expect(notesOf(reportOf(expected, held(rest.end))).some(({ held: length }) => length === 'long')).toBe(
      true,
    );
  });

  test('where nothing could be heard nothing is said to be missing, added, kept or filled', () => {
    const expected = expectedAt(80);
    const report = reportOf(expected, [], [{ from: 0, to: 100 }]);
    expect(new Set(kinds(report))).toEqual(new Set(['not heard']));
    expect(restsOf(report).every(({ verdict }) => verdict === 'not heard')).toBe(true);
    expect(summaryOf(report)).toMatchObject({ notes: 0, rests: 0, reached: null, practise: null });
    expect(summaryWords(summaryOf(report), numbers)[0]).toContain('could not hear the bass');
  });

  test('who goes forward rushes, who holds back drags, who is late throughout is steady', () => {
    const expected = expectedAt(80, 1);
    const paceOf = (late: (share: number) => number) => {
      const last = expected.notes.length - 1;
      const heard = perfect(expected).map((note, at) => ({ ...note, start: note.start + late(at / last) }));
      return reportOf(expected, heard)[0];
    };
    expect(paceOf((share) => -0.12 * share)?.pace).toBe('rushing');
    expect(paceOf((share) => 0.12 * share)?.pace).toBe('dragging');
    expect(paceOf(() => 0.04)).toMatchObject({ pace: 'steady' });
    expect(paceOf(() => 0.04)?.late).toBeCloseTo(0.04, 6);
  });

  test('whatever is heard, every written note is told of once and every sound at most once', () => {
    const sound = fc.record({
      start: fc.double({ min: 0, max: 20, noNaN: true }),
      midi: fc.option(fc.double({ min: 20, max: 60, noNaN: true })),
    });
    fc.assert(
      fc.property(fc.array(sound, { maxLength: 60 }), (sounds) => {
        const expected = expectedAt(90, 2);
        const heard = byStart(sounds.map(({ start, midi }) => ({ start, end: start + 0.2, midi })));
        const report = reportOf(expected, heard);
        expect(notesOf(report).map(({ note }) => note)).toEqual(expected.notes);
        const taken = notesOf(report).filter(({ late }) => late !== null).length;
        expect(taken + extrasOf(report).length).toBeLessThanOrEqual(heard.length);
        // Two notes cannot be taken for each other across the order of time.
        const starts = notesOf(report).flatMap(({ note, late }) =>
          late === null ? [] : [note.start + late],
        );
        expect(starts).toEqual(starts.toSorted((one, other) => one - other));
      }),
      { numRuns: 60 },
    );
  });

  test('a long hearing is reported as its rounds are one by one', () => {
    const expected = expectedAt(110, 60);
    const heard = perfect(expected).filter((_, index) => index % 7 !== 3);
    const report = reportOf(expected, heard);
    expect(kinds(report).map((kind) => kind === 'left out')).toEqual(
      expected.notes.map((_, index) => index % 7 === 3),
    );
  });
});

describe('what is said', () => {
  const bar = (
    index: number,
    change: (heard: readonly HeardNote[], expected: Expected) => readonly HeardNote[],
  ) => {
    const expected = expectedAt(80);
    const report = reportOf(expected, byStart(change(perfect(expected), expected)));
    const found = report[0]?.bars[index];
    if (!found) throw new Error('There is no such bar.');
    return barWords(found, numbers);
  };

  test('a bar in words', () => {
    expect(bar(0, (heard) => heard)).toBe('Bar 1: as written.');
    expect(bar(0, (heard) => heard.toSpliced(1, 1))).toBe('Bar 1: note 2 was left out.');
    expect(bar(0, (heard) => heard.map((note, at) => (at === 2 ? { ...note, midi: 41 } : note)))).toBe(
      'Bar 1: note 3 was another pitch, a half step above the written one.',
    );
    expect(
      bar(1, (heard) =>
        heard.map((note, at) =>
          at === 6 ? { ...note, start: note.start + 0.075, end: note.end + 0.075 } : note,
        ),
      ),
    ).toBe('Bar 2: note 3 was 75 ms late, about 1/10 of a beat.');
    expect(
      bar(2, (heard, { bars }) => [
        ...heard,
        { start: (bars[2]?.start ?? 0) + 0.3, end: (bars[2]?.start ?? 0) + 0.5, midi: 31 },
      ]),
    ).toBe('Bar 3: 1 note more than written; a rest was filled.');
  });

  test('the two worst neighbours are practised, below the tempo that was played, and the rests are said first', () => {
    const expected = expectedAt(80, 2);
    const heard = perfect(expected).filter((_, index) => {
      const { bar: at } = expected.notes[index] ?? { bar: 0 };
      return at !== 2;
    });
    const report = reportOf(expected, heard);
    const summary = summaryOf(report);
    expect(summary.practise).toMatchObject({ tempo: 64 });
    expect([summary.practise?.first, summary.practise?.last]).toContain(2);
    expect(summary.stuck).toEqual([2]);
    const words = summaryWords(summary, numbers);
    expect(words[1]).toMatch(/rests were kept: that is what this line lives on/);
    expect(words.at(-1)).toMatch(/^Bars 2 to 3 are worth a loop by themselves, from 64 bpm\.$/);
    expect(
      roundWords(report[0] ?? expect.fail('There is a round.'), tallyOf(report[0]?.bars ?? []), numbers),
    ).toMatch(/^Round 1, 80 bpm: 10 of 14 notes and \d+ of \d+ rests as written/);
  });

  test('the fastest round that was as written is the tempo reached', () => {
    const rounds = [60, 75, 90].map((each, round) => ({
      performance: lineOf(each),
      round,
      origin: 1 + round * 20,
    }));
    const expected = expectedOf(rounds);
    const heard = perfect(expected).filter(
      (_, index) => expected.notes[index]?.round !== 2 || index % 2 === 0,
    );
    expect(summaryOf(reportOf(expected, heard)).reached).toBe(75);
  });
});

describe('the letter to the teacher', () => {
  const summary = (() => {
    const expected = expectedOf(roundsOf(lineOf(84), 2));
    return summaryOf(reportOf(expected, perfect(expected)));
  })();
  const where = { lesson: 'Harbour steps', piece: 'Ferry queue', day: '2026-11-29' };

  test('is read as it was written, whatever is said around it', () => {
    fc.assert(
      fc.property(
        fc.record({
          tempo: fc.option(fc.integer({ min: 20, max: 400 })),
          stuck: fc.uniqueArray(fc.integer({ min: 0, max: 300 }), { maxLength: 6 }),
          rests: fc.nat({ max: 500 }),
          right: fc.nat({ max: 900 }),
        }),
        fc.constantFrom('', '> ', '  '),
        ({ tempo: reached, stuck, rests, right }, quoted) => {
          const letter = {
            ...where,
            tempo: reached,
            stuck: stuck.toSorted((one, other) => one - other),
            ...{ rests, kept: Math.floor(rests / 2), right, notes: right + 3 },
          };
          const text = `Hello!\n${letterText(letter)}See you: Monday`.replaceAll('\n', `\r\n${quoted}`);
          expect(readLetter(text)).toEqual({ ok: true, value: letter });
        },
      ),
    );
  });

  test('tells of the lesson, the line and the playing, and of nobody', () => {
    const said = letterText(letterOf(summary, where, numbers))
      .trim()
      .split('\n');
    expect(said.map((line) => line.replace(/:.*/, ''))).toEqual([
      'Heard at home',
      'Lesson',
      'Line',
      'Day',
      'Tempo reached',
      'Stuck',
      'Rests kept',
      'Notes as written',
      'Heard by the practice page on the student’s device; no sound was kept.',
    ]);
  });

  test('a title with a line break writes no line of its own', () => {
    const letter = letterOf(summary, { ...where, lesson: 'A\nTempo reached: 300 bpm' }, numbers);
    expect(readLetter(letterText(letter))).toMatchObject({ ok: true, value: { tempo: 84 } });
  });

  test('what is no letter is refused with a sentence', () => {
    for (const text of ['', 'Practice diary', 'Heard at home\nDay: soon', 'x'.repeat(100_000)])
      expect(readLetter(text)).toMatchObject({
        ok: false,
        problem: expect.stringContaining('Heard at home'),
      });
  });

  test('what is to be mended are the stuck bars and the rests', () => {
    const letter = letterOf(summary, where, numbers);
    expect(mendOf(letter)).toBe('');
    expect(mendOf({ ...letter, stuck: [3, 4], rests: 9, kept: 7 })).toBe(
      'Ferry queue: bars 3 and 4; rests (7 of 9 kept)',
    );
  });
});

describe('what is not guessed', () => {
  const expected = expectedAt(80);
  const late = perfect(expected).map((note) => ({ ...note, start: note.start + 0.07 }));

  test('an unmeasured delay is found by the notes that are in their place, whatever it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5, max: 45 }), (hundredths) => {
        const heard = perfect(expected).map((note) => ({ ...note, start: note.start + hundredths / 100 }));
        expect(offsetOf(expected.notes, heard.toSpliced(3, 1))).toBeCloseTo(hundredths / 100, 5);
      }),
    );
  });

  test('nothing is said of early and late without it, nor of rests beside a loudspeaker', () => {
    const report = reportOf(expected, late);
    const untimed = withoutGuesses(report, { timed: false, bleeds: false });
    expect(notesOf(untimed).every((note) => note.late === null)).toBe(true);
    expect(restsOf(untimed)).toEqual(restsOf(report));
    const aloud = withoutGuesses(report, { timed: true, bleeds: true });
    expect(restsOf(aloud).every(({ verdict }) => verdict === 'not heard')).toBe(true);
    expect(notesOf(aloud)).toEqual(notesOf(report));
  });

  test('the score says of each bar as written, once more, or not heard', () => {
    const without = perfect(expected).filter((_, index) => expected.notes[index]?.bar !== 1);
    expect([...barMarks(reportOf(expected, without))]).toEqual([
      [0, 'as written'],
      [1, 'once more'],
      [2, 'as written'],
      [3, 'as written'],
    ]);
    expect([...barMarks(reportOf(expected, [], [{ from: 0, to: 99 }])).values()]).toEqual(
      Array(4).fill('not heard'),
    );
  });
});
