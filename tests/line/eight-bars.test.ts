import { describe, expect, test } from 'vitest';
import { barTicks, beatTicks } from '../../src/core/base';
import { contourOf, type FeelId, feelById, homeMetre, phraseBookOf } from '../../src/core/feel';
import { composeLine, type Level } from '../../src/core/line';
import { likenessOf, taskOf } from '../../src/core/line/phrase/figure';
import { layoutOf } from '../../src/core/line/phrase/layout';
import { beforeChange } from '../../src/core/line/phrase/led-on';
import { modelOf } from '../../src/core/line/read-request';
import { request } from './notation';

const FOUR = { count: 4, unit: 4 } as const;
const bar = (grid: string, text: string, slot: 'S' | 'A' | 'C' = 'S') =>
  contourOf(slot, FOUR, grid, text, `${slot} ${grid} ${text}`);

describe('a bar beside the one that the tune states', () => {
  const stated = bar('x=x=x=x=', 'R 3 5 6');
  test.each([
    ['the same', 'x=x=x=x=', 'R 3 5 6', 'same'],
    ['another second half', 'x=x=x=x=', 'R 3 8 5', 'other tail'],
    ['another last note, which leads', 'x=x=x=x=', 'R 3 5 >', 'other tail'],
    ['a tail in another rhythm', 'x=x=x===', 'R 3 8', 'other tail'],
    ['the shape a fifth higher', 'x=x=x=x=', '5 6 8 9', 'lifted'],
    ['the rhythm alone', 'x=x=x=x=', 'R 5 3 R', 'rhythm'],
    ['another bar', 'x===x===', 'R 5', 'other'],
  ] as const)('%s', (_, grid, text, likeness) => {
    expect(likenessOf(stated, bar(grid, text))).toBe(likeness);
  });
});

describe('a tune of eight bars', () => {
  const chart = '| F | Dm | B♭ | C | F | Gm | B♭ | C |';
  const model = modelOf(request(chart, { feel: 'rockers', level: 3 }));
  const [metre] = phraseBookOf('rockers').metres;
  const [theme] = metre.themes;
  const figure = { first: bar('xx--x=x=', 'R R 5 >'), second: bar('xx--x=--', 'R R 3', 'A'), model: null };

  test('states, answers, brings back and closes, whatever the seed', () => {
    if (!theme) throw new Error('a book has themes');
    const wishes = {
      manner: 'riff',
      theme,
      figures: [],
      low: 28,
      high: 48,
      level: 3,
      asks: [],
      restsOnOne: false,
    } as const;
    for (let seed = 0; seed < 20; seed += 1) {
      const layout = layoutOf(model, wishes, seed);
      expect(layout.map(({ figure }) => figure?.part)).toEqual(
        ['statement', 'answer', 'return', 'close'].flatMap((part) => [part, part]),
      );
      expect(layout.at(-1)?.slot).toBe('T');
      expect(layout.map(({ figure }) => figure?.again)).toEqual(
        // The fifth bar stands over the first one's chord; the others do not stand over those of their figure.
        [true, true, false, false, true, false, false, false],
      );
    }
  });

  test('changes its figure over the same chord, and brings it back as it was over another', () => {
    const back = { part: 'return', of: 0 } as const;
    expect(taskOf(figure, { ...back, again: true }, false)?.treatment).toBe('changed');
    expect(taskOf(figure, { ...back, again: false }, false)?.treatment).toBe('as stated');
    expect(taskOf(figure, { part: 'close', of: 1, again: false }, false)).toBe(null);
  });
});

describe('the last beat before another chord', () => {
  test('has a note that leads on, and a breath keeps its silence', () => {
    const led = beforeChange(bar('xx--x=--', 'R R 3'), FOUR);
    expect(led.leads).toBe(1);
    expect(led.beats.at(-1)).toEqual({ start: 3, duration: 1 });
    const breath = bar('xx--x=--', 'R R 3', 'C');
    expect(beforeChange(breath, FOUR)).toBe(breath);
    const full = bar('xx--xxx=', 'R R 3 5 R');
    expect(beforeChange(full, FOUR)).toBe(full);
  });

  test.each<readonly [FeelId, Level]>([
    ['soul-backbeat', 2],
    ['steppers', 2],
  ])('sounds in most bars of an easy line: %s', (feel, level) => {
    const chart = '| G | Em | C | D | G | Am | C | D |';
    const metre = homeMetre(feelById(feel));
    const lastBeat = barTicks(metre) - beatTicks(metre);
    const silent = [1, 2, 3].flatMap((seed) =>
      composeLine(request(chart, { feel, level, seed })).bars.filter((notes) =>
        notes.every(({ start, duration }) => start + duration <= lastBeat),
      ),
    );
    expect(silent.length).toBeLessThanOrEqual(7);
  });
});
