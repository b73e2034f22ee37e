import { expect, test } from 'vitest';
import { metricWeights, syncopationsIn } from '../../src/core/line/study/syncopation';
import { describeWithReferenceData } from '../support/reference-data';

const rowsOf = (text: string): readonly (readonly string[])[] =>
  text
    .trim()
    .split('\n')
    .slice(1)
    .map((row) => row.split('\t'));
const numbers = (text: string): readonly number[] => text.split(' ').map(Number);
const grid = (text: string): readonly boolean[] => [...text].map((sign) => sign === '1');

/** H. C. Longuet-Higgins and C. S. Lee, Music Perception 1(4), 1984, with the worked examples of its authors and of L. M. Smith (2005), as H. Honing's LHL84 records them. */
describeWithReferenceData('the published measure of syncopation', 20, (read) => {
  test('the weights of the metres', () => {
    const rows = rowsOf(read('syncopation/lhl_weights.tsv'));
    expect(rows.length).toBeGreaterThan(5);
    for (const [metre, divisions = '', weights = ''] of rows) {
      expect(metricWeights(numbers(divisions)), metre).toEqual(numbers(weights));
    }
  });

  test('the strengths of the worked examples', () => {
    const rows = rowsOf(read('syncopation/lhl84_worked_examples.tsv'));
    // One row carries a remark in the place of its strengths.
    const told = rows.filter(([, , , strengths = '']) => /^(none|[\d+]+)$/.test(strengths));
    expect(told.length).toBe(rows.length - 1);
    for (const [durations, divisions = '', onsets = '', strengths = ''] of told) {
      const found = syncopationsIn(grid(onsets), metricWeights(numbers(divisions)));
      const published = strengths === 'none' ? [] : strengths.split('+').map(Number);
      expect(
        found.filter((strength) => strength > 0),
        durations,
      ).toEqual(published.filter((strength) => strength > 0));
    }
  });
});
