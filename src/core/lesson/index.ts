export { checkLesson, type Finding } from './check';
export { discardParked, setChartText, setMetre } from './commands/chart';
export { anotherTake, type Composition, composePiece, keepBar, takeIdea } from './commands/compose';
export { linePiece } from './commands/piece';
export { addPiece, copyPiece, movePiece, removePiece, renamePiece, setBlankBars } from './commands/pieces';
export {
  setFeel,
  setHand,
  setHandout,
  setInstrument,
  setKey,
  setLevel,
  setNotes,
  setPlaying,
  setTechnique,
  setTempo,
  setTitle,
  TEMPO_RANGE,
} from './commands/settings';
export { transposeLesson, transposeTo } from './commands/transpose';
export { newBlankPiece, newLesson, newLinePiece } from './create';
export { describeLessonProblem, type LessonProblem, parseLesson, printLesson, readLesson } from './file';
export { ideasFor } from './ideas';
export { SAMPLE_TITLES, sampleLesson } from './samples';
export { deriveSheet, deriveSheets } from './sheet';
export * from './sheet-types';
export * from './types';
