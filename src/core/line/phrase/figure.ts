import { remembered } from '../../base';
import type { Contour, PhraseModel } from '../../feel';
import { directionsOf, heightsOf } from './motif';

/**
 * A figure of two bars over a form of eight: it is stated, answered, comes back changed in one thing, and closes (common
 * practice, no source). Forms of other lengths state it once and then let it come back in every phrase of four.
 */
export type FigurePart = 'statement' | 'answer' | 'return' | 'close';

/** The two bars that are stated: written as one in the book, or a statement and an answer that suit each other. */
export interface Figure {
  readonly first: Contour;
  readonly second: Contour | null;
  readonly model: PhraseModel | null;
}

/** What a bar makes of a bar of the figure. */
export type Treatment = 'as stated' | 'answered' | 'changed' | 'closing';

/** What a bar of the plan has to do with the figure. */
export interface FigureTask {
  readonly contour: Contour;
  readonly treatment: Treatment;
}

/** How a contour goes with a bar of the figure. */
export type Likeness = 'same' | 'other tail' | 'lifted' | 'rhythm' | 'other';

/**
 * What the plan pays for a contour's likeness to the figure (hand-set). A return over the statement's own chord keeps
 * rhythm and head and changes the tail, or it would be pasted; an answer is no second statement.
 */
export const LIKENESS_WORTH: Readonly<Record<Treatment, Readonly<Record<Likeness, number>>>> = {
  'as stated': { same: 2.6, 'other tail': 1.5, lifted: 0.8, rhythm: 0.6, other: 0 },
  answered: { same: -1.4, 'other tail': 0.8, lifted: 0.4, rhythm: 0.6, other: 0 },
  changed: { same: -0.6, 'other tail': 2.6, lifted: 1.6, rhythm: 1, other: 0 },
  closing: { same: -0.4, 'other tail': 1.2, lifted: 0.4, rhythm: 0.6, other: 0 },
};

/** Which part of the form a bar is, for the figure. */
export interface FigurePlace {
  readonly part: FigurePart;
  /** 0 in the first of the two bars of the part, 1 in the second. */
  readonly of: 0 | 1;
  /** It stands over the same chord as the bar that it answers or brings back. */
  readonly again: boolean;
}

/** What a bar has to do with the figure; null where nothing, as in the last bar, which is a turnaround. */
export function taskOf(figure: Figure | null, place: FigurePlace | null, crest: boolean): FigureTask | null {
  const contour = place && figure ? (place.of === 0 ? figure.first : figure.second) : null;
  if (!place || !contour) return null;
  switch (place.part) {
    case 'statement':
      return { contour, treatment: 'as stated' };
    case 'answer':
      return { contour, treatment: 'answered' };
    case 'return':
      return { contour, treatment: place.again || crest ? 'changed' : 'as stated' };
    case 'close':
      return place.of === 0 ? { contour, treatment: 'closing' } : null;
  }
}

const startsOf = ({ beats }: Contour): readonly number[] => beats.map(({ start }) => start);

const equal = (one: readonly number[], other: readonly number[]): boolean =>
  one.length === other.length && one.every((value, index) => value === other[index]);

/** A head has two notes at least, and all that begin in the first half of the bar. */
const LEAST_HEAD = 2;

function likenessBetween(figure: Contour, contour: Contour): Likeness {
  const [starts, others] = [startsOf(figure), startsOf(contour)];
  const [heights, otherHeights] = [heightsOf(figure), heightsOf(contour)];
  const sameRhythm = equal(starts, others);
  if (sameRhythm && figure.leads === contour.leads && equal(heights, otherHeights)) return 'same';
  const last = figure.beats.at(-1);
  const half = last ? Math.ceil(last.start + last.duration) / 2 : 0;
  const head = Math.max(LEAST_HEAD, starts.filter((start) => start < half).length);
  const kept =
    heights.length >= LEAST_HEAD &&
    equal(starts.slice(0, head), others.slice(0, head)) &&
    equal(heights.slice(0, head), otherHeights.slice(0, head));
  if (kept) return 'other tail';
  if (!sameRhythm) return 'other';
  const shift = (otherHeights[0] ?? 0) - (heights[0] ?? 0);
  return shift >= 4 && equal(directionsOf(heights), directionsOf(otherHeights)) ? 'lifted' : 'rhythm';
}

/** The books stay as they are, so two contours are compared once. */
const compared = new WeakMap<Contour, WeakMap<Contour, Likeness>>();

/** How a contour goes with a bar of the figure: the same, the same head, the same shape higher, or its rhythm. */
export const likenessOf = (figure: Contour, contour: Contour): Likeness =>
  remembered(
    remembered(compared, figure, () => new WeakMap<Contour, Likeness>()),
    contour,
    () => likenessBetween(figure, contour),
  );
