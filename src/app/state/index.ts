export type { EditorState, FileQuestion, FileReading, Rescue, SavingState, Sending } from './editor-store';
export { type Session, startSession } from './session';
