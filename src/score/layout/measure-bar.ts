import type { Alteration } from '../../core/base';
import type { Accidental } from '../../core/notation';
import type { ContentBar, ContentEvent } from '../notation/types';
import { Recent } from '../recent';
import type { SignSpec } from '../signs/types';
import { signInk } from '../vexflow/signs';
import { columnsOf, type DrawnBar } from './columns';
import { changesOf } from './frame';
import { type BarSpacing, type Column, gapsOf, type Span } from './spacing';
import { SPACE, type Style } from './style';
import { numeralParts, symbolWidth } from './symbols';

/** A bar with the ink of its signs, ready to be placed. */
export interface MeasuredBar extends DrawnBar {
  /** The bar on the second staff, spaced with this one. */
  readonly lower?: MeasuredBar;
  /** Its own among all that were measured; a bar that is found measured already keeps it. */
  readonly serial: number;
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
let lastSerial = 0;

/** Measures a bar, or finds it measured already. */
export function measureBar(content: ContentBar, style: Style): MeasuredBar {
  return measuredBars.of(style.barKey + content.key, () => measure(content, style));
}

function measure(content: ContentBar, style: Style): MeasuredBar {
  const stems = stemDirections(content);
  const beamed = content.events.map((_, index) => content.beams.some((group) => group.includes(index)));
  const specs = content.events.map((event, index) => specOf(event, stems[index] ?? 'up'));
  const ink = specs.map((spec, index) => signInk(spec, beamed[index] === true));
  const under = content.lower && measureBar(content.lower, style);
  const drawn = { content, specs, ink, beamed };
  const columns = columnsOf(under ? [drawn, under] : [drawn], style);
  const gaps = gapsOf(columns, content.length, chordSpans(content, columns, style));
  const repeat = content.repeatStart ? REPEAT_WIDTH : 0;
  const changes = changesOf(content, 0, style.options.parts ?? 'both').right;
  const after = END_WIDTH[content.end];
  const spacing = {
    columns,
    leading: { before: content.repeatStart ? REPEAT_LEAD + REPEAT_WIDTH : 0, after, columns, gaps },
    inner: { before: repeat + changes, after, columns, gaps },
  };
  lastSerial += 1;
  const bar = { ...drawn, serial: lastSerial, ...spacing };
  return under ? { ...bar, lower: { ...under, ...spacing } } : bar;
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
