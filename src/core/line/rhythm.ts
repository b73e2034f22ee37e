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
  /** The longest silence, as a share of the bar. */
  readonly longest: number;
}

export const patternOf = (onsets: readonly { readonly start: number }[]): string =>
  onsets.map((onset) => onset.start).join(' ');

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

function longestSilence(onsets: readonly Onset[], end: number): number {
  let longest = 0;
  let from = 0;
  for (const onset of onsets) {
    longest = Math.max(longest, onset.start - from);
    from = onset.start + onset.duration;
  }
  return Math.max(longest, end - from);
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
    longest: longestSilence(onsets, bar.ticks) / bar.ticks,
  };
}

/** Whether a rhythm has as many notes as the aims for its bar ask for. */
function hasDensity(bar: BarModel, rhythm: BarRhythm): boolean {
  const beats = bar.ticks / bar.beat;
  if (bar.demands.density === 'sparse') return rhythm.onsets.length < beats;
  return bar.demands.density !== 'busy' || rhythm.onsets.length > beats;
}

/** The first list that is not empty: aims that cannot all be kept give way from the last one on. */
const firstKept = (lists: readonly (readonly BarRhythm[])[]): readonly BarRhythm[] =>
  lists.find((list) => list.length > 0) ?? [];

const LONG_SILENCE = 0.5;

/**
 * The rhythms of the feel that a bar may have at the request's level and tempo, fitted to its chords and kept to
 * its aims; without `space` none with a silent beat one or half a bar of silence. Falls back on the calmest
 * rhythm there is.
 */
export function rhythmsFor(model: LineModel, bar: BarModel): readonly BarRhythm[] {
  const { level, tempo } = model.request;
  const { techniques, wanted, silence } = bar.demands;
  const spaceAllowed = techniques.has('space');
  const played = cellsOf(model, bar)
    .map((cell) => playCell(cell, bar))
    .filter((rhythm) => rhythm.onsets.length > 0);
  const allowed = played.filter(
    (rhythm) =>
      rhythmLevel(rhythm.onsets, bar.metre) <= level &&
      notesPerSecond(rhythm.onsets.length, bar.metre, tempo) <= model.limits.notesPerSecond &&
      (spaceAllowed || (!rhythm.silentOne && rhythm.longest < LONG_SILENCE)),
  );
  const dense = allowed.filter((rhythm) => hasDensity(bar, rhythm));
  const airy = dense.filter((rhythm) => rhythm.silence >= silence);
  const spaced = airy.filter(
    (rhythm) => !wanted.has('space') || rhythm.silentOne || rhythm.longest >= LONG_SILENCE,
  );
  const calmest = [...played]
    .filter((rhythm) => spaceAllowed || !rhythm.silentOne)
    .sort((one, other) => one.onsets.length - other.onsets.length)
    .slice(0, 1);
  return firstKept([spaced, airy, dense, allowed, calmest]);
}
