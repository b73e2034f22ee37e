import { SIGNS } from '../../core/base';
import { fontMark, glyphMark, type Mark, moveMark, pathMark } from '../ink';
import type { ContentEvent } from '../notation/types';
import { beamInk } from '../vexflow/signs';
import { changesOf, type TabPlace } from './frame';
import { ghostBrackets } from './ghosts';
import { REPEAT_WIDTH } from './measure-bar';
import { type PlacedBar, xOfTick } from './placed';
import { headY, SPACE, STAFF_HEIGHT, THICKNESS } from './style';

/** Signatures inside a system, where key or metre changes. */
export const changesInside = (bars: readonly PlacedBar[], parts: TabPlace['parts']): readonly Mark[] =>
  bars
    .slice(1)
    .flatMap(
      ({ bar: { content }, x }) =>
        changesOf(content, x + (content.repeatStart ? REPEAT_WIDTH : 0), parts).marks,
    );

/** Everything on the staff of one bar: notes, rests, beams, triplets and articulations. */
export function staffMarks(placed: PlacedBar): readonly Mark[] {
  const { content, ink, specs } = placed.bar;
  const signs = content.events.map((event, index) => {
    const x = event.wholeBar ? barMiddle(placed) : xOfTick(placed, event.start);
    const y = content.staff === 'rhythm' && hangs(event) ? SPACE : 0;
    return [...(ink[index] ?? []), ...ghostBrackets(event)].map((mark) => moveMark(mark, x, y));
  });
  const beams = content.beams.map((group) =>
    beamInk(
      group.flatMap((index) => specs[index] ?? []),
      group.map((index) => xOfTick(placed, content.events[index]?.start ?? 0)),
    ),
  );
  const articulations = content.events.flatMap((event, index) =>
    articulationMarks(event, specs[index]?.stem ?? 'up', xOfTick(placed, event.start)),
  );
  const marks = [...signs.flat(), ...beams.flat(), ...articulations];
  return [...marks, ...content.triplets.flatMap((triplet) => tripletMarks(placed, triplet, marks))];
}

/** A whole rest hangs from the fourth line; on the one line of a rhythm from that. */
const hangs = ({ kind, value }: ContentEvent): boolean => kind === 'rest' && value === 1;

const barMiddle = (placed: PlacedBar): number =>
  (placed.content + placed.right - placed.bar.leading.after) / 2;

/** How wide a sign at the head is, and how far from its line it stands. */
export const ARTICULATIONS = {
  staccato: { advance: 3.36, shift: 1.7 },
  tenuto: { advance: 13.52, shift: 1 },
  portato: { advance: 13.52, shift: 1 },
  accent: { advance: 13.56, shift: 2 },
  'strong accent': { advance: 9.44, shift: 1 },
} as const;

export const NEAREST_FIRST = ['staccato', 'tenuto', 'portato', 'accent', 'strong accent'] as const;

/** Articulations stand at the head's side, in a space within the staff and outside it otherwise. */
function articulationMarks(event: ContentEvent, stem: 'up' | 'down', x: number): readonly Mark[] {
  if (event.signs.length === 0) return [];
  const away = stem === 'up' ? 1 : -1;
  let y = headY(event.height) + away * SPACE;
  if (event.height % 2 === 0 && Math.abs(event.height) < 4) y += (away * SPACE) / 2;
  const marks: Mark[] = [];
  for (const articulation of NEAREST_FIRST.filter((sign) => event.signs.includes(sign))) {
    if (articulation === 'accent' || articulation === 'strong accent')
      y = away > 0 ? Math.max(y, STAFF_HEIGHT + 6) : Math.min(y, -6);
    const { drawn } = SIGNS[articulation];
    if (drawn.as !== 'at the head') continue;
    const { advance, shift } = ARTICULATIONS[articulation];
    const code = stem === 'up' ? drawn.below : drawn.above;
    marks.push(glyphMark('articulation', code, x - advance / 2, y - away * shift));
    y += away * SPACE;
  }
  return marks;
}

const TUPLET_FIGURES = { three: 0xe883, six: 0xe886 } as const;
const TUPLET_SIZE = 26;
const TUPLET_GAP = 5;
const HOOK = 6;

/** The figure 3 (6 where the beat has sixteenths only) on the side of the stems, with a bracket where no beam joins the triplet. */
function tripletMarks(
  placed: PlacedBar,
  { first, last }: { readonly first: number; readonly last: number },
  marks: readonly Mark[],
): readonly Mark[] {
  const { content, specs, beamed } = placed.bar;
  const indices = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const noteSpecs = indices.flatMap((index) => {
    const spec = specs[index];
    return spec?.kind === 'note' ? [spec] : [];
  });
  const above = noteSpecs.filter(({ stem }) => stem === 'up').length * 2 >= noteSpecs.length;
  const joined = content.beams.some((group) => indices.every((index) => group.includes(index)));
  const start = xOfTick(placed, content.events[first]?.start ?? 0) - 7;
  const end = xOfTick(placed, content.events[last]?.start ?? 0) + 7;
  const inside = marks.filter(({ box }) => box.left < end && box.right > start).map(({ box }) => box);
  const edge = above
    ? Math.min(-2, ...inside.map(({ top }) => top)) - TUPLET_GAP
    : Math.max(STAFF_HEIGHT + 2, ...inside.map(({ bottom }) => bottom)) + TUPLET_GAP;
  const short = indices.every((index) => (content.events[index]?.value ?? 0) >= 16);
  const figure = fontMark(
    'tuplet',
    String.fromCodePoint(TUPLET_FIGURES[short ? 'six' : 'three']),
    0,
    0,
    'Bravura',
    TUPLET_SIZE,
    false,
    false,
  );
  const width = figure.box.right - figure.box.left;
  const height = figure.box.bottom - figure.box.top;
  const middle = edge + (above ? -height / 2 : height / 2);
  const centre = (start + end) / 2;
  const placedFigure = moveMark(
    figure,
    centre - width / 2 - figure.box.left,
    middle - (figure.box.top + figure.box.bottom) / 2,
  );
  if (joined && beamed[first] === true) return [placedFigure];
  const towards = above ? HOOK : -HOOK;
  const arm = (from: number, to: number, hookAt: number): Mark =>
    pathMark(
      'tuplet',
      [
        { command: 'M', points: [hookAt, middle + towards] },
        { command: 'L', points: [hookAt, middle] },
        { command: 'L', points: [hookAt === from ? to : from, middle] },
      ],
      THICKNESS.tuplet,
    );
  return [placedFigure, arm(start, centre - width / 2 - 4, start), arm(centre + width / 2 + 4, end, end)];
}
