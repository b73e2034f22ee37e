import { describe, expect, test } from 'vitest';
import { wasWords } from '../../src/app/pages/versions/was-words';
import {
  addPiece,
  type Lesson,
  linePiece,
  removePiece,
  sampleLesson,
  setNotes,
  setPlaying,
  setTempo,
  setTitle,
  transposeBy,
} from '../../src/core/lesson';
import { formatPitch } from '../../src/core/theory';
import { addVersion, lessonAsOpen, openVersionOf, ownOf, storeEdited } from '../../src/core/versions';
import { LINE, withBarMoved } from '../versions/bars';

describe('what a version has of its own', () => {
  test('says what the tune has there', () => {
    const document = addVersion(sampleLesson(0, 'test'), 'for Wednesday');
    const seen = lessonAsOpen(document);
    const [piece] = seen.pieces;
    if (piece?.kind !== 'line') throw new Error('The sample is a line.');
    const edited = setTempo(setNotes(setTitle(seen, 'Slower'), 'One step at a time.'), piece.id, 77);
    const stored = storeEdited(document, edited);
    const version = openVersionOf(stored);
    if (version === null) throw new Error('A version is open.');
    const words = ownOf(stored, version).map((own) => wasWords(stored, version.id, own));
    expect(words).toContain(` In the tune: “${document.title}”.`);
    expect(words).toContain(` In the tune: ${piece.tempo} bpm.`);
    expect(words.join()).not.toContain('Slower');
    for (const each of words) expect(each.length).toBeLessThan(90);
  });

  /** What is said of a version for Wednesday after an edit. */
  function saidOf(edit: (lesson: Lesson) => Lesson, tune = sampleLesson(0, 'test')): readonly string[] {
    const document = addVersion(tune, 'for Wednesday');
    const stored = storeEdited(document, edit(lessonAsOpen(document)));
    const version = openVersionOf(stored);
    if (version === null) throw new Error('A version is open.');
    return ownOf(stored, version).map((own) => wasWords(stored, version.id, own));
  }
  const notesOf = (lesson: Lesson): string =>
    (linePiece(lesson, LINE)?.bars[2]?.notes ?? []).map(({ pitch }) => formatPitch(pitch)).join(', ');

  test('tells the notes of a bar, in the key of the version where it is another', () => {
    const tune = sampleLesson(0, 'test');
    expect(saidOf(withBarMoved(2, 1))).toEqual([` In the tune: ${notesOf(tune)}.`]);
    const moved = transposeBy(tune, LINE, 2);
    expect(notesOf(moved)).not.toBe(notesOf(tune));
    expect(saidOf((lesson) => withBarMoved(2, 1)(transposeBy(lesson, LINE, 2)))).toEqual([
      ` In the tune, in this key: ${notesOf(moved)}.`,
    ]);
  });

  test('tells how the tune is played, and which pieces it has', () => {
    expect(saidOf((lesson) => setPlaying(lesson, LINE, { loop: true, bass: false }))[0]).toMatch(
      /^ In the tune: all bars, (looped, )?\d+ bpm/,
    );
    expect(saidOf((lesson) => addPiece(lesson, 'blank', null))).toEqual([' In the tune: not there.']);
    const two = addPiece(sampleLesson(0, 'test'), 'blank', null);
    const blank = two.pieces.find(({ kind }) => kind === 'blank')?.id ?? '';
    expect(saidOf((lesson) => removePiece(lesson, blank), two)[0]).toMatch(
      /^ In the tune: “.*”, \d+ bars of empty staves\.$/,
    );
  });
});
