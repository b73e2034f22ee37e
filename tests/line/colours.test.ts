import { describe, expect, test } from 'vitest';
import { FEELS, homeMetre } from '../../src/core/feel';
import { checkLine, composeLine, type Level, levelLimits, type Technique } from '../../src/core/line';
import { modelOf } from '../../src/core/line/read-request';
import { request } from './notation';

/*
 * What readers named as notes of the wrong colour stood where a chord has a sixth and no seventh, over diminished chords,
 * over plain triads and over the dominant before the beginning: these charts have them all.
 */
const CHARTS = [
  '| C | Cm6 | G | Bdim | Em | F | Dm6 G7 | C G |',
  '| F6 | F♯dim7 | Gm | C7 | Am7♭5 | B♭ | B♭m6 C | F C7 |',
] as const;

const TAUGHT: readonly Technique[] = ['chord tones', 'scale steps', 'long silences', 'approach note'];

const LEVELS: readonly Level[] = [0, 1, 2, 3, 4, 5];

/** A third of the feels at each level, every feel at two of them, over one of the charts. */
const CASES = LEVELS.flatMap((level) =>
  FEELS.flatMap((feel, index) =>
    index % 3 === level % 3
      ? [{ level, feel, name: feel.name, chart: CHARTS[(index + level) % 2] ?? '' }]
      : [],
  ),
);

describe('no note of another chord stands out', () => {
  test.each(CASES)('$name at level $level over $chart', ({ level, feel, chart }) => {
    const metre = homeMetre(feel);
    const asked = request(chart, { feel: feel.id, level, metre, techniques: TAUGHT });
    const found = checkLine(asked, composeLine(asked).bars).filter(({ rule }) => rule === 16);
    expect(found.map(({ message }) => message)).toEqual([]);
  });
});

test('a bar of two chords is no quicker than its level', () => {
  const tempo = 126;
  const most = (levelLimits(0).notesPerSecond * 4 * 60) / tempo;
  for (const seed of [1, 2, 3, 4, 5, 6]) {
    const asked = request('| D | D G | A | D | G A | D A |', { feel: 'early-ska', level: 0, tempo, seed });
    for (const bar of composeLine(asked).bars) expect(bar.length).toBeLessThanOrEqual(most);
  }
});

describe('what a chord leaves open', () => {
  /** Half steps of a step above the root of a bar's chord. */
  const stepIn = (chart: string, bar: number, step: number) =>
    modelOf(request(chart)).bars[bar]?.stretches[0]?.steps[step - 1]?.halfSteps;

  test('is its own third where it is suspended, whatever sounds around it', () => {
    expect(stepIn('| E♭/G | G♭7 | Fm7 | B♭7sus4 | E♭ |', 3, 3)).toBe(4);
  });

  test('is no fourth that a passing diminished chord raises', () => {
    expect(stepIn('| F | F♯dim7 | C/G | A7 |', 2, 4)).toBe(5);
  });

  test('is what a neighbour sounds', () => {
    expect(stepIn('| F | Dm | G7 | C |', 1, 6)).toBe(9);
  });
});
