import { type Bpm, counted, type Metre, metreName } from '../../base';
import { FEELS, type FeelId, feelsIn } from '../../feel';
import { describeKey, type Key } from '../../theory';
import type { ReadableChart } from './chart-of';
import type { FoundScore } from './found';
import { type OctaveChoice, octaveChoices, rangeIn } from './octaves';

/** What a file holds, and what can be asked of it. */
export interface FileFacts {
  /** As the lesson is called. */
  readonly title: string;
  /** Whole bars. */
  readonly bars: number;
  readonly metre: Metre;
  readonly key: Key | null;
  /** Of the metre's beats; null where the file has none. */
  readonly tempo: Bpm | null;
  /** Chord symbols, or chords that were told from the notes. */
  readonly chords: number;
  readonly notes: number;
  /** Of the notes as they sound in the file; null without notes. */
  readonly range: ReturnType<typeof rangeIn>;
  readonly octaves: readonly OctaveChoice[];
  /** By how many octaves the notes went down. */
  readonly lowered: number;
  /** Feels that can be chosen. */
  readonly feels: readonly FeelId[];
  /** The one that was asked for, or that our own file names; null while the teacher has to say it. */
  readonly feel: FeelId | null;
  /** Our own export: it comes back as it went out. */
  readonly own: boolean;
}

/** The key in which the file begins; null without one. */
export const keyOf = ({ bars }: FoundScore): Key | null => bars.find(({ key }) => key !== null)?.key ?? null;

/** The feels that are played in a metre; all of them where none is. */
function feelsFor(metre: Metre): readonly FeelId[] {
  const played = feelsIn(metre);
  return (played.length === 0 ? FEELS : played).map(({ id }) => id);
}

/** What a file holds, before and after its notes went to another octave. */
export function factsOf(
  score: FoundScore,
  octaves: number,
  { chart, metre }: ReadableChart,
): Pick<
  FileFacts,
  'bars' | 'metre' | 'key' | 'chords' | 'notes' | 'range' | 'octaves' | 'lowered' | 'feels' | 'own'
> {
  const symbols = score.bars.flatMap((bar) => bar.chords.filter(({ chord }) => chord !== null));
  return {
    bars: chart.bars.filter(({ pickup }) => !pickup).length,
    metre,
    key: keyOf(score),
    chords: symbols.length,
    notes: score.bars.reduce((sum, bar) => sum + bar.notes.length, 0),
    range: rangeIn(score),
    octaves: octaveChoices(score),
    lowered: octaves,
    feels: feelsFor(metre),
    own: score.own && score.feel !== null,
  };
}

/** `16 bars, 60 notes, 4/4, F major`. */
export const readText = ({ bars, notes, chords, metre, key }: FileFacts, asLine: boolean): string =>
  [
    counted(bars, 'bar'),
    asLine ? counted(notes, 'note') : counted(chords, 'chord'),
    metreName(metre),
    ...(key === null ? [] : [describeKey(key)]),
  ].join(', ');
