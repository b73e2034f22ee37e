import { useCallback, useRef, useState } from 'react';
import { checkLevel, type LevelCheck, type Loudness } from '../../../core/listening';
import type { HeardLevel } from '../../../sound';

/** More readings than this are more than a check needs; twenty come in a second. */
const MOST = 600;

/** The check of the level: begun when an input is opened, over when the bass was heard, or when it is left. */
export function useCheck() {
  const readings = useRef<Loudness[] | null>(null);
  const [check, setCheck] = useState<LevelCheck | null>(null);
  const begin = useCallback(() => {
    readings.current = [];
    setCheck(checkLevel([]));
  }, []);
  /** Leaves it where it is not done; what it found stays said. */
  const leave = useCallback(() => {
    if (readings.current === null) return;
    readings.current = null;
    setCheck(null);
  }, []);
  const take = useCallback(({ now: level, clipped }: HeardLevel) => {
    const all = readings.current;
    if (all === null) return;
    all.push({ at: performance.now() / 1000, level, clipped });
    if (all.length > MOST) all.splice(0, MOST / 2);
    const next = checkLevel(all);
    if (next.stage === 'done') readings.current = null;
    setCheck(next);
  }, []);
  return { check, begin, leave, take };
}
