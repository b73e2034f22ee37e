import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  type Lesson,
  type LinePiece,
  linePiece,
  newBlankPiece,
  parseLesson,
  printLesson,
  sampleLesson,
  setHand,
  setHandout,
  setInstrument,
  setLevel,
  setTempo,
  setTitle,
  transposeBy,
  whyNotKept,
} from '../../src/core/lesson';
import { lineBarSchema } from '../../src/core/lesson/schema/notes';
import {
  addVersion,
  lessonAsOpen,
  lessonOfVersion,
  openVersion,
  removeVersion,
  renameVersion,
  storeEdited,
} from '../../src/core/versions';
import { type Edit, edits } from '../support/random-edits';
import { LINE, withBarMoved } from './bars';

const RUNS = Number(process.env.VERSIONS_RUNS ?? 40);
const SEED = Number(process.env.VERSIONS_SEED ?? 21);

const edit = (document: Lesson, change: (lesson: Lesson) => Lesson): Lesson =>
  storeEdited(document, change(lessonAsOpen(document)));

/** A lesson without the floor of its ids, which says nothing of its music. */
const plain = ({ idsUpTo: _, ...lesson }: Lesson): Lesson => lesson;

const line = (lesson: Lesson): LinePiece => {
  const found = linePiece(lesson, LINE);
  if (found === null) throw new Error('The sample has a line.');
  return found;
};

const sample = (): Lesson => sampleLesson(0, 'lesson-1');
const forAda = (): Lesson => addVersion(sample(), 'for Ada');
const idOf = (document: Lesson, at: number): string => document.versions?.[at]?.id ?? '';
const ADA = idOf(forAda(), 0);

describe('a version', () => {
  test('is the tune when it is made, and is what is worked on', () => {
    const document = forAda();
    expect(document.versions?.map(({ name }) => name)).toEqual(['for Ada']);
    expect(document.open).toBe(idOf(document, 0));
    expect(plain(lessonAsOpen(document))).toEqual(sample());
    expect(document.versions?.[0]?.lines.flatMap(({ bars = [] }) => bars)).toEqual([]);
  });

  test('has its own key, tuning, hand and level, and leaves those of the tune and of other versions', () => {
    let document = addVersion(forAda(), 'for Ben');
    const [ada, ben] = [idOf(document, 0), idOf(document, 1)];
    document = edit(document, (lesson) =>
      setInstrument(setHand(setLevel(transposeBy(lesson, LINE, 3), LINE, 1), LINE, { comfortableSpan: 90 }), {
        leftHanded: true,
      }),
    );
    const before = lessonAsOpen(document);
    expect(line(before).chartText).not.toBe(line(sample()).chartText);
    expect(plain(lessonOfVersion(document, null))).toEqual(sample());
    expect(plain(lessonOfVersion(document, ada))).toEqual(sample());
    // It is stored as the way it was moved, not as notes.
    expect(document.versions?.[1]?.lines[0]?.moved?.halfSteps).toBe(3);
    expect(document.versions?.[1]?.lines[0]?.bars).toBeUndefined();
    // The tune in another key, tuning, hand and level leaves the versions.
    const moved = edit(openVersion(document, null), (lesson) =>
      setHand(setLevel(setInstrument(transposeBy(lesson, LINE, -2), { frets: 20 }), LINE, 5), LINE, {
        openStrings: 'prefer',
      }),
    );
    expect(plain(lessonOfVersion(moved, ben))).toEqual(plain(before));
    expect(plain(lessonOfVersion(moved, ada))).toEqual(sample());
  });

  test('sees what is mended in the tune wherever it does not differ, in its own key', () => {
    let document = edit(forAda(), (lesson) => withBarMoved(1, 1)(transposeBy(lesson, LINE, 2)));
    const own = line(lessonAsOpen(document)).bars[1]?.notes;
    document = edit(openVersion(document, null), (lesson) =>
      setTempo(withBarMoved(2, 1)(withBarMoved(1, 1)(lesson)), LINE, 99),
    );
    const seen = line(lessonOfVersion(document, ADA));
    expect(seen.bars[1]?.notes).toEqual(own);
    expect(seen.bars[2]).toEqual(line(transposeBy(lessonOfVersion(document, null), LINE, 2)).bars[2]);
    expect(seen.tempo).toBe(99);
  });

  test('keeps a bar of its own that the tune no longer has', () => {
    let document = edit(forAda(), withBarMoved(0, 1));
    const own = line(lessonAsOpen(document)).bars[0];
    document = edit(openVersion(document, null), (lesson) => ({
      ...lesson,
      pieces: lesson.pieces.map((piece) =>
        piece.kind === 'line' ? { ...piece, bars: piece.bars.slice(1), parked: [] } : piece,
      ),
    }));
    expect(line(lessonOfVersion(document, ADA)).parked).toEqual([own]);
  });

  test('can have each field of a bar of its own', () => {
    const other: Readonly<Record<string, object>> = {
      harmony: { harmony: 'F@0+3840' },
      origin: { origin: 'hand' },
      kept: { kept: true },
      notes: { notes: [] },
      over: { over: [] },
      position: { position: 5 },
      dynamics: { dynamics: [{ at: 0, level: 'p' }] },
      words: { words: 'slow' },
    };
    const fields = Object.keys(lineBarSchema.shape).filter((field) => field !== 'id');
    expect(fields.sort()).toEqual(Object.keys(other).sort());
    for (const field of fields) {
      const change = (lesson: Lesson): Lesson => ({
        ...lesson,
        pieces: lesson.pieces.map((piece) =>
          piece.kind === 'line'
            ? { ...piece, bars: piece.bars.map((bar, at) => (at === 0 ? { ...bar, ...other[field] } : bar)) }
            : piece,
        ),
      });
      const own = edit(forAda(), change);
      expect(plain(lessonAsOpen(own)), field).toEqual(change(sample()));
      expect(plain(lessonOfVersion({ ...own }, ADA)), field).toEqual(change(sample()));
      // And is without what the tune has.
      const tune = addVersion(change(sample()), 'for Ada');
      const without = edit(tune, () => ({ ...sample(), idsUpTo: 1 }));
      expect(plain(lessonOfVersion({ ...without }, idOf(without, 0))), field).toEqual(sample());
    }
  });

  test('tells nobody of the others: not their names, and nothing that they hold', () => {
    const document = edit(
      addVersion(
        edit(forAda(), (lesson) => setTitle(lesson, 'Ada plays')),
        'for Ben',
      ),
      (lesson) => setTitle(lesson, 'Ben plays'),
    );
    const text = printLesson(lessonAsOpen(document));
    expect(text).toContain('Ben plays');
    expect(text).not.toContain('Ada');
    expect(text).not.toContain('for Ben');
  });

  test('has a student of its own on the handout, while the paper follows the tune', () => {
    let document = edit(forAda(), (lesson) => setHandout(lesson, { student: 'Ada' }));
    document = edit(openVersion(document, null), (lesson) => setHandout(lesson, { paper: 'Letter' }));
    expect(lessonOfVersion(document, ADA).handout).toMatchObject({ student: 'Ada', paper: 'Letter' });
    expect(lessonOfVersion(document, null).handout.student).toBeUndefined();
  });

  test('is renamed and removed; its id is never given again', () => {
    const document = renameVersion(forAda(), idOf(forAda(), 0), 'for Cleo');
    expect(document.versions?.[0]?.name).toBe('for Cleo');
    const gone = removeVersion(document, idOf(document, 0));
    expect(gone.versions).toBeUndefined();
    expect(plain(gone)).toEqual(sample());
    expect(idOf(addVersion(gone, 'again'), 0)).not.toBe(idOf(document, 0));
  });
});

type Deed = (document: Lesson, at: number) => Lesson;

const deeds: fc.Arbitrary<Deed> = fc.oneof(
  {
    weight: 6,
    arbitrary: edits.map(
      (change: Edit): Deed =>
        (document, at) =>
          edit(document, (lesson) => change(lesson, at)),
    ),
  },
  fc.constant<Deed>((document, at) => edit(document, withBarMoved(at % 4, 1))),
  fc.constant<Deed>((document, at) =>
    (document.versions?.length ?? 0) > 4 ? document : addVersion(document, `for ${at}`),
  ),
  {
    weight: 2,
    arbitrary: fc.constant<Deed>((document, at) => {
      const all = [null, ...(document.versions ?? []).map(({ id }) => id)];
      return openVersion(document, all[at % all.length] ?? null);
    }),
  },
  fc.constant<Deed>((document, at) => (at % 7 === 0 ? removeVersion(document, idOf(document, 0)) : document)),
);

const idsOfAll = (lesson: Lesson): readonly string[] =>
  lesson.pieces.flatMap((piece) =>
    piece.kind === 'line' ? [piece.id, ...[...piece.bars, ...piece.parked].map(({ id }) => id)] : [piece.id],
  );

/** What was edited is what the version is when it is made anew of what is stored. */
const expectStored = (document: Lesson) =>
  expect(plain(lessonOfVersion({ ...document }, document.open ?? null))).toEqual(
    plain(lessonAsOpen(document)),
  );

/** What is edited in a version is its own alone. */
function expectOthersAsTheyWere(now: Lesson, before: Lesson) {
  if (now.open === undefined || now.open !== before.open) return;
  for (const id of [null, ...(now.versions ?? []).map((version) => version.id)]) {
    if (id !== now.open) expect(plain(lessonOfVersion(now, id))).toEqual(plain(lessonOfVersion(before, id)));
  }
}

function expectEachReadable(document: Lesson) {
  for (const { id } of document.versions ?? []) {
    const seen = lessonOfVersion(document, id);
    const ids = idsOfAll(seen);
    expect(new Set(ids).size).toBe(ids.length);
    expect(parseLesson(printLesson(seen))).toEqual({ ok: true, value: seen });
  }
}

it(`keeps every version after any edits: ${RUNS} sequences, seed ${SEED}`, {
  timeout: 60_000 + RUNS * 4_000,
}, () => {
  fc.assert(
    fc.property(
      fc.nat(1),
      fc.array(fc.tuple(deeds, fc.nat(9_999)), { minLength: 2, maxLength: 14 }),
      (which, steps) => {
        const start = sampleLesson(which, 'lesson-1');
        let document: Lesson = { ...start, pieces: [...start.pieces, newBlankPiece('piece-900', 'Own')] };
        for (const [deed, at] of steps) {
          const next = deed(document, at);
          if (whyNotKept(next) !== null || whyNotKept(lessonAsOpen(next)) !== null) continue;
          expectStored(next);
          expectOthersAsTheyWere(next, document);
          document = next;
          expectEachReadable(document);
        }
        expect(parseLesson(printLesson(document))).toEqual({ ok: true, value: document });
      },
    ),
    { seed: SEED, numRuns: RUNS },
  );
});
