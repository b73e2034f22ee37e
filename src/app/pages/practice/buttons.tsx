import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { changeByKey, type Playback, type SentenceProps } from '../playing';

interface Action {
  readonly word: string;
  /** What is drawn before it, in a box of 12 by 14. */
  readonly sign: string;
  readonly act: () => void;
}

const SIGNS = {
  play: 'M0 0 12 7 0 14Z',
  pause: 'M0 0h4v14H0ZM8 0h4v14H8Z',
  stop: 'M0 1h12v12H0Z',
} as const;

/** What the two buttons do; the second one is away while nothing is to be stopped. */
function useActions(playback: Playback): readonly Action[] {
  const kind = useStore(playback, (state) => state.kind);
  const paused = useStore(playback, (state) => state.paused !== null);
  const stop = { word: 'Stop', sign: SIGNS.stop, act: playback.stop };
  if (kind !== 'stopped') return [{ word: 'Pause', sign: SIGNS.pause, act: playback.pause }, stop];
  return paused
    ? [{ word: 'Go on', sign: SIGNS.play, act: () => void playback.goOn() }, stop]
    : [{ word: 'Play', sign: SIGNS.play, act: () => void playback.play() }];
}

interface PracticeButtonsProps {
  readonly playback: Playback;
  /** What is at hand to be played, and can be changed by the keys. */
  readonly line: SentenceProps;
  readonly inShort: string;
}

/**
 * Play, then Pause and Stop, then Go on and Stop, in one place. The focus stays on the first of them, and while it is
 * there some keys change how it is played.
 */
export function PracticeButtons({ playback, line, inShort }: PracticeButtonsProps) {
  const [first, second] = useActions(playback);
  const holder = useRef<HTMLDivElement>(null);
  const [byKeys, setByKeys] = useState(false);
  useFocusKept(holder, second === undefined);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the buttons inside
    <div
      className="ledge__play practice__buttons"
      ref={holder}
      onKeyDown={(event) => {
        if (event.ctrlKey || event.metaKey || event.altKey) return;
        const change = changeByKey(event.key, line.piece, line.sheet);
        if (change === null) return;
        event.preventDefault();
        line.onChange(change, 'keys');
        setByKeys(true);
      }}
      onBlur={() => setByKeys(false)}
    >
      {first && <ActionButton {...first} className="play" />}
      {second && <ActionButton {...second} className="play play--stop" />}
      <span className="visually-hidden" aria-live="polite">
        {byKeys && inShort}
      </span>
    </div>
  );
}

/** The focus goes on to the first button when the second one goes. */
function useFocusKept(holder: { readonly current: HTMLElement | null }, alone: boolean): void {
  const within = useRef(false);
  useEffect(() => {
    const watched = holder.current;
    const remember = () => {
      within.current = watched?.contains(document.activeElement) === true;
    };
    watched?.addEventListener('focusin', remember);
    return () => watched?.removeEventListener('focusin', remember);
  }, [holder]);
  useEffect(() => {
    if (alone && within.current && document.activeElement === document.body)
      holder.current?.querySelector('button')?.focus();
  }, [holder, alone]);
}

const ActionButton = ({ word, sign, act, className }: Action & { readonly className: string }): ReactNode => (
  <button type="button" className={className} onClick={act}>
    <svg viewBox="0 0 12 14" width="12" height="14" aria-hidden="true">
      <path d={sign} fill="currentColor" />
    </svg>
    {word}
  </button>
);
