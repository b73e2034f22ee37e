import { type Mark, moveMark, pathMark } from '../ink';
import type { DynamicMark, Hairpin } from '../notation/types';
import { levelMark } from './levels';
import { type PlacedBar, xOfTick } from './placed';
import type { Skyline } from './skyline';
import { THICKNESS } from './style';

/** Half of a hairpin's opening, and its middle over the letters' baseline. */
const HALF_OPENING = 4.6;
const MIDDLE = 4;
/** White between a hairpin and a letter or bar line. */
const HAIRPIN_GAP = 4;
/** A hairpin that goes on in the next system is opened this far on the near and the far side of the break. */
const AT_BREAK = { nearClosed: 0.4, nearOpen: 0.6 } as const;
const GAP = 5;

/** A dynamic at its place. */
interface PlacedSign {
  readonly sign: DynamicMark;
  readonly level: Mark | null;
  /** Where a hairpin ends that this sign ends, and where one begins that begins here. */
  readonly until: number;
  readonly from: number;
}

function placeSigns(bars: readonly PlacedBar[]): readonly PlacedSign[] {
  return bars.flatMap((placed, bar) =>
    placed.bar.content.dynamics.map((sign) => placeSign(sign, placed, bar)),
  );
}

function placeSign(sign: DynamicMark, placed: PlacedBar, bar: number): PlacedSign {
  const atEnd = sign.tick >= placed.bar.content.length;
  const x = atEnd ? placed.right : xOfTick(placed, sign.tick);
  const centred = sign.level === null ? null : levelMark(sign.level, x);
  const level = centred && atEnd ? moveMark(centred, x - HAIRPIN_GAP - centred.box.right, 0) : centred;
  if (level) {
    return { sign, level, until: level.box.left - HAIRPIN_GAP, from: level.box.right + HAIRPIN_GAP };
  }
  // A hairpin that ends where a bar begins ends before its bar line.
  const end = sign.tick === 0 && bar > 0 ? placed.x : x;
  return { sign, level, until: end - HAIRPIN_GAP, from: x - HAIRPIN_GAP };
}

/** The part of a hairpin that lies in a system. */
interface HairpinPart {
  readonly kind: Hairpin;
  readonly from: number;
  readonly until: number;
  /** It began in the system before; it goes on in the next one. */
  readonly continued: boolean;
  readonly goesOn: boolean;
}

function hairpinMarks({ kind, from, until, continued, goesOn }: HairpinPart): readonly Mark[] {
  if (until - from < HAIRPIN_GAP) return [];
  const { nearClosed, nearOpen } = AT_BREAK;
  const [start, end] =
    kind === 'crescendo'
      ? [continued ? nearClosed : 0, goesOn ? nearOpen : 1]
      : [continued ? nearOpen : 1, goesOn ? nearClosed : 0];
  const leg = (side: 1 | -1): Mark =>
    pathMark(
      'hairpin',
      [
        { command: 'M', points: [from, -MIDDLE + side * HALF_OPENING * start] },
        { command: 'L', points: [until, -MIDDLE + side * HALF_OPENING * end] },
      ],
      THICKNESS.hairpin,
    );
  return [leg(-1), leg(1)];
}

/**
 * Dynamics and hairpins on one line under the ink.
 * @param endsWithSystem whether a hairpin that is open at the system's end ends there
 * @param floor the line stands under this place
 */
export function dynamicsRow(
  bars: readonly PlacedBar[],
  ink: Skyline,
  floor: number,
  endsWithSystem: boolean,
): readonly Mark[] {
  const [first] = bars;
  const last = bars.at(-1);
  if (!first || !last) return [];
  const signs = placeSigns(bars);
  const marks: Mark[] = signs.flatMap(({ level }) => level ?? []);
  // What ends at this system's first beat has been closed at the end of the one before.
  let open = first.bar.content.dynamics[0]?.tick === 0 ? null : first.bar.content.hairpin;
  let from = first.content - HAIRPIN_GAP;
  let continued = true;
  const close = (until: number, goesOn: boolean): void => {
    if (open !== null) marks.push(...hairpinMarks({ kind: open, from, until, continued, goesOn }));
  };
  for (const placed of signs) {
    close(placed.until, false);
    open = placed.sign.hairpin;
    from = placed.from;
    continued = false;
  }
  close(last.right - HAIRPIN_GAP, !endsWithSystem);
  const shift = Math.max(
    floor,
    ...marks.map(({ box }) => ink.bottom(box.left - 2, box.right + 2, floor) + GAP - box.top),
  );
  return marks.map((mark) => moveMark(mark, 0, shift));
}
