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
