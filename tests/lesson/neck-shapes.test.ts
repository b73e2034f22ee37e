import { describe, expect, it } from 'vitest';
import { fret, midiOf } from '../../src/core/base';
import { DEFAULT_HAND, pitchAt } from '../../src/core/fretboard';
import {
  chordsOnNeck,
  deriveSheet,
  handMoves,
  keepPosition,
  kindsOf,
  type Lesson,
  type LineSheet,
  linePiece,
  neckShapes,
  newLesson,
  octavesOf,
  sampleLesson,
  setChartText,
  shapeAt,
} from '../../src/core/lesson';
import { parseName } from '../../src/core/theory';

const sheetOf = (chart: string): LineSheet =>
  lineSheet(setChartText(newLesson('test', 'Test'), 'piece-1', chart));

function lineSheet(lesson: Lesson): LineSheet {
  const piece = linePiece(lesson, 'piece-1');
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('not a line');
  return sheet;
}

function viewsOf(chart: string) {
  const sheet = sheetOf(chart);
  const bar = sheet.bars[0];
  if (bar === undefined) throw new Error('no bar');
  return { sheet, views: neckShapes(sheet, bar, DEFAULT_HAND) };
}

/** The families that a teacher expects, with the degrees of one octave (common practice, no source). */
const SHAPES: readonly (readonly [string, string])[] = [
  ['C', 'R 3 5 R'],
  ['Cm', 'R ♭3 5 R'],
  ['Cdim', 'R ♭3 ♭5 R'],
  ['Caug', 'R 3 ♯5 R'],
  ['C7', 'R 3 5 ♭7 R'],
  ['Cmaj7', 'R 3 5 7 R'],
  ['Cm7', 'R ♭3 5 ♭7 R'],
  ['C6', 'R 3 5 6 R'],
  ['Csus4', 'R 4 5 R'],
  ['Csus2', 'R 2 5 R'],
  ['Cm6', 'R ♭3 5 6 R'],
  ['Cm7b5', 'R ♭3 ♭5 ♭7 R'],
  ['Cdim7', 'R ♭3 ♭5 ♭♭7 R'],
  ['C7sus4', 'R 4 5 ♭7 R'],
];

describe('shapes on the neck', () => {
  it.each(SHAPES)('shows every octave of %s as %s, each note at its pitch', (chord, degrees) => {
    const { sheet, views } = viewsOf(`| ${chord} |`);
    const octaves = views.filter(({ id }) => id.startsWith('octave of tones'));
    expect(octaves.length).toBeGreaterThan(1);
    for (const { notes } of octaves) {
      expect(notes.map(({ degree }) => degree).join(' ')).toBe(degrees);
      for (const note of notes) {
        const name = parseName(note.name);
        if (!name.ok) throw new Error(note.name);
        const pitch = midiOf({ ...name.value, octave: 2 }) % 12;
        expect(pitchAt(note, sheet.instrument) % 12).toBe(pitch);
      }
    }
    const scales = views.filter(({ id }) => id.startsWith('octave of scale'));
    expect(scales.every(({ notes }) => notes.length === 8)).toBe(true);
    expect(new Set(views.map(({ id }) => id)).size).toBe(views.length);
    expect(new Set(views.map(({ title }) => title)).size).toBe(views.length);
  });

  it('shows a chord in the position that the line uses for it, with the scale of its section’s key', () => {
    const lesson = keepPosition(sampleLesson(0, 'test'), 'piece-1', { first: 5, last: 5 }, fret(5));
    const sheet = lineSheet(lesson);
    const chords = chordsOnNeck(sheet);
    expect(chords.map(({ chord }) => chord.symbol)).toEqual(['F', 'Dm', 'Gm', 'C7', 'F7', 'B♭', 'C']);
    const dominant = chords.find(({ chord }) => chord.symbol === 'F7');
    expect(dominant?.position).toBe(5);
    if (dominant === undefined) throw new Error('F7 is gone');
    const { tones, scale } = kindsOf(dominant.chord, dominant.key, 'letters');
    for (const kind of [tones, scale]) {
      const shape = shapeAt(sheet, dominant.chord, kind, fret(5), DEFAULT_HAND);
      expect(shape.where).toBe('in position V');
      expect(shape.notes.length).toBeGreaterThan(kind === tones ? 3 : 6);
      // One finger per fret, and the frets of the position.
      for (const note of shape.notes) expect(note.fret - (note.finger ?? 0)).toBe(4);
    }
    const octaves = octavesOf(sheet, dominant.chord, tones, { ...DEFAULT_HAND, highestFret: fret(20) });
    expect(octaves.map(({ where }) => where)).toContain('in position I from the E string');
    expect(octaves.some(({ notes }) => notes.some((note) => note.fret > 12))).toBe(true);
    const other = chordsOnNeck(sheetOf('Verse:\n| C | F | G7 | C |\n\nBridge:\n(key: E) | C♯m |'));
    expect(other.map(({ key }) => key.tonic.letter)).toEqual(['C', 'C', 'C', 'E']);
  });

  it('names the chord where a bar has two', () => {
    const titles = viewsOf('| F C7 |').views.map(({ title }) => title);
    expect(titles.some((title) => title.startsWith('F, '))).toBe(true);
    expect(titles.every((title) => /^(F|C7), /.test(title))).toBe(true);
  });

  it('has none for a bar without a chord', () => {
    expect(viewsOf('| N.C. |').views).toEqual([]);
  });
});

describe('the hand on the neck', () => {
  const kept = keepPosition(sampleLesson(0, 'test'), 'piece-1', { first: 4, last: 4 }, fret(1));
  const sheet = lineSheet(keepPosition(kept, 'piece-1', { first: 5, last: 5 }, fret(5)));

  it('announces a shift in the bar before it, and none while the hand stays', () => {
    expect(handMoves(sheet, 4, null)).toEqual({ position: 1, nextPosition: 5 });
    const last = sheet.bars[4]?.notes.at(-1) ?? null;
    expect(handMoves(sheet, 4, last)).toEqual({ position: 1, nextPosition: 5 });
    const still = lineSheet(keepPosition(kept, 'piece-1', { first: 5, last: 7 }, fret(1)));
    expect(handMoves(still, 4, null)).toEqual({ position: 1, nextPosition: null });
  });
});
