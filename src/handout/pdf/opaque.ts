/** Where a PNG file says how its pixels are kept, and the kinds without transparency (PNG 3, 11.2.1). */
const COLOUR_TYPE_BYTE = 25;
const OPAQUE_TYPES: ReadonlySet<number> = new Set([0, 2, 3]);
const JPEG_QUALITY = 0.95;

/** A canvas whose ground is white and which has no transparency, to be drawn on. */
export function whiteCanvas(width: number, height: number) {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.ceil(width));
  canvas.height = Math.max(1, Math.ceil(height));
  const pen = canvas.getContext('2d', { alpha: false });
  if (pen === null) return null;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = '#000';
  return { canvas, pen };
}

/**
 * The canvas as a data address of a kind that goes into a PDF as it is. The PDF library takes a PNG with
 * transparency apart in a worker made from a blob, which the page's security policy forbids; where the browser
 * writes no other PNG, the picture becomes a JPEG.
 */
export function opaqueSource(canvas: HTMLCanvasElement): string {
  const png = canvas.toDataURL('image/png');
  const start = png.indexOf(',') + 1;
  const head = atob(png.slice(start, start + 48));
  return OPAQUE_TYPES.has(head.charCodeAt(COLOUR_TYPE_BYTE))
    ? png
    : canvas.toDataURL('image/jpeg', JPEG_QUALITY);
}
