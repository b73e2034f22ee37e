import { rememberedFor, type Ticks } from '../base';
import {
  type Chord,
  chordPartsIn,
  type DrawnSymbol,
  formatChordIn,
  type Interval,
  LONGEST_SYMBOL,
  type Naming,
  parseChord,
  shortened,
  transposeChord,
  typedSymbolIn,
} from '../theory';
import { ownSpans } from './own-spans';
import type { ChartBar, Harmony, HarmonySpan } from './types';

/** What is written for a harmony: the chord symbol as drawn, `N.C.`, or the text that was not understood. */
export function harmonyText(harmony: Harmony, naming: Naming = 'letters'): string {
  switch (harmony.kind) {
    case 'chord':
      return formatChordIn(naming, harmony.chord);
    case 'no chord':
      return 'N.C.';
    case 'unknown':
      return typedSymbolIn(naming, harmony.text);
  }
}

/** The same text as it is drawn and said, where an endless word that is no chord would leave no room for the notes. */
export const shownHarmony = (harmony: Harmony, naming: Naming = 'letters'): string =>
  harmony.kind === 'unknown' ? shortened(harmonyText(harmony, naming)) : harmonyText(harmony, naming);

/** The same text in the parts that are set apart when it is drawn; only a chord has more than its base. */
export const harmonyParts = (harmony: Harmony, naming: Naming = 'letters'): DrawnSymbol =>
  harmony.kind === 'chord'
    ? chordPartsIn(naming, harmony.chord)
    : { base: shownHarmony(harmony, naming), raised: '', bass: '' };

export const sameHarmony = (one: Harmony, other: Harmony): boolean =>
  one.kind === other.kind && harmonyText(one) === harmonyText(other);

/** The chords of a bar in their order; neither `N.C.` nor a text that was not understood is one. */
export const chordsIn = ({ spans }: ChartBar): readonly Chord[] =>
  spans.flatMap(({ harmony }) => (harmony.kind === 'chord' ? [harmony.chord] : []));

/** The harmony that sounds at a tick of the bar, counted from its beginning; null outside the bar. */
export const harmonyAt = (bar: ChartBar, tick: Ticks): Harmony | null =>
  bar.spans.find((span) => tick >= span.start && tick < span.start + span.duration)?.harmony ?? null;

/**
 * The identity of a bar's harmony: equal for bars with the same chords on the same beats, however they were
 * typed. Notes written for one such bar fit every other. A chord that the next bar pushes into its end is that bar's,
 * so that an edit there leaves this bar what it is.
 */
export const barSignature = rememberedFor((bar: ChartBar): string => signatureOf(ownSpans(bar)));

/** The identity of all that sounds in a bar, a pushed chord of the next one too. */
export const soundingSignature = ({ spans }: ChartBar): string => signatureOf(spans);

const signatureOf = (spans: readonly HarmonySpan[]): string =>
  spans
    .map(
      ({ harmony, duration }) =>
        `${harmony.kind === 'unknown' ? `?${briefly(harmony.text)}` : harmonyText(harmony)}@${duration}`,
    )
    .join(' ');

/**
 * A text that is no chord, short enough to be kept with every bar: a long one by its beginning and a number made of
 * the whole (FNV-1a, 32 bits), so that two long ones are told apart.
 */
function briefly(text: string): string {
  if (text.length <= LONGEST_SYMBOL) return text;
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1)
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  return `${text.slice(0, 20)}…${(hash >>> 0).toString(16)}`;
}

/** The spans of a signature; what was not understood may have blanks in its brackets. */
export const spansIn = (signature: string): readonly string[] => signature.split(/(?<=@\d{1,12}) /);

/** The chords of a signature, without their lengths, for a person to read. */
export const signatureText = (signature: string, naming: Naming): string =>
  spansIn(signature)
    .map((span) => {
      const text = span.replace(/^\?|@\d+$/g, '');
      const chord = parseChord(text);
      return chord.ok ? formatChordIn(naming, chord.value) : typedSymbolIn(naming, text);
    })
    .join(' ');

/** The signature that the same bar has after its chart is moved by an interval. */
export const transposeSignature = (signature: string, interval: Interval): string =>
  spansIn(signature)
    .map((span) => {
      const at = span.lastIndexOf('@');
      const chord = parseChord(span.slice(0, at));
      return at > 0 && chord.ok ? `${transposeChord(chord.value, interval).symbol}${span.slice(at)}` : span;
    })
    .join(' ');
