export { PlayAndStop } from './buttons';
export { changeByKey, usePlayingKeys } from './keys';
export { createPlayback, type Playback, type PlaybackSource, type StagesOf } from './playback';
export { heardSheet } from './playback-state';
export type { SentenceProps } from './props';
export { PlayingSentence } from './sentence';
export { PlaybackStatus } from './status';
export { inShort } from './words';
