import { useEffect } from 'react';
import { type LinePiece, type LineSheet, PLAYING_LIMITS, type PlayingSettings } from '../../../core/lesson';
import { boundsOf, passageOf } from '../../../core/playing';
import type { Playback } from './playback';

/** Per cent of the tempo that an arrow key goes up or down. */
const SHARE_STEP = 5;

type Change = Partial<PlayingSettings>;

const faster = ({ playing }: LinePiece, by: number): Change => {
  const { least, most } = PLAYING_LIMITS.share;
  const next = (Math.round(playing.tempoShare / SHARE_STEP) + by) * SHARE_STEP;
  return { tempoShare: Math.min(most, Math.max(least, next)) };
};

/** The passage, as long as it is, by so many bars; null at the end of the chart, and where all of it is played. */
function moved(piece: LinePiece, sheet: LineSheet, by: number): Change | null {
  const passage = passageOf(piece, sheet);
  if (passage === null) return null;
  const { least, most } = boundsOf(sheet);
  const first = passage.first + by;
  const last = passage.last + by;
  return first < least || last > most ? null : { passage: { first, last } };
}

const KEYS = new Map<string, (piece: LinePiece, sheet: LineSheet) => Change | null>([
  ['ArrowUp', (piece) => faster(piece, 1)],
  ['ArrowDown', (piece) => faster(piece, -1)],
  ['ArrowLeft', (piece, sheet) => moved(piece, sheet, -1)],
  ['ArrowRight', (piece, sheet) => moved(piece, sheet, 1)],
  ['r', ({ playing }) => ({ loop: !playing.loop })],
  ['b', ({ playing }) => ({ bass: !playing.bass })],
  ['c', ({ playing }) => ({ click: !playing.click })],
]);

/**
 * What a key changes while *Play* or *Stop* has the focus; null for every other key. Keys of one character count
 * there only, so that nobody who speaks to the machine or types changes something unawares (WCAG 2.2, 2.1.4).
 */
export const changeByKey = (key: string, piece: LinePiece, sheet: LineSheet): Change | null =>
  KEYS.get(key.length === 1 ? key.toLowerCase() : key)?.(piece, sheet) ?? null;

/** What the keys do, for the page to say. */
export const keysInWords = (space = 'Space plays and stops, except in a field.'): string =>
  `Keys: ${space} With the focus on Play or Stop, the arrows up and down change the tempo by 5 %, the arrows left and right move the passage by a bar, R turns the loop on and off, B the bass, C the click.`;

/** Everything in which Space has a meaning of its own. */
const TAKES_SPACE =
  'a[href], button, input, select, textarea, summary, [contenteditable], [role="menuitem"], [role="switch"]';

/** Space plays and stops, unless it means something where the focus is. */
export function usePlayingKeys(playback: Playback): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== ' ' || event.repeat || event.defaultPrevented) return;
      if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
      if (event.target instanceof Element && event.target.closest(TAKES_SPACE) !== null) return;
      event.preventDefault();
      if (playback.getState().kind === 'stopped') void playback.play();
      else playback.stop();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [playback]);
}
