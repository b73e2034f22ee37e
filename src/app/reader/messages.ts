import type { Result } from '../../core/base';
import type { loadReader, Wishes } from '../../core/exchange';
import type { Lesson, LessonProblem } from '../../core/lesson';

type MusicReader = Awaited<ReturnType<typeof loadReader>>;

/** What was read of a file of music. */
export type MusicRead = ReturnType<MusicReader['readFile']>;
export type LessonRead = Result<Lesson, LessonProblem>;

/** A picture in the size asked for; null for a file that is no picture. */
export type PictureRead = ImageBitmap | null;

export type ReadingJob =
  | {
      readonly kind: 'music';
      readonly bytes: Uint8Array;
      readonly title: string;
      /** Null for what is likeliest. */
      readonly wishes: Wishes | null;
    }
  | { readonly kind: 'lesson'; readonly bytes: Uint8Array }
  | {
      readonly kind: 'picture';
      readonly file: Blob;
      /** In whole pixels, to which it is to be made smaller. */
      readonly width: number;
      readonly height: number;
    };

export type ReadingAnswer =
  | { readonly kind: 'music'; readonly read: MusicRead }
  | { readonly kind: 'lesson'; readonly read: LessonRead }
  | { readonly kind: 'picture'; readonly read: PictureRead };
