import { expect, it } from 'vitest';
import { checkLesson } from '../../src/core/composing';
import {
  forgetMeant,
  isMeant,
  linePiece,
  meanIt,
  newLesson,
  parseLesson,
  printLesson,
  setChartText,
} from '../../src/core/lesson';
import { commandById, newPencil } from '../../src/core/writing';

it('remembers with the lesson that a finding is meant so, until it says something else', () => {
  const empty = newLesson('lesson-1', 'Meant');
  const id = empty.pieces[0]?.id ?? '';
  const lesson = setChartText(empty, id, '| F | Dm |');
  const [finding] = checkLesson(lesson);
  if (finding === undefined) throw new Error('nothing is found');
  expect(finding.message).toContain('no notes yet');
  const meant = meanIt(lesson, id, finding);
  const read = parseLesson(printLesson(meant));
  const piece = read.ok ? linePiece(read.value, id) : null;
  expect(piece && isMeant(piece, finding)).toBe(true);
  expect(piece && isMeant(piece, { ...finding, message: 'Bar 2 has no notes yet.' })).toBe(false);
  expect(meanIt(meant, id, finding)).toBe(meant);
  expect(forgetMeant(meant, id)).toEqual(lesson);
});

it('finds nothing wrong with bars that are not written yet while a line is being written', () => {
  const empty = newLesson('lesson-1', 'Unfinished');
  const id = empty.pieces[0]?.id ?? '';
  const lesson = setChartText(empty, id, '| F | Dm | Bb | C |');
  const written = commandById('degree 1').gesture(lesson, newPencil(id, 0)).lesson;
  expect(checkLesson(written).filter(({ about }) => about === 'notes')).toEqual([]);
});
