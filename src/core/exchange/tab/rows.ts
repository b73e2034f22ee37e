import { MARKS, type Metre, SIGNS } from '../../base';
import { type Navigation, pickupMetre, pickupOfEighths, readNavigation } from '../../chart';
import type { Key } from '../../theory';
import { keyNamed, metreNamed, type TabHeader } from './header';
import type { TabSystem } from './systems';
import { isCounting, wordsOf } from './times';

/** What stands over and under the strings of one line of music. */
export interface SystemRows {
  readonly head: string | null;
  readonly chords: string | null;
  readonly over: string | null;
  readonly counting: string | null;
  readonly dynamics: string | null;
  readonly section: string | null;
  readonly key: Key | null;
  /** By the numbers of their bars. */
  readonly words: ReadonlyMap<number, string>;
}

/** The signs over the strings, by how they are typed. */
export const OVER_TEXTS = new Map(
  MARKS.flatMap((mark) => {
    if (mark === 'hammer') return [];
    const { text } = SIGNS[mark];
    return text.place === 'over' ? [[text.text, mark] as const] : [];
  }),
);

const isOver = (row: string): boolean =>
  row.trim() !== '' && wordsOf(row).every(({ text }) => OVER_TEXTS.has(text));

/** The rows of a line of our own tab: its bars' heads, chords, signs over the strings, counting, dynamics. */
export function ownRows({ above, below }: TabSystem, header: TabHeader): SystemRows {
  const over = isOver(above[0] ?? '') ? 1 : 0;
  const rest = above.slice(over + 2);
  const end = rest.indexOf('');
  const lines = rest.slice(0, end < 0 ? rest.length : end).reverse();
  const heading = lines[0] ?? '';
  const close = heading.startsWith('[') ? heading.lastIndexOf(']') : -1;
  const section = close < 0 ? null : heading.slice(1, close);
  const key = keyNamed(heading.slice(close + 1).trim(), header.naming);
  return {
    head: above[over + 1] ?? '',
    chords: above[over] ?? '',
    over: over === 1 ? (above[0] ?? '') : null,
    counting: below[0] ?? '',
    dynamics: below[1] ?? null,
    section,
    key,
    words: wordsOverBars(section !== null || key !== null ? lines.slice(1) : lines),
  };
}

/** Words over the bars of a line, by the numbers of their bars: `Bar 3: dig in`, broken where the page ends. */
function wordsOverBars(lines: readonly string[]): ReadonlyMap<number, string> {
  const words = new Map<number, string>();
  let bar = -1;
  for (const line of lines) {
    const [, heading, number = '0', text = ''] = /^(Bar (\d{1,4})|The pickup): (.*)$/u.exec(line) ?? [];
    if (heading !== undefined) bar = Number(number);
    if (bar >= 0) words.set(bar, heading === undefined ? `${words.get(bar) ?? ''} ${line}` : text);
  }
  return words;
}

/** The rows of other people's tab: a counting beside the strings, chords over them, a section's name over these. */
export function otherRows({ above, below }: TabSystem, areChords: (row: string) => boolean): SystemRows {
  const counting =
    [below[0], above[0], below[1], above[1]].find((row) => row !== undefined && isCounting(row)) ?? null;
  const over = above.filter((row) => row !== '' && row !== counting);
  const chords = over[0] !== undefined && areChords(over[0]) ? over[0] : null;
  const name = over[chords === null ? 0 : 1]?.trim() ?? '';
  const section = /^(?:\[([^[\]]{1,40})\]|([^:]{1,40}):)$/u.exec(name);
  return {
    head: null,
    chords,
    over: null,
    counting,
    dynamics: null,
    section: section?.[1] ?? section?.[2] ?? null,
    key: null,
    words: new Map(),
  };
}

/** What the head of a bar says in our own tab. */
export interface BarHead {
  readonly number: number | null;
  readonly metre: Metre | null;
  /** The metre of a pickup. */
  readonly pickup: Metre | null;
  readonly ending: readonly number[] | null;
  readonly times: number | null;
  readonly navigation: readonly Navigation[];
}

const WAY = /\b(?:D\.[CS]\.(?: al (?:Fine|Coda))?|To Coda|Segno|Coda|Fine)/gu;

/** The metre of a pickup that is written `(1)`, `(0.5)` or `(1/8)`. */
function pickupNamed(text: string, metre: Metre): Metre | null {
  if (/^\d{1,2}(?:\.5)?$/u.test(text)) return pickupMetre({ beats: Number(text) }, metre);
  const eighths = pickupOfEighths(text);
  return eighths === null ? null : pickupMetre({ eighths }, metre);
}

/** Reads the head of a bar; `metre` is in force there. */
export function headOf(text: string, metre: Metre): BarHead {
  const brackets = /\(([^)]{1,5})\)/u.exec(text)?.[1] ?? '';
  const ending = /(?:^|\s)(\d{1,2}(?:,\d{1,2}){0,19})\.(?=\s|$)/u.exec(text)?.[1];
  const number = /^\s*(\d{1,4})(?=\s|$)/u.exec(text)?.[1];
  const times = /(?:^|\s)x(\d{1,2})(?=[\s,]|$)/u.exec(text)?.[1];
  return {
    number: number === undefined ? null : Number(number),
    metre: metreNamed(brackets),
    pickup: number === undefined && metreNamed(brackets) === null ? pickupNamed(brackets, metre) : null,
    ending: ending === undefined ? null : ending.split(',').map(Number),
    times: times === undefined ? null : Number(times),
    navigation: [...text.matchAll(WAY)].flatMap(({ 0: sign }) => readNavigation(sign) ?? []),
  };
}
