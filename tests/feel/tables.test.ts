import { describe, expect, test } from 'vitest';
import { barTicks, beatTicks, bpm } from '../../src/core/base';
import {
  FEELS,
  feelBeats,
  feelById,
  feelMetre,
  feelTempo,
  type Grid,
  homeMetre,
  readGrid,
  rhythmCellsOf,
  swingRatio,
} from '../../src/core/feel';
import { rhythmLevel } from '../../src/core/line/level';

const rows = FEELS.flatMap((feel) =>
  feel.metres.map((metre) => ({
    name: `${feel.id} ${metre.metre.count}/${metre.metre.unit}`,
    feel,
    metre,
    cells: rhythmCellsOf(feel.id, metre.metre) ?? [],
  })),
);

const DIVISIONS = [1, 2, 3, 4, 6, 8];

/** Steps of a grid a beat; a grid must divide every beat evenly. */
function stepsABeat(grid: Grid, metre: (typeof rows)[number]['metre']['metre']): number {
  return (grid.length * beatTicks(metre)) / barTicks(metre);
}

// In cut time the half note is the beat (Open Music Theory, "Simple meter and time signatures"): half the number.
test('a tempo counts the beat of the metre: half notes in 2/2', () => {
  const ska = feelById('revival-ska');
  expect(feelTempo(ska, { count: 4, unit: 4 })).toEqual({ least: 140, usual: 158, most: 180 });
  expect(feelTempo(ska, { count: 2, unit: 2 })).toEqual({ least: 70, usual: 79, most: 90 });
  for (const { feel, metre } of rows) {
    const quarters = feelBeats(feel, metre.metre) * 960;
    if (metre.metre.unit !== 8) expect(quarters).toBe(beatTicks(metre.metre));
  }
});

describe('every feel', () => {
  test.each(FEELS.map((feel) => [feel.id, feel] as const))('%s has what a teacher needs', (id, feel) => {
    expect(feelById(id)).toBe(feel);
    expect(feel.name).not.toBe('');
    expect(feel.description).toMatch(/^[A-Z].*\.$/);
    expect(feel.tempo.least).toBeLessThanOrEqual(feel.tempo.usual);
    expect(feel.tempo.usual).toBeLessThanOrEqual(feel.tempo.most);
    expect(feel.tempo.source).not.toBe('');
    expect([2, 4]).toContain(feel.phraseLength);
    expect(feelMetre(feel, homeMetre(feel))).toBe(feel.metres[0]);
    expect(feel.silence.least).toBeGreaterThanOrEqual(0);
    expect(feel.silence.least).toBeLessThanOrEqual(0.5);
    expect(feel.bassTouch.source).not.toBe('');
  });

  test.each(FEELS.map((feel) => [feel.id, feel] as const))(
    '%s weighs its techniques and names figures',
    (_, feel) => {
      const { chordTones, scaleSteps, space, source } = feel.weights;
      for (const weight of [chordTones, scaleSteps, space]) {
        expect(weight).toBeGreaterThanOrEqual(0);
        expect(weight).toBeLessThanOrEqual(1);
      }
      expect(source).not.toBe('');
      expect(feel.figures.length).toBeGreaterThan(0);
      for (const figure of feel.figures) {
        expect(figure.shape).toMatch(/^[R2-8],?( [R2-8],?)*$/);
        expect(figure.source).not.toBe('');
      }
    },
  );

  test('ids and names are different', () => {
    expect(new Set(FEELS.map((feel) => feel.id)).size).toBe(FEELS.length);
    expect(new Set(FEELS.map((feel) => feel.name)).size).toBe(FEELS.length);
  });

  test('swing tables ascend and stay between straight and three to one', () => {
    for (const feel of FEELS) {
      expect(feel.swing.length).toBeGreaterThan(0);
      feel.swing.forEach(({ bpm: tempo, ratio }, index) => {
        expect(ratio).toBeGreaterThanOrEqual(1);
        expect(ratio).toBeLessThanOrEqual(3.5);
        expect(tempo).toBeGreaterThan(feel.swing[index - 1]?.bpm ?? 0);
      });
    }
  });
});

describe.each(rows)('$name', ({ metre, cells }) => {
  const grids = [...metre.drums, ...metre.fill, metre.chops, metre.organ.left, metre.organ.right, ...cells];

  test('every grid divides the beat, uses the signs and names its source', () => {
    for (const { grid, source } of grids) {
      expect(grid).toMatch(/^[xXo=-]+$/);
      expect(DIVISIONS).toContain(stepsABeat(grid, metre.metre));
      expect(grid).not.toMatch(/^=|-=/);
      expect(source).not.toBe('');
    }
  });

  test('the drummer’s variants fit the metre and differ from its pattern', () => {
    const { hats = [], strokes = [] } = metre.variants ?? {};
    for (const { grid, source } of [...hats.flat(), ...strokes]) {
      expect(grid).toMatch(/^[xXosg-]+$/);
      expect(DIVISIONS).toContain(stepsABeat(grid, metre.metre));
      expect(source).not.toBe('');
    }
    const known = new Set(metre.drums.map(({ sound, grid }) => `${sound} ${grid}`));
    for (const rows of [...hats, ...strokes.map((row) => [row])]) {
      expect(rows.every(({ sound, grid }) => known.has(`${sound} ${grid}`))).toBe(false);
    }
  });

  test('the drummer’s dressing fits the metre and is in tenths of a chance', () => {
    for (const { grid, source } of metre.dressing ?? []) {
      expect(grid).toMatch(/^[1-9-]+$/);
      expect(DIVISIONS).toContain(stepsABeat(grid, metre.metre));
      expect(source).not.toBe('');
    }
  });

  test('drums have one row a sound and never hold', () => {
    for (const set of [metre.drums, metre.fill]) {
      expect(new Set(set.map((row) => row.sound)).size).toBe(set.length);
      for (const row of set) expect(row.grid).not.toContain('=');
    }
    expect(metre.fill).not.toEqual(metre.drums);
  });

  test('cells are different rhythms', () => {
    expect(new Set(cells.map((cell) => cell.grid)).size).toBe(cells.length);
  });

  test('no cell asks for more rhythm than its level allows', () => {
    for (const cell of cells) {
      const asked = rhythmLevel(readGrid(cell.grid, metre.metre), metre.metre);
      expect(`${cell.grid} ${cell.level >= asked}`).toBe(`${cell.grid} true`);
      expect(cell.level).toBeLessThanOrEqual(5);
    }
  });

  test('there are rhythms enough, with and without beat one', () => {
    expect(cells.length).toBeGreaterThanOrEqual(10);
    expect(cells.some(({ level }) => level === 0)).toBe(true);
    expect(cells.filter((cell) => cell.grid.startsWith('x')).length).toBeGreaterThanOrEqual(3);
    expect(cells.filter((cell) => cell.grid.startsWith('-')).length).toBeGreaterThanOrEqual(3);
  });
});

describe('swing', () => {
  test('early ska swings less when it is faster, linearly and no further than its ends', () => {
    const ska = feelById('early-ska');
    expect(swingRatio(ska, bpm(60))).toBeCloseTo(1.7);
    expect(swingRatio(ska, bpm(110))).toBeCloseTo(1.7);
    expect(swingRatio(ska, bpm(125))).toBeCloseTo(1.45);
    expect(swingRatio(ska, bpm(140))).toBeCloseTo(1.2);
    expect(swingRatio(ska, bpm(220))).toBeCloseTo(1.2);
  });

  test('a feel with one entry swings the same at every tempo', () => {
    const drop = feelById('one-drop');
    expect(swingRatio(drop, bpm(60))).toBe(swingRatio(drop, bpm(200)));
  });
});
