export { answerReading } from './answer';
export type { MusicRead } from './messages';
export { createFileReader, type FileReader } from './reader';
