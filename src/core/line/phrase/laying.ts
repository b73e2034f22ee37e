import { isCompound, remembered, rememberedAmong, rememberedFor } from '../../base';
import type { Contour, Feel, MetrePhrases } from '../../feel';
import type { LineModel } from '../model';
import { firstAlike } from './alike';
import { type Cell, cellOf } from './cells';
import type { Ladder } from './ladder';
import type { NodeRules } from './node-cost';
import { type Body, bodyOf, type Draw, isPlayable, type Node } from './nodes';
import type { Segment } from './segments';
import { type Shape, type Stance, shapeKey, shapeOf, stanceOf } from './stances';

/* How contours become notes in the segments of a request; what is equal in equal segments is worked out once. */

/** Everything about a segment that its choices depend on, in text. */
function contextOf({ bar, stretch, start, end, fresh, changes, opensSection }: Segment): string {
  const { tonic, mode } = stretch?.key ?? { tonic: { letter: 'C', alteration: 0 }, mode: '' };
  const key = `${tonic.letter}${tonic.alteration}${mode}`;
  return `${stretch?.label} ${key} ${bar.demands.key} ${bar.ticks} ${bar.beat} ${start} ${end} ${fresh} ${changes} ${opensSection}`;
}

/** The rhythm of a cell in text. */
const rhythmOf = rememberedFor(({ notes }: Cell): string =>
  notes.map(({ start, duration }) => `${start}:${duration}`).join(' '),
);

/** More than a bar has chords: numbers below it are joined into one. */
const MOST_STRETCHES = 1024;

/** A contour laid into a segment, over its chord. */
interface Laid {
  readonly cell: Cell;
  readonly stance: Stance;
}

/** By feel and by place and length in a bar: the books stay as they are, so what a request lays out others find. */
const cellsOf = new WeakMap<Feel['bassRole'], Map<string, WeakMap<Contour, Cell | null>>>();

/** By feel and by kind of chord: a chord that was met in another key, or by another request, is known by its kind. */
const shapesOf = new WeakMap<Feel['bassRole'], Map<string, Map<Contour, Shape | null>>>();

/** Kinds of chords in their places that are remembered for a feel: more than the charts of a lesson have. */
const MOST_KINDS = 100;

/** Lays contours into segments, over their chords. */
export interface Laying {
  /** A number for everything about a segment that its choices depend on. */
  contextIn(segment: Segment): number;
  /** Lays contours into a segment; null where one is not to be played there. */
  layIn(segment: Segment, ladder: Ladder): (contour: Contour) => Laid | null;
  /** How cells stand over the chord of a segment. */
  stancesIn(segment: Segment, ladder: Ladder): (cell: Cell) => Stance;
  /** What a draw sounds like: the same for all that sound alike in equal segments, so that it is finished once. */
  bodyIn(segment: Segment, ladder: Ladder, draw: Draw): Body;
  /** The node of a draw. */
  nodeIn(segment: Segment, ladder: Ladder, draw: Draw): Node;
}

/** The laying of a request: what was laid once is remembered. */
export function layingFor(model: LineModel, rules: NodeRules, metre: MetrePhrases): Laying {
  const { level } = model.request;
  const { bassRole } = model.request.feel;
  const bookTriple = isCompound(metre.metre);
  const contexts = new WeakMap<Segment, number>();
  const numbers = new Map<string, number>();
  const stances = new Map<number, (cell: Cell) => Stance>();
  /** By the pitches of a draw, which it shares with all of its contour in equal segments. */
  const bodies = new Map<readonly number[], Body>();
  const sounds = new Map<number, Map<string, Body>>();
  const laidIn = new Map<number, Map<Contour, Laid | null>>();

  function layIn(segment: Segment, ladder: Ladder): (contour: Contour) => Laid | null {
    // How many notes may be played depends on how many chords share the bar.
    const key = contextIn(segment) * MOST_STRETCHES + segment.bar.stretches.length;
    const table = remembered(laidIn, key, () => new Map<Contour, Laid | null>());
    return (contour) =>
      remembered(table, contour, () => {
        const cell = cellsIn(segment)(contour);
        return cell && isPlayable(model, segment, cell, level)
          ? { cell, stance: stancesIn(segment, ladder)(cell) }
          : null;
      });
  }

  function contextIn(segment: Segment): number {
    return remembered(contexts, segment, () => remembered(numbers, contextOf(segment), () => numbers.size));
  }

  const stancesIn = (segment: Segment, ladder: Ladder): ((cell: Cell) => Stance) =>
    remembered(stances, contextIn(segment), () => stancesOver(segment, ladder));

  function stancesOver(segment: Segment, ladder: Ladder): (cell: Cell) => Stance {
    const table = new Map<Contour, Stance>();
    const kinds = remembered(shapesOf, bassRole, () => new Map<string, Map<Contour, Shape | null>>());
    const shapes = rememberedAmong(kinds, MOST_KINDS, shapeKey(rules, segment, ladder), () => new Map());
    return (cell) => {
      const contour = firstAlike(cell.contour);
      return remembered(table, contour, () => {
        const shape = remembered(shapes, contour, () => shapeOf(rules, segment, ladder, cell));
        return stanceOf(shape, rules, segment, ladder, cell);
      });
    };
  }

  function nodeIn(segment: Segment, ladder: Ladder, draw: Draw): Node {
    const body = bodyIn(segment, ladder, draw);
    const { contour } = draw.cell;
    return { ...body, contour, cost: draw.cost, link: draw.link, borrowed: draw.borrowed };
  }

  function bodyIn(segment: Segment, ladder: Ladder, draw: Draw): Body {
    const { cell, pitches } = draw;
    return remembered(bodies, pitches, () => {
      const table = remembered(sounds, contextIn(segment), () => new Map<string, Body>());
      let text = rhythmOf(cell);
      for (const pitch of pitches) text += ` ${pitch}`;
      return remembered(table, text, () => bodyOf(segment, ladder, draw));
    });
  }

  function cellsIn(segment: Segment): (contour: Contour) => Cell | null {
    const { bar, start, end, unit, ladder } = segment;
    const triple = isCompound(bar.metre) && !bookTriple;
    const early = bassRole.seventhsEarly && ladder?.ownSeventh === true;
    const key = `${start} ${end} ${unit} ${bar.metre.count}/${bar.metre.unit} ${bar.ticks} ${triple} ${early}`;
    const tables = remembered(cellsOf, bassRole, () => new Map<string, WeakMap<Contour, Cell | null>>());
    const table = remembered(tables, key, () => new WeakMap<Contour, Cell | null>());
    return (contour) => remembered(table, contour, () => cellOf(segment, contour, triple, bassRole));
  }

  return { contextIn, layIn, stancesIn, bodyIn, nodeIn };
}
