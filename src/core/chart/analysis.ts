import { rememberedAmong, rememberedFor } from '../base';
import {
  findKey,
  type Key,
  type KeyFindingOptions,
  type KeyGuess,
  sameKey,
  type WeightedChord,
  weightedText,
} from '../theory';
import type { Chart, ChartBar } from './types';

/** The chords of some bars in order, each as long as it sounds in ticks; repeats are not unfolded. */
export const weightedChords = (bars: readonly ChartBar[]): readonly WeightedChord[] =>
  bars.flatMap((bar) =>
    bar.spans.flatMap((span): WeightedChord[] =>
      span.harmony.kind === 'chord'
        ? [
            {
              chord: span.harmony.chord,
              weight: span.duration,
              ...(bar.pickup ? { upbeat: true } : {}),
            },
          ]
        : [],
    ),
  );

/** The key of a chart as its chords tell it. */
export interface ChartKeys {
  /** Guesses for the whole chart, the best first; empty for a chart without chords. */
  readonly guesses: readonly KeyGuess[];
  /** The key of each section, in order; null without chords. */
  readonly sections: readonly (Key | null)[];
}

/** A section this much better off in a key of its own is taken to be in it (points of {@link findKey}). */
const CLEARLY_BETTER = 0.25;
/** Fewer bars than this do not establish a key. */
const LEAST_BARS = 4;

interface ChartChords {
  readonly all: readonly WeightedChord[];
  readonly sections: readonly (readonly WeightedChord[])[];
}

/** The chords of a chart and of its sections; the same lists again for the same chart. */
const chordsOf = rememberedFor(
  (chart: Chart): ChartChords => ({
    all: weightedChords(chart.bars),
    sections: chart.sections.map(({ start, length }) =>
      weightedChords(chart.bars.slice(start, start + length)),
    ),
  }),
);

const MOST_REMEMBERED = 600;
const bySymbols = new Map<string, readonly KeyGuess[]>();

/** {@link findKey} for a section, which is asked about again at every keystroke in another one. */
const guessesOf = rememberedFor(guessesBySymbols);

/** The same for chords that were read anew. */
function guessesBySymbols(chords: readonly WeightedChord[]): readonly KeyGuess[] {
  return rememberedAmong(bySymbols, MOST_REMEMBERED, weightedText(chords), () => findKey(chords));
}

/**
 * Whether a section is in a key of its own rather than in the chart's: clearly where it comes round again, and on its way
 * through, too. A bridge that only ends on a dominant of its first chord goes on elsewhere.
 */
function isInItsOwn(chords: readonly WeightedChord[], own: KeyGuess, whole: KeyGuess): boolean {
  if (own.score - whole.score < CLEARLY_BETTER) return false;
  const through = findKey(chords, { loops: false });
  const scoreOf = ({ key }: KeyGuess) => through.find((guess) => sameKey(guess.key, key))?.score ?? 0;
  return scoreOf(own) > scoreOf(whole);
}

/**
 * Finds the key of a chart and those of its sections. A key that the chart names with a directive stands; a
 * section without one has the chart's key (`home` where the teacher chose it) unless it is four bars or longer and
 * clearly in another.
 */
export function findChartKeys(
  chart: Chart,
  options: KeyFindingOptions & { readonly home?: Key } = {},
): ChartKeys {
  const chordsNow = chordsOf(chart);
  const guesses = findKey(chordsNow.all, options);
  const whole = options.home ?? guesses[0]?.key ?? null;
  const sections = chart.sections.map((section, index) => {
    const named = chart.bars[section.start]?.key;
    // A key named to come back to the chosen one says nothing of this section's own chords.
    if (named && !(options.home && sameKey(named, options.home))) return named;
    if (!whole || section.length < LEAST_BARS) return whole;
    const chords = chordsNow.sections[index] ?? [];
    const [best, ...others] = guessesOf(chords);
    const asWhole = others.find((guess) => sameKey(guess.key, whole));
    return best && asWhole && isInItsOwn(chords, best, asWhole) ? best.key : whole;
  });
  return { guesses, sections };
}
