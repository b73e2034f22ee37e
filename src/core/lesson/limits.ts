import { MOST_BARS } from '../chart';

/** Long enough for any real lesson, short enough that a hostile file cannot make the page stall. */
export const LESSON_LIMITS = {
  /** Characters of a title or a name. */
  title: 500,
  /** Characters of a chart or of the teacher's notes. */
  text: 20_000,
  /** Characters of a bar's chords: as many as its finest metre has places for, each with the longest symbol. */
  harmony: 5_000,
  logo: 400_000,
  /** Bytes of a whole lesson as a file, its line breaks left out; a file may be a little longer. */
  whole: 4_800_000,
  pieces: 64,
  bars: MOST_BARS,
  /** Of dynamics as well. */
  notesInBar: 96,
  strings: 8,
  sections: MOST_BARS,
  takes: 12,
  versions: 64,
} as const;
