import { describe, expect, it } from 'vitest';
import { broughtBy, checkLesson } from '../../src/core/composing';
import {
  type Lesson,
  linePiece,
  meanIt,
  newLesson,
  setAim,
  setChartText,
  setLevel,
} from '../../src/core/lesson';
import { commandById, newPencil, withFindings } from '../../src/core/writing';
import { pinnedSample } from '../support/pinned';

const ID = 'piece-1';
const line = (level: 0 | 5): Lesson => setLevel(pinnedSample(0, 'test'), ID, level);

const asked = (lesson: Lesson, bar: number, what: string): Lesson =>
  commandById(`bar ${what}`).gesture(lesson, newPencil(ID, bar)).lesson;

const told = (before: Lesson, after: Lesson, bar: number) =>
  broughtBy(before, after, ID, bar).map(({ message }) => message);

describe('what a change of a bar brings', () => {
  it('is what breaks a limit of the level since, and not what was there before', () => {
    const before = line(0);
    const after = asked(before, 5, 'busier');
    const brought = told(before, after, 5);
    expect(brought[0]).toMatch(/^Bar 6 has a rhythm of level 1\./);
    const were = checkLesson(before).map(({ message }) => message);
    expect(were.length).toBeGreaterThan(0);
    for (const message of brought) expect(were).not.toContain(message);
    expect(told(line(5), asked(line(5), 5, 'busier'), 5)).toEqual([]);
    expect(told(before, before, 0)).toEqual([]);
  });

  it.each([0, 1, 2, 3, 4, 5, 6, 7])('is nothing about bar index %i once it was emptied', (bar) => {
    for (const sample of [0, 1] as const) {
      const before = pinnedSample(sample, 'test');
      const after = commandById('empty bar').gesture(before, newPencil(ID, bar)).lesson;
      expect(after).not.toBe(before);
      expect(broughtBy(before, after, ID, bar).filter((each) => each.bar === bar)).toEqual([]);
    }
  });

  it('is the aim of a bar that is missed once it was emptied, and none of a bar that is not written yet', () => {
    const sample = pinnedSample(0, 'test');
    const [{ id }, first] = [linePiece(sample, ID)?.bars[2] ?? { id: '' }, newPencil(ID, 2)];
    const before = setAim(sample, ID, { kind: 'bar', id }, { wanted: ['chord tones'] });
    const after = commandById('empty bar').gesture(before, first).lesson;
    expect(told(before, after, 2)).toEqual([expect.stringMatching(/^Bar 3 .*chord tones/)]);
    const unwritten = setChartText(newLesson('test', 'Test'), ID, '| F | C7 | F | C |');
    const [bar = { id: '' }] = linePiece(unwritten, ID)?.bars ?? [];
    const begun = setAim(unwritten, ID, { kind: 'bar', id: bar.id }, { wanted: ['chord tones'] });
    expect(checkLesson(begun).filter(({ about }) => about === 'aims')).toEqual([]);
  });

  it('has the findings of the bar itself first, and none that was answered', () => {
    const before = line(5);
    const after = asked(before, 2, 'an octave up');
    const brought = broughtBy(before, after, ID, 2);
    const own = brought.filter(({ bar }) => bar === 2);
    expect(brought.slice(0, own.length)).toEqual(own);
    const [first] = brought;
    if (first === undefined) throw new Error('nothing was brought');
    const meant = meanIt(after, ID, first);
    expect(broughtBy(before, meant, ID, 2).map(({ id, bar }) => [id, bar])).not.toContainEqual([
      first.id,
      first.bar,
    ]);
  });

  it('is said in its first sentence, the bar named once, and how much more there is', () => {
    const rhythm = 'Bar 2 asks for 2.5 notes a second; level 1 allows 2. Take notes out.';
    const done = 'Bar 2 is busier: one more note. F2, R, quarter';
    expect(withFindings(done, [])).toBe(done);
    expect(withFindings(done, [rhythm])).toBe(
      'Bar 2 is busier: one more note. But: Bar 2 asks for 2.5 notes a second; level 1 allows 2.',
    );
    expect(withFindings(done, ['Bar 2, beat 1: fret 10 is too far.', 'Another.', 'A third.'])).toBe(
      'Bar 2 is busier: one more note. But: beat 1: fret 10 is too far. 2 further things in the lesson check.',
    );
    expect(withFindings(done, ['Bar 3: a leap.'])).toBe(
      'Bar 2 is busier: one more note. But: Bar 3: a leap.',
    );
  });
});
