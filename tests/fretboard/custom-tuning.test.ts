import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import { readTuning, TUNINGS, writeTuning } from '../../src/core/fretboard';
import { formatPitch, NAMINGS, type Naming } from '../../src/core/theory';

const read = (text: string, naming: Naming = 'letters'): string => {
  const result = readTuning(text, naming);
  return result.ok ? [...result.value].reverse().map(formatPitch).join(' ') : result.problem.message;
};

describe('a tuning as a player writes it', () => {
  it.each([
    ['E A D G', 'E1 A1 D2 G2'],
    ['D A D G', 'D1 A1 D2 G2'],
    ['Eb, Ab, Db, Gb', 'E♭1 A♭1 D♭2 G♭2'],
    ['B E A D G C', 'B0 E1 A1 D2 G2 C3'],
    ['A D G C', 'A0 D1 G1 C2'],
    ['A1 D G C', 'A1 D2 G2 C3'],
    ['B E A D', 'B0 E1 A1 D2'],
    ['F# B E A', 'F♯1 B1 E2 A2'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it.each(NAMINGS)('reads every tuning of the list as it is written in %s', (naming) => {
    for (const { openStrings } of TUNINGS) {
      const result = readTuning(writeTuning(openStrings, naming), naming);
      expect(result.ok && result.value).toEqual(openStrings);
    }
  });

  it.each([
    ['german', 'H E A D G', 'B0 E1 A1 D2 G2'],
    ['german', 'B Es As Des', 'B♭0 E♭1 A♭1 D♭2'],
    ['german', 'H0 E1 A1 D2', 'B0 E1 A1 D2'],
    ['fixed do', 'Si Mi La Re Sol Do', 'B0 E1 A1 D2 G2 C3'],
    ['fixed do', 'sib0 mib1 la1 re2', 'B♭0 E♭1 A1 D2'],
  ] as const)('in %s names %s', (naming, text, expected) => {
    expect(read(text, naming)).toBe(expected);
  });

  it.each([
    [
      'german',
      'E A D X',
      '“X” is not a note name; write a string as E, B or Fis, with an octave if you like: E1.',
    ],
    ['german', 'E1 A1 D2 H1', 'H1 is not higher than D2: write the strings from the lowest to the highest.'],
    [
      'fixed do',
      'Mi La Re B',
      '“B” is not a note name; write a string as Mi, Si♭ or Fa♯, with an octave if you like: Mi1.',
    ],
    [
      'fixed do',
      '',
      'Write the open strings from the lowest to the highest, four to six of them, for example Mi La Re Sol.',
    ],
    ['fixed do', 'Mi0 La Re Sol', 'Mi0 is lower than a bass string can be tuned; the lowest is La0.'],
  ] as const)('in %s names says what is wrong with "%s"', (naming, text, message) => {
    expect(read(text, naming)).toBe(message);
  });

  it('reads any text as a tuning or answers with a sentence', () => {
    const words = fc.oneof(
      fc.string(),
      fc.constantFrom('E', 'Bb', 'F#', 'Eb1', 'G4', 'e', 'do', '♯', '1', 'E-1', 'E99'),
    );
    let tunings = 0;
    fc.assert(
      fc.property(fc.array(words, { maxLength: 8 }), (parts) => {
        const result = readTuning(parts.join(' '));
        if (result.ok) {
          tunings += 1;
          const midis = result.value.map(midiOf);
          expect(midis.length).toBeGreaterThanOrEqual(4);
          expect(midis.length).toBeLessThanOrEqual(6);
          expect(midis.every((midi, index) => index === 0 || midi < (midis[index - 1] ?? 0))).toBe(true);
        } else {
          expect(result.problem.message).toMatch(/^\S.+[.]$/u);
        }
      }),
      { seed: 8, numRuns: 2000 },
    );
    expect(tunings).toBeGreaterThan(0);
  });

  it.each([
    ['', 'Write the open strings from the lowest to the highest, four to six of them, for example E A D G.'],
    [
      'E A D',
      'Write the open strings from the lowest to the highest, four to six of them, for example E A D G.',
    ],
    ['E A D H', '“H” is not a note name; write a string as E, B♭ or F♯, with an octave if you like: E1.'],
    ['E A D G9', '“G9” is not a note name; write a string as E, B♭ or F♯, with an octave if you like: E1.'],
    ['E1 A1 D2 G1', 'G1 is not higher than D2: write the strings from the lowest to the highest.'],
    ['E0 A D G', 'E0 is lower than a bass string can be tuned; the lowest is A0.'],
  ])('says what is wrong with "%s"', (text, message) => {
    expect(read(text)).toBe(message);
  });
});
