import { fret, type LineNote, midiOf, type SpelledName } from '../../base';
import { transposeChartText, transposeSignature } from '../../chart';
import { type Instrument, rangeOf, transposePins } from '../../fretboard';
import { type Interval, transposeName, transposePitch, transpositionBy, transpositionTo } from '../../theory';
import { instrumentOf, readPiece } from '../request';
import type { InstrumentSettings, Lesson, LineBar, LinePiece } from '../types';
import { linePiece } from './piece';

function transposeNote(note: LineNote, interval: Interval, instrument: Instrument): LineNote {
  const { pins, ...rest } = note;
  const pitch = transposePitch(note.pitch, interval);
  const moved =
    pins === undefined ? null : transposePins(pins, midiOf(note.pitch), midiOf(pitch), instrument);
  return moved === null ? { ...rest, pitch } : { ...rest, pitch, pins: moved };
}

/** A kept hand position moves along with the shapes; where the neck ends the hand is free again. */
function transposeBar(bar: LineBar, interval: Interval, instrument: Instrument): LineBar {
  const { position, ...rest } = bar;
  const moved = position === undefined ? 0 : position + interval.halfSteps;
  return {
    ...rest,
    harmony: transposeSignature(bar.harmony, interval),
    notes: bar.notes.map((note) => transposeNote(note, interval, instrument)),
    ...(bar.over === undefined
      ? {}
      : { over: bar.over.map((note) => transposeNote(note, interval, instrument)) }),
    ...(moved < 1 || moved > instrument.frets ? {} : { position: fret(moved) }),
  };
}

/** A piece moved by an interval: its chart, its key, its line and its takes. */
export function transposePiece(piece: LinePiece, interval: Interval, instrument: Instrument): LinePiece {
  const move = (bar: LineBar) => transposeBar(bar, interval, instrument);
  return {
    ...piece,
    chartText: transposeChartText(piece.chartText, interval),
    key:
      piece.key === null ? null : { tonic: transposeName(piece.key.tonic, interval), mode: piece.key.mode },
    bars: piece.bars.map(move),
    parked: piece.parked.map(move),
    ...(piece.buildUp === undefined
      ? {}
      : {
          buildUp: {
            ...piece.buildUp,
            edits: piece.buildUp.edits.map((edit) => ({
              ...edit,
              harmony: transposeSignature(edit.harmony, interval),
              notes: edit.notes.map((note) => transposeNote(note, interval, instrument)),
            })),
          },
        }),
    takes: piece.takes.map((take) => ({
      ...take,
      bars: take.bars.map(({ harmony, notes }) => ({
        harmony: transposeSignature(harmony, interval),
        notes: notes.map((note) => transposeNote(note, interval, instrument)),
      })),
    })),
  };
}

/**
 * The whole lesson moved by an interval: charts, keys and notes keep their relation, fingers are found anew.
 * Moving back by the opposite interval gives the same lesson.
 */
export const transposeLesson = (lesson: Lesson, interval: Interval): Lesson => ({
  ...lesson,
  pieces: lesson.pieces.map((piece) =>
    piece.kind === 'line' ? transposePiece(piece, interval, instrumentOf(lesson.instrument)) : piece,
  ),
});

/** How many notes of some bars would lie outside the instrument after the move. */
function notesOff(bars: readonly LineBar[], interval: Interval, settings: InstrumentSettings): number {
  const { lowest, highest } = rangeOf(instrumentOf(settings));
  return bars
    .flatMap((bar) => bar.notes)
    .filter((note) => {
      const sounding = midiOf(note.pitch) + interval.halfSteps;
      return sounding < lowest || sounding > highest;
    }).length;
}

/** An interval, or the other way round to the same names where fewer notes then leave the instrument. */
export function nearestMove(
  { instrument }: Pick<Lesson, 'instrument'>,
  bars: readonly LineBar[],
  near: Interval,
): Interval {
  const octave = near.halfSteps > 0 ? -1 : 1;
  const far = { steps: near.steps + 7 * octave, halfSteps: near.halfSteps + 12 * octave };
  const nearOff = notesOff(bars, near, instrument);
  return nearOff <= notesOff(bars, far, instrument) ? near : far;
}

/**
 * The whole lesson moved so that the piece's key has this tonic (the mode stays). It moves the nearer way, or
 * the other way round where fewer notes would then leave the instrument.
 */
export function transposeTo(lesson: Lesson, pieceId: string, tonic: SpelledName): Lesson {
  const piece = linePiece(lesson, pieceId);
  if (piece === null) {
    return lesson;
  }
  const { key } = readPiece(piece);
  const near = transpositionTo(key, tonic).interval;
  if (near.halfSteps === 0 && near.steps === 0) {
    return lesson;
  }
  const bars = lesson.pieces.flatMap((each) => (each.kind === 'line' ? each.bars : []));
  return transposeLesson(lesson, nearestMove(lesson, bars, near));
}

/**
 * The whole lesson moved by so many half steps, up or down as asked; the piece's new key has the better of its
 * spellings. What leaves the instrument is for the lesson check to say.
 */
export function transposeBy(lesson: Lesson, pieceId: string, halfSteps: number): Lesson {
  const piece = linePiece(lesson, pieceId);
  if (piece === null || halfSteps === 0) return lesson;
  return transposeLesson(lesson, transpositionBy(readPiece(piece).key, halfSteps).interval);
}
