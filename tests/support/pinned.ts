/** Lines that are written out: what a test reads, hears or measures of them stays what it was, whatever the composer makes. */
import { writeLessonLink } from '../../src/core/exchange';
import { type Lesson, sampleLesson } from '../../src/core/lesson';
import { notesOf } from './score-sheets';

/** Of the samples. */
const LINES: readonly (readonly string[])[] = [
  [
    'F1/1 G1/1 A1/1 C2/1',
    'D2/1 E2/1 F2/1 D2/.5 A1/.5',
    'G1/1 A1/1 B♭1/1 D2/1',
    'C2/1 B♭1/1 G1/1 C2/.5 E2/.5',
    'F2/1 G2/1 A2/1 G2/1',
    'F2/1 E♭2/1 r/2',
    'B♭1/1 D2/1 C2/1 E2/1',
    'F2/1 r/1 C2/1 A1/.5 G1/.5',
  ],
  [
    'A2/1 r/1 E2/2>',
    'r/1 D2/.5 F2/.5 A2/1 B2/1',
    'A2/1 r/1 E2/2>',
    'r/1 E2/.5 G♯2/.5 B2/1 E2/1',
    'F2/1 r/1 C2/2>',
    'r/1 G1/.5 B1/.5 D2/1 G2/1',
    'A2/1 r/1 E2/1.5> D2/.5',
    'E2/1 r/1 G♯2/2',
  ],
];

/**
 * A lesson whose first piece plays what is written out.
 * @param bars a bar each, in the short notation of `score-sheets.ts`
 */
export function withLine(lesson: Lesson, bars: readonly string[]): Lesson {
  return {
    ...lesson,
    pieces: lesson.pieces.map((piece, place) => {
      if (place > 0 || piece.kind !== 'line') return piece;
      if (piece.bars.length !== bars.length)
        throw new Error(`The chart has ${piece.bars.length} bars, and ${bars.length} are written out.`);
      return { ...piece, bars: piece.bars.map((bar, at) => ({ ...bar, notes: notesOf(bars[at] ?? '') })) };
    }),
  };
}

/**
 * A sample lesson with its written line.
 * @param id names the lesson in storage.
 */
export const pinnedSample = (index: 0 | 1, id: string): Lesson =>
  withLine(sampleLesson(index, id), LINES[index] ?? []);

/** The end of an address at which the first of them is opened, instead of the sample that the page begins with. */
export const pinnedPath = (): string =>
  new URL(writeLessonLink(pinnedSample(0, 'pinned'), 'http://page/')).hash;
