import { type FeelMetre, feelMetre, type PhraseRole, type RhythmCell, readGrid } from '../feel';
import { notesPerSecond, type Onset, rhythmLevel } from './level';
import type { BarModel, LineModel } from './model';

/** A rhythm cell as one bar plays it: fitted to the bar's chords. */
export interface BarRhythm {
  readonly cell: RhythmCell;
  readonly onsets: readonly Onset[];
  /** Onsets in text, equal for equal rhythms whatever the lengths of the notes. */
  readonly pattern: string;
  readonly silentOne: boolean;
  /** Share of the bar in which nothing sounds. */
  readonly silence: number;
}

const patternOf = (onsets: readonly { readonly start: number }[]): string =>
  onsets.map((onset) => onset.start).join(' ');

export { patternOf };

/** Metres that the feel has no cells for borrow the quarter-note pulse, whole or with beat one silent. */
function plainCells(bar: BarModel): readonly RhythmCell[] {
  const beats = Math.round(bar.ticks / bar.beat);
  const all = 'x'.padEnd(2, '=').repeat(beats);
  const roles: readonly PhraseRole[] = ['statement', 'answer', 'turnaround'];
  const source = 'the plain pulse: common practice, no source';
  const grids = [all, `x=${'='.repeat(all.length - 2)}`];
  if (beats > 1) grids.push(`--${all.slice(2)}`, `${all.slice(0, -2)}--`);
  if (beats > 2) grids.push(`x===${all.slice(4)}`, `--x=${'='.repeat(all.length - 4)}`);
  return [...new Set(grids)].map((grid) => ({ id: grid, grid, roles, level: 0, highest: 5, source }));
}

function cellsOf(model: LineModel, bar: BarModel): readonly RhythmCell[] {
  const row: FeelMetre | null = feelMetre(model.request.feel, bar.metre);
  return row ? row.cells : plainCells(bar);
}

/** Keeps each note inside the stretch it begins in, and gives every later chord a note on its first beat. */
function fitToChords(onsets: readonly Onset[], bar: BarModel): readonly Onset[] {
  const fitted: Onset[] = [];
  for (const stretch of bar.stretches) {
    if (!stretch.chord) continue;
    const inside = onsets
      .filter((onset) => onset.start >= stretch.start && onset.start < stretch.end)
      .map((onset) => ({ ...onset, duration: Math.min(onset.duration, stretch.end - onset.start) }));
    const first = inside[0];
    const late = first === undefined ? stretch.end - stretch.start : first.start - stretch.start;
    if (late > 0 && (stretch.index > 0 || first === undefined)) {
      const ringing = onsets.some(
        (onset) => onset.start < stretch.start && onset.start + onset.duration > stretch.start,
      );
      if (ringing || first === undefined || late >= bar.beat) {
        fitted.push({ start: stretch.start, duration: Math.min(late, ringing ? late : bar.beat) });
      }
    }
    fitted.push(...inside);
  }
  return fitted;
}

function playCell(cell: RhythmCell, bar: BarModel): BarRhythm {
  const notes = readGrid(cell.grid, bar.metre);
  const plain = bar.stretches.length === 1 && bar.playable;
  const onsets = plain ? notes : fitToChords(notes, bar);
  const sounding = onsets.reduce((sum, onset) => sum + onset.duration, 0);
  return {
    cell,
    onsets,
    pattern: patternOf(onsets),
    silentOne: onsets[0]?.start !== 0,
    silence: 1 - sounding / bar.ticks,
  };
}

/**
 * The rhythms of the feel that a bar may have at the request's level and tempo, fitted to its chords; without
 * `space` none with a silent beat one or half a bar of silence. Falls back on the calmest rhythm there is.
 */
export function rhythmsFor(model: LineModel, bar: BarModel): readonly BarRhythm[] {
  const { level, tempo, techniques } = model.request;
  const spaceAllowed = techniques.has('space');
  const played = cellsOf(model, bar)
    .map((cell) => playCell(cell, bar))
    .filter((rhythm) => rhythm.onsets.length > 0);
  const allowed = played.filter(
    ({ onsets, silentOne, silence }) =>
      rhythmLevel(onsets, bar.metre) <= level &&
      notesPerSecond(onsets.length, bar.metre, tempo) <= model.limits.notesPerSecond &&
      (spaceAllowed || (!silentOne && silence < 0.5)),
  );
  if (allowed.length > 0) return allowed;
  const calmest = [...played]
    .filter((rhythm) => spaceAllowed || !rhythm.silentOne)
    .sort((one, other) => one.onsets.length - other.onsets.length)[0];
  return calmest ? [calmest] : [];
}
