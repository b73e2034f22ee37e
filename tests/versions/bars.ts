import type { Lesson } from '../../src/core/lesson';

/** The line of the sample lesson. */
export const LINE = 'piece-1';

/** The notes of a bar moved by octaves: a change that is seen. */
export const withBarMoved =
  (at: number, octaves: number) =>
  (lesson: Lesson): Lesson => ({
    ...lesson,
    pieces: lesson.pieces.map((piece) =>
      piece.kind === 'line' && piece.id === LINE
        ? {
            ...piece,
            bars: piece.bars.map((bar, index) =>
              index === at
                ? {
                    ...bar,
                    notes: bar.notes.map((note) => ({
                      ...note,
                      pitch: { ...note.pitch, octave: note.pitch.octave + octaves },
                    })),
                  }
                : bar,
            ),
          }
        : piece,
    ),
  });
