/* Words of a chart that are no chords, as its own reader and that of pasted texts know them. */

const TIMES = /^(?:[x×](\d{1,3})|(\d{1,3})[x×])$/;

/** How often what stands before is played: 4 of `x4`, `4x` and `×4`; null of anything else. */
export function timesIn(word: string): number | null {
  const found = TIMES.exec(word);
  return found === null ? null : Number(found[1] ?? found[2]);
}

/** A text without the round brackets around it. */
export const unbracketed = (text: string): string =>
  text.startsWith('(') && text.endsWith(')') ? text.slice(1, -1).trim() : text;

/** The longest such sign, `(x100)`. */
const LONGEST = 6;

/** The sign of {@link timesIn}, in brackets or not, with which a text ends; '' where there is none. */
export function timesAtEnd(text: string): string {
  for (let length = Math.min(LONGEST, text.length); length > 1; length -= 1) {
    const tail = text.slice(-length);
    if (timesIn(unbracketed(tail)) !== null) return tail;
  }
  return '';
}

/** `N.C.` as people type it: with or without points, in small letters, in two words or spelled out. */
export const isNoChord = (text: string): boolean => /^(?:n\.?\s?c\.?|no chord)$/i.test(text);
