import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barTicks, midiOf } from '../../src/core/base';
import { FEELS } from '../../src/core/feel';
import {
  barBreaches,
  composeLine,
  type Idea,
  ideaOffer,
  ideasForBar,
  type Technique,
} from '../../src/core/line';
import { charts, wishes } from './charts';
import { request } from './notation';

const RUNS = { numRuns: 8, seed: 20260102 };
const CHART = '| F | C7 | F | C7 | B♭ | Gm Am | C7sus4 | F/A |';

const textOf = (idea: Idea): string =>
  idea.notes.map((note) => `${note.start} ${note.duration} ${midiOf(note.pitch)}`).join(', ');

const showing = (ideas: readonly Idea[], technique: Technique): number =>
  ideas.filter((idea) => idea.analysis.techniques.includes(technique)).length;

/** The most notes in a row by step in one direction. */
function longestWalk({ notes }: Idea): number {
  const moves = notes.slice(1).map((note, at) => midiOf(note.pitch) - midiOf((notes[at] ?? note).pitch));
  let [longest, now] = [1, 1];
  moves.forEach((move, at) => {
    const onward = at > 0 && move * (moves[at - 1] ?? 0) > 0;
    now = move === 0 || Math.abs(move) > 2 ? 1 : onward ? now + 1 : 2;
    longest = Math.max(longest, now);
  });
  return longest;
}

describe('ideas for every bar', () => {
  test.each([
    ['early-ska', 3],
    ['early-ska', 5],
    ['one-drop', 3],
    ['one-drop', 4],
  ] as const)('%s, level %i: eight at least, across the three techniques', (feel, level) => {
    const techniques = ['chord tones', 'scale steps', 'beat one silent', 'long silences'] as const;
    const asked = request(CHART, { feel, level, techniques });
    const { bars } = composeLine(asked);
    asked.chart.bars.forEach((_, index) => {
      const ideas = ideasForBar(asked, bars, index);
      expect(ideas.length).toBeGreaterThanOrEqual(8);
      expect(showing(ideas, 'chord tones')).toBeGreaterThan(0);
      expect(showing(ideas, 'scale steps')).toBeGreaterThan(0);
      expect(showing(ideas, 'beat one silent')).toBeGreaterThan(0);
      expect(ideas.some((idea) => idea.notes[0]?.start !== 0)).toBe(true);
    });
  });

  /** One of each kind of chord that a chart may hold, a slash chord, a suspended one and a split bar. */
  const CHORDS = [
    'C',
    'Am7',
    'G7',
    'B♭maj7',
    'Bm7♭5',
    'C/E',
    'Fsus4',
    'F♯dim7',
    'D9',
    'Eaug',
    'Dm7 G7',
    'D♭',
  ];

  test.each(FEELS.map((feel) => [feel.id, feel] as const))(
    '%s: at least eight in every metre from level 2 up, and a sentence where there are fewer below it',
    (id, feel) => {
      for (const { metre } of feel.metres) {
        for (const level of [1, 2, 4] as const) {
          const asked = request(`| ${CHORDS.join(' | ')} |`, { feel: id, level, metre, key: 'C' });
          CHORDS.forEach((_, index) => {
            const { ideas, remark } = ideaOffer(asked, [], index);
            expect(ideas.length).toBeGreaterThanOrEqual(level < 2 ? 1 : 8);
            expect(remark === null).toBe(ideas.length >= 8);
            expect(new Set(ideas.map(textOf)).size).toBe(ideas.length);
          });
        }
      }
    },
  );

  test('a walk of several notes may take the last beats or the whole bar, and lands by step on the next root', () => {
    const lengths = new Set<number>();
    let longest = 0;
    for (const feel of ['walking-swing', 'revival-ska', 'disco', 'early-ska'] as const) {
      const asked = request('| C | F | C | G7 | Am | D7 | G | C |', { feel, level: 4 });
      const { bars } = composeLine(asked);
      asked.chart.bars.forEach((_, index) => {
        for (const idea of ideasForBar(asked, bars, index)) {
          const walk = /([A-G♭♯–]+) walks (?:up|down) by step/u.exec(idea.analysis.reason)?.[1];
          if (walk) lengths.add(walk.split('–').length);
          longest = Math.max(longest, longestWalk(idea));
        }
      });
    }
    expect([...lengths].sort((one, other) => one - other).slice(0, 3)).toEqual([2, 3, 4]);
    expect(longest).toBeGreaterThanOrEqual(5);
  });

  test.each([
    [
      '| N.C. | C |',
      0,
      0,
      'Bar 1 has no chord, so the bass rests there; write a chord and ideas come with it.',
    ],
    [
      '| Xyz | C |',
      0,
      0,
      'Bar 1: the chord “Xyz” is not understood, so there is nothing to build an idea on.',
    ],
    ['| C | F |', 5, 0, 'The chart has no such bar.'],
    ['(1) | C | F |', 0, 1, /^The pickup is a single beat long, so there (is one idea|are \d ideas): more/],
  ] as const)('%s, bar %i: a sentence says why there are so few', (chart, bar, least, sentence) => {
    const { ideas, remark } = ideaOffer(request(chart, { feel: 'early-ska' }), [], bar);
    expect(ideas.length).toBeGreaterThanOrEqual(least);
    expect(remark).toMatch(sentence);
  });

  test('a bar of four chords, a last bar and a pickup of two beats have ideas', () => {
    for (const [chart, bar] of [
      ['| G7 C F C | C |', 0],
      ['| F | C |', 1],
      ['(2) | C | F |', 0],
    ] as const) {
      expect(ideasForBar(request(chart, { feel: 'early-ska' }), [], bar).length).toBeGreaterThanOrEqual(8);
    }
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

  test.each(['one-drop', 'rocksteady'] as const)(
    '%s: are those of the line as it stands, whatever was asked about before',
    (feel) => {
      const asked = request(CHART, { feel });
      const [first = [], second = []] = [1, 2].map((seed) => composeLine({ ...asked, seed }).bars);
      // One bar after the other is written anew: the line is heard again in part.
      second.forEach((_, bar) => {
        const line = first.map((notes, place) => (place <= bar ? (second[place] ?? []) : notes));
        const next = (bar + 1) % line.length;
        const offer = ideaOffer(asked, line, next);
        // Of a chart that is another object nothing is known.
        const fresh = { ...asked, chart: { ...asked.chart } };
        if (bar % 3 === 0) expect(offer).toEqual(ideaOffer(fresh, line, next));
      });
    },
  );

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
