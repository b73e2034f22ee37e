export {
  CLIP_RATE,
  type ClipBand,
  type ClipFilm,
  type ClipFrame,
  type ClipLayer,
  type ClipScene,
} from './clip-messages';
export { drawFrame } from './clip-picture';
export { clipCoding } from './clip-support';
export * from './codings';
export { makeTracks, type Track } from './make';
export { makeClip } from './make-clip';
export type { MakeOptions } from './make-each';
export type { TrackJob } from './messages';
