import { isCompound, type Metre, remembered } from '../../base';
import { BAR_SLOTS, type BarSlot, type Contour, slotBeats, type Theme } from '../../feel';

const endOf = ({ beats }: Contour): number => {
  const last = beats.at(-1);
  return last ? last.start + last.duration : 0;
};

/** Whether a bar leaves its last beat silent and has nothing that leads on. */
const leavesOff = (contour: Contour, beats: number): boolean =>
  contour.leads === 0 && contour.beats.length > 0 && endOf(contour) <= beats - 1;

/** A bar that leaves off before its last beat, with a note there that leads on. */
function ledOn(contour: Contour, beats: number): Contour {
  const { id, beats: own } = contour;
  return { ...contour, id: `${id} led on`, beats: [...own, { start: beats - 1, duration: 1 }], leads: 1 };
}

/** The books stay as they are, so each contour is led on once. */
const known = new WeakMap<Contour, Contour>();

/** What a bar of a model plays before another chord: breaths and turnarounds are as written, the others lead on. */
export function beforeChange(contour: Contour, metre: Metre): Contour {
  const { slot } = contour;
  const beats = slotBeats(slot, metre);
  if (isCompound(metre) || slot === 'C' || slot === 'T' || !leavesOff(contour, beats)) return contour;
  return remembered(known, contour, () => ledOn(contour, beats));
}

/** The last level whose rhythms put no pickup off the beat. */
const EASY = 2;

/**
 * A tune for easy levels whose bars lead on: each way that leaves off before its last beat is followed by one that leads
 * into another chord from there. Later tunes write their pickups themselves, off the beat.
 */
export function withLedOnWays(theme: Theme, metre: Metre): Theme {
  const { tune, contours, levels } = theme;
  if (!tune || levels.most > EASY || isCompound(metre)) return theme;
  const led = (slot: BarSlot, ways: readonly Contour[]): readonly Contour[] => {
    const beats = slotBeats(slot, metre);
    return ways.flatMap((way) => (leavesOff(way, beats) ? [way, knownWay(way, beats)] : [way]));
  };
  const own = { ...contours };
  for (const slot of BAR_SLOTS) if (contours[slot]) own[slot] = led(slot, contours[slot]);
  const bars = tune.map(({ slot, contours: ways }) => ({ slot, contours: led(slot, ways) }));
  return { ...theme, contours: own, tune: bars };
}

const knownWays = new WeakMap<Contour, Contour>();

/** Bars of a tune share their ways, and so they share what leads on from them. */
const knownWay = (way: Contour, beats: number): Contour =>
  remembered(knownWays, way, () => ({
    ...ledOn(way, beats),
    tags: [...new Set([...way.tags, 'before change' as const])],
  }));

/** Whether a bar plays a way of a tune, as it is written or led on. */
export const plays = (contour: Contour | null, way: Contour): boolean =>
  contour !== null && (contour === way || contour === knownWays.get(way));

/** Contours that sound alike, once. */
export function different(contours: readonly Contour[]): readonly Contour[] {
  const found = new Map<string, Contour>();
  for (const contour of contours) {
    const text = JSON.stringify([contour.beats, contour.roles, contour.leads]);
    if (!found.has(text)) found.set(text, contour);
  }
  return [...found.values()];
}

/**
 * A theme whose bars lead on: what is silent on its last beat has a form that leads into another chord from there, and
 * the first two bars of its models may stand alone, so that a tune can come back in part.
 */
export function withLedOn(theme: Theme, metre: Metre): Theme {
  const { contours, models } = theme;
  const alone = (slot: BarSlot) =>
    models.flatMap(({ bars }) => bars.slice(0, 2).filter((bar) => bar.slot === slot));
  const own = { ...contours };
  for (const slot of BAR_SLOTS) {
    const beats = slotBeats(slot, metre);
    const all = different([...(contours[slot] ?? []), ...alone(slot)]);
    const left = isCompound(metre) ? [] : all.filter((contour) => leavesOff(contour, beats));
    const led = left.map((contour) => ({
      ...ledOn(contour, beats),
      tags: [...new Set([...contour.tags, 'before change' as const])],
    }));
    if (all.length > 0) own[slot] = different([...all, ...led]);
  }
  return { ...theme, contours: own };
}
