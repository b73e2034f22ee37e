import { describe, expect, it } from 'vitest';
import { checkLesson, composePiece } from '../../src/core/composing';
import { FEEL_IDS } from '../../src/core/feel';
import {
  changeBarAims,
  type Lesson,
  type LinePiece,
  linePiece,
  markOf,
  markTechnique,
  parseLesson,
  printLesson,
  SILENT_ONES,
  setAim,
} from '../../src/core/lesson';
import { DEGREE_STEPS, LEVELS, type Level, TECHNIQUES } from '../../src/core/line';
import { LINE, lineSheetIn, typedLesson } from '../support/typed-lessons';

const CHART = '| F | Dm | Gm | C7 | F | Dm | Gm | C7 |';

const lessonIn = (feel: LinePiece['feel'], level: Level, chart = CHART): Lesson =>
  typedLesson('aims', { chart, feel, level });

const line = (lesson: Lesson): LinePiece => {
  const piece = linePiece(lesson, LINE);
  if (piece === null) throw new Error('The lesson has its line.');
  return piece;
};

const asked = (lesson: Lesson, terms: Parameters<typeof setAim>[3]) =>
  setAim(lesson, LINE, { kind: 'line' }, terms);

/** The numbers of the bars whose beat one is silent. */
const silentOnes = (lesson: Lesson): readonly number[] =>
  line(lesson).bars.flatMap(({ notes }, index) => (notes[0]?.start === 0 ? [] : [index + 1]));

const degreesIn = (lesson: Lesson): ReadonlySet<string> => {
  const { bars } = lineSheetIn(lesson, line(lesson));
  return new Set(bars.flatMap(({ notes }) => notes.map((note) => note.degreeText)));
};

const saysOfAims = (lesson: Lesson): readonly string[] =>
  checkLesson(lesson).flatMap(({ about, message }) => (about === 'aims' ? [message] : []));

describe('how often beat one is silent', () => {
  it.each([
    ['never', (bars: readonly number[]) => bars.length === 0],
    ['some bars', (bars: readonly number[]) => bars.some((bar) => bar <= 4) && bars.some((bar) => bar > 4)],
    ['most', (bars: readonly number[]) => bars.length > 4],
    ['every second bar', (bars: readonly number[]) => bars.join() === '2,4,6,8'],
  ] as const)('is a wish of its own: %s', (often, holds) => {
    const { lesson } = composePiece(asked(lessonIn('one-drop', 3), { silentOnes: often }), LINE);
    expect(saysOfAims(lesson)).toEqual([]);
    expect(silentOnes(lesson)).toSatisfy(holds);
  });

  it('is said with its reason where a bar cannot have it', () => {
    const wished = asked(lessonIn('one-drop', 3, '| F | Dm | Gm | C7 |'), { silentOnes: 'every second bar' });
    const piece = line(wished);
    // Bar 2 is kept with a note on its one.
    const one = composePiece(asked(wished, { silentOnes: 'never' }), LINE).lesson;
    const kept: Lesson = {
      ...wished,
      pieces: [{ ...piece, bars: line(one).bars.map((bar) => ({ ...bar, kept: true })) }],
    };
    expect(saysOfAims(kept)).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^Bar 2 does not keep an aim of the line: beat one silent/),
      ]),
    );
  });

  it('that is never asked for is not missed, though the technique is ticked', () => {
    const never = composePiece(asked(lessonIn('one-drop', 3), { silentOnes: 'never' }), LINE);
    expect(line(never.lesson).techniques).toContain('beat one silent');
    expect(silentOnes(never.lesson)).toEqual([]);
    expect(never.remarks.filter((each) => each.includes('beat one silent'))).toEqual([]);
  });

  it('yields to what a nearer place says of the technique', () => {
    const wished = asked(lessonIn('one-drop', 3), { silentOnes: 'every second bar' });
    const own = changeBarAims(wished, LINE, [1], () => ({ forbidden: ['beat one silent'] }));
    expect(silentOnes(composePiece(own, LINE).lesson)).toEqual([4, 6, 8]);
  });
});

describe('degrees', () => {
  it.each(LEVELS)('are ticked for themselves: root and fifth only at level %i', (level) => {
    for (const feel of FEEL_IDS.filter((_, index) => index % 3 === level % 3)) {
      const wished = asked(lessonIn(feel, level), { degrees: [1, 5] });
      const { lesson } = composePiece(wished, LINE);
      expect({ feel, says: saysOfAims(lesson) }).toEqual({ feel, says: [] });
      expect([...degreesIn(lesson)].filter((text) => !['R', '5', '8'].includes(text))).toEqual([]);
    }
  });

  it('that a line does not keep to are told', () => {
    const { lesson } = composePiece(lessonIn('walking-swing', 4), LINE);
    expect(degreesIn(lesson).size).toBeGreaterThan(3);
    expect(saysOfAims(asked(lesson, { degrees: [1] }))[0]).toMatch(
      /does not keep an aim of the line: root only\. .* of another degree/,
    );
  });
});

describe('aims', () => {
  it('tell what may be used from what is to be shown', () => {
    const plain = lessonIn('walking-swing', 4);
    const piece = line(plain);
    const only: Lesson = { ...plain, pieces: [{ ...piece, techniques: ['chord tones'] }] };
    const shown: Lesson = { ...plain, pieces: [{ ...piece, techniques: ['chord tones', 'anticipation'] }] };
    const may = asked(only, { allowed: ['anticipation'] });
    const remarks = (lesson: Lesson) =>
      composePiece(lesson, LINE).remarks.filter((each) => /anticipation/.test(each));
    const heard = (lesson: Lesson) => {
      const { lesson: made } = composePiece(lesson, LINE);
      const { bars } = lineSheetIn(made, line(made));
      return bars.some(({ analysis }) => analysis.techniques.includes('anticipation'));
    };
    expect(heard(shown) || remarks(shown).length > 0).toBe(true);
    expect(remarks(may)).toEqual([]);
    expect(heard(only)).toBe(false);
  });

  it('have one mark for a technique, wherever it is read and set', () => {
    const marks = ['shown', 'used', 'in every phrase', null] as const;
    const plain = lessonIn('rocksteady', 3);
    for (const technique of TECHNIQUES)
      for (const before of marks)
        for (const mark of marks) {
          const once = markTechnique(plain, LINE, technique, before);
          const marked = markTechnique(once, LINE, technique, mark);
          expect(markOf(line(marked), technique)).toBe(mark);
          expect(line(marked).techniques.includes(technique)).toBe(
            mark === 'shown' || mark === 'in every phrase',
          );
          expect(parseLesson(printLesson(marked))).toMatchObject({ ok: true, value: marked });
        }
    for (const silentOnes of SILENT_ONES) {
      const wished = asked(plain, { silentOnes });
      expect(markOf(line(wished), 'beat one silent')).toBe(silentOnes === 'never' ? null : 'shown');
      expect(markOf(line(markTechnique(wished, LINE, 'beat one silent', 'used')), 'beat one silent')).toBe(
        'used',
      );
    }
  });

  it('compose a line where no technique is ticked at all', () => {
    const bare = TECHNIQUES.reduce(
      (lesson, each) => markTechnique(lesson, LINE, each, null),
      lessonIn('rockers', 4),
    );
    const { lesson } = composePiece(bare, LINE);
    expect(line(lesson).bars.every(({ notes }) => notes.length > 0)).toBe(true);
    expect(saysOfAims(lesson)).toEqual([]);
  });

  it('are given to several bars at once, and what else a bar is asked stays', () => {
    const one = changeBarAims(lessonIn('one-drop', 3), LINE, [2], () => ({ density: 'sparse' }));
    const all = changeBarAims(one, LINE, [1, 2, 3], (terms) => ({ ...terms, silence: 0.25 }));
    expect(line(all).aims).toHaveLength(3);
    expect(line(all).aims[0]).toMatchObject({ density: 'sparse', silence: 0.25 });
    expect(parseLesson(printLesson(all))).toMatchObject({ ok: true, value: all });
  });

  it('are stored by names that a lesson can hold', () => {
    for (const silentOnes of SILENT_ONES) {
      const lesson = asked(lessonIn('one-drop', 3), { silentOnes, degrees: DEGREE_STEPS });
      expect(parseLesson(printLesson(lesson))).toMatchObject({ ok: true, value: lesson });
    }
  });
});
