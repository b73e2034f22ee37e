export { SheetAhead } from './ahead';
export { Later, laterPart, useLaterParts } from './later';
export {
  AtWorkProvider,
  useAtWork,
  useEditor,
  useLesson,
  useLessonButNotes,
  useLessonText,
  useNoteNames,
  usePieceNow,
  useSettledLesson,
  useUnhurried,
} from './session';
