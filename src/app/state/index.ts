export type { EditorState, EditorStore, SavingState } from './editor-store';
export type { Change, LessonState, LessonStore } from './lesson-store';
export { type Session, startSession } from './session';
