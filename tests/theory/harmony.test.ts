import { describe, expect, it } from 'vitest';
import {
  chordFunction,
  describeKey,
  findKey,
  looksLikeNumeral,
  parseNumeral,
  suggestChord,
} from '../../src/core/theory';
import { chord, key, name } from './read';

/**
 * Numerals: common practice, no source, beside the 705 published rows of `tests/reference/harmony.test.ts`.
 * Chord numbers as in number charts: common practice, no source.
 */
describe('numerals and numbers in a key', () => {
  it.each([
    ['C', 'I vi IV V7', 'C Am F G7'],
    ['Eb', 'I vi IV V7', 'E♭ Cm A♭ B♭7'],
    ['C', '1 6- 4 5', 'C Am F G'],
    ['C', '57 5/7 b7 2m7 1sus4', 'G7 G/B B♭ Dm7 Csus4'],
    ['C', 'IVmaj7 viiø7 vii°7 III+ ♭VII bVI #ivo7', 'Fmaj7 Bm7♭5 Bdim7 Eaug B♭ A♭ F♯dim7'],
    ['C', 'V7/ii V/V viio7/V ii7/V', 'A7 D F♯dim7 Am7'],
    ['C', 'I6 V65 V43 V42 I64 bII6', 'C/E G7/B G7/D G7/F C/G D♭/F'],
    ['Am', 'i iio III iv v V VI VII viio', 'Am Bdim C Dm Em E F G G♯dim'],
    ['Am', 'bIII bVI V7/III V7/iv imaj7', 'C F G7 A7 Am(maj7)'],
  ])('in %s %s', (where, numerals, symbols) => {
    const read = numerals.split(' ').map((text) => parseNumeral(text, key(where)));
    expect(read.map((each) => (each.ok ? each.value.symbol : each.problem.message)).join(' ')).toBe(symbols);
  });

  it.each(['8', '0', 'V/xx', 'IV/I/I', 'VIIX', 'x', ''])('%j is refused with a sentence', (text) => {
    const read = parseNumeral(text, key('C'));
    expect(!read.ok && read.problem.message).toMatch(/not a chord of a key/);
  });

  it('tells numerals from chord symbols', () => {
    expect(['vi', 'V7/V', '6-', '♭VII'].every(looksLikeNumeral)).toBe(true);
    expect(['Am', 'C/E', 'N.C.', 'Foo', ''].some(looksLikeNumeral)).toBe(false);
  });
});

/** Diatonic chords, dominants of other steps, borrowed chords: common practice, no source. */
describe('what a chord does', () => {
  it.each([
    ['C', 'C', 'I', 'diatonic'],
    ['Dm7', 'C', 'ii7', 'diatonic'],
    ['Bm7b5', 'C', 'viiø7', 'diatonic'],
    ['C/E', 'C', 'I6', 'diatonic'],
    ['G7/F', 'C', 'V42', 'diatonic'],
    ['E7', 'Am', 'V7', 'diatonic'],
    ['G#dim7', 'Am', 'vii°7', 'diatonic'],
    ['A7', 'C', 'V7/ii', 'secondary dominant'],
    ['E', 'C', 'V/vi', 'secondary dominant'],
    ['F#dim7', 'C', 'vii°7/V', 'secondary dominant'],
    ['G7', 'Am', 'V7/III', 'secondary dominant'],
    ['Fm', 'C', 'iv', 'borrowed'],
    ['Bb', 'C', '♭VII', 'borrowed'],
    ['Db', 'C', '♭II', 'borrowed'],
    ['D', 'Am', 'IV', 'borrowed'],
    ['F#m', 'Am', '♯vi', 'borrowed'],
    ['F7', 'C', 'IV7', 'outside'],
    ['Db7', 'C', '♭II7', 'outside'],
  ])('%s in %s is %s, %s', (symbol, where, numeral, kind) => {
    const found = chordFunction(chord(symbol), key(where));
    expect([found.numeral, found.kind]).toEqual([numeral, kind]);
    expect(found.sentence).toMatch(/^[A-G].*\.$/);
  });

  it('looks at where a tonic seventh goes', () => {
    expect(chordFunction(chord('C7'), key('C'), chord('F')).numeral).toBe('V7/IV');
    expect(chordFunction(chord('C7'), key('C'), chord('G7')).numeral).toBe('I7');
    expect(chordFunction(chord('D'), key('Am'), chord('G')).numeral).toBe('V/VII');
  });

  it('says it in plain words', () => {
    const sentence = (symbol: string, where: string) => chordFunction(chord(symbol), key(where)).sentence;
    expect(sentence('A7', 'C')).toBe('A7 (V7/ii) would lead to Dm, as a dominant of its own.');
    expect(chordFunction(chord('A7'), key('C'), chord('Dm7')).sentence).toBe(
      'A7 (V7/ii) leads to Dm, as a dominant of its own.',
    );
    expect(sentence('Bb', 'D dorian')).toBe('B♭ (♭VI) is borrowed from D minor.');
    expect(sentence('Fm', 'C')).toBe('Fm (iv) is borrowed from C minor.');
    expect(sentence('G7', 'C')).toBe('G7 (V7) is the dominant side: it wants to go home to C.');
  });
});

describe('a guess at what was meant', () => {
  it.each([
    ['am', 'Am'],
    ['bb7', 'B♭7'],
    ['H7', 'B7'],
    ['Cmja7', 'Cmaj7'],
    ['Gsuss4', 'Gsus4'],
    ['Dminn7', 'Dm7'],
    ['C(9', 'C9'],
    ['Foo', 'F'],
    ['Xm', null],
    ['hello world and more', null],
    ['', null],
  ])('%j: %s', (text, guess) => {
    expect(suggestChord(text)).toBe(guess);
  });
});

describe('the key of a line', () => {
  const notes = (text: string) => text.split(' ').map((each) => ({ name: name(each), weight: 1 }));
  const best = (text: string) => {
    const [guess] = findKey([], { notes: notes(text) });
    return guess && describeKey(guess.key);
  };

  it('is found without chords, in the spelling of its notes', () => {
    expect(best('F G A Bb C D E F F C A')).toBe('F major');
    expect(best('Db Eb F Gb Ab Bb C Db Db Ab F')).toBe('D♭ major');
    expect(best('C# D# E# F# G# A# B# C# C# G# E#')).toBe('C♯ major');
  });

  it('tips the balance where the chords leave it open', () => {
    const chords = ['Am', 'F', 'C', 'G'].map((symbol) => ({ chord: chord(symbol), weight: 4 }));
    const [minor] = findKey(chords, { notes: notes('A A E A C A G# A') });
    const [major] = findKey(chords, { notes: notes('C C G C E C G C') });
    expect([minor, major].map((guess) => guess && describeKey(guess.key))).toEqual(['A minor', 'C major']);
  });
});
