import { hasMark, type LineNote, type MidiNumber, midiOf, ticks } from '../base';
import type { PlannedBar } from './plan';
import { swung } from './swing';
import type { PitchedEvent } from './types';

/** Strengths as MIDI counts them: common practice, no source. */
const STRENGTH = { plain: 92, downbeat: 98, accent: 116, ghost: 50 } as const;

/** A staccato note sounds for half its length (common practice, no source). */
const STACCATO_SHARE = 0.5;

/** A ghost note is a tap: it never lasts longer than a sixteenth. */
const LONGEST_GHOST = 240;

interface SoundingNote {
  readonly note: LineNote;
  readonly midi: MidiNumber;
  readonly start: number;
  end: number;
  /** The note waits for its continuation at the beginning of the next bar. */
  tied: boolean;
}

function strengthOf({ note }: SoundingNote): number {
  if (hasMark(note, 'ghost')) {
    return STRENGTH.ghost;
  }
  if (hasMark(note, 'accent')) {
    return STRENGTH.accent;
  }
  return note.start === 0 ? STRENGTH.downbeat : STRENGTH.plain;
}

function eventOf(sounding: SoundingNote): PitchedEvent {
  const ghost = hasMark(sounding.note, 'ghost');
  const staccato = hasMark(sounding.note, 'staccato');
  const length = sounding.end - sounding.start;
  const held = staccato ? Math.round(length * STACCATO_SHARE) : length;
  return {
    part: 'bass',
    midi: sounding.midi,
    start: ticks(sounding.start),
    duration: ticks(Math.max(1, ghost ? Math.min(held, LONGEST_GHOST) : held)),
    velocity: strengthOf(sounding),
    muted: ghost,
  };
}

/**
 * The bass line as it sounds: tied notes become one, wherever the order of playing leads them. A continuation
 * that nothing leads into (the passage begins with it) is struck like any note.
 */
export function bassEvents(bars: readonly PlannedBar[], ratio: number): readonly PitchedEvent[] {
  const sounding: SoundingNote[] = [];
  for (const bar of bars) {
    const at = (position: number): number => bar.start + swung(position, bar.metre, ratio);
    for (const { note } of bar.bassPlays ? (bar.sheetBar?.notes ?? []) : []) {
      const last = sounding.at(-1);
      const midi = midiOf(note.pitch);
      const end = at(note.start + note.duration);
      if (last?.tied && last.midi === midi && last.end === at(note.start)) {
        last.end = end;
        last.tied = note.tiedOn ?? false;
      } else {
        sounding.push({ note, midi, start: at(note.start), end, tied: note.tiedOn ?? false });
      }
    }
  }
  return sounding.map(eventOf);
}
