import { beatAt, beatsOf, isDotted, type Metre } from '../base';
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
 * (readmusicmethod.com, "Counting rhythms"; compound time common practice, no source). In 7/8 the three beats are
 * counted, the last one long: `1 & 2 & 3 & a` (common practice, no source). A beat that is not struck is whispered, in
 * brackets.
 * @param tiedIn the first note goes on from the bar before, so it is not struck
 */
export function countingOf(
  events: readonly NotatedEvent[],
  metre: Metre,
  tiedIn = false,
): readonly CountMark[] {
  const marks = new Map<number, string>();
  for (const { start, index } of beatsOf(metre)) marks.set(start, `(${index + 1})`);
  let before: NotatedEvent | null = null;
  for (const event of events) {
    const goesOn = event.note === before?.note || (tiedIn && event.note === 0);
    const struck = event.note !== null && !goesOn;
    before = event;
    if (!struck) continue;
    const beat = beatAt(metre, event.start);
    const within = ((event.start - beat.start) / beat.length) * 24;
    const syllables = isDotted(beat) ? COMPOUND : SIMPLE;
    const text = within === 0 ? String(beat.index + 1) : syllables.get(within);
    if (text) marks.set(event.start, text);
  }
  return [...marks].map(([tick, text]) => ({ tick, text })).sort((one, other) => one.tick - other.tick);
}
