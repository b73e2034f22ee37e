import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barTicks, midiOf } from '../../src/core/base';
import { barBreaches, composeLine, type Idea, ideasForBar, type Technique } from '../../src/core/line';
import { charts, wishes } from './charts';
import { request } from './notation';

const RUNS = { numRuns: 25, seed: 20260102 };
const CHART = '| F | C7 | F | C7 | B♭ | Gm Am | C7sus4 | F/A |';

const textOf = (idea: Idea): string =>
  idea.notes.map((note) => `${note.start} ${note.duration} ${midiOf(note.pitch)}`).join(', ');

const showing = (ideas: readonly Idea[], technique: Technique): number =>
  ideas.filter((idea) => idea.analysis.techniques.includes(technique)).length;

describe('ideas for every bar', () => {
  test.each([
    ['early-ska', 3],
    ['early-ska', 5],
    ['one-drop', 3],
    ['one-drop', 4],
  ] as const)('%s, level %i: eight at least, across the three techniques', (feel, level) => {
    const asked = request(CHART, { feel, level });
    const { bars } = composeLine(asked);
    asked.chart.bars.forEach((_, index) => {
      const ideas = ideasForBar(asked, bars, index);
      expect(ideas.length).toBeGreaterThanOrEqual(8);
      expect(showing(ideas, 'chord tones')).toBeGreaterThan(0);
      expect(showing(ideas, 'scale steps')).toBeGreaterThan(0);
      expect(showing(ideas, 'space')).toBeGreaterThan(0);
      expect(ideas.some((idea) => idea.notes[0]?.start !== 0)).toBe(true);
    });
  });

  test('are different, named by their notes, inside the bar and break no rule of a single bar', () => {
    fc.assert(
      fc.property(charts, wishes, fc.nat(11), (chart, wish, place) => {
        const asked = request(chart, wish);
        const { bars } = composeLine(asked);
        const index = place % asked.chart.bars.length;
        const ideas = ideasForBar(asked, bars, index);
        expect(new Set(ideas.map(textOf)).size).toBe(ideas.length);
        expect(new Set(ideas.map((idea) => idea.id)).size).toBe(ideas.length);
        const bar = asked.chart.bars[index];
        for (const idea of ideas) {
          let end = 0;
          for (const note of idea.notes) {
            expect(note.start).toBeGreaterThanOrEqual(end);
            end = note.start + note.duration;
          }
          expect(end).toBeLessThanOrEqual(bar ? barTicks(bar.metre) : 0);
          expect(idea.analysis.reason).toMatch(/^\S.*[^.]\.$/u);
          const trial = bars.map((notes, other) => (other === index ? idea.notes : notes));
          expect(barBreaches(asked, trial, index)).toEqual([]);
          for (const technique of idea.analysis.techniques) {
            expect(technique === 'chord tones' || asked.techniques.has(technique)).toBe(true);
          }
        }
      }),
      RUNS,
    );
  });

  test('come for an unwritten line, too', () => {
    const asked = request(CHART);
    expect(ideasForBar(asked, [], 2).length).toBeGreaterThanOrEqual(8);
  });

  test('there are none without a chord, and none outside the chart', () => {
    const asked = request('| N.C. | C |');
    expect(ideasForBar(asked, [[], []], 0)).toEqual([]);
    expect(ideasForBar(asked, [[], []], 7)).toEqual([]);
  });
});
