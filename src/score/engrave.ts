import type { Sheet } from '../core/lesson';
import { breakLines } from './layout/breaks';
import { headingOf, warningOf } from './layout/frame';
import { type MeasuredBar, measureBar } from './layout/measure-bar';
import { type BarSpacing, factorFor, widthAt } from './layout/spacing';
import { type Style, styleOf } from './layout/style';
import { layOutSystem } from './layout/system';
import { contentOf } from './notation/content';
import type { Content } from './notation/types';
import type { ScoreLayout, ScoreOptions, SystemLayout } from './types';

/** A short last system is not pulled apart beyond the one before it, nor beyond this. */
const LOOSEST = 1.7;
const WIDEST = 40;

/** Lays a piece out; see `layoutScore`. */
export function engrave(sheet: Sheet, options: ScoreOptions): ScoreLayout {
  const content = contentOf(sheet, options.numerals === true);
  const plain = styleOf(options, 1);
  const measured = content.bars.map((bar) => measureBar(bar, plain));
  const shrink = shrinkFor(content, measured, plain);
  return shrink < 1
    ? layOut(content, measuredAgain(content, options, shrink), styleOf(options, shrink))
    : layOut(content, measured, plain);
}

const measuredAgain = (content: Content, options: ScoreOptions, shrink: number): readonly MeasuredBar[] => {
  const style = styleOf(options, shrink);
  return content.bars.map((bar) => measureBar(bar, style));
};

/** How much smaller everything must be for the widest bar to fit alone; 1 when it does. */
function shrinkFor(content: Content, measured: readonly MeasuredBar[], style: Style): number {
  return measured.reduce((least, bar, index) => {
    const signs = signsWidth(content, index, index + 1, style);
    return Math.min(least, style.options.width / style.scale / (signs + widthAt(bar.leading, 0) + 1));
  }, 1);
}

/** Width of the signs before and after the bars of a system from `first` up to, not including, `end`. */
function signsWidth(content: Content, first: number, end: number, style: Style): number {
  return headWidth(content, first, style) + tailWidth(content, end, style);
}

const headWidth = ({ bars, strings }: Content, first: number, style: Style): number =>
  headingOf(bars[first], strings, style).right;

const tailWidth = ({ bars }: Content, end: number, style: Style): number =>
  warningOf(bars[end], 0, style.options.parts ?? 'both').right;

function layOut(content: Content, measured: readonly MeasuredBar[], style: Style): ScoreLayout {
  const { width, barsPerSystem } = style.options;
  const spacings = (first: number, end: number): readonly BarSpacing[] =>
    measured.slice(first, end).map((bar, index) => (index === 0 ? bar.leading : bar.inner));
  // Many systems are tried that begin or end with the same bar.
  const heads = measured.map((_, first) => headWidth(content, first, style));
  const tails = [...measured, null].map((_, end) => tailWidth(content, end, style));
  const filling = (first: number, end: number): number =>
    factorFor(spacings(first, end), width / style.scale - (heads[first] ?? 0) - (tails[end] ?? 0), WIDEST);
  const breaks = breakLines(content.bars, barsPerSystem, filling);
  const systems: SystemLayout[] = [];
  let y = 0;
  let factorBefore = LOOSEST;
  const fullest = Math.max(...breaks.map(({ first, end }) => end - first));
  for (const { first, end } of breaks) {
    const full = filling(first, end);
    const isShort = end - first < fullest || breaks.length === 1;
    const isLast = end === measured.length || content.bars[end]?.startsSection === true;
    const loosest = Math.max(factorBefore, 1) * 1.12;
    const factor = isShort && isLast && end - first < barsPerSystem ? Math.min(full, loosest) : full;
    const system = layOutSystem({
      index: systems.length,
      y,
      first,
      bars: measured.slice(first, end),
      after: measured[end],
      heading: headingOf(content.bars[first], content.strings, style),
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
