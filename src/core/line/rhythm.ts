import { beatsOf, TICKS_PER_QUARTER } from '../base';
import { type PhraseRole, type RhythmCell, readGrid, rhythmCellsOf } from '../feel';
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
  const lengths = beatsOf(bar.metre).map(({ length }) => Math.round((2 * length) / bar.beat));
  const beats = lengths.length;
  const all = lengths.map((steps) => 'x'.padEnd(steps, '=')).join('');
  const roles: readonly PhraseRole[] = ['statement', 'answer', 'turnaround'];
  const source = 'the plain pulse: common practice, no source';
  const grids = [all, `x=${'='.repeat(all.length - 2)}`];
  if (beats > 1) grids.push(`--${all.slice(2)}`, `${all.slice(0, -2)}--`);
  if (beats > 2) grids.push(`x===${all.slice(4)}`, `--x=${'='.repeat(all.length - 4)}`);
  return [...new Set(grids)].map((grid) => ({ id: grid, grid, roles, level: 0, highest: 5, source }));
}

function cellsOf(model: LineModel, bar: BarModel): readonly RhythmCell[] {
  return rhythmCellsOf(model.request.feel.id, bar.metre) ?? plainCells(bar);
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

const LONG_SILENCE = 0.5;

/** How many of the aims for its bar a rhythm misses: density, silence, and the silences that are wanted. */
function missedBy(bar: BarModel, rhythm: BarRhythm): number {
  const { density, silence, wanted } = bar.demands;
  const beats = bar.ticks / bar.beat;
  const sparse = density === 'sparse' && rhythm.onsets.length >= beats;
  const busy = density === 'busy' && rhythm.onsets.length <= beats;
  const loud = rhythm.silence < silence;
  const full =
    (wanted.has('beat one silent') && !rhythm.silentOne) ||
    (wanted.has('long silences') && rhythm.longest < LONG_SILENCE);
  return [sparse || busy, loud, full].filter(Boolean).length;
}

/** The rhythms that miss the fewest aims. */
function mostObedient(bar: BarModel, rhythms: readonly BarRhythm[]): readonly BarRhythm[] {
  const missed = rhythms.map((rhythm) => missedBy(bar, rhythm));
  const least = Math.min(...missed);
  return rhythms.filter((_, index) => missed[index] === least);
}

const setSigns = (grid: string, from: number, to: number, sign: string): string =>
  grid.slice(0, from) + sign.repeat(to - from) + grid.slice(to);

/** A cell with another grid. */
const regridded = (cell: RhythmCell, grid: string): RhythmCell => ({ ...cell, id: grid, grid });

/** Cells cut off after each of their notes, the last one held for a beat at most: for bars that want more silence. */
const thinned = (cells: readonly RhythmCell[], stepsABeat: number): readonly RhythmCell[] =>
  cells.flatMap((cell) => {
    const starts = [...cell.grid].flatMap((sign, step) => (sign === 'x' || sign === 'X' ? [step] : []));
    return starts.map((start) => {
      const next = starts.find((other) => other > start) ?? cell.grid.length;
      const end = Math.min(next, start + stepsABeat);
      return regridded(cell, setSigns(cell.grid, end, cell.grid.length, '-'));
    });
  });

/** Cells with each beat that one note fills struck twice: for bars that want more notes. */
const doubled = (cells: readonly RhythmCell[], stepsABeat: number): readonly RhythmCell[] =>
  cells.map((cell) => {
    let { grid } = cell;
    for (let step = 0; step < grid.length; step += stepsABeat) {
      const half = step + stepsABeat / 2;
      if (Number.isInteger(half) && grid[step] !== '-' && grid[half] === '=')
        grid = setSigns(grid, half, half + 1, 'x');
    }
    return regridded(cell, grid);
  });

/** Whole bars of eighths, and quarters that go over into eighths for the last beats. */
function runGrids(bar: BarModel): readonly string[] {
  const eighths = Math.round(bar.ticks / EIGHTH);
  const whole = 'x'.repeat(eighths);
  const half = 'x='.repeat(Math.floor(eighths / 4)).padEnd(eighths, 'x');
  return bar.beat === 2 * EIGHTH && eighths > 2 ? [whole, half] : [whole];
}

/** Rhythms that run, for walks of up to eight notes; as the level, the tempo and the aims allow. */
export function runsFor(model: LineModel, bar: BarModel): readonly BarRhythm[] {
  if (!bar.demands.freedoms.has('notes outside the chord')) return [];
  const cells = runGrids(bar).map(
    (grid): RhythmCell => ({
      id: `run ${grid}`,
      grid,
      roles: [],
      level: 1,
      highest: 5,
      source: 'running eighths: common practice, no source',
    }),
  );
  const known = new Set(rhythmsFor(model, bar).map(({ cell }) => cell.grid));
  return allowedOf(model, bar, playAll(bar, cells)).filter(
    (rhythm) => !known.has(rhythm.cell.grid) && missedBy(bar, rhythm) === 0,
  );
}

const EIGHTH = TICKS_PER_QUARTER / 2;

const playAll = (bar: BarModel, cells: readonly RhythmCell[]): readonly BarRhythm[] =>
  cells.map((cell) => playCell(cell, bar)).filter((rhythm) => rhythm.onsets.length > 0);

/** The rhythms that the level, its speed and the techniques allow. */
function allowedOf(
  { request, limits }: LineModel,
  bar: BarModel,
  rhythms: readonly BarRhythm[],
): readonly BarRhythm[] {
  const { freedoms } = bar.demands;
  return rhythms.filter(
    (rhythm) =>
      rhythmLevel(rhythm.onsets, bar.metre) <= request.level &&
      notesPerSecond(rhythm.onsets.length, bar.metre, request.tempo) <= limits.notesPerSecond &&
      (freedoms.has('silent beat one') || !rhythm.silentOne) &&
      (freedoms.has('long silence') || rhythm.longest < LONG_SILENCE),
  );
}

const different = (cells: readonly RhythmCell[]): readonly RhythmCell[] => [
  ...new Map(cells.map((cell) => [cell.id, cell])).values(),
];

/**
 * The rhythms of the feel that a bar may have at the request's level and tempo, fitted to its chords; without
 * `space` none with a silent beat one or half a bar of silence. Where the bar has aims that none of them keeps
 * with a note on one, the feel's rhythms are thinned out or struck twice. Falls back on the calmest rhythm there is.
 */
export function rhythmsFor(model: LineModel, bar: BarModel): readonly BarRhythm[] {
  const { freedoms } = bar.demands;
  const cells = cellsOf(model, bar);
  const played = playAll(bar, cells);
  const allowed = allowedOf(model, bar, played);
  const obedient = mostObedient(bar, allowed);
  const { wanted } = bar.demands;
  const usable = obedient.some(
    (rhythm) => missedBy(bar, rhythm) === 0 && (!rhythm.silentOne || wanted.has('beat one silent')),
  );
  if (usable) return obedient;
  const stepsABeat = ((cells[0]?.grid.length ?? 0) * bar.beat) / bar.ticks;
  const bent = Number.isInteger(stepsABeat)
    ? allowedOf(
        model,
        bar,
        playAll(bar, different([...cells, ...thinned(cells, stepsABeat), ...doubled(cells, stepsABeat)])),
      )
    : allowed;
  if (bent.length > 0) return mostObedient(bar, bent);
  return [...played]
    .filter((rhythm) => freedoms.has('silent beat one') || !rhythm.silentOne)
    .sort((one, other) => one.onsets.length - other.onsets.length)
    .slice(0, 1);
}
