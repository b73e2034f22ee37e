import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkLesson } from '../../src/core/composing';
import { deriveSheets, describeLessonProblem, parseLesson, printLesson } from '../../src/core/lesson';
import { garbledLessons, mutatedLessons } from '../support/mutated-lessons';

/*
 * Whatever comes in as a lesson file. `HOSTILE_RUNS` asks for a longer run than the test command's,
 * `HOSTILE_SEED` for another one; both are printed, so that a run can be had again.
 */
const RUNS = Number(process.env.HOSTILE_RUNS ?? 300);
const SEED = Number(process.env.HOSTILE_SEED ?? 5);
/** Nothing of a page may take longer than a second of the processor. */
const LONGEST_MS = 1000;

describe('hostile lesson files', () => {
  it('are refused in a sentence, or can be shown, checked and saved', () => {
    let read = 0;
    let longest = 0;
    fc.assert(
      fc.property(
        fc.oneof({ weight: 4, arbitrary: mutatedLessons }, { weight: 1, arbitrary: garbledLessons }),
        (text) => {
          const before = process.cpuUsage();
          const parsed = parseLesson(text);
          if (parsed.ok) {
            read += 1;
            const sheets = deriveSheets(parsed.value);
            expect(sheets).toHaveLength(parsed.value.pieces.length);
            checkLesson(parsed.value);
            expect(parseLesson(printLesson(parsed.value))).toEqual(parsed);
          } else expect(describeLessonProblem(parsed.problem)).toMatch(/Nothing was changed\.$/);
          const { user, system } = process.cpuUsage(before);
          longest = Math.max(longest, (user + system) / 1000);
        },
      ),
      { seed: SEED, numRuns: RUNS },
    );
    process.stdout.write(
      `Hostile lesson files: ${RUNS} with seed ${SEED}, ${read} of them read; the longest took ${Math.round(longest)} ms.\n`,
    );
    expect(longest).toBeLessThan(LONGEST_MS);
  }, 7_200_000);
});
