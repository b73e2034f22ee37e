import type { LineNote } from '../base';
import type { LineModel } from './model';
import { hear, type Tone } from './tones';
import type { LineNotes } from './types';

/** A whole line as it is heard: tones by written bar, ties resolved. */
export type HeardLine = readonly (readonly Tone[])[];

const goesOnInto = (last: Tone | undefined, first: Tone): boolean =>
  last?.tiedOn === true && first.start === 0 && last.midi === first.midi;

/** Hears every bar; a note that some bar before ties over into is held, not struck. */
export function hearLine(model: LineModel, line: LineNotes): HeardLine {
  const bars = model.bars.map((bar) => hear(bar, line[bar.index] ?? []));
  return bars.map((_, index) => heldOver(model, bars, index));
}

/** A heard line, and what is needed to hear it again with other notes in some bars. */
export interface Hearing {
  readonly model: LineModel;
  readonly line: LineNotes;
  /** Each bar by itself, no tie resolved. */
  readonly alone: readonly (readonly Tone[])[];
  readonly heard: HeardLine;
}

/** {@link hearLine} that keeps the tones of every bar which sounds as it did before: the same list again. */
export function hearAgain(model: LineModel, line: LineNotes, before: Hearing | null): Hearing {
  const known = before?.model === model ? before : null;
  const alone = model.bars.map((bar, place) => {
    const tones = known?.alone[place];
    return tones !== undefined && known?.line[bar.index] === line[bar.index]
      ? tones
      : hear(bar, line[bar.index] ?? []);
  });
  const heard = alone.map((tones, index) => {
    const now = heldOver(model, alone, index);
    const was = known?.heard[index];
    const stays = tones === known?.alone[index] && was?.[0]?.held === now[0]?.held;
    return stays && was !== undefined ? was : now;
  });
  return { model, line, alone, heard };
}

/** Marks a bar's first note as held where some bar before ties over into it. */
function heldOver(model: LineModel, heard: HeardLine, index: number): readonly Tone[] {
  const tones = heard[index] ?? [];
  const first = tones[0];
  if (!first) return tones;
  const before = model.bars[index]?.before ?? [];
  const held = before.some((other) => goesOnInto(heard[other]?.at(-1), first));
  return held === first.held ? tones : [{ ...first, held }, ...tones.slice(1)];
}

/** The line with one bar's notes replaced. */
export function hearWith(
  model: LineModel,
  heard: HeardLine,
  index: number,
  notes: readonly LineNote[],
): HeardLine {
  const bar = model.bars[index];
  if (!bar) return heard;
  const line = heard.slice();
  line[index] = hear(bar, notes);
  for (const place of [index, ...bar.after]) line[place] = heldOver(model, line, place);
  return line;
}

export const struck = (tones: readonly Tone[]): readonly Tone[] => tones.filter((tone) => !tone.held);

/** Whether nothing sounds on beat one. */
export const isSilentOnOne = (tones: readonly Tone[]): boolean => tones[0]?.start !== 0;

/** A silence within a bar, in ticks from the bar's beginning. */
export interface Silence {
  readonly from: number;
  readonly to: number;
}

/** The silences within a bar, in their order. */
export function silencesOf(tones: readonly Tone[], barTicks: number): readonly Silence[] {
  const silences: Silence[] = [];
  let from = 0;
  for (const { start, duration } of tones) {
    if (start > from) silences.push({ from, to: start });
    from = Math.max(from, start + duration);
  }
  if (barTicks > from) silences.push({ from, to: barTicks });
  return silences;
}

/** The longest silence within a bar in ticks, and all of it together. */
export function silenceOf(tones: readonly Tone[], barTicks: number): { longest: number; whole: number } {
  let longest = 0;
  let whole = 0;
  for (const { from, to } of silencesOf(tones, barTicks)) {
    longest = Math.max(longest, to - from);
    whole += to - from;
  }
  return { longest, whole };
}
