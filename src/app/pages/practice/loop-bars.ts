import { type MouseEvent, type PointerEvent, useEffect, useRef, useState } from 'react';

/** Bars from one to another, by their index, in the order in which they were touched. */
export interface BarRun {
  readonly from: number;
  readonly to: number;
}

const barAt = (x: number, y: number): number | null => {
  const over = document.elementFromPoint(x, y)?.closest<HTMLElement>('[data-bar]');
  return over?.dataset.bar === undefined ? null : Number(over.dataset.bar);
};

/**
 * Dragging over the bars of a score: what is dragged over so far, and the listeners for what holds the score. A touch
 * that goes up or down scrolls the page; Escape abandons the drag.
 * @param onLoop - is given the bars once they are let go
 */
export function useDraggedBars(onLoop: (run: BarRun) => void) {
  const [run, setRun] = useState<BarRun | null>(null);
  const begun = useRef<number | null>(null);
  const dragged = useRef(false);
  const end = () => {
    begun.current = null;
    setRun(null);
  };
  useEffect(() => {
    if (run === null) return;
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      begun.current = null;
      setRun(null);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [run]);
  return {
    run,
    listeners: {
      onPointerDown: ({ isPrimary, button, clientX, clientY }: PointerEvent) => {
        dragged.current = false;
        begun.current = isPrimary && button === 0 ? barAt(clientX, clientY) : null;
      },
      onPointerMove: ({ currentTarget, pointerId, clientX, clientY }: PointerEvent) => {
        const from = begun.current;
        const to = from === null ? null : barAt(clientX, clientY);
        if (from === null || to === null || (run === null && to === from)) return;
        if (!dragged.current) currentTarget.setPointerCapture(pointerId);
        dragged.current = true;
        if (run?.to !== to) setRun({ from, to });
      },
      onPointerUp: () => {
        if (run !== null) onLoop(run);
        end();
      },
      onPointerCancel: end,
      /** A drag that ends over a bar is no tap on it. */
      onClickCapture: (event: MouseEvent) => {
        if (!dragged.current) return;
        dragged.current = false;
        event.stopPropagation();
        event.preventDefault();
      },
    },
  };
}
