import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { formatDegree, parseChord, transposeChord } from '../../src/core/theory';
import { chord, name, written } from './read';

// Many cases in one test; a busy machine needs its time.
vi.setConfig({ testTimeout: 60_000 });

const tonesOf = (text: string) => written(chord(text).tones.map((tone) => tone.name));
const degreesOf = (text: string) =>
  chord(text)
    .tones.map((tone) => formatDegree(tone.degree))
    .join(' ');

describe('everyday chords', () => {
  it.each([
    ['C', 'C', 'C E G', 'major'],
    ['Cm', 'Cm', 'C E♭ G', 'minor'],
    ['C-', 'Cm', 'C E♭ G', 'minor'],
    ['C6', 'C6', 'C E G A', 'major'],
    ['Cm6', 'Cm6', 'C E♭ G A', 'minor'],
    ['C7', 'C7', 'C E G B♭', 'dominant'],
    ['Cmaj7', 'Cmaj7', 'C E G B', 'major'],
    ['CM7', 'Cmaj7', 'C E G B', 'major'],
    ['CΔ', 'Cmaj7', 'C E G B', 'major'],
    ['C-7', 'Cm7', 'C E♭ G B♭', 'minor'],
    ['Cm(maj7)', 'Cm(maj7)', 'C E♭ G B', 'minor'],
    ['Cm7b5', 'Cm7♭5', 'C E♭ G♭ B♭', 'half-diminished'],
    ['Cø', 'Cm7♭5', 'C E♭ G♭ B♭', 'half-diminished'],
    ['Cdim', 'Cdim', 'C E♭ G♭', 'diminished'],
    ['C°7', 'Cdim7', 'C E♭ G♭ B♭♭', 'diminished'],
    ['C+', 'Caug', 'C E G♯', 'augmented'],
    ['Caug', 'Caug', 'C E G♯', 'augmented'],
    ['Csus2', 'Csus2', 'C D G', 'suspended'],
    ['Csus', 'Csus4', 'C F G', 'suspended'],
    ['C7sus4', 'C7sus4', 'C F G B♭', 'suspended'],
    ['C9', 'C9', 'C E G B♭ D', 'dominant'],
    ['Cadd9', 'Cadd9', 'C E G D', 'major'],
    ['C7(b9,#11)', 'C7(♭9,♯11)', 'C E G B♭ D♭ F♯', 'dominant'],
    ['C7+9', 'C7♯9', 'C E G B♭ D♯', 'dominant'],
    ['C7-9', 'C7♭9', 'C E G B♭ D♭', 'dominant'],
    ['C(b5)', 'C(♭5)', 'C E G♭', 'major'],
    ['Cmaj11', 'Cmaj9add11', 'C E G B D F', 'major'],
    ['C5', 'C5', 'C G', 'major'],
    ['Ebb5', 'E♭(♭5)', 'E♭ G B♭♭', 'major'],
    ['C–7', 'Cm7', 'C E♭ G B♭', 'minor'],
  ])('%s is drawn %s and holds %s', (text, drawn, tones, family) => {
    expect(chord(text).symbol).toBe(drawn);
    expect(tonesOf(text)).toBe(tones);
    expect(chord(text).family).toBe(family);
  });

  it.each([
    ['Ebm', 'E♭ G♭ B♭'],
    ['Abm', 'A♭ C♭ E♭'],
    ['G#m', 'G♯ B D♯'],
    ['F#7', 'F♯ A♯ C♯ E'],
    ['Bbm7b5', 'B♭ D♭ F♭ A♭'],
    ['Dbdim7', 'D♭ F♭ A♭♭ C♭♭'],
    ['Baug', 'B D♯ F♯♯'],
  ])('%s is spelled %s', (text, tones) => {
    expect(tonesOf(text)).toBe(tones);
  });

  it('names degrees by the spelling', () => {
    expect(degreesOf('Cdim7')).toBe('R ♭3 ♭5 ♭♭7');
    expect(degreesOf('C13')).toBe('R 3 5 ♭7 2 6');
    expect(degreesOf('Csus2')).toBe('R 2 5');
  });

  it('keeps the bass of a slash chord apart from its tones', () => {
    const slash = chord('F7/Eb');
    expect(slash.symbol).toBe('F7/E♭');
    expect(slash.bass).toEqual(name('Eb'));
    expect(written(slash.tones.map((tone) => tone.name))).toBe('F A C E♭');
    expect(chord('C6/9').bass).toEqual(name('C'));
    expect(chord('C6/9/E').symbol).toBe('C6/9/E');
    expect(chord('C69').symbol).toBe('C6/9');
  });

  it.each([
    ['am', /capital letter/],
    ['Cfoo', /begins like a chord on C/],
    ['Bbxyz', /begins like a chord on B♭/],
    ['hello', /not a chord symbol/],
    ['', /missing/],
    ['<b>C</b>', /not a chord symbol/],
  ])('%j is refused with a sentence', (text, message) => {
    const read = parseChord(text);
    expect(!read.ok && read.problem.message).toMatch(message);
  });
});

/** Roots and endings as people write them, in every combination. */
const symbols = fc
  .tuple(
    fc.constantFrom('C', 'F#', 'B♭', 'Eb', 'G', 'Ab', 'D', 'C#', 'Gb'),
    fc.constantFrom('', 'm', '7', 'maj7', '-7', 'm7b5', 'dim', '°7', '+', 'sus2', 'sus4', '7sus4', '6', 'm6'),
    fc.constantFrom('', '', '', '/E', '/Bb', '/F#'),
  )
  .map((parts) => parts.join(''));

describe('any chord', () => {
  it.each(['Cmaj11', 'C9(#5,add11)', 'Cmaj13', 'C13(#5,add11)', 'Cm11'])(
    '%s is drawn with its eleventh',
    (text) => {
      expect(chord(chord(text).symbol)).toEqual(chord(text));
    },
  );

  it('is drawn in a way that reads back as the same chord', () => {
    fc.assert(
      fc.property(symbols, (text) => {
        expect(chord(chord(text).symbol)).toEqual(chord(text));
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it('keeps its degrees when transposed, and comes back', () => {
    const intervals = fc.constantFrom(
      { steps: 1, halfSteps: 2 },
      { steps: 2, halfSteps: 3 },
      { steps: -1, halfSteps: -1 },
      { steps: 3, halfSteps: 6 },
      { steps: 4, halfSteps: 7 },
    );
    fc.assert(
      fc.property(symbols, intervals, (text, interval) => {
        const moved = transposeChord(chord(text), interval);
        expect(moved.tones.map((tone) => tone.degree)).toEqual(chord(text).tones.map((tone) => tone.degree));
        expect(chord(moved.symbol)).toEqual(moved);
        const back = transposeChord(moved, { steps: -interval.steps, halfSteps: -interval.halfSteps });
        expect(back).toEqual(chord(text));
      }),
      { seed: 22, numRuns: 300 },
    );
  });

  it('never throws, whatever is typed', () => {
    const pieces = fc.array(
      fc.constantFrom('C', 'H', 'b', '#', '♭', 'm', 'maj', '7', '11', '(', ')', '/', '+', '-'),
      {
        maxLength: 12,
      },
    );
    const typed = fc.oneof(
      fc.string({ unit: 'binary' }),
      pieces.map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const read = parseChord(text);
        expect(read.ok ? read.value.symbol : read.problem.message).not.toBe('');
      }),
      { seed: 23, numRuns: 150 },
    );
  }, 60_000);
});

describe('power chords', () => {
  it.each([
    ['C5', 'C5'],
    ['C(no3)', 'C5'],
    ['C5(9)', 'Csus2'],
    ['C5add9', 'Csus2'],
    ['C5(b7)', 'C7(no3)'],
    ['C5(b6)', 'C(add♭6,no3)'],
    ['C5#11', 'C(♯11,no3)'],
    ['C5/G', 'C5/G'],
  ])('%s is %s', (typed, drawn) => {
    const chord = parseChord(typed);
    expect(chord.ok && chord.value.symbol).toBe(drawn);
  });

  it.each(['Cm5', 'C5sus4', 'C5(no5)', 'C5maj7', 'C(bass,add9)'])(
    '%s is not taken for one, which would forget a part of it',
    (typed) => {
      expect(parseChord(typed).ok).toBe(false);
    },
  );
});
