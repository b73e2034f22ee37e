import { useCallback, useRef, useState } from 'react';
import type { LineSheet } from '../../../core/lesson';
import { seenInWords } from './bars-in-words';
import type { Place } from './music';

/** Which bars are seen, and the way to others while nothing is played. */
interface SeenBars {
  /** Their indices: first what is played, then what comes next. */
  readonly seen: readonly number[];
  readonly onSeen: (bars: readonly number[]) => void;
  readonly place: Place;
  readonly turnTo: (way: 1 | -1) => void;
  /** Where somebody turned to, in words; nothing is said of what the playing turns to. */
  readonly told: string;
}

/**
 * @param begin - index of the bar at which the view opens
 * @param count - bars that are wanted at once
 */
export function useSeenBars(sheet: LineSheet, begin: number, count: number): SeenBars {
  const [seen, setSeen] = useState<readonly number[]>([]);
  const [place, setPlace] = useState<Place>({ bar: Math.max(0, begin) });
  const [told, setTold] = useState('');
  const asked = useRef(false);
  const onSeen = useCallback(
    (bars: readonly number[]) => {
      setSeen(bars);
      setTold(asked.current ? seenInWords(sheet, bars) : '');
      asked.current = false;
    },
    [sheet],
  );
  const turnTo = useCallback(
    (way: 1 | -1) => {
      asked.current = true;
      setPlace({ bar: barAfterTurn(seen, way, { count, last: sheet.bars.length - 1 }) });
    },
    [seen, count, sheet.bars.length],
  );
  return { seen, onSeen, place, turnTo, told };
}

/**
 * The bar to turn to: what comes after all that is seen, or as many bars before it. At the first and last bar it stays.
 * @param seen - indices of the bars that are seen
 * @param last - index of the last bar
 */
export function barAfterTurn(
  seen: readonly number[],
  way: 1 | -1,
  { count, last }: { readonly count: number; readonly last: number },
): number {
  const here = seen[0] ?? 0;
  if (way < 0) return Math.max(0, here - count);
  const after = here + Math.max(1, seen.length);
  return after > last ? here : after;
}
