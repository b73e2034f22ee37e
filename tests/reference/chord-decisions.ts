/**
 * Decisions on chord symbols, made by hand: what to read where published sources contradict each other, and
 * which symbols are not read as their source reads them. Sources: the test tables of chord-symbol 4 (MIT) and
 * of tonal (MIT), the chord types of music21 10.5 (BSD-3), harmonies of OpenEWLD by the kind values of
 * MusicXML 4.0.
 */

interface Decision {
  /** Pitch classes, C being 0, as the chosen sources give them. */
  readonly pitchClasses: string;
  readonly reason: string;
}

/** The symbols of which two published tables are known to give different notes. */
export const DECISIONS: Readonly<Record<string, Decision>> = {
  C11: {
    pitchClasses: '0 2 5 7 10',
    reason:
      'the third is left out under the eleventh, which would grate a half step above it (chord-symbol, tonal)',
  },
  C13: {
    pitchClasses: '0 2 4 7 9 10',
    reason: 'the natural eleventh is left out over a major third (chord-symbol, tonal)',
  },
  CMaj13: {
    pitchClasses: '0 2 4 7 9 11',
    reason: 'the natural eleventh is left out over a major third (tonal)',
  },
  Cm13: {
    pitchClasses: '0 2 3 5 7 9 10',
    reason: 'over a minor third the eleventh stays (music21)',
  },
  C7b9b5: { pitchClasses: '0 1 4 6 10', reason: 'a flat fifth takes the place of the fifth (chord-symbol)' },
  'C7#9b5': {
    pitchClasses: '0 3 4 6 10',
    reason: 'a flat fifth takes the place of the fifth (chord-symbol)',
  },
  C7b9b13: {
    pitchClasses: '0 1 4 8 10',
    reason:
      'a flat thirteenth leaves the fifth out, as both tables have it for C7b13 (chord-symbol; tonal has the fifth here)',
  },
  C7alt: {
    pitchClasses: '0 1 3 4 6 8 10',
    reason: 'every altered note, since the symbol leaves the choice open (chord-symbol)',
  },
  'C^': { pitchClasses: '0 4 7 11', reason: 'the triangle is a major seventh chord (chord-symbol)' },
  C4: {
    pitchClasses: '0 5 7',
    reason:
      'a suspended fourth, as in chord charts; one source stacks fourths, the other adds the fourth, and neither is followed',
  },
};

const FLAT_SIXTH = 'a ♭6 is added to the fifth here; the source drops the fifth';
const FUNCTION = 'a function in a key, not a chord on a root';
const STANDING_FIFTH = 'the fifth gives way to the ♭13, as in C7b13sus (chord-symbol); the source keeps both';

/** Symbols that are not read as their source reads them, or not at all; at most 2 % of the rows. */
export const EXCEPTIONS: Readonly<Record<string, string>> = {
  CM7b6: FLAT_SIXTH,
  'C^7b6': FLAT_SIXTH,
  Cmb6M7: FLAT_SIXTH,
  Cmb6b9: FLAT_SIXTH,
  C7sus4b9b13: STANDING_FIFTH,
  C7b9b13sus4: STANDING_FIFTH,
  CM7add13: 'the source adds a ninth that the symbol does not name',
  Cb9sus: 'begins like a chord on C♭, and nobody could tell otherwise',
  C4: DECISIONS.C4?.reason ?? '',
  Cphryg: 'the name of a mode, not of a chord',
  Cm11A: 'not in use outside its source',
  Cquartal: 'describes a way of building chords',
  CN6: FUNCTION,
  'CIt+6': FUNCTION,
  CIt: FUNCTION,
  'CFr+6': FUNCTION,
  CFr: FUNCTION,
  'CGr+6': FUNCTION,
  CGer: FUNCTION,
  Cpedal: 'a pedal point is no chord',
  Ctristan: 'a name from analysis, which no chart is written with',
};

/** Machine-combined spellings that are not read. */
export const UNREAD: Readonly<Record<string, string>> = {
  'Cadd11-9/6': 'a 6 behind the slash is no bass note, and belongs to a 9 only as in 6/9',
};
