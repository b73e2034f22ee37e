import { midiOf, type SpelledPitch } from '../../base';
import { createInstrument, type Instrument, rangeOf } from '../../fretboard';
import type { FoundScore } from './found';

/** Octaves by which a tune can go down: from the highest flute to the lowest string are not more. */
const MOST_OCTAVES = 4;
/** A tune for voices and violins goes down by no more, if that is enough; common practice, no source. */
const USUAL_OCTAVES = 2;
/** Frets of the first positions, where a tune is easiest to read and to play. */
const FIRST_POSITIONS = 12;
const USUAL_FRETS = 20;
const MOST_FRETS = 24;

/** One octave in which the notes can be written. */
export interface OctaveChoice {
  /** How far down they go. */
  readonly octaves: number;
  /** How many of them lie on the neck there. */
  readonly playable: number;
}

const pitchesOf = ({ bars }: FoundScore): readonly SpelledPitch[] =>
  bars.flatMap(({ notes }) => notes.map(({ pitch }) => pitch));

/** The strings that the file names where its notes stay where they are; else those of the usual bass. */
export function instrumentFor(found: FoundScore): Instrument {
  const frets = found.bars.flatMap(({ notes }) => notes.map(({ pins }) => pins.fret ?? 0));
  const most = frets.reduce<number>((highest, each) => Math.max(highest, each), 0);
  return createInstrument(
    found.tuning?.openStrings,
    most > USUAL_FRETS ? Math.min(MOST_FRETS, most) : USUAL_FRETS,
  );
}

/** The strings for the notes so many octaves lower: those of the file belong to the octave of the file. */
const stringsFor = (found: FoundScore, octaves: number): Instrument =>
  octaves === 0 ? instrumentFor(found) : createInstrument(undefined, USUAL_FRETS);

/** How many of the notes lie on the neck so many octaves lower, up to a fret. */
function countWithin(found: FoundScore, octaves: number, upTo?: number): number {
  const instrument = stringsFor(found, octaves);
  const { lowest, highest } = rangeOf(instrument, upTo ?? instrument.frets);
  return pitchesOf(found).filter((pitch) => {
    const midi = midiOf(pitch) - 12 * octaves;
    return midi >= lowest && midi <= highest;
  }).length;
}

/** No note goes lower than C0, which has no use on a bass. */
const LOWEST = 12;

/** Each octave with the notes that can be played there, the one of the file first. */
export function octaveChoices(found: FoundScore): readonly OctaveChoice[] {
  const range = rangeIn(found);
  const room = range === null ? 0 : Math.floor((midiOf(range.lowest) - LOWEST) / 12);
  const most = Math.max(0, Math.min(MOST_OCTAVES, room));
  return Array.from(
    { length: most + 1 },
    (_, octaves): OctaveChoice => ({ octaves, playable: countWithin(found, octaves) }),
  ).filter(({ octaves, playable }) => playable > 0 || octaves === 0);
}

/**
 * How far a tune goes down, if no one says it: a line for a bass stays where all of it can be played; else it goes
 * where the most of its notes lie on the neck, of such places, one or two octaves lower, the one with the most in the
 * first positions.
 */
export function likeliestOctaves(found: FoundScore): number {
  const all = pitchesOf(found).length;
  const [asItIs, ...others] = octaveChoices(found);
  if (asItIs === undefined || found.own || (found.forBass && asItIs.playable === all)) return 0;
  const first = ({ octaves }: OctaveChoice): number => countWithin(found, octaves, FIRST_POSITIONS);
  return others.reduce(
    (best, choice) =>
      choice.playable > best.playable ||
      (choice.playable === best.playable && choice.octaves <= USUAL_OCTAVES && first(choice) > first(best))
        ? choice
        : best,
    asItIs,
  ).octaves;
}

/** The score with its notes so many octaves lower, for the usual bass: strings and frets belonged to the other octave. */
export function lowered(found: FoundScore, octaves: number): FoundScore {
  if (octaves === 0) return found;
  return {
    ...found,
    tuning: null,
    bars: found.bars.map((bar) => ({
      ...bar,
      notes: bar.notes.map((note) => ({
        ...note,
        pitch: { ...note.pitch, octave: note.pitch.octave - octaves },
        pins: {},
      })),
    })),
  };
}

/** The lowest and the highest note; null without notes. */
export function rangeIn(
  found: FoundScore,
): { readonly lowest: SpelledPitch; readonly highest: SpelledPitch } | null {
  const sorted = [...pitchesOf(found)].sort((one, other) => midiOf(one) - midiOf(other));
  const [lowest] = sorted;
  const highest = sorted.at(-1);
  return lowest === undefined || highest === undefined ? null : { lowest, highest };
}
