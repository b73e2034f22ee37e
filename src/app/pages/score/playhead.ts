import { type RefObject, useEffect } from 'react';
import type { Sheet } from '../../../core/lesson';
import { straightened } from '../../../core/playing';
import type { PlayheadPlace, ScoreLayout } from '../../../score';
import type { PlayPosition } from '../../../sound';
import { useAtWork } from '../at-work';
import { gliding } from '../common';
import { heardSheet } from '../playing';
import { barToRead, countedBeat, scrollAhead } from './reading-ahead';
import { useScore } from './ready';

/** Moves the playhead by transforms alone while the piece is heard, and keeps what is read next in view. */
export function usePlayhead(layout: ScoreLayout, sheet: Sheet, figure: RefObject<HTMLElement | null>): void {
  const { playback, session } = useAtWork();
  const state = useScore();
  useEffect(() => {
    if (sheet.kind !== 'line' || state.kind !== 'ready') return;
    const { playheadX } = state.score;
    const goesRound = () => {
      const piece = session.lessons.getState().lesson.pieces.find(({ id }) => id === sheet.id);
      return piece?.kind === 'line' && (piece.playing.loop || piece.playing.ladder?.climbed === true);
    };
    const placeOf = ({ performance, playedBar, tick }: PlayPosition): PlayheadPlace | null => {
      // While it is counted in, it waits where the music begins.
      const bar = performance.bars[playedBar ?? (tick < performance.countIn ? 0 : -1)];
      if (bar === undefined) return null;
      const within = Math.max(0, tick - bar.start);
      return playheadX(layout, bar.bar, straightened(within, sheet, performance.tempo));
    };
    let shown: HTMLElement | null = null;
    let read: number | null = null;
    const hide = () => {
      shown?.classList.remove('playhead--on');
      if (shown !== null) shown.dataset.count = '';
      shown = null;
    };
    const lookAhead = (position: PlayPosition | null) => {
      const system = position === null ? null : systemOf(layout, barToRead(position, goesRound()));
      if (system !== null && system !== read) showSystem(figure.current, system);
      read = system;
    };
    const stop = playback.follow((position) => {
      const played = position && heardSheet(playback.getState()) === sheet.id ? position : null;
      lookAhead(played);
      const place = played && placeOf(played);
      const head = place && figure.current?.querySelector<HTMLElement>(`[data-playhead="${place.system}"]`);
      if (!place || !head) {
        hide();
        return;
      }
      if (head !== shown) {
        hide();
        shown = head;
        head.classList.add('playhead--on');
      }
      head.style.transform = `translateX(${place.x}px)`;
      head.dataset.count = String((played && countedBeat(played, sheet.chart.metre)) ?? '');
    });
    return () => {
      stop();
      hide();
    };
  }, [playback, session, layout, sheet, state, figure]);
}

function systemOf({ systems }: ScoreLayout, bar: number | null): number | null {
  const system = systems.find(({ bars }) => bars.some((box) => box.bar === bar));
  return system?.index ?? null;
}

/** Scrolls to a system so that it and the next one can be read; not at all where they are in view. */
function showSystem(figure: HTMLElement | null, index: number): void {
  const place = (system: number): HTMLElement | null =>
    figure?.querySelector<HTMLElement>(`[data-playhead="${system}"]`)?.parentElement ?? null;
  const coming = place(index);
  if (coming === null) return;
  const { scrollMarginTop, scrollMarginBottom } = getComputedStyle(coming);
  const view = {
    top: Number.parseFloat(scrollMarginTop) || 0,
    bottom: window.innerHeight - (Number.parseFloat(scrollMarginBottom) || 0),
  };
  const following = place(index + 1)?.getBoundingClientRect() ?? null;
  const down = scrollAhead(coming.getBoundingClientRect(), following, view);
  // Gliding over pages, it would come after the first beats.
  const isFar = Math.abs(down) > 2 * window.innerHeight;
  if (down !== 0) window.scrollBy({ top: down, behavior: isFar ? 'instant' : gliding() });
}
