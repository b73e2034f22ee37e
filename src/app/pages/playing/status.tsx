import { useState } from 'react';
import { useStore } from 'zustand';
import { barName } from '../../../core/base';
import { deriveSheet, type Lesson, type LinePiece } from '../../../core/lesson';
import type { Playback } from './playback';
import type { PlaybackState } from './playback-state';
import { rungWords } from './words';

export interface StatusProps {
  readonly playback: Playback;
  readonly lesson: Lesson;
  /** A rest that is proposed by what was really played; by the time alone, when left out. */
  readonly rest?: string | null;
}

/** Heard at start, pause and stop; in between it only shows the bar. A fault and a proposed rest are said below it. */
export function PlaybackStatus({ playback, lesson, rest }: StatusProps) {
  const kind = useStore(playback, (state) => state.kind);
  const bar = useStore(playback, (state) => state.bar);
  const first = useStore(playback, (state) => state.first);
  const counting = useStore(playback, (state) => state.counting);
  const fault = useStore(playback, (state) => state.fault);
  const restDue = useStore(playback, (state) => state.restDue);
  const paused = useStore(playback, (state) => state.paused);
  const heardId = useStore(playback, (state) => state.heard?.pieceId ?? state.paused?.pieceId ?? null);
  const alone = useStore(playback, (state) => state.heard?.kind === 'alone');
  const heard = lesson.pieces.find((piece) => piece.id === heardId);
  const sheet = heard && deriveSheet(heard, lesson.instrument, lesson.noteNames);
  const index = kind === 'stopped' && paused !== null ? paused.bar : (bar ?? first);
  const number = (sheet?.kind === 'line' ? sheet.bars[index]?.written.number : undefined) ?? index + 1;
  const where = barName(number);
  const words: Readonly<Record<PlaybackState['kind'], string>> = {
    stopped: paused === null ? 'Stopped' : `Paused at ${where}`,
    preparing: 'Getting ready',
    playing: alone ? 'Playing' : counting ? `Counting in to ${where}` : `Playing ${where}`,
  };
  // A pause that is given up is a stop, too.
  const turn = kind === 'stopped' ? words.stopped : kind;
  const isSaid = useSaid(turn, words[kind]);
  return (
    <>
      <div className="ledge__states">
        <p
          className="ledge__status"
          role="status"
          aria-label="Playback"
          aria-live={isSaid ? 'polite' : 'off'}
        >
          {words[kind]}
        </p>
        <Rung playback={playback} piece={kind === 'playing' && heard?.kind === 'line' ? heard : null} />
      </div>
      {fault !== null && (
        <p className="ledge__fault" role="alert">
          {fault}
        </p>
      )}
      <p className="ledge__status" aria-live="polite">
        {rest === undefined ? restDue && REST : rest}
      </p>
    </>
  );
}

/**
 * Two minutes after ten are our own figures; the published advice is five to ten minutes an hour (newswise.com,
 * "Five tips music students should guard against injury"), and the sentence tells the two apart.
 */
const REST =
  'Ten minutes of playing without a break: let the hand rest for a minute or two. These figures are ours; the advice for musicians is five to ten minutes in every hour (Newswise).';

/** Whether words are said: those that came with a turn, for as long as they stand, whatever else is rendered anew. */
function useSaid(turn: string, words: string): boolean {
  const [last, setLast] = useState({ turn, words, isSaid: true });
  if (last.words !== words) setLast({ turn, words, isSaid: last.turn !== turn });
  return last.isSaid;
}

interface RungProps {
  readonly playback: Playback;
  /** What is played; null for nothing that has rungs. */
  readonly piece: LinePiece | null;
}

/** It is there before it has words: what comes together with its words is not said by screen readers. */
function Rung({ playback, piece }: RungProps) {
  const step = useStore(playback, (state) => state.step);
  const round = useStore(playback, (state) => state.round);
  const heard = useStore(playback, (state) => state.heard);
  const stage = heard?.kind === 'stages' ? (heard.stages[step]?.name ?? '') : null;
  const words = piece === null ? '' : (stage ?? rungWords(piece, step, round));
  return (
    <p className="ledge__status" aria-live="polite">
      {words}
    </p>
  );
}
