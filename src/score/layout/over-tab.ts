import { SIGNS } from '../../core/base';
import { boxOf, glyphMark, lineMark, type Mark, moveMark, textMark } from '../ink';
import { eventsOf, jointsOf, type PlacedEvent } from './joints';
import type { PlacedBar } from './placed';
import { skylineOf } from './skyline';
import { ARTICULATIONS, NEAREST_FIRST } from './staff';
import { type Style, THICKNESS } from './style';

/** White over the ink below a row, and over the top line. */
const GAP = 3;
const OVER_LINE = 4;
/** A letter that would stand on a bar line stands this far before it. */
const BESIDE_LINE = 3;
/** A broken line's dashes, the white between them, and the hook at its end. */
const DASH = { length: 5, white: 4 } as const;
const HOOK = 5;
const DASH_HEIGHT = 0.35;

/** Letters of the hand that plucks, at its notes: fingers, slap, pop. */
function lettersAtNotes(bars: readonly PlacedBar[], { sizes }: Style): readonly Mark[] {
  return eventsOf(bars).flatMap(({ event, x }) =>
    event.signs.flatMap((sign) => {
      const { drawn } = SIGNS[sign];
      return drawn.as === 'letter'
        ? [textMark('playing-sign', drawn.text, x, 0, { size: sizes.finger, anchor: 'middle' })]
        : [];
    }),
  );
}

/** Letters of the hand that frets, over its curves: hammer-on, pull-off. */
function lettersOverCurves(bars: readonly PlacedBar[], { sizes }: Style): readonly Mark[] {
  return jointsOf(bars).flatMap(({ exit, from, to, edge }) => {
    const { drawn } = SIGNS[exit.sign];
    if (drawn.as !== 'curve' || drawn.letter === undefined || from === null) return [];
    const x = (from.x + (to?.x ?? edge)) / 2;
    const letter = textMark('playing-sign', drawn.letter, x, 0, { size: sizes.small, anchor: 'middle' });
    const { right } = from.placed;
    const onBarLine = letter.box.left < right + BESIDE_LINE && letter.box.right > right - BESIDE_LINE;
    return [onBarLine ? moveMark(letter, right - BESIDE_LINE - letter.box.right, 0) : letter];
  });
}

/** Beside a staff, articulations stand at its heads; a tab alone has them over its lines, the nearest first. */
function articulationsOverTab(bars: readonly PlacedBar[], { options }: Style): readonly Mark[] {
  if (options.parts !== 'tab') return [];
  return eventsOf(bars).flatMap(({ event, x }) =>
    NEAREST_FIRST.filter((sign) => event.signs.includes(sign)).flatMap((sign) => {
      const { drawn } = SIGNS[sign];
      return drawn.as === 'at the head'
        ? [glyphMark('articulation', drawn.above, x - ARTICULATIONS[sign].advance / 2, 0)]
        : [];
    }),
  );
}

interface Run {
  readonly text: string;
  readonly first: PlacedEvent;
  last: PlacedEvent;
}

/** Notes in a row that share a sign with a broken line; silence between them does not end it. */
function runs(bars: readonly PlacedBar[]): readonly Run[] {
  const found: Run[] = [];
  let open: Run | null = null;
  for (const placed of eventsOf(bars)) {
    const { event } = placed;
    if (event.kind === 'rest') continue;
    const text = event.signs.map((sign) => SIGNS[sign].drawn).find((drawn) => drawn.as === 'stretch')?.text;
    const struck = event.fret !== null && event.tiedIn !== 'left';
    if (open && (!struck || text === open.text)) open.last = placed;
    else if (text === undefined) open = null;
    else {
      open = { text, first: placed, last: placed };
      found.push(open);
    }
  }
  return found;
}

/** `P.M.` or `let ring`, and over several notes a broken line to the last of them. */
function stretches(bars: readonly PlacedBar[], { sizes }: Style): readonly (readonly Mark[])[] {
  return runs(bars).map(({ text, first, last }) => {
    const word = textMark('playing-sign', text, first.x - 6, 0, { size: sizes.small, italic: true });
    const y = -sizes.small * DASH_HEIGHT;
    const end = last.x + 6;
    const dashes: Mark[] = [];
    let x = word.box.right + DASH.white;
    if (last === first || end - x < DASH.length) return [word];
    for (; x + DASH.length <= end; x += DASH.length + DASH.white) {
      dashes.push(lineMark('playing-sign', x, y, x + DASH.length, y, THICKNESS.box));
    }
    const hook = lineMark('playing-sign', end, y - HOOK / 2, end, y + HOOK / 2, THICKNESS.box);
    return [word, ...dashes, hook];
  });
}

const isPlain = ({ event: { signs, exit } }: PlacedEvent): boolean => signs.length === 0 && exit === null;

/**
 * The rows of playing signs over a tab (over the staff where there is no tab): letters of the hand that frets nearest to
 * its curves, those of the hand that plucks over them, for the P of a pull-off is not that of a pop; then broken lines.
 * @param inkBelow what they stand over, asked for only where there are any; its top line is at 0
 */
export function playingSigns(
  bars: readonly PlacedBar[],
  inkBelow: () => readonly Mark[],
  style: Style,
): readonly Mark[] {
  if (eventsOf(bars).every(isPlain)) return [];
  const below = skylineOf(inkBelow());
  const settle = (row: readonly Mark[], lowest: number): readonly Mark[] => {
    const shift = Math.min(
      lowest,
      ...row.map(({ box }) => below.top(box.left - 2, box.right + 2, 0) - GAP - box.bottom),
    );
    const placed = row.map((mark) => moveMark(mark, 0, shift));
    for (const { box } of placed) below.add(box);
    return placed;
  };
  const overNotes = articulationsOverTab(bars, style).flatMap((mark) => settle([mark], -OVER_LINE));
  const overCurves = settle(lettersOverCurves(bars, style), -OVER_LINE);
  const top = boxOf(overCurves)?.top;
  const atNotes = settle(lettersAtNotes(bars, style), top === undefined ? -OVER_LINE : top - GAP);
  return [...overNotes, ...overCurves, ...atNotes, ...settle(stretches(bars, style).flat(), -OVER_LINE)];
}
