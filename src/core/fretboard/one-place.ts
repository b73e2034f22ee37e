import type { Line } from './line';
import type { Path } from './path';
import type { LineContext } from './types';

/** What one place for a pitch may cost more in a bar: about a shift by one fret inside running eighths, as in `COST`. */
const MOST = 5;

/**
 * Of each bar in which a pitch is played open once and fretted once: the notes that are to be fretted, those of the pitch
 * and all that are fretted already, so that no other pitch wavers in its place. Fixed notes are left alone.
 */
function wavering({ played }: Line, { choice }: Path, context: LineContext): readonly (readonly number[])[] {
  const found: number[][] = [];
  let next = 0;
  for (const { end } of context.bars ?? []) {
    const fretted: number[] = [];
    const open: number[] = [];
    for (let one = played[next]; one !== undefined && one.note.start < end; one = played[next]) {
      const isOpen = one.layer.states[choice[next] ?? 0]?.finger === 0;
      if (!one.layer.fixed) (isOpen ? open : fretted).push(next);
      next += 1;
    }
    const pitches = new Set(fretted.map((index) => played[index]?.layer.midi));
    const twice = open.filter((index) => pitches.has(played[index]?.layer.midi));
    if (twice.length > 0) found.push([...fretted, ...twice]);
  }
  return found;
}

/**
 * What each way of each note costs by itself where a bar has a pitch in one place: fretted every time, instead of open
 * once and, before a rest, fretted. Null where no bar wavers, and where open strings may ring on.
 */
export function inOnePlace(
  line: Line,
  path: Path,
  context: LineContext,
): { readonly own: readonly Float64Array[]; readonly most: number } | null {
  const bars = context.muted === true ? wavering(line, path, context) : [];
  if (bars.length === 0) return null;
  const own = [...line.track.own];
  for (const index of bars.flat()) {
    const layer = line.played[index]?.layer;
    if (layer === undefined) continue;
    own[index] = layer.own.map((cost, way) =>
      layer.states[way]?.finger === 0 ? Number.POSITIVE_INFINITY : cost,
    );
  }
  return { own, most: path.cost + MOST * bars.length };
}
