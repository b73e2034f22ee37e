import { describe, expect, test } from 'vitest';
import { butNotes, differInNotesAlone } from '../../src/app/pages/at-work/behind';
import {
  type Lesson,
  type LinePiece,
  markTechnique,
  setChartText,
  setFeel,
  setInstrument,
  setLevel,
  setPlaying,
  setTempo,
  setTitle,
} from '../../src/core/lesson';
import { lessonOf } from './lines';

const settled = lessonOf({ chart: '[A] | C | F | G | C |' });
const [line] = settled.pieces;
if (line === undefined) throw new Error('The lesson has a line.');
const { id } = line;
const lineOf = (lesson: Lesson): LinePiece => {
  const [piece] = lesson.pieces;
  if (piece?.kind !== 'line') throw new Error('The first piece is a line.');
  return piece;
};
const typed = (lesson: Lesson): Lesson => setChartText(lesson, id, '[A] | Gm | Cm |\n[B] | D7 | Gm | Gm |');

/** Without the notes of the first bar: what writing by hand does to a lesson. */
const rewritten = (lesson: Lesson): Lesson => ({
  ...lesson,
  pieces: [
    {
      ...lineOf(lesson),
      bars: lineOf(lesson).bars.map((bar, index) => (index === 0 ? { ...bar, notes: [] } : bar)),
    },
  ],
});

describe('fields that show neither notes nor chart', () => {
  test('wait while only these are written', () => {
    expect(butNotes(typed(settled), settled)).toBe(settled);
    expect(butNotes(rewritten(settled), settled)).toBe(settled);
  });

  test.each<readonly [string, (lesson: Lesson) => Lesson]>([
    ['feel', (lesson) => setFeel(lesson, id, 'one-drop')],
    ['tempo', (lesson) => setTempo(lesson, id, 97)],
    ['level', (lesson) => setLevel(lesson, id, 0)],
    ['technique', (lesson) => markTechnique(lesson, id, 'octave', 'shown')],
    ['loop', (lesson) => setPlaying(lesson, id, { loop: !lineOf(lesson).playing.loop })],
    ['neck', (lesson) => setInstrument(lesson, { frets: 22 })],
    ['title', (lesson) => setTitle(lesson, 'Thursday')],
  ])('show another %s at once, also while the page is behind with the chart', (_, change) => {
    for (const before of [typed(settled), rewritten(settled)]) {
      const now = change(before);
      expect(butNotes(now, settled)).toBe(now);
    }
  });
});

test('what only tells about notes waits for them alone, within the same bars', () => {
  expect(differInNotesAlone(rewritten(settled), settled)).toBe(true);
  expect(differInNotesAlone(typed(settled), settled)).toBe(false);
  expect(differInNotesAlone(setTempo(rewritten(settled), id, 97), settled)).toBe(false);
});
