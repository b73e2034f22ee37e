import { describe, expect, test } from 'vitest';
import { deriveSheets, sampleLesson, studyFacts } from '../../src/core/lesson';
import { formOf } from '../../src/core/line/study/form';

describe('what is said of a line', () => {
  const read = [0, 1].flatMap((index) => {
    const lesson = sampleLesson(index, 'sample');
    return deriveSheets(lesson).flatMap((sheet) => {
      const piece = lesson.pieces.find(({ id }) => id === sheet.id);
      if (sheet.kind !== 'line' || piece?.kind !== 'line') return [];
      return [{ sheet, facts: studyFacts(piece, sheet, lesson.instrument) }];
    });
  });

  test('does not say a fact’s name again, which stands before it', () => {
    expect(read.length).toBeGreaterThan(0);
    for (const { name, sentence } of read.flatMap(({ facts }) => facts)) {
      expect(sentence).not.toMatch(new RegExp(`^(\\d+ )?${name}`, 'i'));
    }
  });

  test('counts every note once', () => {
    for (const { sheet, facts } of read) {
      const said = facts.find(({ name }) => name === 'Notes')?.sentence ?? '';
      const written = sheet.bars.reduce((sum, { notes }) => sum + notes.length, 0);
      expect(said).toMatch(new RegExp(`, ${written} in all\\.$`));
    }
  });

  test('gives no two parts of a form the same letter', () => {
    const shapes = Array.from({ length: 60 }, (_, bar) => ({ rhythm: `${bar}`, figure: '' }));
    const letters = formOf(
      shapes.map((_, bar) => [bar]),
      shapes,
    ).map(({ letter }) => letter);
    expect(new Set(letters).size).toBe(60);
    expect(letters.slice(24, 28)).toEqual(['y', 'z', 'a2', 'b2']);
  });
});
