import { describe, expect, it } from 'vitest';
import { LETTERS } from '../../src/core/base';
import {
  describeKey,
  describeKeyIn,
  describeScaleIn,
  findKey,
  formatChordIn,
  formatNameIn,
  formatPitchIn,
  NAMINGS,
  parseNameIn,
  scaleFor,
  suggestChord,
  suggestKey,
} from '../../src/core/theory';
import { chord, chords, key, name, pitch } from './read';

describe('note names in other countries', () => {
  // German names: bernhardt-iner.de; fixed do: happynote.com.
  it.each([
    ['C', 'C', 'Do'],
    ['B', 'H', 'Si'],
    ['Bb', 'B', 'Si♭'],
    ['Eb', 'Es', 'Mi♭'],
    ['Ab', 'As', 'La♭'],
    ['Db', 'Des', 'Re♭'],
    ['Cb', 'Ces', 'Do♭'],
    ['F#', 'Fis', 'Fa♯'],
    ['B#', 'His', 'Si♯'],
    ['Bbb', 'Heses', 'Si♭♭'],
    ['Ebb', 'Eses', 'Mi♭♭'],
    ['Abb', 'Asas', 'La♭♭'],
    ['F##', 'Fisis', 'Fa♯♯'],
  ])('%s is %s and %s', (letters, german, fixedDo) => {
    expect(formatNameIn('german', name(letters))).toBe(german);
    expect(formatNameIn('fixed do', name(letters))).toBe(fixedDo);
  });

  it('hold in chords, keys, scales and pitches', () => {
    expect(formatChordIn('german', chord('F#m7b5/B'))).toBe('Fism7♭5/H');
    expect(formatChordIn('fixed do', chord('Bbmaj7'))).toBe('Si♭maj7');
    expect(formatChordIn('letters', chord('Bbmaj7/D'))).toBe('B♭maj7/D');
    expect(describeKeyIn('german', key('Bb'))).toBe('B major');
    expect(describeScaleIn('german', scaleFor(chord('Bb7'), key('Eb')))).toBe('B mixolydian');
    expect(formatPitchIn('german', pitch('B1'))).toBe('H1');
  });

  it('are read back as what they were written for', () => {
    for (const naming of NAMINGS) {
      for (const letter of LETTERS) {
        for (const alteration of [-2, -1, 0, 1, 2] as const) {
          const one = { letter, alteration };
          expect(parseNameIn(naming, formatNameIn(naming, one))).toEqual({ ok: true, value: one });
        }
      }
    }
  });

  it.each([
    ['german', 'B', 'B♭'],
    ['german', 'Bb', 'B♭'],
    ['german', 'Hes', 'B♭'],
    ['german', 'F#', 'F♯'],
    ['fixed do', 'sib', 'B♭'],
    ['fixed do', 'Ré', 'D'],
  ] as const)('in %s names %s is %s', (naming, text, letters) => {
    expect(parseNameIn(naming, text)).toEqual({ ok: true, value: name(letters) });
  });

  it.each([
    ['letters', 'H', /from A to G/],
    ['letters', 'Fis', /from A to G/],
    ['german', 'B#', /B is a half step below H/],
    ['german', 'Ais?', /from A to H/],
    ['fixed do', 'B', /Do, Re, Mi/],
    ['fixed do', '', /Do, Re, Mi/],
  ] as const)('in %s names %j is refused with a sentence', (naming, text, message) => {
    const read = parseNameIn(naming, text);
    expect(!read.ok && read.problem.message).toMatch(message);
  });
});

describe('other names in a chart that is typed in letters', () => {
  it.each([
    ['H', 'B'],
    ['H7', 'B7'],
    ['Hm7b5', 'Bm7♭5'],
    ['C/H', 'C/B'],
    ['Fism', 'F♯m'],
    ['Es7', 'E♭7'],
    ['As', 'A♭'],
    ['Des/F', 'D♭/F'],
    ['Sol7', 'G7'],
    ['Lam', 'Am'],
    ['Sib/Re', 'B♭/D'],
  ])('%s is probably %s', (typed, letters) => {
    expect(suggestChord(typed)).toBe(letters);
  });
});

describe('other names of a key in a chart', () => {
  it.each([
    ['H', 'B major'],
    ['Hm', 'B minor'],
    ['Fis minor', 'F♯ minor'],
    ['Es', 'E♭ major'],
    ['Sol', 'G major'],
    ['Sib minor', 'B♭ minor'],
    ['X', null],
  ])('%s is probably %s', (typed, letters) => {
    const found = suggestKey(typed);
    expect(found && describeKey(found)).toBe(letters);
  });
});

describe('the reason for a key', () => {
  const reasonIn = (naming: (typeof NAMINGS)[number], text: string) =>
    findKey(
      chords(text).map((each) => ({ chord: each, weight: 1 })),
      { noteNames: naming },
    )[0]?.reason;

  it('names chords and key as it is asked to', () => {
    expect(reasonIn('letters', 'Bb Eb F7 Bb')).toBe(
      'Every chord belongs to B♭ major, it begins and ends on B♭ and F7 leads back to B♭.',
    );
    expect(reasonIn('german', 'Bb Eb F7 Bb')).toBe(
      'Every chord belongs to B major, it begins and ends on B and F7 leads back to B.',
    );
    expect(reasonIn('german', 'Bm Em F#7 Bm')).toBe(
      'Every chord belongs to H minor, it begins and ends on H and Fis7 leads back to H.',
    );
    expect(reasonIn('fixed do', 'C F G7 C A7')).toMatch(/^Every chord except La7 belongs to Do major/);
  });

  it('does not change what is found', () => {
    const found = (naming: (typeof NAMINGS)[number]) =>
      findKey(
        chords('Bm7b5 E7 Am Bb').map((each) => ({ chord: each, weight: 1 })),
        { noteNames: naming },
      ).map(({ key: one, score }) => [one, score]);
    expect(found('german')).toEqual(found('letters'));
    expect(found('fixed do')).toEqual(found('letters'));
  });
});

/**
 * The names that music21 10.5 (BSD-3, `pitch.Pitch.german` and `pitch.Pitch.spanish`) gives for the letters, from its
 * published examples and rules as remembered: B is H, B♭ is B, E♭ is Es, A♭ is As, sharps end on -is; fixed do is
 * do re mi fa sol la si.
 */
describe('note names of music21', () => {
  it.each([
    ['C', 'C', 'do'],
    ['D', 'D', 're'],
    ['E', 'E', 'mi'],
    ['F', 'F', 'fa'],
    ['G', 'G', 'sol'],
    ['A', 'A', 'la'],
    ['B', 'H', 'si'],
  ])('natural %s is %s and %s', (letters, german, fixedDo) => {
    expect(formatNameIn('german', name(letters))).toBe(german);
    expect(formatNameIn('fixed do', name(letters)).toLowerCase()).toBe(fixedDo);
  });

  it.each([
    ['Bb', 'B'],
    ['Eb', 'Es'],
    ['Ab', 'As'],
    ['E#', 'Eis'],
    ['A#', 'Ais'],
    ['Gb', 'Ges'],
  ])('altered %s is %s in German', (letters, german) => {
    expect(formatNameIn('german', name(letters))).toBe(german);
  });
});
