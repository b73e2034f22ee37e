import { capitalised, counted, listed } from '../../core/base';
import type { HandoutBlock } from '../../core/lesson';
import type { ScoreLayout, Steps } from '../../score';
import { atFoot, cautionFoot } from '../blocks/cautions';
import { breakPages, type Room, rowsHeight, whiteness } from './breaks';
import { type Copy, composeRows, type Tools } from './compose';
import type { Row } from './rows';
import { type Spacing, sizesFor } from './sizes';

/** Rows parted into pages. */
export interface FittedPages {
  readonly pages: readonly (readonly Row[])[];
  readonly scores: readonly ScoreLayout[];
  readonly remarks: readonly string[];
}

/**
 * Finds the spacing. Things stand comfortably unless moving them closer saves a page; the staff becomes smaller,
 * within the limits of print, where that alone does not, and fewer shapes are shown. At last what explains the music is
 * left out rather than that less than half a page is begun for it. What is left out is said; a wish for one page that
 * cannot be met is answered with what to leave out.
 */
export function* fitPages(copy: Copy, room: Room, tools: Tools): Steps<FittedPages> {
  const { spacings } = sizesFor(copy.settings.print);
  const [comfortable, ...closer] = spacings;
  const whole = settingOnce((spacing) => setPages(copy, spacing, room, tools));
  const part = (less: Copy) => settingOnce((spacing) => setPages(less, spacing, room, tools));
  const first = yield* whole(comfortable);
  if (first.pages.length === 1) return { ...first, remarks: [] };
  const better: SetPages[] = [];
  for (const spacing of closer) {
    if (spacing.shapeRows !== comfortable.shapeRows && !copy.settings.blocks.includes('shapes')) continue;
    const pages = yield* whole(spacing);
    if (pages.pages.length < first.pages.length) better.push(pages);
  }
  const wanted = copy.settings.onePage ? 1 : Number.POSITIVE_INFINITY;
  const complete =
    better.find((pages) => pages.pages.length <= wanted) ??
    better[0] ??
    (yield* fuller(first, room, whole, closer));
  const closest = spacings.at(-1) ?? comfortable;
  const spill = spillOf(yield* whole(closest), room);
  const spared = yield* leastSpared(copy, complete.pages.length, spill, spacings, part);
  const chosen = spared?.set ?? complete;
  const unmet = copy.settings.onePage && chosen.pages.length > 1;
  const fits = function* (less: Copy): Steps<boolean> {
    return (yield* part(less)(closest)).pages.length === 1;
  };
  return {
    ...chosen,
    remarks: [
      ...leftOutRemark(necksOn(first.pages) - necksOn(chosen.pages), spared?.parts ?? []),
      ...(unmet ? [yield* onePageRemark(copy, chosen.pages.length, fits)] : []),
    ],
  };
}

/** Which part of a page everything is too much for one page fewer, however it is shared out among the pages. */
function spillOf({ pages }: SetPages, room: Room): number {
  if (pages.length < 2) return 0;
  const fewer = room.first + (pages.length - 2) * room.later;
  return (pages.reduce((sum, rows) => sum + rowsHeight(rows), 0) - fewer) / room.later;
}

/**
 * For so much of a page one part that only explains the music is left out, and several for so much (common practice, no
 * source). Two pages are made one with more care, unless one is wished for: by one part of words, and for less.
 */
const SPILL = { one: 0.5, several: 1 / 3 } as const;
const SPILL_OF_TWO = { one: 1 / 3, several: 0 } as const;
/** In a sheet of more pages one page less is not worth a part of it. */
const MOST_PAGES = 4;

/** What explains the music and is left out to save a page, in the order in which it is tried. */
const SPARED: readonly (readonly HandoutBlock[])[] = [
  ['shapes'],
  ['rhythm'],
  ['shapes', 'rhythm'],
  ['explained'],
  ['shapes', 'explained'],
  ['rhythm', 'explained'],
  ['shapes', 'rhythm', 'explained'],
];

interface Spared {
  readonly parts: readonly HandoutBlock[];
  readonly set: SetPages;
}

/** The least that saves a page when it is left out, set as comfortably as that allows; null where nothing does. */
function* leastSpared(
  copy: Copy,
  pages: number,
  spill: number,
  spacings: readonly Spacing[],
  part: (less: Copy) => Setting,
): Steps<Spared | null> {
  if (pages === 1 || pages > MOST_PAGES) return null;
  const { blocks, onePage } = copy.settings;
  const most = pages > 2 || onePage ? SPILL : SPILL_OF_TWO;
  const isSpared = (part: HandoutBlock): boolean =>
    blocks.includes(part) && (most === SPILL || part !== 'shapes');
  for (const parts of SPARED.filter((choice) => choice.every(isSpared))) {
    if (spill >= (parts.length === 1 ? most.one : most.several)) continue;
    const set = part(without(copy, parts));
    const closest = spacings.at(-1);
    if (closest === undefined || (yield* set(closest)).pages.length >= pages) continue;
    for (const spacing of spacings) {
      const saving = yield* set(spacing);
      if (saving.pages.length < pages) return { parts, set: saving };
    }
  }
  return null;
}

const necksOn = (pages: FittedPages['pages']): number =>
  pages.flat().reduce((sum, { marks }) => sum + marks.filter(({ kind }) => kind === 'neck').length, 0);

function leftOutRemark(shapes: number, parts: readonly HandoutBlock[]): readonly string[] {
  const others = DISPENSABLE.filter(({ part }) => part !== 'shapes' && parts.some((each) => each === part));
  const names = [
    ...(shapes === 0 ? [] : [`${counted(shapes, 'shape')} to learn`]),
    ...others.map(({ words }) => words),
  ];
  if (names.length === 0) return [];
  const verb = names.length > 1 || shapes > 1 ? 'are' : 'is';
  return [`${capitalised(listed(names))} ${verb} left out, which saves a page.`];
}

interface SetPages {
  readonly pages: FittedPages['pages'];
  readonly scores: FittedPages['scores'];
  readonly spacing: Spacing;
}

/** Sets something with a spacing. */
type Setting = (spacing: Spacing) => Steps<SetPages>;

/** What several questions have set with the same spacing is set once. */
function settingOnce(set: Setting): Setting {
  const done = new Map<Spacing, SetPages>();
  return function* (spacing) {
    const pages = done.get(spacing) ?? (yield* set(spacing));
    done.set(spacing, pages);
    return pages;
  };
}

/** A page left clearly whiter than need be: a quarter of one page or the like. */
const CLEARLY = 0.25 ** 2;

/** The pages as they are, or with things closer where that fills the pages before the last clearly better. */
function* fuller(first: SetPages, room: Room, set: Setting, closer: readonly Spacing[]): Steps<SetPages> {
  const white = whiteness(first.pages, room);
  if (white < CLEARLY) return first;
  const staff = first.spacing.staff;
  for (const spacing of closer.filter((each) => each.staff === staff)) {
    const other = yield* set(spacing);
    if (other.pages.length === first.pages.length && whiteness(other.pages, room) < white - CLEARLY / 2)
      return other;
  }
  return first;
}

function* setPages(copy: Copy, spacing: Spacing, room: Room, tools: Tools): Steps<SetPages> {
  const { rows, scores } = yield* composeRows(copy, spacing, tools);
  yield;
  return { pages: breakPages(rows, roomOver(footOf(copy, tools), room)), scores, spacing };
}

/** What stands at the foot of the first page over its number; null where nothing does. */
export const footOf = ({ settings, width }: Copy, { measure }: Tools): Row | null =>
  atFoot(settings.blocks) ? cautionFoot(width, sizesFor(settings.print), measure) : null;

/** The room that what stands at the foot of the first page leaves. */
export const roomOver = (foot: Row | null, room: Room): Room =>
  foot === null ? room : { ...room, first: room.first - foot.height - foot.gap };

type Part = HandoutBlock | 'blank bars' | 'code';

/** What can be left out for the sake of one page, what is missed least first (common practice, no source). */
const DISPENSABLE: readonly { readonly part: Part; readonly words: string }[] = [
  { part: 'code', words: 'the QR code' },
  { part: 'chart', words: 'the chord chart' },
  { part: 'shapes', words: 'the shapes' },
  { part: 'neck', words: 'the line on the neck' },
  { part: 'rhythm', words: 'the tricky rhythm' },
  { part: 'organ', words: 'the organ' },
  { part: 'chops', words: 'the chops' },
  { part: 'drums', words: 'the drums' },
  { part: 'blank bars', words: 'the blank bars' },
  { part: 'diary', words: 'the practice diary' },
  { part: 'explained', words: 'what to practise' },
  { part: 'clapping', words: 'the rhythm to clap' },
  { part: 'practice', words: 'the practice steps' },
  { part: 'cautions', words: 'the cautions' },
  { part: 'notes', words: 'the notes' },
];

function* onePageRemark(copy: Copy, pages: number, fits: (less: Copy) => Steps<boolean>): Steps<string> {
  const there = DISPENSABLE.filter(({ part }) => isThere(part, copy));
  const start = `The handout needs ${pages} pages.`;
  const fitsWithout = (choice: readonly (typeof there)[number][]): Steps<boolean> =>
    fits(
      without(
        copy,
        choice.map(({ part }) => part),
      ),
    );
  const choice = yield* leastToLeaveOut(there, fitsWithout);
  if (choice !== null) return `${start} It fits on one without ${listed(choice.map(({ words }) => words))}.`;
  return `${start} The music alone does not fit on one: share the bars out over two handouts.`;
}

function isThere(part: Part, copy: Copy): boolean {
  if (part === 'code') return copy.code !== null;
  if (part !== 'blank bars') return copy.settings.blocks.includes(part);
  return copy.sheets.some(({ kind }) => kind === 'blank') && copy.sheets.some(({ kind }) => kind === 'line');
}

function without(copy: Copy, parts: readonly Part[]): Copy {
  const left = new Set<string>(parts);
  return {
    ...copy,
    sheets: left.has('blank bars') ? copy.sheets.filter(({ kind }) => kind === 'line') : copy.sheets,
    code: left.has('code') ? null : copy.code,
    settings: { ...copy.settings, blocks: copy.settings.blocks.filter((block) => !left.has(block)) },
  };
}

/**
 * What is left out so that the rest fits: one thing or two, where that is enough, the first in their order; else as many
 * of the first as it takes, without those that turn out to have room. Null where even all of them are not enough.
 */
function* leastToLeaveOut<Thing>(
  things: readonly Thing[],
  fitsWithout: (choice: readonly Thing[]) => Steps<boolean>,
): Steps<readonly Thing[] | null> {
  if (!(yield* fitsWithout(things))) return null;
  const pairs = things.flatMap((one, index) => things.slice(index + 1).map((other) => [one, other]));
  for (const few of [...things.map((one) => [one]), ...pairs]) if (yield* fitsWithout(few)) return few;
  let chosen = things.slice(0, 1);
  while (!(yield* fitsWithout(chosen))) chosen = things.slice(0, chosen.length + 1);
  for (const thing of [...chosen].reverse()) {
    const fewer = chosen.filter((other) => other !== thing);
    if (yield* fitsWithout(fewer)) chosen = fewer;
  }
  return chosen;
}
