import { type RefObject, useEffect, useLayoutEffect, useState, useSyncExternalStore } from 'react';
import { flushSync } from 'react-dom';

/** Widths at which everything stands in one column: the style sheets' 48 rem. */
export const NARROW = '(max-width: 47.99rem)';
/** Narrow, or as low as a telephone held sideways or a page at 400 % zoom: what is not the music takes one row. */
export const SMALL = '(max-width: 47.99rem), (max-height: 29.99rem)';
/** As low as a telephone held sideways. */
export const LOW = '(max-height: 29.99rem)';
/** Low and narrow: a page at 400 % zoom. */
export const TINY = '(max-height: 29.99rem) and (max-width: 39.99rem)';

/** Follows a media query. */
export function useMedia(query: string): boolean {
  return useSyncExternalStore(
    (changed) => {
      const list = window.matchMedia(query);
      list.addEventListener('change', changed);
      return () => list.removeEventListener('change', changed);
    },
    () => window.matchMedia(query).matches,
  );
}

/** Width of an element's content in whole CSS pixels; 0 before it is on the page. */
export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return;
    setWidth(Math.floor(watched.clientWidth));
    const observer = new ResizeObserver(() => setWidth(Math.floor(watched.clientWidth)));
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return width;
}

/** Whether the browser is printing the page; what changes with it has changed before the paper is laid out. */
export function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
    };
  }, []);
  return printing;
}

/** Whether an element is in view or has been near it: far things are drawn when they come closer. */
export function useNear(element: RefObject<HTMLElement | null>): boolean {
  const [near, setNear] = useState(false);
  useEffect(() => {
    const watched = element.current;
    if (near || watched === null) return;
    const observer = new IntersectionObserver(
      (entries) => {
        if (entries.some((entry) => entry.isIntersecting)) setNear(true);
      },
      { rootMargin: '800px 0px' },
    );
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element, near]);
  return near;
}

/** Scrolling glides unless the person has asked for less motion. */
export const gliding = (): ScrollBehavior =>
  window.matchMedia('(prefers-reduced-motion: reduce)').matches ? 'instant' : 'smooth';

/** Runs `work` when the browser has nothing better to do, at the latest after `timeout` milliseconds. */
export function whenIdle(work: () => void, timeout: number): () => void {
  if (typeof window.requestIdleCallback === 'function') {
    const handle = window.requestIdleCallback(work, { timeout });
    return () => window.cancelIdleCallback(handle);
  }
  const handle = window.setTimeout(work, Math.min(timeout, 200));
  return () => window.clearTimeout(handle);
}
