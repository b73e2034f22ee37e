/** Brackets of a chord symbol, which may hold blanks: `C7(♭9, ♯11)`. */
const BRACKETS = /\([^()|]{0,40}\)/y;
const BLANK = /\s/;

/**
 * Where the word that begins at an index of a line ends; the index itself where none begins there. A word ends
 * before a blank, a bar line or the sign of a repeat; an open bracket that nothing closes is a sign like any other.
 * Linear time.
 */
export function wordEnd(text: string, from: number): number {
  let at = from;
  for (;;) {
    const sign = text.charAt(at);
    if (sign === '' || sign === '|' || BLANK.test(sign) || (sign === ':' && text[at + 1] === '|')) return at;
    BRACKETS.lastIndex = at;
    const brackets = sign === '(' && at > from ? BRACKETS.exec(text) : null;
    at += brackets?.[0].length ?? 1;
  }
}

/** The words of a text, such as the chords of a bar: cut at blanks that stand in no brackets. */
export function wordsOf(text: string): readonly string[] {
  const words: string[] = [];
  let at = 0;
  while (at < text.length) {
    const end = wordEnd(text, at);
    if (end > at) words.push(text.slice(at, end));
    at = Math.max(end, at + 1);
  }
  return words;
}

/**
 * A text with blanks in the place of signs that are not seen, which come along where a chart is copied from a page: all
 * that is read keeps its place.
 */
export const withoutUnseen = (text: string): string =>
  text.replace(/(?![\t\n\r])[\p{Cc}\p{Cf}]/gu, (sign) => ' '.repeat(sign.length));
