import { memo, useRef, useState } from 'react';
import { deriveSheet, type Lesson, lineAtHand } from '../../../core/lesson';
import { Later, useAtWork, useEditor, useLessonButNotes } from '../at-work';
import { PlayAndStop, PlaybackStatus, PlayingSentence, usePlayingKeys } from '../playing';
import type { SaveNeck } from '../saving';
import { FRETBOARD, useLedgeHeight, usePlayedLine } from './line';
import { NeckButton } from './neck-button';

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
      {line !== null && <NeckButton shown={neck} onShow={setNeck} />}
    </section>
  );
});
