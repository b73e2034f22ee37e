import { useEffect, useState } from 'react';
import { listed } from '../../../core/base';
import type { LineSheet } from '../../../core/lesson';
import { NumberWord } from '../../controls';
import { whenIdle } from '../common';
import { useScore } from '../score';
import { barsOf, type Choices, type Larger, largerWays, shownOf } from './choices';
import { canBeReadAcross } from './large-layout';
import { inMetres, isReadAcross, type ReadFrom, readFrom, SCREEN_INCHES } from './reading';
import { musicRoom, type Room } from './room';

interface ReadingWordsProps {
  readonly sheet: LineSheet;
  readonly choices: Choices;
  readonly set: (change: Partial<Choices>) => void;
  /** From how far what is drawn is read. */
  readonly read: ReadFrom;
  /** Font size of the smallest word on the neck in CSS pixels; null while it is not drawn. */
  readonly neck: number | null;
  /** Room of music and neck. */
  readonly room: Room;
  /** Of a CSS pixel on the screen. */
  readonly millimetres: number;
}

/** Says from how far it is read, and offers what makes it readable across a room where it is not. */
export function ReadingWords(props: ReadingWordsProps) {
  const { choices, set, read } = props;
  const across = isReadAcross(read);
  const larger = useLarger(props, !across);
  return (
    <div className="show__reading">
      <p>
        On a screen of{' '}
        <NumberWord
          label="Inches of the screen"
          value={choices.inches}
          {...SCREEN_INCHES}
          onChange={(inches) => set({ inches })}
        />{' '}
        inches <span role="status">{toldFrom(read)}</span>
      </p>
      {!across && larger === 'none' && <p>On a screen of this size no choice is read from three metres.</p>}
      {!across && larger !== null && larger !== 'none' && (
        <button type="button" className="word" onClick={() => set(larger.change)}>
          Read it from three metres: {listed(larger.words)}
        </button>
      )}
    </div>
  );
}

/** `Read from 2.4 m: too small for three metres`, for all of it. */
export function readInShort(read: ReadFrom): string {
  const from = Math.min(...Object.values(read));
  if (!Number.isFinite(from)) return 'Read from afar';
  return `Read from ${inMetres(from)}${isReadAcross(read) ? '' : ': too small for three metres'}`;
}

function toldFrom(read: ReadFrom): string {
  const { music, neck } = read;
  const end = isReadAcross(read) ? '.' : ': too small for three metres.';
  if (music !== undefined && neck !== undefined && inMetres(music) !== inMetres(neck))
    return `the music is read from ${inMetres(music)}, the neck from ${inMetres(neck)}${end}`;
  const from = music ?? neck;
  return from === undefined ? '' : `it is read from ${inMetres(from)}${end}`;
}

/** Longest wait between two trials, in milliseconds. */
const TRIAL_WAIT = 500;

/** The least that has to be left out; null while it is looked for. */
function useLarger(props: ReadingWordsProps, wanted: boolean): Larger | 'none' | null {
  const { sheet, choices, neck, room, millimetres } = props;
  const state = useScore();
  const [found, setFound] = useState<Larger | 'none' | null>(null);
  useEffect(() => {
    setFound(null);
    if (!wanted || state.kind !== 'ready' || room.width === 0) return;
    const { layoutScore } = state.score;
    const isEnough = ({ change }: Larger): boolean => {
      const then = { ...choices, ...change };
      // The neck's words stay as large as they are.
      if (then.neck && neck !== null && !isReadAcross(readFrom([], { staff: false, neck, millimetres })))
        return false;
      return canBeReadAcross(layoutScore, sheet, {
        shown: shownOf(then),
        bars: barsOf(then),
        room: musicRoom(room, then.neck),
        millimetres,
      });
    };
    const waiting = [...largerWays(choices)];
    // One trial at a time, when nothing else is to be done.
    let stop = () => {};
    const next = () => {
      const way = waiting.shift();
      if (way === undefined) setFound('none');
      else if (isEnough(way)) setFound(way);
      else stop = whenIdle(next, TRIAL_WAIT);
    };
    stop = whenIdle(next, TRIAL_WAIT);
    return () => stop();
  }, [wanted, state, sheet, choices, neck, room, millimetres]);
  return found;
}
