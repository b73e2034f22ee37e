import { type Bpm, barTicks, type LineNote, midiOf, ticks } from '../base';
import type { Chart } from '../chart';
import {
  type FingeredNote,
  type Fingering,
  fingerLine,
  type HandSettings,
  type Instrument,
  type NoteToFinger,
  ticksPerSecond,
} from '../fretboard';

/** The fingering of a line, given back bar by bar as it is written. */
export interface LineFingering {
  readonly bars: readonly (readonly (FingeredNote | null)[])[];
  readonly whole: Fingering;
}

/**
 * Fingers a whole written line in one search, around its loop seam. A note tied over from the bar before is not
 * struck again: it shares the place and the finger of the note that began it.
 */
export function fingerBars(
  chart: Chart,
  bars: readonly (readonly LineNote[])[],
  instrument: Instrument,
  hand: HandSettings,
  tempo: Bpm,
): LineFingering {
  const struck: NoteToFinger[] = [];
  /** For every written note, the index of the struck note it belongs to. */
  const owners: number[][] = [];
  let barStart = 0;
  let tied: LineNote | null = null;
  bars.forEach((notes, index) => {
    const written = chart.bars[index];
    owners.push(
      notes.map((note) => {
        const goesOn = tied !== null && note.start === 0 && midiOf(note.pitch) === midiOf(tied.pitch);
        const last = struck.at(-1);
        if (goesOn && last !== undefined) {
          struck[struck.length - 1] = { ...last, duration: ticks(last.duration + note.duration) };
        } else {
          struck.push({
            start: ticks(barStart + note.start),
            duration: note.duration,
            midi: midiOf(note.pitch),
            ...(note.pins === undefined ? {} : { pins: note.pins }),
          });
        }
        tied = note.tiedOn === true ? note : null;
        return struck.length - 1;
      }),
    );
    barStart += written === undefined ? 0 : barTicks(written.metre);
    const last = notes.at(-1);
    tied = last?.tiedOn === true ? last : null;
  });
  const whole = fingerLine(struck, instrument, hand, {
    ticksPerSecond: ticksPerSecond(tempo, chart.metre),
    loop: ticks(barStart),
  });
  return { bars: owners.map((notes) => notes.map((owner) => whole.notes[owner] ?? null)), whole };
}
