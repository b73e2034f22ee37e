import { barTicks, beatsInBar, beatTicks, type Metre, sameMetre } from '../../base';
import {
  CHART_METRES,
  type Chart,
  type ChartBar,
  type Harmony,
  type Navigation,
  parseChart,
  pickupMetre,
  playOrder,
  printChart,
  soundingSignature,
} from '../../chart';
import { describeKey, sameKey } from '../../theory';
import type { FoundBar } from './found';
import type { MetrePlan } from './metres';
import { type Passage, passagesOf } from './passages';
import type { Remarks } from './remarks';
import { planSections, sectionName } from './sections';
import { spansOf } from './spans';

/** A chart text, and how it is read. */
export interface ReadableChart {
  readonly text: string;
  readonly metre: Metre;
  readonly chart: Chart;
}

const NOWHERE = { line: 1, column: 1, length: 0 };
const NO_CHORD: Harmony = { kind: 'no chord' };

/** The metre of an upbeat of this length, counted in half beats of a metre that a chart has; null where there is none. */
function upbeatMetre(length: number, following: Metre): Metre | null {
  for (const eighths of [1, 2]) {
    const found = pickupMetre({ eighths }, following);
    if (barTicks(found) === length) return found;
  }
  for (const metre of [following, ...CHART_METRES]) {
    const beats = length / beatTicks(metre);
    if (!Number.isInteger(beats * 2) || beats <= 0 || beats >= beatsInBar(metre)) continue;
    const found = pickupMetre({ beats }, metre);
    if (barTicks(found) === length) return found;
  }
  return null;
}

/** Whether the first bar becomes an upbeat, and of which metre; null for a whole bar. */
export function pickupOf(bars: readonly FoundBar[], plan: MetrePlan): Metre | null {
  const [first, second] = bars;
  const metre = plan.metres[1] ?? plan.metres[0];
  if (!first?.pickup || second === undefined || metre === undefined) return null;
  const length = Math.round(first.length * plan.factor);
  return length > 0 && length < barTicks(metre) ? upbeatMetre(length, metre) : null;
}

/** The bars of the chart with their harmonies, keys and metres; repeats and sections come after. */
function plainBars(bars: readonly FoundBar[], plan: MetrePlan, remarks: Remarks): readonly ChartBar[] {
  const pickup = pickupOf(bars, plan);
  const home = bars.find(({ key }) => key !== null)?.key ?? null;
  let harmony: Harmony = NO_CHORD;
  let named = false;
  return bars.map((bar, index): ChartBar => {
    const upbeat = index === 0 ? pickup : null;
    const metre = upbeat ?? plan.metres[index] ?? { count: 4, unit: 4 };
    const placed = spansOf(
      bar.chords.map(({ at, chord }) => ({ at: at * plan.factor, chord })),
      metre,
      harmony,
    );
    harmony = placed.spans.at(-1)?.harmony ?? harmony;
    if (placed.moved)
      remarks.inBar('Chords that stand off the eighths of the bar are moved to the nearest one', index);
    for (const symbol of placed.lost) {
      remarks.inBar(`${symbol} is left out, because another chord stands on its beat`, index);
    }
    named ||= bar.key !== null && home !== null && !sameKey(bar.key, home);
    return {
      number: index + (pickup === null ? 1 : 0),
      section: 0,
      metre,
      pickup: upbeat !== null,
      key: named ? bar.key : null,
      spans: placed.spans,
      repeatStart: false,
      repeatEnd: null,
      ending: null,
      place: NOWHERE,
    };
  });
}

/** Signs of the way as the bars of a chart have them. */
type Signs = readonly (readonly Navigation[])[];

const contentOf = (bar: ChartBar): string =>
  JSON.stringify([
    soundingSignature(bar),
    bar.metre,
    bar.key && describeKey(bar.key),
    bar.repeatStart,
    bar.repeatEnd,
    bar.ending,
    bar.pickup,
    bar.navigation ?? [],
  ]);

function assemble(
  plain: readonly ChartBar[],
  passages: readonly Passage[] | null,
  signs: Signs | null,
  names: readonly (string | null)[],
  again: boolean,
  metre: Metre,
): Chart {
  const bars = plain.map((bar, index): ChartBar => {
    const navigation = signs?.[index] ?? [];
    return { ...bar, ...passages?.[index], ...(navigation.length === 0 ? {} : { navigation }) };
  });
  const sections = planSections(names, bars.map(contentOf), again);
  return {
    metre,
    sections,
    bars: sections.flatMap(({ start, length }, section) =>
      bars.slice(start, start + length).map((bar) => ({ ...bar, section })),
    ),
  };
}

/** Whether the printed chart is read as it was meant: every bar, and the order in which they are played. */
function comesBack(meant: Chart, read: Chart): boolean {
  return (
    meant.bars.length === read.bars.length &&
    meant.bars.every((bar, index) => {
      const other = read.bars[index];
      return other !== undefined && sameMetre(bar.metre, other.metre) && sameChords(bar, other);
    }) &&
    playOrder(meant).join() === playOrder(read).join()
  );
}

const sameChords = (one: ChartBar, other: ChartBar): boolean =>
  soundingSignature(one) === soundingSignature(other) &&
  one.pickup === other.pickup &&
  (one.key === null || other.key === null ? one.key === other.key : sameKey(one.key, other.key));

/** One way of writing a chart. */
interface Way {
  readonly chart: () => Chart;
  /** With the signs of the way through it. */
  readonly leads?: boolean;
  /** Without the names of its sections. */
  readonly nameless?: boolean;
  /** Every bar once, without repeats. */
  readonly once?: boolean;
}

/**
 * Writes what was found as the text of a chart, in the house's own printing. Each way of writing it is read again,
 * and the first that comes back as it was meant is taken: with sections written by their name alone, without, and
 * in the end with every bar once.
 * @returns null where not even that can be written
 */
export function chartOf(bars: readonly FoundBar[], plan: MetrePlan, remarks: Remarks): ReadableChart | null {
  const metre = plan.metres[pickupOf(bars, plan) === null ? 0 : 1] ?? { count: 4, unit: 4 };
  const plain = plainBars(bars, plan, remarks);
  const passages = passagesOf(bars, remarks);
  const names = bars.map(({ section }) => (section === null ? null : sectionName(section)));
  const nameless = bars.map(() => null);
  const signs = bars.map(({ navigation = [] }) => navigation);
  const leads = signs.some((each) => each.length > 0);
  const withSigns: readonly Way[] = leads
    ? [
        { chart: () => assemble(plain, passages, signs, names, false, metre), leads },
        { chart: () => assemble(plain, passages, signs, nameless, false, metre), leads, nameless: true },
      ]
    : [];
  const ways: readonly Way[] = [
    ...withSigns,
    { chart: () => assemble(plain, passages, null, names, true, metre) },
    { chart: () => assemble(plain, passages, null, names, false, metre) },
    { chart: () => assemble(plain, passages, null, nameless, false, metre), nameless: true },
    { chart: () => assemble(plain, null, null, names, false, metre), once: true },
    { chart: () => assemble(plain, null, null, nameless, false, metre), nameless: true, once: true },
  ];
  for (const way of ways) {
    const meant = way.chart();
    const text = printChart(meant);
    const { chart, problems } = parseChart(text, metre);
    if (!comesBack(meant, chart) || (way.leads && problems.length > 0)) continue;
    if (leads && !way.leads) {
      remarks.say(
        'Its jumps (da capo, dal segno, coda, fine) cannot be followed as they stand in the file, and are left out.',
      );
    }
    if (way.nameless) remarks.say('The names of the sections cannot be written in a chart.');
    if (way.once) {
      remarks.say(
        'Its repeats cannot be written in a chart: every bar stands there once, and the repeats are left out.',
      );
    }
    return { text, metre, chart };
  }
  return null;
}
