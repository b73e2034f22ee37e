/** What line breaking needs to know of a bar. */
export interface BreakBar {
  /** A section begins here and starts a system. */
  readonly startsSection: boolean;
  /** It leads into the bar behind it and is not counted. */
  readonly pickup: boolean;
  /** What stands where it begins; a coda is set off from what is before it. */
  readonly waySigns?: readonly ('segno' | 'coda')[];
}

/** The bars from `from` up to, not including, `to`. */
export interface Section {
  readonly from: number;
  readonly to: number;
}

export interface Break {
  /** Indices of the first bar and of the bar after the last. */
  readonly first: number;
  readonly end: number;
}

/** A system holds at most this share of the usual number of bars, where its music is thin. */
const MOST = 1.5;

/** Below this share of their natural spacing bars stand too close. */
export const TIGHTEST = 0.84;

/** Stretched to here, music looks as it should; beyond, and below 1, it is the worse the farther. */
const GOOD = { least: 1, most: 1.3 } as const;

/** What a break costs besides: the figures are ours, weighed against each other on printed lessons. */
const COST = {
  crowded: 1000,
  uneven: 4,
  stub: 3,
  alone: 3,
  shorter: 1.6,
  insidePhrase: 1.2,
  insideHalf: 0.5,
} as const;

/** As few bars do not fill a system. */
const STUB = 2;

/** Too loose or too tight, from 0. */
function badness(factor: number, tightest: number): number {
  if (factor < GOOD.least) return ((GOOD.least - factor) / (GOOD.least - tightest)) ** 2;
  return factor <= GOOD.most ? 0 : 1.5 * Math.log(factor / GOOD.most) ** 2;
}

function costOfFilling({ factor, uneven = false }: Filling, count: number, tightest: number): number {
  const crowded = factor < tightest && count > 1 ? COST.crowded * (tightest - factor + count) : 0;
  return badness(factor, tightest) + crowded + (uneven ? COST.uneven : 0);
}

const costOfStub = (count: number): number => (count > STUB ? 0 : COST.stub + (count === 1 ? COST.alone : 0));

/** How full systems are to be. */
export interface Fullness {
  /** Bars in a system. */
  readonly usual: number;
  /** No system holds more bars than that. */
  readonly strictly: boolean;
  /** Below this share of their natural spacing bars stand too close. */
  readonly tightest: number;
  /** A section of one or two bars shares a system with its neighbour where whole phrases have room there. */
  readonly joined?: boolean;
}

/** How a system is filled by some bars. */
export interface Filling {
  /** By which they must be stretched. */
  readonly factor: number;
  /** Whether space does not follow time in some of them; left out where it does in all. */
  readonly uneven?: boolean;
}

/** The best way to break up to a system and with it. */
interface Way {
  readonly cost: number;
  readonly first: number;
  readonly end: number;
  readonly before: Way | null;
}

/** The first of the cheapest; null where there is none. */
function cheapest(ways: readonly Way[], priceOf: (way: Way) => number): Way | null {
  let best: Way | null = null;
  for (const way of ways) if (best === null || priceOf(way) < priceOf(best)) best = way;
  return best;
}

/** The cheapest way to break one section, or several that may share systems: shortest path over its bar lines. */
function breakSection(
  bars: readonly BreakBar[],
  { usual, strictly, tightest }: Fullness,
  from: number,
  to: number,
  filling: (first: number, end: number) => Filling,
): readonly Break[] {
  const counted = countedIn(bars);
  const most = strictly ? usual : Math.max(usual, Math.floor(usual * MOST));
  const whole = counted(from, to);
  const starts = startsIn(bars, from, to);
  const startOf = (bar: number): number => starts.findLast((start) => start <= bar) ?? from;
  const costOf = (first: number, end: number): number => {
    const place = counted(startOf(end - 1), end);
    const endsPhrase = end === to || starts.includes(end) || place % usual === 0;
    const crosses = starts.some((start) => first < start && start < end);
    if (crosses && !(endsPhrase && counted(startOf(first), first) % usual === 0))
      return Number.POSITIVE_INFINITY;
    const count = counted(first, end);
    const stub = usual > 2 && whole > usual ? costOfStub(count) : 0;
    const inside = endsPhrase ? 0 : place % 2 === 0 ? COST.insideHalf : COST.insidePhrase;
    return costOfFilling(filling(first, end), count, tightest) + stub + inside;
  };
  /** What a system costs behind the one before it: what is left over stands at a section's end, not before its end. */
  const costBehind = ({ first, end }: Way, count: number): number =>
    counted(first, end) < count && !starts.includes(end) ? COST.shorter : 0;
  /** The best ways that end before a bar, one for each length of the last system. */
  const ways = new Map<number, readonly Way[]>();
  for (let end = from + 1; end <= to; end += 1) {
    const here: Way[] = [];
    for (let first = end - 1; first >= from && counted(first, end) <= most; first -= 1) {
      const count = counted(first, end);
      const before = cheapest(ways.get(first) ?? [], (way) => way.cost + costBehind(way, count));
      const cost = (before === null ? 0 : before.cost + costBehind(before, count)) + costOf(first, end);
      here.push({ cost, first, end, before });
    }
    ways.set(end, here);
  }
  const breaks: Break[] = [];
  for (let way = cheapest(ways.get(to) ?? [], ({ cost }) => cost); way !== null; way = way.before)
    breaks.unshift({ first: way.first, end: way.end });
  return breaks;
}

/** Counts the bars from one up to, not including, another, without the pickup that leads into them. */
const countedIn =
  (bars: readonly BreakBar[]) =>
  (first: number, end: number): number =>
    end - first - (bars[first]?.pickup === true && end - first > 1 ? 1 : 0);

/** Where sections begin, the first included. */
const startsIn = (bars: readonly BreakBar[], from: number, to: number): readonly number[] => {
  const starts = [from];
  for (let bar = from + 1; bar < to; bar += 1) if (bars[bar]?.startsSection === true) starts.push(bar);
  return starts;
};

/**
 * What is broken at once, in its order: the sections, of which the breaks of one do not depend on another; where they
 * may be joined, a section of one or two bars together with the one behind it, the last with the one before it.
 */
export function sectionsOf(bars: readonly BreakBar[], joined = false): readonly Section[] {
  const counted = countedIn(bars);
  const starts = startsIn(bars, 0, bars.length);
  const sections = starts.map((from, index) => ({ from, to: starts[index + 1] ?? bars.length }));
  if (!joined) return sections;
  const isShort = ({ from, to }: Section): boolean => counted(from, to) <= STUB;
  const groups: Section[] = [];
  let open = false;
  sections.forEach((section, index) => {
    const before = groups.at(-1);
    const setOff = bars[section.from]?.waySigns?.includes('coda') === true;
    const closes = index === sections.length - 1 && isShort(section);
    if (before !== undefined && !setOff && (open || closes)) {
      groups[groups.length - 1] = { from: before.from, to: section.to };
    } else groups.push(section);
    open = isShort(section);
  });
  return groups;
}

/**
 * Groups bars into systems: every section starts one, unless short ones may be joined, and within it the breaks are the
 * best of all together, after the way D. E. Knuth and M. F. Plass break paragraphs ("Breaking paragraphs into lines",
 * Software: Practice and Experience 11, 1981). Systems are to be filled by their content, in proportion, and to end where
 * phrases of `usual` bars do, a pickup not counted; none is to hold one or two bars alone where other breaks avoid it, nor
 * fewer than the one behind it.
 * @param filling how the bars from `first` up to, not including, `end` fill a system
 */
export function breakLines(
  bars: readonly BreakBar[],
  fullness: Fullness,
  filling: (first: number, end: number) => Filling,
): readonly Break[] {
  return sectionsOf(bars, fullness.joined).flatMap(({ from, to }) =>
    breakSection(bars, { ...fullness, usual: Math.max(1, fullness.usual) }, from, to, filling),
  );
}
