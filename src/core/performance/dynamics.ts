import { barTicks, type DynamicLevel, type DynamicSign } from '../base';
import type { SheetBar } from '../lesson';

/**
 * The strength of a plain note at each level, as MIDI counts it; a line without dynamics is played mezzo forte. A
 * usual spread, common practice, no source.
 */
const STRENGTHS: Readonly<Record<DynamicLevel, number>> = {
  ppp: 30,
  pp: 44,
  p: 60,
  mp: 76,
  mf: 92,
  f: 106,
  ff: 118,
  fff: 127,
};
/** What a hairpin that leads to no level adds or takes: about one level. */
const ONE_LEVEL = 16;

/** A stretch of the written line, in its ticks, over which the strength goes evenly from one to another. */
interface LoudnessSpan {
  readonly from: number;
  readonly until: number;
  readonly first: number;
  readonly last: number;
}

type Bars = readonly Pick<SheetBar, 'written' | 'dynamics'>[];

function loudnessSpans(starts: readonly number[], bars: Bars, end: number): readonly LoudnessSpan[] {
  const signs = bars.flatMap(({ dynamics = [] }, bar) =>
    dynamics.map((sign): DynamicSign & { readonly place: number } => ({
      ...sign,
      place: (starts[bar] ?? 0) + sign.at,
    })),
  );
  let strength = STRENGTHS.mf;
  return signs.map(({ place, level, hairpin }, index): LoudnessSpan => {
    const next = signs[index + 1];
    const first = level === undefined ? strength : STRENGTHS[level];
    const step = hairpin === undefined ? 0 : hairpin === 'crescendo' ? ONE_LEVEL : -ONE_LEVEL;
    const reached = Math.min(STRENGTHS.fff, Math.max(STRENGTHS.ppp, first + step));
    const last = hairpin === undefined || next?.level === undefined ? reached : STRENGTHS[next.level];
    strength = last;
    return { from: place, until: next?.place ?? end, first, last };
  });
}

/** How strong a plain note is played at a place of the written line, as its dynamics and hairpins ask. */
export function strengthsOf(bars: Bars): (bar: number, tick: number) => number {
  let end = 0;
  const starts = bars.map(({ written }) => {
    const start = end;
    end += barTicks(written.metre);
    return start;
  });
  const stretches = loudnessSpans(starts, bars, end);
  return (bar, tick) => {
    const place = (starts[bar] ?? 0) + tick;
    const here = stretches.findLast(({ from }) => from <= place);
    if (here === undefined) return STRENGTHS.mf;
    const share = here.until > here.from ? Math.min(1, (place - here.from) / (here.until - here.from)) : 1;
    return here.first + (here.last - here.first) * share;
  };
}
