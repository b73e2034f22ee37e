import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chosenQuestions, type Question, questionSeed } from '../../src/core/asking';
import { composePiece } from '../../src/core/composing';
import type { FeelId } from '../../src/core/feel';
import {
  addPiece,
  deriveSheets,
  type HandoutSettings,
  type Lesson,
  type LineSheet,
  setBlankPrompt,
  setHandout,
} from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import type { HandoutLayout } from '../../src/handout/layout/pages';
import type { InkRole } from '../../src/score/types';
import { LINE, typedLesson } from '../support/typed-lessons';
import { layOutForPrint } from './drawn';

/** Everything is ticked that could give an answer away. */
const ALL: Partial<HandoutSettings> = {
  degrees: true,
  fingers: true,
  counting: true,
  positions: true,
  numerals: true,
  blocks: [
    'facts',
    'chart',
    'shapes',
    'neck',
    'rhythm',
    'clapping',
    'music',
    'explained',
    'study',
    'questions',
    'answers',
    'practice',
    'cautions',
  ],
};

const lessonOf = (chart: string, feel: FeelId, level: Level): Lesson =>
  composePiece(typedLesson('asked', { chart, feel, level }), LINE).lesson;

const composed = fc
  .tuple(
    fc.constantFrom(
      '| F | Dm | Gm | C7 | F | Dm | Gm | C7 |',
      '|: B♭ | E♭ | Cm | F7 :|',
      '| Am | Dm | E7 | Am |',
    ),
    fc.constantFrom('one-drop', 'walking-swing', 'waltz', 'rockers'),
    fc.constantFrom(0, 2, 3, 5),
  )
  .map(([chart, feel, level]) => lessonOf(chart, feel as never, level as Level));

const asking = fc.record({
  lesson: composed,
  parts: fc.constantFrom('both', 'staff', 'tab' as const),
  seed: fc.integer({ min: 0, max: 99 }),
  difficulty: fc.constantFrom(1, 2, 3),
});

/** The sheets of paper that go to the student, and those with the answers. */
function sheetsOf({ pages }: HandoutLayout) {
  const first = pages.findIndex(({ marks }) =>
    marks.some((mark) => mark.kind === 'text' && mark.tag?.role === 'H1' && mark.text.startsWith('Answers:')),
  );
  return first === -1 ? [pages, []] : [pages.slice(0, first), pages.slice(first)];
}

const textsOn = (pages: HandoutLayout['pages']): readonly string[] =>
  pages.flatMap(({ marks }) =>
    marks.flatMap((mark) => [
      ...(mark.kind === 'text' ? [mark.text] : []),
      ...(mark.tag?.alternative === undefined ? [] : [mark.tag.alternative]),
    ]),
  );

const inkOn = (pages: HandoutLayout['pages'], { scores }: HandoutLayout): ReadonlySet<InkRole> =>
  new Set(
    pages.flatMap(({ marks }) =>
      marks.flatMap((mark) =>
        mark.kind === 'system'
          ? (scores[mark.score]?.systems[mark.system]?.ink ?? []).map(({ role }) => role)
          : [],
      ),
    ),
  );

function askedOf(lesson: Lesson): { readonly sheet: LineSheet; readonly questions: readonly Question[] } {
  const [sheet] = deriveSheets(lesson);
  const wish = lesson.handout.questions;
  if (sheet?.kind !== 'line' || wish === undefined) throw new Error('A line is asked about.');
  return {
    sheet,
    questions: chosenQuestions(sheet, {
      ...wish,
      seed: questionSeed(sheet, wish),
      onPaper: lesson.handout.parts === 'tab' ? 'tab' : 'staff',
    }),
  };
}

type Pages = HandoutLayout['pages'];

const numbersOn = (pages: Pages): readonly string[] =>
  textsOn(pages).filter((text) => /^Page \d+ of \d+$/.test(text));

const numbersByThemselves = (pages: Pages): readonly string[] =>
  pages.map((_, index) => `Page ${index + 1} of ${pages.length}`);

/** Whether a text says an answer, and not merely a sign of it by chance, as a chord's 7 does. */
const states = (text: string, answer: string): boolean =>
  answer.length > 2 && (text === answer || (answer.length > 6 && text.includes(answer)));

describe('a sheet that asks questions', () => {
  it('states no answer anywhere, and its answers stand on a sheet of their own', () => {
    fc.assert(
      fc.property(asking, ({ lesson: plain, parts, seed, difficulty }) => {
        const questions = { count: 20, difficulty: difficulty as 1 | 2 | 3, seed };
        const lesson = setHandout(plain, { ...ALL, parts: parts as 'both', questions });
        const layout = layOutForPrint(lesson);
        const [student = [], key = []] = sheetsOf(layout);
        expect(layout.answerPages).toBe(key.length);
        // Who has the sheet alone misses no page of it.
        expect([student, key].map(numbersOn)).toEqual([student, key].map(numbersByThemselves));
        const asked = askedOf(lesson);
        expect(asked.questions.length).toBeGreaterThan(2);
        const ink = inkOn(student, layout);
        for (const role of ['degree', 'finger', 'counting', 'position'] as const)
          expect(ink.has(role)).toBe(false);
        expect(ink.has('fret')).toBe(parts === 'tab');
        expect(ink.has('note')).toBe(parts !== 'tab');
        expect(student.some(({ marks }) => marks.some(({ kind }) => kind === 'neck'))).toBe(false);
        const printed = textsOn(student);
        for (const { answer, kind } of asked.questions) {
          expect(kind === 'frets' && parts === 'tab').toBe(false);
          expect(printed.filter((text) => states(text, answer))).toEqual([]);
        }
        // What is to be written is not printed, and nothing else is asked of it.
        for (const { empty } of asked.questions) {
          if (empty === undefined) continue;
          const others = asked.questions.filter((question) => question.empty !== empty);
          expect(others.some(({ bars }) => bars.includes(empty))).toBe(false);
        }
        const answers = textsOn(key).join(' ');
        for (const { answer } of asked.questions) expect(answers).toContain(answer);
        // The answers say what the notes are, beside the line in full.
        expect(inkOn(key, layout).has('degree')).toBe(true);
        expect(layout.remarks.join(' ')).toMatch(
          /What would answer the questions stands on the answer sheet/,
        );
        const without = layOutForPrint(
          setHandout(lesson, { blocks: (ALL.blocks ?? []).filter((block) => block !== 'answers') }),
        );
        expect(sheetsOf(without)[1]).toEqual([]);
        expect(without.pages).toHaveLength(student.length);
      }),
      { numRuns: 10, seed: 4 },
    );
  }, 120_000);

  it('has an empty bar where the next bar is to be written', () => {
    const lesson = lessonOf('| F | Dm | Gm | C7 | F | Dm | Gm | C7 |', 'rockers', 3);
    const heads = (count: number, difficulty: 1 | 3) => {
      const layout = layOutForPrint(
        setHandout(lesson, { blocks: ['music', 'questions'], questions: { count, difficulty } }),
      );
      return layout.scores
        .at(-1)
        ?.systems.reduce((sum, { ink }) => sum + ink.filter(({ role }) => role === 'note').length, 0);
    };
    const full = setHandout(lesson, {
      blocks: ['music', 'questions'],
      questions: { count: 20, difficulty: 3 },
    });
    const missing = askedOf(full).questions.flatMap(({ empty }) =>
      empty === undefined ? [] : [askedOf(full).sheet.bars[empty]?.notes.length ?? 0],
    );
    expect(missing.length).toBeGreaterThan(0);
    expect(heads(20, 3)).toBe((heads(20, 1) ?? 0) - missing.reduce((sum, each) => sum + each, 0));
  });

  it('asks others when they are drawn anew, on the page and on paper alike', () => {
    const lesson = lessonOf('| F | Dm | Gm | C7 | F | Dm | Gm | C7 |', 'rockers', 3);
    const drawn = (seed: number) =>
      askedOf(setHandout(lesson, { questions: { count: 6, difficulty: 2, seed } })).questions.map(
        ({ text }) => text,
      );
    expect(drawn(1)).not.toEqual(drawn(0));
    expect(drawn(1)).toEqual(drawn(1));
  });

  it('prints what blank bars ask for over them, with the chords they are written over', () => {
    const plain = addPiece(lessonOf('| F | Dm | Gm | C7 |', 'rockers', 2), 'blank', null);
    const blank = plain.pieces.at(-1)?.id ?? '';
    const lesson = setBlankPrompt(plain, blank, { degrees: [1, 3], wanted: ['beat one silent'] });
    for (const blocks of [['music'], ['music', 'questions', 'answers']] as const) {
      const { pages, answerPages } = layOutForPrint(setHandout(lesson, { blocks }));
      const texts = textsOn(pages.slice(0, pages.length - answerPages));
      expect(texts.join(' ')).toContain(
        'Write a line of your own over these chords: root and third only, beat one silent.',
      );
      expect(texts.join(' ')).toContain(
        'Bar 1, F: empty, to be written in. Bar 2, Dm: empty, to be written in.',
      );
    }
    expect(textsOn(layOutForPrint(setBlankPrompt(lesson, blank, null)).pages).join(' ')).not.toContain(
      'Write a line',
    );
  });
});
