import { describe } from 'vitest';
import { bpm } from '../../src/core/base';
import { composeLine, ideasForBar } from '../../src/core/line';
import { request } from '../line/notation';
import { processorTime } from './processor-time';
import { AT_ONCE, benchWithin } from './within';

const ROUND = ['F', 'C7', 'F', 'C7', 'B♭', 'F', 'C7', 'F', 'Dm', 'Gm', 'C7', 'F', 'B♭', 'C7', 'Am', 'Dm'];

/** A chart that goes round the same sixteen chords. */
const chartOf = (bars: number): string =>
  `| ${Array.from({ length: bars }, (_, bar) => ROUND[bar % ROUND.length]).join(' | ')} |`;

describe('compose another line of a chart (aim: 32 bars under 50 ms, 512 under 800 ms)', () => {
  for (const [bars, most] of [
    [8, 50],
    [32, 50],
    [128, 200],
    [512, 800],
  ] as const) {
    const asked = request(chartOf(bars), { feel: 'one-drop' });
    let seed = 0;
    benchWithin(
      { what: `Another line of ${bars} bars composed`, name: `${bars} bars`, budget: { most } },
      () => {
        seed += 1;
        composeLine({ ...asked, seed });
      },
      { time: 1500, now: processorTime },
    );
  }
});

const REPEATS =
  'Verse:\n|: C | Am7 | F | G7 | C | Dm7 G7 |1. C | G7 :|2. C | C7 |\nChorus:\n|: F | G7 | Em7 | Am | Dm7 | G7 |1. C | A7 :|2. C | G7 |';

describe('compose the first line of a chart, and one with repeats and endings', () => {
  for (const [name, chart] of [
    ['32 bars', chartOf(32)],
    ['repeats and endings', REPEATS],
  ] as const) {
    const asked = request(chart, { feel: 'one-drop' });
    let seed = 0;
    benchWithin(
      { what: `The first line of a chart composed, ${name}`, name, budget: { most: 50 } },
      () => {
        seed += 1;
        // Another tempo is another request, for which nothing is known yet.
        composeLine({ ...asked, seed, tempo: bpm(110 + (seed % 20)) });
      },
      { time: 1500, now: processorTime },
    );
  }
});

describe('ideas for a bar (aim: under 5 ms)', () => {
  for (const feel of ['early-ska', 'one-drop'] as const) {
    const asked = request(chartOf(32), { feel });
    const lines = Array.from({ length: 8 }, (_, seed) => composeLine({ ...asked, seed }).bars);
    let turn = 0;
    /** The next bar of a line, and of the next line when all were asked about. */
    const next = (): void => {
      const line = lines[Math.floor(turn / 32) % lines.length] ?? [];
      ideasForBar(asked, line, turn % 32);
      turn += 1;
    };
    // The chords of the chart are known from the first bars that were asked about, and the code is warm.
    for (let bar = 0; bar < 64; bar += 1) next();
    const name = `${feel}, in 32 bars`;
    const told = { what: `Ideas for a bar of ${name}`, name, budget: { most: 5 } };
    benchWithin(told, next, { time: 1500, now: processorTime });
  }
});

describe('ideas for a bar over a chord that was not asked about yet', () => {
  for (const feel of ['early-ska', 'one-drop'] as const) {
    const asked = request(chartOf(32), { feel });
    const { bars } = composeLine(asked);
    let seed = 0;
    benchWithin(
      { what: `Ideas for a bar of ${feel} over a chord not asked about yet`, name: feel, budget: AT_ONCE },
      () => {
        seed += 1;
        // Another tempo is another request, for which nothing is known yet.
        ideasForBar({ ...asked, tempo: bpm(110 + (seed % 20)) }, bars, 8);
      },
      { time: 1500, now: processorTime },
    );
  }
});
