import { bench, describe } from 'vitest';
import { bpm } from '../../src/core/base';
import { composeLine, ideasForBar } from '../../src/core/line';
import { request } from '../line/notation';

const ROUND = ['F', 'C7', 'F', 'C7', 'B♭', 'F', 'C7', 'F', 'Dm', 'Gm', 'C7', 'F', 'B♭', 'C7', 'Am', 'Dm'];

/** A chart that goes round the same sixteen chords. */
const chartOf = (bars: number): string =>
  `| ${Array.from({ length: bars }, (_, bar) => ROUND[bar % ROUND.length]).join(' | ')} |`;

describe('compose another line of a chart (aim: 32 bars under 50 ms, 512 under 800 ms)', () => {
  for (const bars of [8, 32, 128, 512]) {
    const asked = request(chartOf(bars), { feel: 'one-drop' });
    let seed = 0;
    bench(
      `${bars} bars`,
      () => {
        seed += 1;
        composeLine({ ...asked, seed });
      },
      { time: 1500 },
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
    bench(
      name,
      () => {
        seed += 1;
        // Another tempo is another request, for which nothing is known yet.
        composeLine({ ...asked, seed, tempo: bpm(110 + (seed % 20)) });
      },
      { time: 1500 },
    );
  }
});

describe('ideas for a bar (aim: under 5 ms)', () => {
  for (const feel of ['early-ska', 'one-drop'] as const) {
    const asked = request(chartOf(32), { feel });
    const { bars } = composeLine(asked);
    let bar = 0;
    bench(`${feel}, in 32 bars`, () => {
      bar = (bar + 1) % 32;
      ideasForBar(asked, bars, bar);
    });
  }
});
