import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldersOf, names, type PacketWishes } from '../../src/core/students';

/** Names as nobody should give them, beside such as people have. */
const hostile = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: 'grapheme', maxLength: 80 }),
  fc.constantFrom(
    ...['../../etc/passwd', 'CON', 'nul', 'Lpt1', 'a/b\\c:d', '.', '..', '', ' ', 'İ', 'ß', '😀', '.hidden'],
    ...[
      'Ada',
      'ADA',
      'Ada.',
      'Ada Lovelace',
      'Łukasz',
      '美咲',
      '𝔸𝕕𝕒',
      '\u202egnp.exe',
      'x'.repeat(300),
      '𠮷'.repeat(200),
    ],
  ),
);

const wishes: fc.Arbitrary<PacketWishes> = fc
  .record({
    names: fc.array(hostile, { maxLength: 5 }),
    students: fc.array(hostile, { minLength: 1, maxLength: 8 }),
    picks: fc.array(fc.nat({ max: 6 }), { minLength: 8, maxLength: 8 }),
    isClass: fc.boolean(),
    named: fc.boolean(),
  })
  .map(({ names: called, students, picks, isClass, named }) => ({
    versions: called.map((name, index) => ({ id: `version-${index}`, name })),
    tune: 'the tune itself',
    members: isClass
      ? students.map((name, index) => ({ name, version: picks[index] ? `version-${picks[index]}` : null }))
      : null,
    named,
    students,
  }));

const runs = { seed: 11, numRuns: 300 };

describe('the folders of a packet', () => {
  test('have names that are plain, no other folder’s, and safe on every system', () => {
    fc.assert(
      fc.property(wishes, (wished) => {
        const folders = foldersOf(wished).map(({ name }) => name);
        for (const name of folders) {
          expect(name).toMatch(/^[\p{L}\p{N}]+(-[\p{L}\p{N}]+)*$/u);
          expect(name).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)$/i);
          expect(Buffer.from(name, 'utf8').toString('utf8')).toBe(name);
          expect(Buffer.byteLength(name)).toBeLessThanOrEqual(255);
        }
        expect(new Set(folders.map((name) => name.toUpperCase())).size).toBe(folders.length);
      }),
      runs,
    );
  });

  test('give each member what they have, and each version that someone has its folder', () => {
    fc.assert(
      fc.property(wishes, (wished) => {
        const folders = foldersOf(wished);
        const ids = wished.versions.map(({ id }) => id);
        if (wished.members === null) {
          expect(folders.map(({ version }) => version)).toEqual([null, ...ids]);
          return;
        }
        const had = wished.members.map(({ version }) => (ids.includes(version ?? '') ? version : null));
        const holders = folders.flatMap(({ version, students }) => students.map((name) => [name, version]));
        expect([...holders].sort()).toEqual(
          wished.members.map(({ name }, index) => [name, had[index]]).sort(),
        );
        if (wished.named) expect(folders.map(({ version }) => version)).toEqual(had);
        else expect(new Set(folders.map(({ version }) => version)).size).toBe(folders.length);
      }),
      runs,
    );
  });

  test('say no student’s name that is not ticked', () => {
    fc.assert(
      fc.property(wishes, (wished) => {
        const kept = wished.students
          .map((name) => name.trim())
          .filter((name) => /^[\p{L}\p{N} ]{3,}$/u.test(name));
        // What stands in for a name, and the tune, are no names.
        for (const { called } of foldersOf({ ...wished, named: false }))
          for (const name of kept)
            if (!names(name, 'a student') && !names(name, wished.tune))
              expect(names(name, called)).toBe(false);
      }),
      runs,
    );
    const [tune, one, two] = foldersOf({
      versions: [
        { id: 'v1', name: 'for Ada Lovelace' },
        { id: 'v2', name: 'for ada, in F' },
      ],
      tune: 'the tune itself',
      members: null,
      named: false,
      students: ['Ada', 'Ada Lovelace'],
    });
    expect([tune?.name, one?.name, two?.name]).toEqual([
      'the-tune-itself',
      'for-a-student',
      'for-a-student-in-f',
    ]);
  });
});
