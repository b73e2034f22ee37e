import { expect, test } from 'vitest';
import { describeBar } from '../../src/core/lesson';
import { sheetOf } from '../support/score-sheets';

const sheet = sheetOf({
  key: 'G',
  chart: '| G | C |',
  notes: 'G1/1{hammer} A1/1>{palm_mute} B1/2{slide} | C2/4{fermata}',
  over: { 0: { words: 'dig in', dynamics: [{ at: 0, level: 'p', hairpin: 'crescendo' }] } },
});

test('a bar says its dynamics, its word and how its notes are played', () => {
  const [first, second] = sheet.bars.map((bar) => describeBar(sheet, bar));
  expect(first).toMatch(/^Over the bar: dig in\. p on 1, growing\. R on 1, .*, hammer-on;/);
  expect(first).toContain('accent, palm mute');
  expect(first).toContain('slide to the next note');
  expect(second).toMatch(/, fermata\.$/);
});
