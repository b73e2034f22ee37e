import type { SpelledName } from '../base';
import { type Contour, contoursOf } from './contours';
import { inReach, pitchesOf } from './demands';
import { classAbove, type Stretch } from './harmony';
import type { LineModel } from './model';

export interface Pitch {
  readonly midi: number;
  readonly name: SpelledName;
}

/** Pitches for the notes of a bar or of one chord in it, before they have a rhythm. */
export interface Figure {
  readonly pitches: readonly Pitch[];
  /** The shape in steps, for comparing bars over different chords. */
  readonly shape: string;
  /** The last note is the next chord's root, ahead of its time. */
  readonly anticipates?: boolean;
}

export const OCTAVE_TOP = 12;

/** A step of the chord's scale as a pitch above a root; null where scale, level or neck leave it out. */
function pitchOfStep(model: LineModel, stretch: Stretch, root: number, step: number): Pitch | null {
  const folded = ((step % 7) + 7) % 7;
  const tone = stretch.steps[folded];
  if (!tone || !model.limits.steps.has(folded + 1)) return null;
  if (model.request.level === 0 && step !== 0) return null;
  const midi = root + tone.halfSteps + 12 * Math.floor(step / 7);
  return inReach(stretch.demands.reach, midi) ? { midi, name: tone.name } : null;
}

/** In a suspended chord the second or fourth stands where the third would. */
function bendStep(stretch: Stretch, step: number): number {
  const folded = ((step % 7) + 7) % 7;
  if (folded !== 2 || stretch.steps[2]?.member !== false) return step;
  if (stretch.steps[3]?.member) return step + 1;
  return stretch.steps[1]?.member ? step - 1 : step;
}

function slashBass(stretch: Stretch, above: number): Pitch | null {
  if (!stretch.home) return null;
  const options = pitchesOf(stretch.demands.reach, stretch.homeClass).filter(
    (midi) => Math.abs(midi - above) <= OCTAVE_TOP,
  );
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
  const bass = slashBass(stretch, pitches[1]?.midi ?? pitches[0]?.midi ?? 0);
  if (!bass) return null;
  return model.request.level === 0 ? pitches.map(() => bass) : [bass, ...pitches.slice(1)];
}

/** Whether a shape shows only what is switched on, over this chord. */
function isAllowed(pitches: readonly Pitch[], stretch: Stretch): boolean {
  const { freedoms } = stretch.demands;
  return pitches.every(({ midi }, index) => {
    const before = pitches[index - 1];
    if (before && Math.abs(before.midi - midi) === OCTAVE_TOP && !freedoms.has('octave leap')) return false;
    return (
      freedoms.has('notes outside the chord') || stretch.members[classAbove(midi, stretch.rootClass)] === true
    );
  });
}

/** Shapes from a root, in every octave of the range. */
export function shapeFigures(model: LineModel, stretch: Stretch, count: number): Figure[] {
  const slash = stretch.homeClass !== stretch.rootClass;
  return rootsOf(stretch).flatMap((root) =>
    contoursOf(count).flatMap((contour) => {
      const plain = shapeFigure(model, stretch, root, contour.steps);
      const pitches = plain && slash ? overSlashBass(model, stretch, contour, plain) : plain;
      return pitches && isAllowed(pitches, stretch) ? [{ pitches, shape: contour.text }] : [];
    }),
  );
}

/** Roots to hang a shape on; they may lie an octave below the range when the shape itself starts higher. */
function rootsOf(stretch: Stretch): readonly number[] {
  const roots: number[] = [];
  for (let midi = stretch.demands.reach.low - OCTAVE_TOP; midi <= stretch.demands.reach.high; midi += 1) {
    if (classAbove(midi, stretch.rootClass) === 0) roots.push(midi);
  }
  return roots;
}

/** Whether a shape ends in a walk of three notes or more into the next chord. */
export const isLongWalk = (shape: string): boolean => /↗{3}|↘{3}/u.test(shape);
