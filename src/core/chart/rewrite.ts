import { remembered } from '../base';
import { classifyLine, saidIn, sectionId } from './lines';
import { scanLine, type Token } from './scanner';

/** What a piece of a line of bars becomes, or null where it stays. */
export type TokenWriter = (token: Token) => string | null;

/**
 * The chart text with pieces of its lines of bars written anew. Layout, comments and section names stay letter for
 * letter, and so does whatever the writer leaves.
 * @param isBars whether a line that reads as words is one of chords all the same
 */
export function rewriteTokens(
  text: string,
  write: TokenWriter,
  isBars: (said: string) => boolean = () => false,
): string {
  const rewritten = wordsOnce(write);
  const names = new Set<string>();
  return text
    .split(/(\r\n|\r|\n)/)
    .map((line, index) => {
      if (index % 2 === 1) return line;
      const read = classifyLine(line, (name) => names.has(sectionId(name)));
      if (read.kind === 'section') names.add(sectionId(read.name));
      const said = saidIn(line);
      const bars = read.kind === 'bars' || (read.kind === 'unnamed words' && isBars(said));
      return bars ? rewriteBars(line, said, rewritten) : line;
    })
    .join('');
}

function rewriteBars(line: string, said: string, rewritten: TokenWriter): string {
  let result = '';
  let copied = 0;
  for (const token of scanLine(said, 1)) {
    const now = rewritten(token);
    if (now === null) continue;
    const start = token.place.column - 1;
    result += line.slice(copied, start) + now;
    copied = start + token.place.length;
  }
  return result + line.slice(copied);
}

/** Charts use the same few symbols again and again: each is worked out once. */
function wordsOnce(write: TokenWriter): TokenWriter {
  const known = new Map<string, string | null>();
  return (token) =>
    token.kind === 'word' ? remembered(known, token.text, () => write(token)) : write(token);
}
