import type { Sheet } from '../core/lesson';
import { breakLines } from './layout/breaks';
import { headingOf } from './layout/frame';
import { type MeasuredBar, measureBar } from './layout/measure-bar';
import { type BarSpacing, factorFor, widthAt } from './layout/spacing';
import { type Style, styleOf } from './layout/style';
import { layOutSystem } from './layout/system';
import { contentOf } from './notation/content';
import type { Content } from './notation/types';
import type { ScoreLayout, ScoreOptions, SystemLayout } from './types';

/** Bars go into a system while their notes need not stand closer than this share of their natural spacing. */
const TIGHTEST = 0.84;
/** A short last system is not pulled apart beyond the one before it, nor beyond this. */
const LOOSEST = 1.7;
const WIDEST = 40;

/** Lays a piece out; see `layoutScore`. */
export function engrave(sheet: Sheet, options: ScoreOptions): ScoreLayout {
  const content = contentOf(sheet);
  const plain = styleOf(options, 1);
  const measured = content.bars.map((bar) => measureBar(bar, plain));
  const shrink = shrinkFor(measured, plain);
  return shrink < 1
    ? layOut(content, measuredAgain(content, options, shrink), styleOf(options, shrink))
    : layOut(content, measured, plain);
}

const measuredAgain = (content: Content, options: ScoreOptions, shrink: number): readonly MeasuredBar[] => {
  const style = styleOf(options, shrink);
  return content.bars.map((bar) => measureBar(bar, style));
};

/** How much smaller everything must be for the widest bar to fit alone; 1 when it does. */
function shrinkFor(measured: readonly MeasuredBar[], style: Style): number {
  const room = style.options.width / style.scale;
  return measured.reduce((least, bar) => {
    const needed = headingOf(bar.content).right + widthAt(bar.leading, 0);
    return Math.min(least, room / (needed + 1));
  }, 1);
}

function layOut(content: Content, measured: readonly MeasuredBar[], style: Style): ScoreLayout {
  const { width, barsPerSystem } = style.options;
  const room = (first: number): number => width / style.scale - headingOf(content.bars[first]).right;
  const spacings = (first: number, end: number): readonly BarSpacing[] =>
    measured.slice(first, end).map((bar, index) => (index === 0 ? bar.leading : bar.inner));
  const breaks = breakLines(
    content.bars,
    Math.max(1, barsPerSystem),
    (first, end) => factorFor(spacings(first, end), room(first), WIDEST) >= TIGHTEST,
  );
  const systems: SystemLayout[] = [];
  let y = 0;
  let factorBefore = LOOSEST;
  const fullest = Math.max(...breaks.map(({ first, end }) => end - first));
  for (const { first, end } of breaks) {
    const filling = factorFor(spacings(first, end), room(first), WIDEST);
    const isShort = end - first < fullest || breaks.length === 1;
    const isLast = end === measured.length || content.bars[end]?.startsSection === true;
    const loosest = Math.max(factorBefore, 1) * 1.12;
    const factor = isShort && isLast && end - first < barsPerSystem ? Math.min(filling, loosest) : filling;
    const system = layOutSystem({
      index: systems.length,
      y,
      bars: measured.slice(first, end),
      after: measured[end],
      heading: headingOf(content.bars[first]),
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
