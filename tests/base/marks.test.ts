import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  excludes,
  hasMark,
  isLink,
  MARK_CHOICES,
  MARKS,
  type Mark,
  marksOf,
  type NoteMarks,
  signOf,
  withMark,
  withoutMark,
} from '../../src/core/base';

interface Note {
  readonly start: number;
  readonly marks?: NoteMarks;
}

const markIn = fc.constantFrom(...MARKS);
const bare: Note = { start: 3 };
const noteOf = (marks: readonly Mark[]): Note => marks.reduce(withMark, bare);

describe('the marks of a note', () => {
  it('are each listed once', () => {
    expect([...MARKS].sort()).toEqual(Object.values(MARK_CHOICES).flat().sort());
    expect(new Set(MARKS).size).toBe(MARKS.length);
  });

  it('never contradict each other, in whatever order they are set', () => {
    fc.assert(
      fc.property(fc.array(markIn, { maxLength: 8 }), (marks) => {
        const note = noteOf(marks);
        const set = marksOf(note);
        for (const one of set) for (const other of set) expect(excludes(one, other)).toBe(false);
        const last = marks.at(-1);
        if (last !== undefined) expect(hasMark(note, last)).toBe(true);
      }),
      { seed: 15, numRuns: 200 },
    );
  });

  it('come off again, and leave nothing behind', () => {
    fc.assert(
      fc.property(fc.array(markIn, { maxLength: 8 }), (marks) => {
        const note = noteOf(marks);
        expect(marksOf(note).reduce(withoutMark, note)).toEqual(bare);
        expect(withoutMark(note, 'fermata')).toEqual(
          noteOf(marksOf(note).filter((one) => one !== 'fermata')),
        );
      }),
      { seed: 15, numRuns: 100 },
    );
  });

  it('give way where a player could not do both', () => {
    expect(noteOf(['staccato', 'let ring']).marks).toEqual({ length: 'let ring' });
    expect(noteOf(['ghost', 'let ring']).marks).toEqual({ length: 'let ring' });
    expect(noteOf(['let ring', 'palm mute']).marks).toEqual({ damping: 'palm mute' });
    expect(noteOf(['slap', 'i', 'accent']).marks).toEqual({ stress: 'accent', pluck: 'i' });
  });

  it('read a hammer by where the line goes', () => {
    expect(signOf('hammer', 40, 42)).toBe('hammer-on');
    expect(signOf('hammer', 40, 38)).toBe('pull-off');
    expect(signOf('hammer', 40, null)).toBe('hammer-on');
    expect(signOf('slide', 40, 38)).toBe('slide');
    expect(MARKS.filter(isLink)).toEqual(['hammer', 'slide', 'slur']);
  });
});
