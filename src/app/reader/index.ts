export { answerReading } from './answer';
export { createFileReader, type FileReader } from './reader';
