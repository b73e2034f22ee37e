import { barTicks, beatsOf, type Metre, sameMetre } from '../../../core/base';
import {
  beginsBar,
  type Chart,
  type ChartBar,
  harmonyParts,
  navigationWords,
  ownSpans,
  repeatSigns,
  sameEnding,
  soundingSignature,
  timesToSay,
  writtenMetres,
} from '../../../core/chart';
import { type DrawnSymbol, describeKeyIn, type Naming, sameKey } from '../../../core/theory';

/** A chord symbol in a bar, or a slash for a beat on which the chord goes on. */
export interface CellSymbol extends DrawnSymbol {
  /** Where it begins, as a share of the bar. */
  readonly at: number;
}

/** A bar of the chart as it is written, before it has a place. */
export interface Cell {
  readonly symbols: readonly CellSymbol[];
  readonly section: number;
  /** It is only the end of a bar. */
  readonly pickup: boolean;
  /** The same chords on the same beats as the bar before, or as the bar two before. */
  readonly likeBefore: boolean;
  readonly likeTwoBefore: boolean;
  /** Something begins in it that the bars it is like do not begin with: it is written out. */
  readonly begins: boolean;
  /** Where it is new. */
  readonly metre: Metre | null;
  readonly repeatStart: boolean;
  readonly repeatEnd: boolean;
  /** `1.`, with the bars of an ending that follow each other sharing one bracket; null outside endings. */
  readonly ending: string | null;
  readonly endingStarts: boolean;
  readonly endingEnds: 'closed' | 'open' | null;
  /** What stands over its beginning and its end. */
  readonly signs: readonly ('segno' | 'coda')[];
  readonly opening: string;
  readonly closing: string;
  /** `To Coda` is among its closing words, and has the coda's sign behind them. */
  readonly leadsToCoda: boolean;
  /** The bar line after it. */
  readonly line: 'single' | 'double' | 'final';
}

/** The bars of a chart as they are written. */
export function cellsOf(chart: Chart, naming: Naming | undefined): readonly Cell[] {
  const repeats = repeatSigns(chart);
  const metres = writtenMetres(chart);
  return chart.bars.map((bar, index): Cell => {
    const [before, after] = [chart.bars[index - 1], chart.bars[index + 1]];
    const [written, shown] = [metres[index]?.metre, metres[index - 1]?.metre];
    const metre =
      written === undefined || (shown !== undefined && sameMetre(shown, written)) ? null : written;
    const opening = keyChange(bar, before, naming);
    const signs = (bar.navigation ?? []).flatMap((sign) =>
      sign === 'segno' || sign === 'coda' ? [sign] : [],
    );
    return {
      symbols: symbolsOf(bar, naming),
      section: bar.section,
      pickup: bar.pickup || (metres[index]?.from ?? 0) > 0,
      likeBefore: alike(bar, before),
      likeTwoBefore: alike(bar, chart.bars[index - 2]),
      begins: metre !== null || opening !== '' || signs.length > 0 || beginsAnew(bar, before),
      metre,
      repeatStart: repeats[index] === true,
      repeatEnd: bar.repeatEnd !== null,
      ...endingOf(bar, before, after),
      signs,
      opening,
      closing: closingWords(bar),
      leadsToCoda: bar.navigation?.includes('to coda') === true,
      line: lineAfter(bar, after),
    };
  });
}

/** The coda is set off as a section is, so that its sign does not read on behind `D.S. al Coda`. */
function lineAfter(bar: ChartBar, after: ChartBar | undefined): Cell['line'] {
  if (after === undefined) return 'final';
  const parted = after.section !== bar.section || after.navigation?.includes('coda') === true;
  return parted ? 'double' : 'single';
}

/** A section, a repeat or an ending begins with the bar, or what came before it has ended. */
const beginsAnew = (bar: ChartBar, before: ChartBar | undefined): boolean =>
  before === undefined ||
  before.section !== bar.section ||
  before.repeatEnd !== null ||
  bar.repeatStart ||
  !sameEnding(before, bar);

function endingOf(
  bar: ChartBar,
  before: ChartBar | undefined,
  after: ChartBar | undefined,
): Pick<Cell, 'ending' | 'endingStarts' | 'endingEnds'> {
  if (bar.ending === null) return { ending: null, endingStarts: false, endingEnds: null };
  const endingStarts = !sameEnding(before, bar);
  const open = sameEnding(bar, after) ? null : 'open';
  return {
    ending: endingStarts ? `${bar.ending.join(', ')}.` : '',
    endingStarts,
    endingEnds: bar.repeatEnd === null ? open : 'closed',
  };
}

const keyChange = (bar: ChartBar, before: ChartBar | undefined, naming: Naming = 'letters'): string =>
  before === undefined || bar.key === null || (before.key !== null && sameKey(bar.key, before.key))
    ? ''
    : describeKeyIn(naming, bar.key);

function alike(bar: ChartBar, other: ChartBar | undefined): boolean {
  if (other === undefined || other.pickup || bar.pushed !== other.pushed) return false;
  return sameMetre(bar.metre, other.metre) && soundingSignature(bar) === soundingSignature(other);
}

/** How often a repeat is played where nothing else says it, and the words of the way: `x3`, `D.S. al Coda`. */
function closingWords(bar: ChartBar): string {
  const count = timesToSay(bar);
  const times = count === null ? [] : [`x${count}`];
  const words = (bar.navigation ?? []).filter((sign) => !beginsBar(sign)).map(navigationWords);
  return [...times, ...words].join(', ');
}

/**
 * The chords of a bar. Where they share it unevenly, slashes stand for the beats on which a chord goes on, as musicians
 * write by hand (common practice, no source). A chord that comes an eighth early has the chart's `<` before it.
 */
function symbolsOf(bar: ChartBar, naming: Naming | undefined): readonly CellSymbol[] {
  const spans = ownSpans(bar);
  const length = barTicks(bar.metre);
  const beats = beatsOf(bar.metre).map(({ start }) => start);
  const uneven =
    new Set(spans.map(({ duration }) => duration)).size > 1 &&
    spans.every(({ start }) => beats.includes(start));
  return spans.flatMap(({ start, duration, harmony }, index): readonly CellSymbol[] => {
    const parts = harmonyParts(harmony, naming);
    const base = index === 0 && bar.pushed === true ? `<${parts.base}` : parts.base;
    const heldOn = uneven ? beats.filter((beat) => beat > start && beat < start + duration) : [];
    return [
      { ...parts, base, at: start / length },
      ...heldOn.map((beat) => ({ base: '/', raised: '', bass: '', at: beat / length })),
    ];
  });
}
