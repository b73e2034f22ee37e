import { describe, expect, test } from 'vitest';
import { checkLesson, composePiece } from '../../src/core/composing';
import { FEELS } from '../../src/core/feel';
import { sampleLesson, setFeel, setLevel } from '../../src/core/lesson';
import { LEVELS } from '../../src/core/line';

/** What the lesson check says that the hand has no time for, or cannot reach. */
const IMPOSSIBLE = /for the shift from|in one position ask for/u;

describe.each(FEELS)('a line of $name', ({ id }) => {
  // Funk at level 4 had 0.08 seconds for a shift by four frets.
  test.each(LEVELS)(
    'at level %i asks nothing of the hand that it has no time for or cannot reach',
    (level) => {
      const sample = sampleLesson(0, 'sample');
      const piece = sample.pieces[0]?.id ?? '';
      const { lesson } = composePiece(setLevel(setFeel(sample, piece, id), piece, level), piece);
      const said = checkLesson(lesson).map(({ message }) => message);
      expect(said.filter((message) => IMPOSSIBLE.test(message))).toEqual([]);
    },
  );
});
