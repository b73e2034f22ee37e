import { expect, test } from 'vitest';
import { engrave, engraveInSteps } from '../../src/score/engrave';
import { finished, inTurns, type Steps } from '../../src/score/steps';
import { sheetOf } from '../support/score-sheets';

const BARS = 300;
const OPTIONS = {
  width: 700,
  degrees: true,
  fingers: true,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: true,
};
const long = sheetOf({
  chart: '| F | Dm |'.repeat(BARS / 2).replaceAll('||', '|'),
  notes: Array.from({ length: BARS }, (_, bar) => `${'FGA'[bar % 3]}1/${1 + (bar % 4)}`).join(' | '),
});

/** Counts the steps that some work takes. */
function counted<Made>(steps: Steps<Made>): { made: Made; count: number } {
  for (let count = 0; ; count += 1) {
    const step = steps.next();
    if (step.done === true) return { made: step.value, count };
  }
}

test('a long piece is laid out in steps of a bar, and comes out the same', () => {
  const { made, count } = counted(engraveInSteps(long, OPTIONS));
  expect(count).toBeGreaterThan(3 * BARS);
  expect(made).toEqual(engrave(long, OPTIONS));
});

test('steps are taken in turns with other work, until they are no longer wanted', async () => {
  /** Each step takes longer than a turn. */
  const slow = function* (): Steps<string> {
    for (let step = 0; step < 5; step += 1) {
      const end = performance.now() + 12;
      while (performance.now() < end);
      yield;
    }
    return 'made';
  };
  let others = 0;
  const other = setInterval(() => {
    others += 1;
  }, 1);
  expect(await inTurns(slow())).toBe('made');
  expect(others).toBeGreaterThanOrEqual(3);
  clearInterval(other);

  let turns = 0;
  const stopped = await inTurns(slow(), () => {
    turns += 1;
    return turns < 3;
  });
  expect(stopped).toBeNull();
  expect(turns).toBe(3);
  expect(finished(slow())).toBe('made');
});
