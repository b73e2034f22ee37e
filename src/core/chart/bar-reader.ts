import {
  barTicks,
  beatsInBar,
  beatsOf,
  counted,
  isCompound,
  isUneven,
  type Metre,
  metreName,
  sameMetre,
  ticks,
} from '../base';
import {
  type Key,
  LONGEST_SYMBOL,
  looksLikeNumeral,
  parseChord,
  parseNumeral,
  suggestChord,
} from '../theory';
import { BRACKETS_HOLD } from './directives';
import { sameHarmony } from './harmony';
import type { ProblemList } from './problems';
import { PUSH, PUSH_SIGN } from './pushes';
import type { Word } from './scanner';
import type { ChartBar, ChartPlace, Harmony, HarmonySpan } from './types';
import { isNoChord } from './word-signs';

/** The bar before the one that is read. */
type BarBefore = Pick<ChartBar, 'spans' | 'metre'>;

/** A harmony and the beats written for it: itself and the slashes after it. */
interface Item {
  readonly harmony: Harmony;
  /** It comes an eighth before its beat. */
  readonly pushed: boolean;
  beats: number;
}

const NO_CHORD: Harmony = { kind: 'no chord' };

/** From the first of some tokens to the end of the last, all on one line. */
export function placeOf(words: readonly { readonly place: ChartPlace }[]): ChartPlace | null {
  const first = words[0]?.place;
  const last = words[words.length - 1]?.place;
  return first && last
    ? { line: first.line, column: first.column, length: last.column + last.length - first.column }
    : null;
}

/** `%` alone in its bar. */
const isSameAgain = (words: readonly Word[]): boolean => words.length === 1 && words[0]?.text === '%';

/**
 * Reads the harmonies of a bar and shares its beats among them. `previous` is the harmony before the bar, which
 * leading slashes and `%` go on with. A problem never loses the bar: what is understood stands.
 */
export function readBar(
  words: readonly Word[],
  metre: Metre,
  key: Key | null,
  previous: BarBefore | null,
  problems: ProblemList,
): ReadBar {
  if (isSameAgain(words)) return { spans: sameAgain(words, metre, previous, problems), pushed: false };
  const { items, slashes } = itemsOf(words, key, previous, problems);
  if (items.length === 0) return { spans: wholeBar(NO_CHORD, metre), pushed: false };
  const shares = sharesOf(items, slashes, metre, words, problems);
  return { spans: spansOf(items, shares, metre), pushed: items[0]?.pushed === true };
}

interface ReadBar {
  readonly spans: readonly HarmonySpan[];
  /** The first chord comes an eighth before the bar. */
  readonly pushed: boolean;
}

const wholeBar = (harmony: Harmony, metre: Metre): readonly HarmonySpan[] => [
  { start: ticks(0), duration: barTicks(metre), harmony },
];

function sameAgain(
  words: readonly Word[],
  metre: Metre,
  previous: BarBefore | null,
  problems: ProblemList,
): readonly HarmonySpan[] {
  const place = placeOf(words);
  if (!previous) {
    if (place)
      problems.push({ ...place, message: '% means “the same bar again”, but there is no bar before it.' });
    return wholeBar(NO_CHORD, metre);
  }
  if (sameMetre(previous.metre, metre)) return previous.spans;
  return defaultSpans(
    previous.spans.map((span) => span.harmony),
    metre,
  );
}

/** Tells of the sign of a push that no chord follows. */
function pushesNothing(word: Word, chord: string, problems: ProblemList): boolean {
  if (!word.text.startsWith(PUSH_SIGN) || (chord !== '' && chord !== '%')) return false;
  problems.push({
    ...word.place,
    message: `${PUSH_SIGN} pushes a chord an eighth before its beat, and stands right before one: ${PUSH_SIGN}G7.`,
  });
  return true;
}

function itemsOf(
  words: readonly Word[],
  key: Key | null,
  previous: BarBefore | null,
  problems: ProblemList,
): { readonly items: Item[]; readonly slashes: boolean } {
  const items: Item[] = [];
  let slashes = false;
  const before = previous?.spans[previous.spans.length - 1]?.harmony;
  for (const word of words) {
    const { push, chord, beats } = splitSlashes(word.text);
    const pushed = push !== '';
    if (beats > 0) slashes = true;
    if (pushesNothing(word, chord, problems) && chord === '' && beats === 0) continue;
    if (chord === '%') {
      problems.push({
        ...word.place,
        message: '% repeats a whole bar, so it stands alone between two bar lines.',
      });
      items.push({
        harmony: items[items.length - 1]?.harmony ?? before ?? NO_CHORD,
        pushed: false,
        beats: 1 + beats,
      });
      continue;
    }
    if (chord !== '') {
      items.push({
        harmony: harmonyOf(
          chord,
          { ...word.place, column: word.place.column + push.length, length: chord.length },
          key,
          problems,
        ),
        pushed,
        beats: 1 + beats,
      });
      continue;
    }
    const last = items[items.length - 1];
    if (last) {
      last.beats += beats;
      continue;
    }
    if (!before) {
      problems.push({
        ...word.place,
        message: 'A slash means “the same chord, next beat”, but no chord stands before it.',
      });
    }
    items.push({ harmony: before ?? NO_CHORD, pushed: false, beats });
  }
  return { items, slashes };
}

/** A word of a bar: the sign of a push or '', the chord, and the slashes behind it. */
interface BarWord {
  readonly push: string;
  readonly chord: string;
  readonly beats: number;
}

/** Slashes at the end of a word are beats: `C//` is C and two more; `<` before it pushes the chord. */
export function splitSlashes(text: string): BarWord {
  const push = text.startsWith(PUSH_SIGN) ? PUSH_SIGN : '';
  let end = text.length;
  while (end > push.length && text[end - 1] === '/') end -= 1;
  return { push, chord: text.slice(push.length, end), beats: text.length - end };
}

function harmonyOf(text: string, place: ChartPlace, key: Key | null, problems: ProblemList): Harmony {
  if (isNoChord(text)) return NO_CHORD;
  const chord = parseChord(text);
  if (chord.ok) return { kind: 'chord', chord: chord.value };
  if (!chord.ok && text.length > LONGEST_SYMBOL) {
    problems.push({ ...place, message: chord.problem.message });
    return { kind: 'unknown', text };
  }
  const numeral = key && looksLikeNumeral(text) ? parseNumeral(text, key) : null;
  if (numeral?.ok) return { kind: 'chord', chord: numeral.value };
  const suggestion = suggestChord(text);
  if (key === null && isNumeral(text) && suggestion === null) {
    problems.once('numerals', {
      ...place,
      message: `“${text}” and other numerals count from a key: choose one, or write it before the bar, for example (key: C).`,
    });
    return { kind: 'unknown', text };
  }
  problems.push({
    ...place,
    message: numeral?.problem.message ?? unreadable(text, chord.problem.message),
    ...(suggestion === null ? {} : { suggestion }),
  });
  return { kind: 'unknown', text };
}

const ANY_KEY: Key = { tonic: { letter: 'C', alteration: 0 }, mode: 'major' };

/** Whether a text is a chord once a key is known. */
export const isNumeral = (text: string): boolean =>
  looksLikeNumeral(text) && !parseChord(text).ok && parseNumeral(text, ANY_KEY).ok;

function unreadable(text: string, message: string): string {
  if (text.lastIndexOf('(') > text.lastIndexOf(')'))
    return `“${text}” opens a bracket and does not close it. ${text.startsWith('(') ? BRACKETS_HOLD : 'Write ) after it.'}`;
  if (text.startsWith('[') && !text.includes(']'))
    return `“${text}” opens a bracket and does not close it. The name of a section stands alone on its line: [A] or A:`;
  if (text.endsWith(':')) return `“${text}” looks like a section name: write it on a line of its own.`;
  return message;
}

/** Shares that a bar has for chords that outnumber its beats: a beat of 6/8, of 7/8 or of 2/2 can be divided. */
export const finestShares = (metre: Metre): number =>
  isUneven(metre) ? metre.count : beatsInBar(metre) * (isCompound(metre) ? 3 : metre.unit === 2 ? 2 : 1);

/** Where each of a bar's shares begins: at its beats, which may differ in length, or evenly. */
export const shareStarts = (bar: number, metre: Metre): readonly number[] =>
  bar === beatsInBar(metre)
    ? beatsOf(metre).map(({ start }) => start)
    : Array.from({ length: bar }, (_, share) => Math.floor((share * barTicks(metre)) / bar));

/** Slashes may count the eighths of a bar instead of its beats. */
const eighthsIn = (metre: Metre): number => barTicks(metre) / PUSH;

/** The share of each harmony, and how many shares make the bar. */
interface Shares {
  readonly each: readonly number[];
  readonly bar: number;
}

/** Even shares in whole beats, the first taking what is left over; null for more chords than a bar can hold. */
function evenShares(count: number, metre: Metre): Shares | null {
  const bar = [beatsInBar(metre), finestShares(metre)].find((shares) => count <= shares);
  if (bar === undefined) return null;
  const least = Math.floor(bar / count);
  const first = bar - least * (count - 1);
  return { each: Array.from({ length: count }, (_, index) => (index === 0 ? first : least)), bar };
}

/** A beat for each of too many chords; those beyond the bar's end fall away. */
const crowdedShares = (count: number, metre: Metre): Shares => ({
  each: Array.from({ length: count }, () => 1),
  bar: beatsInBar(metre),
});

function sharesOf(
  items: readonly Item[],
  slashes: boolean,
  metre: Metre,
  words: readonly Word[],
  problems: ProblemList,
): Shares {
  const beats = beatsInBar(metre);
  const name = metreName(metre);
  const report = (message: string) => {
    const place = placeOf(words);
    if (place) problems.push({ ...place, message });
  };
  if (slashes) {
    const each = items.map((item) => item.beats);
    const total = each.reduce((sum, share) => sum + share, 0);
    if (total === beats || total === finestShares(metre) || total === eighthsIn(metre)) {
      return { each, bar: total };
    }
    report(`Chords and slashes make ${counted(total, 'beat')} here, but a bar of ${name} has ${beats}.`);
    return { each, bar: beats };
  }
  const even = evenShares(items.length, metre);
  if (even) return even;
  report(
    `${items.length} chords are too many for a bar of ${name}, which has ${counted(beats, 'beat')}; the last are left out.`,
  );
  return crowdedShares(items.length, metre);
}

/** Lays the shares on the bar; the last harmony fills it, what does not fit falls away, neighbours alike join. */
function spansOf(
  items: readonly Pick<Item, 'harmony' | 'pushed'>[],
  shares: Shares,
  metre: Metre,
): readonly HarmonySpan[] {
  const length = barTicks(metre);
  const places = shareStarts(shares.bar, metre);
  const starts: { readonly start: number; readonly harmony: Harmony }[] = [];
  let share = 0;
  items.forEach(({ harmony, pushed }, index) => {
    const beat = places[share] ?? length;
    const before = starts.at(-1)?.start ?? 0;
    const start = pushed && beat - PUSH > before ? beat - PUSH : beat;
    share += shares.each[index] ?? 0;
    const last = starts[starts.length - 1];
    const begins = start < length && !(last && (last.start === start || sameHarmony(last.harmony, harmony)));
    if (begins) starts.push({ start, harmony });
  });
  return starts.map(({ start, harmony }, index) => ({
    start: ticks(start),
    duration: ticks((starts[index + 1]?.start ?? length) - start),
    harmony,
  }));
}

/** The harmonies as they share a bar when nothing but they is written in it. */
export const defaultSpans = (harmonies: readonly Harmony[], metre: Metre): readonly HarmonySpan[] =>
  spansOf(
    harmonies.map((harmony) => ({ harmony, pushed: false })),
    evenShares(harmonies.length, metre) ?? crowdedShares(harmonies.length, metre),
    metre,
  );
