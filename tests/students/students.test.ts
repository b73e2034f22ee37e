import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HAND_SPANS } from '../../src/core/fretboard';
import { newLesson, parseLesson, printLesson, setHandout } from '../../src/core/lesson';
import { shelfEntries, shelfWriter } from '../../src/core/shelf';
import {
  describeEntryProblem,
  type Entry,
  entriesNaming,
  entriesToAdd,
  forgetStudent,
  giveLesson,
  isNamedIn,
  lessonFor,
  membersByName,
  membersOf,
  moveMember,
  names,
  newClass,
  newSeries,
  REGISTER_LIMITS,
  readEntry,
  setGiven,
  setMember,
  takeBack,
  tidyName,
  toMend,
  withoutEntry,
} from '../../src/core/students';
import { addVersion } from '../../src/core/versions';
import { anyStudent, given, student } from './entries';

const runs = { seed: 7, numRuns: 60 };

describe('an entry of the register', () => {
  test('is read as it was written', () => {
    fc.assert(
      fc.property(anyStudent, (one) => {
        expect(readEntry(JSON.parse(JSON.stringify(one)))).toEqual({ ok: true, value: one });
      }),
      runs,
    );
  });

  test('that is damaged, foreign or of a newer copy is told apart, in a sentence', () => {
    const ada = student('a', 'Ada');
    const problem = (value: unknown) => {
      const read = readEntry(value);
      return read.ok ? null : read.problem.kind;
    };
    expect(problem({ ...ada, level: 9 })).toBe('damaged');
    expect(problem({ ...ada, name: 'x'.repeat(REGISTER_LIMITS.name + 1) })).toBe('damaged');
    expect(problem({ ...ada, given: [{ ...given('one'), day: 'Monday' }] })).toBe('damaged');
    expect(problem({ ...ada, version: 2, level: 9 })).toBe('newer');
    expect(problem('Ada')).toBe('foreign');
    expect(problem(newLesson('l', ''))).toBe('foreign');
    expect(problem({ ...newClass('c', 'Wednesday'), members: ['a', 'a'] })).toBe('damaged');
    expect(describeEntryProblem({ kind: 'damaged', where: 'given › 1 › day' })).toContain('given › 1 › day');
  });

  test('whatever is read of anything is an entry or a reason', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const read = readEntry(value);
        expect(read.ok || describeEntryProblem(read.problem).endsWith('.')).toBe(true);
      }),
      runs,
    );
  });
});

describe('what a student was given', () => {
  test('is in the order of giving, once a day, with what was heard', () => {
    const one = giveLesson(student('a', 'Ada'), given('one'));
    const two = one && giveLesson(one, given('two', '2026-11-09'));
    const again = two && giveLesson(two, { ...given('two', '2026-11-09'), title: 'Two, renamed' });
    expect(again?.given.map(({ title }) => title)).toEqual(['Lesson one', 'Two, renamed']);
    if (!again) throw new Error('It is given.');
    const heard = setGiven(again, given('two', '2026-11-09'), { tempo: 84, mend: 'the pickup rushes' });
    expect(heard.given.at(-1)).toMatchObject({ tempo: 84, mend: 'the pickup rushes', lesson: 'two' });
    expect(toMend(heard).map(({ mend }) => mend)).toEqual(['the pickup rushes']);
    expect(takeBack(heard, given('two', '2026-11-09'))).toEqual(one);
  });

  test('giving and taking back leaves all else, and what is made can be read', () => {
    fc.assert(
      fc.property(anyStudent, (one) => {
        const more = giveLesson(one, given('four', '2031-01-01'));
        if (more === null) throw new Error('There is room.');
        expect(readEntry(more).ok).toBe(true);
        expect(takeBack(more, given('four', '2031-01-01'))).toEqual(one);
      }),
      runs,
    );
  });

  test('more than can be kept is refused, not dropped', () => {
    const many = Array.from({ length: REGISTER_LIMITS.given }, (_, index) => given(`lesson-${index}`));
    expect(giveLesson(student('a', 'Ada', { given: many }), given('one'))).toBeNull();
    expect(giveLesson(student('a', 'Ada', { given: many }), given('lesson-3'))?.given.length).toBe(
      many.length,
    );
  });
});

describe('a new lesson for a student', () => {
  const ada = student('a', 'Adalind', {
    hand: HAND_SPANS.child,
    level: 1,
    noteNames: 'german',
    notes: 'shy at first',
    given: [given('one', '2026-11-02', { mend: 'the pickup' })],
  });

  test('starts from bass, hand, level and note names', () => {
    const left = { ...ada, instrument: { ...ada.instrument, leftHanded: true, frets: 21 } };
    const lesson = lessonFor(left, 'new', false);
    const [line] = lesson.pieces;
    expect(lesson).toMatchObject({ instrument: { leftHanded: true, frets: 21 }, noteNames: 'german' });
    expect(line).toMatchObject({ level: 1, hand: HAND_SPANS.child });
    expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
  });

  test('says nothing of the student unless the name is ticked', () => {
    const bare = printLesson(lessonFor(ada, 'new', false));
    expect(bare).not.toContain('Adalind');
    for (const word of ['shy', 'pickup', '"a"']) expect(bare).not.toContain(word);
    expect(lessonFor(ada, 'new', true).handout.student).toBe('Adalind');
  });
});

describe('a class', () => {
  const wednesday = newClass('c', 'Wednesday');
  const ada = student('a', 'Ada');
  const ben = student('b', 'Ben');

  test('has members in its own order, and none twice', () => {
    const both = setMember(setMember(wednesday, 'b', true), 'a', true);
    expect(membersOf(both, [ada, ben]).map(({ name }) => name)).toEqual(['Ben', 'Ada']);
    expect(setMember(both, 'a', true)).toBe(both);
    expect(membersOf(setMember(both, 'b', false), [ada, ben])).toEqual([ada]);
    expect(withoutEntry(both, ben)).toEqual(setMember(both, 'b', false));
    expect(withoutEntry(ada, ben)).toBe(ada);
  });

  test('is put in order by name or by hand, and who cannot be read stays in it', () => {
    const cleo = student('x', 'cleo');
    const group = { ...wednesday, members: ['gone', 'x', 'b', 'a'] };
    const sorted = membersByName(group, [ben, cleo, ada]);
    expect(membersOf(sorted, [ada, ben, cleo]).map(({ name }) => name)).toEqual(['Ada', 'Ben', 'cleo']);
    expect(sorted.members).toContain('gone');
    expect(membersByName(sorted, [ben, cleo, ada])).toBe(sorted);
    expect(moveMember(sorted, 'b', -1).members).toEqual(['b', 'a', 'x', 'gone']);
    expect(moveMember(sorted, 'a', -1)).toBe(sorted);
  });

  test('a series and what others were given lose a deleted student’s name, in titles that tell a version', () => {
    const title = 'Harbour, for Ben';
    const term = {
      ...newSeries('s', 'Autumn', 'b'),
      weeks: [{ lesson: 'one', version: 'version-1', title, marks: [] }],
    };
    const had = giveLesson(ada, { ...given('one'), title });
    if (had === null) throw new Error('There is room.');
    const without = [term, had].map((entry) => withoutEntry(entry, ben));
    expect(without[0]).toMatchObject({ of: null, weeks: [{ title: 'Harbour, for a student' }] });
    expect(without[1]).toMatchObject({ given: [{ title: 'Harbour, for a student' }] });
    expect(JSON.stringify(without)).not.toContain('Ben');
    for (const entry of without) expect(readEntry(entry).ok).toBe(true);
    expect(withoutEntry(had, newClass('x', 'Ben'))).toBe(had);
  });

  test('the teacher’s own words that name a student are told', () => {
    const noted = { ...ada, notes: 'plays with Ben' };
    const others = [noted, newSeries('s', 'Ben’s term', null), newClass('c', 'Benches')];
    expect(entriesNaming('Ben', others)).toEqual(['Ada', 'Ben’s term']);
  });
});

describe('entries of a file', () => {
  const ada = student('a', 'Ada');
  const standing =
    (here: readonly Entry[]) =>
    (id: string): Entry | null =>
      here.find((entry) => entry.id === id) ?? null;

  test('come beside what stands here, never over it, and only once', () => {
    const older = { ...ada, level: 1 as const };
    const added = entriesToAdd([older, student('b', 'Ben'), ada], standing([ada]));
    expect(added.map(({ name }) => name)).toEqual(['Ada (from the file)', 'Ben']);
    expect(new Set(added.map(({ id }) => id)).has('a')).toBe(false);
    expect(entriesToAdd([older, student('b', 'Ben'), ada], standing([ada, ...added]))).toEqual([]);
    expect(entriesToAdd([ada], () => 'unreadable')).toHaveLength(0);
    expect(entriesToAdd([ada], (id) => (id === 'a' ? 'unreadable' : null))).toHaveLength(1);
  });

  /** Students of few ids, so that those of a file and those that stand here meet. */
  const anyRegister = fc.array(
    fc.tuple(fc.constantFrom('a', 'b', 'c'), anyStudent).map(([id, one]): Entry => ({ ...one, id })),
    { maxLength: 6 },
  );

  test('whatever meets: all that stood here stands as it was, all of the file is here, and twice is once', () => {
    fc.assert(
      fc.property(anyRegister, anyRegister, (theirs, ours) => {
        const here = [...new Map(ours.map((entry) => [entry.id, entry])).values()];
        const after = new Map(here.map((entry) => [entry.id, entry]));
        const added = entriesToAdd(theirs, standing(here));
        for (const entry of added) {
          expect(after.has(entry.id)).toBe(false);
          expect(readEntry(entry)).toEqual({ ok: true, value: entry });
          after.set(entry.id, entry);
        }
        const told = (entry: Entry) => JSON.stringify({ ...entry, id: '', name: '' });
        const held = [...after.values()].map(told);
        for (const entry of theirs) expect(held).toContain(told(entry));
        for (const entry of here) expect(after.get(entry.id)).toBe(entry);
        expect(entriesToAdd(theirs, standing([...after.values()]))).toEqual([]);
      }),
      runs,
    );
  });

  test('go through the file of the shelf as they are, whatever they are called, apart from its lessons', () => {
    fc.assert(
      fc.property(anyRegister, (entries) => {
        const writer = shelfWriter();
        writer.add('students', newLesson('l', 'students'));
        for (const entry of entries) writer.add('students/one', entry, 'register');
        const parts = writer.end();
        const read = [...shelfEntries(new Uint8Array(Buffer.concat(parts)))];
        expect(read.map(({ kind }) => kind)).toEqual(['lesson', ...entries.map(() => 'register')]);
        expect(read.slice(1).map(({ text }) => JSON.parse(text ?? ''))).toEqual(entries);
      }),
      runs,
    );
  });
});

describe('forgetting a student', () => {
  const lesson = setHandout(newLesson('l', 'Ada’s week'), { student: 'Ada' });
  const document = addVersion(addVersion(lesson, 'for Ada'), 'for Adamo');

  test('takes the name from the handout and the versions, and leaves the teacher’s own words', () => {
    const without = forgetStudent('ada', document);
    expect(without).toMatchObject({
      title: 'Ada’s week',
      versions: [{ name: 'for a student' }, { name: 'for Adamo' }],
    });
    expect(JSON.stringify(without)).not.toContain('"Ada"');
    expect(parseLesson(JSON.stringify(without)).ok).toBe(true);
    expect(names('Ada', 'Ada’s week')).toBe(true);
    expect(names('Ada', 'Adagio')).toBe(false);
    expect(isNamedIn('Ada', without)).toBe(true);
    expect(isNamedIn('Ada', { ...(without as object), title: 'Week 3' })).toBe(false);
    expect(isNamedIn('Ada', { versions: [{ own: { notes: 'Ada rushes' } }] })).toBe(true);
    expect(isNamedIn('ska', { pieces: [{ feel: 'ska' }] })).toBe(false);
  });

  test('leaves everything else the very same', () => {
    expect(forgetStudent('Ben', document)).toBe(document);
    expect(forgetStudent('', document)).toBe(document);
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(forgetStudent('no one of this name', value)).toBe(value);
      }),
      runs,
    );
  });

  test('what steps of a history share stays shared', () => {
    const shared = { past: [{ document: lesson, label: 'a' }], present: lesson };
    const without = forgetStudent('Ada', shared) as typeof shared;
    expect(without.past[0]?.document).toBe(without.present);
  });
});

test('a name turns no sentence round that it stands in, and one written from the right stays as it is', () => {
  expect(tidyName('  \u202eMia\u0000 \u2067')).toBe('Mia');
  expect(tidyName('מיה \u200fכהן')).toBe('מיה \u200fכהן');
  expect(tidyName('\u202e \u202c')).toBe('');
});
