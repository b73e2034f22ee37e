import { describe, expect, test } from 'vitest';
import { wasWords } from '../../src/app/pages/versions/words';
import { sampleLesson, setNotes, setTempo, setTitle } from '../../src/core/lesson';
import { addVersion, lessonAsOpen, openVersionOf, ownOf, storeEdited } from '../../src/core/versions';

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
    const words = ownOf(stored, version).map((own) => wasWords(stored, own));
    expect(words).toContain(` In the tune: “${document.title}”.`);
    expect(words).toContain(` In the tune: ${piece.tempo} bpm.`);
    expect(words.join()).not.toContain('Slower');
    for (const each of words) expect(each.length).toBeLessThan(90);
  });
});
