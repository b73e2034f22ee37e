import { expect, it } from 'vitest';
import { checkLesson } from '../../src/core/composing';
import { writeMidi, writeMusicXml, writeTextTab } from '../../src/core/exchange';
import {
  type Lesson,
  type LinePiece,
  linePiece,
  meanIt,
  newLesson,
  parseLesson,
  printLesson,
  setChartText,
} from '../../src/core/lesson';
import { performanceOf } from '../../src/core/performance';
import { commandById, newPencil } from '../../src/core/writing';
import { codeOf } from '../../src/handout/code/lesson-code';
import { lineSheetOf } from '../exchange/read-back';
import { layOutForPrint } from './drawn';

const ID = newLesson('lesson-1', 'Meant').pieces[0]?.id ?? '';

/** A line in which something is found. */
const written = ['2', '4', '7', '4'].reduce(
  ({ lesson, pencil }, degree) => commandById(`degree ${degree}`).gesture(lesson, pencil),
  { lesson: setChartText(newLesson('lesson-1', 'Meant'), ID, '| F |'), pencil: newPencil(ID, 0) },
).lesson;

const pieceOf = (lesson: Lesson): LinePiece => {
  const piece = linePiece(lesson, ID);
  if (piece === null) throw new Error('no line');
  return piece;
};

/** Everything that leaves the program with a line. */
function outcomes(lesson: Lesson): Readonly<Record<string, unknown>> {
  const sheet = lineSheetOf(lesson);
  const performance = performanceOf(pieceOf(lesson), sheet, 'notes');
  return {
    handout: JSON.stringify(layOutForPrint(lesson).pages),
    code: codeOf(lesson, 'https://example.org/').code?.link,
    musicXml: writeMusicXml(sheet, 'Meant'),
    textTab: writeTextTab(sheet, 'Meant'),
    midi: [...writeMidi({ performance, sheet, title: 'Meant', parts: new Set(['bass']) })],
  };
}

it('what is meant so is remembered with the lesson and stands in nothing that is printed, sent or written out', () => {
  const findings = checkLesson(written);
  expect(findings.length).toBeGreaterThan(0);
  const meant = findings.reduce((lesson, finding) => meanIt(lesson, ID, finding), written);
  expect(pieceOf(meant).meant).toHaveLength(findings.length);
  expect(parseLesson(printLesson(meant))).toEqual({ ok: true, value: meant });
  expect(outcomes(meant)).toEqual(outcomes(written));
});
