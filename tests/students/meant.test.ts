import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meantFor, newClass, versionGiven } from '../../src/core/students';
import { given, student } from './entries';

const versions = [
  { id: 'v1', name: 'for Wednesday’s class' },
  { id: 'v2', name: 'for Al' },
  { id: 'v3', name: 'Also in E flat' },
];
const lesson = { lesson: 'one', versions };
const wednesday = newClass('c', 'Wednesday');
const nobody = newClass('c', 'Friday');

test('to a member goes what is called for them, then what they had, then what is called for the class', () => {
  const had = (version: string | null) => [given('one', '2026-11-02', { version })];
  expect(meantFor(student('a', 'al', { given: had('v3') }), wednesday, lesson)).toBe('v2');
  expect(meantFor(student('a', 'Bo', { given: had('v3') }), wednesday, lesson)).toBe('v3');
  expect(meantFor(student('a', 'Bo', { given: had(null) }), wednesday, lesson)).toBe('v1');
  expect(meantFor(student('a', 'Bo'), wednesday, lesson)).toBe('v1');
  expect(meantFor(student('a', 'Bo'), nobody, lesson)).toBeNull();
  expect(meantFor(student('a', 'Bo', { given: had('removed since') }), nobody, lesson)).toBeNull();
});

test('what a student has of a lesson is what was given last, by day and then in the order of giving', () => {
  const one = student('a', 'Ada', {
    given: [
      given('one', '2026-11-09', { version: 'v1' }),
      given('one', '2026-11-02', { version: 'v3' }),
      given('two', '2026-11-16', { version: 'v2' }),
    ],
  });
  expect(versionGiven(one, lesson)).toBe('v1');
  expect(
    versionGiven({ given: [...one.given, given('one', '2026-11-09', { version: null })] }, lesson),
  ).toBeNull();
});

test('what is meant or given is a version that there is, or none', () => {
  const some = fc.constantFrom(null, 'v1', 'v2', 'v3', 'gone');
  fc.assert(
    fc.property(fc.string(), fc.string(), fc.array(some, { maxLength: 4 }), (name, group, had) => {
      const one = student('a', name, {
        given: had.map((version, day) => given('one', `2026-11-0${day + 1}`, { version })),
      });
      const ids = [null, ...versions.map(({ id }) => id)];
      expect(ids).toContain(meantFor(one, newClass('c', group), lesson));
      expect(ids).toContain(versionGiven(one, lesson));
    }),
    { seed: 7, numRuns: 100 },
  );
});
