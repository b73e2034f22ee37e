export type { EditorState, FileReading, SavingState } from './editor-store';
export { type Session, startSession } from './session';
