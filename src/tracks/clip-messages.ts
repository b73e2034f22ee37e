import type { Performance } from '../core/performance';
import type { Mix } from '../sound';

/** Pictures a second. */
export const CLIP_RATE = 30;

/** One of the clip's pictures where it stands, in pixels of the clip. */
export interface ClipLayer {
  /** Index into the pictures. */
  readonly picture: number;
  readonly x: number;
  readonly y: number;
  /** From 0, unseen, to 1. */
  readonly strength: number;
}

/** A stretch of ground in another colour. */
export interface ClipBand {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What is seen until something changes besides the playhead. */
export interface ClipScene {
  /** Which of the systems that are played, in the order of playing; two scenes of one differ in neck and words. */
  readonly visit: number;
  readonly bands: readonly ClipBand[];
  readonly layers: readonly ClipLayer[];
}

/** One picture of the film. */
export interface ClipFrame {
  readonly scene: number;
  /** Null where nothing is played yet. */
  readonly playhead: { readonly x: number; readonly top: number; readonly bottom: number } | null;
}

/** What is seen, before it is encoded. */
export interface ClipFilm<Picture> {
  readonly width: number;
  readonly height: number;
  readonly colours: { readonly ground: string; readonly playhead: string; readonly band: string };
  readonly pictures: readonly Picture[];
  readonly scenes: readonly ClipScene[];
  /** {@link CLIP_RATE} of them a second. */
  readonly frames: readonly ClipFrame[];
}

export interface ClipJob {
  readonly film: ClipFilm<ImageBitmap>;
  readonly rounds: readonly Performance[];
  readonly mix: Mix;
  readonly title: string;
}

/** The file with its length in seconds; null where it could not be made. */
export type ClipAnswer = {
  readonly kind: 'webm' | 'mp4';
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly seconds: number;
} | null;
