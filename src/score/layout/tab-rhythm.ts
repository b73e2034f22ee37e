import { blockMark, boxOf, glyphMark, lineMark, type Mark, moveMark } from '../ink';
import type { ContentEvent } from '../notation/types';
import { curveMark } from './curve';
import { type TabPlace, tabBottom } from './frame';
import { eventsOf, type PlacedEvent } from './joints';
import { END_WIDTH } from './measure-bar';
import { type PlacedBar, xOfTick } from './placed';
import type { Style } from './style';

/** From the lowest tab line, or the fret numbers on it, to the stems; and how long stems are. */
const GAP = 9;
const BRACKET_SHARE = 0.57;
const LEAST_GAP = 2;
const STEM = 27;
/** A half note's stem is half as long, and a whole note has none (usual in tablature; common practice, no source). */
const HALF_STEM = 13;
const STEM_WIDTH = 1.5;
const BEAM = 4.5;
const BEAM_STEP = 7;
const STUB = 9;
/** Small enough to stay clear of the fret numbers on the lowest line. */
const FLAG_SIZE = 32;
const DOT_GAP = 4;
const DOT = 0xe1e7;
const THREE = 0xe883;
const THREE_SIZE = 26;
const TIE_GAP = 3;
/** How far left of its stem a tie begins that comes from elsewhere. */
const TIE_IN = 18;

/** SMuFL's glyphs. */
const FLAGS: Readonly<Record<number, number>> = { 8: 0xe241, 16: 0xe243 };
const RESTS: Readonly<Record<number, number>> = { 1: 0xe4e3, 2: 0xe4e4, 4: 0xe4e5, 8: 0xe4e6, 16: 0xe4e7 };

/** Where the stems of a tab begin and end. */
interface Lane {
  readonly top: number;
  readonly bottom: number;
  readonly middle: number;
}

/** @param numbers size of the fret numbers, whose brackets reach deepest under their line */
const laneOf = (tab: TabPlace, numbers: number): Lane => {
  const bottom = tabBottom(tab);
  const top = bottom + Math.max(GAP, numbers * BRACKET_SHARE + LEAST_GAP);
  return { top, bottom: top + STEM, middle: (tab.top + bottom) / 2 };
};

/**
 * The rhythm of a tab that stands alone: stems, flags, beams, dots, triplets and ties under it, and rests on it, so
 * that a silence is a silence.
 */
export function tabRhythm(bars: readonly PlacedBar[], tab: TabPlace, { sizes }: Style): readonly Mark[] {
  const lane = laneOf(tab, sizes.tab);
  return [
    ...eventsOf(bars).flatMap((placed) => eventMarks(placed, lane)),
    ...bars.flatMap((placed) => [...beamMarks(placed, lane), ...tripletMarks(placed, lane)]),
    ...tieMarks(bars, lane),
  ];
}

const isBeamed = ({ placed, index }: PlacedEvent): boolean =>
  placed.bar.content.beams.some((group) => group.includes(index));

const stemEnd = ({ value }: ContentEvent, lane: Lane): number =>
  value === 2 ? lane.top + HALF_STEM : lane.bottom;

function eventMarks(placed: PlacedEvent, lane: Lane): readonly Mark[] {
  const { event, x } = placed;
  if (event.kind === 'rest') return restMarks(placed, lane);
  const end = stemEnd(event, lane);
  const stem = event.value > 1 ? [lineMark('stem', x, lane.top, x, end, STEM_WIDTH)] : [];
  const flag = FLAGS[event.value];
  const flags =
    flag !== undefined && !isBeamed(placed)
      ? [glyphMark('flag', flag, x - STEM_WIDTH / 2, end, FLAG_SIZE)]
      : [];
  const dotX = (flags[0]?.box.right ?? x) + DOT_GAP;
  const dots = event.dots > 0 ? [glyphMark('dot', DOT, dotX, lane.top + 4)] : [];
  return [...stem, ...flags, ...dots];
}

function restMarks({ event, placed, x }: PlacedEvent, lane: Lane): readonly Mark[] {
  const code = RESTS[event.value];
  if (code === undefined) return [];
  const mark = glyphMark('rest', code, 0, 0);
  const centre = event.wholeBar ? (placed.content + placed.right) / 2 : x;
  const rest = moveMark(
    mark,
    centre - (mark.box.left + mark.box.right) / 2,
    lane.middle - (mark.box.top + mark.box.bottom) / 2,
  );
  const dots = event.dots > 0 ? [glyphMark('dot', DOT, rest.box.right + DOT_GAP, lane.middle - 5)] : [];
  return [rest, ...dots];
}

/** A beam joins the stems' ends; sixteenths have a second one over it. */
function beamMarks(placed: PlacedBar, lane: Lane): readonly Mark[] {
  const { events, beams } = placed.bar.content;
  return beams.flatMap((group) => {
    const notes = group.flatMap((index) => {
      const event = events[index];
      return event ? [{ value: event.value, x: xOfTick(placed, event.start) }] : [];
    });
    const half = STEM_WIDTH / 2;
    const beam = (from: number, to: number, step: number): Mark => {
      const bottom = lane.bottom - step * BEAM_STEP;
      return blockMark('beam', from - half, bottom - BEAM, to + half, bottom);
    };
    const first = notes[0];
    const last = notes.at(-1);
    if (first === undefined || last === undefined) return [];
    const second = notes.flatMap((note, index) => {
      if (note.value < 16) return [];
      const [before, after] = [notes[index - 1], notes[index + 1]];
      if (after !== undefined && after.value >= 16) return [beam(note.x, after.x, 1)];
      if (before !== undefined && before.value >= 16) return [];
      return [before === undefined ? beam(note.x, note.x + STUB, 1) : beam(note.x - STUB, note.x, 1)];
    });
    return [beam(first.x, last.x, 0), ...second];
  });
}

function tripletMarks(placed: PlacedBar, lane: Lane): readonly Mark[] {
  const { events, triplets } = placed.bar.content;
  return triplets.map(({ first, last }) => {
    const [from, to] = [first, last].map((index) => xOfTick(placed, events[index]?.start ?? 0));
    const figure = glyphMark('tuplet', THREE, 0, 0, THREE_SIZE);
    const box = boxOf([figure]) ?? figure.box;
    return moveMark(
      figure,
      ((from ?? 0) + (to ?? 0)) / 2 - (box.left + box.right) / 2,
      lane.bottom + TIE_GAP - box.top,
    );
  });
}

/** A tie hangs under the stems' beginnings from note to note, and to the bar line where it leads elsewhere. */
function tieMarks(bars: readonly PlacedBar[], lane: Lane): readonly Mark[] {
  return bars.flatMap((placed, bar) =>
    placed.bar.content.events.flatMap((event, index): readonly Mark[] => {
      const x = xOfTick(placed, event.start);
      const into = event.tiedIn === 'elsewhere' ? [tieMark(x - TIE_IN, x - TIE_GAP, lane)] : [];
      if (!event.tied && !event.tiedOut) return into;
      const next = event.tied ? placed.bar.content.events[index + 1] : undefined;
      const nextBar = bars[bar + 1];
      const to = next
        ? xOfTick(placed, next.start)
        : nextBar?.bar.content.events[0]?.tiedIn === 'left'
          ? xOfTick(nextBar, 0)
          : placed.right - END_WIDTH[placed.bar.content.end];
      return [...into, tieMark(x + TIE_GAP, to - TIE_GAP, lane)];
    }),
  );
}

function tieMark(from: number, to: number, lane: Lane): Mark {
  const y = lane.top + 1;
  return curveMark('tie', { x: from, y }, { x: to, y }, 1, Math.min(7, 3 + (to - from) * 0.05));
}
