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

it('remembers with the lesson that a finding is meant so, however it is worded, until another is found', () => {
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
  expect(piece && isMeant(piece, { ...finding, message: 'Bar 1 is empty.' })).toBe(true);
  expect(piece && isMeant(piece, { ...finding, id: 'other', message: 'Bar 2 has no notes yet.' })).toBe(
    false,
  );
  expect(meanIt(meant, id, finding)).toBe(meant);
  expect(forgetMeant(meant, id)).toEqual(lesson);
});

it('still knows what was answered when findings were known by their words', () => {
  const empty = newLesson('lesson-1', 'Meant');
  const id = empty.pieces[0]?.id ?? '';
  const lesson = setChartText(empty, id, '| F | Dm |');
  const [finding] = checkLesson(lesson);
  if (finding === undefined) throw new Error('nothing is found');
  const before = meanIt(lesson, id, { ...finding, id: finding.message });
  const piece = linePiece(before, id);
  expect(piece && isMeant(piece, finding)).toBe(true);
});

it('names findings by data alone: they are the same in other note names', () => {
  const pressed = [1, 2, 4, 7, 3, 4, 2, 7].reduce(
    ({ lesson, pencil }, degree) => commandById(`degree ${degree}`).gesture(lesson, pencil),
    {
      lesson: setChartText(
        newLesson('lesson-1', 'Names'),
        newLesson('lesson-1', 'Names').pieces[0]?.id ?? '',
        '| B♭ | E♭m |',
      ),
      pencil: newPencil(newLesson('lesson-1', 'Names').pieces[0]?.id ?? '', 0),
    },
  ).lesson;
  const namesOf = (lesson: typeof pressed) =>
    checkLesson(lesson).map(({ about, bar, id }) => `${about} ${bar} ${id}`);
  const german = { ...pressed, noteNames: 'german' as const };
  expect(namesOf(pressed).length).toBeGreaterThan(2);
  expect(checkLesson(german).map(({ message }) => message)).not.toEqual(
    checkLesson(pressed).map(({ message }) => message),
  );
  expect(namesOf(german)).toEqual(namesOf(pressed));
});

it('finds nothing wrong with bars that are not written yet while a line is being written', () => {
  const empty = newLesson('lesson-1', 'Unfinished');
  const id = empty.pieces[0]?.id ?? '';
  const lesson = setChartText(empty, id, '| F | Dm | Bb | C |');
  const written = commandById('degree 1').gesture(lesson, newPencil(id, 0)).lesson;
  expect(checkLesson(written).filter(({ about }) => about === 'notes')).toEqual([]);
});
