import { type RefObject, useEffect } from 'react';
import { deskOf, goTo, selectTo } from '../../../core/writing';
import type { SystemLayout } from '../../../score';
import type { Session } from '../../state';
import { useAtWork } from '../at-work';
import { perform, workNow } from './perform';
import { pointed } from './pointed';

/**
 * Clicks on other bars of the score, while the pencil is out: in its system they mean the place that is pointed at, in
 * another one the bar's beginning, or with Shift all up to its end.
 */
export function useClicksBeside(
  listens: boolean,
  root: RefObject<HTMLElement | null>,
  system: SystemLayout,
): void {
  const { session } = useAtWork();
  useEffect(() => {
    const score = listens ? root.current?.closest('figure') : null;
    if (!score) return;
    const onClick = (event: MouseEvent) => {
      // Pressed by a key, a bar is chosen as it is elsewhere.
      const bar =
        event.detail > 0 && event.target instanceof HTMLElement ? event.target.dataset.bar : undefined;
      if (bar === undefined) return;
      event.stopPropagation();
      clickBar(session, Number(bar), event, system);
    };
    score.addEventListener('click', onClick, { capture: true });
    return () => score.removeEventListener('click', onClick, { capture: true });
  }, [listens, root, system, session]);
}

function clickBar(session: Session, bar: number, event: MouseEvent, system: SystemLayout): void {
  const work = workNow(session);
  const desk = work && deskOf(work.lesson, work.pencil);
  if (desk === null) return;
  const box = system.bars.find((each) => each.bar === bar);
  const { offsetX, offsetY: y, shiftKey: shift } = event;
  if (box !== undefined) perform(session, pointed(desk, { box, system, x: box.x + offsetX, y, shift }));
  else perform(session, shift ? selectTo({ bar, tick: Number.POSITIVE_INFINITY }) : goTo({ bar, tick: 0 }));
}
