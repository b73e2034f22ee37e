import { rememberedFor } from '../../base';
import type { Contour } from '../../feel';
import { inReach } from '../demands';
import { isAmongDegrees } from '../kept-degrees';
import type { Cell } from './cells';
import { type Ladder, offsetOf } from './ladder';
import { isPumped, lowCost, type NodeRules, ownCost } from './node-cost';
import type { Segment } from './segments';
import { bitOf, foreseenIn, type Techniques } from './shown';

/* How contours stand over chords: first over a kind of chord, wherever its root lies, then in the octaves of one. */

const wrap = (midi: number): number => ((midi % 12) + 12) % 12;

/** Half steps above the anchor of the notes with a role; null where the chord lacks one. */
function offsetsOf(contour: Contour, ladder: Ladder, blues: boolean): number[] | null {
  let last: number | null = null;
  const offsets = contour.roles.map((role) => {
    last = role.kind === 'repeat' ? last : offsetOf(ladder, role, blues);
    return last ?? Number.NaN;
  });
  return offsets.some(Number.isNaN) ? null : offsets;
}

/** What a node costs that misses an aim of its bar: more than any music, so that it is taken only where nothing else is. */
export const MISSED = 60;

/** Which techniques a node may come to show, as far as it can tell before its leads are solved. */
function mayShow(
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
  classes: readonly number[],
): Techniques {
  return foreseenIn(
    {
      offsets,
      classes,
      members: classes.map((one) => ladder.tones[one] === true),
      silentOne: segment.start === 0 && cell.notes[0]?.start !== 0,
      longestSilence: cell.longest / segment.bar.ticks,
    },
    cell.contour.leads > 0,
  );
}

/** What a silent beat one costs in a feel that sounds it, unless it is asked for. */
const SILENT_ONE = 12;

/** A contour over a chord: everything about it that holds whatever the plan asks. */
export interface Stance {
  /** In every octave that the range holds. */
  readonly places: readonly { readonly pitches: readonly number[]; readonly cost: number }[];
  /** What it costs unless beat one may be silent, and what it may come to show. */
  readonly silentOne: number;
  readonly shows: Techniques;
}

const NOTHING: Stance = { places: [], silentOne: 0, shows: 0 };

/** What a contour costs by the aims of its bar. */
function aimCost(segment: Segment, cell: Cell, shows: Techniques, classes: readonly number[]): number {
  const { demands } = segment.bar;
  const share = (segment.end - segment.start) / segment.bar.ticks;
  let cost = 0;
  const beats = (segment.end - segment.start) / segment.bar.beat;
  if (demands.density === 'sparse' && cell.notes.length >= Math.max(2, beats)) cost += MISSED;
  if (demands.density === 'busy' && cell.notes.length <= beats) cost += MISSED;
  if (cell.silence < demands.silence * (segment.end - segment.start)) cost += MISSED * share;
  for (const technique of demands.wanted) if ((shows & bitOf(technique)) === 0) cost += MISSED * share;
  const { stretch } = segment;
  if (demands.degrees !== null && stretch !== null) {
    const others = classes.filter((one) => !isAmongDegrees(demands, stretch, wrap(one - stretch.rootClass)));
    cost += MISSED * others.length;
  }
  return cost;
}

const classesOf = (ladder: Ladder, offsets: readonly number[]): readonly number[] =>
  offsets.map((offset) => wrap(ladder.home + offset));

/** Whether the techniques and the level of a bar hold the notes of a contour. */
function isAllowed(
  { level }: NodeRules,
  { bar }: Segment,
  ladder: Ladder,
  offsets: readonly number[],
  classes: readonly number[],
): boolean {
  const { freedoms } = bar.demands;
  if (!freedoms.has('notes outside the chord') && classes.some((one) => !ladder.tones[one])) return false;
  // Roots and fifths alone: over a slash chord a step of the book may be another note.
  const plain = [ladder.home, ...(level >= 1 ? [ladder.root, ladder.fifth] : [])];
  if (level <= 1 && classes.some((one) => !plain.includes(one))) return false;
  const leaps = offsets.some((offset, index) => Math.abs(offset - (offsets[index - 1] ?? offset)) === 12);
  return !leaps || freedoms.has('octave leap');
}

/** A contour over chords of one kind, wherever their roots lie: what it costs and may show before it has an octave. */
export interface Shape {
  /** Half steps above the anchor. */
  readonly offsets: readonly number[];
  readonly cost: number;
  readonly shows: Techniques;
}

const places = Array.from({ length: 12 }, (_, place) => place);

/** What a chord is beside where its root lies, in text. */
const kindOf = rememberedFor((ladder: Ladder): string => {
  const { home, steps, colour, ownSeventh, third, minorThird, tones, root, fifth, altered } = ladder;
  const members = places.filter((place) => tones[wrap(home + place)]);
  const over = [wrap(root - home), fifth === null ? null : wrap(fifth - home)];
  return JSON.stringify([steps, colour, ownSeventh, third, minorThird, members, over, altered]);
});

/** Everything about a segment and what may be played in it that {@link shapeOf} depends on, in text. */
export function shapeKey(rules: NodeRules, segment: Segment, ladder: Ladder): string {
  const { bar, stretch, start, end, unit, whole, half, fresh, changes, opensSection } = segment;
  const { demands, ticks, beat } = bar;
  // The degrees that an aim keeps a bar to are counted in the chord's scale and in its key's.
  const kept = demands.degrees && stretch ? JSON.stringify([stretch.steps, stretch.keySteps]) : '';
  const place = `${ticks} ${beat} ${start} ${end} ${unit} ${whole} ${half} ${fresh} ${changes} ${opensSection}`;
  return `${JSON.stringify(rules)} ${kindOf(ladder)} ${demands.key} ${place} ${kept}`;
}

/** A contour over a chord, wherever its root lies; null where the chord, the level or the techniques do not hold it. */
export function shapeOf(rules: NodeRules, segment: Segment, ladder: Ladder, cell: Cell): Shape | null {
  const offsets = offsetsOf(cell.contour, ladder, rules.blues);
  if (!offsets || offsets.length === 0 || !segment.stretch) return null;
  const classes = classesOf(ladder, offsets);
  if (!isAllowed(rules, segment, ladder, offsets, classes)) return null;
  const shows = mayShow(segment, cell, ladder, offsets, classes);
  const cost = ownCost(rules, segment, cell, ladder, offsets) + aimCost(segment, cell, shows, classes);
  return { offsets, cost, shows };
}

/** The pitches of a contour over a chord, priced. */
export function stanceOf(
  shape: Shape | null,
  rules: NodeRules,
  segment: Segment,
  ladder: Ladder,
  cell: Cell,
): Stance {
  if (!shape) return NOTHING;
  const { offsets, cost, shows } = shape;
  const { reach, wanted, rootless } = segment.bar.demands;
  const found: { pitches: readonly number[]; cost: number }[] = [];
  for (let anchor = ladder.home; anchor <= reach.high + 12; anchor += 12) {
    if (!offsets.every((offset) => inReach(reach, anchor + offset))) continue;
    const pitches = offsets.map((offset) => anchor + offset);
    const above = rules.manner === 'riff' ? topOf(pitches) - RIFF_TOP : 0;
    // Where an aim leaves no room for the root, the bar stands on the fifth.
    const unfounded = rootless && !pitches.some((pitch) => wrap(pitch) === ladder.fifth) ? 12 : 0;
    const low = lowCost(cell, ladder, segment.unit, pitches);
    found.push({ pitches, cost: cost + unfounded + low + (above > 0 ? 1 + 0.5 * above : 0) });
  }
  const silent = segment.start === 0 && cell.notes[0]?.start !== 0;
  const minded = silent && !rules.restsOnOne && !wanted.has('beat one silent');
  return { places: found, silentOne: minded ? SILENT_ONE : 0, shows };
}

/** The highest note of a riff, B2: above it the bass sounds thin (common practice, no source). */
export const RIFF_TOP = 47;

/** The highest of some pitches; of pumped octaves the ear follows the low notes. */
export function topOf(pitches: readonly number[]): number {
  if (!isPumped(pitches)) return Math.max(...pitches);
  return Math.max(...pitches.filter((pitch, index) => index === 0 || pitch - 12 !== pitches[index - 1]));
}
