import type { Fret } from '../base';
import { createHandModel, hasteBetween, jointOf, type Layer } from './model';
import { cheapestPath, cheapestRound, type Path, type Step, type Track } from './path';
import type { FingeredNote, Fingering, HandSettings, Instrument, LineContext, NoteToFinger } from './types';

/** A note of the line that lies on the instrument. */
export interface Played {
  /** Index in the line as given. */
  readonly index: number;
  readonly note: NoteToFinger;
  readonly layer: Layer;
}

/** A line made ready for one search or many. */
export interface Line {
  /** Notes in the line as given, those off the instrument included. */
  readonly count: number;
  readonly played: readonly Played[];
  readonly track: Track;
  readonly loop: boolean;
}

export function prepareLine(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): Line {
  const model = createHandModel(instrument, hand);
  const played = notes
    .map((note, index): Played => ({ index, note, layer: model.layerOf(note, positionFor(note, context)) }))
    .filter(({ layer }) => layer.states.length > 0);
  const steps = played.map((after, index): Step => {
    const before = played.at(index - 1) ?? after;
    // In a loop the first note comes again a round later.
    const onset = after.note.start + (index === 0 ? (context.loop ?? 0) : 0);
    return {
      link: model.linkOf(before.layer, after.layer, jointOf(before.note, onset)),
      haste: hasteBetween(before.note, onset, context),
    };
  });
  const own = played.map(({ layer }) => layer.own);
  return { count: notes.length, played, track: { own, steps }, loop: context.loop !== null };
}

/** Where the teacher keeps the hand when the note starts; the last word counts where stretches overlap. */
export const positionFor = (note: NoteToFinger, context: LineContext): Fret | null =>
  context.positions?.findLast(({ start, end }) => note.start >= start && note.start < end)?.position ?? null;

/**
 * The cheapest way through a line.
 * @param own replaces the costs of the ways by themselves, to bar some of them or to weigh them differently
 */
export function solve(line: Line, own: readonly Float64Array[] = line.track.own): Path {
  const track = { own, steps: line.track.steps };
  if (!line.loop) return cheapestPath(track);
  const cut = easiestCut(own);
  const { choice, cost } = cheapestRound({ own: turned(own, cut), steps: turned(track.steps, cut) });
  return { choice: turned(choice, choice.length - cut), cost };
}

/** The note of a round with the fewest ways, each of which must be tried as the closing point. */
function easiestCut(own: readonly Float64Array[]): number {
  const ways = own.map((costs) =>
    costs.reduce((count, cost) => (Number.isFinite(cost) ? count + 1 : count), 0),
  );
  return ways.indexOf(Math.min(...ways));
}

/** The round begun at another of its elements. */
const turned = <Item>(items: readonly Item[], start: number): readonly Item[] => [
  ...items.slice(start),
  ...items.slice(0, start),
];

/** What the search has chosen, note by note of the line as given. */
export function toFingering(line: Line, path: Path): Fingering {
  const notes: (FingeredNote | null)[] = new Array(line.count).fill(null);
  line.played.forEach(({ index, layer }, step) => {
    const state = layer.states[path.choice[step] ?? 0];
    if (state === undefined) return;
    const { string, fret, finger, position } = state;
    notes[index] = { string, fret, finger, position };
  });
  const positions = notes.flatMap((note) => (note === null ? [] : [note.position]));
  const shifts = positions.filter((position, index) =>
    index === 0 ? line.loop && position !== positions.at(-1) : position !== positions[index - 1],
  ).length;
  return { notes, cost: path.cost, shifts };
}
