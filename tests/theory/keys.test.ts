import { describe, expect, it } from 'vitest';
import {
  ALL_KEYS,
  alterationInKey,
  bestEnharmonicKey,
  closeGuess,
  describeKey,
  describeScaleIn,
  describeSignature,
  findKey,
  keyNames,
  keySignature,
  parseKey,
  scaleFor,
  transpositionBy,
  transpositionTo,
} from '../../src/core/theory';
import { chord, chords, key, name, written } from './read';

describe('keys', () => {
  it('offers every key a signature can show, once', () => {
    const names = ALL_KEYS.map(describeKey);
    expect(new Set(names).size).toBe(30);
    expect(ALL_KEYS.every((each) => Math.abs(keySignature(each)) <= 7)).toBe(true);
  });

  it('says what a key is in words', () => {
    expect(`${describeKey(key('F'))}: ${describeSignature(key('F'))}`).toBe('F major: one flat (B♭)');
    expect(describeSignature(key('Bm'))).toBe('two sharps (F♯, C♯)');
    expect(describeSignature(key('Am'))).toBe('no sharps or flats');
  });

  it('spells its notes: no A♯ in F major, a C♭ in E♭ minor', () => {
    expect(written(keyNames(key('F')))).toBe('F G A B♭ C D E');
    expect(written(keyNames(key('Ebm')))).toBe('E♭ F G♭ A♭ B♭ C♭ D♭');
    expect(alterationInKey(key('Ebm'), 'C')).toBe(-1);
    expect(alterationInKey(key('D'), 'G')).toBe(0);
  });

  it.each([
    ['C#', 'D♭ major'],
    ['Cb', 'B major'],
    ['G#', 'A♭ major'],
    ['Abm', 'G♯ minor'],
    ['Dbm', 'C♯ minor'],
    ['F#', 'F♯ major'],
    ['Gb', 'G♭ major'],
    ['Fb', 'E major'],
  ])('%s in its simpler spelling is %s', (text, simpler) => {
    expect(describeKey(bestEnharmonicKey(key(text)))).toBe(simpler);
  });

  // Open Music Theory, "Diatonic modes": each mode is the major scale of another tonic.
  it.each([
    ['D dorian', 'D E F G A B C', 0],
    ['E phrygian', 'E F G A B C D', 0],
    ['F lydian', 'F G A B C D E', 0],
    ['G mixolydian', 'G A B C D E F', 0],
    ['B locrian', 'B C D E F G A', 0],
    ['Eb dor', 'E♭ F G♭ A♭ B♭ C D♭', -5],
    ['A aeolian', 'A B C D E F G', 0],
  ])('%s has the notes %s', (text, names, fifths) => {
    expect(written(keyNames(key(text)))).toBe(names);
    expect(keySignature(key(text))).toBe(fifths);
  });

  it.each(['', 'H', 'F mixed', 'Dmm', 'minor'])('%j is no key', (text) => {
    expect(parseKey(text).ok).toBe(false);
  });
});

describe('transposing a key', () => {
  it.each([
    ['F', 2, 'G major', 1],
    ['F', 1, 'G♭ major', 1],
    ['F', -1, 'E major', -1],
    ['G', -1, 'F♯ major', -1],
    ['C', 6, 'F♯ major', 3],
    ['Dm', 1, 'E♭ minor', 1],
    ['Em', -1, 'D♯ minor', -1],
    ['Bb', 3, 'D♭ major', 2],
    ['C', 12, 'C major', 7],
    ['Gb', 12, 'G♭ major', 7],
    ['C', -13, 'B major', -8],
  ])('%s by %i half steps is %s, %i staff steps away', (from, halfSteps, to, steps) => {
    const moved = transpositionBy(key(from), halfSteps);
    expect(describeKey(moved.key)).toBe(to);
    expect(moved.interval).toEqual({ steps, halfSteps });
  });

  it('takes the nearer way to a named key', () => {
    expect(transpositionTo(key('F'), name('D')).interval).toEqual({ steps: -2, halfSteps: -3 });
    expect(transpositionTo(key('F'), name('B')).interval).toEqual({ steps: 3, halfSteps: 6 });
    expect(transpositionTo(key('Dm'), name('E')).key).toEqual(key('Em'));
  });
});

describe('the scale of a chord in its place', () => {
  it.each([
    ['C7', 'F', 'C mixolydian', 'C D E F G A B♭'],
    ['F7', 'F', 'F mixolydian', 'F G A B♭ C D E♭'],
    ['F', 'F', 'F major', 'F G A B♭ C D E'],
    ['Gm7', 'F', 'G dorian', 'G A B♭ C D E F'],
    ['A7', 'Dm', 'A phrygian dominant', 'A B♭ C♯ D E F G'],
    ['E', 'Am', 'E phrygian dominant', 'E F G♯ A B C D'],
    ['Em', 'Am', 'E phrygian', 'E F G A B C D'],
    ['C#dim7', 'Dm', 'C♯ locrian ♭4 ♭♭7', 'C♯ D E F G A B♭'],
    ['Bm7b5', 'Am', 'B locrian', 'B C D E F G A'],
    ['Am(maj7)', 'Am', 'A melodic minor', 'A B C D E F♯ G♯'],
    ['Caug', 'F', 'C mixolydian ♯5', 'C D E F G♯ A B♭'],
    ['Fm', 'C', 'F dorian', 'F G A♭ B♭ C D E♭'],
    ['Bb', 'C', 'B♭ lydian', 'B♭ C D E F G A'],
    ['Ab7', 'C', 'A♭ lydian dominant', 'A♭ B♭ C D E♭ F G♭'],
    ['C7alt', 'F', 'C altered', 'C D♭ D♯ E G♭ G♯ B♭'],
    ['Ebm', 'Ebm', 'E♭ natural minor', 'E♭ F G♭ A♭ B♭ C♭ D♭'],
    ['Bb7', 'Ebm', 'B♭ phrygian dominant', 'B♭ C♭ D E♭ F G♭ A♭'],
    ['Gsus4', 'C', 'G mixolydian', 'G A B C D E F'],
  ])('%s in %s: %s', (symbol, where, scaleName, names) => {
    const scale = scaleFor(chord(symbol), key(where));
    expect(describeScaleIn('letters', scale)).toBe(scaleName);
    expect(written(scale.names)).toBe(names);
  });
});

describe('finding the key', () => {
  const guess = (text: string) => findKey(chords(text).map((each) => ({ chord: each, weight: 3840 })));

  it.each([
    ['C Am F G', 'C major'],
    ['F Dm Gm C7', 'F major'],
    ['F F7 Bb C7 F', 'F major'],
    ['Dm Gm A7 Dm', 'D minor'],
    ['C7 F7 C7 G7', 'C major'],
    ['Am G F E', 'A minor'],
    ['Ebm Abm Bb7 Ebm', 'E♭ minor'],
    ['Dm7 G7 Cmaj7', 'C major'],
    ['Am7 D7 Gmaj7 Cmaj7 F#m7b5 B7 Em', 'E minor'],
    ['F#m B E', 'E major'],
    ['C C7 F Fm C G7 C', 'C major'],
  ])('%s is in %s', (text, expected) => {
    const [best] = guess(text);
    expect(best && describeKey(best.key)).toBe(expected);
  });

  it('gives its reason in a sentence', () => {
    expect(guess('F F7 Bb C7 F')[0]?.reason).toBe(
      'Every chord except F7 belongs to F major, it begins and ends on F and C7 leads back to F.',
    );
    expect(guess('C')[0]?.reason).toBe('The only chord belongs to C major and it begins on C.');
  });

  // Common practice, no source: these styles stand on two chords, and home is the one that the music begins with.
  it.each([
    ['C F C F', 'C major', 'F major'],
    ['D G D G', 'D major', 'G major'],
    ['G F G F', 'G major', 'C major'],
    ['Am G', 'A minor', 'G major'],
    ['Am D', 'A minor', 'D major'],
    ['C7 F7 C7 F7', 'C major', null],
    ['G7 C G7 C', 'C major', null],
    ['Dm7 G7', 'C major', null],
    ['A E A E', 'A major', null],
  ])('hears the vamp %s in %s', (text, expected, alsoIn) => {
    const [best, ...others] = guess(text);
    expect(best && describeKey(best.key)).toBe(expected);
    if (alsoIn !== null) {
      const close = closeGuess([...(best ? [best] : []), ...others]);
      expect(close && describeKey(close.key)).toBe(alsoIn);
    }
  });

  it('hears a vamp after its upbeat', () => {
    const [upbeat, ...vamp] = chords('G C F C F').map((each) => ({ chord: each, weight: 3840 }));
    const found = findKey([...(upbeat ? [{ ...upbeat, weight: 960, upbeat: true }] : []), ...vamp]);
    expect(found[0] && describeKey(found[0].key)).toBe('C major');
  });

  it('keeps a twelve-bar blues in its key that ends on IV', () => {
    const [best] = guess('C7 C7 C7 C7 F7 F7 C7 C7 G7 F7 C7 F7');
    expect(best && describeKey(best.key)).toBe('C major');
    const [plain] = guess('C C C C F F C C G F C F');
    expect(plain && describeKey(plain.key)).toBe('C major');
  });

  it('offers a second key only where it is close', () => {
    expect(closeGuess(guess('C F G7 C'))).toBeNull();
    expect(closeGuess(guess('Am F C G'))).not.toBeNull();
    expect(closeGuess([])).toBeNull();
  });

  it('knows nothing from nothing', () => {
    expect(findKey([])).toEqual([]);
  });
});
