import { createContext, type ReactNode, useContext } from 'react';
import { useStore } from 'zustand';
import type { Lesson, Piece } from '../../../core/lesson';
import type { EditorState, Session } from '../../state';
import type { Playback } from '../playing';

interface AtWork {
  readonly session: Session;
  readonly playback: Playback;
}

const AtWorkContext = createContext<AtWork | null>(null);

/** Everything below can reach the session and the player. */
export function AtWorkProvider({
  value,
  children,
}: {
  readonly value: AtWork;
  readonly children: ReactNode;
}) {
  return <AtWorkContext value={value}>{children}</AtWorkContext>;
}

/** @throws Error outside {@link AtWorkProvider}. */
export function useAtWork(): AtWork {
  const value = useContext(AtWorkContext);
  if (value === null) throw new Error('The page needs a session around it.');
  return value;
}

/** The document as it is this moment: for fields that are typed into. */
export const useLesson = (): Lesson => useStore(useAtWork().session.lessons, (state) => state.lesson);

/** A piece as it is this moment, where the page shows it as it was a moment ago. */
export function usePieceNow<Kind extends Piece>(settled: Kind): Kind {
  const now = useLesson().pieces.find((piece) => piece.id === settled.id);
  return now !== undefined && isSameKind(now, settled) ? now : settled;
}

const isSameKind = <Kind extends Piece>(piece: Piece, like: Kind): piece is Kind => piece.kind === like.kind;

/** How the lesson writes its note names; nothing where it has the letters. */
export const useNoteNames = (): Lesson['noteNames'] =>
  useStore(useAtWork().session.lessons, (state) => state.lesson.noteNames);

export const useEditor = <Part,>(select: (state: EditorState) => Part): Part =>
  useStore(useAtWork().session.editor, select);
