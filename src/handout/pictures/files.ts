import { loadFaces } from '../fonts/load';
import { type Letters, outlined } from './outline';

/** Pixels that a canvas of any browser can hold on a side. */
const LARGEST_SIDE = 8_192;

/**
 * A drawing of the score room to stand alone, its signs as outlines and its letters as asked.
 * @param drawing a fretboard, or a system with an element for each mark
 * @throws Error when a font cannot be fetched
 */
export const standAlone = async (
  drawing: SVGSVGElement,
  letters: Letters = 'outlines',
): Promise<SVGSVGElement> => outlined(drawing, await loadFaces(), letters);

/** The text of an SVG file. */
export function svgFile(picture: SVGSVGElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(picture)}\n`;
}

/**
 * A PNG file with a transparent ground.
 * @param picture - with a width and a height in CSS pixels
 * @param scale - pixels of the file a CSS pixel; made smaller where the picture would be too large
 * @throws Error when the browser cannot draw it
 */
export async function pngFile(picture: SVGSVGElement, scale = 3): Promise<Blob> {
  const [width, height] = [Number(picture.getAttribute('width')), Number(picture.getAttribute('height'))];
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(picture))}`;
  await image.decode();
  const fitting = Math.min(scale, LARGEST_SIDE / width, LARGEST_SIDE / height);
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * fitting);
  canvas.height = Math.round(height * fitting);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) =>
      blob === null ? reject(new Error('The picture could not be drawn')) : resolve(blob),
    ),
  );
}
