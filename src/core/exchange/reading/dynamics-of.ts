import { barTicks, type DynamicSign, type Metre, ticks } from '../../base';
import { LESSON_LIMITS } from '../../lesson';
import type { FoundBar } from './found';

/** One sign a place, of all that stands there. */
function merged({ dynamics = [] }: FoundBar, factor: number, length: number): readonly DynamicSign[] {
  const places = new Map<number, DynamicSign>();
  for (const { at, level, hairpin } of dynamics) {
    const place = Math.min(length, Math.max(0, Math.round(at * factor)));
    places.set(place, {
      ...(places.get(place) ?? { at: ticks(place) }),
      ...(level === null ? {} : { level }),
      ...(hairpin === null ? {} : { hairpin }),
    });
  }
  return [...places.values()].sort((one, other) => one.at - other.at).slice(0, LESSON_LIMITS.notesInBar);
}

/** The dynamics of each bar as a lesson stores them: a sign that only ends a hairpin stands where one is open. */
export function dynamicsOf(
  bars: readonly FoundBar[],
  metres: readonly Metre[],
  factor: number,
): readonly (readonly DynamicSign[])[] {
  let open = false;
  return bars.map((bar, index) => {
    const metre = metres[index];
    const length = metre === undefined ? 0 : barTicks(metre);
    return merged(bar, factor, length).filter(({ at, level, hairpin }) => {
      const ends = open;
      open = hairpin !== undefined;
      if (level !== undefined || hairpin !== undefined) return true;
      // Where the line ends, its hairpin ends without a sign.
      return ends && !(at === length && index === bars.length - 1);
    });
  });
}
