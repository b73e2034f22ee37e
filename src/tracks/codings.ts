/**
 * How a track is written: as it is, in the form that every telephone plays (AAC, or MP3 where the browser does not encode
 * AAC), or as Opus.
 */
export const CODINGS = ['every telephone', 'wav', 'opus'] as const;
export type Coding = (typeof CODINGS)[number];

/** The kinds of files that come of it. */
export type TrackKind = 'wav' | 'm4a' | 'mp3' | 'opus';

/** What the file says of itself where players show it. */
export interface TrackTags {
  /** Tempo and parts: `84 bpm, without bass`. */
  readonly title: string;
  readonly lesson: string;
  readonly piece: string;
  readonly tempo: number;
}
