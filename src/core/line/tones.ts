import { LETTERS, type LineNote, midiOf, type SpelledName, ticks } from '../base';
import { classAbove, pitchAt, type Stretch } from './harmony';
import { type BarModel, stretchAt } from './model';

/** A note with what the chord under it makes of it. */
export interface Tone {
  readonly start: number;
  readonly duration: number;
  readonly midi: number;
  readonly name: SpelledName;
  readonly stretch: Stretch | null;
  /** Half steps above the chord's root, 0–11; −1 without a chord. */
  readonly interval: number;
  readonly member: boolean;
  readonly tiedOn: boolean;
  /** Goes on from the bar before without being struck. */
  readonly held: boolean;
}

export function toneOf(
  bar: BarModel,
  start: number,
  duration: number,
  midi: number,
  name: SpelledName,
): Tone {
  const stretch = stretchAt(bar, start);
  const chorded = stretch?.chord ? stretch : null;
  const interval = chorded ? classAbove(midi, chorded.rootClass) : -1;
  return {
    start,
    duration,
    midi,
    name,
    stretch,
    interval,
    member: chorded ? (chorded.members[interval] ?? false) : false,
    tiedOn: false,
    held: false,
  };
}

/** The notes of a bar as they are heard over its chords. */
export const hear = (bar: BarModel, notes: readonly LineNote[]): readonly Tone[] =>
  notes.map((note) => ({
    ...toneOf(bar, note.start, note.duration, midiOf(note.pitch), note.pitch),
    tiedOn: note.tiedOn === true,
  }));

/** Tones as notes to store. */
export function writeNotes(tones: readonly Tone[]): readonly LineNote[] {
  return tones.flatMap((tone): LineNote[] => {
    const pitch = pitchAt(tone.name, tone.midi);
    if (!pitch) return [];
    const note = { start: ticks(tone.start), duration: ticks(tone.duration), pitch };
    return [tone.tiedOn ? { ...note, tiedOn: true } : note];
  });
}

/** The height of a tone in steps of the staff. */
export const staffOf = ({ midi, name }: Tone): number =>
  LETTERS.indexOf(name.letter) + 7 * Math.floor((midi - name.alteration) / 12);

/** Whether a tone is the note that belongs under its chord. */
export const isHome = (tone: Tone): boolean =>
  tone.stretch?.chord !== undefined &&
  tone.stretch.chord !== null &&
  tone.midi % 12 === tone.stretch.homeClass;

/** Whether a note belongs neither to its chord nor to the scale over it. */
export const isOutsideScale = (tone: Tone): boolean =>
  tone.stretch?.chord !== null &&
  tone.stretch !== null &&
  !tone.member &&
  !tone.stretch.steps.some((step) => step?.halfSteps === tone.interval);

/** Steps are one or two half steps; a repeated note is neither a step nor a leap. */
export const isStep = (from: number, to: number): boolean => from !== to && Math.abs(to - from) <= 2;
export const isLeap = (from: number, to: number): boolean => Math.abs(to - from) > 2;

/** Whether a note is the fifth of the root that follows it, a fourth below it or a fifth above: it falls home. */
export const isDominantApproach = (tone: Tone, next: Tone): boolean =>
  !tone.member && isHome(next) && (next.midi - tone.midi === 5 || next.midi - tone.midi === -7);
