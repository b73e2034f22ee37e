import type { Fret } from '../base';
import { createHandModel, hasteBetween, type Layer } from './model';
import { cheapestPath, cheapestRound, type Path, type Step } from './path';
import type { FingeredNote, Fingering, HandSettings, Instrument, LineContext, NoteToFinger } from './types';

interface Played {
  /** Index in the line as given. */
  readonly index: number;
  readonly note: NoteToFinger;
  readonly layer: Layer;
}

/**
 * String, fret and finger of every note: the cheapest way through the whole line by the costs of `COST`, exact
 * by dynamic programming, in time linear in the number of notes. In a loop the way back to the first note
 * counts too.
 * @param notes in the order of their starts
 */
export function fingerLine(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): Fingering {
  const model = createHandModel(instrument, hand);
  const played = notes
    .map((note, index): Played => ({ index, note, layer: model.layerOf(note, positionFor(note, context)) }))
    .filter(({ layer }) => layer.states.length > 0);
  const ordered = context.loop === null ? played : fromEasiestCut(played);
  const steps = ordered.map((after, index): Step => {
    const before = ordered.at(index - 1) ?? after;
    const link = model.linkOf(before.layer, after.layer);
    return {
      link,
      haste: hasteBetween(before.note, onsetAfter(before.note, after.note, context), context.ticksPerSecond),
    };
  });
  const track = { layers: ordered.map(({ layer }) => layer), steps };
  const path = context.loop === null ? cheapestPath(track) : cheapestRound(track);
  return toFingering(notes.length, ordered, path, context);
}

/** Where the teacher keeps the hand when the note starts; the last word counts where stretches overlap. */
const positionFor = (note: NoteToFinger, context: LineContext): Fret | null =>
  context.positions?.findLast(({ start, end }) => note.start >= start && note.start < end)?.position ?? null;

/** The round turned so that it begins where the fewest ways must be tried as its closing point. */
function fromEasiestCut(played: readonly Played[]): readonly Played[] {
  let cut = 0;
  played.forEach(({ layer }, index) => {
    if (layer.states.length < (played[cut]?.layer.states.length ?? 0)) cut = index;
  });
  return [...played.slice(cut), ...played.slice(0, cut)];
}

/** In a loop the first note comes again a round later. */
const onsetAfter = (before: NoteToFinger, after: NoteToFinger, context: LineContext): number =>
  after.start <= before.start ? after.start + (context.loop ?? 0) : after.start;

function toFingering(count: number, ordered: readonly Played[], path: Path, context: LineContext): Fingering {
  const notes: (FingeredNote | null)[] = new Array(count).fill(null);
  const positions = ordered.map(({ index, layer }, step) => {
    const state = layer.states[path.choice[step] ?? 0];
    if (state === undefined) return null;
    const { string, fret, finger, position } = state;
    notes[index] = { string, fret, finger, position };
    return position;
  });
  const shifts = positions.filter((position, index) =>
    index === 0 ? context.loop !== null && position !== positions.at(-1) : position !== positions[index - 1],
  ).length;
  return { notes, cost: path.cost, shifts };
}
