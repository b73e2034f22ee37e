import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { Playback } from '../playing';

/** Keeps the screen on while something is played, where the browser can; a page that comes back asks again. */
export function useScreenAwake(playback: Playback): void {
  const playing = useStore(playback, (state) => state.kind !== 'stopped');
  useEffect(() => {
    if (!playing || !('wakeLock' in navigator)) return;
    let lock: WakeLockSentinel | null = null;
    let gone = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      // A battery that runs low, or a setting, may refuse it: then the screen goes dark as ever.
      const given = await navigator.wakeLock.request('screen').catch(() => null);
      if (gone) await given?.release();
      else lock = given;
    };
    const askAgain = () => void ask();
    void ask();
    document.addEventListener('visibilitychange', askAgain);
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', askAgain);
      void lock?.release();
    };
  }, [playing]);
}
