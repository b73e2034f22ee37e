import { hashText } from '../../core/base';
import { boxOf, finishMark, type Mark, moveMark } from '../ink';
import type { Content, ContentEvent } from '../notation/types';
import { Recent } from '../recent';
import type { BarBox, InkBox, SystemLayout } from '../types';
import { dynamicsRow } from './dynamics';
import {
  bracket,
  centredOn,
  changesOf,
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
import { type MeasuredBar, REPEAT_LEAD, REPEAT_WIDTH } from './measure-bar';
import { playingSigns } from './over-tab';
import { type PlacedBar, xOfTick } from './placed';
import { marksAbove } from './rows-above';
import { marksBelow } from './rows-below';
import { skylineOf } from './skyline';
import { placeColumns } from './spacing';
import { HALF_HEAD, staffMarks, tieMark } from './staff';
import { STAFF_HEIGHT, STAFF_LEFT, type Style, THICKNESS } from './style';
import { tabMarks, tabNumbers } from './tab';
import { tabRhythm } from './tab-rhythm';

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
    index === 0 && request.style.options.feel !== false ? content.feel : '',
    first === 0,
    request.style.options.measureNumbers ? content.numbers[first] : '',
    content.strings,
    factor,
    after?.content.events[0]?.tiedIn === true,
    JSON.stringify(after && changesIn(after)),
    endsHairpin(after),
    ...bars.map((bar) => bar.key),
  ].join('|');
  const system = recentSystems.of(key, () => compose(request, fingerprintOf(key)));
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

/** Two hashes and the length: a long text is not worth handing on, and one hash alone could meet another. */
const fingerprintOf = (key: string): string =>
  [hashText(key), hashText(`${key.length}${key}`), key.length].join('-');

/** Puts a system together from the inside out: notes first, then what has to keep clear of them. */
function compose(request: SystemRequest, fingerprint: string): SystemLayout {
  const { content, style, heading } = request;
  const { parts = 'both' } = style.options;
  const bars = placeBars(request);
  const warning = warningOf(request.after?.content, bars.at(-1)?.right ?? heading.right, parts);
  const { right } = warning;
  const signs = [...heading.marks, ...barHeadings(bars, parts), ...warning.marks];
  const notes = parts === 'tab' ? [] : [...bars.flatMap(staffMarks), ...tieMarks(bars, request)];
  const onStaff = parts === 'tab' ? [] : [...signs, ...notes, ...staffLinks(bars, notes)];
  const ends = endsHairpin(request.after);
  const staff =
    parts === 'tab' ? [] : [...onStaff, ...dynamicsRow(bars, skylineOf(onStaff), STAFF_HEIGHT, ends)];
  const kind = bars[0]?.bar.content.staff ?? 'bass';
  const lines = parts === 'tab' ? [] : staffLines(right, kind);
  const atTop = { ...tabAlone(content.strings, style), parts };
  const overTop = parts === 'staff' ? [] : playingSigns(bars, tabNumbers(bars, atTop, style), style);
  const tab = tabPlace(staff, overTop, bars, content.strings, style);
  const numbers = parts === 'staff' ? [] : tabMarks(bars, tab, right, style);
  // Beside a staff the staff says how long notes last; alone, the tab says it itself.
  const strings = parts === 'tab' ? [...numbers, ...tabRhythm(bars, tab)] : numbers;
  const frets =
    parts === 'staff'
      ? []
      : [
          ...strings,
          ...overTop.map((mark) => moveMark(mark, 0, tab.top)),
          tabClef(tab),
          ...(parts === 'tab'
            ? [...centredOn(tab, signs), ...dynamicsRow(bars, skylineOf(strings), tabBottom(tab), ends)]
            : []),
        ];
  const frame = parts === 'both' ? bracket(tab) : [];
  const bounds = barLines(bars, tab);
  const above = marksAbove([...lines, ...staff, ...frame, ...(parts === 'tab' ? frets : [])], {
    bars,
    number: style.options.measureNumbers && request.first > 0 ? content.numbers[request.first] : undefined,
    right: style.options.width / style.scale,
    feel: request.index === 0 && style.options.feel !== false ? content.feel : null,
    style,
  });
  const lowest = parts === 'staff' ? [...staff, ...bounds] : [...frets, ...frame];
  const below = marksBelow(lowest, bars, request.first === 0, style);
  const marks: readonly Mark[] = [...lines, ...frame, ...bounds, ...frets, ...staff, ...above, ...below];
  return finishSystem(marks, bars, tab, fingerprint, request);
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

/** Signatures inside a system, where key or metre changes. */
function barHeadings(bars: readonly PlacedBar[], parts: TabPlace['parts']): readonly Mark[] {
  return bars
    .slice(1)
    .flatMap(
      ({ bar: { content }, x }) =>
        changesOf(content, x + (content.repeatStart ? REPEAT_WIDTH : 0), parts).marks,
    );
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

/** Heights of the heads that are tied; of several, the upper half of the ties bows up, the lower half down. */
function tieSides(
  { height, heads }: ContentEvent,
  hangs: boolean,
): readonly { readonly height: number; readonly hangs: boolean }[] {
  if (heads === undefined) return [{ height, hangs }];
  return heads.map((head, index) => ({ height: head.height, hangs: index < heads.length / 2 }));
}

/** A tie bows under the heads when all stems go up, else over them. */
function tieMarks(bars: readonly PlacedBar[], { after }: SystemRequest): readonly Mark[] {
  const ties: Mark[] = [];
  bars.forEach((placed, barIndex) => {
    const { content, specs } = placed.bar;
    const { events } = content;
    events.forEach((event, index) => {
      const x = xOfTick(placed, event.start);
      const from = x + HALF_HEAD + 1.5;
      const up = specs[index]?.stem === 'up';
      const tie = (hangs: boolean, begin: number, end: number): void => {
        for (const side of tieSides(event, hangs)) ties.push(tieMark({ ...side, from: begin, to: end }));
      };
      if (event.tiedIn && barIndex === 0) {
        tie(up, Math.min(placed.content + 3, x - 16), x - HALF_HEAD - 1.5);
      }
      const next = events[index + 1];
      if (event.tied && next) {
        tie(up && specs[index + 1]?.stem === 'up', from, xOfTick(placed, next.start) - HALF_HEAD - 1.5);
      }
      if (!event.tiedOut) return;
      const nextBar = bars[barIndex + 1];
      const following = nextBar?.bar ?? after;
      const goesOn = following?.content.events[0]?.tiedIn === true;
      const to = nextBar && goesOn ? xOfTick(nextBar, 0) - HALF_HEAD - 1.5 : placed.right - 3;
      tie(up && !(goesOn && following.specs[0]?.stem === 'down'), from, to);
    });
  });
  return ties;
}

/** The tab stands as near as the ink between it and the staff allows; alone, in the staff's place. */
function tabPlace(
  staff: readonly Mark[],
  overTop: readonly Mark[],
  bars: readonly PlacedBar[],
  strings: number,
  style: Style,
): TabPlace {
  const { parts = 'both' } = style.options;
  if (parts === 'tab') return tabAlone(strings, style);
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
    tab: { top: px(down + (tab.parts === 'staff' ? 0 : tab.top)), bottom: px(down + tabBottom(tab)) },
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
