export type { EditorState, FileQuestion, FileReading, Rescue, SavingState } from './editor-store';
export { type Session, startSession } from './session';
