import { type RefObject, useLayoutEffect } from 'react';
import { type LinePiece, type LineSheet, setCount, setPlaying } from '../../../core/lesson';
import { laterPart, useAtWork } from '../at-work';

/** The neck with the notes of a bar, which stands on the ledge when it is asked for. */
export const FRETBOARD = laterPart('The fretboard', async () => (await import('./fretboard')).Fretboard);

/** The line to be played, and how its settings are changed in the lesson. */
export function usePlayedLine(piece: LinePiece | null, sheet: LineSheet | null) {
  const { session } = useAtWork();
  if (piece === null || sheet === null) return null;
  const { lessons } = session;
  return {
    piece,
    sheet,
    onChange: (change: Parameters<typeof setPlaying>[2], join?: string) =>
      lessons.change((lesson) => setPlaying(lesson, piece.id, change), {
        label: 'change how it is played',
        ...(join === undefined ? {} : { join: `${join} ${piece.id}` }),
      }),
    onCount: (count: Parameters<typeof setCount>[2]) =>
      lessons.change((lesson) => setCount(lesson, piece.id, count), { label: 'change the count' }),
  };
}

/** Tells the style sheets how high the ledge is, whatever the sentence says, so that nothing is hidden behind it. */
export function useLedgeHeight(ledge: RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    const watched = ledge.current;
    if (watched === null) return;
    const { style } = document.documentElement;
    const observer = new ResizeObserver(() =>
      style.setProperty('--ledge-height', `${watched.getBoundingClientRect().height}px`),
    );
    observer.observe(watched);
    return () => {
      observer.disconnect();
      style.removeProperty('--ledge-height');
    };
  }, [ledge]);
}
