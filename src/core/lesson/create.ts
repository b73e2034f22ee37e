import { bpm, COMMON_TIME, hashText } from '../base';
import { feelById } from '../feel';
import { createInstrument, DEFAULT_HAND } from '../fretboard';
import { freshIds } from './identity';
import type { PlayingSettings } from './playing';
import { type BlankPiece, LESSON_FORMAT, LESSON_VERSION, type Lesson, type LinePiece } from './types';
import { usualTechniques } from './usual-techniques';

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

/** What a new line begins with: walking quarters, and the first level that has scale steps to walk on. */
const FIRST_FEEL = 'early-ska';
const FIRST_LEVEL = 3;

/**
 * A line piece with an empty chart; every other value is one a teacher can leave as it is, and none contradicts
 * another: it teaches what belongs to its feel and level.
 */
export function newLinePiece(id: string, name: string, seed = hashText(id)): LinePiece {
  return {
    kind: 'line',
    id,
    name,
    chartText: '',
    key: null,
    metre: COMMON_TIME,
    tempo: bpm(126),
    feel: FIRST_FEEL,
    level: FIRST_LEVEL,
    techniques: usualTechniques(feelById(FIRST_FEEL), FIRST_LEVEL),
    hand: DEFAULT_HAND,
    seed,
    playing: FIRST_PLAYING,
    bars: [],
    parked: [],
    aims: [],
    sections: [],
    parkedSections: [],
    takes: [],
  };
}

/** An empty line that asks the same as another one: its metre, tempo, feel, level, techniques and hand. */
export function newLineLike(model: LinePiece, id: string, name: string, seed?: number): LinePiece {
  const { metre, tempo, feel, level, techniques, hand } = model;
  return { ...newLinePiece(id, name, seed), metre, tempo, feel, level, techniques, hand };
}

/** Four empty bars for the student's own line. */
export function newBlankPiece(id: string, name: string): BlankPiece {
  return { kind: 'blank', id, name, metre: COMMON_TIME, bars: 4 };
}

/**
 * A lesson with one empty line piece. `id` names the lesson in storage and must be unique there; the line's seed comes
 * of it, so that two new lessons with the same chart do not get the same line.
 */
export function newLesson(id: string, title: string): Lesson {
  const fresh = freshIds({ pieces: [] });
  return {
    format: LESSON_FORMAT,
    version: LESSON_VERSION,
    id,
    title,
    notes: '',
    instrument: createInstrument(),
    handout: { paper: 'A4', degrees: true, fingers: true },
    pieces: [newLinePiece(fresh('piece'), 'Line', hashText(id))],
  };
}
