import type { Count, LinePiece, LineSheet, PlayingSettings } from '../../../core/lesson';

/** Asks for other settings; calls with the same `join` that follow each other are one step of undo. */
export type SetPlaying = (change: Partial<PlayingSettings>, join?: string) => void;

export interface SentenceProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly onChange: SetPlaying;
  /** Asks for the tempo to be told in the other count. */
  readonly onCount: (count: Count) => void;
  /** What Space does, where it does not play and stop alone. */
  readonly spaceInWords?: string;
}
