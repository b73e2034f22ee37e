import { createContext, type ReactNode, useContext, useDeferredValue, useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { Lesson, Piece } from '../../../core/lesson';
import type { EditorState, Session } from '../../state';
import { whenIdle } from '../common';
import type { Playback } from '../playing';
import { butNotes, differInNotesAlone } from './behind';

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

/**
 * The document as the page shows it: a moment after a change, so that nobody who types waits for the sheet; what the
 * pencil wrote at once, so that a note is rendered and painted once.
 */
export function useSettledLesson(): Lesson {
  const lesson = useLesson();
  const settled = useDeferredValue(lesson);
  const pencilled = useEditor((state) => state.pencilled);
  return lesson === pencilled ? lesson : settled;
}

/** The document for fields that are changed, where no note and no chart shows: see {@link butNotes}. */
export const useLessonButNotes = (settled: Lesson): Lesson =>
  useStore(useAtWork().session.lessons, ({ lesson }) => butNotes(lesson, settled));

/**
 * A piece as it is this moment, where the page shows it as it was a moment ago.
 * @param follow - false where a moment ago is soon enough
 */
export function usePieceNow<Kind extends Piece>(settled: Kind, follow = true): Kind {
  const now = useStore(useAtWork().session.lessons, ({ lesson }) =>
    follow ? lesson.pieces.find((piece) => piece.id === settled.id) : settled,
  );
  return now !== undefined && isSameKind(now, settled) ? now : settled;
}

/** The longest that what is said about the notes is behind them, in milliseconds. */
const BEHIND_MS = 300;

/** A lesson whose notes may be a moment behind: what only tells about them follows when they are on the page. */
export function useUnhurried(settled: Lesson): Lesson {
  const [told, setTold] = useState(settled);
  useEffect(() => whenIdle(() => setTold(settled), BEHIND_MS), [settled]);
  return differInNotesAlone(settled, told) ? told : settled;
}

const isSameKind = <Kind extends Piece>(piece: Piece, like: Kind): piece is Kind => piece.kind === like.kind;

/** The document's title and notes for the student, as they are this moment. */
export const useLessonText = (field: 'title' | 'notes'): string =>
  useStore(useAtWork().session.lessons, (state) => state.lesson[field]);

/** How the lesson writes its note names; nothing where it has the letters. */
export const useNoteNames = (): Lesson['noteNames'] =>
  useStore(useAtWork().session.lessons, (state) => state.lesson.noteNames);

export const useEditor = <Part,>(select: (state: EditorState) => Part): Part =>
  useStore(useAtWork().session.editor, select);
