/** A thing of the page as it is read aloud. */
export interface ReadThing {
  /** A standard structure type (PDF 1.7, 14.8.4). */
  readonly role: string;
  /** What is read in the place of a picture; null where the words themselves are read. */
  readonly alternative: string | null;
  readonly words: string;
  /** In points from the top of the page. */
  readonly top: number;
}

type Element = PDFKit.PDFStructureElement;

/** The structure of a file: what is read aloud, in what order, and the headings that lead through it. */
export interface Reading {
  /** @param draw - draws the thing; what it links to is told to the structure's element */
  readonly add: (thing: ReadThing, draw: (element: Element | null) => void) => void;
  /** Leads to the page at hand; the headings from here on stand below it. */
  readonly lead: (words: string) => void;
  /** To be called once, after the last page. */
  readonly end: () => void;
}

/** Begins the structure of a tagged document. */
export function beginReading(document: PDFKit.PDFDocument): Reading {
  const root = document.struct('Document');
  document.addStructure(root);
  let whole: PDFKit.PDFOutline = document.outline;
  let part: PDFKit.PDFOutline | null = null;
  // The library measures a bookmark's place from the right edge of the page.
  const below = (above: PDFKit.PDFOutline, words: string, top: number): PDFKit.PDFOutline =>
    above.addItem(words, { expanded: true, top, left: document.page.width });
  const bookmark = ({ role, words, top }: ReadThing): void => {
    const added = below(role === 'H3' ? (part ?? whole) : whole, words, top);
    if (role === 'H2') part = added;
  };
  return {
    add: (thing, draw) => {
      const { role, alternative } = thing;
      if (role === 'Artifact') {
        document.markContent('Artifact', { type: 'Layout' });
        draw(null);
        document.endMarkedContent();
        return;
      }
      if (role === 'H2' || role === 'H3') bookmark(thing);
      const element = document.struct(role, alternative === null ? {} : { alt: alternative });
      root.add(element);
      const content = document.markStructureContent(role);
      draw(element);
      document.endMarkedContent();
      element.add(content);
      element.end();
    },
    lead: (words) => {
      whole = below(document.outline, words, 0);
      part = null;
    },
    end: () => root.end(),
  };
}
