import { expect, test } from 'vitest';
import { engrave } from '../../src/score/engrave';
import type { SignSpec } from '../../src/score/signs/types';
import { beamInk } from '../../src/score/vexflow/signs';
import { SCORE_FIXTURES } from '../support/score-fixtures';

const eighth = (height: number): SignSpec => ({
  kind: 'note',
  value: 8,
  dots: 0,
  height,
  accidental: null,
  courtesy: false,
  ghost: false,
  stem: 'up',
  // Notes that can have several heads are the engraving library's objects, which are used again.
  heads: [{ height, accidental: null, courtesy: false, cross: false }],
});

/** The same for the engraver, and another for what is remembered by its words. */
const another = (spec: SignSpec, time: number): SignSpec => Object.assign({ time }, spec);

test('notes that stood under a beam before stand under the next one as if they were new', () => {
  const places = [
    [0, 24],
    [0, 61.5],
    [0, 24],
    [0, 33.3],
  ];
  for (const [low, high] of [
    [-6, -1],
    [-1, -7],
    [-3, -3],
  ] as const) {
    const specs = [eighth(low), eighth(high)];
    for (const [time, place] of places.entries()) {
      const anew = specs.map((spec) => another(spec, time));
      const marks = beamInk(specs, place);
      expect(marks).toEqual(beamInk(anew, place));
      expect(marks.filter(({ role }) => role === 'stem')).toHaveLength(2);
    }
  }
});

test('bars that were measured at one width are broken into other systems at another', () => {
  const make = SCORE_FIXTURES['busy-16'];
  if (!make) throw new Error('The fixture is gone.');
  const sheet = make();
  const at = (width: number) =>
    engrave(sheet, {
      width,
      degrees: true,
      fingers: true,
      counting: false,
      barsPerSystem: 4,
      measureNumbers: true,
    }).systems;
  const [wide, narrow] = [at(1300), at(420)];
  expect(narrow.length).toBeGreaterThan(wide.length);
  expect(at(1300)).toEqual(wide);
  for (const [width, systems] of [
    [1300, wide],
    [420, narrow],
  ] as const) {
    for (const system of systems.slice(0, -1)) {
      expect(system.width).toBe(width);
      const last = system.bars.at(-1);
      expect((last?.x ?? 0) + (last?.width ?? 0)).toBeLessThanOrEqual(width + 0.01);
    }
  }
});
