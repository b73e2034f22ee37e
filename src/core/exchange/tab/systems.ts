/** Lines of tab in a text, as systems of strings. */

/** One line of tab: a string's name, where its music begins, and what stands behind its last bar line. */
interface StringLine {
  readonly label: string;
  /** The whole line, dashes of any kind as plain ones. */
  readonly text: string;
  /** Column of its first sign of music, a bar line or a dash. */
  readonly from: number;
  readonly tail: string;
}

/** The strings of one line of music, the highest first. */
export interface TabSystem {
  readonly labels: readonly string[];
  /** Equally long. */
  readonly rows: readonly string[];
  /** Column at which the music begins. */
  readonly from: number;
  /** Lines directly above, the nearest first, up to a line of tab. */
  readonly above: readonly string[];
  readonly below: readonly string[];
  /** Behind the last bar line of a string, `x4`. */
  readonly tail: string;
}

/** The names of strings are short: `G`, `Bb`, `F#`, `Sol`. */
const LABEL = /^([A-Za-zé]{0,4}[#♯♭]?)\s{0,8}(?=[|:-])/u;
/** What may stand on a string. */
const MUSIC = /^[-=|:*.,0-9a-zA-Z/\\~^()[\]<>_+'"? ]*$/u;
const LEAST_DASHES = 3;
const LEAST_STRINGS = 4;
const MOST_STRINGS = 6;
/** Lines over a system that are looked at. */
const MOST_ABOVE = 40;
/** Room for a tab stop. */
const TAB_STOP = '        ';

const countOf = (text: string, sign: string): number => text.split(sign).length - 1;

function stringLine(line: string): StringLine | null {
  const named = LABEL.exec(line.trimStart());
  if (named === null) return null;
  const [{ length }, label = ''] = named;
  const from = line.length - line.trimStart().length + length;
  const last = line.lastIndexOf('|');
  const end = last >= from && countOf(line.slice(from, last), '-') >= LEAST_DASHES ? last + 1 : line.length;
  const music = line.slice(from, end);
  const dashes = countOf(music, '-');
  if (dashes < LEAST_DASHES || !MUSIC.test(music)) return null;
  const blanks = countOf(music, ' ');
  const letters = music.replace(/[^A-Za-z]/gu, '').length;
  if (!music.includes('--') || blanks * 4 > music.length || letters * 2 > music.length) return null;
  // A ruler under a heading has dashes, too, and nothing else.
  if (label === '' && /^-+\s*$/u.test(music)) return null;
  return { label, text: line.slice(0, end), from, tail: line.slice(end).trim() };
}

/** Where a run of lines of tab is more than one system, its names begin again. */
function partsOf(run: readonly StringLine[]): readonly (readonly StringLine[])[] {
  for (let strings = LEAST_STRINGS; strings <= MOST_STRINGS; strings += 1) {
    const again = run.every(({ label }, index) => index < strings || label === run[index - strings]?.label);
    const distinct = new Set(run.slice(0, strings).map(({ label }) => label)).size;
    if (run.length % strings !== 0 || !again || (run.length > strings && distinct === 1)) continue;
    return Array.from({ length: run.length / strings }, (_, part) =>
      run.slice(part * strings, (part + 1) * strings),
    );
  }
  return [];
}

/** The text in lines, with plain dashes and without tab stops. */
const linesOf = (text: string): readonly string[] =>
  text
    .replace(/[\u2010-\u2015\u2212]/gu, '-')
    .replace(/[\u00a6\u2502]/gu, '|')
    .replace(/\t/gu, TAB_STOP)
    .split(/\r\n|\r|\n/u)
    .map((line) => line.trimEnd());

export interface TabText {
  readonly systems: readonly TabSystem[];
  /** Lines of tab that make no system of four to six strings. */
  readonly odd: number;
  readonly lines: readonly string[];
  /** Index of the line at which the first system begins. */
  readonly begins: number;
}

/** Finds the systems of four to six strings in a text. */
export function tabOf(text: string): TabText {
  const lines = linesOf(text);
  const strings = lines.map(stringLine);
  const systems: TabSystem[] = [];
  let odd = 0;
  let begins = lines.length;
  for (let from = 0; from < lines.length; ) {
    let until = from;
    while (strings[until]) until += 1;
    if (until === from) {
      from += 1;
      continue;
    }
    const run = strings.slice(from, until).flatMap((each) => each ?? []);
    const parts = partsOf(run);
    if (parts.length === 0) odd += run.length;
    else begins = Math.min(begins, from);
    let first = from;
    for (const part of parts) {
      systems.push(systemOf(part, lines, strings, first));
      first += part.length;
    }
    from = until;
  }
  return { systems, odd, lines, begins };
}

function systemOf(
  part: readonly StringLine[],
  lines: readonly string[],
  strings: readonly (StringLine | null)[],
  first: number,
): TabSystem {
  const after = first + part.length;
  const above: string[] = [];
  for (let index = first - 1; index >= 0 && !strings[index] && above.length < MOST_ABOVE; index -= 1) {
    above.push(lines[index] ?? '');
  }
  const below: string[] = [];
  for (let index = after; index < lines.length && !strings[index] && below.length < 3; index += 1) {
    below.push(lines[index] ?? '');
  }
  const width = Math.max(...part.map(({ text }) => text.length));
  return {
    labels: part.map(({ label }) => label),
    rows: part.map(({ text }) => text.padEnd(width)),
    from: Math.min(...part.map((each) => each.from)),
    above,
    below,
    tail: part.find(({ tail }) => tail !== '')?.tail ?? '',
  };
}

/** Whether a text holds tab: a system of four to six strings. */
export const holdsTab = (text: string): boolean => tabOf(text).systems.length > 0;

/** A bar of a system, by its columns. */
export interface TabBar {
  readonly from: number;
  /** Behind its last column. */
  readonly until: number;
  readonly repeatStart: boolean;
  readonly repeatEnd: boolean;
  /** Whether a bar line stands at its end. */
  readonly closed: boolean;
  /** Whether it is a double one. */
  readonly doubled: boolean;
}

const DOTS = /[:*o]/u;

/** The bars between the bar lines of a system: columns in which most strings have one. */
export function barsOf({ rows, from }: TabSystem): readonly TabBar[] {
  const width = rows[0]?.length ?? 0;
  const signs = (column: number): readonly string[] => rows.map((row) => row[column] ?? ' ');
  const isLine = (column: number): boolean =>
    signs(column).filter((sign) => sign === '|').length * 2 > rows.length;
  const hasDots = (column: number): boolean =>
    signs(column).some((sign) => DOTS.test(sign)) &&
    signs(column).every((sign) => DOTS.test(sign) || sign === '-' || sign === ' ');
  const bars: TabBar[] = [];
  let start = from;
  for (let column = from; column <= width; column += 1) {
    if (column < width && !isLine(column)) continue;
    let [left, right] = [start, column];
    const closed = column < width;
    const repeatStart = isLine(left - 1) && left < right && hasDots(left);
    if (repeatStart) left += 1;
    const repeatEnd = closed && right - 1 > left && hasDots(right - 1);
    if (repeatEnd) right -= 1;
    const music = rows.some((row) => /[-0-9xX]/u.test(row.slice(left, right)));
    if (music && right > left)
      bars.push({
        from: left,
        until: right,
        repeatStart,
        repeatEnd,
        closed,
        doubled: closed && isLine(column + 1),
      });
    start = column + 1;
  }
  return bars;
}
