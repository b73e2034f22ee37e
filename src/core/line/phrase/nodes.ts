import type { Contour } from '../../feel';
import { notesPerSecond } from '../level';
import type { LineModel } from '../model';
import { type Tone, toneOf } from '../tones';
import type { Cell, CellNote } from './cells';
import type { Ladder } from './ladder';
import type { Segment } from './segments';
import { bitOf, type Techniques, unshownCost } from './shown';
import { spell } from './spelling';
import { type Stance, topOf } from './stances';

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
