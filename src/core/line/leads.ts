import { pitchClassOf, type SpelledName } from '../base';
import { nameOfDegree } from '../theory';
import { inReach, pitchesOf } from './demands';
import { classAbove, type Stretch } from './harmony';
import type { LineModel } from './model';
import type { Figure, Pitch } from './shapes';
import { leadWaysOf } from './techniques/table';

/** Steps of the chord's scale that lead into a target by step: `count` notes from below or from above. */
function walkInto(
  model: LineModel,
  stretch: Stretch,
  target: number,
  count: number,
  direction: 1 | -1,
): readonly Pitch[] | null {
  const pitches: Pitch[] = [];
  let from = target;
  for (let note = 0; note < count; note += 1) {
    const next = scaleNeighbour(stretch, from, direction === 1 ? -1 : 1);
    if (!next || !inReach(stretch.demands.reach, next.midi)) return null;
    if (!model.limits.steps.has(next.step)) return null;
    pitches.unshift({ midi: next.midi, name: next.name });
    from = next.midi;
  }
  return pitches;
}

/** The next scale note above or below a pitch, at most two half steps away. */
function scaleNeighbour(
  stretch: Stretch,
  midi: number,
  direction: 1 | -1,
): { midi: number; name: SpelledName; step: number } | null {
  for (const distance of [1, 2]) {
    const other = midi + direction * distance;
    const halfSteps = classAbove(other, stretch.rootClass);
    const index = stretch.steps.findIndex((tone) => tone?.halfSteps === halfSteps);
    const tone = stretch.steps[index];
    if (tone) return { midi: other, name: tone.name, step: index + 1 };
  }
  return null;
}

/** A half step outside the scale into a target: raised from below, lowered from above. */
function halfStepInto(stretch: Stretch, target: Pitch, direction: 1 | -1): readonly Pitch[] | null {
  const midi = target.midi - direction;
  if (!inReach(stretch.demands.reach, midi)) return null;
  const halfSteps = classAbove(midi, stretch.rootClass);
  if (stretch.steps.some((tone) => tone?.halfSteps === halfSteps)) return null;
  const name = nameOfDegree(
    target.name,
    direction === 1 ? { step: 7, alteration: 0 } : { step: 2, alteration: -1 },
  );
  return pitchClassOf(name) === ((midi % 12) + 12) % 12 ? [{ midi, name }] : null;
}

/** The target's fifth, below or above it, where the chord does not have that note itself: a dominant approach. */
function fifthOf(stretch: Stretch, target: Pitch, direction: 1 | -1): readonly Pitch[] | null {
  const midi = direction === 1 ? target.midi - FOURTH : target.midi + FIFTH;
  if (!inReach(stretch.demands.reach, midi)) return null;
  if (stretch.members[classAbove(midi, stretch.rootClass)] === true) return null;
  return [{ midi, name: nameOfDegree(target.name, { step: 5, alteration: 0 }) }];
}

const DIRECTIONS = [1, -1] as const;
/** A walk may fill a bar of eighths. */
const LONGEST_WALK = 8;

/** The ways into a pitch from below or above: walks of the scale, and half steps where they are asked for. */
function leadsInto(
  model: LineModel,
  stretch: Stretch,
  target: Pitch,
  count: number,
): readonly { readonly walk: readonly Pitch[]; readonly sign: string }[] {
  const ways = model.limits.halfSteps ? leadWaysOf(stretch.demands.techniques) : null;
  return DIRECTIONS.flatMap((direction) => {
    const lengths = Array.from({ length: Math.min(LONGEST_WALK, count) }, (_, index) => index + 1);
    const walks = lengths.flatMap((length) => {
      const walk = walkInto(model, stretch, target.midi, length, direction);
      return walk ? [{ walk, sign: direction === 1 ? '↗' : '↘' }] : [];
    });
    const half = ways?.has('half step') ? halfStepInto(stretch, target, direction) : null;
    const fifth = ways?.has('fifth') ? fifthOf(stretch, target, direction) : null;
    return [
      ...walks,
      ...(half ? [{ walk: half, sign: direction === 1 ? '↑' : '↓' }] : []),
      ...(fifth ? [{ walk: fifth, sign: '⇒' }] : []),
    ];
  });
}

/**
 * Figures whose last notes walk into the next chord's root.
 * @param shapes the shapes over this chord for a number of notes
 */
export function leadingFigures(
  model: LineModel,
  stretch: Stretch,
  count: number,
  next: Stretch | null,
  shapes: (count: number) => readonly Figure[],
): readonly Figure[] {
  const name = next?.home;
  if (!next || !name || count < 2 || model.request.level < 2) return [];
  return pitchesOf(next.demands.reach, next.homeClass).flatMap((midi) => [
    ...leadsInto(model, stretch, { midi, name }, count).flatMap(({ walk, sign }) =>
      withLead(shapes, count, walk, sign),
    ),
    ...anticipations(model, stretch, { midi, name }, count, shapes),
  ]);
}

/** Figures whose last note is the next root ahead of its time, where that note is not the chord's own. */
function anticipations(
  model: LineModel,
  stretch: Stretch,
  target: Pitch,
  count: number,
  shapes: (count: number) => readonly Figure[],
): readonly Figure[] {
  const own = stretch.members[classAbove(target.midi, stretch.rootClass)];
  if (own || model.request.level < 3 || !stretch.demands.freedoms.has('early root')) return [];
  if (!inReach(stretch.demands.reach, target.midi)) return [];
  return withLead(shapes, count, [target], '»').map((figure) => ({ ...figure, anticipates: true }));
}

/** Shapes that a lead goes on from; a walk that takes every note of the chord stands alone. */
function withLead(
  shapes: (count: number) => readonly Figure[],
  count: number,
  walk: readonly Pitch[],
  sign: string,
): readonly Figure[] {
  const entry = walk[0];
  if (!entry) return [];
  if (count === walk.length) return [{ pitches: walk, shape: sign.repeat(walk.length) }];
  return shapes(count - walk.length)
    .filter(({ pitches }) => Math.abs((pitches.at(-1)?.midi ?? 0) - entry.midi) <= FIFTH)
    .map(({ pitches, shape }) => ({
      pitches: [...pitches, ...walk],
      shape: `${shape} ${sign.repeat(walk.length)}`,
    }));
}

/** A walk may be reached by a leap of a fifth at most. */
const FIFTH = 7;
const FOURTH = 5;
