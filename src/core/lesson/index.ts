export { type AimReading, aimWords, percent, rangeWords } from './aim-words';
export { aimFor, type Say, sayOf } from './aims';
export { lineAtHand } from './at-hand';
export { type BarTelling, describeBar, stringName } from './bar-words';
export { type BuiltStage, buildUpOf } from './build-up';
export { CAUTIONS, CAUTIONS_HEADING, cautionsInBrief, cautionWords } from './cautions';
export { chartReading } from './chart-reading';
export { type ChordOnNeck, chordsOnNeck } from './chords-on-neck';
export { changeBarAims, setAim, setSectionAim, withAim } from './commands/aims';
export { keepBar, takeIdea } from './commands/bar-notes';
export {
  type ChartBarEdit,
  editChartBar,
  type PossibleEdit,
  possibleEdits,
  typedChord,
} from './commands/bars';
export { editStage, moveThing, setBuildUp, USUAL_BUILD_UP } from './commands/build-up';
export { setChartText, setKey, setMetre, takeSuggestion } from './commands/chart';
export { setFeel } from './commands/feel';
export { MOST_PARKED } from './commands/follow-bars';
export { type BarRange, changeBars, clearPins, keepPosition, setPins } from './commands/hand';
export { leaveOut } from './commands/handout';
export { forgetMeant, isMeant, meanIt } from './commands/meant';
export { discardParked, fitsBehind, putParkedBack } from './commands/parked';
export { changeLine, linePiece } from './commands/piece';
export {
  addPiece,
  copyPiece,
  movePiece,
  removePiece,
  renamePiece,
  setBlankBars,
  setBlankPrompt,
} from './commands/pieces';
export { writeSectionKey } from './commands/section-key';
export {
  endedTitle,
  removeLogo,
  setCount,
  setHand,
  setHandout,
  setInstrument,
  setLevel,
  setNoteNames,
  setNotes,
  setPlaying,
  setTempo,
  setTitle,
  TEMPO_RANGE,
} from './commands/settings';
export { forgetTake, MOST_TAKES } from './commands/takes';
export { markOf, markTechnique, type TechniqueMark, withSay } from './commands/techniques';
export { transposeBy, transposeLesson, transposePiece, transposeTo } from './commands/transpose';
export { aimsAt } from './composer-aims';
export * from './count';
export { newBlankPiece, newLesson, newLineLike, newLinePiece } from './create';
export { type Exit, exitsOf } from './exits';
export { EXPLAINED_HEADING, explainedToStudent } from './explained';
export { describeLessonProblem, type LessonProblem, parseLesson, readLesson } from './file';
export { levelFret, type NotePlace, playingHand } from './fingering';
export { type HandLine, handLine, type Passage, pinPlace, type WayToPlay, waysToPlay } from './hand';
export { isHeld, isOwn } from './held';
export { freshIds, idsOf, lastNumber } from './identity';
export { whyNotKept } from './keepable';
export { keyChanges } from './key-changes';
export { type Light, lightsOf } from './lights';
export { LESSON_LIMITS } from './limits';
export { lineRequest } from './line-request';
export { loadChecking } from './load-checking';
export { whyNotInMetre } from './metre-check';
export {
  handMoves,
  kindsOf,
  type NeckShape,
  neckShapes,
  octavesOf,
  type ShapeKind,
  shapeAt,
} from './neck-shapes';
export { describeNewer, type NewerLesson } from './newer';
export { lineBeside, overChordsOf } from './passage';
export * from './playing';
export { printLesson } from './print-file';
export { instrumentOf, parsedChart, readPiece } from './request';
export { SAMPLE_TITLES, sampleLesson } from './samples';
export { instrumentSchema } from './schema/head';
export { deriveSheet, deriveSheets, SHEET_STAGES, type SheetStage, sheetAtHand } from './sheet';
export * from './sheet-types';
export { silentBeats } from './silent-beats';
export { type StagePlace, stagePlaces, withChoice } from './stage-choices';
export { handStatement, keyStatement, keysStatement } from './statements';
export { type StudyFact, studyFacts } from './study';
export { type BarTies, isHeldOver, tiesOverBarLines, UNTIED } from './ties';
export * from './types';
export { differInUseOnly } from './use-only';
