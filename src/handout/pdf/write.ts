import type { Face } from '../fonts/runs';
import { pageAddress } from '../layout/marks';
import type { SvgElement } from '../svg/style';
import type { HandoutPdf } from '../types';
import type { PictureText } from './fallback';
import { beginReading } from './reading';
import { drawSvg } from './walk';

/** A page to write: an SVG whose unit is a point. */
export interface PageToWrite {
  readonly width: number;
  readonly height: number;
  readonly svg: SvgElement;
  /** What leads to it, over the headings that are on it and behind it. */
  readonly bookmark?: string;
}

export interface DocumentFacts {
  readonly title: string;
  /** The teacher's own line of the sheet; '' where there is none. */
  readonly author: string;
  /** BCP 47. */
  readonly language: string;
}

/**
 * Writes the pages into one tagged PDF file (PDF 1.7, 14.8) with the fonts embedded as subsets.
 * @param picture - shows the characters that no font has
 * @param onProgress - called after every page; the browser can answer its user in between
 */
export async function writePdf(
  pages: readonly PageToWrite[],
  facts: DocumentFacts,
  faces: readonly Face[],
  picture: PictureText,
  onProgress: (done: number, all: number) => void = () => undefined,
): Promise<HandoutPdf> {
  const [{ default: PDFDocument }, { toBytes }] = await loadWriter();
  const document = new PDFDocument({
    autoFirstPage: false,
    // Helvetica is the default, and is asked for before any page is drawn: an empty name asks for none.
    font: '',
    margin: 0,
    pdfVersion: '1.7',
    lang: facts.language,
    displayTitle: true,
    tagged: true,
    info: {
      Title: facts.title,
      ...(facts.author === '' ? {} : { Author: facts.author }),
      Creator: 'Ground Bass',
      Producer: 'Ground Bass',
    },
  });
  const bytes = toBytes(document);
  for (const { name, font } of faces) document.registerFont(name, font);
  const reading = beginReading(document);
  const missing = new Set<string>();
  for (const [index, page] of pages.entries()) {
    document.addPage({ size: [page.width, page.height], margin: 0 });
    if (page.bookmark !== undefined) {
      reading.lead(page.bookmark);
      document.addNamedDestination(pageAddress(index + 1), 'Fit');
    }
    for (const character of drawSvg(page.svg, document, faces, picture, reading)) missing.add(character);
    onProgress(index + 1, pages.length);
    await breath();
  }
  reading.end();
  document.end();
  return { bytes: await bytes, missing: [...missing] };
}

/** Fetches the PDF library. */
export const loadWriter = () => Promise.all([import('pdfkit'), import('pdfkit/output')]);

/** Lets the page answer between two pages of a long document. */
const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
