import { CSS_PAPER } from './layout/paper';
import type { Handout } from './types';

const CONTAINER = 'handout-print';

/**
 * Puts a handout's pages into the document so that the browser prints them and nothing else, each on a sheet of
 * the right size without margins of the browser's own. They are not seen on the screen.
 * @returns a function that takes them away again
 */
export function preparePrint(handout: Handout): () => void {
  const { size, height } = CSS_PAPER[handout.paper];
  const container = document.createElement('div');
  container.className = CONTAINER;
  container.setAttribute('aria-hidden', 'true');
  container.lang = handout.language;
  container.append(...handout.pages.map((page) => sheetFor(page.svg)));
  // A constructed style sheet is no inline style, so the page's security policy lets it pass.
  const style = new CSSStyleSheet();
  style.replaceSync(printRules(size, height));
  const title = document.title;
  document.body.append(container);
  document.adoptedStyleSheets.push(style);
  document.title = handout.title;
  return () => {
    document.title = title;
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== style);
    container.remove();
  };
}

/** Opens the browser's print dialog with a handout; resolves when the dialog has been closed. */
export async function printHandout(handout: Handout): Promise<void> {
  const restore = preparePrint(handout);
  const closed = new Promise<void>((resolve) =>
    window.addEventListener('afterprint', () => resolve(), { once: true }),
  );
  window.print();
  await closed;
  restore();
}

function sheetFor(page: SVGSVGElement): HTMLElement {
  const sheet = document.createElement('div');
  const copy = document.importNode(page, true);
  copy.setAttribute('width', '100%');
  copy.removeAttribute('height');
  sheet.append(copy);
  return sheet;
}

/**
 * A sheet of paper a page (CSS Paged Media 3). Each is half a point shorter than the paper, or rounding makes
 * an empty page after it.
 */
const printRules = (size: string, height: string): string => `
@page { size: ${size}; margin: 0; }
@media screen { .${CONTAINER} { display: none; } }
@media print {
  html, body { margin: 0; padding: 0; background: none; }
  body > :not(.${CONTAINER}) { display: none !important; }
  .${CONTAINER} > div { width: 100%; height: calc(${height} - 0.5pt); overflow: hidden; break-after: page; }
  .${CONTAINER} > div:last-child { break-after: auto; }
  .${CONTAINER} svg { display: block; width: 100%; height: auto; }
}
`;
