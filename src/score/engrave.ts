import { type Break, breakLines, type Filling, type Section, sectionsOf, TIGHTEST } from './layout/breaks';
import { headingOf, warningOf } from './layout/frame';
import { type MeasuredBar, measureBar } from './layout/measure-bar';
import { namesEnd } from './layout/rows-below';
import { type BarSpacing, factorFor, staysEven, widthAt } from './layout/spacing';
import { type Style, styleOf } from './layout/style';
import { layOutSystem } from './layout/system';
import { contentOf } from './notation/content';
import type { Content } from './notation/types';
import { finished, type Steps } from './steps';
import type { Engravable, ScoreLayout, ScoreOptions, SystemLayout } from './types';

/** A short last system is not pulled apart beyond the one before it, nor beyond this. */
const LOOSEST = 1.7;
const WIDEST = 40;

/** Lays a piece out; see `layoutScore`. */
export const engrave = (sheet: Engravable, options: ScoreOptions): ScoreLayout =>
  finished(engraveInSteps(sheet, options));

/** The same in steps of a bar or a system. */
export function* engraveInSteps(sheet: Engravable, asked: ScoreOptions): Steps<ScoreLayout> {
  const alone = sheet.kind === 'part' || sheet.kind === 'keyboard' || asked.rhythm === true;
  const options: ScoreOptions = alone ? { ...asked, parts: 'staff' } : asked;
  const content = yield* contentOf(sheet, options);
  const plain = styleOf(options, 1);
  const measured = yield* measureAll(content, plain);
  const shrink = yield* shrinkFor(content, measured, plain);
  if (shrink >= 1) return yield* layOut(content, measured, plain);
  const smaller = styleOf(options, shrink);
  return yield* layOut(content, yield* measureAll(content, smaller), smaller);
}

function* measureAll(content: Content, style: Style): Steps<readonly MeasuredBar[]> {
  const measured: MeasuredBar[] = [];
  for (const bar of content.bars) {
    yield;
    measured.push(measureBar(bar, style));
  }
  return measured;
}

/** How much smaller everything must be for the widest bar to fit alone; 1 when it does. */
function* shrinkFor(content: Content, measured: readonly MeasuredBar[], style: Style): Steps<number> {
  let least = 1;
  for (const [index, bar] of measured.entries()) {
    yield;
    const own = signsOf(bar, content, style).head;
    const signs =
      (index === 0 ? widened(own, content, style) : own) + tailOf(measured[index + 1], content, style);
    least = Math.min(least, style.options.width / style.scale / (signs + widthAt(bar.leading, 0) + 1));
  }
  return least;
}

/** Widths of the signs that stand before a system which a bar begins, and after one which it follows. */
interface SignWidths {
  readonly strings: number;
  readonly head: number;
  readonly tail: number;
}

const signWidths = new WeakMap<MeasuredBar, SignWidths>();

/** A bar measured in one style is not measured in another one. */
function signsOf(bar: MeasuredBar, { strings }: Content, style: Style): SignWidths {
  const known = signWidths.get(bar);
  if (known?.strings === strings) return known;
  const widths = {
    strings,
    head: headingOf(bar.content, strings, style).right,
    tail: warningOf(bar.content, 0, style.options.parts ?? 'both').right,
  };
  signWidths.set(bar, widths);
  return widths;
}

/** So far right of the signs of a piece's first system any text of its rows begins. */
const ROW_LEAD = 6;

/** The signs at a line's beginning take as much room as the names of the rows under them; other parts have no rows. */
const widened = (right: number, { bars }: Content, style: Style): number =>
  bars[0]?.staff === 'bass' && !bars[0].blank ? Math.max(right, namesEnd(style) - ROW_LEAD) : right;

const tailOf = (next: MeasuredBar | undefined, content: Content, style: Style): number =>
  next === undefined ? 0 : signsOf(next, content, style).tail;

/** How a section was broken into systems, and the bars of which that holds: its own and the one that follows it. */
interface BrokenSection {
  readonly strings: number;
  /** Key of the style. */
  readonly style: string;
  readonly bars: readonly (MeasuredBar | undefined)[];
  /** Counted from the section's first bar. */
  readonly breaks: readonly Break[];
}

const brokenSections = new WeakMap<MeasuredBar, BrokenSection>();

/** The breaks of a section; a section whose bars did not change is not broken again. */
function sectionBreaks(
  { from, to }: Section,
  content: Content,
  measured: readonly MeasuredBar[],
  style: Style,
  filling: (first: number, end: number) => Filling,
): readonly Break[] {
  const bars = Array.from({ length: to - from + 1 }, (_, index) => measured[from + index]);
  const [first] = bars;
  const known = first && brokenSections.get(first);
  const same =
    known?.strings === content.strings &&
    known.style === style.key &&
    known.bars.length === bars.length &&
    known.bars.every((bar, index) => bar === bars[index]);
  const breaks = same
    ? known.breaks
    : breakLines(
        content.bars.slice(from, to),
        {
          usual: style.options.barsPerSystem,
          strictly: style.options.strictly ?? false,
          tightest: style.options.tightest ?? TIGHTEST,
          joined: style.options.joinsSections ?? false,
        },
        (begin, end) => filling(from + begin, from + end),
      );
  if (first !== undefined && !same)
    brokenSections.set(first, { strings: content.strings, style: style.key, bars, breaks });
  return breaks.map((line) => ({ first: from + line.first, end: from + line.end }));
}

function* layOut(content: Content, measured: readonly MeasuredBar[], style: Style): Steps<ScoreLayout> {
  const { width, barsPerSystem } = style.options;
  const spacings = (first: number, end: number): readonly BarSpacing[] =>
    measured.slice(first, end).map((bar, index) => (index === 0 ? bar.leading : bar.inner));
  const filling = (first: number, end: number): Filling => {
    const head = measured[first];
    const own = head === undefined ? 0 : signsOf(head, content, style).head;
    const signs = (first === 0 ? widened(own, content, style) : own) + tailOf(measured[end], content, style);
    const bars = spacings(first, end);
    const factor = factorFor(bars, width / style.scale - signs, WIDEST);
    return { factor, uneven: style.options.givesWay !== true && !staysEven(bars, factor) };
  };
  const breaks: Break[] = [];
  for (const section of sectionsOf(content.bars, style.options.joinsSections)) {
    yield;
    breaks.push(...sectionBreaks(section, content, measured, style, filling));
  }
  const systems: SystemLayout[] = [];
  let y = 0;
  let factorBefore = LOOSEST;
  const fullest = Math.max(...breaks.map(({ first, end }) => end - first));
  for (const { first, end } of breaks) {
    yield;
    const full = filling(first, end).factor;
    const isShort = end - first < fullest || breaks.length === 1;
    const isLast = end === measured.length || content.bars[end]?.startsSection === true;
    const loosest = Math.max(factorBefore, 1) * 1.12;
    const factor = isShort && isLast && end - first < barsPerSystem ? Math.min(full, loosest) : full;
    const heading = headingOf(content.bars[first], content.strings, style);
    const system = layOutSystem({
      index: systems.length,
      y,
      first,
      bars: measured.slice(first, end),
      after: measured[end],
      heading: first === 0 ? { ...heading, right: widened(heading.right, content, style) } : heading,
      factor,
      content,
      style,
    });
    systems.push(system);
    y = Math.round((y + system.height) * 100) / 100;
    factorBefore = factor;
  }
  return { width, height: y, systems };
}
