import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import { inKey, neckChanges, playedElsewhere, withNeckChanges } from '../../src/core/composing';
import { rangeOf, TUNINGS } from '../../src/core/fretboard';
import {
  changeLine,
  deriveSheet,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  linePiece,
  newLesson,
  setChartText,
  setInstrument,
} from '../../src/core/lesson';
import type { LineNotes } from '../../src/core/line';
import { line } from '../line/notation';

const PIECE = 'piece-1';
const NONE = new Set<number>();

const tuned = (id: string): InstrumentSettings => {
  const openStrings = TUNINGS.find((tuning) => tuning.id === id)?.openStrings;
  if (openStrings === undefined) throw new Error(`There is no tuning ${id}.`);
  return setInstrument(newLesson('lesson', 'Lesson'), { openStrings }).instrument;
};

function pieceOf(lesson: Lesson): LinePiece {
  const piece = linePiece(lesson, PIECE);
  if (piece === null) throw new Error('There is a line.');
  return piece;
}

/** A line over one chord a bar. */
function written(notes: LineNotes): LinePiece {
  const lesson = setChartText(
    newLesson('lesson', 'Lesson'),
    PIECE,
    `| ${notes.map(() => 'D').join(' | ')} |`,
  );
  return pieceOf(
    changeLine(lesson, PIECE, (piece) => ({
      ...piece,
      bars: piece.bars.map((bar, index) => ({ ...bar, notes: notes[index] ?? [], origin: 'hand' as const })),
    })),
  );
}

const midis = (piece: LinePiece) => piece.bars.map(({ notes }) => notes.map(({ pitch }) => midiOf(pitch)));

/** The line as it is on a tuning, with what is said of each change. */
function onto(notes: string, tuning: string) {
  const piece = written(line(notes));
  const changes = neckChanges(piece, tuned(tuning));
  const after = withNeckChanges(piece, tuned(tuning), changes, NONE);
  return { piece, changes, after, said: changes.map(({ what, why }) => [what, ...why].join(' ')) };
}

describe('a line on a neck that does not have all of its notes', () => {
  it('takes a figure up as a whole, so that it keeps its shape', () => {
    const { after, said } = onto('B0 . D1 . F♯1 . A1 . | D2 . A1 . F♯1 . E1 .', 'standard');
    expect(midis(after)).toEqual(midis(written(line('B1 . D2 . F♯2 . A2 . | D2 . A1 . F♯1 . E1 .'))));
    expect(said).toEqual([
      'Bar 1: 4 notes an octave higher. B0 lies below the lowest string. What stands beside it goes along, so that the tune keeps its shape.',
    ]);
  });

  it('moves a single low note by itself where that turns less of the tune round', () => {
    const { after, said } = onto('D2 . A2 . D2 . D1 . | A2 . F♯2 . D2 . A2 .', 'standard');
    expect(midis(after)[0]).toEqual(midis(written(line('D2 . A2 . D2 . D2 .')))[0]);
    expect(said).toEqual(['Bar 1: 1 note an octave higher. D1 lies below the lowest string.']);
  });

  it('keeps a figure whole whatever the leap into the bar', () => {
    const { after } = onto('D2 . A1 . F♯1 . A1 . | C1 . D1 E1 G1 . F♯1 . | F♯1 . A1 . D2 . A1 .', 'standard');
    expect(midis(after)[1]).toEqual(midis(written(line('C2 . D2 E2 G2 . F♯2 .')))[0]);
  });

  it('keeps a tie over the bar line', () => {
    const { after } = onto('D2 . A1 . D1~ . . . | D1 . . . A1 . D2 .', 'standard');
    const [first, second] = after.bars;
    const last = first?.notes.at(-1);
    const held = second?.notes[0];
    expect(last?.tiedOn).toBe(true);
    expect(last && midiOf(last.pitch)).toBe(held && midiOf(held.pitch));
  });

  it('is as it was where every change is refused, and where the neck has it all', () => {
    const { piece, changes } = onto('B0 . D1 . F♯1 . A1 .', 'standard');
    expect(withNeckChanges(piece, tuned('standard'), changes, new Set([0]))).toBe(piece);
    expect(neckChanges(piece, tuned('five-strings'))).toEqual([]);
  });

  it('lies on it by octaves alone, whatever was played', () => {
    const pitches = fc.constantFrom(
      'B0',
      'C1',
      'D1',
      'E♭1',
      'E1',
      'G1',
      'A1',
      'D2',
      'G2',
      'C3',
      'G3',
      'C4',
      'E♭4',
    );
    const bars = fc.array(fc.array(pitches, { minLength: 4, maxLength: 4 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(bars, fc.constantFrom(...TUNINGS.map(({ id }) => id)), (drawn, id) => {
        const { piece, after } = onto(
          drawn.map((bar) => bar.map((each) => `${each} .`).join(' ')).join(' | '),
          id,
        );
        const { lowest, highest } = rangeOf(deriveSheetOf(after, tuned(id)).instrument);
        midis(after).forEach((bar, index) => {
          bar.forEach((midi, place) => {
            expect(midi).toBeGreaterThanOrEqual(lowest);
            expect(midi).toBeLessThanOrEqual(highest);
            expect(Math.abs(midi - (midis(piece)[index]?.[place] ?? 0)) % 12).toBe(0);
          });
        });
        expect(neckChanges(after, tuned(id))).toEqual([]);
      }),
      { seed: 20261201, numRuns: 60 },
    );
  });
});

function deriveSheetOf(piece: LinePiece, settings: InstrumentSettings) {
  const sheet = deriveSheet(piece, settings, 'letters');
  if (sheet.kind !== 'line') throw new Error('The sheet of a line is a line.');
  return sheet;
}

describe('what is played elsewhere', () => {
  const piece = written(line('E1 . F♯1 . A1 . B1 . | D2 . F♯2 . A2 . F♯2 .'));
  const told = (id: string) => {
    const instrument = tuned(id);
    const [before, after] = [deriveSheetOf(piece, tuned('standard')), deriveSheetOf(piece, instrument)];
    return playedElsewhere(before, after, { instrument, how: null, tuned: true, turned: false });
  };

  it('is told by bar with the new strings: only the lowest one is another in drop D', () => {
    expect(told('drop-d')).toEqual({
      bars: [0],
      words: ['Bar 1: the same notes, elsewhere on the neck, for the strings are tuned to D A D G.'],
    });
    expect(told('half-step-down').bars).toEqual([0, 1]);
  });

  it('is nothing where a string is added that the line does without', () => {
    expect(told('five-strings-high').words).toEqual(['Every note keeps its place on the neck.']);
  });

  it('is told of the bars alone that keep their notes', () => {
    const standard = tuned('standard');
    const worded = (notes: string, isRefused = false) => {
      const { piece: low, after: moved } = onto(notes, 'standard');
      const after = isRefused ? low : moved;
      const [was, now] = [deriveSheetOf(low, tuned('drop-d')), deriveSheetOf(after, standard)];
      return playedElsewhere(was, now, { instrument: standard, how: null, tuned: true, turned: false }).words;
    };
    expect(worded('D1 . D2 . F♯2 . A2 . | D2 . F♯2 . A2 . F♯2 .')).toEqual([
      'Every note of the other bars keeps its place on the neck.',
    ]);
    expect(worded('D1 . D2 . F♯2 . A2 .')).toEqual([]);
    // A note that is left off the neck has no place there.
    expect(worded('D1 . D2 . F♯2 . A2 . | D2 . F♯2 . A2 . F♯2 .', true)).toEqual([
      'Every note of the other bars keeps its place on the neck.',
    ]);
  });

  it('is not told bar by bar where all of it is moved, but by how far', () => {
    const lesson = inKey(
      { ...newLesson('lesson', 'Lesson'), pieces: [piece] },
      PIECE,
      { tonic: { letter: 'F', alteration: 0 }, mode: 'major' },
      'by shape',
    );
    const { instrument } = lesson;
    const [before, after] = [deriveSheetOf(piece, instrument), deriveSheetOf(pieceOf(lesson), instrument)];
    expect(
      playedElsewhere(before, after, { instrument, how: 'by shape', tuned: false, turned: true }),
    ).toEqual({
      bars: [],
      words: [
        'Chords and notes are 3 half steps higher.',
        'Staff and tab are the same for either hand; pictures of the neck are drawn for the other one.',
      ],
    });
  });
});
