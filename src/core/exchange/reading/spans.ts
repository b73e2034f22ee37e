import { barTicks, beatTicks, isCompound, isUneven, type Metre, TICKS_PER_QUARTER, ticks } from '../../base';
import type { Harmony, HarmonySpan } from '../../chart';
import type { Chord } from '../../theory';

/** A chord of a bar, in whole or broken ticks of the lesson. */
export interface PlacedChord {
  readonly at: number;
  readonly chord: Chord | null;
}

const EIGHTH = TICKS_PER_QUARTER / 2;

export interface PlacedSpans {
  readonly spans: readonly HarmonySpan[];
  /** Some chord stood off the places that a chart has for chords. */
  readonly moved: boolean;
  /** Symbols for which the bar had no place left. */
  readonly lost: readonly string[];
}

const harmonyOf = (chord: Chord | null): Harmony =>
  chord === null ? { kind: 'no chord' } : { kind: 'chord', chord };

const same = (one: Harmony, other: Harmony): boolean =>
  one.kind === other.kind &&
  (one.kind !== 'chord' || other.kind !== 'chord' || one.chord.symbol === other.chord.symbol);

/**
 * Lengths of the places that chords can have in a bar: its beats, where a chart can divide those, their parts, and
 * eighths, where pushed chords stand.
 */
const places = (metre: Metre): readonly number[] => {
  const beat = beatTicks(metre);
  if (isCompound(metre)) return [beat, beat / 3];
  if (isUneven(metre)) return [EIGHTH];
  return metre.unit === 2 ? [beat, beat / 2, EIGHTH] : [beat, EIGHTH];
};

/** The nearest place; at the end of the bar a chord stays in it. */
function onPlace(at: number, place: number, length: number): number {
  const last = length - place;
  return Math.max(0, Math.min(last, Math.round(at / place) * place));
}

/**
 * The harmonies of a bar, which fill it without gaps, at the places that a chart has for them.
 * @param before what sounds on where the bar begins without a chord
 */
export function spansOf(chords: readonly PlacedChord[], metre: Metre, before: Harmony): PlacedSpans {
  const length = barTicks(metre);
  const fits = (place: number): boolean =>
    chords.every(({ at }) => Math.abs(at - onPlace(at, place, length)) < 1);
  const [beat = length, ...finer] = places(metre);
  const place = [beat, ...finer].find(fits) ?? finer.at(-1) ?? beat;
  const starts: { at: number; harmony: Harmony }[] = [];
  const lost: string[] = [];
  let moved = false;
  for (const { at, chord } of [...chords].sort((one, other) => one.at - other.at)) {
    const target = onPlace(at, Math.min(place, length), length);
    moved ||= Math.abs(at - target) >= 1;
    if (starts.at(-1)?.at === target) lost.push(chord?.symbol ?? 'N.C.');
    else starts.push({ at: target, harmony: harmonyOf(chord) });
  }
  if (starts[0]?.at !== 0) starts.unshift({ at: 0, harmony: before });
  const joined = starts.filter(({ harmony }, index) => {
    const previous = starts[index - 1]?.harmony;
    return previous === undefined || !same(previous, harmony);
  });
  const spans = joined.map(
    ({ at, harmony }, index): HarmonySpan => ({
      start: ticks(at),
      duration: ticks((joined[index + 1]?.at ?? length) - at),
      harmony,
    }),
  );
  return { spans, moved, lost };
}
