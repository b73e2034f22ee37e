/**
 * Notes with one head are worked out from tables, others by the engraving library. A note whose one head is given as
 * one of several goes through the library: both have to draw the same.
 */
import { expect, test } from 'vitest';
import type { Mark } from '../../src/score/ink';
import type { SignSpec } from '../../src/score/signs/types';
import { beamInk, signInk } from '../../src/score/vexflow/signs';

const VALUES = [1, 2, 4, 8, 16, 32, 64] as const;
const ACCIDENTALS = [null, 'b', 'n', '#', '##', 'bb'] as const;
const HEIGHTS = Array.from({ length: 23 }, (_, index) => index - 11);

const note = (spec: Partial<SignSpec>): SignSpec => ({
  kind: 'note',
  value: 4,
  dots: 0,
  height: 0,
  accidental: null,
  courtesy: false,
  ghost: false,
  stem: 'up',
  ...spec,
});

const amongSeveral = (spec: SignSpec): SignSpec => ({
  ...spec,
  heads: [{ height: spec.height, accidental: spec.accidental, courtesy: spec.courtesy, cross: spec.ghost }],
});

/** Numbers that the same place has when it is worked out in another order. */
const NEAR = 1e-6;

const isSame = (one: unknown, other: unknown): boolean => {
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) < NEAR;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other;
  const names = Object.keys({ ...one, ...other });
  return names.every((name) => isSame(Reflect.get(one, name), Reflect.get(other, name)));
};

/** Shows what differs only where something does: there are thousands of them. */
function expectSameInk(own: readonly Mark[], library: readonly Mark[], of: unknown): void {
  if (own.length > 0 && isSame(own, library)) return;
  expect(own, JSON.stringify(of)).toEqual(library);
  expect(own, 'nothing is drawn').not.toEqual([]);
}

const expectSame = (spec: SignSpec, beamed: boolean): void =>
  expectSameInk(signInk(spec, beamed), signInk(amongSeveral(spec), beamed), spec);

test.each(VALUES)('a note of value %i stands where the library puts it, at every height', (value) => {
  for (const height of HEIGHTS)
    for (const stem of ['up', 'down'] as const)
      for (const dots of [0, 1] as const)
        for (const ghost of [false, true]) expectSame(note({ value, height, stem, dots, ghost }), false);
});

test('so do accidentals, in brackets and without', () => {
  for (const accidental of ACCIDENTALS)
    for (const courtesy of [false, true])
      for (const height of [-9, -5, 0, 3, 8])
        for (const value of [1, 4, 8])
          expectSame(note({ accidental, courtesy, height, value, dots: 1 }), false);
});

test('rests stand in the middle of the staff with their dots', () => {
  for (const value of VALUES)
    for (const dots of [0, 1] as const)
      for (const stem of ['up', 'down'] as const) {
        for (const height of [0, -3]) expectSame(note({ kind: 'rest', value, dots, stem, height }), false);
      }
});

test('beams rise and fall, and join what they join, as in the library', () => {
  let seed = 5;
  const next = (below: number): number => {
    seed = (seed * 1_103_515_245 + 12_345) & 0x7fffffff;
    return (seed >> 8) % below;
  };
  for (let round = 0; round < 400; round += 1) {
    const stem = next(2) === 0 ? 'up' : 'down';
    const specs = Array.from({ length: 2 + next(5) }, () =>
      note({
        value: 8 << next(4),
        height: next(23) - 11,
        stem,
        dots: next(2) === 0 ? 0 : 1,
        ghost: next(9) === 0,
      }),
    );
    let place = next(400) + 0.37;
    const centres = specs.map(() => {
      place += 12 + next(900) / 10;
      return place;
    });
    for (const spec of specs) expectSame(spec, true);
    expectSameInk(beamInk(specs, centres), beamInk(specs.map(amongSeveral), centres), [specs, centres]);
  }
});
