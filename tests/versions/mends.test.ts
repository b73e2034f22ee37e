import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  type Lesson,
  type LessonVersion,
  linePiece,
  parseLesson,
  printLesson,
  sampleLesson,
  setChartText,
  setHandout,
  setLevel,
  setTempo,
  setTitle,
  transposeBy,
  whyNotKept,
} from '../../src/core/lesson';
import { factsOf } from '../../src/core/shelf';
import {
  addVersion,
  carryMend,
  dropOwn,
  keptElsewhere,
  leaveMend,
  lessonAsOpen,
  lessonOfVersion,
  type Mend,
  mendsOf,
  numberOfBar,
  openVersion,
  ownOf,
  shareOwn,
  storeEdited,
} from '../../src/core/versions';
import { edits } from '../support/random-edits';
import { LINE, withBarMoved } from './bars';

const RUNS = Number(process.env.VERSIONS_RUNS ?? 40);
const SEED = Number(process.env.VERSIONS_SEED ?? 22);

const edit = (document: Lesson, change: (lesson: Lesson) => Lesson): Lesson =>
  storeEdited(document, change(lessonAsOpen(document)));
const plain = ({ idsUpTo: _, ...lesson }: Lesson): Lesson => lesson;
const seen = (document: Lesson, id: string | null): Lesson => plain(lessonOfVersion({ ...document }, id));
const idOf = (document: Lesson, at: number): string => document.versions?.[at]?.id ?? '';

const notesAt = (lesson: Lesson, at: number) => linePiece(lesson, LINE)?.bars[at]?.notes;

/** Two versions, the first of which is open. */
function forTwo(): Lesson {
  const both = addVersion(addVersion(sampleLesson(0, 'lesson-1'), 'for Ada'), 'for Ben');
  return openVersion(openVersion(both, null), idOf(both, 0));
}

describe('what is mended in the tune', () => {
  test('is offered where a version has notes of its own, carried in its own key, or left', () => {
    let document = edit(forTwo(), (lesson) => withBarMoved(2, 1)(transposeBy(lesson, LINE, 2)));
    const [ada, ben] = [idOf(document, 0), idOf(document, 1)];
    expect(mendsOf(document)).toEqual([]);
    document = edit(openVersion(document, null), withBarMoved(2, -1));
    const [mend, ...others] = mendsOf(document);
    expect(others).toEqual([]);
    if (mend === undefined) throw new Error('The bar was mended.');
    expect(mend.version).toBe(ada);
    expect(numberOfBar(document, mend)).toBe(3);
    // Ben has nothing of his own there and has it already.
    expect(notesAt(seen(document, ben), 2)).toEqual(notesAt(seen(document, null), 2));

    const carried = carryMend(document, mend);
    expect(mendsOf(carried)).toEqual([]);
    expect(notesAt(seen(carried, ada), 2)).toEqual(
      notesAt(transposeBy(lessonOfVersion(document, null), LINE, 2), 2),
    );
    const left = leaveMend(document, mend);
    expect(mendsOf(left)).toEqual([]);
    expect(seen(left, ada)).toEqual(seen(document, ada));
    // A later mend of the same bar is offered again.
    expect(mendsOf(edit(left, withBarMoved(2, 1)))).toHaveLength(1);
  });
});

describe('what a version has of its own', () => {
  test('is told by bar, chart and field, without what belongs to the version', () => {
    const document = edit(forTwo(), (lesson) =>
      setTitle(
        setHandout(setLevel(setTempo(withBarMoved(1, 1)(transposeBy(lesson, LINE, 5)), LINE, 77), LINE, 0), {
          student: 'Ada',
        }),
        'Ada plays',
      ),
    );
    const [ada] = document.versions ?? [];
    expect(ada && ownOf(document, ada).map((own) => ('field' in own ? own.field : own.kind))).toEqual([
      'title',
      'tempo',
      'bar',
      'student',
    ]);
  });

  test('goes to the tune in the key of the tune, and to the versions that have nothing of their own there', () => {
    let document = edit(forTwo(), (lesson) =>
      setTempo(withBarMoved(1, 1)(transposeBy(lesson, LINE, 5)), LINE, 77),
    );
    const [ada, ben] = [idOf(document, 0), idOf(document, 1)];
    const before = seen(document, ada);
    for (const own of ownOf(
      document,
      document.versions?.[0] ?? { id: '', name: '', own: document, lines: [] },
    ))
      document = shareOwn(document, ada, own);
    expect(seen(document, ada)).toEqual(before);
    expect(ownOf(document, document.versions?.[0] ?? { id: '', name: '', own: document, lines: [] })).toEqual(
      [],
    );
    expect(linePiece(seen(document, ben), LINE)?.tempo).toBe(77);
    expect(notesAt(seen(document, ben), 1)).toEqual(notesAt(withBarMoved(1, 1)(sampleLesson(0, 'x')), 1));
  });

  test('does not reach a version that has its own in the same place, which is said', () => {
    let document = edit(forTwo(), withBarMoved(1, 1));
    const [ada, ben] = [idOf(document, 0), idOf(document, 1)];
    document = edit(openVersion(document, ben), withBarMoved(1, -1));
    const own = { kind: 'bar', line: LINE, bar: linePiece(document, LINE)?.bars[1]?.id ?? '' } as const;
    expect(keptElsewhere(document, ada, own)).toEqual(['for Ben']);
    const shared = shareOwn(document, ada, own);
    expect(seen(shared, ben)).toEqual(seen(document, ben));
    // It is a mend that Ben's version can still take.
    expect(mendsOf(shared).map(({ version }) => version)).toEqual([ben]);
  });

  test('a chart of its own becomes the chart of all, with the bars that it has more', () => {
    const document = edit(forTwo(), (lesson) =>
      setChartText(lesson, LINE, `${linePiece(lesson, LINE)?.chartText ?? ''} Gm | C7 |`),
    );
    const [ada, ben] = [idOf(document, 0), idOf(document, 1)];
    const before = seen(document, ada);
    const shared = shareOwn(document, ada, { kind: 'chart', line: LINE });
    expect(seen(shared, ada)).toEqual(before);
    expect(linePiece(seen(shared, ben), LINE)?.chartText).toBe(linePiece(before, LINE)?.chartText);
    expect(shared.open).toBe(ada);
  });
});

type Ids = readonly (string | null)[];

const expectReadable = (made: Lesson) =>
  expect(parseLesson(printLesson(made))).toEqual({ ok: true, value: made });

function expectAsTheyWere(now: Lesson, before: Lesson, ids: Ids) {
  for (const id of ids) expect(seen(now, id)).toEqual(seen(before, id));
}

function expectSharedAndDropped(document: Lesson, version: LessonVersion, ids: Ids) {
  const { id } = version;
  for (const own of ownOf(document, version)) {
    const shared = shareOwn(document, id, own);
    expect(seen(shared, id), JSON.stringify(own)).toEqual(seen(document, id));
    expectReadable(shared);
    const dropped = dropOwn(document, id, own);
    expectAsTheyWere(
      dropped,
      document,
      ids.filter((each) => each !== id),
    );
    const left = dropped.versions?.find((each) => each.id === id);
    expect(left && ownOf(dropped, left)).not.toContainEqual(own);
    expectReadable(dropped);
  }
}

function expectCarriedOrLeft(document: Lesson, mend: Mend, ids: Ids) {
  const left = leaveMend(document, mend);
  expect(mendsOf(left)).not.toContainEqual(mend);
  expectAsTheyWere(left, document, ids);
  const carried = carryMend(document, mend);
  expect(mendsOf(carried)).not.toContainEqual(mend);
  // Nothing is left to carry or to leave.
  expect(leaveMend(carried, mend)).toEqual(carried);
  expectAsTheyWere(
    carried,
    document,
    ids.filter((id) => id !== mend.version),
  );
  expectReadable(carried);
}

it(`shares, drops, carries and leaves after any edits: ${RUNS} documents, seed ${SEED}`, {
  timeout: 60_000 + RUNS * 4_000,
}, () => {
  fc.assert(
    fc.property(
      fc.nat(1),
      fc.array(fc.tuple(edits, fc.nat(2), fc.nat(9_999)), { minLength: 3, maxLength: 9 }),
      (which, steps) => {
        let document = addVersion(addVersion(sampleLesson(which, 'lesson-1'), 'for Ada'), 'for Ben');
        const ids: Ids = [null, idOf(document, 0), idOf(document, 1)];
        for (const [change, open, at] of steps) {
          const next = edit(openVersion(document, ids[open] ?? null), (lesson) => change(lesson, at));
          if (whyNotKept(next) === null && whyNotKept(lessonAsOpen(next)) === null) document = next;
        }
        for (const version of document.versions ?? []) expectSharedAndDropped(document, version, ids);
        for (const mend of mendsOf(document)) expectCarriedOrLeft(document, mend, ids);
      },
    ),
    { seed: SEED, numRuns: RUNS },
  );
});

test('the shelf finds a lesson by the name of a version', () => {
  expect(factsOf(sampleLesson(0, 'lesson-1')).text).not.toContain('for ada');
  expect(factsOf(forTwo()).text).toContain('for ada');
});
