import type { Segment } from './segments';

/** Where a segment goes. */
export interface Onward {
  /** Into the next one as written. */
  readonly next: boolean;
  /** Back or ahead to the first segments of other bars: repeats, endings, the way round to the start. */
  readonly back: readonly number[];
}

export interface Route {
  readonly onward: readonly Onward[];
  /** By bar, its first segment. */
  readonly firstOf: ReadonlyMap<number, number>;
  /** Segments that are reached from elsewhere than the one before. */
  readonly anchors: readonly number[];
}

/** How the segments of a chart follow each other. */
export function onwardOf(segments: readonly Segment[]): Route {
  const firstOf = new Map<number, number>();
  for (const { bar, index } of segments) if (!firstOf.has(bar.index)) firstOf.set(bar.index, index);
  const onward = segments.map(({ bar }, index): Onward => {
    const next = segments[index + 1];
    if (next?.bar === bar) return { next: true, back: [] };
    const goesOn = next !== undefined && bar.after.includes(next.bar.index);
    const back = bar.after.flatMap((other) =>
      goesOn && other === next.bar.index ? [] : (firstOf.get(other) ?? []),
    );
    return { next: goesOn, back };
  });
  return { onward, firstOf, anchors: [...new Set(onward.flatMap(({ back }) => back))].sort((a, b) => a - b) };
}
