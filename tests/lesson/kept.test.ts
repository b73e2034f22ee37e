import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { createLessonStore } from '../../src/app/state/lesson-store';
import { ticks } from '../../src/core/base';
import { chartInLetters, parseChart } from '../../src/core/chart';
import {
  copyPiece,
  keepBar,
  LESSON_LIMITS,
  type Lesson,
  linePiece,
  MOST_PARKED,
  newLesson,
  parseLesson,
  printLesson,
  sampleLesson,
  setChartText,
  transposeLesson,
  whyNotKept,
} from '../../src/core/lesson';
import { edits, LONG_TEXTS } from '../support/random-edits';

/*
 * What is saved can be read. `KEPT_RUNS` asks for more sequences of edits than the test command's, `KEPT_SEED` for
 * others.
 */
const RUNS = Number(process.env.KEPT_RUNS ?? 60);
const SEED = Number(process.env.KEPT_SEED ?? 11);

const CHECKS = { whyRefused: () => null, whyNotKept };

const readBack = (lesson: Lesson) => parseLesson(printLesson(lesson));

/** A line of many bars, each with so many notes. */
function longLine(bars: number, notesInBar: number): Lesson {
  const lesson = setChartText(newLesson('long', 'Long'), 'piece-1', '| F |');
  const [piece] = lesson.pieces;
  const [bar] = piece?.kind === 'line' ? piece.bars : [];
  if (piece?.kind !== 'line' || bar === undefined) throw new Error('no bar');
  const notes = Array.from({ length: notesInBar }, (_, index) => ({
    start: ticks(index * 120),
    duration: ticks(120),
    pitch: { letter: 'F' as const, alteration: 0 as const, octave: 1 },
  }));
  const many = Array.from({ length: bars }, (_, index) => ({ ...bar, id: `bar-${index + 1}`, notes }));
  return { ...lesson, pieces: [{ ...piece, bars: many }] };
}

test('a lesson of forty thousand notes can be read again, and none that is too long for a file is made', () => {
  const long = longLine(2000, 20);
  expect(whyNotKept(long)).toBeNull();
  expect(readBack(long)).toEqual({ ok: true, value: long });
  expect(whyNotKept(copyPiece(long, 'piece-1'))).toMatch(
    /^A lesson has room for about 4\.8 MB.*as it was\.$/,
  );
});

describe('a lesson that is saved', () => {
  test.each(LONG_TEXTS)('can be read with %s in its chart', (_what, chart) => {
    const lesson = newLesson('lesson-1', 'New lesson');
    const typed = setChartText(lesson, lesson.pieces[0]?.id ?? '', chart);
    expect(whyNotKept(typed)).toBeNull();
    expect(readBack(typed)).toEqual({ ok: true, value: typed });
  });

  test('tells long words apart, and says that they are too long', () => {
    const lesson = newLesson('lesson-1', 'New lesson');
    const id = lesson.pieces[0]?.id ?? '';
    const chart = `| ${'W'.repeat(500)} | ${'W'.repeat(501)} |`;
    const [first, second] = linePiece(setChartText(lesson, id, chart), id)?.bars ?? [];
    expect(first?.harmony).not.toBe(second?.harmony);
    const { problems } = parseChart(chart, { count: 4, unit: 4 });
    expect(problems.map(({ message }) => message)).toEqual([
      expect.stringContaining('500 characters; 80 at most'),
      expect.stringContaining('501 characters; 80 at most'),
    ]);
  });

  test('keeps as many parked bars as it may, the own ones longest', () => {
    let lesson = sampleLesson(0, 'lesson-1');
    const id = lesson.pieces[0]?.id ?? '';
    const own = linePiece(lesson, id)?.bars[0];
    lesson = keepBar(lesson, id, 0, true);
    const written = linePiece(lesson, id);
    for (let time = 0; time < 400; time += 1) {
      lesson = {
        ...lesson,
        pieces: lesson.pieces.map((piece) =>
          piece.kind === 'line' && piece.id === id
            ? {
                ...piece,
                bars: (written?.bars ?? []).map((bar, index) =>
                  time === 0 ? bar : { ...bar, id: `bar-${1_000 * (time + 1) + index}`, kept: false },
                ),
                chartText: written?.chartText ?? '',
              }
            : piece,
        ),
      };
      lesson = setChartText(lesson, id, '| B7alt |');
    }
    const parked = linePiece(lesson, id)?.parked ?? [];
    expect(parked).toHaveLength(MOST_PARKED);
    expect(parked.map((bar) => bar.id)).toContain(own?.id);
    expect(readBack(lesson)).toEqual({ ok: true, value: lesson });
  });

  test.each([
    ['moved', (lesson: Lesson) => transposeLesson(lesson, { steps: 0, halfSteps: -1 })],
    [
      'typed in German names',
      (lesson: Lesson) =>
        setChartText(lesson, lesson.pieces[0]?.id ?? '', chartInLetters('german', '|B '.repeat(6_660))),
    ],
  ])('is not %s over the limit: the edit is refused in a sentence', (_how, edit) => {
    const empty = newLesson('lesson-1', 'New lesson');
    const full = setChartText(empty, empty.pieces[0]?.id ?? '', '|E '.repeat(6_660));
    const said: string[] = [];
    const store = createLessonStore(full, (sentence) => said.push(sentence), CHECKS);
    store.change(edit, { label: 'move' });
    expect(store.getState().lesson).toBe(full);
    expect(said).toEqual([
      'A chart has at most 20,000 characters, and this would make it longer. The lesson is as it was.',
    ]);
  });
});

it(`prints and parses to itself after any edits: ${RUNS} sequences, seed ${SEED}`, {
  timeout: 60_000 + RUNS * 4_000,
}, () => {
  fc.assert(
    fc.property(
      fc.nat(1),
      fc.array(fc.tuple(edits, fc.nat(9_999)), { minLength: 1, maxLength: 12 }),
      (sample, steps) => {
        const store = createLessonStore(sampleLesson(sample, 'lesson-1'), () => undefined, CHECKS);
        for (const [edit, at] of steps) store.change((lesson) => edit(lesson, at), { label: 'edit' });
        const { lesson } = store.getState();
        expect(lesson.pieces.length).toBeLessThanOrEqual(LESSON_LIMITS.pieces);
        expect(readBack(lesson)).toEqual({ ok: true, value: lesson });
      },
    ),
    { seed: SEED, numRuns: RUNS },
  );
});
