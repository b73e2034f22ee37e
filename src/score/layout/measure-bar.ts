import { type Alteration, SIGNS, type Sign } from '../../core/base';
import type { Accidental } from '../../core/notation';
import { boxOf, type Mark } from '../ink';
import { textWidth } from '../metrics/measure';
import type { ContentBar, ContentEvent } from '../notation/types';
import { Recent } from '../recent';
import { type SignSpec, signInk } from '../vexflow/signs';
import { changesOf } from './frame';
import { levelBox } from './levels';
import { type BarSpacing, type Column, gapsOf, type Span } from './spacing';
import { SPACE, type Style } from './style';
import { numeralParts, symbolWidth } from './symbols';

/** A bar with the ink of its signs, ready to be placed. */
export interface MeasuredBar {
  readonly content: ContentBar;
  /** The bar on the second staff, spaced with this one. */
  readonly lower?: MeasuredBar;
  /** The same text for the same bar in the same style. */
  readonly key: string;
  /** One entry an event. */
  readonly specs: readonly SignSpec[];
  readonly ink: readonly (readonly Mark[])[];
  readonly beamed: readonly boolean[];
  readonly columns: readonly Column[];
  /** Spacing at the start of a system, where the clef's block takes the time signature, and elsewhere. */
  readonly leading: BarSpacing;
  readonly inner: BarSpacing;
}

/** Room that the bar lines' signs take inside the bar. */
export const REPEAT_WIDTH = 17;
export const END_WIDTH = { single: 0, double: 6, final: 10, repeat: REPEAT_WIDTH } as const;
/** White between the clef's block and a repeat at a system's beginning. */
export const REPEAT_LEAD = 6;
/** White beside the texts of a column; half of it where bars may close up, so that the texts themselves are larger. */
const TEXT_CLEARANCE = 2;
const besideText = ({ options }: Style): number =>
  options.tightest === undefined ? TEXT_CLEARANCE : TEXT_CLEARANCE / 2;
/** From the middle of a head that is tied on to the next column: less, and the tie would be a dash. */
const TIE_ROOM = 20;
/** Left of the ink of a head into which a tie leads that begins elsewhere. */
export const TIE_IN_ROOM = 17;
const FLAG_ROOM = 10;
/** From a head or a fret to the one that is slid to; and for a short line beside it. */
const SLIDE_ROOM = 18;
const CURVE_ROOM = 8;
const STUB_ROOM = 15;
/** Least length of a hairpin. */
const HAIRPIN_ROOM = 16;
/** A chord's text begins above the left edge of the head. */
export const CHORD_SHIFT = 6;
const CHORD_CLEARANCE = 9;

const ACCIDENTAL_CODES: Readonly<Record<Alteration, string>> = {
  [-2]: 'bb',
  [-1]: 'b',
  0: 'n',
  1: '#',
  2: '##',
};

const measuredBars = new Recent<MeasuredBar>(4000);

/** Measures a bar, or finds it measured already. */
export function measureBar(content: ContentBar, style: Style): MeasuredBar {
  const key = style.key + content.key;
  return measuredBars.of(key, () => measure(content, style, key));
}

function measure(content: ContentBar, style: Style, key: string): MeasuredBar {
  const stems = stemDirections(content);
  const beamed = content.events.map((_, index) => content.beams.some((group) => group.includes(index)));
  const specs = content.events.map((event, index) => specOf(event, stems[index] ?? 'up'));
  const ink = specs.map((spec, index) => signInk(spec, beamed[index] === true));
  const under = content.lower && measureBar(content.lower, style);
  const own = columnsOf(content, ink, style);
  const columns = under ? together(own, under.columns) : own;
  const gaps = gapsOf(columns, content.length, chordSpans(content, columns, style));
  const repeat = content.repeatStart ? REPEAT_WIDTH : 0;
  const changes = changesOf(content, 0, style.options.parts ?? 'both').right;
  const after = END_WIDTH[content.end];
  const spacing = {
    columns,
    leading: { before: content.repeatStart ? REPEAT_LEAD + REPEAT_WIDTH : 0, after, columns, gaps },
    inner: { before: repeat + changes, after, columns, gaps },
  };
  const bar = { content, key, specs, ink, beamed, ...spacing };
  return under ? { ...bar, lower: { ...under, ...spacing } } : bar;
}

/** The columns of two staves, each as wide as the wider of the two needs it. */
function together(one: readonly Column[], other: readonly Column[]): readonly Column[] {
  const ticks = [...new Set([...one, ...other].map(({ tick }) => tick))].sort((a, b) => a - b);
  return ticks.map((tick) => {
    const there = [...one, ...other].filter((column) => column.tick === tick);
    return {
      tick,
      left: Math.max(...there.map(({ left }) => left)),
      right: Math.max(...there.map(({ right }) => right)),
    };
  });
}

/**
 * Up below the middle line, down from it; beamed notes follow the one farthest from it, and so do heads that share a
 * stem. On the line of a rhythm and on the drums' staff all go up.
 */
function stemDirections(content: ContentBar): readonly ('up' | 'down')[] {
  if (content.staff === 'rhythm' || content.staff === 'drums') return content.events.map(() => 'up');
  const heights = content.events.map(({ height, heads }) =>
    heads === undefined ? height : heads.map((head) => head.height).reduce(farther, 0),
  );
  for (const group of content.beams) {
    const farthest = group.map((index) => heights[index] ?? 0).reduce(farther, 0);
    for (const index of group) heights[index] = farthest;
  }
  return heights.map((height) => (height < 0 ? 'up' : 'down'));
}

const farther = (far: number, height: number): number => (Math.abs(height) > Math.abs(far) ? height : far);

const signSpecOf = (accidental: Accidental | null) => ({
  accidental: accidental ? ACCIDENTAL_CODES[accidental.alteration] : null,
  courtesy: accidental?.courtesy ?? false,
});

function specOf(event: ContentEvent, stem: 'up' | 'down'): SignSpec {
  const { heads } = event;
  return {
    kind: event.kind,
    value: event.value,
    dots: event.dots,
    height: event.height,
    ...signSpecOf(event.accidental),
    ghost: event.signs.includes('ghost'),
    stem,
    ...(heads === undefined
      ? {}
      : {
          heads: heads.map(({ height, accidental, cross }) => ({
            height,
            ...signSpecOf(accidental),
            cross,
          })),
        }),
  };
}

function columnsOf(content: ContentBar, ink: readonly (readonly Mark[])[], style: Style): readonly Column[] {
  const extents = new Map<number, { left: number; right: number }>();
  const widen = (tick: number, left: number, right: number): void => {
    const known = extents.get(tick);
    extents.set(tick, { left: Math.max(left, known?.left ?? 0), right: Math.max(right, known?.right ?? 0) });
  };
  widen(0, 0, 0);
  const onStaff = style.options.parts !== 'tab';
  content.events.forEach((event, index) => {
    const box = shownBox(event, ink[index] ?? [], onStaff);
    if (!onStaff) widen(event.start, 0, roomUnderTab(event));
    if (event.tied || event.tiedOut) widen(event.start, 0, TIE_ROOM);
    if (event.tiedIn === 'elsewhere') widen(event.start, TIE_IN_ROOM - (box?.left ?? 0), 0);
    const text = halfTextWidth(event, style);
    if (text > 0) widen(event.start, text, text);
    const beside = roomBeside(event);
    widen(
      event.start,
      Math.max(text, -(box?.left ?? 0)) + beside.left,
      Math.max(text, box?.right ?? 0) + beside.right,
    );
  });
  for (const { tick } of content.chords) widen(tick, 0, 0);
  for (const mark of content.dynamics) {
    const box = levelBox(mark.level);
    const room = mark.hairpin === null ? TEXT_CLEARANCE : HAIRPIN_ROOM;
    if (mark.tick < content.length) widen(mark.tick, -box.left + TEXT_CLEARANCE, box.right + room);
  }
  if (style.options.counting) {
    for (const { tick, text } of content.counts) {
      const half = textWidth(text, style.sizes.counting) / 2 + besideText(style);
      widen(tick, half, half);
    }
  }
  return [...extents]
    .sort(([one], [other]) => one - other)
    .map(([tick, { left, right }]) => ({ tick, left, right }));
}

/** The box of a sign that is drawn in its column: on a staff every one, on a tab alone the rests. */
const shownBox = (event: ContentEvent, ink: readonly Mark[], onStaff: boolean): ReturnType<typeof boxOf> =>
  event.wholeBar || !(onStaff || event.kind === 'rest') ? null : boxOf(ink);

/** Under a tab alone flags and dots stand right of the stems. */
const roomUnderTab = ({ kind, value, dots }: ContentEvent): number =>
  kind === 'rest' ? 0 : (value >= 8 ? FLAG_ROOM : 0) + dots * FLAG_ROOM;

/** What lines and curves at a note need besides its own ink. */
function roomBeside({ signs, exit }: ContentEvent): { readonly left: number; readonly right: number } {
  const stub = (sign: Sign, side: 'before' | 'after'): boolean => {
    const { drawn } = SIGNS[sign];
    return drawn.as === 'stub' && drawn.side === side;
  };
  const left = signs.some((sign) => stub(sign, 'before')) ? STUB_ROOM : 0;
  if (exit === null) return { left, right: 0 };
  if (stub(exit.sign, 'after') || !exit.leads) return { left, right: STUB_ROOM };
  return { left, right: SIGNS[exit.sign].drawn.as === 'line' ? SLIDE_ROOM : CURVE_ROOM };
}

function halfTextWidth(event: ContentEvent, style: Style): number {
  const { options, sizes } = style;
  const widths = [
    textWidth(event.fret?.text ?? '', sizes.tab),
    options.degrees ? textWidth(event.degree, sizes.degree) : 0,
    options.fingers ? textWidth(event.finger, sizes.finger) : 0,
  ];
  const widest = Math.max(...widths);
  return widest > 0 ? widest / 2 + besideText(style) : 0;
}

function chordSpans(content: ContentBar, columns: readonly Column[], style: Style): readonly Span[] {
  return content.chords.map(({ tick, parts, numeral }, index): Span => {
    const next = content.chords[index + 1];
    const from = columns.findIndex((column) => column.tick === tick);
    const to = next ? columns.findIndex((column) => column.tick === next.tick) : columns.length;
    const below = style.options.numerals ? symbolWidth(numeralParts(numeral), style.sizes.degree, true) : 0;
    const width = Math.max(symbolWidth(parts, style.sizes.chord, true), below) + CHORD_CLEARANCE;
    // The last chord may lean over the bar line as far as the next bar's first chord stays clear.
    return { from, to, width: next ? width : width - CHORD_SHIFT - SPACE / 2 };
  });
}
