export { PlayAndStop } from './buttons';
export { usePlayingKeys } from './keys';
export { createPlayback, type Playback, type PlaybackSource } from './playback';
export { PlayingSentence } from './sentence';
export { PlaybackStatus } from './status';
