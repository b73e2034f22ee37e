import { beatsInBar, type Metre } from '../base';
import { parseChord, symbolInLetters } from '../theory';
import { isNumeral, splitSlashes } from './bar-reader';
import { isSectionWord, leadingName, linesOf, rehearsalLetters, saidIn, strayLine } from './lines';
import { parseChart } from './parse';
import { inChartSigns, type PartNames } from './paste-signs';
import { isNoChord, timesIn, unbracketed } from './word-signs';

/** A way of reading a text that was not written as a chart is. */
export interface PastedOffer {
  /** What the text looks like, in one sentence. */
  readonly said: string;
  /** What is offered, as a deed: `Make each chord a bar`. */
  readonly deed: string;
  /** The chart text it gives; nothing of the pasted text is lost, words stand behind a semicolon. */
  readonly text: string;
}

type LineKind = 'blank' | 'bars' | 'chords' | 'section' | 'words' | 'heading' | 'stray' | 'directive';

interface PastedLine {
  readonly kind: LineKind;
  /** What the line says, without blanks around it, a bullet, and the name of a part in front. */
  readonly text: string;
  /** The name of a part that stands in front of its chords or bars. */
  readonly name: string | null;
  readonly comment: string;
}

/** What stands between chords and is none: dashes, arrows, commas. */
const SEPARATOR = /^(?:[-–—,;·•>→]|->|=>)$/;
/** How often what stands before is played, in brackets or not. */
const timesOf = (word: string): number | null => timesIn(unbracketed(word));
const BULLET = /^(?:[•*·▪◦–—-]|\d{1,2}\))\s+/;

function isChord(word: string): boolean {
  const { chord } = splitSlashes(word);
  return chord === '' || chord === '%' || isNoChord(chord) || parseChord(chord).ok || isNumeral(chord);
}

/** The words of a line of chords without what stands between them. */
const chordWords = (text: string): readonly string[] =>
  text
    .split(/\s+/)
    .filter((word) => !SEPARATOR.test(word))
    .map((word) => word.replace(/[,;]$/, ''));

/** Directives, ending numbers and how often to play stand between chords. */
const isChords = (text: string): boolean => {
  const words = chordWords(text);
  const others = /^\(.*\)$|^\d{1,2}\.$/;
  return (
    words.some(isChord) && words.every((word) => isChord(word) || others.test(word) || timesOf(word) !== null)
  );
};

/** The name of a part in front of its chords on one line, and the rest. */
function splitName(text: string): { readonly name: string | null; readonly rest: string } {
  if (strayLine(text) !== null) return { name: null, rest: text };
  const bar = text.indexOf('|');
  const colon = text.indexOf(':');
  const end = colon > 0 && (bar < 0 || colon < bar - 1) ? colon + 1 : bar;
  const rest = text.slice(end).trim();
  const name = end > 0 && rest !== '' ? leadingName(text.slice(0, end).trim()) : null;
  return name !== null && (rest.includes('|') || isChords(rest))
    ? { name, rest }
    : { name: null, rest: text };
}

function kindOf(text: string, isLetter: boolean): LineKind {
  if (text === '') return 'blank';
  if (strayLine(text) !== null) return 'stray';
  if (text.includes('|')) return 'bars';
  if (/^(?:\([^()]*\)\s?)+$/.test(text)) return 'directive';
  if (/^\[[^\]]{1,40}\]$/.test(text) || text.endsWith(':')) return 'section';
  if (isSectionWord(text) || isLetter) return 'heading';
  if (isChords(text)) return 'chords';
  return /^[\p{L}\p{N}('"’]/u.test(text) ? 'words' : 'bars';
}

function readLine(line: string, isLetter: boolean): PastedLine {
  const said = saidIn(line);
  const comment = line.slice(said.length);
  const trimmed = said.trim();
  const bare = trimmed.replace(BULLET, '');
  const { name, rest } = splitName(isChords(bare) ? bare : trimmed);
  return { kind: kindOf(rest, isLetter), text: rest, name, comment };
}

/** The chords of a line by columns, where tabs or wider gaps set them off and a column holds several; else null. */
function columnsOf(text: string): readonly string[] | null {
  const columns = text.split(/\t+| {2,}/);
  return columns.length > 1 && columns.some((column) => /\S\s+\S/.test(column)) ? columns : null;
}

/** Whether chords without bar lines are to become bars: several of them, and no slashes that count beats already. */
function isUnbarred(lines: readonly PastedLine[]): boolean {
  const chords = lines.filter(({ kind }) => kind === 'chords');
  const several = chords.some(({ text }) => chordWords(text).length > 1);
  const counted = chords.some(({ text }) => /(?:^|\s)\/|\/(?:\s|$)/.test(text));
  return !lines.some(({ kind }) => kind === 'bars') && !counted && (chords.length > 1 || several);
}

/** Whether something is no bar and stands for nothing else yet. */
const isAsked = ({ kind, name }: PastedLine): boolean =>
  kind === 'words' || kind === 'heading' || kind === 'stray' || name !== null;

function offerFor(
  lines: readonly PastedLine[],
  unbarred: boolean,
  byColumns: boolean,
): Omit<PastedOffer, 'text'> {
  const words = lines.some(({ kind, text }) => kind === 'words' || isRemark(kind, text));
  if (unbarred) {
    return {
      said: `These chords stand without bar lines${words ? ', with words between them' : ''}.`,
      deed: `Make each ${byColumns ? 'column' : 'chord'} a bar`,
    };
  }
  const names = lines.some(({ kind, name }) => kind === 'heading' || name !== null);
  return {
    said: 'Some lines here are words and no chords.',
    deed: words
      ? 'Keep the words as comments'
      : names
        ? 'Make the words sections'
        : 'Read them as they are meant',
  };
}

const isRemark = (kind: LineKind, text: string): boolean =>
  kind === 'stray' && strayLine(text)?.suggestion.startsWith(';') === true;

/** Names as German writes them, of which letters have no others: `H`, `Fis`, `Es`. */
const GERMAN = /^(?:H|[ACDFG]is|[DG]es|[AE]s)/;

const isGerman = (word: string): boolean =>
  !isChord(word) && GERMAN.test(word) && parseChord(symbolInLetters('german', word)).ok;

/** What the parts of a text are called. */
function namesIn(text: string): PartNames {
  const names = new Set(
    linesOf(text).flatMap((line) => {
      const said = saidIn(line).trim();
      const bracketed = /^\[([^\]]{2,40})\]/.exec(said)?.[1];
      const name = bracketed ?? (said.endsWith(':') ? said.slice(0, -1) : said);
      return isChords(name) ? [] : [name.toLowerCase()];
    }),
  );
  const isKnown = (name: string): boolean => name !== '' && names.has(name.toLowerCase());
  return { isName: (name) => isSectionWord(name) || isKnown(name), isKnown };
}

/**
 * How a text can be read that was pasted rather than written as a chart: signs and names of other sheets become the
 * chart's own, chords without bar lines become bars, one a column, one a chord or by their beats; headings become
 * sections, a metre and a key stand in brackets, and words between the lines behind a semicolon. Null where the text is
 * written as charts are, or nothing but one bar.
 * @param metre the piece's: by its beats chords are counted that stand with theirs
 */
export function pastedOffer(text: string, metre: Metre): PastedOffer | null {
  const german = text.split(/[\s|]+/).some(isGerman);
  const letters = german ? text.replace(/[^\s|()]+/g, (word) => inLetters(word)) : text;
  const signs = inChartSigns(letters, beatsInBar(metre), namesIn(text));
  if (signs === text) return shapeOffer(text);
  const shape = shapeOffer(signs);
  const offer = {
    ...(shape ?? signOffer(text, signs)),
    ...(german ? GERMAN_OFFER : {}),
    text: shape?.text ?? signs,
  };
  /** How much of a text is not understood. */
  const asked = (chart: string): number => parseChart(chart, metre).problems.length;
  const gains = asked(offer.text) < asked(text) || (!text.includes('|') && offer.text.includes('|'));
  return gains ? offer : shapeOffer(text);
}

const inLetters = (word: string): string =>
  parseChord(symbolInLetters('german', word)).ok ? symbolInLetters('german', word) : word;

const GERMAN_OFFER = {
  said: 'Some of these names are German: H is B, and B is B♭.',
  deed: 'Read the names as German',
};

const signOffer = (text: string, signs: string): Omit<PastedOffer, 'text'> =>
  !text.includes('|') && signs.includes('|')
    ? { said: 'These chords stand without bar lines, with their beats.', deed: 'Count them into bars' }
    : { said: 'Some signs here are not those of a chart.', deed: 'Write them as a chart has them' };

/** What is offered for the lines of a text: bars for chords without bar lines, sections and comments for words. */
function shapeOffer(text: string): PastedOffer | null {
  const raw = linesOf(text);
  const letters = rehearsalLetters(raw);
  const lines = settled(raw.map((line, index) => readLine(line, letters.has(index))));
  const unbarred = isUnbarred(lines);
  const hasChords = lines.some(({ kind }) => kind === 'chords' || kind === 'bars');
  if (!unbarred && !(lines.some(isAsked) && hasChords)) return null;
  const byColumns =
    !lines.some(({ kind }) => kind === 'words') &&
    lines.some((line) => line.kind === 'chords' && columnsOf(line.text) !== null);
  const known = new Set<string>();
  const written = lines.map((line, index) => {
    const again = isAgain(lines, index, known);
    return writtenLine(line, raw[index] ?? '', unbarred, byColumns, again);
  });
  return { ...offerFor(lines, unbarred, byColumns), text: written.join('\n') };
}

/** A heading that names a section written above stands for it, and is no question. */
function settled(lines: readonly PastedLine[]): readonly PastedLine[] {
  const names = new Set<string>();
  return lines.map((line) => {
    if (line.kind === 'section') names.add(line.text.replace(/^\[|[\]:]$/g, '').toLowerCase());
    const known = line.kind === 'heading' && names.has(line.text.toLowerCase());
    return known ? { ...line, kind: 'section' } : line;
  });
}

/** Whether a heading has been there with its bars and stands here without any: the section comes again. */
function isAgain(lines: readonly PastedLine[], index: number, known: Set<string>): boolean {
  const line = lines[index];
  if (line?.kind !== 'heading') return false;
  const name = line.text.toLowerCase();
  const next = lines.slice(index + 1).find(({ kind }) => kind !== 'blank' && kind !== 'words');
  const bare = next === undefined || next.kind === 'heading' || next.kind === 'section' || next.name !== null;
  if (known.has(name)) return bare;
  known.add(name);
  return false;
}

function writtenLine(
  { kind, text, name, comment }: PastedLine,
  raw: string,
  unbarred: boolean,
  byColumns: boolean,
  again: boolean,
): string {
  const behind = comment === '' ? '' : ` ${comment}`;
  const head = name === null ? '' : `${name}:\n`;
  switch (kind) {
    case 'words':
      return `; ${text}${behind}`;
    case 'heading':
      return `${text}${again ? '' : ':'}${behind}`;
    case 'stray':
      return `${strayLine(text)?.suggestion ?? text}${behind}`;
    case 'chords':
      return unbarred || name !== null ? `${head}${barred(text, byColumns)}${behind}` : raw;
    default:
      return name === null ? raw : `${head}${text}${behind}`;
  }
}

/** Chords as bars, and a repeat where the line says how often. */
function barred(text: string, byColumns: boolean): string {
  const words = chordWords(text);
  const inside = words.slice(0, -1).some((word) => timesOf(word) !== null);
  if (inside) return repeatedInTurn(words);
  const times = timesOf(words.at(-1) ?? '');
  const columns = byColumns && times === null ? columnsOf(text) : null;
  const bars = (columns ?? chordsOneByOne(times === null ? words : words.slice(0, -1))).join(' | ');
  return played(bars, times ?? 1);
}

/** Bars that are played so often. */
const played = (bars: string, times: number): string =>
  times > 1 ? `|: ${bars} :|${times > 2 ? ` x${times}` : ''}` : `| ${bars} |`;

/** Chords of which some say how often they are played: `C x4 F x4`, each for what stands before it. */
function repeatedInTurn(words: readonly string[]): string {
  const parts: string[] = [];
  let open: string[] = [];
  for (const word of words) {
    const times = timesOf(word);
    if (times === null) open.push(word);
    else if (open.length > 0) {
      parts.push(played(chordsOneByOne(open).join(' | '), times));
      open = [];
    }
  }
  if (open.length > 0) parts.push(played(chordsOneByOne(open).join(' | '), 1));
  return parts.join(' ');
}

/** Chords one by one; a bracket, an ending number and slashes stay with their chord. */
function chordsOneByOne(words: readonly string[]): readonly string[] {
  const bars: string[] = [];
  let head = '';
  for (const word of words) {
    if (/^\(.*\)$|^\d{1,2}\.$/.test(word)) head += `${word} `;
    else if (/^\/+$/.test(word) && bars.length > 0) bars.push(`${bars.pop() ?? ''} ${word}`);
    else {
      bars.push(head + word);
      head = '';
    }
  }
  return bars;
}
