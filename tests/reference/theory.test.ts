import { Chord as TonalChord, Note as TonalNote, Scale as TonalScale } from 'tonal';
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import {
  ALL_KEYS,
  describeSignature,
  findKey,
  formatName,
  keyNames,
  keySignature,
  scaleFor,
  spellMidi,
} from '../../src/core/theory';
import { chord, chords, key, pitch, written } from '../theory/read';
import { CIRCLE_OF_FIFTHS } from './circle-of-fifths';

/** tonal writes accidentals with letters. */
const drawn = (names: readonly string[]): string => names.join(' ').replace(/b/g, '♭').replace(/#/g, '♯');

const ROOTS = ['C', 'C#', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];

describe('chord tones against tonal 6.4.3, a library the program does not use', () => {
  const endings = [
    '',
    'm',
    '6',
    'm6',
    '7',
    'maj7',
    'm7',
    'm7b5',
    'dim',
    'dim7',
    'aug',
    'sus2',
    'sus4',
    '7sus4',
    '9',
    'add9',
    'maj9',
    'm9',
    '69',
    '7b9',
    '7#9',
    '7#11',
    '7b5',
    '7#5',
    'mMaj7',
    'm11',
    '13',
  ];
  it.each(ROOTS.flatMap((root) => endings.map((ending) => root + ending)))('%s', (symbol) => {
    const ours = chord(symbol).tones.map((tone) => formatName(tone.name));
    const theirs = drawn(TonalChord.get(symbol).notes).split(' ');
    expect([...ours].sort()).toEqual([...theirs].sort());
  });
});

describe('scales against tonal 6.4.3', () => {
  const places = [
    ['C', 'C', 'C major'],
    ['Dm7', 'C', 'D dorian'],
    ['Em7', 'C', 'E phrygian'],
    ['Fmaj7', 'C', 'F lydian'],
    ['G7', 'C', 'G mixolydian'],
    ['Am7', 'C', 'A aeolian'],
    ['Bm7b5', 'C', 'B locrian'],
    ['C7', 'F', 'C mixolydian'],
    ['F7', 'F', 'F mixolydian'],
    ['Ebm', 'Ebm', 'Eb aeolian'],
    ['A7', 'Dm', 'A phrygian dominant'],
    ['Bb7', 'Ebm', 'Bb phrygian dominant'],
    ['Ab7', 'C', 'Ab lydian dominant'],
    ['Am(maj7)', 'Am', 'A melodic minor'],
    ['F#m', 'A', 'F# aeolian'],
    ['Gbmaj7', 'Db', 'Gb lydian'],
  ] as const;
  it.each(places)('%s in %s is %s', (symbol, where, scale) => {
    expect(written(scaleFor(chord(symbol), key(where)).names)).toBe(drawn(TonalScale.get(scale).notes));
  });

  it('every key of the signatures is the scale of its name', () => {
    for (const each of ALL_KEYS) {
      const tonic = formatName(each.tonic).replace('♭', 'b').replace('♯', '#');
      expect(written(keyNames(each))).toBe(drawn(TonalScale.get(`${tonic} ${each.mode}`).notes));
    }
  });
});

describe('key signatures against the circle of fifths (Open Music Theory, music21 10.5.0)', () => {
  it.each(CIRCLE_OF_FIFTHS)('%i: %s major, %s minor', (fifths, major, minor, altered) => {
    for (const where of [key(major), key(`${minor}m`)]) {
      expect(keySignature(where)).toBe(fifths);
      expect(/\((.*)\)/.exec(describeSignature(where))?.[1] ?? '').toBe(altered);
    }
  });
});

describe('pitches', () => {
  // MIDI 1.0 numbers notes from C = 0 by half steps; 60 is middle C, and 28 the low E of a bass (GM 2 calls it E1).
  it('sound as tonal 6.4.3 says', () => {
    for (const text of ['E1', 'Bb1', 'Cb2', 'B#1', 'F##2', 'Ebb3', 'G2']) {
      expect(midiOf(pitch(text))).toBe(TonalNote.midi(text));
    }
  });

  it('a pitch spelled in a key sounds what it was', () => {
    for (let midi = 23; midi < 60; midi += 1) {
      const spelled = spellMidi(midiOf(pitch(TonalNote.fromMidi(midi))), { key: key('Eb') });
      expect(midiOf(spelled)).toBe(midi);
    }
  });
});

describe('key finding on the chord patterns of Open Music Theory, "Pop/rock harmony" (CC BY-SA 4.0)', () => {
  it.each([
    ['doo-wop, I vi IV V', 'G Em C D', 'G', 'major'],
    ['plagal, I ♭VII IV I', 'G F C G', 'G', 'major'],
    ['lament in minor, i VII VI V', 'Em D C B', 'E', 'minor'],
    ['I V vi iii IV I IV V', 'D A Bm F#m G D G A', 'D', 'major'],
  ])('%s', (_, text, tonic, mode) => {
    const [best] = findKey(chords(text).map((each) => ({ chord: each, weight: 1 })));
    expect(best && [formatName(best.key.tonic), best.key.mode]).toEqual([tonic, mode]);
  });

  it('names both keys of i iv VII III, which ends like a cadence in the relative major', () => {
    const guesses = findKey(chords('Am Dm G C').map((each) => ({ chord: each, weight: 1 })));
    expect(
      guesses
        .slice(0, 2)
        .map((guess) => formatName(guess.key.tonic))
        .sort(),
    ).toEqual(['A', 'C']);
  });
});
