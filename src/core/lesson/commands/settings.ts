import { type Bpm, bpm } from '../../base';
import type { HandSettings } from '../../fretboard';
import type { Level } from '../../line';
import type { Naming } from '../../theory';
import type { Count } from '../count';
import { LESSON_LIMITS } from '../limits';
import type { PlayingSettings } from '../playing';
import type { HandoutSettings, InstrumentSettings, Lesson } from '../types';
import { changeLine } from './piece';

/** What the playing sentence offers: slow enough to learn, fast enough for any feel. */
export const TEMPO_RANGE = { least: 40, most: 220 } as const;

/** A title with an ending that tells it from another, cut before it so that a lesson can hold both. */
export const endedTitle = (title: string, ending: string): string =>
  title.slice(0, LESSON_LIMITS.title - ending.length) + ending;

export const setTitle = (lesson: Lesson, title: string): Lesson => ({ ...lesson, title });

/** The teacher's notes, printed on the handout. */
export const setNotes = (lesson: Lesson, notes: string): Lesson => ({ ...lesson, notes });

export const setHandout = (lesson: Lesson, change: Partial<HandoutSettings>): Lesson => ({
  ...lesson,
  handout: { ...lesson.handout, ...change },
});

/** The handout without the teacher's logo. */
export const removeLogo = (lesson: Lesson): Lesson => {
  const { logo, ...handout } = lesson.handout;
  return logo === undefined ? lesson : { ...lesson, handout };
};

/** Another tuning or neck; the line keeps its notes and is fingered anew. */
export const setInstrument = (lesson: Lesson, change: Partial<InstrumentSettings>): Lesson => ({
  ...lesson,
  instrument: { ...lesson.instrument, ...change },
});

/** How note names are written on the sheet. */
export const setNoteNames = (lesson: Lesson, noteNames: Naming): Lesson => ({ ...lesson, noteNames });

/** Quarter notes (or the metre's beats) a minute, to a half, held within {@link TEMPO_RANGE}. */
export const setTempo = (lesson: Lesson, pieceId: string, tempo: number): Lesson =>
  changeLine(lesson, pieceId, (piece) => ({ ...piece, tempo: tempoWithin(tempo) }));

/** The nearest tempo that a piece can have. */
export const tempoWithin = (tempo: number): Bpm =>
  bpm(Math.min(TEMPO_RANGE.most, Math.max(TEMPO_RANGE.least, Math.round(tempo * 2) / 2)));

/** How the tempo is told where the feel is counted fast and slow; nothing that sounds changes. */
export const setCount = (lesson: Lesson, pieceId: string, count: Count): Lesson =>
  changeLine(lesson, pieceId, (piece) => ({ ...piece, count }));

export const setLevel = (lesson: Lesson, pieceId: string, level: Level): Lesson =>
  changeLine(lesson, pieceId, (piece) => ({ ...piece, level }));

export const setHand = (lesson: Lesson, pieceId: string, change: Partial<HandSettings>): Lesson =>
  changeLine(lesson, pieceId, (piece) => ({ ...piece, hand: { ...piece.hand, ...change } }));

export const setPlaying = (lesson: Lesson, pieceId: string, change: Partial<PlayingSettings>): Lesson =>
  changeLine(lesson, pieceId, (piece) => ({ ...piece, playing: { ...piece.playing, ...change } }));
