import type { LineNote } from '../../base';
import { modelOf } from '../read-request';
import type { LineNotes, LineRequest } from '../types';
import { materialOf, type PlacedNote, type StageBar } from './material';
import { MOVABLE_THINGS, type MovableThing, type StageThing } from './things';

/** How a teacher wants a line built up; the usual way where nothing is said. */
export interface BuildUpWish {
  /** Things in the order in which they come; those that it does not name come behind, in their usual order. */
  readonly order?: readonly MovableThing[];
  /** Things that get no stage of their own: what they add comes with the next stage. */
  readonly leftOut?: readonly StageThing[];
  /** There is touch besides the marks of the notes, such as dynamics. */
  readonly touched?: boolean;
}

/** A stage of a build-up. */
export interface Stage {
  /** What it adds to the stage before, the first thing first; never empty. */
  readonly things: readonly StageThing[];
  readonly bars: LineNotes;
}

/** Below so many stages the rhythm comes in two. */
const FEW = 3;

type Things = ReadonlySet<StageThing>;

const isThere = ({ comes }: PlacedNote, has: Things): boolean =>
  comes === 'roots' || has.has('rhythm') || (comes === 'strong beats' && has.has('strong beats'));

const hasOwnPitch = ({ kind }: PlacedNote, has: Things): boolean =>
  kind === 'own' || has.has(kind === 'chord tone' ? 'chord tones' : 'steps and leads');

/** A note at a stage: where it has its own pitch, with its pins; where the touch has come, with its marks. */
function stagedNote(placed: PlacedNote, has: Things): LineNote {
  const { note, root } = placed;
  const { marks, pins, ...plain } = note;
  const own = hasOwnPitch(placed, has);
  return {
    ...plain,
    pitch: own ? note.pitch : root,
    ...(marks === undefined || !has.has('touch') ? {} : { marks }),
    ...(pins === undefined || !own ? {} : { pins }),
  };
}

function stagedBar({ notes, fill }: StageBar, has: Things): readonly LineNote[] {
  const filled = fill !== null && !has.has('silence on one');
  const silentFirst = fill !== null && !filled && !has.has('rhythm');
  // A root that only filled the silence moves to where the line comes in.
  const there = notes.filter((placed, index) => isThere(placed, has) || (silentFirst && index === 0));
  const staged = there.map((placed) => stagedNote(placed, has));
  return filled ? [fill, ...staged] : staged;
}

const sameNotes = (one: LineNotes, other: LineNotes): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** The things in the order in which they come. */
function inOrder({ order = [] }: BuildUpWish, parted: boolean): readonly StageThing[] {
  const movable = [...order, ...MOVABLE_THINGS.filter((thing) => !order.includes(thing))];
  const middle = movable.flatMap((thing): readonly StageThing[] =>
    thing === 'rhythm' && parted ? ['strong beats', 'rhythm'] : [thing],
  );
  return ['roots', ...middle, 'touch'];
}

function stagesIn(
  material: readonly StageBar[],
  line: LineNotes,
  things: readonly StageThing[],
  { leftOut = [], touched = false }: BuildUpWish,
): readonly Stage[] {
  const has = new Set<StageThing>();
  const stages: Stage[] = [];
  let waiting: StageThing[] = [];
  let before: LineNotes = [];
  const steps = things.flatMap((thing): readonly Stage[] => {
    has.add(thing);
    const bars = thing === 'touch' ? line : material.map((bar) => stagedBar(bar, has));
    const adds = thing === 'roots' || !sameNotes(bars, before) || (thing === 'touch' && touched);
    before = bars;
    return adds ? [{ things: [thing], bars }] : [];
  });
  steps.forEach(({ things: [thing], bars }, index) => {
    if (thing === undefined) return;
    waiting.push(thing);
    if (leftOut.includes(thing) && index < steps.length - 1) return;
    stages.push({ things: waiting, bars });
    waiting = [];
  });
  return stages;
}

/**
 * A line in stages, each of which can be played and adds one thing to the one before (see `STAGE_THINGS`); the last is the
 * line. What the line does not have gets no stage, so that a line of roots alone has fewer than three; an
 * unwritten line has none.
 *
 * Notes come where the line has them; the root stands in place of a pitch that is yet to come. A silent beat one is filled
 * with the root until its stage, wherever the level has the time for it.
 */
export function buildUp(request: LineRequest, line: LineNotes, wish: BuildUpWish = {}): readonly Stage[] {
  if (line.every((notes) => notes.length === 0)) return [];
  const material = materialOf(modelOf(request), line);
  const whole = stagesIn(material, line, inOrder(wish, false), { ...wish, leftOut: [] });
  const parted = whole.length < FEW;
  return stagesIn(material, line, inOrder(wish, parted), wish);
}

/** The things that have a stage in a line, left out or not, in the order in which they come. */
export const thingsOf = (
  request: LineRequest,
  line: LineNotes,
  wish: BuildUpWish = {},
): readonly StageThing[] => buildUp(request, line, { ...wish, leftOut: [] }).flatMap(({ things }) => things);
