/**
 * For each bar of a changed chart, the index of the bar before the change that it goes on as, or null for a
 * new one. Bars are given by their signatures (`barSignature`); only bars of the same signature match, in
 * order, and as many as possible do (longest common subsequence). So a bar inserted at the front leaves every
 * other bar matched.
 */
export function matchBars(before: readonly string[], after: readonly string[]): readonly (number | null)[] {
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && before[head] === after[head]) head += 1;
  let tail = 0;
  while (tail < shorter - head && before[before.length - 1 - tail] === after[after.length - 1 - tail])
    tail += 1;
  const matches: (number | null)[] = after.map((_, index) => {
    if (index < head) return index;
    return index >= after.length - tail ? index - after.length + before.length : null;
  });
  const middle = commonSubsequence(
    before.slice(head, before.length - tail),
    after.slice(head, after.length - tail),
  );
  for (const [from, to] of middle) matches[head + to] = head + from;
  return matches;
}

/** Beyond this many cells (4,000 bars against 4,000) the middle is taken as wholly rewritten. */
const MOST_CELLS = 16_000_000;

/** Pairs of indices of a longest common subsequence, by the classic table. */
function commonSubsequence(
  before: readonly string[],
  after: readonly string[],
): readonly (readonly [number, number])[] {
  const width = after.length + 1;
  if ((before.length + 1) * width > MOST_CELLS) return [];
  const lengths = new Uint16Array((before.length + 1) * width);
  const lengthAt = (from: number, to: number): number => lengths[from * width + to] ?? 0;
  for (let from = before.length - 1; from >= 0; from -= 1) {
    for (let to = after.length - 1; to >= 0; to -= 1) {
      lengths[from * width + to] =
        before[from] === after[to]
          ? lengthAt(from + 1, to + 1) + 1
          : Math.max(lengthAt(from + 1, to), lengthAt(from, to + 1));
    }
  }
  const pairs: (readonly [number, number])[] = [];
  let from = 0;
  let to = 0;
  while (from < before.length && to < after.length) {
    if (before[from] === after[to]) {
      pairs.push([from, to]);
      from += 1;
      to += 1;
    } else if (lengthAt(from + 1, to) >= lengthAt(from, to + 1)) from += 1;
    else to += 1;
  }
  return pairs;
}
