import { Element } from 'vexflow/core';
import { CAPITAL_HEIGHT, glyphOf, textBox, textWidth } from '../metrics/measure';

const PIXELS_PER_POINT = 4 / 3;

/**
 * Lets the engraving library measure by the fonts' own tables instead of a canvas: a canvas answers with the
 * fallback font's widths until the music font has arrived, and there is none outside a browser.
 */
export function measureByTables(): void {
  const context = {
    font: '',
    measureText(text: string): TextMetrics {
      return metricsOf(text, fontSizeOf(context.font));
    },
  };
  const canvas: OffscreenCanvas = Object.assign(Object.create(null), { getContext: () => context });
  Element.setTextMeasurementCanvas(canvas);
}

/** Pixels in a CSS font text such as `bold 30pt Bravura`. */
function fontSizeOf(font: string): number {
  const size = font.split(' ').find((word) => /^[\d.]+(?:pt|px)$/.test(word)) ?? '0';
  return Number.parseFloat(size) * (size.endsWith('pt') ? PIXELS_PER_POINT : 1);
}

function metricsOf(text: string, size: number): TextMetrics {
  const isMusic = [...text].some((character) => glyphOf(character) !== undefined);
  const box = textBox(text, 0, 0, { font: isMusic ? 'Bravura' : 'Academico', size });
  return {
    width: textWidth(text, size),
    actualBoundingBoxAscent: -box.top,
    actualBoundingBoxDescent: box.bottom,
    actualBoundingBoxLeft: -box.left,
    actualBoundingBoxRight: box.right,
    fontBoundingBoxAscent: size * CAPITAL_HEIGHT,
    fontBoundingBoxDescent: 0,
    emHeightAscent: size,
    emHeightDescent: 0,
    alphabeticBaseline: 0,
    hangingBaseline: 0,
    ideographicBaseline: 0,
  };
}
