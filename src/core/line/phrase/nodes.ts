import type { Contour } from '../../feel';
import { inReach } from '../demands';
import { isAmongDegrees } from '../kept-degrees';
import { notesPerSecond } from '../level';
import type { LineModel } from '../model';
import { type Tone, toneOf } from '../tones';
import type { Cell, CellNote } from './cells';
import { type Ladder, offsetOf } from './ladder';
import { isPumped, lowCost, type NodeRules, ownCost } from './node-cost';
import type { Segment } from './segments';
import { bitOf, foreseenIn, type Techniques, unshownCost } from './shown';
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
    // A section opens on its root, whatever sounded before it.
    if (tag === 'goes on') return !segment.fresh && !segment.opensSection;
    return tag === 'before same' ? !segment.changes : segment.changes;
  });
}

/**
 * How many notes a segment may have at the level's speed, which is counted by the bar: the first part of one may have what
 * the others leave, as a chord needs a second note sooner than the one after it.
 */
function mostNotes(model: LineModel, { bar, start, end, whole }: Segment): number {
  const all = model.limits.notesPerSecond / notesPerSecond(1, bar.metre, model.request.tempo) + ROUNDING;
  const own = Math.floor((all * (end - start)) / bar.ticks);
  if (whole || start > 0) return Math.max(1, own);
  const left = bar.ticks - end;
  const parts = Math.max(bar.stretches.length - 1, Math.ceil(left / (2 * bar.beat)));
  const others = Math.max(parts, Math.floor((all * left) / bar.ticks));
  return Math.max(1, own, Math.floor(all) - others);
}

/** Notes are counted in shares of bars. */
const ROUNDING = 1e-9;

/** Whether a cell keeps to the level's speed and to the techniques that are switched on. */
export function isPlayable(model: LineModel, segment: Segment, cell: Cell, level: number): boolean {
  const { bar } = segment;
  const { freedoms } = bar.demands;
  if (cell.level > level || !suits(segment, cell.contour)) return false;
  if (cell.notes.length > mostNotes(model, segment)) return false;
  if (!freedoms.has('silent beat one') && segment.start === 0 && cell.notes[0]?.start !== 0) return false;
  return freedoms.has('long silence') || cell.longest * 2 < bar.ticks;
}

/** What a node costs that misses an aim of its bar: more than any music, so that it is taken only where nothing else is. */
export const MISSED = 60;

/** Which techniques a node may come to show, as far as it can tell before its leads are solved. */
function mayShow(segment: Segment, cell: Cell, ladder: Ladder, offsets: readonly number[]): Techniques {
  const classes = classesOf(ladder, offsets);
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
): boolean {
  const { freedoms } = bar.demands;
  const classes = classesOf(ladder, offsets);
  if (!freedoms.has('notes outside the chord') && classes.some((one) => !ladder.tones[one])) return false;
  // Roots and fifths alone: over a slash chord a step of the book may be another note.
  const plain = [ladder.home, ...(level >= 1 ? [ladder.root, ladder.fifth] : [])];
  if (level <= 1 && classes.some((one) => !plain.includes(one))) return false;
  const leaps = offsets.some((offset, index) => Math.abs(offset - (offsets[index - 1] ?? offset)) === 12);
  return !leaps || freedoms.has('octave leap');
}

/** The pitches of a contour over a chord, priced. */
export function stanceOf(rules: NodeRules, segment: Segment, ladder: Ladder, cell: Cell): Stance {
  const offsets = offsetsOf(cell.contour, ladder, rules.blues);
  if (!offsets || offsets.length === 0 || !segment.stretch) return NOTHING;
  if (!isAllowed(rules, segment, ladder, offsets)) return NOTHING;
  const { reach, wanted, rootless } = segment.bar.demands;
  const shows = mayShow(segment, cell, ladder, offsets);
  const cost =
    ownCost(rules, segment, cell, ladder, offsets) +
    aimCost(segment, cell, shows, classesOf(ladder, offsets));
  const places: { pitches: readonly number[]; cost: number }[] = [];
  for (let anchor = ladder.home; anchor <= reach.high + 12; anchor += 12) {
    const pitches = offsets.map((offset) => anchor + offset);
    if (!pitches.every((pitch) => inReach(reach, pitch))) continue;
    const above = rules.manner === 'riff' ? topOf(pitches) - RIFF_TOP : 0;
    // Where an aim leaves no room for the root, the bar stands on the fifth.
    const unfounded = rootless && !pitches.some((pitch) => wrap(pitch) === ladder.fifth) ? 12 : 0;
    const low = lowCost(cell, ladder, segment.unit, pitches);
    places.push({ pitches, cost: cost + unfounded + low + (above > 0 ? 1 + 0.5 * above : 0) });
  }
  const silent = segment.start === 0 && cell.notes[0]?.start !== 0;
  const minded = silent && !rules.restsOnOne && !wanted.has('beat one silent');
  return { places, silentOne: minded ? SILENT_ONE : 0, shows };
}

/** The choices that a contour gives where the plan asks for something. */
export function drawsOf(
  segment: Segment,
  cell: Cell,
  { places, silentOne, shows }: Stance,
  about: { readonly link: Link | null; readonly borrowed: boolean; readonly asks: Techniques },
): readonly Draw[] {
  const { link, borrowed, asks } = about;
  const share = (segment.end - segment.start) / segment.bar.ticks;
  const unshown = share * unshownCost(asks, shows);
  const asked = unshown + ((asks & bitOf('beat one silent')) === 0 ? silentOne : 0);
  return places.map(({ pitches, cost }) => ({ cell, pitches, cost: cost + asked, link, borrowed }));
}

/** The highest note of a riff, B2: above it the bass sounds thin (common practice, no source). */
export const RIFF_TOP = 47;

/** The highest of some pitches; of pumped octaves the ear follows the low notes. */
function topOf(pitches: readonly number[]): number {
  if (!isPumped(pitches)) return Math.max(...pitches);
  return Math.max(...pitches.filter((pitch, index) => index === 0 || pitch - 12 !== pitches[index - 1]));
}

/** A node before it is known what it costs and where it comes from. */
export type Body = Node & { readonly cost: 0; readonly link: null; readonly borrowed: false };

/** A draw with its tones. */
export function bodyOf(segment: Segment, ladder: Ladder, { cell, pitches }: Draw): Body {
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
    top: topOf(pitches),
    cost: 0,
    link: null,
    borrowed: false,
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
