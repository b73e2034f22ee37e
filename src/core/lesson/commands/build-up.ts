import type { LineNote } from '../../base';
import { barSignature } from '../../chart';
import { MOVABLE_THINGS, type MovableThing, type StageThing } from '../../line';
import { readPiece } from '../request';
import { type BuildUp, type Lesson, MOST_STAGE_ROUNDS } from '../types';
import { changeLine } from './piece';

/** A build-up as it comes onto the sheet: every stage in the usual order, each played twice. */
export const USUAL_BUILD_UP: BuildUp = {
  view: 'in one place',
  order: [],
  leftOut: [],
  rounds: 2,
  edits: [],
};

/** Puts a line's build-up on the sheet, changes it, or with null takes it off, changes by hand included. */
export const setBuildUp = (lesson: Lesson, pieceId: string, change: Partial<BuildUp> | null): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const { buildUp, ...rest } = piece;
    if (change === null) return buildUp === undefined ? piece : rest;
    const changed = { ...(buildUp ?? USUAL_BUILD_UP), ...change };
    const rounds = Math.min(MOST_STAGE_ROUNDS, Math.max(1, Math.round(changed.rounds)));
    return { ...rest, buildUp: { ...changed, rounds } };
  });

/** Lets a thing come one place earlier (−1) or later (+1) in the build-up; at either end nothing changes. */
export const moveThing = (lesson: Lesson, pieceId: string, thing: MovableThing, by: -1 | 1): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const { buildUp = USUAL_BUILD_UP } = piece;
    const order = [...buildUp.order, ...MOVABLE_THINGS.filter((other) => !buildUp.order.includes(other))];
    const from = order.indexOf(thing);
    const other = order[from + by];
    if (other === undefined) return piece;
    const moved = order.map((each, index) => (index === from ? other : index === from + by ? thing : each));
    return { ...piece, buildUp: { ...buildUp, order: moved } };
  });

/**
 * Stores how a bar of a stage differs from the derived one; null takes the change back.
 * @param stage - the last of the things that the stage adds
 * @param barIndex - index of the written bar
 */
export const editStage = (
  lesson: Lesson,
  pieceId: string,
  stage: StageThing,
  barIndex: number,
  notes: readonly LineNote[] | null,
): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const { buildUp } = piece;
    const bar = piece.bars[barIndex];
    const written = readPiece(piece).chart.bars[barIndex];
    if (buildUp === undefined || bar === undefined || written === undefined) return piece;
    const others = buildUp.edits.filter((edit) => edit.stage !== stage || edit.bar !== bar.id);
    const edits =
      notes === null ? others : [...others, { stage, bar: bar.id, harmony: barSignature(written), notes }];
    return { ...piece, buildUp: { ...buildUp, edits } };
  });
