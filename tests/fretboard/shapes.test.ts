import { describe, expect, it } from 'vitest';
import { fret, pitchClassOf, type SpelledName } from '../../src/core/base';
import {
  createInstrument,
  DEFAULT_HAND,
  fingerLine,
  handSpan,
  homePosition,
  notesInPosition,
  octaveShapes,
  pitchAt,
  TUNINGS,
} from '../../src/core/fretboard';
import { parseChord, parseName, scaleFor } from '../../src/core/theory';
import { ONCE } from './arbitrary';
import { run, written } from './lines';

const bass = createInstrument();
const CLOSED = { ...DEFAULT_HAND, openStrings: 'avoid' as const };

function tonesOf(symbol: string): readonly SpelledName[] {
  const chord = parseChord(symbol);
  if (!chord.ok) throw new Error(symbol);
  return chord.value.tones.map(({ name }) => name);
}

const QUALITIES = [
  '',
  'm',
  'dim',
  'aug',
  '7',
  'maj7',
  'm7',
  'm7♭5',
  'dim7',
  '6',
  'm6',
  'sus2',
  'sus4',
  '7sus4',
];

describe.each(TUNINGS)('shapes on $id', ({ openStrings }) => {
  const instrument = createInstrument(openStrings);

  it.each(QUALITIES)('rise from root to octave under one hand: C%s', (quality) => {
    const tones = tonesOf(`C${quality}`);
    const shapes = octaveShapes(tones, instrument, CLOSED);
    expect(shapes.length).toBeGreaterThan(0);
    for (const { position, notes } of shapes) {
      const midis = notes.map((note) => pitchAt(note, instrument));
      expect(midis.every((midi, index) => index === 0 || midi > (midis[index - 1] ?? 0))).toBe(true);
      expect((midis.at(-1) ?? 0) - (midis[0] ?? 0)).toBe(12);
      expect(midis.map((midi) => midi % 12)).toEqual(notes.map(({ name }) => pitchClassOf(name)));
      expect(notes.every((note) => note.position === position && note.finger > 0)).toBe(true);
      notes.forEach((note, index) => {
        const before = notes[index - 1] ?? note;
        expect(handSpan(before.fret, note.fret, instrument.scaleLength)).toBeLessThanOrEqual(CLOSED.reach);
      });
    }
    const places = shapes.map(({ notes }) =>
      notes.map(({ string, fret: at }) => `${string}:${at}`).join(' '),
    );
    expect(new Set(places).size).toBe(places.length);
  });
});

/**
 * Places are plain arithmetic on the open strings; fingers of a major triad and octave (2, 1-4, 4) and of a scale from
 * the second finger: common practice, no source, beside the published rows of `tests/reference/fretboard.test.ts`.
 */
describe('shapes', () => {
  it('of a chord: every way up the octave within twelve frets', () => {
    expect(octaveShapes(tonesOf('C'), bass, CLOSED).map(({ notes }) => written(notes))).toEqual([
      'A3.2 D2.1 D5.4 G5.4',
      'E8.4 A7.3 D5.1 G5.1',
      'E8.2 A7.1 A10.4 D10.4',
      'E8.1 E12.4 A10.2 D10.2',
    ]);
  });

  it('use the open strings of position I where they may', () => {
    const shapes = octaveShapes(tonesOf('Am'), bass, DEFAULT_HAND);
    expect(shapes.map(({ notes }) => written(notes))).toContain('A0.0 A3.3 D2.2 G2.2');
  });

  it('of the scale that fits a chord', () => {
    const chord = parseChord('C');
    if (!chord.ok) throw new Error('C');
    const scale = scaleFor(chord.value, { tonic: { letter: 'C', alteration: 0 }, mode: 'major' });
    expect(octaveShapes(scale.names, bass, CLOSED).map(({ notes }) => written(notes))).toContain(
      'A3.2 A5.4 D2.1 D3.2 D5.4 G2.1 G4.3 G5.4',
    );
  });

  it('in a position: all notes under the hand, the lowest first', () => {
    expect(written(notesInPosition(tonesOf('C'), fret(7), bass, CLOSED))).toBe('E8.2 A7.1 A10.4 D10.4 G9.3');
    expect(written(notesInPosition(tonesOf('C'), fret(1), bass, DEFAULT_HAND))).toBe(
      'E0.0 E3.3 A3.3 D2.2 G0.0',
    );
  });

  it('are none without names', () => {
    expect(octaveShapes([], bass, CLOSED)).toEqual([]);
    expect(notesInPosition([], fret(1), bass, CLOSED)).toEqual([]);
  });

  it('know the position that a bar is played in', () => {
    const { notes } = fingerLine(run([36, 40, 43, 48]), bass, CLOSED, ONCE);
    expect(homePosition(notes)).toBe(2);
    expect(homePosition([null])).toBe(null);
  });

  it('keep the spelling they are given', () => {
    const name = parseName('E♭');
    if (!name.ok) throw new Error('E♭');
    const [shape] = octaveShapes(tonesOf('E♭m'), bass, CLOSED);
    expect(shape?.notes.map((note) => [note.name.letter, note.name.alteration])).toEqual([
      ['E', -1],
      ['G', -1],
      ['B', -1],
      ['E', -1],
    ]);
  });
});
