declare module 'pdfkit/output' {
  /** Gathers the bytes of a document; to be called before the document is ended. */
  export function toBytes(document: PDFKit.PDFDocument): Promise<Uint8Array<ArrayBuffer>>;
}

/** What the library takes and its published types leave out. */
declare namespace PDFKit {
  interface PDFOutline {
    addItem(title: string, options?: { expanded?: boolean; top?: number; left?: number }): PDFOutline;
  }
}

declare namespace PDFKit.Mixins {
  interface PDFFont {
    registerFont(name: string, font: import('fontkit').Font): this;
  }

  interface AnnotationOption {
    /** The element of the file's structure that the annotation belongs to. */
    structParent?: PDFKit.PDFStructureElement;
  }
}
