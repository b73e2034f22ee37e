/** Rows of music one under the other, by the index of their system: while one is played, the other is what comes next. */
export interface TurnedRows {
  readonly rows: readonly (number | null)[];
  /** Which of them is played. */
  readonly at: number;
}

/**
 * Turns the rows to the system that is played and the one that comes next. What is played never moves: the next
 * system comes where the last one was.
 * @param next - null, or the same system, where nothing else comes
 */
export function turnRows(shown: TurnedRows, playing: number, next: number | null): TurnedRows {
  const count = shown.rows.length;
  const found = shown.rows.indexOf(playing);
  const at = found >= 0 ? found : shown.at;
  const coming = next === playing ? null : next;
  const rows = shown.rows.map((row, index) => {
    if (index === at) return playing;
    return count > 1 && index === (at + 1) % count ? coming : row;
  });
  const same = at === shown.at && rows.every((row, index) => row === shown.rows[index]);
  return same ? shown : { rows, at };
}

/** Staff spaces in CSS pixels between which the large music is drawn. */
const LARGEST = 44;
const SMALLEST = 8;

/** What a trial of a staff space gives. */
export interface Trial {
  /** Height of the highest system, in CSS pixels. */
  readonly height: number;
  /** How many systems there are: more of them where the width does not hold the bars that are wanted. */
  readonly systems: number;
}

/**
 * The largest staff space at which so many systems fit one under the other and the width holds as many bars as it does
 * for a small staff.
 * @param tryAt - lays out at a staff space
 * @param room - height in CSS pixels for all rows
 */
export function largestStaff(tryAt: (staffSpace: number) => Trial, rows: number, room: number): number {
  const fewest = tryAt(SMALLEST).systems;
  const fits = (staffSpace: number) => {
    const { height, systems } = tryAt(staffSpace);
    return height * rows <= room && systems <= fewest;
  };
  let low = SMALLEST;
  let high = LARGEST;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}
