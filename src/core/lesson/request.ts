import { fret, rememberedFor } from '../base';
import {
  type Chart,
  type ChartProblem,
  findChartKeys,
  type ParsedChart,
  parseChart,
  weightedChords,
} from '../chart';
import type { Instrument } from '../fretboard';
import {
  C_MAJOR,
  findKey,
  type Key,
  type KeyGuess,
  type Naming,
  sameKey,
  type WeightedNote,
} from '../theory';
import { metreProblems } from './metre-check';
import type { InstrumentSettings, LinePiece } from './types';

export const instrumentOf = (settings: InstrumentSettings): Instrument => ({
  openStrings: settings.openStrings,
  frets: fret(settings.frets),
  scaleLength: settings.scaleLength,
  ...(settings.leftHanded === undefined ? {} : { leftHanded: settings.leftHanded }),
});

/** The chart of a piece as it is read, with its keys. */
export interface PieceChart {
  /** Bars of a section that is in a key of its own carry that key. */
  readonly chart: Chart;
  readonly problems: readonly ChartProblem[];
  /** The key at the beginning: the one the chart names there, else the teacher's, else the one that is found. */
  readonly key: Key;
  readonly keyGuesses: readonly KeyGuess[];
  /** The key that the chords of each section tell, where the teacher chose one for the piece too. */
  readonly sectionKeys: readonly (Key | null)[];
}

/** The notes the teacher put there; a line that the program wrote would only repeat the key it was written in. */
const ownNotes = (piece: LinePiece): readonly WeightedNote[] =>
  piece.bars
    .filter((bar) => bar.origin === 'hand')
    .flatMap((bar) => bar.notes.map((note) => ({ name: note.pitch, weight: note.duration })));

/** As many charts as a lesson that is worked on may have pieces, and their last states. */
const MOST_READ = 24;
/**
 * Bars of the charts that are remembered, if there are more of them than one as it was and as it is: with a chart
 * stands all that was derived from it, some kilobytes a bar, and whoever types makes another chart with each key.
 */
const MOST_BARS_READ = 1500;
const read = new Map<string, ParsedChart>();

/** Forgets the charts that were asked for longest ago. */
function forgetOldest(): void {
  let bars = 0;
  for (const { chart } of read.values()) bars += chart.bars.length;
  for (const [oldest, { chart }] of read) {
    if (read.size <= MOST_READ && (bars <= MOST_BARS_READ || read.size <= 2)) return;
    read.delete(oldest);
    bars -= chart.bars.length;
  }
}

/** A piece's chart text as parsed; the same chart again while notes are written over it. */
export function parsedChart({ chartText, metre, key }: LinePiece): ParsedChart {
  const id = JSON.stringify([metre, key, chartText]);
  const parsed = read.get(id) ?? parseChart(chartText, metre, key);
  read.delete(id);
  read.set(id, parsed);
  forgetOldest();
  return parsed;
}

const keyed = new WeakMap<Chart, Chart>();

/** A parsed chart whose bars carry these keys; the same one again as long as they are the same. */
function withKeys(chart: Chart, bars: Chart['bars']): Chart {
  const before = keyed.get(chart);
  const same = before?.bars.every(({ key }, index) => {
    const now = bars[index]?.key;
    return key === now || (key != null && now != null && sameKey(key, now));
  });
  if (before !== undefined && same === true) return before;
  const now = { ...chart, bars };
  keyed.set(chart, now);
  return now;
}

/**
 * Reads the chart of a piece. The key of a section is the one its chart names; where neither the chart nor the
 * teacher names a key, it is found from the chords of the section.
 */
export const readPiece = rememberedFor((piece: LinePiece): PieceChart => {
  const { chart, problems } = parsedChart(piece);
  const { guesses, sections } = findChartKeys(chart, {
    notes: ownNotes(piece),
    ...(piece.key === null ? {} : { home: piece.key }),
  });
  const key = chart.bars[0]?.key ?? piece.key ?? sections[0] ?? guesses[0]?.key ?? C_MAJOR;
  const bars = chart.bars.map((bar) => {
    const own = bar.key ?? (piece.key === null ? sections[bar.section] : null) ?? key;
    return sameKey(own, bar.key ?? key) ? bar : { ...bar, key: own };
  });
  const unplayed = metreProblems(piece, chart);
  return {
    chart: withKeys(chart, bars),
    problems: unplayed.length === 0 ? problems : [...problems, ...unplayed],
    key,
    keyGuesses: guesses,
    sectionKeys: sections,
  };
});

/** The guesses of {@link readPiece} with their reasons in other note names. */
export const keyGuessesIn = (noteNames: Naming, piece: LinePiece, chart: Chart): readonly KeyGuess[] =>
  findKey(weightedChords(chart.bars), { notes: ownNotes(piece), noteNames });
