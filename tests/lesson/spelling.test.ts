import { describe, expect, it } from 'vitest';
import { midiOf, type SpelledPitch, ticks } from '../../src/core/base';
import { type Lesson, newLesson, newLinePiece, setChartText, setKey } from '../../src/core/lesson';
import { formatPitch } from '../../src/core/theory';

const GIS: SpelledPitch = { letter: 'G', alteration: 1, octave: 1 };

/** A line as a file without chords brings it: everything by sharps, over nothing. */
function brought(pitches: readonly SpelledPitch[], tiedOn = false): Lesson {
  const piece = newLinePiece('piece-1', 'Line');
  const note = (pitch: SpelledPitch, place: number) => ({
    start: ticks(place * 960),
    duration: ticks(960),
    pitch,
  });
  const notes = pitches.map((pitch, place) => ({
    ...note(pitch, place),
    ...(tiedOn && place === pitches.length - 1 ? { tiedOn } : {}),
  }));
  const bar = (id: string, own: typeof notes) =>
    ({ id, harmony: 'N.C.@3840', origin: 'hand', kept: false, notes: own }) as const;
  return {
    ...newLesson('lesson', 'Spelling'),
    pieces: [
      {
        ...piece,
        chartText: '| N.C. | N.C. |',
        bars: [
          bar('bar-1', notes),
          bar(
            'bar-2',
            pitches.slice(-1).map((pitch) => note(pitch, 0)),
          ),
        ],
      },
    ],
  };
}

function names(lesson: Lesson): readonly string[][] {
  const [piece] = lesson.pieces;
  return piece?.kind === 'line'
    ? piece.bars.map(({ notes }) => notes.map(({ pitch }) => formatPitch(pitch)))
    : [];
}

describe('notes that come in without chords', () => {
  const before = brought([{ letter: 'F', alteration: 0, octave: 1 }, GIS]);

  it('are spelled by the chord as soon as it is written: G♯ over Fm is A♭', () => {
    const after = setChartText(before, 'piece-1', '| Fm | N.C. |');
    expect(names(after)[0]).toEqual(['F1', 'A♭1']);
    expect(names(after)[1]).toEqual(['G♯1']);
  });

  it('keep a name that fits, and every sound', () => {
    const after = setChartText(before, 'piece-1', '| E | Fm |');
    expect(names(after)).toEqual([[expect.any(String), 'G♯1'], ['A♭1']]);
    const sounds = (lesson: Lesson) =>
      lesson.pieces.flatMap((piece) =>
        piece.kind === 'line'
          ? piece.bars.flatMap(({ notes }) => notes.map(({ pitch }) => midiOf(pitch)))
          : [],
      );
    expect(sounds(after)).toEqual(sounds(before));
  });

  it('keep the name over a bar line to which they are tied', () => {
    const tied = setChartText(
      brought([{ letter: 'F', alteration: 0, octave: 1 }, GIS], true),
      'piece-1',
      '| Fm | E |',
    );
    expect(names(tied)).toEqual([['F1', 'A♭1'], ['A♭1']]);
  });

  it('are spelled by the key where it alone becomes known, over no chord and beside the chord', () => {
    const keyed = setKey(before, 'piece-1', { tonic: { letter: 'A', alteration: -1 }, mode: 'major' });
    expect(names(keyed)).toEqual([['F1', 'A♭1'], ['A♭1']]);
    const sharp = setKey(keyed, 'piece-1', { tonic: { letter: 'E', alteration: 0 }, mode: 'major' });
    expect(names(sharp)[1]).toEqual(['G♯1']);
    // The chord's own note keeps the chord's name in every key.
    const chord = setChartText(before, 'piece-1', '| Fm | Fm |');
    const other = setKey(chord, 'piece-1', { tonic: { letter: 'E', alteration: 0 }, mode: 'major' });
    expect(names(other)).toEqual([['F1', 'A♭1'], ['A♭1']]);
  });

  it('are spelled by the key that the chart names', () => {
    const named = setChartText(before, 'piece-1', '| N.C. | (key: Ab) N.C. |');
    expect(names(named)[1]).toEqual(['A♭1']);
  });
});
