import { boxOf, finishMark, type Mark, moveMark } from '../ink';
import type { Content } from '../notation/types';
import { Recent } from '../recent';
import type { BarBox, InkBox, SystemLayout } from '../types';
import { dynamicsRow } from './dynamics';
import {
  brace,
  bracket,
  centredOn,
  endLine,
  type Heading,
  RHYTHM_STAFF,
  repeatStartLine,
  staffLines,
  type TabPlace,
  tabAlone,
  tabBottom,
  tabClef,
  warningOf,
} from './frame';
import { staffLinks } from './links';
import { lowerStaff } from './lower-staff';
import { type MeasuredBar, REPEAT_LEAD } from './measure-bar';
import { playingSigns } from './over-tab';
import { type PlacedBar, xOfTick } from './placed';
import { marksAbove } from './rows-above';
import { marksBelow } from './rows-below';
import { skylineOf } from './skyline';
import { placeColumns } from './spacing';
import { changesInside, staffMarks } from './staff';
import { STAFF_HEIGHT, STAFF_LEFT, type Style, THICKNESS } from './style';
import { tabMarks, tabNumbers } from './tab';
import { tabRhythm } from './tab-rhythm';
import { tieMarks } from './ties';

/** White over and under everything of a system. */
const MARGIN = 7;
/** Least distance between the staff's lowest line and the tab's highest, and between their ink. */
const LEAST_STAFF_TO_TAB = 36;
const INK_TO_TAB = 9;
/** Playing signs over the tab keep this much less than that from the ink over them. */
const SIGNS_GAP = 4 - INK_TO_TAB;

interface SystemRequest {
  readonly index: number;
  readonly y: number;
  /** Index of its first bar. */
  readonly first: number;
  readonly bars: readonly MeasuredBar[];
  readonly after: MeasuredBar | undefined;
  readonly heading: Heading;
  readonly factor: number;
  readonly content: Content;
  readonly style: Style;
}

const recentSystems = new Recent<SystemLayout>(1200);

/** Lays a system out, or finds it laid out already. */
export function layOutSystem(request: SystemRequest): SystemLayout {
  const { index, y, first, bars, after, factor, content } = request;
  const key = [
    request.style.key,
    index === 0 && request.style.options.feel !== false ? content.feel : '',
    first === 0,
    request.style.options.measureNumbers ? content.numbers[first] : '',
    content.strings,
    factor,
    after?.content.events[0]?.tiedIn === 'left',
    after?.lower?.content.events[0]?.tiedIn === 'left',
    JSON.stringify(after && changesIn(after)),
    endsHairpin(after),
    ...bars.map(({ serial }) => serial),
  ].join('|');
  const system = recentSystems.of(key, () => compose(request, key));
  if (system.index === index && system.y === y && system.bars[0]?.bar === first) return system;
  return { ...system, index, y, bars: system.bars.map((box, place) => ({ ...box, bar: first + place })) };
}

/** What a system has to announce of the bar that follows it. */
const changesIn = ({ content }: MeasuredBar): readonly unknown[] => [
  content.changesSignature && [content.changesSignature.from, content.signature],
  content.showsMetre && [content.metre.count, content.metre.unit],
];

/** Whether a hairpin cannot go on behind a system. */
const endsHairpin = (after: MeasuredBar | undefined): boolean =>
  after === undefined || after.content.dynamics[0]?.tick === 0;

/** Puts a system together from the inside out: notes first, then what has to keep clear of them. */
function compose(request: SystemRequest, fingerprint: string): SystemLayout {
  const { content, style, heading } = request;
  const { parts = 'both' } = style.options;
  const bars = placeBars(request);
  const warning = warningOf(request.after?.content, bars.at(-1)?.right ?? heading.right, parts);
  const { right } = warning;
  const signs = [...heading.marks, ...changesInside(bars, parts), ...warning.marks];
  const staff = parts === 'tab' ? [] : staffInk(bars, signs, request.after);
  const kind = bars[0]?.bar.content.staff ?? 'bass';
  const lines = parts === 'tab' ? [] : staffLines(right, kind);
  const lower = lowerStaff(bars, [...lines, ...staff], { ...request, x: bars.at(-1)?.right ?? right, right });
  const atTop = { ...tabAlone(content.strings, style), parts };
  const overTop = parts === 'staff' ? [] : playingSigns(bars, () => tabNumbers(bars, atTop, style), style);
  const tab = tabPlace(staff, overTop, bars, content.strings, style, lower?.top);
  const frets = parts === 'staff' ? [] : tabInk(bars, tab, right, { signs, overTop }, request);
  const frame = lower ? brace(tabBottom(tab)) : parts === 'both' ? bracket(tab) : [];
  const bounds = barLines(bars, tab);
  const above = marksAbove([...lines, ...staff, ...frame, ...(parts === 'tab' ? frets : [])], {
    bars,
    number: style.options.measureNumbers && request.first > 0 ? content.numbers[request.first] : undefined,
    right: style.options.width / style.scale,
    feel: request.index === 0 && style.options.feel !== false ? content.feel : null,
    style,
  });
  const under = lower?.marks ?? [];
  const lowest = parts === 'staff' ? [...staff, ...under, ...bounds] : [...frets, ...frame];
  const below = marksBelow(lowest, bars, request.first === 0, style);
  const marks: readonly Mark[] = [
    ...lines,
    ...frame,
    ...bounds,
    ...frets,
    ...staff,
    ...under,
    ...above,
    ...below,
  ];
  return finishSystem(marks, bars, tab, fingerprint, request);
}

/** Everything on the staff but its lines: signs, notes, ties, slurs, slides, and the dynamics under it. */
function staffInk(
  bars: readonly PlacedBar[],
  signs: readonly Mark[],
  after: MeasuredBar | undefined,
): readonly Mark[] {
  const notes = [...bars.flatMap(staffMarks), ...tieMarks(bars, after)];
  const ink = [...signs, ...notes, ...staffLinks(bars, notes)];
  return [...ink, ...dynamicsRow(bars, skylineOf(ink), STAFF_HEIGHT, endsHairpin(after))];
}

/** Everything on the tab; alone, it has what the staff says beside it: signs, rhythm, dynamics. */
function tabInk(
  bars: readonly PlacedBar[],
  tab: TabPlace,
  right: number,
  { signs, overTop }: { readonly signs: readonly Mark[]; readonly overTop: readonly Mark[] },
  { after, style }: SystemRequest,
): readonly Mark[] {
  const alone = tab.parts === 'tab';
  const numbers = tabMarks(bars, tab, right, style);
  // Beside a staff the staff says how long notes last; alone, the tab says it itself.
  const strings = alone ? [...numbers, ...tabRhythm(bars, tab, style)] : numbers;
  const onTop = overTop.map((mark) => moveMark(mark, 0, tab.top));
  const marks = [...strings, ...onTop, tabClef(tab)];
  if (!alone) return marks;
  const dynamics = dynamicsRow(bars, skylineOf(strings), tabBottom(tab), endsHairpin(after));
  return [...marks, ...centredOn(tab, signs), ...dynamics];
}

function placeBars({ bars, heading, factor }: SystemRequest): readonly PlacedBar[] {
  let x = STAFF_LEFT;
  return bars.map((bar, index): PlacedBar => {
    const signs = index === 0 ? heading.right : x;
    const spacing = index === 0 ? bar.leading : bar.inner;
    const { xs, width } = placeColumns(spacing, factor);
    const placed = {
      bar,
      x,
      right: signs + width,
      signs,
      content: signs + spacing.before,
      columnXs: xs.map((column) => signs + column),
    };
    x = placed.right;
    return placed;
  });
}

function barLines(bars: readonly PlacedBar[], tab: TabPlace): readonly Mark[] {
  return bars.flatMap((placed, index) => {
    const { content } = placed.bar;
    const next = bars[index + 1]?.bar.content;
    const end = next?.repeatStart && content.end !== 'repeat' ? [] : endLine(content.end, placed.right, tab);
    const start = content.repeatStart ? repeatStartLine(repeatStartX(placed, index), tab) : [];
    return [...end, ...start];
  });
}

/** A repeat that begins where another ends shares the thick line with it. */
const repeatStartX = (placed: PlacedBar, index: number): number =>
  index === 0 ? placed.signs + REPEAT_LEAD : placed.x - THICKNESS.thick;

/** The tab stands as near as the ink between it and the staff allows; alone, in the staff's place. */
function tabPlace(
  staff: readonly Mark[],
  overTop: readonly Mark[],
  bars: readonly PlacedBar[],
  strings: number,
  style: Style,
  lower: number | undefined,
): TabPlace {
  const { parts = 'both' } = style.options;
  if (parts === 'tab') return tabAlone(strings, style);
  if (lower !== undefined) return { parts, from: 0, top: lower + STAFF_HEIGHT, lines: 0, space: 0, lower };
  if (parts === 'staff') {
    const { top, bottom } =
      bars[0]?.bar.content.staff === 'rhythm' ? RHYTHM_STAFF : { top: 0, bottom: STAFF_HEIGHT };
    return { parts, from: top, top: bottom, lines: 0, space: 0 };
  }
  const ink = skylineOf(staff);
  const half = style.sizes.tab / 2;
  const tops = bars.flatMap((placed) =>
    placed.bar.content.events.flatMap((event) => {
      if (event.fret?.string !== 1) return [];
      const x = xOfTick(placed, event.start);
      return [ink.bottom(x - half, x + half, STAFF_HEIGHT) + half];
    }),
  );
  const signs = overTop.map(
    ({ box }) => ink.bottom(box.left - 2, box.right + 2, STAFF_HEIGHT) - box.top + SIGNS_GAP,
  );
  const lowest = Math.max(STAFF_HEIGHT, boxOf(staff)?.bottom ?? 0, ...tops, ...signs);
  const top = Math.max(STAFF_HEIGHT + LEAST_STAFF_TO_TAB, lowest + INK_TO_TAB);
  return { parts, from: 0, top, lines: strings, space: style.tabSpace };
}

function finishSystem(
  marks: readonly Mark[],
  bars: readonly PlacedBar[],
  tab: TabPlace,
  fingerprint: string,
  { index, y, first, style }: SystemRequest,
): SystemLayout {
  const { scale, options } = style;
  const box: InkBox = boxOf(marks) ?? { left: 0, right: 0, top: 0, bottom: tabBottom(tab) };
  const down = MARGIN - box.top;
  const ink = marks.map((mark) => finishMark(mark, down));
  const height = box.bottom + down + MARGIN;
  const px = (units: number): number => Math.round(units * scale * 100) / 100;
  return {
    index,
    y,
    width: options.width,
    height: px(height),
    staff: { top: px(down), bottom: px(down + (tab.parts === 'tab' ? tabBottom(tab) : STAFF_HEIGHT)) },
    tab: {
      top: px(down + (tab.lower ?? (tab.parts === 'staff' ? 0 : tab.top))),
      bottom: px(down + tabBottom(tab)),
    },
    bars: bars.map((placed, place) => barBox(placed, first + place, px)),
    fingerprint,
    scale,
    ink,
  };
}

function barBox(placed: PlacedBar, bar: number, px: (units: number) => number): BarBox {
  const { content, columns } = placed.bar;
  const positions = columns.map(({ tick }, index) => ({ tick, x: px(placed.columnXs[index] ?? placed.x) }));
  return {
    bar,
    x: px(placed.x),
    width: px(placed.right - placed.x),
    positions: [...positions, { tick: content.length, x: px(placed.right) }],
  };
}
