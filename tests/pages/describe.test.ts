import { describe, expect, test } from 'vitest';
import { fileStem } from '../../src/app/pages/saving/file';
import { chordsOf, degreesLine, describeFacts, describePiece } from '../../src/app/pages/words/describe';
import { COMMON_TIME, listed, ticks } from '../../src/core/base';
import {
  deriveSheet,
  type LineSheet,
  newLesson,
  setChartText,
  setFeel,
  setKey,
  stringName,
} from '../../src/core/lesson';
import type { BarAnalysis } from '../../src/core/line';
import { parseKey } from '../../src/core/theory';

/** The sheet of a chart with nothing composed yet. */
function sheetOf(chart: string, key?: string): LineSheet {
  const empty = newLesson('lesson', 'Lesson');
  const id = empty.pieces[0]?.id ?? '';
  const typed = setFeel(setChartText(empty, id, chart), id, 'early-ska');
  const parsed = key === undefined ? null : parseKey(key);
  const lesson = parsed?.ok ? setKey(typed, id, parsed.value) : typed;
  const [piece] = lesson.pieces;
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('The lesson has no line');
  return sheet;
}

describe('what is said about a chart', () => {
  test.each([
    [
      '| F | Dm | Gm | C7 |\n| F | F7 | Bb C | F |',
      '8 bars, F major: one flat (B♭). F7 in bar 6 leads to B♭.',
    ],
    ['| C | D7 | G7 | C |', '4 bars, C major: no sharps or flats. D7 in bar 2 leads to G7.'],
    ['| G | G | D7 | G |', '4 bars, G major: one sharp (F♯).'],
    ['', 'Write chords between bar lines, for example | F | Dm | Gm | C7 |.'],
  ])('%s', (chart, sentence) => {
    expect(describeFacts(sheetOf(chart))).toBe(sentence);
  });

  test('a key that the chords contradict is not passed over in silence', () => {
    expect(describeFacts(sheetOf('| F | Bb | C7 | F |', 'D'))).toContain('The chords suggest F major.');
  });

  test('chords of a mode say nothing against it', () => {
    expect(describeFacts(sheetOf('| Dm | G | Dm | G |', 'D dorian'))).not.toContain('suggest');
  });

  test('a piece without notes names feel, tempo and key only', () => {
    expect(describePiece(sheetOf('| Am | Dm | E7 | Am |'))).toBe(
      'Early ska, 126 bpm · A minor: no sharps or flats',
    );
  });

  test('sections in keys of their own are named, and their dominants are none from outside', () => {
    const sheet = sheetOf('A:\n| C | F | G7 | C |\nB:\n| E | A | B7 | E |\nA');
    expect(describeFacts(sheet)).toBe(
      '12 bars, C major: no sharps or flats. E major from bar 5, C major from bar 9.',
    );
    expect(describePiece(sheet)).toContain(
      ' · C major: no sharps or flats, E major from bar 5, C major from bar 9',
    );
  });

  test('a chord that only goes on is named once', () => {
    const bars = sheetOf('| F / C7 / | N.C. | F % |').chart.bars;
    expect(bars.map((bar) => chordsOf(bar))).toEqual(['F C7', 'N.C.', 'F']);
  });
});

/** A bar as columns of beat and length in quarters, with its degrees. */
function degrees(notes: readonly (readonly [beat: number, length: number, degree: string])[]): string {
  const analysis: BarAnalysis = {
    notes: notes.map(([, , degreeText]) => ({ degree: null, degreeText, function: null })),
    techniques: [],
    reason: '',
  };
  const timed = notes.map(([beat, length]) => ({
    start: ticks((beat - 1) * 960),
    duration: ticks(length * 960),
  }));
  return degreesLine(timed, analysis, COMMON_TIME);
}

test('silent beats are dots among the degrees', () => {
  expect(
    degrees([
      [2, 0.5, 'R'],
      [2.5, 0.5, 'R'],
      [3, 1, '5'],
      [4, 1, '♭3'],
    ]),
  ).toBe('· R R 5 ♭3');
  expect(
    degrees([
      [1, 2, 'R'],
      [4, 1, '5'],
    ]),
  ).toBe('R · 5');
  expect(degrees([])).toBe('· · · ·');
});

test('lists read as a person says them', () => {
  expect(listed([])).toBe('');
  expect(listed(['drums'])).toBe('drums');
  expect(listed(['drums', 'chops', 'organ'])).toBe('drums, chops and organ');
});

test.each([
  ['Ferry queue, week 3', 'ferry-queue-week-3'],
  ['Übung: “Säge” / №1', 'ubung-sage-no1'],
  ['../../etc/passwd', 'etc-passwd'],
  ['???', 'lesson'],
  ['夜の電車', '夜の電車'],
])('%s is saved as %s', (title, stem) => {
  expect(fileStem(title)).toBe(stem);
});

test('a string is called by the name of its open note, accidental and all', () => {
  const sheet = sheetOf('| C |');
  const lowered = { letter: 'E', alteration: -1, octave: 1 } as const;
  const tuned = { ...sheet, instrument: { ...sheet.instrument, openStrings: [lowered] } };
  expect(stringName(tuned, 1)).toBe('E♭');
  expect(stringName(tuned, 2)).toBe('');
});
