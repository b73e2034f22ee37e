import { describe, expect, it } from 'vitest';
import {
  deriveSheets,
  describeLessonProblem,
  describeNewer,
  LESSON_VERSION,
  type Lesson,
  parseLesson,
  printLesson,
  readLesson,
  sampleLesson,
} from '../../src/core/lesson';

const NEWER = LESSON_VERSION + 1;

const record = (value: unknown): Record<string, unknown> => Object.assign(Object.create(null), value);

/** A lesson as a newer copy may save it: a sample with whatever is put into its document. */
function newer(change: (document: Record<string, unknown>, piece: Record<string, unknown>) => void): string {
  const document = record(JSON.parse(printLesson(sampleLesson(0, 'lesson-1'))));
  document.version = NEWER;
  const pieces = Array.isArray(document.pieces) ? document.pieces : [];
  change(document, pieces[0]);
  return JSON.stringify(document);
}

function shownOf(text: string): { readonly lesson: Lesson; readonly leftOut: readonly string[] } {
  const read = parseLesson(text);
  if (read.ok || read.problem.kind !== 'newer' || read.problem.shown === null)
    throw new Error(`Not shown: ${JSON.stringify(read)}`);
  return read.problem.shown;
}

describe('a lesson of a newer copy', () => {
  it('is shown whole where it holds nothing that is not known', () => {
    const { lesson, leftOut } = shownOf(newer(() => undefined));
    expect(lesson).toEqual(sampleLesson(0, 'lesson-1'));
    expect(leftOut).toEqual([]);
  });

  it('is shown without a feel, a technique, a mark and a field that are not known, and says so', () => {
    const text = newer((document, piece) => {
      document.mood = 'calm';
      piece.feel = 'dub';
      piece.techniques = ['chord tones', 'double stop', 'octave'];
      piece.capo = 2;
      const bars = Array.isArray(piece.bars) ? piece.bars : [];
      for (const bar of bars) for (const note of bar.notes) note.marks = { stress: 'accent', bend: 'half' };
    });
    const { lesson, leftOut } = shownOf(text);
    const [piece] = lesson.pieces;
    expect(piece).toMatchObject({ feel: 'early-ska', techniques: ['chord tones', 'octave'] });
    expect(leftOut).toEqual(
      expect.arrayContaining([
        'feel “dub”',
        'techniques “double stop”',
        'mood',
        'capo',
        expect.stringMatching(/^bend \(\d+ times\)$/),
      ]),
    );
    expect(leftOut).toHaveLength(5);
    // It is a lesson like any other: it can be drawn, played, and kept as a copy.
    expect(deriveSheets(lesson)).toHaveLength(lesson.pieces.length);
    expect(readLesson(JSON.parse(printLesson(lesson)))).toEqual({ ok: true, value: lesson });
    const said = describeNewer({ lesson, leftOut, whole: null }, NEWER).join(' ');
    expect(said).toContain(`newer Ground Bass (version ${NEWER}`);
    expect(said).toContain('“dub”');
    expect(said).toContain('make a copy: a lesson of its own, without what is left out');
  });

  it('leaves out a piece, a note and an aim of a kind that is not known', () => {
    const text = newer((document, piece) => {
      const pieces = Array.isArray(document.pieces) ? document.pieces : [];
      document.pieces = [...pieces, { kind: 'video', id: 'piece-99', name: 'Film' }];
      piece.aims = [{ where: { kind: 'phrase', id: 'x' }, silence: 0.2 }];
      const bars = Array.isArray(piece.bars) ? piece.bars : [];
      bars[0].notes[0].duration = { quarters: 1 };
    });
    const { lesson } = shownOf(text);
    expect(lesson.pieces.map(({ kind }) => kind)).toEqual(
      sampleLesson(0, 'lesson-1').pieces.map(({ kind }) => kind),
    );
    expect(lesson.pieces[0]).toMatchObject({ aims: [] });
  });

  it.each([
    ['a lesson without pieces', { version: NEWER, format: 'ground-bass-lesson' }],
    [
      'one whose pieces are of another shape',
      { version: NEWER, format: 'ground-bass-lesson', pieces: 'many' },
    ],
  ])('is refused in a sentence when too little of it is left: %s', (_what, document) => {
    const read = readLesson(document);
    expect(read).toMatchObject({ ok: false, problem: { kind: 'newer', shown: null } });
    if (!read.ok) expect(describeLessonProblem(read.problem)).toContain('saved by a newer Ground Bass');
  });

  it('stays newer, not damaged, whatever its values are', () => {
    const text = newer((document, piece) => {
      document.handout = 7;
      piece.playing = null;
    });
    expect(parseLesson(text)).toMatchObject({ ok: false, problem: { kind: 'newer' } });
  });
});
