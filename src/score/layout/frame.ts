import { blockMark, glyphMark, lineMark, type Mark, moveMark, pathMark } from '../ink';
import type { BarEnd, ContentBar, StaffKind } from '../notation/types';
import { type ClefKind, clefInk, keyInk, setLeft, timeInk } from '../signs/signatures';
import { SPACE, STAFF_HEIGHT, STAFF_LEFT, type Style, THICKNESS } from './style';

/**
 * The tab's place under the staff, in units from the staff's top line. A tab alone stands in the staff's place;
 * under a staff alone it has no lines.
 */
export interface TabPlace {
  readonly parts: 'both' | 'staff' | 'tab';
  /** Where bar lines begin: at the staff's top line, or over the one line of a rhythm. */
  readonly from: number;
  readonly top: number;
  readonly lines: number;
  readonly space: number;
  /** Top line of a second staff, which ends at `top`; left out where there is none. */
  readonly lower?: number;
}

export const tabBottom = (tab: TabPlace): number => tab.top + Math.max(0, tab.lines - 1) * tab.space;

const CLEF_LEAD = 6;
const KEY_LEAD = 8;
const TIME_LEAD = 8;

type Parts = TabPlace['parts'];

/** A tab alone, with its top line at 0. */
export const tabAlone = (lines: number, style: Style): TabPlace => ({
  parts: 'tab',
  from: 0,
  top: 0,
  lines,
  space: style.tabSpace,
});

/** Signs side by side, set against the staff. */
export interface Heading {
  readonly marks: readonly Mark[];
  readonly right: number;
}

/** Key and time signature from `x` to the right, each after its lead where it is there at all. */
function signatures(
  key: readonly Mark[] | null,
  time: readonly Mark[] | null,
  x: number,
  lead: { readonly key: number; readonly time: number },
): Heading {
  const first = key === null ? { marks: [], right: x } : setLeft(key, x + lead.key);
  const second = time === null ? { marks: [], right: first.right } : setLeft(time, first.right + lead.time);
  return { marks: [...first.marks, ...second.marks], right: second.right };
}

const clefOf = (bar: ContentBar | undefined): ClefKind => {
  const { staff = 'bass' } = bar ?? {};
  return staff === 'bass' || staff === 'treble' ? staff : 'percussion';
};

/** Where the wider of the clefs ends with which a system begins, so that what follows them stands under each other. */
export const clefsEnd = (first: ContentBar | undefined): number =>
  Math.max(
    ...[first, first?.lower ?? first].map(
      (bar) => setLeft(clefInk(clefOf(bar)), STAFF_LEFT + CLEF_LEAD).right,
    ),
  );

/**
 * The clef, the key signature and, where it is due, the time signature at a system's beginning. A tab alone has no
 * key signature, and its clef is drawn with it.
 * @param after where the clefs end
 */
export function headingOf(
  first: ContentBar | undefined,
  strings: number,
  style: Style,
  after: number = clefsEnd(first),
): Heading {
  const { parts = 'both' } = style.options;
  const time = first?.showsMetre ? timeInk(first.metre) : null;
  const lead = { key: KEY_LEAD, time: TIME_LEAD };
  if (parts === 'tab') return signatures(null, time, tabClef(tabAlone(strings, style)).box.right, lead);
  const kind = clefOf(first);
  const clef = setLeft(clefInk(kind), STAFF_LEFT + CLEF_LEAD);
  const signature = first?.signature ?? 0;
  // Naturals that cancel a signature stand where it ends, after the last bar line of the system before.
  const key = signature === 0 ? null : keyInk(signature, 0, kind);
  const signs = signatures(key, time, after, lead);
  return { marks: [...clef.marks, ...signs.marks], right: signs.right };
}

/** White before a signature within a system. */
const CHANGE_LEAD = { key: 9, time: 9 } as const;

/** The key and time signatures of a bar within a system, where they change, from `x` to the right. */
export function changesOf(content: ContentBar, x: number, parts: Parts): Heading {
  const key =
    content.changesSignature && parts !== 'tab'
      ? keyInk(content.signature ?? 0, content.changesSignature.from, clefOf(content))
      : null;
  return signatures(key, content.showsMetre ? timeInk(content.metre) : null, x, CHANGE_LEAD);
}

/** Staff lines go on this far after a signature at a system's end. */
const WARNING_TAIL = 5;

/** What changes with the next system is announced after the last bar line. */
export function warningOf(next: ContentBar | undefined, x: number, parts: Parts): Heading {
  if (next === undefined) return { marks: [], right: x };
  const { marks, right } = changesOf(next, x, parts);
  return { marks, right: marks.length === 0 ? x : right + WARNING_TAIL };
}

/** Signs that are set against the staff, moved to the middle of a tab. */
export function centredOn(tab: TabPlace, marks: readonly Mark[]): readonly Mark[] {
  const down = (tab.top + tabBottom(tab) - STAFF_HEIGHT) / 2;
  return marks.map((mark) => moveMark(mark, 0, down));
}

/** SMuFL's tab clefs reach over six and four lines at a staff space between them. */
const TAB_CLEFS = { four: { code: 0xe06e, spaces: 3 }, six: { code: 0xe06d, spaces: 5 } } as const;
const TAB_CLEF_SHARE = 0.86;

/** The word TAB at a system's beginning, as tall as the tab allows. */
export function tabClef(tab: TabPlace): Mark {
  const clef = tab.lines > 4 ? TAB_CLEFS.six : TAB_CLEFS.four;
  const size =
    ((4 * ((tab.lines - 1) * tab.space)) / clef.spaces) * TAB_CLEF_SHARE * (clef.spaces / (clef.spaces + 1));
  const middle = (tab.top + tabBottom(tab)) / 2;
  return glyphMark('clef', clef.code, STAFF_LEFT + CLEF_LEAD, middle, size);
}

/** Staff lines over the whole width: five, or the middle one alone for a rhythm. */
export function staffLines(right: number, staff: StaffKind): readonly Mark[] {
  const lines = staff === 'rhythm' ? [2] : [0, 1, 2, 3, 4];
  return lines.map((line) =>
    lineMark('staff-line', STAFF_LEFT, line * SPACE, right, line * SPACE, THICKNESS.staff),
  );
}

/** Bar lines on the one line of a rhythm reach a space over and under it. */
export const RHYTHM_STAFF = { top: STAFF_HEIGHT / 2 - SPACE, bottom: STAFF_HEIGHT / 2 + SPACE } as const;

const BRACKET_TOP = 0xe003;
const BRACKET_BOTTOM = 0xe004;
const BRACKET_OVERLAP = 2;

/** The bracket and the line that join staff and tab. */
export function bracket(tab: TabPlace): readonly Mark[] {
  const bottom = tabBottom(tab);
  const edge = THICKNESS.staff / 2;
  return [
    lineMark('bar-line', STAFF_LEFT, -edge, STAFF_LEFT, bottom + edge, THICKNESS.barLine),
    blockMark('bar-line', 0, -BRACKET_OVERLAP, THICKNESS.bracket, bottom + BRACKET_OVERLAP),
    glyphMark('bar-line', BRACKET_TOP, 0, -BRACKET_OVERLAP),
    glyphMark('bar-line', BRACKET_BOTTOM, 0, bottom + BRACKET_OVERLAP),
  ];
}

/** How far the brace keeps from the staves, and how far its curves swing out, as shares of its height. */
const BRACE_GAP = 1.5;
const BRACE = { width: 7.5, inner: 5.5, swing: 0.16, turn: 0.37 } as const;

/** The brace and the line that join two staves which one player reads, down to `bottom`. */
export function brace(bottom: number): readonly Mark[] {
  const edge = THICKNESS.staff / 2;
  const { width, inner, swing, turn } = BRACE;
  const right = STAFF_LEFT - BRACE_GAP;
  const left = right - width;
  const height = bottom + 2 * edge;
  const at = (share: number): number => share * height - edge;
  const curve = (...points: number[]) => ({ command: 'C', points }) as const;
  return [
    lineMark('bar-line', STAFF_LEFT, -edge, STAFF_LEFT, bottom + edge, THICKNESS.barLine),
    pathMark(
      'brace',
      [
        { command: 'M', points: [right, at(0)] },
        curve(left, at(swing), right, at(turn), left, at(0.5)),
        curve(right, at(1 - turn), left, at(1 - swing), right, at(1)),
        curve(left + inner, at(1 - swing), right + inner, at(1 - turn), left, at(0.5)),
        curve(right + inner, at(turn), left + inner, at(swing), right, at(0)),
        { command: 'Z', points: [] },
      ],
      0,
    ),
  ];
}

const SEPARATION = 3.4;
const DOT = 2;

/** The line at a bar's end, its right edge at `x`; a repeat that begins there shares its thick line. */
export function endLine(kind: BarEnd, x: number, tab: TabPlace): readonly Mark[] {
  const { barLine, thick } = THICKNESS;
  switch (kind) {
    case 'single':
      return [upright(x - barLine, barLine, tab)];
    case 'double':
      return [upright(x - barLine, barLine, tab), upright(x - 2 * barLine - SEPARATION, barLine, tab)];
    case 'final':
      return [upright(x - thick, thick, tab), upright(x - thick - SEPARATION - barLine, barLine, tab)];
    case 'repeat': {
      const thin = x - thick - SEPARATION - barLine;
      return [
        upright(x - thick, thick, tab),
        upright(thin, barLine, tab),
        ...dots(thin - SEPARATION - DOT, tab),
      ];
    }
  }
}

/** A repeat's beginning, its thick line from `x` to the right. */
export function repeatStartLine(x: number, tab: TabPlace): readonly Mark[] {
  const { barLine, thick } = THICKNESS;
  const thin = x + thick + SEPARATION;
  return [
    upright(x, thick, tab),
    upright(thin, barLine, tab),
    ...dots(thin + barLine + SEPARATION + DOT, tab),
  ];
}

const upright = (left: number, width: number, tab: TabPlace): Mark =>
  blockMark(
    'bar-line',
    left,
    tab.from - THICKNESS.staff / 2,
    left + width,
    tabBottom(tab) + THICKNESS.staff / 2,
  );

function dots(x: number, tab: TabPlace): readonly Mark[] {
  const middle = (tab.top + tabBottom(tab)) / 2;
  const apart = tab.lines % 2 === 0 ? tab.space : tab.space / 2;
  const onStaff = (tab.parts === 'tab' ? [] : [0, ...(tab.lower === undefined ? [] : [tab.lower])]).flatMap(
    (staff) => [staff + STAFF_HEIGHT / 2 - SPACE / 2, staff + STAFF_HEIGHT / 2 + SPACE / 2],
  );
  const onTab = tab.parts === 'staff' ? [] : [middle - apart, middle + apart];
  return [...onStaff, ...onTab].map((y) => moveMark(DOT_MARK, x, y));
}

/** A circle of four arcs. */
const ARC = DOT * 0.5523;
const DOT_MARK = pathMark(
  'bar-line',
  [
    { command: 'M', points: [-DOT, 0] },
    { command: 'C', points: [-DOT, -ARC, -ARC, -DOT, 0, -DOT] },
    { command: 'C', points: [ARC, -DOT, DOT, -ARC, DOT, 0] },
    { command: 'C', points: [DOT, ARC, ARC, DOT, 0, DOT] },
    { command: 'C', points: [-ARC, DOT, -DOT, ARC, -DOT, 0] },
    { command: 'Z', points: [] },
  ],
  0,
);
