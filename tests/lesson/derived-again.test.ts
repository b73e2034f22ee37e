import { expect, it } from 'vitest';
import { createRandom } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import {
  deriveSheet,
  type Lesson,
  linePiece,
  newLesson,
  parsedChart,
  SHEET_STAGES,
  setChartText,
  setLevel,
} from '../../src/core/lesson';
import { COMMANDS, newPencil, type Pencil } from '../../src/core/writing';

const CHART = 'A:\n|: F | Dm | Gm7 | C7 :|\nB:\n| B♭ | F/A | Gm7 C7 | F |';

/** A lesson that shares no object with another one, so that nothing remembered about that one helps. */
const strange = (lesson: Lesson): Lesson => JSON.parse(JSON.stringify(lesson));

it('derives after any edit what it would derive from nothing', () => {
  const empty = newLesson('lesson-1', 'Again');
  const id = empty.pieces[0]?.id ?? '';
  const random = createRandom(15);
  let lesson = composePiece(setChartText(empty, id, CHART), id).lesson;
  let pencil: Pencil = newPencil(id, 2);
  for (let step = 0; step < 120; step += 1) {
    const command = COMMANDS[random.below(COMMANDS.length)];
    if (command === undefined) throw new Error('no command');
    ({ lesson, pencil } = command.gesture(lesson, pencil));
    if (step === 60) lesson = setLevel(lesson, id, 5);
    expect(derivedAgain(lesson, id)).toEqual(derivedAfresh(lesson, id, step));
  }
});

const PARTS = [
  'A:\n|: F | Dm7 | Gm7 | C7 :|\n| F/A | Bb | Bdim | C7 |',
  'B:\n|: Bb | F/A | [1] Gm7 | C7 :|\n| [2] Gm7 C7 | F |',
  'C:\n| D7 | % | Gm | G7 |\n| C7 / Bb/C / | Am7 D7 | Gm7 C7 | F |',
  'B',
  'D:\n| E | A | B7 | E |\n| E | C#m | F#m B7 | E |',
];

/** What is typed in a row behind one place; ⌫ takes a sign away. */
const TYPED = [
  ' Dm7 | G7 |',
  ' Eb⌫⌫maj7 |, ⌫⌫',
  '⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫⌫',
  '\nBridge:\n| F | C7 |',
  '⌫:|',
  '\n(3/4) | F | C | (4/4)',
  '\nA\n',
  ' (to coda) | (coda) F |',
] as const;

it('derives while a chart is typed what it would derive from nothing', () => {
  const empty = newLesson('lesson-1', 'Typed');
  const id = empty.pieces[0]?.id ?? '';
  const chart = PARTS.join('\n');
  const begun = composePiece(setLevel(setChartText(empty, id, chart), id, 1), id).lesson;
  const random = createRandom(24);
  const ends = [...chart.matchAll(/\n|$/g)].map(({ index }) => index);
  const before = new Set<unknown>();
  let kept = 0;
  let step = 0;
  for (const [index, typed] of TYPED.entries()) {
    // In front or at the end, and somewhere between.
    for (const from of [index % 2 === 0 ? 1 : ends.length - 1, 2 + random.below(ends.length - 3)]) {
      let lesson = begun;
      let caret = ends[from] ?? 0;
      for (const sign of typed) {
        const text = linePiece(lesson, id)?.chartText ?? '';
        const [head, tail] = [text.slice(0, caret), text.slice(caret)];
        const next = sign === '⌫' ? head.slice(0, -1) : `${head}${sign}`;
        caret = next.length;
        lesson = setChartText(lesson, id, `${next}${tail}`, caret);
        step += 1;
        // Every other time in stages, as on the page.
        workAhead(lesson, id, step % 2 === 0);
        const again = derivedAgain(lesson, id);
        expect(again).toEqual(derivedAfresh(lesson, id, step));
        kept += again.filter(({ analysis }) => before.has(analysis)).length;
        for (const { analysis } of again) before.add(analysis);
      }
    }
  }
  // Most of it is remembered, or nothing was tried.
  expect(kept / before.size).toBeGreaterThan(3);
});

it('remembers a long chart as it is and as it was, and many short ones', () => {
  const [typed] = newLesson('lesson-1', 'Read').pieces;
  if (typed?.kind !== 'line') throw new Error('no line');
  const chartIn = (bars: number, last: string) =>
    parsedChart({ ...typed, chartText: `${'| F '.repeat(bars - 1)}| ${last} |` }).chart;
  const roots = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];
  const lasts = roots.flatMap((root) => [root, `${root}m`, `${root}7`]);

  const [first, second] = [chartIn(900, 'C'), chartIn(900, 'Cm')];
  expect(chartIn(900, 'C')).toBe(first);
  expect(chartIn(900, 'Cm')).toBe(second);
  // What stands with a chart of a lesson that is being typed is some megabytes.
  chartIn(900, 'C7');
  expect(chartIn(900, 'Cm')).toBe(second);
  expect(chartIn(900, 'C')).not.toBe(first);

  const short = lasts.map((last) => chartIn(16, last));
  expect(lasts.map((last) => chartIn(16, last)).every((chart, index) => chart === short[index])).toBe(true);
});

/** Takes the stages of the sheet of a lesson's line, where that is wanted. */
function workAhead(lesson: Lesson, id: string, wanted: boolean): void {
  const piece = linePiece(lesson, id);
  if (piece === null || !wanted) return;
  for (const { work } of SHEET_STAGES) work(piece, lesson.instrument);
}

/** What is derived of the bars of a lesson's line, with everything that is remembered. */
function derivedAgain(lesson: Lesson, id: string) {
  const piece = linePiece(lesson, id);
  const sheet = piece && deriveSheet(piece, lesson.instrument, undefined);
  if (sheet?.kind !== 'line') throw new Error('no line');
  return sheet.bars.map(({ analysis, notes }) => ({ analysis, notes }));
}

/** The same of a copy that shares nothing, under an id and a chart text of its own: a comment changes no music. */
function derivedAfresh(lesson: Lesson, id: string, comment: number) {
  const copy = strange(lesson);
  const piece = linePiece(copy, id);
  if (piece === null) throw new Error('no line');
  const own = { ...piece, id: `afresh ${comment}`, chartText: `${piece.chartText} ; ${comment}` };
  const sheet = deriveSheet(own, copy.instrument, undefined);
  if (sheet.kind !== 'line') throw new Error('no line');
  return sheet.bars.map(({ analysis, notes }) => ({ analysis, notes }));
}
