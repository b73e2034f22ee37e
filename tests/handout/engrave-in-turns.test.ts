import { expect, test } from 'vitest';
import { engraveInTurns } from '../../src/handout/engrave-in-turns';
import { engrave, engraveInSteps } from '../../src/score/engrave';
import { sheetOf } from '../support/score-sheets';

const OPTIONS = {
  width: 500,
  degrees: true,
  fingers: true,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: true,
};

const sheetOfBars = (bars: number) =>
  sheetOf({
    chart: `|${' F |'.repeat(bars)}`,
    notes: Array.from({ length: bars }, () => 'F1/4').join(' | '),
  });

test('on paper a long piece is engraved in turns with the page, a usual one at once, and both come out the same', async () => {
  const long = sheetOfBars(220);
  const usual = sheetOfBars(8);
  let atOnce = 0;
  let stepsOfLong = 0;
  let others = 0;
  const other = setInterval(() => {
    others += 1;
  });
  const layouts = await engraveInTurns((ask) => [ask(usual, OPTIONS), ask(long, OPTIONS)], {
    atOnce: (sheet, options) => {
      atOnce += 1;
      expect(sheet).toBe(usual);
      return engrave(sheet, options);
    },
    inSteps: function* (sheet, options) {
      expect(sheet).toBe(long);
      const steps = engraveInSteps(sheet, options);
      // The first step takes longer than a turn.
      const end = performance.now() + 12;
      while (performance.now() < end);
      yield;
      for (;;) {
        const step = steps.next();
        if (step.done === true) return step.value;
        stepsOfLong += 1;
        yield;
      }
    },
  });
  clearInterval(other);
  expect(layouts).toEqual([engrave(usual, OPTIONS), engrave(long, OPTIONS)]);
  expect(atOnce).toBeGreaterThan(0);
  expect(stepsOfLong).toBeGreaterThan(220);
  expect(others).toBeGreaterThan(0);
});
