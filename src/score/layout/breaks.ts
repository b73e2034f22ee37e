/** What line breaking needs to know of a bar. */
export interface BreakBar {
  /** A section begins here and starts a system. */
  readonly startsSection: boolean;
  /** It leads into the bar behind it and is not counted. */
  readonly pickup: boolean;
}

export interface Break {
  /** Indices of the first bar and of the bar after the last. */
  readonly first: number;
  readonly end: number;
}

/**
 * Groups bars into systems: every section starts one, and its bars go in groups of `most` (four when there is
 * room), a pickup not counted; a group that does not fit is divided into halves, so that phrases stay together.
 * @param fits whether the bars from `first` up to, not including, `end` fit into a system
 */
export function breakLines(
  bars: readonly BreakBar[],
  most: number,
  fits: (first: number, end: number) => boolean,
): readonly Break[] {
  const breaks: Break[] = [];
  const mostFrom = (first: number): number => most + (bars[first]?.pickup ? 1 : 0);
  const add = (first: number, end: number): void => {
    if (end - first <= 1 || (end - first <= mostFrom(first) && fits(first, end))) {
      breaks.push({ first, end });
      return;
    }
    const half = first + Math.ceil((end - first) / 2);
    add(first, half);
    add(half, end);
  };
  for (let start = 0; start < bars.length; ) {
    const next = bars.findIndex((bar, index) => index > start && bar.startsSection);
    const end = next < 0 ? bars.length : next;
    for (let first = start; first < end; first += mostFrom(first))
      add(first, Math.min(first + mostFrom(first), end));
    start = end;
  }
  return breaks;
}
