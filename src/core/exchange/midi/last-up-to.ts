/**
 * The index of the last of some things, in the order of their places, that stands at a place or before it; −1 where all
 * stand behind. A file of two thousand bars asks for each of its notes.
 */
export function lastUpTo<Thing>(
  things: readonly Thing[],
  placeOf: (thing: Thing) => number,
  place: number,
): number {
  let [low, high] = [0, things.length];
  while (low < high) {
    const half = (low + high) >> 1;
    const thing = things[half];
    if (thing !== undefined && placeOf(thing) <= place) low = half + 1;
    else high = half;
  }
  return low - 1;
}
