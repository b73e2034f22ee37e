import { readNavigation } from './navigation';
import { chordSigns, runAtEnd } from './paste-chords';
import { timesIn, unbracketed } from './word-signs';

/* Bars between bar lines as other sheets write their repeats, jumps and gaps; see `paste-signs.ts`. */

const TIMES_WORDS = /^(?:repeat|play)?\s*(\d{1,2})\s*times?$/i;

/** `x4`, `(2x)`, `repeat`, `4 times`: how often what stands before is played; null for anything else. */
function timesOf(text: string): number | null {
  const plain = unbracketed(text.trim());
  const said = TIMES_WORDS.exec(plain)?.[1];
  if (said !== undefined) return Number(said);
  return /^repeat$/i.test(plain) ? 2 : timesIn(plain);
}

/** Words of the longest sign, `D.S. al Coda`. */
const MOST_WORDS = 4;

/** `G7 D.S. al Coda`, `Coda C`: a sign before or after the chords of a bar, in brackets as a chart has it. */
function signsInBar(cell: string): string {
  const words = cell.trim().split(/\s+/);
  for (let count = Math.min(MOST_WORDS, words.length - 1); count > 0; count -= 1) {
    const [first, last] = [words.slice(0, count), words.slice(-count)].map((part) => part.join(' '));
    const [before, after] = [readNavigation(first ?? ''), readNavigation(last ?? '')];
    const isBare = (text: string | undefined): boolean => text !== undefined && !/[()]/.test(text);
    if (after !== null && isBare(last)) return ` ${words.slice(0, -count).join(' ')} (${after}) `;
    if (before !== null && isBare(first)) return ` (${before}) ${words.slice(count).join(' ')} `;
  }
  return cell;
}

const closed = (cells: readonly string[], times: number): string =>
  `|: ${cells.map((each) => each.trim()).join(' | ')} :|${times > 2 ? ` x${times}` : ''}`;

/** Whether bars are left empty for the one before: not the one that is being typed, which has no bars behind it. */
function hasGaps(cells: readonly string[]): boolean {
  const last = cells.findLastIndex((each) => each.trim() !== '');
  return (
    cells.some((each) => each.trim() === '') &&
    (last < cells.length - 2 || cells.slice(0, last).some((each) => each.trim() === ''))
  );
}

/** The bars with the bar lines that the line had at its ends. */
function betweenBarLines(line: string, cells: readonly string[]): string {
  const [start = ''] = /^\s*\|*/.exec(line) ?? [];
  const end = line.slice(runAtEnd(line.trimEnd(), '|'));
  return start.trim() === '' && end === line ? line : `${start}${cells.join('|')}${end}`;
}

/** Bars whose repeats, jumps and gaps are written in other signs; the line as it is where none is. */
export function barSigns(line: string): string {
  if (line.includes(':'))
    return line.replace(/\|([^|]*)/g, (_, text: string) => `|${chordSigns(text, true)}`);
  const begun = line.trim().replace(/^\|+/, '');
  const inner = begun.slice(0, runAtEnd(begun, '|'));
  const cells = inner.split('|');
  const gaps = hasGaps(cells);
  let changed = false;
  let open: string[] = [];
  const done: string[] = [];
  for (const [index, each] of cells.entries()) {
    const times = timesOf(each);
    const sign = readNavigation(each.trim().replace(/^\(|\)$/g, ''));
    if (times !== null && times > 0 && open.length > 0) {
      done.push(closed(open, times));
      open = [];
      changed = true;
    } else if (sign !== null && open.length > 0) {
      open.push(`${open.pop()?.trim() ?? ''} (${sign})`);
      changed = true;
    } else if (each.trim() === '' && gaps && index > 0) {
      open.push(' % ');
      changed = true;
    } else {
      const signed = signsInBar(each);
      if (signed !== each) changed = true;
      open.push(chordSigns(signed, true));
    }
  }
  if (!changed) return betweenBarLines(line, open);
  const rest = open.length === 0 ? [] : [`| ${open.map((each) => each.trim()).join(' | ')} |`];
  return [...done, ...rest].join(' ');
}
