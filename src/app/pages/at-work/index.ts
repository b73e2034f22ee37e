export { Later, laterPart, useLaterParts } from './later';
export { AtWorkProvider, useAtWork, useEditor, useLesson, useNoteNames, usePieceNow } from './session';
