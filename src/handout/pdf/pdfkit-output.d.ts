declare module 'pdfkit/output' {
  /** Gathers the bytes of a document; to be called before the document is ended. */
  export function toBytes(document: PDFKit.PDFDocument): Promise<Uint8Array<ArrayBuffer>>;
}
