import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { changeByKey } from './keys';
import type { Playback } from './playback';
import type { SentenceProps } from './props';
import { inShort } from './words';

export interface ButtonsProps {
  readonly playback: Playback;
  /** What is at hand to be played and can be changed by the keys; null: there is nothing to play. */
  readonly line: SentenceProps | null;
}

/**
 * Two buttons in one place; the one that would do nothing is away. The focus stays in the place, and while it is
 * there some keys change how it is played (see {@link changeByKey}).
 */
export function PlayAndStop({ playback, line }: ButtonsProps) {
  const silent = useStore(playback, (state) => state.kind === 'stopped');
  const holder = useRef<HTMLDivElement>(null);
  const hadFocus = useRef(false);
  const [byKeys, setByKeys] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs when the one button has replaced the other
  useEffect(() => {
    if (hadFocus.current) holder.current?.querySelector('button')?.focus();
  }, [silent]);
  const remember = () => {
    hadFocus.current = holder.current?.contains(document.activeElement) ?? false;
  };
  if (silent && line === null) return null;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the button inside, whichever it is
    <div
      className="ledge__play"
      ref={holder}
      onKeyDown={(event) => {
        if (line === null || event.ctrlKey || event.metaKey || event.altKey) return;
        const change = changeByKey(event.key, line.piece, line.sheet);
        if (change === null) return;
        event.preventDefault();
        line.onChange(change, 'keys');
        setByKeys(true);
      }}
      onBlur={() => setByKeys(false)}
    >
      {silent ? (
        <button
          key="play"
          type="button"
          className="play"
          // Whoever is about to press it waits no longer for what a page at rest makes ready.
          onPointerEnter={playback.warmUp}
          onFocus={playback.warmUp}
          onClick={() => {
            remember();
            void playback.play();
          }}
          onBlur={() => {
            hadFocus.current = false;
          }}
        >
          <svg viewBox="0 0 12 14" width="12" height="14" aria-hidden="true">
            <path d="M0 0 12 7 0 14Z" fill="currentColor" />
          </svg>
          Play
        </button>
      ) : (
        <button
          key="stop"
          type="button"
          className="play play--stop"
          onClick={() => {
            remember();
            playback.stop();
          }}
        >
          <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
            <path d="M0 0h12v12H0Z" fill="currentColor" />
          </svg>
          Stop
        </button>
      )}
      <span className="visually-hidden" aria-live="polite">
        {byKeys && line !== null && inShort(line.piece, line.sheet)}
      </span>
    </div>
  );
}
