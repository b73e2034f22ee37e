import type { Lesson, LinePiece, LineSheet } from '../../../core/lesson';

/** Where the lesson and the place in it come from: a session, or a page of its own with a copy. */
export interface PlaybackSource {
  readonly lessons: {
    getState(): { readonly lesson: Lesson };
    subscribe(
      listener: (now: { readonly lesson: Lesson }, before: { readonly lesson: Lesson }) => void,
    ): () => void;
  };
  readonly editor: {
    getState(): { readonly pieceId: string };
    subscribe(listener: () => void): () => void;
  };
}

/** Stages of a line's build-up in the order in which they are played. */
export type StagesOf = (
  piece: LinePiece,
) => readonly { readonly piece: LinePiece; readonly sheet: LineSheet; readonly name: string }[];
