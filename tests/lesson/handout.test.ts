import { describe, expect, test } from 'vitest';
import {
  type Lesson,
  leaveOut,
  PRACTICE_STEPS,
  parseLesson,
  printLesson,
  sampleLesson,
  setHandout,
} from '../../src/core/lesson';

const SAMPLE = sampleLesson(0, 'test');
const FIRST = SAMPLE.pieces[0]?.id ?? '';
const reread = (lesson: Lesson) => parseLesson(printLesson(lesson));

describe('what a lesson says about its handout', () => {
  test('comes back from its file: the practice steps, and what a piece goes without', () => {
    const lesson = setHandout(leaveOut(SAMPLE, FIRST, 'shapes', true), { steps: ['Sing the roots.'] });
    const back = reread(lesson);
    expect(back.ok && back.value).toEqual(lesson);
  });

  test('is refused where a part is left out twice or the steps never end', () => {
    const twice = {
      ...SAMPLE,
      pieces: SAMPLE.pieces.map((piece) => ({ ...piece, leftOut: ['music', 'music'] as const })),
    };
    expect(reread(twice).ok).toBe(false);
    const endless = Array.from({ length: PRACTICE_STEPS.most + 1 }, () => 'Again.');
    expect(reread(setHandout(SAMPLE, { steps: endless })).ok).toBe(false);
    expect(reread(setHandout(SAMPLE, { steps: ['x'.repeat(PRACTICE_STEPS.length + 1)] })).ok).toBe(false);
  });

  test('a part that is left out and printed again leaves the others as they were', () => {
    const two = leaveOut(leaveOut(SAMPLE, FIRST, 'shapes', true), FIRST, 'chart', true);
    const again = leaveOut(two, FIRST, 'chart', false);
    expect(again.pieces[0]?.leftOut).toEqual(['shapes']);
    expect(again.pieces.slice(1)).toEqual(SAMPLE.pieces.slice(1));
  });
});
