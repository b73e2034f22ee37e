import { useEffect, useRef, useState } from 'react';
import { deriveSheet, type Lesson, lineAtHand, toldTempo } from '../../../core/lesson';
import { climbs, fasterBy, practiceTempo } from '../../../core/playing';
import { Later, laterPart, useAtWork, useEditor, useLessonButNotes } from '../at-work';
import { gliding } from '../common';
import { FRETBOARD, NeckButton, useLedgeHeight, usePlayedLine } from '../ledge';
import { inShort, PlaybackStatus, PlayingSentence, type SentenceProps } from '../playing';
import { useScreenAwake } from './awake';
import { PracticeButtons } from './buttons';
import { SPACE_IN_WORDS, usePracticeKeys } from './keys';
import { useMediaButtons } from './media-session';
import { PLAYING_ID } from './skip-links';

const SHOW = laterPart('The large view', async () => (await import('../show')).ShowView);

/** Widths and heights at which the sentence is said in short until it is asked for: the music has the room. */
const FOLDED = '(max-width: 74.99rem), (max-height: 49.49rem)';

/** The ledge of the practice page: what is touched with a bass in the hands is large, the rest is in the sentence. */
interface PracticeLedgeProps {
  /** The lesson the sheet is shown from, perhaps a moment older than what was just changed. */
  readonly settled: Lesson;
  /** A rest that is proposed, or null. */
  readonly rest: string | null;
}

export function PracticeLedge({ settled, rest }: PracticeLedgeProps) {
  const { playback } = useAtWork();
  const lesson = useLessonButNotes(settled);
  const pieceId = useEditor((state) => state.pieceId);
  const piece = lineAtHand(lesson, pieceId);
  const settledPiece = lineAtHand(settled, piece?.id ?? pieceId);
  const sheet = settledPiece && deriveSheet(settledPiece, settled.instrument, settled.noteNames);
  const line = usePlayedLine(piece, sheet?.kind === 'line' && sheet.bars.length > 0 ? sheet : null);
  const [neck, setNeck] = useState(false);
  const [large, setLarge] = useState(false);
  const ledge = useRef<HTMLElement>(null);
  useLoopInView(neck && !large);
  usePracticeKeys(playback);
  useScreenAwake(playback);
  useMediaButtons(playback, piece?.name ?? '', lesson.title);
  useLedgeHeight(ledge);
  const status = <PlaybackStatus playback={playback} lesson={lesson} rest={rest} />;
  const controls = line && (
    <>
      <PracticeButtons playback={playback} line={line} inShort={inShort(line.piece, line.sheet)} />
      <TempoSteps {...line} />
    </>
  );
  return (
    <section className="ledge" id={PLAYING_ID} tabIndex={-1} aria-label="Playing" ref={ledge}>
      {neck && !large && line !== null && (
        <Later part={FRETBOARD} given={{ sheet: line.sheet, hand: line.piece.hand, onSave: null }} />
      )}
      {line === null ? (
        <p className="ledge__sentence">There is no line in this lesson to play along with.</p>
      ) : (
        <>
          {!large && controls}
          <div className="ledge__words">
            <PlayingSentence {...line} folds={FOLDED} spaceInWords={SPACE_IN_WORDS} />
            {!large && status}
          </div>
          <div className="ledge__tools">
            <button type="button" className="button button--quiet" onClick={() => setLarge(true)}>
              Large view
            </button>
            <NeckButton shown={neck} onShow={setNeck} />
          </div>
          {large && (
            <Later
              part={SHOW}
              given={{
                piece: line.piece,
                sheet: line.sheet,
                instrument: lesson.instrument,
                onChange: line.onChange,
                onClose: () => setLarge(false),
                status,
                children: controls,
              }}
            />
          )}
        </>
      )}
    </section>
  );
}

/** − and + beside the tempo; on a ladder the rungs say how fast it is. */
function TempoSteps({ piece, onChange }: SentenceProps) {
  if (climbs(piece.playing)) return null;
  const step = (by: number, word: string, sign: string) => {
    const change = fasterBy(piece, by);
    return (
      <button
        type="button"
        className="button steps__button"
        aria-label={word}
        // It keeps the focus at the end of its way, so it is not taken away.
        aria-disabled={change === null}
        onClick={() => change !== null && onChange(change, 'speed')}
      >
        {sign}
      </button>
    );
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for a form, and this is two buttons about one number
    <div className="steps" role="group" aria-label="Tempo">
      {step(-1, 'Slower', '−')}
      <output className="steps__tempo">
        <b>{toldTempo(piece, practiceTempo(piece))}</b> bpm
      </output>
      {step(1, 'Faster', '+')}
    </div>
  );
}

/** The system with the loop, or with what is played, stays in view when the neck takes room. */
function useLoopInView(neck: boolean): void {
  useEffect(() => {
    if (!neck) return;
    const marked = document.querySelector('.playhead--on, .loop-mark--first');
    marked?.closest('.system')?.scrollIntoView({ block: 'nearest', behavior: gliding() });
  }, [neck]);
}
