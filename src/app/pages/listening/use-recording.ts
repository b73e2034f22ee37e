import { useCallback, useRef, useState } from 'react';
import type { OpenEar, Recording } from '../../../sound';

/** A recording of what was played last: made only where it is asked for, in memory, and forgotten with the page. */
export function useRecording() {
  const [asked, setAsked] = useState(false);
  const [recorded, setRecorded] = useState<Blob | null>(null);
  const running = useRef<Recording | null>(null);
  const isAsked = useRef(asked);
  isAsked.current = asked;
  const ask = useCallback((on: boolean) => {
    setAsked(on);
    if (on) return;
    void running.current?.end();
    running.current = null;
    setRecorded(null);
  }, []);
  const begin = useCallback((ear: OpenEar | null) => {
    if (!isAsked.current || running.current !== null || ear === null) return;
    setRecorded(null);
    running.current = ear.record();
  }, []);
  const end = useCallback(async () => {
    const ended = running.current;
    running.current = null;
    const blob = await ended?.end();
    // Who has taken the tick away meanwhile has nothing kept.
    if (blob && isAsked.current) setRecorded(blob);
  }, []);
  return { asked, ask, recorded, begin, end };
}
