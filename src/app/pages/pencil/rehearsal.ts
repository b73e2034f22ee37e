import { useEffect } from 'react';
import { deriveSheet, linePiece } from '../../../core/lesson';
import { commandById, type Pencil, settled } from '../../../core/writing';
import type { Session } from '../../state';
import { useAtWork } from '../at-work';
import { whenIdle } from '../common';
import { useScore } from '../score';
import { workNow } from './perform';

/** Each is done once and thrown away: another pitch, and another length. */
const REHEARSED = ['half up', 'longer'] as const;
/** The longest that the rehearsal waits for a quiet moment, in milliseconds. */
const LONGEST_WAIT = 1000;

type Score = Extract<ReturnType<typeof useScore>, { readonly kind: 'ready' }>['score'];

/** What a key press does up to its drawing, without anything of it being kept. */
function rehearse(session: Session, score: Score, id: (typeof REHEARSED)[number]): void {
  const work = workNow(session);
  const piece = work && linePiece(work.lesson, work.pencil.pieceId);
  if (!work || !piece) return;
  const { instrument, noteNames } = work.lesson;
  // In the first bar that has notes: what is done in silence changes nothing.
  const bar = piece.bars.findIndex(({ notes }) => notes.length > 0);
  const at: Pencil = {
    ...work.pencil,
    bar,
    tick: piece.bars[bar]?.notes[0]?.start ?? 0,
    next: null,
    from: null,
  };
  const changed = linePiece(settled(commandById(id).gesture)(work.lesson, at).lesson, piece.id);
  if (bar < 0 || changed === null || changed === piece) return;
  const before = deriveSheet(piece, instrument, noteNames);
  const after = deriveSheet(changed, instrument, noteNames);
  const layout = score.layoutAlike(after, before);
  const system = layout?.systems.find(({ bars }) => bars.some((box) => box.bar === bar));
  if (layout && system) score.drawSystem(layout, system.index);
}

/** The first key press in a bar that was opened for writing finds everything warm. */
export function useRehearsal(isHere: boolean): void {
  const { session } = useAtWork();
  const state = useScore();
  const score = state.kind === 'ready' ? state.score : null;
  useEffect(() => {
    if (!isHere || score === null || rehearsed.has(session)) return;
    let leave = () => {};
    const go = (index: number) => {
      const id = REHEARSED[index];
      if (id === undefined) rehearsed.add(session);
      else
        leave = whenIdle(() => {
          rehearse(session, score, id);
          go(index + 1);
        }, LONGEST_WAIT);
    };
    go(0);
    return () => leave();
  }, [isHere, score, session]);
}

const rehearsed = new WeakSet<Session>();
