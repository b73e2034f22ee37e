import { remembered, SIGNS, type Sign } from '../../core/base';
import { boxOf, type Mark } from '../ink';
import { textWidth } from '../metrics/measure';
import type { ContentBar, ContentEvent } from '../notation/types';
import type { SignSpec } from '../signs/types';
import { ghostBrackets } from './ghosts';
import { levelBox } from './levels';
import type { Column } from './spacing';
import { HALF_HEAD, type Style } from './style';

/** White between two signs on the staff; one that keeps the second of them over or under another may pass it. */
const BESIDE = 3;
const OVER = 1.5;
/** White between two heads or rests, whatever their height, and beside lines and curves. */
const APART = 4;
/** White beside the texts of a column. */
const TEXT_CLEARANCE = 2.5;
/** From the middle of a head that is tied on to the next, or to the bar line: less, and the tie would be a dash. */
const TIE_ROOM = 25;
const TIE_OUT_ROOM = 20;
/** Left of the ink of a head into which a tie leads that begins elsewhere. */
export const TIE_IN_ROOM = 17;
const FLAG_ROOM = 10;
/** From a head or a fret to the one that is slid to; and for a short line beside it. */
const SLIDE_ROOM = 12;
const CURVE_ROOM = 6;
const STUB_ROOM = 15;
/** Least length of a hairpin. */
const HAIRPIN_ROOM = 16;

/** What shares a row can touch; white that its pieces keep between them. */
const ROWS = {
  signs: BESIDE,
  heads: APART,
  ties: 0,
  'lines out': APART,
  'lines in': APART,
  'stems of a tab': APART,
  frets: 0,
  degrees: 0,
  fingers: 0,
  counting: 0,
  dynamics: 0,
} as const;

/** How far something reaches from its column's middle. */
interface Piece {
  readonly row: keyof typeof ROWS;
  /** Left out where nothing on that side is bounded by it. */
  readonly left?: number;
  readonly right?: number;
  /** Where in its row it stands; left out where it may pass nothing over or under. */
  readonly top?: number;
  readonly bottom?: number;
}

/** A bar of one staff, its signs drawn. */
export interface DrawnBar {
  readonly content: ContentBar;
  /** One entry an event. */
  readonly specs: readonly SignSpec[];
  readonly ink: readonly (readonly Mark[])[];
  readonly beamed: readonly boolean[];
}

/** The columns of a bar on one staff, or on two that are spaced together. */
export function columnsOf(staves: readonly DrawnBar[], style: Style): readonly Column[] {
  const pieces = staves.map((bar) => piecesOf(bar, style));
  const ticks = [...new Set(pieces.flatMap((staff) => [...staff.keys()]))].sort((a, b) => a - b);
  const at = ticks.map((tick) => pieces.map((staff) => staff.get(tick) ?? []));
  const places = leastPlaces(at);
  return ticks.map((tick, index) => {
    const all = at[index]?.flat() ?? [];
    const next = places[index + 1];
    return {
      tick,
      left: Math.max(0, ...all.map(({ left = 0 }) => left)),
      right: Math.max(0, ...all.map(({ right = 0 }) => right)),
      ...(next === undefined ? {} : { toNext: next - (places[index] ?? 0) }),
    };
  });
}

/** As many columns before its own a piece looks for what it could touch. */
const LOOKS_BACK = 3;
/** Columns without ink have some room, too. */
const LEAST_ROOM = 4;

/** Where columns stand as close together as their pieces allow, one list of them a staff. */
function leastPlaces(columns: readonly (readonly (readonly Piece[])[])[]): readonly number[] {
  const places: number[] = [];
  columns.forEach((column, index) => {
    let place = index === 0 ? 0 : (places[index - 1] ?? 0) + LEAST_ROOM;
    for (let before = Math.max(0, index - LOOKS_BACK); before < index; before += 1) {
      const room = Math.max(...column.map((staff, of) => roomBetween(columns[before]?.[of] ?? [], staff)));
      place = Math.max(place, (places[before] ?? 0) + room);
    }
    places.push(place);
  });
  return places;
}

/** From the middle of one column to that of another behind it, so that nothing touches. */
function roomBetween(one: readonly Piece[], other: readonly Piece[]): number {
  let room = 0;
  for (const { row, right, top, bottom } of one) {
    if (right === undefined) continue;
    for (const piece of other) {
      if (piece.row !== row || piece.left === undefined) continue;
      const passes =
        (bottom !== undefined && piece.top !== undefined && bottom + OVER <= piece.top) ||
        (top !== undefined && piece.bottom !== undefined && piece.bottom + OVER <= top);
      if (!passes) room = Math.max(room, right + ROWS[row] + piece.left);
    }
  }
  return room;
}

/** What stands at each moment of a bar. */
function piecesOf({ content, specs, ink, beamed }: DrawnBar, style: Style): ReadonlyMap<number, Piece[]> {
  const { options, sizes } = style;
  const pieces = new Map<number, Piece[]>([[0, []]]);
  const add = (tick: number, ...more: readonly Piece[]): void => {
    remembered(pieces, tick, () => []).push(...more);
  };
  content.events.forEach((event, index) => {
    const marks = event.wholeBar ? [] : (ink[index] ?? []);
    const stem = beamed[index] === true ? specs[index]?.stem : undefined;
    add(event.start, ...textPieces(event, style), ...linePieces(event, marks, style));
    if (options.parts === 'tab') add(event.start, ...tabPieces(event, marks));
    else add(event.start, ...signPieces(marks), ...ghostPieces(event));
    if (options.parts !== 'tab' && stem !== undefined) add(event.start, beamedStem(stem, marks));
  });
  for (const { tick } of content.chords) add(tick);
  for (const { tick, level, hairpin } of content.dynamics) {
    if (tick >= content.length) continue;
    const box = levelBox(level);
    const room = hairpin === null ? TEXT_CLEARANCE : HAIRPIN_ROOM;
    add(tick, { row: 'dynamics', left: TEXT_CLEARANCE - box.left, right: box.right + room });
  }
  if (options.counting)
    for (const { tick, text } of content.counts) add(tick, ...centred('counting', text, sizes.counting));
  return pieces;
}

/** A text in the middle of its column. */
function centred(row: Piece['row'], text: string, size: number): readonly Piece[] {
  if (text === '') return [];
  const half = textWidth(text, size) / 2 + TEXT_CLEARANCE;
  return [{ row, left: half, right: half }];
}

const fretOf = ({ fret }: ContentEvent, { options, sizes }: Style): readonly Piece[] =>
  fret === null || options.parts === 'staff' ? [] : centred('frets', fret.text, sizes.tab);

const textPieces = (event: ContentEvent, style: Style): readonly Piece[] => [
  ...fretOf(event, style),
  ...(style.options.degrees ? centred('degrees', event.degree, style.sizes.degree) : []),
  ...(style.options.fingers ? centred('fingers', event.finger, style.sizes.finger) : []),
];

/** Signs on a staff; heads and rests besides keep away from each other whatever their height. */
function signPieces(marks: readonly Mark[]): readonly Piece[] {
  const heads = boxOf(marks.filter(({ role }) => role === 'note' || role === 'rest'));
  const signs = marks.map(({ box }): Piece => ({ row: 'signs', ...box, left: -box.left }));
  return heads ? [...signs, { row: 'heads', left: -heads.left, right: heads.right }] : signs;
}

/** Brackets round ghosts may come closer to what is beside them than other signs. */
const ghostPieces = (event: ContentEvent): readonly Piece[] =>
  ghostBrackets(event).map(({ box }) => ({
    row: 'signs',
    left: -box.left - BESIDE / 2,
    right: box.right - BESIDE / 2,
    top: box.top,
    bottom: box.bottom,
  }));

/** The stem of a note under a beam, which may be of whatever length. */
function beamedStem(stem: 'up' | 'down', marks: readonly Mark[]): Piece {
  const heads = boxOf(marks.filter(({ role }) => role === 'note'));
  return stem === 'up'
    ? { row: 'signs', left: -HALF_HEAD, right: HALF_HEAD, bottom: heads?.bottom ?? 0 }
    : { row: 'signs', left: HALF_HEAD, right: -HALF_HEAD, top: heads?.top ?? 0 };
}

/** A tab alone has its rests between the numbers, and stems, flags and dots under them. */
function tabPieces({ kind, value, dots }: ContentEvent, marks: readonly Mark[]): readonly Piece[] {
  if (kind === 'rest') {
    const box = boxOf(marks);
    return box ? [{ row: 'frets', left: TEXT_CLEARANCE - box.left, right: box.right + TEXT_CLEARANCE }] : [];
  }
  return [{ row: 'stems of a tab', left: 0, right: (value >= 8 ? FLAG_ROOM : 0) + dots * FLAG_ROOM }];
}

/** Ties, and the lines and curves that lead to a note and out of it. */
function linePieces(event: ContentEvent, marks: readonly Mark[], style: Style): readonly Piece[] {
  const box = style.options.parts === 'tab' && event.kind === 'note' ? null : boxOf(marks);
  const [fret] = fretOf(event, style);
  const [left, right] = [
    Math.max(fret?.left ?? 0, -(box?.left ?? 0)),
    Math.max(fret?.right ?? 0, box?.right ?? 0),
  ];
  const { before, after } = roomBeside(event);
  const into = event.tiedIn === 'elsewhere' ? TIE_IN_ROOM - (box?.left ?? 0) : HALF_HEAD;
  return [
    { row: 'lines out', left, ...(after > 0 ? { right: right + after } : {}) },
    { row: 'lines in', right, ...(before > 0 ? { left: left + before } : {}) },
    { row: 'ties', left: into, ...tieOut(event) },
  ];
}

function tieOut({ tied, tiedOut }: ContentEvent): { readonly right?: number } {
  if (tied) return { right: TIE_ROOM - HALF_HEAD };
  return tiedOut ? { right: TIE_OUT_ROOM } : {};
}

/** What lines and curves at a note need besides its own ink. */
function roomBeside({ signs, exit }: ContentEvent): { readonly before: number; readonly after: number } {
  const stub = (sign: Sign, side: 'before' | 'after'): boolean => {
    const { drawn } = SIGNS[sign];
    return drawn.as === 'stub' && drawn.side === side;
  };
  const before = signs.some((sign) => stub(sign, 'before')) ? STUB_ROOM : 0;
  if (exit === null) return { before, after: 0 };
  if (stub(exit.sign, 'after') || !exit.leads) return { before, after: STUB_ROOM };
  return { before, after: SIGNS[exit.sign].drawn.as === 'line' ? SLIDE_ROOM : CURVE_ROOM };
}
