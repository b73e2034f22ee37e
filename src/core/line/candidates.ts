import { pitchClassOf, type SpelledName } from '../base';
import { degreeOf, nameOfDegree } from '../theory';
import { type Contour, contoursOf } from './contours';
import { type BarModel, classAbove, type LineModel, type Stretch } from './model';
import type { BarRhythm } from './rhythm';
import { type Tone, toneOf } from './tones';

interface Pitch {
  readonly midi: number;
  readonly name: SpelledName;
}

/** Pitches for the notes of a bar or of one chord in it, before they have a rhythm. */
export interface Figure {
  readonly pitches: readonly Pitch[];
  /** The shape in steps, for comparing bars over different chords. */
  readonly shape: string;
}

const OCTAVE_TOP = 12;

const inReach = (model: LineModel, midi: number): boolean =>
  midi >= model.low && midi <= model.high && model.onNeck[midi] === true;

/** Pitches of a class within the line's range, lowest first. */
export function pitchesOf(model: LineModel, pitchClass: number): readonly number[] {
  const found: number[] = [];
  for (let midi = model.low; midi <= model.high; midi += 1) {
    if (midi % 12 === pitchClass && inReach(model, midi)) found.push(midi);
  }
  return found;
}

/** A step of the chord's scale as a pitch above a root; null where scale, level or neck leave it out. */
function pitchOfStep(model: LineModel, stretch: Stretch, root: number, step: number): Pitch | null {
  const folded = ((step % 7) + 7) % 7;
  const tone = stretch.steps[folded];
  if (!tone || !model.limits.steps.has(folded + 1)) return null;
  if (model.request.level === 0 && step !== 0) return null;
  const midi = root + tone.halfSteps + 12 * Math.floor(step / 7);
  return inReach(model, midi) ? { midi, name: tone.name } : null;
}

/** In a suspended chord the second or fourth stands where the third would. */
function bendStep(stretch: Stretch, step: number): number {
  const folded = ((step % 7) + 7) % 7;
  if (folded !== 2 || stretch.steps[2]?.member !== false) return step;
  if (stretch.steps[3]?.member) return step + 1;
  return stretch.steps[1]?.member ? step - 1 : step;
}

function slashBass(model: LineModel, stretch: Stretch, above: number): Pitch | null {
  if (!stretch.home) return null;
  const options = pitchesOf(model, stretch.homeClass).filter((midi) => Math.abs(midi - above) <= OCTAVE_TOP);
  const below = options.filter((midi) => midi <= above).at(-1);
  const midi = below ?? options[0];
  return midi === undefined ? null : { midi, name: stretch.home };
}

function shapeFigure(
  model: LineModel,
  stretch: Stretch,
  root: number,
  steps: readonly number[],
): readonly Pitch[] | null {
  const pitches: Pitch[] = [];
  for (const step of steps) {
    const pitch = pitchOfStep(model, stretch, root, bendStep(stretch, step));
    if (!pitch) return null;
    pitches.push(pitch);
  }
  return pitches;
}

/** A slash chord begins with its bass note; a level that knows only roots stays on it. */
function overSlashBass(
  model: LineModel,
  stretch: Stretch,
  contour: Contour,
  pitches: readonly Pitch[],
): readonly Pitch[] | null {
  if (!contour.text.startsWith('R')) return null;
  const bass = slashBass(model, stretch, pitches[1]?.midi ?? pitches[0]?.midi ?? model.low);
  if (!bass) return null;
  return model.request.level === 0 ? pitches.map(() => bass) : [bass, ...pitches.slice(1)];
}

/** Shapes from a root, in every octave of the range. */
function shapeFigures(model: LineModel, stretch: Stretch, count: number): Figure[] {
  const slash = stretch.homeClass !== stretch.rootClass;
  return rootsOf(model, stretch).flatMap((root) =>
    contoursOf(count).flatMap((contour) => {
      const plain = shapeFigure(model, stretch, root, contour.steps);
      const pitches = plain && slash ? overSlashBass(model, stretch, contour, plain) : plain;
      return pitches ? [{ pitches, shape: contour.text }] : [];
    }),
  );
}

/** Roots to hang a shape on; they may lie an octave below the range when the shape itself starts higher. */
function rootsOf(model: LineModel, stretch: Stretch): readonly number[] {
  const roots: number[] = [];
  for (let midi = model.low - OCTAVE_TOP; midi <= model.high; midi += 1) {
    if (classAbove(midi, stretch.rootClass) === 0) roots.push(midi);
  }
  return roots;
}

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
    if (!next || !inReach(model, next.midi)) return null;
    if (!model.limits.steps.has(next.step) && !next.member) return null;
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
): { midi: number; name: SpelledName; step: number; member: boolean } | null {
  for (const distance of [1, 2]) {
    const other = midi + direction * distance;
    const halfSteps = classAbove(other, stretch.rootClass);
    const index = stretch.steps.findIndex((tone) => tone?.halfSteps === halfSteps);
    const tone = stretch.steps[index];
    if (tone) return { midi: other, name: tone.name, step: index + 1, member: tone.member };
  }
  return null;
}

/** A half step outside the scale into a target: raised from below, lowered from above. */
function halfStepInto(
  model: LineModel,
  stretch: Stretch,
  target: Pitch,
  direction: 1 | -1,
): readonly Pitch[] | null {
  const midi = target.midi - direction;
  if (!inReach(model, midi)) return null;
  const halfSteps = classAbove(midi, stretch.rootClass);
  if (stretch.steps.some((tone) => tone?.halfSteps === halfSteps)) return null;
  const degree = degreeOf(target.name, target.name);
  const name = nameOfDegree(target.name, {
    ...degree,
    step: direction === 1 ? 7 : 2,
    alteration: direction === 1 ? 0 : -1,
  });
  return pitchClassOf(name) === ((midi % 12) + 12) % 12 ? [{ midi, name }] : null;
}

const DIRECTIONS = [1, -1] as const;
const LONGEST_WALK = 3;

/** The ways into a pitch from below or above: walks of the scale, and half steps where they are asked for. */
function leadsInto(
  model: LineModel,
  stretch: Stretch,
  target: Pitch,
  count: number,
): readonly { readonly walk: readonly Pitch[]; readonly sign: string }[] {
  const halfSteps = model.request.techniques.has('approach note') && model.limits.halfSteps;
  return DIRECTIONS.flatMap((direction) => {
    const lengths = Array.from({ length: Math.min(LONGEST_WALK, count - 1) }, (_, index) => index + 1);
    const walks = lengths.flatMap((length) => {
      const walk = walkInto(model, stretch, target.midi, length, direction);
      return walk ? [{ walk, sign: direction === 1 ? '↗' : '↘' }] : [];
    });
    const half = halfSteps ? halfStepInto(model, stretch, target, direction) : null;
    return half ? [...walks, { walk: half, sign: direction === 1 ? '↑' : '↓' }] : walks;
  });
}

/** Figures whose last notes walk into the next chord's root. */
function leadingFigures(model: LineModel, stretch: Stretch, count: number, next: Stretch | null): Figure[] {
  const name = next?.home;
  if (!next || !name || count < 2 || model.request.level < 2) return [];
  return pitchesOf(model, next.homeClass).flatMap((midi) =>
    leadsInto(model, stretch, { midi, name }, count).flatMap(({ walk, sign }) =>
      withLead(model, stretch, count, walk, sign),
    ),
  );
}

function withLead(
  model: LineModel,
  stretch: Stretch,
  count: number,
  walk: readonly Pitch[],
  sign: string,
): Figure[] {
  const entry = walk[0];
  if (!entry) return [];
  return shapeFigures(model, stretch, count - walk.length)
    .filter(({ pitches }) => Math.abs((pitches.at(-1)?.midi ?? 0) - entry.midi) <= 7)
    .map(({ pitches, shape }) => ({
      pitches: [...pitches, ...walk],
      shape: `${shape} ${sign.repeat(walk.length)}`,
    }));
}

function figuresFor(model: LineModel, stretch: Stretch, count: number, next: Stretch | null): Figure[] {
  if (count === 0) return [{ pitches: [], shape: '' }];
  const figures = [...shapeFigures(model, stretch, count), ...leadingFigures(model, stretch, count, next)];
  const seen = new Set<string>();
  return figures.filter(({ pitches }) => {
    const key = pitches.map((pitch) => pitch.midi).join(' ');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Most figures a stretch of a split bar contributes, so that bars of four chords stay affordable. */
const SPLIT_FIGURES = 14;

function joinFigures(before: readonly Figure[], next: readonly Figure[]): Figure[] {
  return before.flatMap((one) =>
    next
      .filter(
        (other) => Math.abs((other.pitches[0]?.midi ?? 0) - (one.pitches.at(-1)?.midi ?? 0)) <= OCTAVE_TOP,
      )
      .map((other) => ({
        pitches: [...one.pitches, ...other.pitches],
        shape: `${one.shape} · ${other.shape}`,
      })),
  );
}

/** What may sound next after a bar: the first stretch of each bar that can follow. */
export function nextStretches(model: LineModel, bar: BarModel): readonly Stretch[] {
  const found = new Map<string, Stretch>();
  for (const index of bar.after) {
    const first = model.bars[index]?.stretches[0];
    if (first?.chord) found.set(first.label, first);
  }
  return [...found.values()];
}

/** How many notes a rhythm gives each stretch of a bar. */
export const countsByStretch = (bar: BarModel, rhythm: BarRhythm): readonly number[] =>
  bar.stretches.map(
    (stretch) =>
      rhythm.onsets.filter((onset) => onset.start >= stretch.start && onset.start < stretch.end).length,
  );

/** Every way of choosing pitches for a bar that the tables know, unjudged, for so many notes by stretch. */
export function barFigures(model: LineModel, bar: BarModel, counts: readonly number[]): readonly Figure[] {
  const following = nextStretches(model, bar)[0] ?? null;
  const split = bar.stretches.length > 1;
  let figures: Figure[] = [{ pitches: [], shape: '' }];
  bar.stretches.forEach((stretch, index) => {
    const count = counts[index] ?? 0;
    if (!stretch.chord || count === 0) return;
    const next = bar.stretches[index + 1] ?? following;
    const found = figuresFor(model, stretch, count, next?.chord ? next : null);
    const own = split ? thinOut(found, SPLIT_FIGURES) : found;
    figures = figures[0]?.pitches.length === 0 ? own : joinFigures(figures, own);
  });
  return figures;
}

/** A figure in a rhythm. */
export const tonesOf = (bar: BarModel, rhythm: BarRhythm, figure: Figure): readonly Tone[] =>
  rhythm.onsets.flatMap((onset, index) => {
    const pitch = figure.pitches[index];
    return pitch ? [toneOf(bar, onset.start, onset.duration, pitch.midi, pitch.name)] : [];
  });

/** Every k-th of a list, so that the kinds at its beginning and its end both stay. */
function thinOut<Item>(items: Item[], most: number): Item[] {
  if (items.length <= most) return items;
  return Array.from({ length: most }, (_, index) => items[Math.floor((index * items.length) / most)]).filter(
    (item): item is Item => item !== undefined,
  );
}
