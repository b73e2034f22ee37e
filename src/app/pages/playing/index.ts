export { PlayAndStop } from './buttons';
export { changeByKey, usePlayingKeys } from './keys';
export { createPlayback, type Playback } from './playback';
export type { PlaybackSource, StagesOf } from './playback-source';
export { heardSheet } from './playback-state';
export type { SentenceProps } from './props';
export { PlayingSentence } from './sentence';
export { PlaybackStatus } from './status';
export { inShort } from './words';
