import { expect, test } from 'vitest';
import { checkLesson } from '../../src/core/composing';
import { parseLesson, printLesson } from '../../src/core/lesson';
import { boundsOf, passageOf } from '../../src/core/playing';
import { lessonOf, lineOf } from './lines';

const passageIn = (chart: string, first: number, last: number) => {
  const { piece, sheet } = lineOf(lessonOf({ chart, playing: { passage: { first, last } } }));
  return passageOf(piece, sheet);
};

const PICKUP = '(1) C | F | G | C |';
const WHOLE = '| C | F | G | C |';

test('bars are counted as written: a pickup is bar 0', () => {
  expect(boundsOf(lineOf(lessonOf({ chart: PICKUP })).sheet)).toEqual({ least: 0, most: 3 });
  expect(boundsOf(lineOf(lessonOf({ chart: WHOLE })).sheet)).toEqual({ least: 1, most: 4 });
});

test('a passage is held within the chart, and everything is no passage', () => {
  expect(passageIn(PICKUP, 0, 3)).toBe(null);
  expect(passageIn(PICKUP, 1, 3)).toEqual({ first: 1, last: 3 });
  expect(passageIn(PICKUP, 0, 9)).toBe(null);
  expect(passageIn(WHOLE, 0, 2)).toEqual({ first: 1, last: 2 });
  expect(passageIn(WHOLE, 0, 0)).toBe(null);
  expect(passageIn(WHOLE, 7, 9)).toBe(null);
});

test('a passage from the pickup on is kept in the lesson file', () => {
  const lesson = lessonOf({ chart: PICKUP, playing: { passage: { first: 0, last: 2 } } });
  expect(parseLesson(printLesson(lesson))).toMatchObject({ ok: true, value: lesson });
});

test('the lesson check names the bars without notes as they are written', () => {
  expect(checkLesson(lessonOf({ chart: '(1) N.C. | F | G |' }))).toMatchObject([
    { bar: 1, message: expect.stringMatching(/^Bars 1 and 2 have no notes/) },
  ]);
});
