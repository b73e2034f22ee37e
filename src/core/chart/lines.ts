import { parseKey, shortened } from '../theory';
import { readNavigation } from './navigation';
import { typedKey } from './typed-key';
import { withoutUnseen } from './words';

/** What a line of a chart is; `column` counts from 1 to where its text begins. */
export type ChartLine =
  | { readonly kind: 'blank' }
  | {
      readonly kind: 'section' | 'again';
      readonly name: string;
      readonly text: string;
      readonly column: number;
    }
  /** Words that are neither chords nor the name of a section. */
  | { readonly kind: 'unnamed words'; readonly text: string; readonly column: number }
  /** `said` is the line without its comment, from its first character. */
  | { readonly kind: 'bars'; readonly said: string; readonly text: string; readonly column: number };

/** `[A]` or `[Verse]` alone on its line. */
const BRACKETED_NAME = /^\[([\p{L}\p{N}][^|:;\]]{0,59})\]$/u;
/** What parts of a tune are called on sheets of every kind (common practice, no source). */
const SECTION_WORDS =
  /^(?:intro|verse|pre-?chorus|chorus|refrain|bridge|middle(?: eight)?|interlude|solo|head|turnaround|tag|outro|ending|coda|part|section)(?: ?(?:\d{1,2}|[A-H]))?$/i;

/** Whether a line is plainly the name of a part of the tune, though no colon says so. */
export const isSectionWord = (text: string): boolean => SECTION_WORDS.test(text);

/** The most characters of a section's name. */
const LONGEST_NAME = 60;
/** What would name a section, were it shorter. */
const LONG_NAME = /^(?:\[[\p{L}\p{N}][^|:;\]]{60,}\]|[\p{L}\p{N}][^|:;]{60,}:)$/u;

/** What a line that is no line of bars was probably meant as. */
export interface StrayLine {
  readonly message: string;
  /** What to write in its place. */
  readonly suggestion: string;
}

/** `(Verse)`, `Verse (2x)`: a part's name and something in brackets. */
const BRACKETED_WORD = /^\(([^()]{1,40})\)$/;
const WORD_WITH_BRACKET = /^([^()]{1,40})\([^()]{1,20}\)$/;
const METRE_ALONE = /^\d{1,2}\/\d{1,2}$/;
const KEY_ALONE = /^key(?: of |: ?| )([^:|;()]{1,20})$/i;
/** What sheets say above their chords (common practice, no source). */
const SETTING =
  /^(?:tempo|bpm|capo|tuning)\b|^(?:artist|title|words|music|by):|^\d{2,3} ?bpm\b|^[♩♪𝅗𝅥] ?= ?\d|^play \d/iu;
/** A string of a tab: its name perhaps, and dashes with frets between them. */
const TAB = /^[A-Ga-g]?[#b♯♭]?[|:]?-[-\d|hpbtxs/\\~()=.<> ]*$/;

/** What a line was meant as that people paste with their charts, and that holds no bars; null for any other. */
export function strayLine(text: string): StrayLine | null {
  if (METRE_ALONE.test(text))
    return { message: `A metre stands in brackets: (${text}).`, suggestion: `(${text})` };
  const key = parseKey(KEY_ALONE.exec(text)?.[1] ?? '');
  if (key.ok) {
    const typed = typedKey(key.value);
    return { message: `A key stands in brackets: ${typed}.`, suggestion: typed };
  }
  const name = (BRACKETED_WORD.exec(text) ?? WORD_WITH_BRACKET.exec(text))?.[1]?.trim() ?? '';
  if (isSectionWord(name) && readNavigation(text.slice(1, -1)) === null) {
    return {
      message: `“${text}” looks like the name of a section, which is written ${name}: on a line of its own.`,
      suggestion: `${name}:`,
    };
  }
  if (TAB.test(text) && text.includes('--')) {
    return {
      message: 'This is a line of tab, and a chart holds chords. Here it can stand behind a semicolon.',
      suggestion: `; ${text}`,
    };
  }
  if (LONG_NAME.test(text)) {
    const name = [...text.replace(/^\[|[:\]]$/g, '')];
    return {
      message: `“${shortened(name.join(''))}” is too long for the name of a section (${name.length} characters; ${LONGEST_NAME} at most).`,
      suggestion: `${name.slice(0, LONGEST_NAME).join('').trim()}:`,
    };
  }
  return SETTING.test(text)
    ? { message: `“${shortened(text)}” is no bar. Words stand behind a semicolon.`, suggestion: `; ${text}` }
    : null;
}

/** More words than this are the words of a song rather than the name of a part. */
const MOST_NAME_WORDS = 3;

/** What is asked about a line of words, and what was probably meant by it. */
export function unnamedWords(text: string): StrayLine {
  const stray = strayLine(text);
  if (stray !== null) return stray;
  const shown = shortened(text, 40);
  return text.split(/\s+/).length > MOST_NAME_WORDS
    ? {
        message: `“${shown}” are words and no chords. Words stand behind a semicolon: “; ${shown}”.`,
        suggestion: `; ${text}`,
      }
    : {
        message: `There is no section “${shown}” yet. To name one, write a colon after it: “${shown}:”.`,
        suggestion: `${text}:`,
      };
}

/** The name of a part in front of bars on one line, `Intro: | C |` or `Chorus | C |`; null without one. */
export function leadingName(words: string): string | null {
  const name = words.replace(/:$/, '').trim();
  const named = words.endsWith(':') ? /^[\p{L}\p{N}]/u.test(name) : isSectionWord(name);
  return named && name.length <= LONGEST_NAME ? name : null;
}

const SECTION_NAME = /^([\p{L}\p{N}][^|:;]{0,59}):$/u;
/** A word of four letters or more that no chord symbol begins with. */
const PLAIN_WORDS =
  /^(?![A-G](?:[♭♯#b]|maj|min|dim|aug|sus|add|alt|Maj|Min))\p{L}{4}[\p{L}\p{N} '’.-]{0,56}$/u;

/** The name as it is kept: without blanks around it and with single blanks inside. */
const tidy = (name: string): string => name.trim().replace(/\s+/g, ' ');

/** Equal for names that differ in capitals only. */
export const sectionId = (name: string): string => name.toLowerCase();

/** The lines of a text with any of the usual line ends. */
export const linesOf = (text: string): readonly string[] => text.split(/\r\n|\r|\n/);

/** What a line says: itself without its comment. */
export function saidIn(line: string): string {
  const comment = line.indexOf(';');
  return comment < 0 ? line : line.slice(0, comment);
}

/** A word of prose: of small letters, or of four letters and more. */
const PROSE_WORD = /^[("'“‘]?(?:[a-zà-ÿ]{2,}|\p{L}[a-zà-ÿ]{3,})(?:['’-]\p{L}+)*[.,;!?)"'”’…]*$/u;

/** Words of a song under its chords: no bar line, and more words than anything else. */
function isProse(text: string): boolean {
  if (text.includes('|') || text.length > 200) return false;
  const words = text.split(/\s+/);
  return words.length > 2 && words.filter((word) => PROSE_WORD.test(word)).length * 2 > words.length;
}

/**
 * The lines, from 0, that are a letter alone and more likely the mark of a section than a bar of that chord: letters in
 * the order of the alphabet from A on, each over a line with bar lines.
 */
export function rehearsalLetters(lines: readonly string[]): ReadonlySet<number> {
  const said = lines.map((line) => saidIn(line).trim());
  const written = said.flatMap((text, index) => (text === '' ? [] : [index]));
  const found = written.flatMap((index, place) => {
    const next = said[written[place + 1] ?? -1] ?? '';
    return /^[A-H]$/.test(said[index] ?? '') && next.indexOf('|') < next.lastIndexOf('|') ? [index] : [];
  });
  return found.every((index, place) => said[index] === 'ABCDEFGH'[place]) ? new Set(found) : new Set();
}

/** Tells what a line is; `isSection` says whether a name belongs to a section written above. */
export function classifyLine(line: string, isSection: (name: string) => boolean): ChartLine {
  const said = withoutUnseen(saidIn(line));
  const text = said.trim();
  if (text === '') return { kind: 'blank' };
  const column = said.length - said.trimStart().length + 1;
  const name = SECTION_NAME.exec(text)?.[1] ?? BRACKETED_NAME.exec(text)?.[1];
  if (name !== undefined) return { kind: 'section', name: tidy(name), text, column };
  if (isSection(tidy(text))) return { kind: 'again', name: tidy(text), text, column };
  if (strayLine(text) !== null) return { kind: 'unnamed words', text, column };
  if (PLAIN_WORDS.test(text) || isProse(text)) return { kind: 'unnamed words', text, column };
  return { kind: 'bars', said, text, column };
}
