import { useEffect } from 'react';
import type { Light } from '../../../core/lesson';

/** What a key does in the large view. */
export type ShowKey =
  | { readonly kind: 'switch'; readonly what: 'tab' | 'degrees' | 'hidden' | 'answer' }
  /** The next thing of its kind to be lit up. */
  | { readonly kind: 'light'; readonly of: Light['kind'] }
  /** On or back through everything that can be lit up; nothing is lit before the first and after the last. */
  | { readonly kind: 'lights'; readonly by: 1 | -1 }
  | { readonly kind: 'bars'; readonly by: 1 | -1 };

/** Letters of the words on the page; Page Up and Page Down are the keys of a presenter's remote. */
const KEYS: Readonly<Record<string, ShowKey>> = {
  t: { kind: 'switch', what: 'tab' },
  d: { kind: 'switch', what: 'degrees' },
  h: { kind: 'switch', what: 'hidden' },
  a: { kind: 'switch', what: 'answer' },
  l: { kind: 'light', of: 'listen' },
  s: { kind: 'light', of: 'silence' },
  n: { kind: 'light', of: 'technique' },
  PageDown: { kind: 'lights', by: 1 },
  PageUp: { kind: 'lights', by: -1 },
  ArrowRight: { kind: 'bars', by: 1 },
  ArrowLeft: { kind: 'bars', by: -1 },
};

export const showKey = (key: string): ShowKey | null =>
  KEYS[key.length === 1 ? key.toLowerCase() : key] ?? null;

/**
 * What is lit next: the lights and nothing go round.
 * @param lit - index of the light that is on, or null
 */
export function nextLight(
  lights: readonly Light[],
  lit: number | null,
  key: Extract<ShowKey, { kind: 'light' | 'lights' }>,
): number | null {
  if (key.kind === 'lights') {
    const places = lights.length + 1;
    const place = ((lit ?? -1) + 1 + key.by + places) % places;
    return place === 0 ? null : place - 1;
  }
  const own = lights.flatMap((light, index) => (light.kind === key.of ? [index] : []));
  const after = own.find((index) => lit !== null && lights[lit]?.kind === key.of && index > lit);
  if (lit !== null && lights[lit]?.kind === key.of) return after ?? null;
  return own[0] ?? null;
}

/** Where letters are typed, or choose something. */
const TAKES_KEYS = 'input, textarea, select, [contenteditable]';

/** Listens to the keys of the large view while it is open. */
export function useShowKeys(act: (key: ShowKey) => void, on: boolean): void {
  useEffect(() => {
    if (!on) return;
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.target instanceof Element && event.target.closest(TAKES_KEYS) !== null) return;
      const key = showKey(event.key);
      if (key === null) return;
      event.preventDefault();
      act(key);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [act, on]);
}
