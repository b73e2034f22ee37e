import { opaqueSource, whiteCanvas } from './opaque';

/** How a text looks that has to be pictured. */
export interface PicturedText {
  readonly text: string;
  /** CSS font families, the wanted ones first. */
  readonly families: readonly string[];
  readonly size: number;
  readonly bold: boolean;
}

/** A picture of a text, its measures in the unit of the text's size. */
export interface TextPicture {
  /** A PNG without transparency or a JPEG, as a data address. */
  readonly source: string;
  /** From the text's beginning on its baseline to the picture's top left corner. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Distance from the text's beginning to what follows it. */
  readonly advance: number;
}

/** Pictures a text in whatever font the machine has for it; null when it cannot. */
export type PictureText = (text: PicturedText) => TextPicture | null;

/** Pixels a unit: 600 dots an inch and more when the unit is a point. */
const RESOLUTION = 10;

/**
 * Draws characters that no embedded font has with the browser's own choice of font, as the screen shows them:
 * a name in Greek or Chinese letters is right on paper too.
 */
export const pictureText: PictureText = ({ text, families, size, bold }) => {
  const face = `${bold ? 'bold ' : ''}${size * RESOLUTION}px ${[...families.map(quoted), 'serif'].join(', ')}`;
  const box = measure(text, face);
  if (box === null) return null;
  const left = Math.floor(-box.actualBoundingBoxLeft);
  const top = Math.floor(-box.actualBoundingBoxAscent);
  const made = whiteCanvas(
    Math.ceil(box.actualBoundingBoxRight) - left,
    Math.ceil(box.actualBoundingBoxDescent) - top,
  );
  if (made === null) return null;
  made.pen.font = face;
  made.pen.fillText(text, -left, -top);
  return {
    source: opaqueSource(made.canvas),
    left: left / RESOLUTION,
    top: top / RESOLUTION,
    width: made.canvas.width / RESOLUTION,
    height: made.canvas.height / RESOLUTION,
    advance: box.width / RESOLUTION,
  };
};

function measure(text: string, face: string): TextMetrics | null {
  const pen = document.createElement('canvas').getContext('2d');
  if (pen === null) return null;
  pen.font = face;
  return pen.measureText(text);
}

const GENERIC = new Set(['serif', 'sans-serif', 'monospace']);
const quoted = (family: string): string => (GENERIC.has(family) ? family : `"${family.replaceAll('"', '')}"`);
