import type { Handout, HandoutPage } from './types';

/** A handout among others. */
export interface HandoutPart {
  /** What leads to it in the file. */
  readonly words: string;
  readonly handout: Handout;
}

/** An empty page behind another one, of its size. */
function emptyBehind({ number, width, height, svg }: HandoutPage): HandoutPage {
  const empty = svg.ownerDocument.importNode(svg, false);
  empty.setAttribute('aria-label', 'An empty page');
  return { number: number + 1, width, height, svg: empty };
}

/**
 * Several handouts one behind the other, to be printed or written in one go. Each keeps the numbers of its own pages.
 * @param sheets - for paper that is printed on both sides: each begins on a sheet of its own
 */
export function joinHandouts(title: string, parts: readonly HandoutPart[], sheets: boolean): Handout {
  const pages = parts.flatMap(({ words, handout }) => {
    const own = handout.pages.map((page, index) => (index === 0 ? { ...page, bookmark: words } : page));
    const last = own.at(-1);
    return sheets && own.length % 2 === 1 && last !== undefined ? [...own, emptyBehind(last)] : own;
  });
  const [first] = parts;
  return {
    paper: first?.handout.paper ?? 'A4',
    title,
    author: first?.handout.author ?? '',
    language: first?.handout.language ?? 'en',
    pages,
    remarks: [...new Set(parts.flatMap(({ handout }) => handout.remarks))],
  };
}
