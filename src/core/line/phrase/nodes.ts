import type { Contour } from '../../feel';
import { inReach } from '../demands';
import { notesPerSecond } from '../level';
import type { LineModel } from '../model';
import { type Tone, toneOf } from '../tones';
import type { Technique } from '../types';
import type { Cell, CellNote } from './cells';
import { type Ladder, offsetOf } from './ladder';
import { type NodeRules, ownCost } from './node-cost';
import type { Segment } from './segments';
import { bitOf, bitsOf, type Techniques } from './shown';
import { spell } from './spelling';

/** Which bar of which two- or four-bar model a node is. */
export interface Link {
  readonly model: string;
  readonly place: number;
  readonly last: boolean;
}

/** A contour with its pitches up to the leads: one choice of the search for one segment. */
export interface Node {
  readonly contour: Contour | null;
  /** The notes that have a pitch of their own. */
  readonly tones: readonly Tone[];
  /** When the notes begin and end that lead on, in ticks, and the beats that they last. */
  readonly leads: readonly CellNote[];
  readonly leadBeats: readonly number[];
  readonly first: number;
  /** It begins after a rest. */
  readonly late: boolean;
  readonly last: number;
  /** The last pitch before {@link last} that differs from it. */
  readonly before: number | null;
  /** Whether the node ends in a rest and needs no lead. */
  readonly rests: boolean;
  readonly mean: number;
  readonly top: number;
  /** Cost by itself, whatever the plan. */
  readonly cost: number;
  readonly link: Link | null;
  /** Its contour is lent by the plainest theme. */
  readonly borrowed: boolean;
}

/** A node without its tones: many are priced, few are played out. */
export interface Draw {
  readonly cell: Cell;
  readonly pitches: readonly number[];
  readonly cost: number;
  readonly link: Link | null;
  readonly borrowed: boolean;
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

/** Speed is counted by the bar: a part of one may be a little quicker where a chord needs a second note. */
const QUICKER = 1.4;

/** Whether a cell keeps to the level's speed and to the techniques that are switched on. */
export function isPlayable(
  model: LineModel,
  segment: Segment,
  cell: Cell,
  level: number,
  wide: boolean,
): boolean {
  const { bar } = segment;
  const { freedoms } = bar.demands;
  if (cell.level > level || !suits(segment, cell.contour)) return false;
  const share = (segment.end - segment.start) / bar.ticks;
  const speed = notesPerSecond(cell.notes.length / share, bar.metre, model.request.tempo);
  const most = model.limits.notesPerSecond * (wide && !segment.whole ? QUICKER : 1);
  if (speed > most && cell.notes.length > 1) return false;
  if (!freedoms.has('silent beat one') && segment.start === 0 && cell.notes[0]?.start !== 0) return false;
  return freedoms.has('long silence') || cell.longest * 2 < bar.ticks;
}

/** What a node costs that misses an aim of its bar: more than any music, so that it is taken only where nothing else is. */
export const MISSED = 60;

/** What it costs not to show what the plan hopes for in a bar. */
export const UNSHOWN = 7;

/** Techniques that a lead can bring. */
const BY_LEAD: readonly Technique[] = ['scale steps', 'approach note', 'anticipation'];

/** Which techniques a node may come to show, as far as it can tell before its leads are solved. */
function mayShow(
  segment: Segment,
  { contour, notes, longest }: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): Techniques {
  let found = 0;
  const classes = offsets.map((offset) => wrap(ladder.home + offset));
  if (new Set(classes.filter((one) => ladder.tones[one])).size > 1) found |= bitOf('chord tones');
  offsets.forEach((offset, index) => {
    const before = offsets[index - 1];
    if (before === undefined) return;
    if (Math.abs(offset - before) === 12) found |= bitOf('octave');
    const next = offsets[index + 1];
    const steps = Math.abs(offset - before) <= 2 && (next === undefined || Math.abs(next - offset) <= 2);
    if (!ladder.tones[classes[index] ?? 0] && steps) found |= bitOf('scale steps');
  });
  if (contour.leads > 0) for (const technique of BY_LEAD) found |= bitOf(technique);
  const silentOne = segment.start === 0 && notes[0]?.start !== 0;
  if (silentOne) found |= bitOf('beat one silent');
  if (longest * 2 >= segment.bar.ticks) found |= bitOf('long silences');
  return found;
}

/** What a silent beat one costs in a feel that sounds it, unless it is asked for. */
const SILENT_ONE = 12;

/** What a node costs by what is asked of its bar, by aims and by the plan. */
function demandCost(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
  asks: Techniques,
): number {
  const { demands } = segment.bar;
  const share = (segment.end - segment.start) / segment.bar.ticks;
  let cost = 0;
  const beats = (segment.end - segment.start) / segment.bar.beat;
  if (demands.density === 'sparse' && cell.notes.length >= Math.max(2, beats)) cost += MISSED;
  if (demands.density === 'busy' && cell.notes.length <= beats) cost += MISSED;
  if (cell.silence < demands.silence * (segment.end - segment.start)) cost += MISSED * share;
  const asked = asks | bitsOf(demands.wanted);
  const silentOne = segment.start === 0 && cell.notes[0]?.start !== 0;
  if (silentOne && !rules.restsOnOne && (asked & bitOf('beat one silent')) === 0) cost += SILENT_ONE;
  if (asked === 0) return cost;
  const shows = mayShow(segment, cell, ladder, offsets);
  for (const technique of demands.wanted) if ((shows & bitOf(technique)) === 0) cost += MISSED * share;
  for (let rest = asks & ~shows; rest !== 0; rest &= rest - 1) cost += UNSHOWN * share;
  return cost;
}

/** The nodes of a contour over a chord, priced: in every octave that the range holds. */
export function drawsOf(
  rules: NodeRules,
  segment: Segment,
  ladder: Ladder,
  cell: Cell,
  about: { readonly link: Link | null; readonly borrowed: boolean; readonly asks: Techniques },
): readonly Draw[] {
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
  const { link, borrowed, asks } = about;
  const cost =
    ownCost(rules, segment, cell, ladder, offsets) + demandCost(rules, segment, cell, ladder, offsets, asks);
  const draws: Draw[] = [];
  for (let anchor = ladder.home; anchor <= reach.high + 12; anchor += 12) {
    const pitches = offsets.map((offset) => anchor + offset);
    if (!pitches.every((pitch) => inReach(reach, pitch))) continue;
    const above = rules.manner === 'riff' ? Math.max(...pitches) - RIFF_TOP : 0;
    // Where an aim leaves no room for the root, the bar stands on the fifth.
    const unfounded =
      segment.bar.demands.rootless && !pitches.some((pitch) => wrap(pitch) === ladder.fifth) ? 12 : 0;
    draws.push({
      cell,
      pitches,
      cost: cost + unfounded + (above > 0 ? 1 + 0.5 * above : 0),
      link,
      borrowed,
    });
  }
  return draws;
}

/** The highest note of a riff, B2: above it the bass sounds thin (common practice, no source). */
export const RIFF_TOP = 47;

/** A draw with its tones. */
export function nodeOf(segment: Segment, ladder: Ladder, draw: Draw): Node {
  const { cell, pitches, cost, link, borrowed } = draw;
  const { contour, notes } = cell;
  const beat = segment.unit;
  const tones = pitches.flatMap((midi, place): Tone[] => {
    const note = notes[place];
    if (!note) return [];
    const name = spell(ladder, midi, pitches[place + 1] ?? null, null);
    return [toneOf(segment.bar, note.start, note.duration, midi, name)];
  });
  const last = pitches.at(-1) ?? 0;
  const lastNote = notes[pitches.length - 1];
  const leads = notes.slice(pitches.length);
  return {
    contour,
    tones,
    leads,
    leadBeats: leads.map((note) => note.duration / beat),
    first: pitches[0] ?? 0,
    late: (notes[0]?.start ?? 0) > segment.start,
    last,
    before: pitches.findLast((pitch) => pitch !== last) ?? null,
    rests:
      leads.length === 0 &&
      lastNote !== undefined &&
      lastNote.start + lastNote.duration <= segment.end - beat / 2,
    mean: pitches.reduce((sum, pitch) => sum + pitch, 0) / pitches.length,
    top: Math.max(...pitches),
    cost,
    link,
    borrowed,
  };
}

/** A node for notes that are given. */
export function givenNode(segment: Segment, tones: readonly Tone[]): Node {
  const [first] = tones;
  const last = tones.at(-1);
  const midis = tones.map(({ midi }) => midi);
  return {
    contour: null,
    tones,
    leads: [],
    leadBeats: [],
    first: first?.midi ?? -1,
    late: first === undefined || first.start > segment.start,
    last: last?.midi ?? -1,
    before: tones.findLast((tone) => tone.midi !== last?.midi)?.midi ?? null,
    rests: last === undefined || last.start + last.duration <= segment.end - segment.unit / 2,
    mean: midis.reduce((sum, midi) => sum + midi, 0) / Math.max(1, midis.length),
    top: Math.max(0, ...midis),
    cost: 0,
    link: null,
    borrowed: false,
  };
}
