import { midiOf } from '../../base';
import { C_MAJOR } from '../../theory';
import type { FoundChord } from '../reading/found';
import { metreBeat, metreTicks } from '../reading/metres';
import type { Remarks } from '../reading/remarks';
import type { FileChoice } from '../reading/score-read';
import { chordsByTriads, type SoundingNote, triadChoices, triadParts } from '../reading/triads';
import { soundingKeys } from './keys-of';
import type { RawMeasure, RawPart } from './raw';
import { readHarmony } from './read-harmony';

type Chords = readonly (readonly FoundChord[])[];

const symbolsId = ({ id }: RawPart): string => `${id} symbols`;
const nameOf = ({ name, instruments, id }: RawPart): string => name || instruments || id;

const hasSymbols = ({ measures }: RawPart): boolean => measures.some(({ harmonies }) => harmonies.length > 0);

/** The parts that can play chords. */
const pitchedOf = (parts: readonly RawPart[]) =>
  parts.filter(({ percussion }) => !percussion).map((part) => ({ id: part.id, name: nameOf(part), part }));

const sounding = ({ notes }: RawMeasure): readonly SoundingNote[] =>
  notes.map(({ start, duration, pitch }) => ({ start, end: start + duration, midi: midiOf(pitch) }));

/**
 * Where the chords can come from: symbols, those over the part itself first, then the triads that parts play, those
 * first that play the most, and in the end those of all parts together.
 */
export function chordChoices(parts: readonly RawPart[], own: RawPart): readonly FileChoice[] {
  const symbols = parts
    .filter(hasSymbols)
    .sort((one, other) => Number(other === own) - Number(one === own))
    .map((part) => ({ id: symbolsId(part), name: `Symbols over “${nameOf(part)}”` }));
  const pitched = pitchedOf(parts).map(({ part, ...named }) => ({
    ...named,
    bars: part.measures.map(sounding),
  }));
  return [...symbols, ...triadChoices(pitched)];
}

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

const symbolsOf = (source: RawPart, remarks: Remarks): Chords =>
  source.measures.map((measure, bar) => {
    const { places, shared } = placesOf(measure);
    if (shared) remarks.inBar('Chords that stand at one place share the time until the next one', bar);
    return measure.harmonies.map(({ node, interval }, index): FoundChord => {
      const { chord, remark } = readHarmony(node, interval);
      if (remark !== null) remarks.inBar(remark, bar);
      return { at: places[index] ?? 0, chord: chord ?? null };
    });
  });

/** The chords that parts play, in each measure. */
const triadsOf = (sources: readonly RawPart[], own: RawPart): Chords =>
  chordsByTriads(
    own.measures.map((measure, bar) => ({
      notes: sources.flatMap(({ measures }) => (measures[bar] ? sounding(measures[bar]) : [])),
      length: metreTicks(measure.metre),
      beat: metreBeat(measure.metre),
      key: (measure.key && soundingKeys(measure.key)[0]) ?? C_MAJOR,
    })),
  );

/**
 * The chords of each measure, from where they are asked for.
 * @param source an id of {@link chordChoices}; null where there is none
 */
export function chordsFrom(
  parts: readonly RawPart[],
  own: RawPart,
  source: string | null,
  remarks: Remarks,
): Chords {
  const symbols = parts.find((part) => symbolsId(part) === source);
  if (symbols !== undefined) {
    if (symbols !== own) remarks.say(`The chords are those over the part “${nameOf(symbols)}”.`);
    return symbolsOf(symbols, remarks);
  }
  const playing = triadParts(source, pitchedOf(parts), remarks);
  if (playing !== null)
    return triadsOf(
      playing.map(({ part }) => part),
      own,
    );
  remarks.say('There are no chords in the file; they can be typed over the bars.');
  return [];
}
