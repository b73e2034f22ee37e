import { beatTicks, isCompound, type Metre } from '../base';
import type { NotatedEvent } from './types';

/** A syllable under a moment of the bar. */
export interface CountMark {
  readonly tick: number;
  readonly text: string;
}

/** Syllables by their place within a beat, in 24ths of the beat. */
const SIMPLE: ReadonlyMap<number, string> = new Map([
  [6, 'e'],
  [12, '&'],
  [18, 'a'],
  [8, 'trip'],
  [16, 'let'],
]);
const COMPOUND: ReadonlyMap<number, string> = new Map([
  [8, '&'],
  [16, 'a'],
]);

/**
 * How a bar is counted aloud: `1 & 2 &`, `1 e & a`, triplets `1 trip let`, in compound time `1 & a`
 * (readmusicmethod.com, "Counting rhythms"; compound time common practice, no source). A beat that is not struck
 * is whispered, in brackets.
 * @param tiedIn the first note goes on from the bar before, so it is not struck
 */
export function countingOf(
  events: readonly NotatedEvent[],
  metre: Metre,
  tiedIn = false,
): readonly CountMark[] {
  const beat = beatTicks(metre);
  const syllables = isCompound(metre) ? COMPOUND : SIMPLE;
  const marks = new Map<number, string>();
  const length = metre.count * (isCompound(metre) ? beat / 3 : beat);
  for (let tick = 0; tick < length; tick += beat) marks.set(tick, `(${tick / beat + 1})`);
  let before: NotatedEvent | null = null;
  for (const event of events) {
    const goesOn = event.note === before?.note || (tiedIn && event.note === 0);
    const struck = event.note !== null && !goesOn;
    before = event;
    if (!struck) continue;
    const within = ((event.start % beat) / beat) * 24;
    const text = within === 0 ? String(event.start / beat + 1) : syllables.get(within);
    if (text) marks.set(event.start, text);
  }
  return [...marks].map(([tick, text]) => ({ tick, text })).sort((one, other) => one.tick - other.tick);
}
