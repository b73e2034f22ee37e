import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeLine, transposeLesson } from '../../src/core/lesson';
import { likenessOf, likenessWords, nearestLines, type Sketch, sketchOf } from '../../src/core/series';
import { composedLesson } from './composed';

const anySketch: fc.Arbitrary<Sketch> = fc.record({
  moves: fc.array(
    fc
      .tuple(fc.integer({ min: -5, max: 5 }), fc.constantFrom(480, 960))
      .map(([step, wait]) => `${step}/${wait}`),
    { maxLength: 40 },
  ),
  rhythms: fc.array(fc.constantFrom('0 960', '480', '0'), { maxLength: 12 }),
});

describe('how much of a line another one has', () => {
  it('lies between nothing and all, and is all of itself where it has notes and moves', () => {
    fc.assert(
      fc.property(anySketch, anySketch, (one, other) => {
        const { figures, rhythm } = likenessOf(one, other);
        for (const share of [figures, rhythm]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        if (one.rhythms.length > 0) expect(likenessOf(one, one).rhythm).toBe(1);
        const longer = {
          ...other,
          moves: [...one.moves, ...other.moves],
          rhythms: [...one.rhythms, ...other.rhythms],
        };
        expect(likenessOf(one, longer).figures).toBe(likenessOf(one, one).figures);
      }),
    );
  });

  it('is all in another key, and nearly all where a bar was changed', () => {
    const lesson = composedLesson('tune', { level: 3 });
    const sketch = sketchOf(lesson);
    const moved = transposeLesson(lesson, { steps: -2, halfSteps: -3 });
    expect(likenessOf(sketchOf(moved), sketch)).toMatchObject({ figures: 1, rhythm: 1, tooClose: true });
    const piece = lesson.pieces[0]?.id ?? '';
    const changed = changeLine(lesson, piece, (line) => ({
      ...line,
      bars: line.bars.map((bar, index) =>
        index === 3
          ? {
              ...bar,
              notes: bar.notes.map((note, place) => ({
                ...note,
                pitch: { letter: place % 2 === 0 ? 'A' : 'B', alteration: 0, octave: 2 } as const,
              })),
            }
          : bar,
      ),
    }));
    const likeness = likenessOf(sketchOf(changed), sketch);
    expect(likeness.figures).toBeLessThan(1);
    expect(likeness.tooClose).toBe(true);
  });

  it('is seldom much between lines of one feel over other chords', () => {
    const charts = [
      '| C | Am | F | G |\n| C | Am | Dm G | C |',
      '| Gm | Cm | Gm | D7 |\n| Eb | F | Cm D7 | Gm |',
    ];
    const pairs = (['early-ska', 'rocksteady', 'soul-backbeat', 'walking-swing'] as const).map((feel) =>
      charts.map((chart, index) => sketchOf(composedLesson(`${feel}-${index}`, { feel, chart, level: 3 }))),
    );
    const close = pairs.filter(([one, other]) => one && other && likenessOf(one, other).tooClose);
    expect(close.length).toBe(0);
  });

  it('does not count a pumped note, which is nobody’s figure', () => {
    const pumped: Sketch = { moves: Array.from({ length: 15 }, () => '0/480'), rhythms: ['0 480 960'] };
    expect(likenessOf(pumped, pumped).figures).toBe(0);
  });

  it('is told in one sentence, the nearest line first', () => {
    const tune = sketchOf(composedLesson('tune', { level: 3 }));
    const other = sketchOf(composedLesson('tune', { level: 3, feel: 'waltz', chart: 'C | F | G | C' }));
    const nearest = nearestLines(tune, [
      { of: 'Other', sketch: other },
      { of: 'Same', sketch: tune },
    ]);
    expect(nearest[0]?.of).toBe('Same');
    expect(likenessWords({ figures: 1, rhythm: 1, tooClose: true }, 8, 'Same')).toBe(
      'Too close to “Same”: 100 % of its figures are the same, and 8 of 8 bars have a rhythm of it.',
    );
    expect(likenessWords({ figures: 0.25, rhythm: 0.125, tooClose: false }, 8, '')).toBe(
      'Differs from “Without a title”: 75 % of its figures are its own; 1 of 8 bars has a rhythm of it.',
    );
    expect(likenessWords({ figures: 0, rhythm: 0, tooClose: false }, 8, 'X')).toBe(
      'Differs from “X”: it shares no figure, and no bar has a rhythm of it.',
    );
  });
});
