export type { EditorState, SavingState } from './editor-store';
export { type Session, startSession } from './session';
