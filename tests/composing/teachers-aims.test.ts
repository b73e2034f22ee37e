import { describe, expect, it } from 'vitest';
import { checkLesson, composePiece } from '../../src/core/composing';
import {
  changeBarAims,
  deriveSheet,
  type Lesson,
  type LinePiece,
  linePiece,
  newLesson,
  parseLesson,
  printLesson,
  SILENT_ONES,
  setAim,
  setChartText,
  setFeel,
  setLevel,
} from '../../src/core/lesson';
import { DEGREE_STEPS, type Level } from '../../src/core/line';

const PIECE = 'piece-1';
const CHART = '| F | Dm | Gm | C7 | F | Dm | Gm | C7 |';

const lessonIn = (feel: LinePiece['feel'], level: Level, chart = CHART): Lesson =>
  setLevel(setFeel(setChartText(newLesson('aims', 'Aims'), PIECE, chart), PIECE, feel), PIECE, level);

const line = (lesson: Lesson): LinePiece => {
  const piece = linePiece(lesson, PIECE);
  if (piece === null) throw new Error('The lesson has its line.');
  return piece;
};

const asked = (lesson: Lesson, terms: Parameters<typeof setAim>[3]) =>
  setAim(lesson, PIECE, { kind: 'line' }, terms);

/** The numbers of the bars whose beat one is silent. */
const silentOnes = (lesson: Lesson): readonly number[] =>
  line(lesson).bars.flatMap(({ notes }, index) => (notes[0]?.start === 0 ? [] : [index + 1]));

const degreesIn = (lesson: Lesson): ReadonlySet<string> => {
  const sheet = deriveSheet(line(lesson), lesson.instrument, lesson.noteNames);
  return new Set(
    sheet.kind === 'line' ? sheet.bars.flatMap(({ notes }) => notes.map((note) => note.degreeText)) : [],
  );
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
    const { lesson } = composePiece(asked(lessonIn('one-drop', 3), { silentOnes: often }), PIECE);
    expect(saysOfAims(lesson)).toEqual([]);
    expect(silentOnes(lesson)).toSatisfy(holds);
  });

  it('is said with its reason where a bar cannot have it', () => {
    const wished = asked(lessonIn('one-drop', 3, '| F | Dm | Gm | C7 |'), { silentOnes: 'every second bar' });
    const piece = line(wished);
    // Bar 2 is kept with a note on its one.
    const one = composePiece(asked(wished, { silentOnes: 'never' }), PIECE).lesson;
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

  it('yields to what a nearer place says of the technique', () => {
    const wished = asked(lessonIn('one-drop', 3), { silentOnes: 'every second bar' });
    const own = changeBarAims(wished, PIECE, [1], () => ({ forbidden: ['beat one silent'] }));
    expect(silentOnes(composePiece(own, PIECE).lesson)).toEqual([4, 6, 8]);
  });
});

describe('degrees', () => {
  it.each([0, 3, 5] as const)('are ticked for themselves: root and fifth only at level %i', (level) => {
    const wished = asked(lessonIn('rockers', level), { degrees: [1, 5] });
    const { lesson } = composePiece(wished, PIECE);
    expect(saysOfAims(lesson)).toEqual([]);
    expect([...degreesIn(lesson)].filter((text) => !['R', '5', '8'].includes(text))).toEqual([]);
  });

  it('that a line does not keep to are told', () => {
    const { lesson } = composePiece(lessonIn('walking-swing', 4), PIECE);
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
      composePiece(lesson, PIECE).remarks.filter((each) => /anticipation/.test(each));
    const heard = (lesson: Lesson) => {
      const { lesson: made } = composePiece(lesson, PIECE);
      const sheet = deriveSheet(line(made), made.instrument, made.noteNames);
      return (
        sheet.kind === 'line' &&
        sheet.bars.some(({ analysis }) => analysis.techniques.includes('anticipation'))
      );
    };
    expect(heard(shown) || remarks(shown).length > 0).toBe(true);
    expect(remarks(may)).toEqual([]);
    expect(heard(only)).toBe(false);
  });

  it('are given to several bars at once, and what else a bar is asked stays', () => {
    const one = changeBarAims(lessonIn('one-drop', 3), PIECE, [2], () => ({ density: 'sparse' }));
    const all = changeBarAims(one, PIECE, [1, 2, 3], (terms) => ({ ...terms, silence: 0.25 }));
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
