export { type AimReading, aimWords } from './aim-words';
export { aimFor, type Say, sayOf } from './aims';
export { CAUTIONS, CAUTIONS_HEADING } from './cautions';
export { checkLesson, type Finding } from './check';
export { type ChordOnNeck, chordsOnNeck } from './chords-on-neck';
export { setAim, setSectionAim } from './commands/aims';
export { type ChartBarEdit, editChartBar, typedChord } from './commands/bars';
export { discardParked, setChartText, setKey, setMetre, takeSuggestion } from './commands/chart';
export { type Composition, composePiece, keepBar, takeIdea } from './commands/compose';
export { type BarRange, clearPins, keepPosition, setPins } from './commands/hand';
export { leaveOut } from './commands/handout';
export { linePiece } from './commands/piece';
export { addPiece, copyPiece, movePiece, removePiece, renamePiece, setBlankBars } from './commands/pieces';
export {
  removeLogo,
  setCount,
  setFeel,
  setHand,
  setHandout,
  setInstrument,
  setLevel,
  setNoteNames,
  setNotes,
  setPlaying,
  setTechnique,
  setTempo,
  setTitle,
  TEMPO_RANGE,
} from './commands/settings';
export { anotherTake, forgetTake, MOST_TAKES, recallTake, severalTakes } from './commands/takes';
export { transposeLesson, transposeTo } from './commands/transpose';
export * from './count';
export { newBlankPiece, newLesson, newLinePiece } from './create';
export { describeLessonProblem, type LessonProblem, parseLesson, printLesson, readLesson } from './file';
export { type NotePlace, playingHand } from './fingering';
export { type HandLine, handLine, type Passage, pinPlace, type WayToPlay, waysToPlay } from './hand';
export type { Repair } from './hand-check';
export { explainPiece, ideaOfferFor, ideasFor } from './ideas';
export * from './playing';
export { SAMPLE_TITLES, sampleLesson } from './samples';
export { deriveSheet, deriveSheets } from './sheet';
export * from './sheet-types';
export { type RankedTake, rankTakes } from './take-words';
export * from './types';
