import { barTicks, beatTicks, listed, type Metre, metreName, sameMetre } from '../base';
import { FEELS, feelMetre } from './feels';
import type { DrumRow, Feel, FeelMetre, SourcedGrid } from './types';

const COMMON: Metre = { count: 4, unit: 4 };

/**
 * Metres that every feel goes along with, plainly where it has no rhythms of its own there: those that most songs are in,
 * or pass through.
 */
const FOR_EVERYONE: readonly Metre[] = [
  COMMON,
  { count: 3, unit: 4 },
  { count: 2, unit: 2 },
  { count: 6, unit: 8 },
  { count: 12, unit: 8 },
];

/** The feels that have rhythms of their own in a metre. */
export const feelsIn = (metre: Metre): readonly Feel[] =>
  FEELS.filter((feel) => feelMetre(feel, metre) !== null);

const halfOf = <Row extends SourcedGrid>(row: Row): Row => ({
  ...row,
  grid: row.grid.slice(0, row.grid.length / 2),
});

const halvesOf = (rows: readonly DrumRow[]): readonly DrumRow[] => rows.map(halfOf);

function halved(whole: FeelMetre, metre: Metre): FeelMetre {
  return {
    metre,
    drums: halvesOf(whole.drums),
    fill: [],
    chops: halfOf(whole.chops),
    organ: { left: halfOf(whole.organ.left), right: halfOf(whole.organ.right) },
  };
}

/**
 * What a feel plays in a bar of a metre: its own rhythms, or, where a bar of two beats stands among bars of four, the first
 * half of those (common practice, no source); null where it has nothing to say.
 */
export function rhythmsIn(feel: Feel, metre: Metre): FeelMetre | null {
  const own = feelMetre(feel, metre);
  if (own !== null) return own;
  const whole = feelMetre(feel, COMMON);
  const half = barTicks(metre) * 2 === barTicks(COMMON) && beatTicks(metre) === beatTicks(COMMON);
  return whole !== null && half ? halved(whole, metre) : null;
}

const isForEveryone = (metre: Metre): boolean => FOR_EVERYONE.some((each) => sameMetre(each, metre));

/**
 * Why a feel cannot be played in a metre, in one sentence that names the feels which can; null where it can, and where no
 * feel has rhythms: a part of a bar, such as a pickup that comes again, is played as every pickup is.
 * @param passing whether the metre only stands among bars of another
 */
export function whyNotPlayedIn(feel: Feel, metre: Metre, passing: boolean): string | null {
  const played = (passing ? rhythmsIn(feel, metre) : feelMetre(feel, metre)) !== null;
  if (played || isForEveryone(metre)) return null;
  const others = feelsIn(metre).map(({ name }) => name);
  if (others.length === 0) return null;
  const have = others.length === 1 ? 'has' : 'have';
  return `${feel.name} has no rhythms in ${metreName(metre)}; ${listed(others)} ${have}.`;
}
