import { expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { newLesson, setChartText, setFeel } from '../../src/core/lesson';

const PIECE = 'piece-1';
const LESSONS = 16;

test.each([
  ['early-ska', '| F | Dm | Bb | C7 | F | Dm | Gm | C7 |'],
  ['one-drop', '| Am | Am | Dm | Am | F | G | Am | E7 |'],
] as const)('new lessons over one chart seldom have one line: %s', (feel, chart) => {
  const lines = Array.from({ length: LESSONS }, (_, index) => {
    const lesson = setChartText(setFeel(newLesson(`lesson ${index}`, 'Quay'), PIECE, feel), PIECE, chart);
    const [piece] = composePiece(lesson, PIECE).lesson.pieces;
    return JSON.stringify(piece?.kind === 'line' ? piece.bars.map(({ notes }) => notes) : null);
  });
  const most = Math.max(...lines.map((line) => lines.filter((other) => other === line).length));
  expect(new Set(lines).size).toBeGreaterThanOrEqual(0.75 * LESSONS);
  expect(most).toBeLessThanOrEqual(3);
});
