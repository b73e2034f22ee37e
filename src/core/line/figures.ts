import type { Stretch } from './harmony';
import { leadingFigures } from './leads';
import type { BarModel, LineModel } from './model';
import type { BarRhythm } from './rhythm';
import { type Figure, OCTAVE_TOP, shapeFigures } from './shapes';
import { type Tone, toneOf } from './tones';

/** The figures that the tables know for the chords of a line, each found once. */
export interface FigureShelf {
  /** Every way of choosing pitches for a bar, unjudged, for so many notes by stretch. */
  ofBar(bar: BarModel, counts: readonly number[]): readonly Figure[];
}

export function openShelf(model: LineModel): FigureShelf {
  const shapes = new Map<string, readonly Figure[]>();
  const shapesOf = (stretch: Stretch, count: number): readonly Figure[] => {
    const { tonic, mode } = stretch.key;
    const key = `${stretch.demands.key} ${stretch.label} ${tonic.letter}${tonic.alteration}${mode} ${count}`;
    const known = shapes.get(key) ?? shapeFigures(model, stretch, count);
    shapes.set(key, known);
    return known;
  };
  const figuresFor = (stretch: Stretch, count: number, next: Stretch | null): readonly Figure[] =>
    different([
      ...shapesOf(stretch, count),
      ...leadingFigures(model, stretch, count, next, (fewer) => shapesOf(stretch, fewer)),
    ]);
  return {
    ofBar: (bar, counts) => {
      const following = nextStretches(model, bar)[0] ?? null;
      let figures: readonly Figure[] | null = null;
      for (const stretch of bar.stretches) {
        const count = counts[stretch.index] ?? 0;
        if (!stretch.chord || count === 0) continue;
        const next = bar.stretches[stretch.index + 1] ?? following;
        const found = figuresFor(stretch, count, next?.chord ? next : null);
        const own = bar.stretches.length > 1 ? thinOut(found, SPLIT_FIGURES) : found;
        figures = figures === null ? own : joinFigures(figures, own);
      }
      return figures ?? [];
    },
  };
}

function different(figures: readonly Figure[]): readonly Figure[] {
  const seen = new Set<string>();
  return figures.filter(({ pitches }) => {
    const key = pitches.map((pitch) => pitch.midi).join(' ');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Most figures a stretch of a split bar contributes, so that bars of four chords stay affordable. */
const SPLIT_FIGURES = 14;

function joinFigures(before: readonly Figure[], next: readonly Figure[]): readonly Figure[] {
  return before.flatMap((one) =>
    next
      .filter(
        (other) => Math.abs((other.pitches[0]?.midi ?? 0) - (one.pitches.at(-1)?.midi ?? 0)) <= OCTAVE_TOP,
      )
      .map((other) => ({
        pitches: [...one.pitches, ...other.pitches],
        shape: `${one.shape} · ${other.shape}`,
        ...(other.anticipates ? { anticipates: true } : {}),
      })),
  );
}

/** What may sound next after a bar: the first stretch of each bar that can follow. */
export function nextStretches(model: LineModel, bar: BarModel): readonly Stretch[] {
  const found = new Map<string, Stretch>();
  for (const index of bar.after) {
    const first = model.bars[index]?.stretches[0];
    if (first?.chord) found.set(first.label, first);
  }
  return [...found.values()];
}

/** How many notes a rhythm gives each stretch of a bar. */
export const countsByStretch = (bar: BarModel, rhythm: BarRhythm): readonly number[] =>
  bar.stretches.map(
    (stretch) =>
      rhythm.onsets.filter((onset) => onset.start >= stretch.start && onset.start < stretch.end).length,
  );

/** A figure in a rhythm; an anticipation that lasts to the bar line is tied over it. */
export function tonesOf(bar: BarModel, rhythm: BarRhythm, figure: Figure): readonly Tone[] {
  const tones: Tone[] = [];
  const last = rhythm.onsets.length - 1;
  rhythm.onsets.forEach(({ start, duration }, index) => {
    const pitch = figure.pitches[index];
    if (!pitch) return;
    const tone = toneOf(bar, start, duration, pitch.midi, pitch.name);
    const tied = figure.anticipates && index === last && start + duration === bar.ticks;
    tones.push(tied ? { ...tone, tiedOn: true } : tone);
  });
  return tones;
}

/** Whether a rhythm ends off the beat within the last beat, where the next root may come early. */
export function endsOffBeat(bar: BarModel, onsets: BarRhythm['onsets']): boolean {
  const last = onsets.at(-1);
  return last !== undefined && last.start > bar.ticks - bar.beat && last.start % bar.beat !== 0;
}

/** Every k-th of a list, so that the kinds at its beginning and its end both stay. */
function thinOut<Item>(items: readonly Item[], most: number): readonly Item[] {
  if (items.length <= most) return items;
  return Array.from({ length: most }, (_, index) => items[Math.floor((index * items.length) / most)]).filter(
    (item): item is Item => item !== undefined,
  );
}
