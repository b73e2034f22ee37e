import { bpm, COMMON_TIME, fret, type SpelledPitch } from '../base';
import { freshIds } from './identity';
import {
  type BlankPiece,
  LESSON_FORMAT,
  LESSON_VERSION,
  type Lesson,
  type LinePiece,
  type PlayingSettings,
} from './types';

const openString = (letter: SpelledPitch['letter'], octave: number): SpelledPitch => ({
  letter,
  alteration: 0,
  octave,
});

/** A four-string bass in standard tuning, E1 A1 D2 G2, highest first; 34-inch neck (864 mm), 20 frets. */
const STANDARD_BASS: Lesson['instrument'] = {
  openStrings: [openString('G', 2), openString('D', 2), openString('A', 1), openString('E', 1)],
  frets: 20,
  scaleLength: 864,
};

/** Everyone plays, one bar is counted in, nothing loops: what a teacher expects from the first *Play*. */
const FIRST_PLAYING: PlayingSettings = {
  bass: true,
  drums: true,
  chops: true,
  organ: true,
  click: false,
  countIn: 1,
  loop: false,
  passage: null,
  tempoShare: 100,
};

/**
 * Hand of an adult, in position, open strings allowed: comfortable span 105 mm, reach 130 mm (common practice,
 * no source).
 */
const ADULT_HAND: LinePiece['hand'] = {
  openStrings: 'allow',
  comfortableSpan: 105,
  reach: 130,
  highestFret: fret(12),
};

/** A line piece with an empty chart; every other value is one a teacher can leave as it is. */
export function newLinePiece(id: string, name: string): LinePiece {
  return {
    kind: 'line',
    id,
    name,
    chartText: '',
    key: null,
    metre: COMMON_TIME,
    tempo: bpm(126),
    feel: 'early-ska',
    level: 2,
    techniques: ['chord tones', 'scale steps', 'space'],
    hand: ADULT_HAND,
    seed: 1,
    playing: FIRST_PLAYING,
    bars: [],
    parked: [],
  };
}

/** Four empty bars for the student's own line. */
export function newBlankPiece(id: string, name: string): BlankPiece {
  return { kind: 'blank', id, name, metre: COMMON_TIME, bars: 4 };
}

/** A lesson with one empty line piece. `id` names the lesson in storage and must be unique there. */
export function newLesson(id: string, title: string): Lesson {
  const fresh = freshIds({ pieces: [] });
  return {
    format: LESSON_FORMAT,
    version: LESSON_VERSION,
    id,
    title,
    notes: '',
    instrument: STANDARD_BASS,
    handout: { paper: 'A4', degrees: true, fingers: true },
    pieces: [newLinePiece(fresh('piece'), 'Line')],
  };
}
