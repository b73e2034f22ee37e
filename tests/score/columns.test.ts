import { describe, expect, test } from 'vitest';
import { measureBar } from '../../src/score/layout/measure-bar';
import { styleOf } from '../../src/score/layout/style';
import { contentOf } from '../../src/score/notation/content';
import { finished } from '../../src/score/steps';
import type { ScoreOptions } from '../../src/score/types';
import { NOTES_ONLY, sheetOf } from '../support/score-sheets';

/** How near the first column of a bar the second may stand, in tenths of a staff space. */
function nearest(notes: string, more: Partial<ScoreOptions> = {}): number {
  const options = { ...NOTES_ONLY, ...more };
  const sheet = sheetOf({ key: 'C', chart: '| C |', notes: `${notes} r/3.5` });
  const [bar] = finished(contentOf(sheet, options)).bars;
  if (bar === undefined) throw new Error('no bar');
  return measureBar(bar, styleOf(options, 1)).columns[0]?.toNext ?? Number.NaN;
}

// E. Gould, "Behind Bars" (2011), accidentals: they may stand over or under what is before them (from memory).
describe('a sign before a note', () => {
  test('stands over or under the head before it, where there is white', () => {
    const beside = nearest('F2/.25 F♯2/.25');
    expect(nearest('C2/.25 A♯2/.25')).toBeLessThan(beside - 6);
    expect(nearest('A2/.25 F♯1/.25')).toBeLessThan(beside - 6);
  });

  test('never lets heads come nearer than without it', () => {
    expect(nearest('C2/.25 A♯2/.25')).toBeGreaterThanOrEqual(nearest('C2/.25 A2/.25'));
  });

  test('keeps beside a stem that leads where it stands', () => {
    // Both stems lead up, and the sharp is over the low head.
    expect(nearest('E1/.25 C♯2/.25')).toBeGreaterThan(nearest('E1/.25 C2/.25') + 8);
  });
});

test('what stands in two rows does not hold off each other', () => {
  const notes = 'F3/.25 F♯3/.25';
  const [staff, tab] = [nearest(notes, { parts: 'staff' }), nearest(notes, { parts: 'tab' })];
  expect(tab).toBeGreaterThan(15);
  expect(nearest(notes)).toBeLessThanOrEqual(Math.max(staff, tab) + 0.01);
});
