import { beatAt, beatsOf, isDotted, type Metre } from '../base';
import type { NotatedEvent } from './types';

/** A syllable under a moment of the bar. */
export interface CountMark {
  readonly tick: number;
  readonly text: string;
}

const PARTS = 24;
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

/** What is said at a moment of a bar: the beat's number, or a syllable within it; null where there is no word for it. */
export function syllableAt(metre: Metre, tick: number): string | null {
  const beat = beatAt(metre, tick);
  const within = ((tick - beat.start) / beat.length) * PARTS;
  if (within === 0) return String(beat.index + 1);
  return (isDotted(beat) ? COMPOUND : SIMPLE).get(within) ?? null;
}

/** The place of a syllable within a beat, as a share of it; null for any other text. */
export function syllablePlace(text: string, dotted: boolean): number | null {
  for (const [place, syllable] of dotted ? COMPOUND : SIMPLE) if (syllable === text) return place / PARTS;
  return null;
}

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
    const text = syllableAt(metre, event.start);
    if (text !== null) marks.set(event.start, text);
  }
  return [...marks].map(([tick, text]) => ({ tick, text })).sort((one, other) => one.tick - other.tick);
}
