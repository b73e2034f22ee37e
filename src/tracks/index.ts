export * from './codings';
export { type MakeOptions, makeTracks, type Track } from './make';
export type { TrackJob } from './messages';
