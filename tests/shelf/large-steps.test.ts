import { describe, expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import {
  type Lesson,
  linePiece,
  sampleLesson,
  setChartText,
  setLevel,
  setNotes,
  setTempo,
  setTitle,
  transposeBy,
} from '../../src/core/lesson';
import { isLargeStep } from '../../src/core/shelf';
import {
  addVersion,
  carryMend,
  dropOwn,
  leaveMend,
  lessonAsOpen,
  mendsOf,
  openVersion,
  removeVersion,
  renameVersion,
  shareOwn,
  storeEdited,
} from '../../src/core/versions';
import { LINE, withBarMoved } from '../versions/bars';

const SAMPLE = sampleLesson(0, 'lesson-1');
const edited = (document: Lesson, change: (lesson: Lesson) => Lesson): Lesson =>
  storeEdited(document, change(lessonAsOpen(document)));
const idOf = (document: Lesson, at: number): string => document.versions?.[at]?.id ?? '';
const onPage = (document: Lesson) => ({ document, lesson: lessonAsOpen(document) });
const isLarge = (before: Lesson, after: Lesson, elsewhere = false): boolean =>
  isLargeStep(onPage(before), onPage(after), elsewhere);
const asRead = (document: Lesson): Lesson => structuredClone(document);

/** The tune with a version for Ada in another key and with a bar of her own, and one for Ben; the tune is open. */
const TUNE = (() => {
  const both = addVersion(addVersion(SAMPLE, 'for Ada'), 'for Ben');
  const adas = openVersion(both, idOf(both, 0));
  return openVersion(
    edited(adas, (lesson) => withBarMoved(2, 1)(transposeBy(lesson, LINE, 2))),
    null,
  );
})();
const [ADA, BEN] = [idOf(TUNE, 0), idOf(TUNE, 1)];
const adas = openVersion(TUNE, ADA);
const mended = edited(TUNE, withBarMoved(2, -1));
const [mend] = mendsOf(mended);
if (mend === undefined) throw new Error('The bar was mended.');
const bar = { kind: 'bar', line: LINE, bar: linePiece(adas, LINE)?.bars[2]?.id ?? '' } as const;

describe('before these the state is kept', () => {
  test.each<[string, Lesson, Lesson]>([
    ['a line composed anew', SAMPLE, composePiece(setLevel(SAMPLE, LINE, 0), LINE).lesson],
    ['a line transposed', SAMPLE, transposeBy(SAMPLE, LINE, 5)],
    ['the tune of versions transposed', TUNE, edited(TUNE, (lesson) => transposeBy(lesson, LINE, -2))],
    ['an open version transposed', adas, edited(adas, (lesson) => transposeBy(lesson, LINE, 3))],
    ['another chart', SAMPLE, setChartText(SAMPLE, LINE, '| Am | E7 |')],
    ['a mend carried into a version that is not open', mended, carryMend(mended, mend)],
    ['a version’s bar carried to the tune and the others', adas, shareOwn(adas, ADA, bar)],
    ['a version removed that is open', adas, removeVersion(adas, ADA)],
    ['a version removed that is not', TUNE, removeVersion(TUNE, BEN)],
    ['a version taken back that was made', TUNE, SAMPLE],
  ])('%s', (_, before, after) => expect(isLarge(before, after)).toBe(true));
});

describe('before these it is not', () => {
  test.each<[string, Lesson, Lesson]>([
    ['nothing', TUNE, TUNE],
    ['a version opened that is in another key', TUNE, adas],
    ['the tune opened again', adas, TUNE],
    ['a version made', SAMPLE, addVersion(SAMPLE, 'for Cleo')],
    ['a version renamed', TUNE, renameVersion(TUNE, BEN, 'for Benno')],
    ['one bar of the tune, which the versions follow', TUNE, mended],
    ['another title of the open version', adas, edited(adas, (lesson) => setTitle(lesson, 'Mine'))],
    ['another tempo of the tune', TUNE, edited(TUNE, (lesson) => setTempo(lesson, LINE, 77))],
    [
      'a word more to the student',
      TUNE,
      edited(TUNE, (lesson) => setNotes(lesson, `${lesson.notes} Slowly.`)),
    ],
    ['one bar of the open version as in the tune', adas, dropOwn(adas, ADA, bar)],
  ])('%s', (_, before, after) => expect(isLarge(before, after)).toBe(false));

  test('what another window does to a version that is not on this page, letter by letter', () => {
    const there = openVersion(
      edited(openVersion(TUNE, BEN), (lesson) => setTitle(lesson, 'M')),
      ADA,
    );
    expect(isLarge(adas, asRead(there), true)).toBe(false);
    expect(isLarge(adas, asRead(adas))).toBe(false);
    // A bar of the open version that keeps its own notes there is a small change of it.
    expect(isLarge(openVersion(mended, ADA), leaveMend(openVersion(mended, ADA), mend))).toBe(false);
  });
});
