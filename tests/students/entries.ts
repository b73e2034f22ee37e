import fc from 'fast-check';
import { HAND_SPANS } from '../../src/core/fretboard';
import { newLesson } from '../../src/core/lesson';
import { LEVELS } from '../../src/core/line';
import { type Given, newStudent, type Student } from '../../src/core/students';
import { NAMINGS } from '../../src/core/theory';

export const student = (id: string, name: string, change: Partial<Student> = {}): Student => ({
  ...newStudent({
    id,
    name,
    instrument: newLesson('l', '').instrument,
    hand: HAND_SPANS.adult,
    level: 2,
    noteNames: 'letters',
  }),
  ...change,
});

export const given = (lesson: string, day = '2026-11-02', change: Partial<Given> = {}): Given => ({
  lesson,
  version: null,
  title: `Lesson ${lesson}`,
  day,
  tempo: null,
  mend: '',
  ...change,
});

const day = fc
  .tuple(
    fc.integer({ min: 2020, max: 2030 }),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 28 }),
  )
  .map(([year, month, date]) =>
    [year, String(month).padStart(2, '0'), String(date).padStart(2, '0')].join('-'),
  );

const anyGiven: fc.Arbitrary<Given> = fc.record({
  lesson: fc.constantFrom('one', 'two', 'three'),
  version: fc.constantFrom(null, 'version-1'),
  title: fc.string({ maxLength: 30 }),
  day,
  tempo: fc.option(fc.integer({ min: 20, max: 400 }), { nil: null }),
  mend: fc.string({ maxLength: 40 }),
});

export const anyStudent: fc.Arbitrary<Student> = fc
  .record({
    name: fc.string({ minLength: 1, maxLength: 30 }),
    level: fc.constantFrom(...LEVELS),
    noteNames: fc.constantFrom(...NAMINGS),
    notes: fc.string({ maxLength: 60 }),
    given: fc.uniqueArray(anyGiven, {
      maxLength: 6,
      selector: ({ lesson, version, day: on }) => `${lesson} ${version} ${on}`,
    }),
  })
  .map((change) => student('student-1', change.name, change));
