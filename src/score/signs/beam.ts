/**
 * Beams over notes with one head, as the engraving library sets them: the slope that costs least between half of what
 * the first and the last stem say and stems that are longer than usual.
 */
import { lineMark, type Mark, pathMark } from '../ink';
import { directionOf, farther, headMiddle, STEM, STEM_STROKE, stemAt } from './single';
import { STEM_ANCHOR } from './tidy';
import type { SignSpec } from './types';

/** A beam rises a staff space at most, however wide its leap, and is never steeper than this (T. Ross, 1970, from memory). */
const MOST_RISE = 10;
const STEEPEST = 0.18;
/** So many slopes are tried from the steepest down to the steepest up; what leaving half of the notes' own slope costs. */
const TRIED = 20;
const SLOPE_COST = 100;
const THICKNESS = 5;
/** From one beam to the next, in thicknesses. */
const APART = 1.5;
/** Length of a beam that joins nothing. */
const PARTIAL = 10;
/** A beam reaches this far over the last stem's middle on its right, and half a stem on its left. */
const OVERHANG = 1;

/** How far `length` units of a beam may rise at most for each of them. */
export const steepestOver = (length: number): number =>
  Math.min(STEEPEST, MOST_RISE / Math.max(1, Math.abs(length)));

interface Stem {
  readonly x: number;
  readonly value: number;
  /** Middle of its head, and where it would end alone. */
  readonly y: number;
  readonly tip: number;
}

/**
 * Stems and beams of notes that are joined.
 * @param specs two or more notes with one head and the same direction of the stem
 * @param centres the middles of their heads
 * @param dx all is drawn so far right of them
 */
export function singleBeam(
  specs: readonly SignSpec[],
  centres: readonly number[],
  dx: number,
): readonly Mark[] {
  const [lead] = specs;
  if (lead === undefined) return [];
  const up = directionOf(lead);
  const stems = specs.map((spec, index): Stem => {
    const y = headMiddle(spec.height);
    // Under a beam the stem of a far head reaches as far over the middle line as the head is too far from it.
    const length = STEM + 2 * farther(spec);
    return { x: stemAt(spec, centres[index] ?? 0), value: spec.value, y, tip: y - length * up };
  });
  const { slope, shift } = slopeOf(stems, up, steepestOver((centres.at(-1) ?? 0) - (centres[0] ?? 0)));
  const { x: begin, tip } = stems[0] ?? { x: 0, tip: 0 };
  const at = (x: number): number => tip + shift + (x - begin) * slope;
  const marks: Mark[] = stems.map(({ x, y }) =>
    lineMark('stem', x + dx, y - STEM_ANCHOR * up, x + dx, at(x) + (STEM_STROKE / 2) * up, STEM_STROKE),
  );
  for (let value = 8, level = 0; value <= 64; value *= 2, level += 1) {
    const down = level * THICKNESS * APART * up;
    for (const { from, to } of runsOf(stems, value)) {
      const [left, right] = [at(from) + down, at(to) + down];
      marks.push(
        pathMark(
          'beam',
          [
            { command: 'M', points: [from + dx, left] },
            { command: 'L', points: [from + dx, left + THICKNESS * up] },
            { command: 'L', points: [to + OVERHANG + dx, right + THICKNESS * up] },
            { command: 'L', points: [to + OVERHANG + dx, right] },
            { command: 'Z', points: [] },
          ],
          0,
        ),
      );
    }
  }
  return marks;
}

/** The slope of a beam over some stems, and how far it is moved for the shortest of them. */
function slopeOf(
  stems: readonly Stem[],
  up: 1 | -1,
  steepest: number,
): { readonly slope: number; readonly shift: number } {
  const [first, last] = [stems[0], stems.at(-1)];
  if (first === undefined || last === undefined) return { slope: 0, shift: 0 };
  const ideal = (last.tip - first.tip) / (last.x - first.x) / 2;
  const step = (2 * steepest) / TRIED;
  let best = { slope: 0, shift: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (let slope = -steepest; slope <= steepest; slope += step) {
    let shift = 0;
    let longer = 0;
    for (let index = 1; index < stems.length; index += 1) {
      const { x, tip } = stems[index] ?? first;
      const past = (tip - (first.tip + (x - first.x) * slope + shift)) * up;
      longer += past < 0 ? -past * index : past;
      if (past < 0) shift += past * up;
    }
    const cost = SLOPE_COST * Math.abs(ideal - slope) + Math.abs(longer);
    if (cost < least) {
      least = cost;
      best = { slope, shift };
    }
  }
  return best;
}

/** Where the beam of a value runs: from stem to stem of notes that are as short, and a little way from one that is alone. */
function runsOf(stems: readonly Stem[], value: number): readonly { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  stems.forEach((stem, index) => {
    if (stem.value < value) return;
    const [before, after] = [stems[index - 1], stems[index + 1]];
    const x = stem.x - STEM_STROKE / 2;
    const run = runs.at(-1);
    if (run !== undefined && before !== undefined && before.value >= value) run.to = x;
    else if (after !== undefined && after.value >= value) runs.push({ from: x, to: x });
    else runs.push({ from: x, to: x + (leadsOn(before, after, value) ? PARTIAL : -PARTIAL) });
  });
  return runs;
}

/** Whether a beam that joins nothing points to the note after it: where none is before it, or one of longer value. */
function leadsOn(before: Stem | undefined, after: Stem | undefined, value: number): boolean {
  if (before === undefined || after === undefined) return before === undefined;
  const [joinsBefore, joinsAfter] = [before.value >= value / 2, after.value >= value / 2];
  if (joinsBefore || joinsAfter) return !joinsBefore;
  return leadsOn(before, after, value / 2);
}
