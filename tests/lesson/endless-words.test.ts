import { describe, expect, test } from 'vitest';
import { chordsOf } from '../../src/app/pages/words';
import { harmonyParts, harmonyText, parseChart } from '../../src/core/chart';
import { composePiece } from '../../src/core/composing';
import { describeBar, newLesson, setChartText } from '../../src/core/lesson';
import { shortened } from '../../src/core/theory';
import { systemWords } from '../../src/handout/blocks/alternatives';
import { engrave } from '../../src/score/engrave';
import { chartFacts } from '../../src/score/notation/facts';
import { metre } from '../chart/read';
import { NOTES_ONLY, sheetOf } from '../support/score-sheets';

/** A word of 500 letters that is no chord; another one begins as it does. */
const ENDLESS = 'Zz'.repeat(250);
const OTHER = `${ENDLESS.slice(0, 400)}${'y'.repeat(100)}`;
const SHOWN = `${ENDLESS.slice(0, 20)}…`;

const sheet = sheetOf({ chart: `| F | ${ENDLESS} | ${OTHER} C |`, notes: 'r/4 | r/4 | r/4' });
const [, second, third] = sheet.bars;
if (second === undefined || third === undefined) throw new Error('The chart has three bars.');

describe('an endless word that is no chord', () => {
  test('is kept as it was typed, and drawn and said by its first letters', () => {
    const harmony = second.written.spans[0]?.harmony;
    if (harmony === undefined) throw new Error('The bar has a word.');
    expect(harmonyText(harmony)).toBe(ENDLESS);
    expect(harmonyParts(harmony)).toEqual({ base: SHOWN, raised: '', bass: '' });
    expect(chordsOf(second.written)).toBe(SHOWN);
    expect(describeBar(sheet, third)).toMatch(new RegExp(`^${SHOWN} on 1, C on 3\\.`));
    expect(systemWords(sheet, { bars: [{ bar: 1, x: 0, width: 1, positions: [] }] }, {})).toMatch(
      new RegExp(`^Bar 2, ${SHOWN}: `),
    );
  });

  test('stands over its bar on the score, and another one that begins as it does over the next', () => {
    const marks = chartFacts(sheet, 'bass', false).map(({ chords }) => chords);
    expect(marks.map((chords) => chords.map(({ text, again }) => [text, again]))).toEqual([
      [['F', false]],
      [[SHOWN, false]],
      [
        [SHOWN, false],
        ['C', false],
      ],
    ]);
    const { systems, width } = engrave(sheet, { ...NOTES_ONLY, width: 390 });
    const right = Math.max(...systems.flatMap(({ ink }) => ink.map(({ box }) => box.right)));
    expect(right * Math.max(...systems.map(({ scale }) => scale))).toBeLessThanOrEqual(width);
  });

  test('is named by its first letters where the bass rests under it', () => {
    const lesson = newLesson('lesson', 'Lesson');
    const id = lesson.pieces[0]?.id ?? '';
    const { remarks } = composePiece(setChartText(lesson, id, `| F | ${ENDLESS} |`), id);
    expect(remarks.join('\n')).toContain(
      `Bar 2: the chord “${SHOWN}” is not understood, so the bass rests under it.`,
    );
  });

  test('is told with its length, and a sentence never holds more of it', () => {
    const { problems } = parseChart(`| F | ${ENDLESS} |\n; words\n| F |\nTempo ${ENDLESS}`, metre());
    expect(problems).toHaveLength(2);
    expect(problems[0]?.message).toContain(`“${SHOWN}” is too long for a chord symbol (500 characters`);
    for (const { message } of problems) expect(message.length).toBeLessThan(200);
  });
});

test('no character is cut in two where a text is shortened', () => {
  expect(shortened('🎸'.repeat(20))).toBe('🎸'.repeat(20));
  expect(shortened('🎸'.repeat(21))).toBe(`${'🎸'.repeat(20)}…`);
  expect(shortened(`a${'🎸'.repeat(60)}`, 30)).toBe(`a${'🎸'.repeat(29)}…`);
});
