import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Lesson, newLesson, printLesson, setTitle } from '../../src/core/lesson';
import {
  type FolderFile,
  fileNameFor,
  folderSteps,
  isLessonFile,
  lessonInFile,
  lessonMark,
  type Settled,
} from '../../src/core/shelf';

const lesson = (id: string, title: string): Lesson => setTitle(newLesson(id, title), title);

/** A device and a folder that both keep lessons, as the page keeps them: each step is carried out on both. */
interface World {
  readonly here: ReadonlyMap<string, Lesson>;
  readonly there: ReadonlyMap<string, string>;
  readonly settled: ReadonlyMap<string, Settled>;
}

const EMPTY: World = { here: new Map(), there: new Map(), settled: new Map() };

const filesIn = (there: World['there']): readonly FolderFile[] =>
  [...there].flatMap(([name, text]) => {
    const found = lessonInFile(text);
    return found === null ? [] : [{ name, lesson: found }];
  });

function agreed(world: World): World {
  const here = new Map(world.here);
  const there = new Map(world.there);
  const settled = new Map(world.settled);
  const settle = (each: Lesson, file: string) =>
    settled.set(each.id, { id: each.id, file, mark: lessonMark(each) });
  for (const step of folderSteps(
    [...here.values()],
    filesIn(there),
    [...settled.values()],
    [...there.keys()],
  )) {
    if (step.kind === 'write') {
      there.set(step.file, printLesson(step.lesson));
      if (step.old !== null) there.delete(step.old);
      settle(step.lesson, step.file);
    } else if (step.kind === 'read') {
      here.set(step.lesson.id, step.lesson);
      settle(step.lesson, step.file);
    } else if (step.kind === 'both') {
      const copy = { ...step.there, id: `${step.there.id}-${lessonMark(step.there)}` };
      here.set(copy.id, copy);
      there.set(step.file, printLesson(step.here));
      settle(step.here, step.file);
    } else if (step.kind === 'remove') {
      there.delete(step.file);
      settled.delete(step.id);
    } else if (step.kind === 'settled') settled.set(step.id, step);
  }
  return { here, there, settled };
}

const titles = (world: World) => new Set([...world.here.values()].map(({ title }) => title));

const DEEDS = ['here', 'there', 'remove here', 'remove there', 'look'] as const;

/** What someone does on one of both sides. */
function done(world: World, what: (typeof DEEDS)[number], id: string, title: string): World {
  const here = new Map(world.here);
  const there = new Map(world.there);
  const file = filesIn(there).find((each) => each.lesson.id === id);
  if (what === 'here') here.set(id, lesson(id, title));
  if (what === 'there') there.set(file?.name ?? `${id}.lesson.json`, printLesson(lesson(id, title)));
  if (what === 'remove here') here.delete(id);
  if (what === 'remove there' && file !== undefined) there.delete(file.name);
  return { ...world, here, there };
}

/** What was changed on either side since both agreed is still somewhere. */
function expectNothingLost(before: World, after: World): void {
  const lessons = ({ here, there }: World) => [
    ...here.values(),
    ...filesIn(there).map((file) => file.lesson),
  ];
  const kept = lessons(after).map(({ title }) => title);
  for (const each of lessons(before))
    if (before.settled.get(each.id)?.mark !== lessonMark(each)) expect(kept).toContain(each.title);
}

describe('lessons in a folder', () => {
  it('are written there, and a change of either side reaches the other', () => {
    const one = lesson('one', 'Harbour');
    const first = agreed({ ...EMPTY, here: new Map([['one', one]]) });
    expect([...first.there.keys()]).toEqual(['Harbour.lesson.json']);
    const elsewhere = setTitle(one, 'Quay');
    const second = agreed({ ...first, there: new Map([['Harbour.lesson.json', printLesson(elsewhere)]]) });
    expect(second.here.get('one')?.title).toBe('Quay');
    const third = agreed({ ...second, here: new Map([['one', setTitle(elsewhere, 'Mole')]]) });
    expect([...third.there.keys()]).toEqual(['Mole.lesson.json']);
    expect(filesIn(third.there)[0]?.lesson.title).toBe('Mole');
  });

  it('are both kept where both sides were changed', () => {
    const one = lesson('one', 'Harbour');
    const first = agreed({ ...EMPTY, here: new Map([['one', one]]) });
    const met = agreed({
      ...first,
      here: new Map([['one', setTitle(one, 'Mine')]]),
      there: new Map([['Harbour.lesson.json', printLesson(setTitle(one, 'Theirs'))]]),
    });
    expect(titles(met)).toEqual(new Set(['Mine', 'Theirs']));
    expect(titles(agreed(agreed(met)))).toEqual(new Set(['Mine', 'Theirs']));
  });

  it('stay on the device where their file was removed, and come back into the folder once changed', () => {
    const one = lesson('one', 'Harbour');
    const gone = agreed({ ...agreed({ ...EMPTY, here: new Map([['one', one]]) }), there: new Map() });
    expect(gone.here.size).toBe(1);
    expect(gone.there.size).toBe(0);
    expect(agreed({ ...gone, here: new Map([['one', setTitle(one, 'Mole')]]) }).there.size).toBe(1);
  });

  it('go from the folder where they were removed on the device, unless their file was changed since', () => {
    const one = lesson('one', 'Harbour');
    const first = agreed({ ...EMPTY, here: new Map([['one', one]]) });
    expect(agreed({ ...first, here: new Map() }).there.size).toBe(0);
    const changed = new Map([['Harbour.lesson.json', printLesson(setTitle(one, 'Mole'))]]);
    expect(titles(agreed({ ...first, here: new Map(), there: changed }))).toEqual(new Set(['Mole']));
  });

  it('are taken in beside the known file where a synchroniser left a second one', () => {
    const one = lesson('one', 'Harbour');
    const first = agreed({ ...EMPTY, here: new Map([['one', one]]) });
    const copy = new Map([
      ...first.there,
      ['Harbour (copy).lesson.json', printLesson(setTitle(one, 'Other'))],
    ]);
    expect(titles(agreed({ ...first, there: copy }))).toEqual(new Set(['Harbour', 'Other']));
  });

  it('agree after two looks at most, and no state of either side is lost, whatever both sides did', () => {
    const anyStep = fc.record({
      id: fc.constantFrom('a', 'b', 'c'),
      title: fc.constantFrom('One', 'Two', 'Three', 'Four'),
      what: fc.constantFrom(...DEEDS),
    });
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 16 }), (steps) => {
        const world = steps.reduce((standing, { id, title, what }) => {
          if (what !== 'look') return done(standing, what, id, title);
          const looked = agreed(standing);
          expectNothingLost(standing, looked);
          return looked;
        }, EMPTY);
        const still = agreed(agreed(world));
        const asked = folderSteps(
          [...still.here.values()],
          filesIn(still.there),
          [...still.settled.values()],
          [...still.there.keys()],
        );
        expect(asked.filter(({ kind }) => kind !== 'gone')).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('have names that every file system takes, one each', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 120 }), (title) => {
        const name = fileNameFor(lesson('one', title), new Set());
        expect(isLessonFile(name)).toBe(true);
        expect(name).not.toMatch(/[\\/:*?"<>|\p{Cc}]|^\.|^\s/u);
        expect(name.length).toBeLessThan(110);
        expect(fileNameFor(lesson('two', title), new Set([name.toLowerCase()]))).not.toBe(name);
      }),
    );
  });
});
