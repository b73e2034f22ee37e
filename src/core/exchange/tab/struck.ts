import { type NoteMarks, SIGNS, type Sign } from '../../base';
import type { TabBar } from './systems';

/** A note as it stands on a string. */
export interface StruckNote {
  /** Column of its first sign. */
  readonly column: number;
  /** String 1 is the highest. */
  readonly string: number;
  /** Null for a dead note, which names no fret. */
  readonly fret: number | null;
  readonly marks: NoteMarks;
}

export interface StruckBar {
  /** In the order of their columns. */
  readonly notes: readonly StruckNote[];
  /** Signs on the strings that say something else, such as bends. */
  readonly unread: readonly string[];
}

/** No bass has more. */
const MOST_FRETS = 24;

const textOf = (sign: Sign, down = false): string => {
  const { text } = SIGNS[sign];
  return down && text.place === 'after' ? (text.down ?? text.text) : text.text;
};

/** Frets from a note up to the next one on its string; null where there is none, or one of them names no fret. */
type Way = number | null;

/**
 * How a note is left, by the sign behind it. A slide leads to the note that follows on the same string, unless that lies
 * on the other side: `3\--5` falls away from the 3.
 */
function exitOf(sign: string, follows: boolean, way: Way): NonNullable<NoteMarks['exit']> | null {
  const plain = sign.toLowerCase();
  if (plain === textOf('hammer-on') || plain === textOf('pull-off')) return 'hammer';
  if (sign === textOf('slur')) return 'slur';
  const rises = sign === textOf('slide');
  const falls = sign === textOf('slide', true);
  const away = way !== null && ((rises && way < 0) || (falls && way > 0));
  if (follows && !away && (rises || falls || plain === 's')) return 'slide';
  if (sign === textOf('slide up')) return 'slide up';
  return sign === textOf('slide down') ? 'slide down' : null;
}

function entryOf(sign: string): NonNullable<NoteMarks['entry']> | null {
  if (sign === textOf('slide from below')) return 'slide from below';
  return sign === textOf('slide from above') ? 'slide from above' : null;
}

/** Signs that say nothing about a note. */
const SILENT = /^[-=|:.\s()]$/u;

/** Frets and dead notes with their places; two signs beyond the last fret are two notes that touch. */
const heads = (text: string): readonly { readonly sign: string; readonly index: number }[] =>
  [...text.matchAll(/\d{1,2}|[xX]/gu)].flatMap(({ 0: sign, index }) =>
    Number(sign) > MOST_FRETS
      ? [...sign].map((digit, place) => ({ sign: digit, index: index + place }))
      : [{ sign, index }],
  );

const isDead = (sign: string): boolean => /^x$/iu.test(sign);

const wayTo = (sign: string, next: string | undefined): Way =>
  next === undefined || isDead(sign) || isDead(next) ? null : Number(next) - Number(sign);

function onString(row: string, string: number, { from, until }: TabBar): StruckBar {
  const text = row.slice(from, until);
  const found = heads(text);
  const used = new Set<number>();
  const notes = found.map(({ sign, index }, place): StruckNote => {
    const end = index + sign.length;
    for (let column = index; column < end; column += 1) used.add(column);
    // A sign between two notes belongs to the first.
    const next = found[place + 1];
    const exit = exitOf(text[end] ?? '-', next !== undefined, wayTo(sign, next?.sign));
    if (exit !== null) used.add(end);
    const entry = used.has(index - 1) ? null : entryOf(text[index - 1] ?? '-');
    if (entry !== null) used.add(index - 1);
    return {
      column: from + index - (entry === null ? 0 : 1),
      string,
      fret: isDead(sign) ? null : Number(sign),
      marks: {
        ...(isDead(sign) ? { damping: 'ghost' } : {}),
        ...(entry === null ? {} : { entry }),
        ...(exit === null ? {} : { exit }),
      },
    };
  });
  return { notes, unread: [...text].filter((sign, column) => !used.has(column) && !SILENT.test(sign)) };
}

/** What is struck in a bar. */
export function struckIn(rows: readonly string[], bar: TabBar): StruckBar {
  const strings = rows.map((row, index) => onString(row, index + 1, bar));
  return {
    notes: strings
      .flatMap(({ notes }) => notes)
      .sort((one, other) => one.column - other.column || other.string - one.string),
    unread: strings.flatMap(({ unread }) => unread),
  };
}
