import { jumpOf, type Navigation } from '../../chart';
import { BAR_WORDS_LENGTH } from '../../lesson';
import {
  ALL_KEYS,
  bestEnharmonicKey,
  findKey,
  type Key,
  keySignature,
  keysOfMode,
  transposeName,
} from '../../theory';
import type { FoundBar, FoundChord, FoundNote } from '../reading/found';
import { metreTicks } from '../reading/metres';
import type { Remarks } from '../reading/remarks';
import type { Candidate } from './candidates';
import { lineOf } from './line-of';
import type { RawKey, RawMeasure, RawPart } from './raw';
import { readHarmony } from './read-harmony';

/**
 * Where the chords of a measure stand. Files put several before one note without saying where each begins: they
 * share the time until the next one.
 */
function placesOf({ harmonies, metre }: RawMeasure): {
  readonly places: readonly number[];
  readonly shared: boolean;
} {
  const starts = [...new Set(harmonies.map(({ at }) => at))].sort((one, other) => one - other);
  let shared = false;
  const places = harmonies.map(({ at }, index) => {
    const alike = harmonies.filter((other) => other.at === at).length;
    const before = harmonies.slice(0, index).filter((other) => other.at === at).length;
    shared ||= alike > 1;
    const next = starts.find((start) => start > at) ?? Math.max(at, metreTicks(metre));
    return at + ((next - at) * before) / alike;
  });
  return { places, shared };
}

/** The chords of each measure: those over the part itself, else over the first part that has some. */
function chordsOf(
  parts: readonly RawPart[],
  own: RawPart,
  remarks: Remarks,
): readonly (readonly FoundChord[])[] {
  const has = ({ measures }: RawPart): boolean => measures.some(({ harmonies }) => harmonies.length > 0);
  const source = has(own) ? own : parts.find(has);
  if (source === undefined) {
    remarks.say('There are no chords in the file; they can be typed over the bars.');
    return [];
  }
  if (source !== own) remarks.say(`The chords are those over the part “${source.name || source.id}”.`);
  return source.measures.map((measure, bar) => {
    const { places, shared } = placesOf(measure);
    if (shared) remarks.inBar('Chords that stand at one place share the time until the next one', bar);
    return measure.harmonies.map(({ node, interval }, index): FoundChord => {
      const { chord, remark } = readHarmony(node, interval);
      if (remark !== null) remarks.inBar(remark, bar);
      return { at: places[index] ?? 0, chord: chord ?? null };
    });
  });
}

/** The key of a signature; where the file does not say major or minor, the one that chords and notes tell. */
function keyReader(
  chords: readonly FoundChord[],
  notes: readonly FoundNote[],
): (raw: RawKey | null) => Key | null {
  const known = new Map<string, Key | null>();
  const guesses = findKey(
    chords.flatMap(({ chord }) => (chord === null ? [] : [{ chord, weight: 1 }])),
    { notes: notes.map(({ pitch, duration }) => ({ name: pitch, weight: duration })) },
  );
  const read = ({ fifths, mode, interval }: RawKey): Key | null => {
    const written =
      mode === null
        ? ALL_KEYS.filter((key) => keySignature(key) === fifths)
        : keysOfMode(mode).filter((key) => keySignature(key) === fifths);
    const sounding = written.map((key): Key => {
      const still = interval.steps % 7 === 0 && interval.halfSteps % 12 === 0;
      return still ? key : bestEnharmonicKey({ tonic: transposeName(key.tonic, interval), mode: key.mode });
    });
    const rank = (key: Key): number =>
      guesses.findIndex(
        ({ key: guess }) => keySignature(guess) === keySignature(key) && guess.mode === key.mode,
      );
    return [...sounding].sort((one, other) => rank(one) - rank(other))[0] ?? null;
  };
  return (raw) => {
    if (raw === null) return null;
    const id = JSON.stringify(raw);
    const found = known.get(id) ?? read(raw);
    known.set(id, found);
    return found;
  };
}

/** Repeats stand in every part as a rule; where the part has none, those of another one hold. */
function repeatsFrom(parts: readonly RawPart[], own: RawPart): RawPart {
  const has = ({ measures }: RawPart): boolean =>
    measures.some(({ forward, backward, ending }) => forward || backward !== null || ending !== null);
  return has(own) ? own : (parts.find(has) ?? own);
}

/** An upbeat: the first measure, shorter than its metre, or than the next one's where it has a metre of its own. */
function isPickup(measure: RawMeasure, next: RawMeasure | undefined): boolean {
  if (next === undefined || measure.length <= 0) return false;
  const own = metreTicks(measure.metre);
  return measure.length < own - 1 || (measure.implicit && own < metreTicks(next.metre));
}

/** Words over a bar, as much of them as a lesson holds. */
function wordsOf({ words }: RawMeasure, bar: number, remarks: Remarks): Pick<FoundBar, 'words'> {
  const said = words.join(' ').replace(/\s+/g, ' ').trim();
  if (said === '') return {};
  const kept = [...said].slice(0, BAR_WORDS_LENGTH).join('').trim();
  if (kept !== said) remarks.inBar(`Words over a bar are cut after ${BAR_WORDS_LENGTH} letters`, bar);
  return { words: kept };
}

/** A bar has one jump back: the one that says most. */
function oneJump(signs: readonly Navigation[]): readonly Navigation[] {
  const jumps = signs.filter((sign) => jumpOf([sign]) !== null);
  const [fullest] = [...jumps].sort((one, other) => other.length - one.length);
  return signs.filter((sign) => !jumps.includes(sign) || sign === fullest);
}

/** The bars of the line with all that the score says about them, and the swing it asks for. */
export function barsOf(
  parts: readonly RawPart[],
  candidate: Candidate,
  remarks: Remarks,
): { readonly bars: readonly FoundBar[]; readonly swing: number | null } {
  const { part } = candidate;
  const chords = chordsOf(parts, part, remarks);
  const lines = part.measures.map((_, bar) => lineOf(candidate, bar, remarks));
  const keyOf = keyReader(chords.flat(), lines.flat());
  const repeats = repeatsFrom(parts, part);
  const everywhere = part.measures.map((_, bar) => parts.flatMap(({ measures }) => measures[bar] ?? []));
  const bars = part.measures.map((measure, bar): FoundBar => {
    const repeat = repeats.measures[bar];
    for (const remark of measure.remarks) remarks.inBar(remark, bar);
    return {
      metre: measure.metre,
      pickup: bar === 0 && isPickup(measure, part.measures[1]),
      length: measure.length,
      key: keyOf(measure.key),
      chords: chords[bar] ?? [],
      notes: lines[bar] ?? [],
      section:
        measure.rehearsal ?? everywhere[bar]?.find(({ rehearsal }) => rehearsal !== null)?.rehearsal ?? null,
      repeatStart: repeat?.forward ?? false,
      repeatEnd: repeat?.backward ?? null,
      ending: repeat?.ending ?? null,
      dynamics: measure.dynamics.filter(({ staff }) => staff === candidate.staff),
      ...wordsOf(measure, bar, remarks),
      navigation: oneJump([...new Set(everywhere[bar]?.flatMap(({ navigation }) => navigation))]),
    };
  });
  return { bars, swing: everywhere.flat().find(({ swing }) => swing !== null)?.swing ?? null };
}
