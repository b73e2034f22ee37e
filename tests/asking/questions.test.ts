import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chosenQuestions,
  QUESTION_KINDS,
  type Question,
  type QuestionKind,
  questionsOf,
} from '../../src/core/asking';
import { beatsOf, midiOf } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import type { FeelId } from '../../src/core/feel';
import { type LineSheet, linePiece } from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import { formatNameIn } from '../../src/core/theory';
import { LINE, lineSheetIn, typedLesson } from '../support/typed-lessons';

const CHARTS = [
  '| F | Dm | Gm | C7 | F | Dm | Gm | C7 |',
  '| Am | Dm | E7 | Am |',
  '| C | C | F | G |',
  '|: B♭ | E♭ | Cm | F7 :|',
];

function sheetOf(chart: string, feel: FeelId, level: Level): LineSheet {
  const { lesson } = composePiece(typedLesson('asked', { chart, feel, level }), LINE);
  return lineSheetIn(lesson, linePiece(lesson, LINE));
}

const sheets = fc
  .tuple(
    fc.constantFrom(...CHARTS),
    fc.constantFrom<FeelId>('one-drop', 'rocksteady', 'walking-swing', 'waltz'),
    fc.constantFrom<Level>(0, 2, 3, 5),
  )
  .map(([chart, feel, level]) => sheetOf(chart, feel, level));

const barOf = (sheet: LineSheet, { bars }: Question) => sheet.bars[bars[0] ?? 0];

/** The one thing of a list; null where there are none or several. */
const only = <Thing>(things: readonly Thing[]): Thing | null =>
  things.length === 1 ? (things[0] ?? null) : null;

/** What is true of a question, worked out from the notes in another way than the answer. */
const TRUE: Partial<Record<QuestionKind, (sheet: LineSheet, question: Question) => string | null>> = {
  'empty beat': (sheet, question) => {
    const bar = barOf(sheet, question);
    if (bar === undefined) return null;
    const sounding = new Set(
      bar.notes.flatMap(({ note }) => Array.from({ length: note.duration }, (_, tick) => note.start + tick)),
    );
    const empty = beatsOf(bar.written.metre).filter(({ start, length }) =>
      Array.from({ length }, (_, tick) => start + tick).every((tick) => !sounding.has(tick)),
    );
    const beat = only(empty);
    return beat && `beat ${beat.index + 1}`;
  },
  third: (sheet, question) => {
    const bar = barOf(sheet, question);
    const heard = (bar?.notes ?? []).flatMap(({ note, degreeText }) => {
      const span = bar?.written.spans.findLast(({ start }) => start <= note.start);
      if (span?.harmony.kind !== 'chord' || !degreeText.endsWith('3')) return [];
      const root = midiOf({ ...span.harmony.chord.root, octave: 2 });
      return [(midiOf(note.pitch) - root + 120) % 12];
    });
    return { 3: 'minor', 4: 'major' }[only([...new Set(heard)]) ?? 0] ?? null;
  },
  lead: (sheet, question) => {
    const [last, first] = [
      barOf(sheet, question)?.notes.at(-1)?.note,
      sheet.bars[question.bars[1] ?? 0]?.notes[0]?.note,
    ];
    if (last === undefined || first === undefined) return null;
    const up = midiOf(first.pitch) - midiOf(last.pitch);
    if (up === 0) return 'the same note again';
    const size = ['', 'a half step', 'a whole step'][Math.abs(up)] ?? 'a leap';
    return `${size} from ${up > 0 ? 'below' : 'above'}`;
  },
  'answering bar': (sheet, question) => {
    const starts = (index: number) => sheet.bars[index]?.notes.map(({ note }) => note.start).join();
    const degrees = (index: number) => sheet.bars[index]?.notes.map(({ degreeText }) => degreeText).join();
    const [asks = 0, ...others] = question.bars;
    const answer = only(
      others.filter((each) => starts(each) === starts(asks) && degrees(each) !== degrees(asks)),
    );
    return answer === null ? null : `bar ${sheet.bars[answer]?.written.number}`;
  },
};

/** What has to be tapped, read from the notes: one thing a note where the notes of a bar are asked for. */
function tapsOf(sheet: LineSheet, question: Question): readonly string[] {
  const bar = sheet.bars[question.empty ?? question.bars[0] ?? 0];
  const notes = (bar?.notes ?? []).slice(-question.blanks);
  const names = notes.map(({ note }) => formatNameIn('letters', note.pitch));
  switch (question.kind) {
    case 'names':
    case 'left-out bar':
      return names;
    case 'degrees':
      return notes.map(({ degreeText }) => degreeText);
    case 'frets':
      return notes.map(({ fingered }) => `${'GDAE'[(fingered?.string ?? 1) - 1]} ${fingered?.fret}`);
    default:
      return [question.answer];
  }
}

const truly = (sheet: LineSheet, question: Question): string | null => {
  const check = TRUE[question.kind];
  return check === undefined ? question.answer : check(sheet, question);
};

describe('a question about a line', () => {
  it('has one true answer, which is among what can be tapped', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(sheets, (sheet) => {
        const questions = questionsOf(sheet);
        for (const question of questions) {
          kinds.add(question.kind);
          expect(question.answer).not.toBe('');
          expect(truly(sheet, question)).toBe(question.answer);
          expect(new Set(question.choices).size).toBe(question.choices.length);
          // What is asked on paper can be tapped on the page.
          expect(question.choices.length).toBeGreaterThan(1);
          expect(question.choices).toEqual(expect.arrayContaining([...question.taps]));
          expect(question.taps).toEqual(tapsOf(sheet, question));
          expect(question.blanks).toBeGreaterThan(0);
        }
        // No two questions are worded alike with different answers.
        const answers = new Map<string, string>();
        for (const { text, answer } of questions) {
          expect(answers.get(text) ?? answer).toBe(answer);
          answers.set(text, answer);
        }
      }),
      { numRuns: 12, seed: 7 },
    );
    expect([...kinds].sort()).toEqual([...QUESTION_KINDS].sort());
  }, 120_000);

  it('is chosen by number and difficulty, the same ones for the same seed', () => {
    const sheet = sheetOf(CHARTS[0] ?? '', 'one-drop', 3);
    const easy = chosenQuestions(sheet, { count: 5, difficulty: 1, seed: 3 });
    expect(easy).toHaveLength(5);
    expect(easy.every(({ difficulty }) => difficulty === 1)).toBe(true);
    expect(chosenQuestions(sheet, { count: 5, difficulty: 1, seed: 3 })).toEqual(easy);
    const all = chosenQuestions(sheet, { count: 10, difficulty: 3, seed: 3 });
    expect(new Set(all.map(({ kind }) => kind)).size).toBeGreaterThan(6);
    const [hard] = chosenQuestions(sheet, { count: 1, difficulty: 3, seed: 3 });
    expect(hard?.difficulty).toBe(3);
  });
});
