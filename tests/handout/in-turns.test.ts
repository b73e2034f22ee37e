import { expect, test } from 'vitest';
import { newLesson } from '../../src/core/lesson';
import { handoutPages } from '../../src/handout/layout/pages';
import { engraveInSteps } from '../../src/score/engrave';
import { finished, inTurns } from '../../src/score/steps';
import { sheetOf } from '../support/score-sheets';
import { measure } from './lessons';

const BARS = 220;

const sheet = sheetOf({
  chart: `|${' F |'.repeat(BARS)}`,
  notes: Array.from({ length: BARS }, () => 'F1/4').join(' | '),
});

const steps = () =>
  handoutPages(newLesson('long', 'Long piece'), [sheet], null, { measure, engrave: engraveInSteps });

test('a long piece is set on paper in turns with the page, as it is all at once', async () => {
  let others = 0;
  const other = setInterval(() => {
    others += 1;
  });
  const layout = await inTurns(steps());
  clearInterval(other);
  expect(others).toBeGreaterThan(2);
  expect(layout).toEqual(finished(steps()));
  expect(layout?.pages.length).toBeGreaterThan(2);
});

test('paper that is no longer wanted is set no further', async () => {
  let turns = 0;
  const layout = await inTurns(steps(), () => {
    turns += 1;
    return turns < 3;
  });
  expect(layout).toBeNull();
  expect(turns).toBe(3);
});
