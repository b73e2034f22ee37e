import { cssSize } from './layout/paper';
import type { Handout } from './types';

const CONTAINER = 'handout-print';

/** Pages that wait to be printed, and the rules that let them alone be printed. */
interface Prepared {
  readonly container: HTMLElement;
  readonly rules: CSSStyleSheet;
  /** Somebody asked for just this one to be printed now. */
  readonly asked: boolean;
}

/** One of them is printed; the others wait until it is taken away. */
const waiting: Prepared[] = [];

/** The last that was asked for, whatever the page has made ready since; else the last that was made ready. */
const printed = (): Prepared | undefined => waiting.findLast(({ asked }) => asked) ?? waiting.at(-1);

/**
 * Puts a handout's pages into the document so that the browser prints them and nothing else, each on a sheet of
 * the right size without margins of the browser's own, under the handout's title. They are not seen on the
 * screen. Of several handouts the one that was asked for is printed, else the one prepared last.
 * @returns a function that takes them away again
 */
export const preparePrint = (handout: Handout): (() => void) => prepare(handout, false);

function prepare(handout: Handout, asked: boolean): () => void {
  const sizes = [...new Set(handout.pages.map((page) => cssSize(page)))];
  const container = document.createElement('div');
  container.className = CONTAINER;
  container.setAttribute('aria-hidden', 'true');
  container.lang = handout.language;
  container.append(...handout.pages.map((page) => sheetFor(page.svg, sizes.indexOf(cssSize(page)))));
  // A constructed style sheet is no inline style, so the page's security policy lets it pass.
  const rules = new CSSStyleSheet();
  rules.replaceSync(printRules(sizes));
  const prepared: Prepared = { container, rules, asked };
  const stopTitling = titleWhilePrinting(handout.title, () => printed() === prepared);
  document.body.append(container);
  document.adoptedStyleSheets.push(rules);
  waiting.push(prepared);
  showPrinted();
  return () => {
    stopTitling();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== rules);
    container.remove();
    waiting.splice(waiting.indexOf(prepared), 1);
    showPrinted();
  };
}

/** Opens the browser's print dialog with a handout; resolves when the dialog has been closed. */
export async function printHandout(handout: Handout): Promise<void> {
  const restore = prepare(handout, true);
  const closed = new Promise<void>((resolve) =>
    window.addEventListener('afterprint', () => resolve(), { once: true }),
  );
  window.print();
  await closed;
  restore();
}

function showPrinted(): void {
  const shown = printed();
  for (const prepared of waiting) {
    prepared.container.hidden = prepared !== shown;
    prepared.rules.disabled = prepared !== shown;
  }
}

/** The document's title becomes the name of a file that is printed to. */
function titleWhilePrinting(title: string, isCurrent: () => boolean): () => void {
  let usual: string | null = null;
  const set = () => {
    if (!isCurrent()) return;
    usual = document.title;
    document.title = title;
  };
  const reset = () => {
    if (usual !== null) document.title = usual;
    usual = null;
  };
  window.addEventListener('beforeprint', set);
  window.addEventListener('afterprint', reset);
  return () => {
    window.removeEventListener('beforeprint', set);
    window.removeEventListener('afterprint', reset);
  };
}

/** A page that is shown elsewhere is copied; one that is shown nowhere is put there itself. */
function sheetFor(page: SVGSVGElement, size: number): HTMLElement {
  const sheet = document.createElement('div');
  sheet.className = `${CONTAINER}__${size}`;
  sheet.append(page.parentNode === null ? page : document.importNode(page, true));
  return sheet;
}

/**
 * A sheet of paper a page (CSS Paged Media 3): handouts that are printed in one go may differ in their paper. Each is
 * half a point shorter than the paper, or rounding makes an empty page after it.
 * @param sizes - of the sheets, width and height
 */
const printRules = (sizes: readonly string[]): string => `
@page { size: ${sizes[0] ?? 'auto'}; margin: 0; }
@media screen { .${CONTAINER} { display: none; } }
@media print {
  html, body { margin: 0; padding: 0; background: none; }
  body > :not(.${CONTAINER}), .${CONTAINER}[hidden] { display: none !important; }
  .${CONTAINER} > div { width: 100%; overflow: hidden; break-after: page; }
  .${CONTAINER} > div:last-child { break-after: auto; }
  .${CONTAINER} svg { display: block; width: 100%; height: auto; }
}
${sizes.map(rulesOfSize).join('')}`;

const rulesOfSize = (size: string, index: number): string => `
@page ${CONTAINER}-${index} { size: ${size}; margin: 0; }
@media print {
  .${CONTAINER}__${index} { page: ${CONTAINER}-${index}; height: calc(${size.split(' ')[1]} - 0.5pt); }
}
`;
