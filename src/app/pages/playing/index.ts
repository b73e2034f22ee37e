export { PlayAndStop } from './buttons';
export { changeByKey, usePlayingKeys } from './keys';
export { createPlayback, type Playback, type PlaybackSource } from './playback';
export type { SentenceProps } from './props';
export { PlayingSentence } from './sentence';
export { PlaybackStatus } from './status';
export { inShort } from './words';
