import { looksLikeNumeral, parseChord } from '../theory';
import { splitSlashes } from './bar-reader';
import { isSectionWord, linesOf, rehearsalLetters, saidIn } from './lines';

/** A way of reading a text that was not written as a chart is. */
export interface PastedOffer {
  /** What the text looks like, in one sentence. */
  readonly said: string;
  /** What is offered, as a deed: `Make each chord a bar`. */
  readonly deed: string;
  /** The chart text it gives; nothing of the pasted text is lost, words stand behind a semicolon. */
  readonly text: string;
}

type PastedLine = 'blank' | 'bars' | 'chords' | 'section' | 'words' | 'heading';

const NO_CHORD = /^n\.?c\.?$/i;

function isChord(word: string): boolean {
  const { chord } = splitSlashes(word);
  return (
    chord === '' || chord === '%' || NO_CHORD.test(chord) || parseChord(chord).ok || looksLikeNumeral(chord)
  );
}

function kindOf(line: string, isLetter: boolean): PastedLine {
  const text = saidIn(line).trim();
  if (text === '') return 'blank';
  if (text.includes('|')) return 'bars';
  if (/^\[[^\]]{1,40}\]$/.test(text) || text.endsWith(':')) return 'section';
  if (isSectionWord(text) || isLetter) return 'heading';
  const words = text.split(/\s+/);
  // Directives and ending numbers stand between chords.
  if (words.every((word) => isChord(word) || /^\(.*\)$|^\d{1,2}\.$|^[x×]\d+$/.test(word))) return 'chords';
  return /^[\p{L}\p{N}('"’]/u.test(text) ? 'words' : 'bars';
}

/** The chords of a line by columns, where tabs or wider gaps set them off and a column holds several; else null. */
function columnsOf(text: string): readonly string[] | null {
  const columns = text.trim().split(/\t+| {2,}/);
  return columns.length > 1 && columns.some((column) => /\S\s+\S/.test(column)) ? columns : null;
}

/**
 * How a text can be read that was pasted rather than written as a chart: chords without bar lines become bars, one a
 * column or one a chord; headings become sections, and words between the lines stand behind a semicolon. Null where
 * the text is written as charts are, or nothing but one bar.
 */
export function pastedOffer(text: string): PastedOffer | null {
  const lines = linesOf(text);
  const hasBars = lines.some((line) => saidIn(line).includes('|'));
  const letters = rehearsalLetters(lines);
  const kinds = lines.map((line, index) => kindOf(line, letters.has(index)));
  const chordLines = lines.filter((_, index) => kinds[index] === 'chords');
  const several = chordLines.some((line) => saidIn(line).trim().split(/\s+/).length > 1);
  // Slashes count the beats of a bar that is written without its lines.
  const counted = chordLines.some((line) => /(?:^|\s)\/|\/(?:\s|$)/.test(saidIn(line)));
  const unbarred = !hasBars && !counted && (chordLines.length > 1 || several);
  const others = kinds.some((kind) => kind === 'words' || kind === 'heading');
  if (!unbarred && !(others && (hasBars || chordLines.length > 0))) return null;
  const byColumns = !kinds.includes('words') && chordLines.some((line) => columnsOf(saidIn(line)) !== null);
  const written = lines.map((line, index) => writtenLine(line, kinds[index] ?? 'bars', unbarred, byColumns));
  const words = kinds.includes('words');
  return {
    said: unbarred
      ? `These chords stand without bar lines${words ? ', with words between them' : ''}.`
      : 'Some lines here are words and no chords.',
    deed: unbarred
      ? `Make each ${byColumns ? 'column' : 'chord'} a bar`
      : words
        ? 'Keep the words as comments'
        : 'Make the words sections',
    text: written.join('\n'),
  };
}

function writtenLine(line: string, kind: PastedLine, unbarred: boolean, byColumns: boolean): string {
  const said = saidIn(line);
  const text = said.trim();
  const comment = line.slice(said.length);
  if (kind === 'words') return `; ${text}${comment === '' ? '' : ` ${comment}`}`;
  if (kind === 'heading') return `${text}:${comment === '' ? '' : ` ${comment}`}`;
  if (kind !== 'chords' || !unbarred) return line;
  const bars = byColumns ? (columnsOf(text) ?? text.split(/\s+/)) : chordsOneByOne(text);
  return `| ${bars.join(' | ')} |${comment === '' ? '' : ` ${comment}`}`;
}

/** Chords one by one; a bracket, an ending number and slashes stay with their chord. */
function chordsOneByOne(text: string): readonly string[] {
  const bars: string[] = [];
  let head = '';
  for (const word of text.split(/\s+/)) {
    if (/^\(.*\)$|^\d{1,2}\.$/.test(word)) head += `${word} `;
    else if (/^\/+$/.test(word) && bars.length > 0) bars.push(`${bars.pop() ?? ''} ${word}`);
    else {
      bars.push(head + word);
      head = '';
    }
  }
  return bars;
}
