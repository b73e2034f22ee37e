import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { createLessonStore } from '../../src/app/state/lesson-store';
import { ticks } from '../../src/core/base';
import { chartInLetters, parseChart } from '../../src/core/chart';
import { FEEL_IDS } from '../../src/core/feel';
import {
  addPiece,
  type ChartBarEdit,
  copyPiece,
  discardParked,
  editChartBar,
  keepBar,
  LESSON_LIMITS,
  type Lesson,
  linePiece,
  MOST_PARKED,
  movePiece,
  newLesson,
  parseLesson,
  printLesson,
  putParkedBack,
  removePiece,
  renamePiece,
  sampleLesson,
  setAim,
  setBlankBars,
  setChartText,
  setFeel,
  setHandout,
  setKey,
  setLevel,
  setMetre,
  setNotes,
  setPlaying,
  setSectionAim,
  setTechnique,
  setTempo,
  setTitle,
  takeSuggestion,
  transposeBy,
  transposeLesson,
  transposeTo,
  whyNotKept,
  writeSectionKey,
} from '../../src/core/lesson';
import { TECHNIQUES } from '../../src/core/line';
import { randomCharts } from '../chart/random-charts';
import { longRuns } from '../support/long-runs';
import { key } from '../theory/read';

/*
 * What is saved can be read. `KEPT_RUNS` asks for more sequences of edits than the test command's, `KEPT_SEED` for
 * others.
 */
const RUNS = Number(process.env.KEPT_RUNS ?? 60);
const SEED = Number(process.env.KEPT_SEED ?? 11);

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

/** What was once saved and could not be opened again. */
const LONG_TEXTS: readonly (readonly [what: string, chart: string])[] = [
  ['a word of five hundred letters', `| C | ${'W'.repeat(500)} | F |`],
  ['a web address', `| C | https://example.org/${'a/b?c=d&'.repeat(80)} |`],
  ['a long section name', `${'Verse '.repeat(100)}:\n| C |`],
  ['a long name used again', `${'V'.repeat(600)}\n| C |`],
  ['a chord with 300 tensions', `| C7(${'b9,'.repeat(300)}b9) |`],
  ['twelve long words in a bar', `(12/8) | ${'X'.repeat(700)} ${'Y'.repeat(900)} ${'Z'.repeat(900)} |`],
  ['more bars than a chart holds', '| C '.repeat(4_900)],
  ['more sections than a chart holds', 'A:\n'.repeat(6_000)],
  ['a section used again and again', `A:\n${'| C '.repeat(90)}\n${'A\n'.repeat(3_000)}`],
];

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
    const store = createLessonStore(full, (sentence) => said.push(sentence));
    store.change(edit, { label: 'move' });
    expect(store.getState().lesson).toBe(full);
    expect(said).toEqual([
      'A chart has at most 20,000 characters, and this would make it longer. The lesson is as it was.',
    ]);
  });
});

type Edit = (lesson: Lesson, at: number) => Lesson;

const hostile = fc.oneof(
  { weight: 3, arbitrary: randomCharts },
  longRuns(900),
  fc.string({ unit: 'binary', maxLength: 90 }),
  fc.constantFrom(...LONG_TEXTS.slice(0, 6).map(([, chart]) => chart), '\ud800', '__proto__', '"}\u2028'),
);
const idAt = (lesson: Lesson, at: number): string => lesson.pieces[at % lesson.pieces.length]?.id ?? '';
const barAt = (lesson: Lesson, at: number): number => {
  const piece = linePiece(lesson, idAt(lesson, at));
  return piece === null || piece.bars.length === 0 ? 0 : at % piece.bars.length;
};
const BAR_EDITS: readonly ChartBarEdit['kind'][] = [
  'insert before',
  'insert after',
  'repeat',
  'split',
  'join',
  'remove',
];

const edits: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 4,
    arbitrary: hostile.map(
      (text): Edit =>
        (l, at) =>
          setChartText(l, idAt(l, at), text),
    ),
  },
  {
    weight: 2,
    arbitrary: hostile.map(
      (text): Edit =>
        (l, at) =>
          editChartBar(l, idAt(l, at), barAt(l, at), { kind: 'write', text }),
    ),
  },
  fc.constantFrom(...BAR_EDITS).map(
    (kind): Edit =>
      (l, at) =>
        kind === 'insert before' ||
        kind === 'insert after' ||
        kind === 'repeat' ||
        kind === 'split' ||
        kind === 'join' ||
        kind === 'remove'
          ? editChartBar(l, idAt(l, at), barAt(l, at), { kind })
          : l,
  ),
  fc.integer({ min: -13, max: 13 }).map(
    (by): Edit =>
      (l, at) =>
        transposeBy(l, idAt(l, at), by),
  ),
  fc.constantFrom('C', 'F#', 'Gb', 'Dm', 'Ebm', 'G#m').map(
    (name): Edit =>
      (l, at) =>
        setKey(l, idAt(l, at), at % 5 === 0 ? null : key(name)),
  ),
  fc.constantFrom('C', 'B', 'Db').map(
    (name): Edit =>
      (l, at) =>
        transposeTo(l, idAt(l, at), key(name).tonic),
  ),
  fc
    .constantFrom(
      { count: 3, unit: 4 } as const,
      { count: 12, unit: 8 } as const,
      { count: 4, unit: 4 } as const,
    )
    .map(
      (metre): Edit =>
        (l, at) =>
          setMetre(l, idAt(l, at), metre),
    ),
  hostile.map(
    (text): Edit =>
      (l) =>
        setTitle(l, text),
  ),
  hostile.map(
    (text): Edit =>
      (l) =>
        setNotes(l, text.repeat(3)),
  ),
  hostile.map(
    (text): Edit =>
      (l, at) =>
        renamePiece(l, idAt(l, at), text),
  ),
  hostile.map(
    (text): Edit =>
      (l) =>
        setHandout(l, { header: text, student: text }),
  ),
  fc.constantFrom<Edit>(
    (l, at) => addPiece(l, at % 2 === 0 ? 'line' : 'blank', idAt(l, at)),
    (l, at) => copyPiece(l, idAt(l, at)),
    (l, at) => movePiece(l, idAt(l, at), at % 2 === 0 ? 1 : -1),
    (l, at) => removePiece(l, idAt(l, at)),
    (l, at) => discardParked(l, idAt(l, at)),
    (l, at) => putParkedBack(l, idAt(l, at), linePiece(l, idAt(l, at))?.parked[0]?.id ?? '', barAt(l, at)),
    (l, at) => keepBar(l, idAt(l, at), barAt(l, at), at % 2 === 0),
    (l, at) => setBlankBars(l, idAt(l, at), at),
    (l, at) => setTempo(l, idAt(l, at), at),
    (l, at) => setLevel(l, idAt(l, at), 3),
    (l, at) => setFeel(l, idAt(l, at), FEEL_IDS[at % FEEL_IDS.length] ?? 'bossa'),
    (l, at) => setTechnique(l, idAt(l, at), TECHNIQUES[at % TECHNIQUES.length] ?? 'octave', at % 3 > 0),
    (l, at) => setPlaying(l, idAt(l, at), { passage: { first: at % 9, last: (at % 9) + 3 } }),
    (l, at) => setAim(l, idAt(l, at), { kind: 'line' }, { silence: 0.5 }),
    (l, at) => setSectionAim(l, idAt(l, at), at % 3, { density: 'sparse' }),
    (l, at) => writeSectionKey(l, idAt(l, at), at % 3, key('Eb')),
    (l, at) => {
      const piece = linePiece(l, idAt(l, at));
      const problem = piece && parseChart(piece.chartText, piece.metre, piece.key).problems[0];
      return problem ? takeSuggestion(l, idAt(l, at), problem) : l;
    },
  ),
);

it(`prints and parses to itself after any edits: ${RUNS} sequences, seed ${SEED}`, {
  timeout: 60_000 + RUNS * 4_000,
}, () => {
  fc.assert(
    fc.property(
      fc.nat(1),
      fc.array(fc.tuple(edits, fc.nat(9_999)), { minLength: 1, maxLength: 12 }),
      (sample, steps) => {
        const store = createLessonStore(sampleLesson(sample, 'lesson-1'));
        for (const [edit, at] of steps) store.change((lesson) => edit(lesson, at), { label: 'edit' });
        const { lesson } = store.getState();
        expect(lesson.pieces.length).toBeLessThanOrEqual(LESSON_LIMITS.pieces);
        expect(readBack(lesson)).toEqual({ ok: true, value: lesson });
      },
    ),
    { seed: SEED, numRuns: RUNS },
  );
});
