import type { Contour } from '../../feel';
import { inReach } from '../demands';
import { notesPerSecond } from '../level';
import type { LineModel } from '../model';
import type { Technique } from '../types';
import type { Cell } from './cells';
import { type Ladder, offsetOf } from './ladder';
import type { Segment } from './segments';

/** Which bar of which two- or four-bar model a node is. */
export interface Link {
  readonly model: string;
  readonly place: number;
  readonly last: boolean;
}

/** A contour with its pitches up to the leads: one choice of the search for one segment. */
export interface Node {
  readonly cell: Cell;
  /** Pitches of the notes that have a role. */
  readonly pitches: readonly number[];
  readonly first: number;
  /** It begins after a rest. */
  readonly late: boolean;
  readonly last: number;
  /** The last pitch before {@link last} that differs from it. */
  readonly before: number | null;
  /** Whether the node ends in a rest and needs no lead. */
  readonly rests: boolean;
  /** Its last note is tied over into what comes: only in bars that are given. */
  readonly tied?: boolean;
  /** The beats that its leads last. */
  readonly leadBeats: readonly number[];
  readonly mean: number;
  readonly top: number;
  /** Cost by itself, whatever the plan. */
  readonly cost: number;
  readonly link: Link | null;
}

/** What the choice of nodes depends on beside the segment. */
export interface NodeRules {
  readonly level: number;
  readonly manner: 'walk' | 'riff';
  readonly blues: boolean;
  readonly longChromatics: boolean;
  /** Whether the feel leaves beat one empty by habit; elsewhere it is a last resort. */
  readonly restsOnOne: boolean;
}

const wrap = (midi: number): number => ((midi % 12) + 12) % 12;

/** Half steps above the anchor of the notes with a role; null where the chord lacks one. */
function offsetsOf(contour: Contour, ladder: Ladder, blues: boolean): number[] | null {
  const offsets: number[] = [];
  for (const role of contour.roles) {
    const offset = role.kind === 'repeat' ? (offsets.at(-1) ?? null) : offsetOf(ladder, role, blues);
    if (offset === null) return null;
    offsets.push(offset);
  }
  return offsets;
}

function suits(segment: Segment, contour: Contour): boolean {
  return contour.tags.every((tag) => {
    if (tag === 'goes on') return !segment.fresh;
    return tag === 'before same' ? !segment.changes : segment.changes;
  });
}

/** Whether a cell keeps to the level's speed and to the techniques that are switched on. */
export function isPlayable(model: LineModel, segment: Segment, cell: Cell, level: number): boolean {
  const { bar } = segment;
  const { freedoms } = bar.demands;
  if (cell.level > level || !suits(segment, cell.contour)) return false;
  const share = (segment.end - segment.start) / bar.ticks;
  const speed = notesPerSecond(cell.notes.length / share, bar.metre, model.request.tempo);
  if (speed > model.limits.notesPerSecond && cell.notes.length > 1) return false;
  if (!freedoms.has('silent beat one') && segment.start === 0 && cell.notes[0]?.start !== 0) return false;
  return freedoms.has('long silence') || cell.longest * 2 < bar.ticks;
}

/** What the pitches cost by themselves (hand-set; the reasons stand beside the terms). */
function ownCost(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number {
  const { beat } = segment.bar;
  let cost = 0;
  const { roles } = cell.contour;
  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of prices, read from top to bottom
  offsets.forEach((offset, index) => {
    const note = cell.notes[index];
    const role = roles[index];
    if (!note || !role) return;
    const pitchClass = wrap(ladder.home + offset);
    const beats = note.duration / beat;
    const before = offsets[index - 1];
    const next = offsets[index + 1];
    const interval = wrap(pitchClass - ladder.root);
    if (before !== undefined && role.kind !== 'repeat') {
      const leap = Math.abs(offset - before);
      // Two roles on one note, a tritone inside a bar, sevenths and sixths by leap.
      if (leap === 0 && roles[index - 1]?.kind !== role.kind) cost += 1.2;
      if (leap === 6 && !ladder.altered && !ladder.tones[wrap(ladder.home + before)]) cost += 1.2;
      else if (leap === 6) cost += 0.4;
      if (leap >= 10 && leap !== 12) cost += 1;
      else if (leap === 8 || leap === 9) cost += 0.4;
      const prior = offsets[index - 2];
      if (
        prior !== undefined &&
        leap >= 5 &&
        Math.abs(before - prior) >= 5 &&
        (offset - before) * (before - prior) > 0
      )
        cost += 0.7;
      // An augmented second between neighbours of the scale.
      const prevRole = roles[index - 1];
      if (
        leap === 3 &&
        role.kind === 'step' &&
        prevRole?.kind === 'step' &&
        Math.abs(role.step - prevRole.step) === 1
      )
        cost += 1.2;
    }
    if (!ladder.tones[pitchClass]) {
      const entered = before === undefined ? 9 : Math.abs(offset - before);
      const left = next === undefined ? (cell.contour.leads > 0 ? 2 : 3) : Math.abs(next - offset);
      const soft = interval === 9 && !ladder.minorThird;
      // Rule 1 and beyond: a long note outside the chord comes and goes by step; the major sixth is softer.
      if (beats >= 1)
        cost +=
          (entered > 2 ? (soft && entered <= 4 ? 0.5 : 2.2) : 0) +
          (left > 2 ? (soft && left <= 4 ? 0.4 : 1.2) : 0);
      else if (entered > 2 && left > 2) cost += 0.9;
      if (beats >= 1.5) cost += soft ? 0.8 : 2;
      // By leap in, by step out is an approach note: only where those are wanted.
      if (entered > 2 && !segment.bar.demands.freedoms.has('notes outside the scale')) cost += 1;
      const strong = (note.start / beat) % 2 === 0;
      if (strong && beats >= 0.5 && index > 0) cost += soft ? (rules.manner === 'riff' ? 0.15 : 0) : 0.9;
      // ♭6 on minor, ♭2, and the fourth over a major third grind.
      if (interval === 8 && !ladder.altered)
        cost += (beats <= 0.5 ? 0.4 : 0.9) * (rules.longChromatics ? 0.5 : 1);
      if (interval === 1) cost += beats <= 0.5 ? 0.3 : 1.3;
      if (interval === 5 && !ladder.minorThird && beats >= 1) cost += 0.5;
      if (interval === 11 && beats >= 1 && left > 1 && !rules.longChromatics) cost += 0.5;
    } else if (role.kind === 'colour') cost -= ladder.ownSeventh ? 0.45 : 0;
  });
  return cost + beginCost(rules, segment, cell, ladder, offsets) + shapeCost(rules, segment, cell, offsets);
}

/** How a chord begins: on its bass note, on the beat, unless it goes on. */
function beginCost(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number {
  const first = offsets[0] ?? 0;
  const onHome = wrap(first) === 0;
  let cost = !rules.restsOnOne && segment.start === 0 && cell.notes[0]?.start !== 0 ? 12 : 0;
  if (!onHome && segment.fresh) {
    const third = ladder.third !== null && wrap(first) === ladder.third;
    const silent = cell.notes[0]?.start !== segment.start;
    cost += (third ? 1.4 : 2) * (silent ? 0.5 : 1) + 0.6;
  }
  if (segment.opensSection && (!onHome || cell.notes[0]?.start !== 0)) cost += onHome ? 0.6 : 1.6;
  if (segment.half === 'second' && cell.notes[0]?.start !== segment.start && segment.fresh) cost += 1.2;
  if (rules.manner === 'walk' && segment.whole && segment.fresh && first < 0) cost += 1;
  return cost;
}

function shapeCost(rules: NodeRules, segment: Segment, cell: Cell, offsets: readonly number[]): number {
  let cost = 0;
  const { contour } = cell;
  if (!segment.whole) return cost;
  if (rules.manner === 'walk' && rules.level >= 2) {
    const at = (beats: number) =>
      offsets[cell.notes.findIndex((note) => note.start === beats * segment.bar.beat)];
    const [one, three] = [at(0), at(2)];
    if (one !== undefined && one === three) cost += 0.5;
  }
  if (rules.level >= 1 && offsets.length > 1 && offsets.every((offset) => offset === offsets[0]))
    cost += contour.leads === 0 ? 1 : 0.4;
  // Early lines are as rich as their level allows.
  if (rules.level <= 2) cost += 0.5 * Math.max(0, rules.level - cell.level);
  else if (cell.level < 2) cost += 0.5;
  return cost;
}

/** What a node costs that misses an aim of its bar: more than any music, so that it is taken only where nothing else is. */
const MISSED = 60;

/** Which techniques a node shows whatever its leads become. */
function shown(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): ReadonlySet<Technique> {
  const found = new Set<Technique>();
  const classes = offsets.map((offset) => wrap(ladder.home + offset));
  if (new Set(classes.filter((one) => ladder.tones[one])).size > 1) found.add('chord tones');
  offsets.forEach((offset, index) => {
    const before = offsets[index - 1];
    if (before === undefined) return;
    if (Math.abs(offset - before) === 12) found.add('octave');
    const next = offsets[index + 1];
    const steps = Math.abs(offset - before) <= 2 && (next === undefined || Math.abs(next - offset) <= 2);
    if (!ladder.tones[classes[index] ?? 0] && steps) found.add('scale steps');
  });
  const silentOne = segment.start === 0 && cell.notes[0]?.start !== 0;
  if ((silentOne && rules.restsOnOne) || cell.longest * 2 >= segment.bar.ticks) found.add('space');
  return found;
}

/** Techniques that a lead can bring. */
const BY_LEAD: ReadonlySet<Technique> = new Set(['scale steps', 'approach note', 'anticipation']);

function demandCost(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number {
  const { demands } = segment.bar;
  const share = (segment.end - segment.start) / segment.bar.ticks;
  let cost = 0;
  if (demands.density === 'sparse' && cell.notes.length >= Math.max(2, segment.beats)) cost += MISSED;
  if (demands.density === 'busy' && cell.notes.length <= segment.beats) cost += MISSED;
  if (cell.silence < demands.silence * (segment.end - segment.start)) cost += MISSED * share;
  if (demands.wanted.size === 0 && demands.hoped.size === 0) return cost;
  const shows = shown(rules, segment, cell, ladder, offsets);
  const misses = (technique: Technique) =>
    !shows.has(technique) && !(cell.contour.leads > 0 && BY_LEAD.has(technique));
  for (const technique of demands.wanted) if (misses(technique)) cost += MISSED * share;
  for (const technique of demands.hoped) if (misses(technique)) cost += 1.2 * share;
  return cost;
}

/** The nodes of a contour over a chord: in every octave that the range holds. */
export function nodesOf(
  rules: NodeRules,
  segment: Segment,
  ladder: Ladder,
  cell: Cell,
  link: Link | null,
): readonly Node[] {
  const offsets = offsetsOf(cell.contour, ladder, rules.blues);
  if (!offsets || offsets.length === 0 || !segment.stretch) return [];
  const { reach, freedoms } = segment.bar.demands;
  if (
    !freedoms.has('notes outside the chord') &&
    offsets.some((offset) => !ladder.tones[wrap(ladder.home + offset)])
  )
    return [];
  // Roots and fifths alone: over a slash chord a step of the book may be another note.
  const plain = [ladder.home, ...(rules.level >= 1 ? [ladder.root, ladder.fifth] : [])];
  if (rules.level <= 1 && offsets.some((offset) => !plain.includes(wrap(ladder.home + offset)))) return [];
  const leaps = offsets.some((offset, index) => Math.abs(offset - (offsets[index - 1] ?? offset)) === 12);
  if (leaps && !freedoms.has('octave leap')) return [];
  const own =
    ownCost(rules, segment, cell, ladder, offsets) + demandCost(rules, segment, cell, ladder, offsets);
  const nodes: Node[] = [];
  const { beat } = segment.bar;
  const lastNote = cell.notes[offsets.length - 1];
  const rests =
    cell.contour.leads === 0 &&
    lastNote !== undefined &&
    lastNote.start + lastNote.duration <= segment.end - beat / 2;
  for (let anchor = ladder.home; anchor <= reach.high + 12; anchor += 12) {
    const pitches = offsets.map((offset) => anchor + offset);
    if (!pitches.every((pitch) => inReach(reach, pitch))) continue;
    const last = pitches.at(-1) ?? 0;
    const top = Math.max(...pitches);
    nodes.push({
      cell,
      pitches,
      first: pitches[0] ?? 0,
      late: (cell.notes[0]?.start ?? 0) > segment.start,
      last,
      before: pitches.findLast((pitch) => pitch !== last) ?? null,
      rests,
      leadBeats: cell.notes.slice(offsets.length).map((note) => note.duration / beat),
      mean: pitches.reduce((sum, pitch) => sum + pitch, 0) / pitches.length,
      top,
      cost: own,
      link,
    });
  }
  return nodes;
}
