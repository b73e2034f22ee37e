import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { Playback } from '../playing';
import silence from './silence.wav';

/** Browsers give the buttons of headphones and of the lock screen to a page that plays a media element. */
function createSilence(): HTMLAudioElement {
  const element = new Audio(silence);
  element.loop = true;
  return element;
}

/** Lets the buttons of headphones, keyboard and lock screen play, pause and stop. */
export function useMediaButtons(playback: Playback, piece: string, lesson: string): void {
  const kind = useStore(playback, (state) => state.kind);
  useEffect(() => {
    if (!('mediaSession' in navigator)) return;
    const { mediaSession } = navigator;
    const set = (action: MediaSessionAction, act: (() => void) | null) => {
      try {
        mediaSession.setActionHandler(action, act);
      } catch {
        // A browser that does not know a button has none of that kind.
      }
    };
    set('play', () => void playback.goOn());
    set('pause', playback.pause);
    set('stop', playback.stop);
    return () => {
      set('play', null);
      set('pause', null);
      set('stop', null);
      mediaSession.metadata = null;
      mediaSession.playbackState = 'none';
    };
  }, [playback]);
  useEffect(() => {
    if ('mediaSession' in navigator)
      navigator.mediaSession.metadata = new MediaMetadata({ title: piece, artist: lesson });
  }, [piece, lesson]);
  useEffect(() => {
    if (!('mediaSession' in navigator)) return;
    navigator.mediaSession.playbackState = kind === 'stopped' ? 'paused' : 'playing';
    if (kind !== 'playing') return;
    const element = createSilence();
    // Where it may not play, the buttons stay with whoever has them.
    element.play().catch(() => undefined);
    return () => element.pause();
  }, [kind]);
}
