import { barTicks, beatAt, halfStepsAboveC, type MidiNumber, pitchClassOf, type SpelledPitch } from '../base';
import type { DrumSound, DrumWay } from '../feel';
import type { LineSheet } from '../lesson';
import type { Chord } from '../theory';
import { type StruckChord, struckChords } from './chords';
import { STROKES } from './drummer';
import { drumEvents } from './drums';
import { type PlannedBar, planBars } from './plan';

/** The parts of the rhythm section that can be written out for others to play. */
export const WRITTEN_PARTS = ['chops', 'organ right', 'organ left', 'drums'] as const;
export type WrittenPart = (typeof WRITTEN_PARTS)[number];

/** What one of several heads on a stem stands for. */
export type WrittenHead =
  | { readonly kind: 'pitch'; readonly pitch: SpelledPitch }
  | { readonly kind: 'drum'; readonly sound: DrumSound; readonly ghost: boolean };

/** What sounds together, in ticks from the beginning of its bar, straight. */
export interface WrittenStroke {
  readonly start: number;
  readonly duration: number;
  /** From low to high; never empty. */
  readonly heads: readonly WrittenHead[];
  /** The next bar goes on with the same heads. */
  readonly tiedOn: boolean;
}

/** A part of the rhythm section, bar by bar of a line's chart, as the playback plays each bar the first time. */
export interface PartSheet {
  readonly kind: 'part';
  readonly part: WrittenPart;
  /** The line whose chart, key and metre it goes by. */
  readonly line: LineSheet;
  /** One entry a written bar. */
  readonly bars: readonly (readonly WrittenStroke[])[];
}

/** The organ, of which one player reads both hands on two joined staves. */
export interface KeyboardSheet {
  readonly kind: 'keyboard';
  readonly line: LineSheet;
  readonly right: PartSheet;
  readonly left: PartSheet;
}

/**
 * Writes a part out. A short stroke is written until the next one or the end of its beat, whichever comes first, since a
 * chop's or a drum's sound ends by itself; a chord that its grid holds keeps its length. Swing is left to the reader.
 * @param way of the drums, where the feel offers several
 */
export function writtenPart(sheet: LineSheet, part: WrittenPart, way: DrumWay | null = null): PartSheet {
  const planned = planBars(sheet, { tempo: sheet.tempo, countIn: 0, passage: null }, 0);
  const strokes =
    part === 'drums' ? drumStrokes(planned, sheet, way) : chordStrokes(planned, sheet, HANDS[part]);
  const bars = sheet.bars.map((_, index) => {
    const first = planned.findIndex(({ bar }) => bar === index);
    const bar = planned[first];
    // Where the way leads back, the bar it leads to is not the one that stands after this one: nothing is tied to it.
    const after = planned[first + 1];
    return bar === undefined ? [] : strokesOf(bar, after?.bar === index + 1 ? after : undefined, strokes);
  });
  return { kind: 'part', part, line: sheet, bars };
}

/** Writes both hands of the organ out. A key that both press at once is the left hand's alone, since one thumb is enough. */
export function writtenOrgan(line: LineSheet): KeyboardSheet {
  const left = writtenPart(line, 'organ left');
  const right = writtenPart(line, 'organ right');
  const bars = right.bars.map((strokes, bar) =>
    strokes.map((stroke) => {
      const below = left.bars[bar]?.find(({ start }) => start === stroke.start)?.heads ?? [];
      const own = stroke.heads.filter((head) => !below.some((other) => sameHeads([head], [other])));
      return own.length === 0 ? stroke : { ...stroke, heads: own };
    }),
  );
  return { kind: 'keyboard', line, right: { ...right, bars }, left };
}

const HANDS = { chops: 'chops', 'organ right': 'right', 'organ left': 'left' } as const;

/** A stroke at its place in the performance; `end` is null where it ends by itself. */
interface Struck {
  readonly bar: PlannedBar;
  readonly start: number;
  readonly end: number | null;
  readonly heads: readonly WrittenHead[];
}

const chordStrokes = (
  planned: readonly PlannedBar[],
  { feel }: LineSheet,
  hand: (typeof HANDS)[keyof typeof HANDS],
): readonly Struck[] =>
  struckChords(planned, feel, hand)
    .filter(({ voicing }) => voicing.length > 0)
    .map(({ bar, start, end, held, voicing, chord }: StruckChord) => ({
      bar,
      start,
      end: held ? end : null,
      heads: [...voicing]
        .sort((one, other) => one - other)
        .map((midi) => ({ kind: 'pitch', pitch: spelledIn(chord, midi) })),
    }));

/** A tone of a voicing by the name that the chord has for it. */
function spelledIn({ tones }: Chord, midi: MidiNumber): SpelledPitch {
  const name = tones.map((tone) => tone.name).find((each) => pitchClassOf(each) === midi % 12);
  if (name === undefined) throw new RangeError(`The chord has no tone for the pitch ${midi}`);
  return { ...name, octave: (midi - halfStepsAboveC(name)) / 12 - 1 };
}

/** What sounds at the same moment shares a stem; the drums' rows are in no order. */
function drumStrokes(
  planned: readonly PlannedBar[],
  { chart, feel }: LineSheet,
  way: DrumWay | null,
): readonly Struck[] {
  const events = drumEvents(planned, chart, feel, 1, { seed: null, way });
  return planned.flatMap((bar) => {
    const own = events.filter(({ start }) => start >= bar.start && start < bar.start + bar.duration);
    const starts = [...new Set(own.map(({ start }) => start))].sort((one, other) => one - other);
    return starts.map((start): Struck => {
      const together = own.filter((event) => event.start === start);
      return {
        bar,
        start,
        end: null,
        heads: together.map(({ sound, velocity }) => ({
          kind: 'drum',
          sound,
          ghost: velocity <= STROKES.ghost,
        })),
      };
    });
  });
}

function strokesOf(
  bar: PlannedBar,
  next: PlannedBar | undefined,
  strokes: readonly Struck[],
): readonly WrittenStroke[] {
  const own = strokes.filter((stroke) => stroke.bar === bar);
  const after = next && strokes.find((stroke) => stroke.bar === next);
  const length = barTicks(bar.metre);
  return own.map(({ start, end, heads }, index): WrittenStroke => {
    const from = start - bar.start;
    const beat = beatAt(bar.metre, from);
    const until = Math.min(
      end === null ? beat.start + beat.length : end - bar.start,
      (own[index + 1]?.start ?? bar.start + length) - bar.start,
    );
    const tiedOn =
      end !== null &&
      until === length &&
      next !== undefined &&
      after?.start === next.start &&
      after.end !== null &&
      sameHeads(heads, after.heads);
    return { start: from, duration: until - from, heads, tiedOn };
  });
}

const sameHeads = (one: readonly WrittenHead[], other: readonly WrittenHead[]): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
