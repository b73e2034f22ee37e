import { describe } from 'vitest';
import { COMMON_TIME } from '../../src/core/base';
import { barSignature, chordFunctions, findChartKeys, matchBars, parseChart } from '../../src/core/chart';
import { A_FRAME, AT_ONCE, benchWithin } from './within';

const LINE = '| Am7 | D7 | Gmaj7 C | F#m7b5 B7 | Em | A7 | Dm7 / G7 / | C6 |\n';
const textOf = (bars: number): string => `Verse:\n${LINE.repeat(bars / 8)}`;

describe('parse and analyse a chart', () => {
  for (const [bars, budget] of [
    [8, A_FRAME],
    [64, A_FRAME],
    [512, AT_ONCE],
  ] as const) {
    const text = textOf(bars);
    const what = `A chart of ${bars} bars parsed and analysed`;
    benchWithin({ what, name: `${bars} bars`, budget }, () => {
      const { chart } = parseChart(text, COMMON_TIME);
      const { guesses, sections } = findChartKeys(chart);
      const [best] = guesses;
      if (best) chordFunctions(chart, best.key, sections);
    });
  }
});

describe('a keystroke in a chart of 128 bars', () => {
  const before = textOf(128);
  const signatures = parseChart(before, COMMON_TIME).chart.bars.map(barSignature);
  let keystroke = 0;
  const name = 'read the text again and follow its bars';
  benchWithin({ what: `A keystroke in 128 bars: ${name}`, name, budget: A_FRAME }, () => {
    keystroke += 1;
    const at = (keystroke * 37) % before.length;
    const typed = `${before.slice(0, at)}${'m7b#|x'[keystroke % 6] ?? ''}${before.slice(at)}`;
    const { chart } = parseChart(typed, COMMON_TIME);
    matchBars(signatures, chart.bars.map(barSignature));
    findChartKeys(chart);
  });
});
