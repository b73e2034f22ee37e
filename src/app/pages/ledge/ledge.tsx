import { memo, type RefObject, useLayoutEffect, useRef, useState } from 'react';
import {
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
  lineAtHand,
  setCount,
  setPlaying,
} from '../../../core/lesson';
import { Later, laterPart, useAtWork, useEditor, useLessonButNotes } from '../at-work';
import { PlayAndStop, PlaybackStatus, PlayingSentence, usePlayingKeys } from '../playing';
import type { SaveNeck } from '../saving';

const FRETBOARD = laterPart('The fretboard', async () => (await import('./fretboard')).Fretboard);

interface LedgeProps {
  readonly settled: Lesson;
  /** How the neck is saved as a picture; null on a page that hands out none. */
  readonly saveNeck: SaveNeck | null;
}

/** The music stand's ledge: plays the piece at hand, and says how, in a sentence whose words can be changed. */
export const Ledge = memo(function Ledge({ settled, saveNeck }: LedgeProps) {
  const { playback } = useAtWork();
  const lesson = useLessonButNotes(settled);
  const pieceId = useEditor((state) => state.pieceId);
  const piece = lineAtHand(lesson, pieceId);
  const settledPiece = lineAtHand(settled, piece?.id ?? pieceId);
  const sheet = settledPiece && deriveSheet(settledPiece, settled.instrument, settled.noteNames);
  const line = usePlayedLine(piece, sheet?.kind === 'line' && sheet.bars.length > 0 ? sheet : null);
  const [neck, setNeck] = useState(false);
  const ledge = useRef<HTMLElement>(null);
  usePlayingKeys(playback);
  useLedgeHeight(ledge);
  return (
    <section className="ledge" aria-label="Playing" ref={ledge}>
      {neck && line !== null && (
        <Later part={FRETBOARD} given={{ sheet: line.sheet, hand: line.piece.hand, onSave: saveNeck }} />
      )}
      <PlayAndStop playback={playback} line={line} />
      <div className="ledge__words">
        {line === null ? (
          <p className="ledge__sentence">As soon as there is a line, it can be played here.</p>
        ) : (
          <PlayingSentence {...line} />
        )}
        <PlaybackStatus playback={playback} lesson={lesson} />
      </div>
      {line !== null && (
        <button
          type="button"
          className="button button--quiet ledge__neck"
          aria-expanded={neck}
          aria-controls={neck ? 'fretboard' : undefined}
          onClick={() => setNeck(!neck)}
        >
          Fretboard
        </button>
      )}
    </section>
  );
});

/** The line to be played, and how its settings are changed in the lesson. */
function usePlayedLine(piece: LinePiece | null, sheet: LineSheet | null) {
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
function useLedgeHeight(ledge: RefObject<HTMLElement | null>): void {
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
