import { type Face, type FontRun, fontRuns } from '../fonts/runs';
import { INITIAL_STYLE, type Style, styleOf, textSpans } from '../svg/style';

const SVG = 'http://www.w3.org/2000/svg';

/**
 * What becomes of the letters of a picture: outlines look the same in every program, text can be searched, edited and
 * read aloud, and shows in the reader's own font where it has not the page's.
 */
export type Letters = 'outlines' | 'text';

/** The family whose characters are music signs: as text they would be boxes wherever the font is missing. */
const MUSIC_FAMILY = 'Bravura';

/**
 * A copy of a drawing that stands alone: its music signs are outlines, its letters are what is asked for. Characters
 * that no face has stay text, in the reader's own font.
 */
export function outlined(
  drawing: SVGSVGElement,
  faces: readonly Face[],
  letters: Letters = 'outlines',
): SVGSVGElement {
  const copy = document.importNode(drawing, true);
  outlineIn(copy, INITIAL_STYLE, faces, letters);
  return copy;
}

function outlineIn(element: SVGElement, parent: Style, faces: readonly Face[], letters: Letters): void {
  const style = styleOf(element, parent);
  if (element instanceof SVGTextElement) {
    element.replaceWith(...textParts(element, style, faces, letters));
    return;
  }
  for (const child of [...element.children]) {
    if (child instanceof SVGElement) outlineIn(child, style, faces, letters);
  }
}

function textParts(
  element: SVGTextElement,
  style: Style,
  faces: readonly Face[],
  letters: Letters,
): readonly SVGElement[] {
  const runs = textSpans(element, style).flatMap((span) =>
    fontRuns(span.text, span.style.fontFamilies, span.style.bold, faces).map((run, index) => ({
      run,
      span,
      dx: index === 0 ? span.dx : 0,
    })),
  );
  const widths = runs.map(({ run, span }) => widthOf(run, span.style));
  const width = widths.reduce((sum, one, index) => sum + one + (runs[index]?.dx ?? 0), 0);
  const y = Number(element.getAttribute('y') ?? 0);
  let x = Number(element.getAttribute('x') ?? 0) - { start: 0, middle: width / 2, end: width }[style.anchor];
  return runs.map(({ run, span, dx }, index) => {
    const runWidth = widths[index] ?? 0;
    x += dx;
    const part =
      run.face === null
        ? keptText(element, run.text, x)
        : letters === 'text' && run.face.family !== MUSIC_FAMILY
          ? writtenText(run.text, run.face, span.style, x, y + span.dy, runWidth)
          : outline(run.text, run.face, span.style, x, y + span.dy);
    x += runWidth;
    const role = element.getAttribute('class');
    if (role !== null) part.setAttribute('class', role);
    return part;
  });
}

const scaleOf = (face: Face, style: Style): number => style.fontSize / face.font.unitsPerEm;

function widthOf({ text, face }: FontRun, style: Style): number {
  if (face !== null) return face.font.layout(text).advanceWidth * scaleOf(face, style);
  const pen = document.createElement('canvas').getContext('2d');
  if (pen === null) return text.length * style.fontSize * 0.5;
  pen.font = `${style.bold ? 'bold ' : ''}${style.fontSize}px serif`;
  return pen.measureText(text).width;
}

function outline(text: string, face: Face, style: Style, x: number, y: number): SVGElement {
  const { glyphs, positions } = face.font.layout(text);
  const scale = scaleOf(face, style);
  let pen = x;
  const data = glyphs.map((glyph, index) => {
    const place = positions[index] ?? { xAdvance: 0, xOffset: 0, yOffset: 0 };
    const shape = glyph.path
      .scale(scale, -scale)
      .translate(pen + place.xOffset * scale, y - place.yOffset * scale)
      .toSVG();
    pen += place.xAdvance * scale;
    return shape;
  });
  const path = document.createElementNS(SVG, 'path');
  path.setAttribute('d', shortNumbers(data.join('')));
  path.setAttribute('fill', style.fill);
  if (style.slanted) path.setAttribute('transform', slantAt(y));
  return path;
}

/** Fourteen degrees, as a browser slants an upright face (CSS Fonts 4, 2.4), about the baseline. */
const slantAt = (y: number): string => {
  const lean = -Math.tan((14 * Math.PI) / 180);
  return `matrix(1 0 ${lean} 1 ${-lean * y} 0)`;
};

const shortNumbers = (data: string): string =>
  data.replace(/-?(?:\d+(?:\.\d+)?|\.\d+)(?:e-?\d+)?/g, (digits) =>
    String(Math.round(Number(digits) * 100) / 100),
  );

/** Text in the page's face, held to the width it has there so that nothing overlaps where another font stands in. */
function writtenText(
  text: string,
  face: Face,
  style: Style,
  x: number,
  y: number,
  width: number,
): SVGElement {
  const written = document.createElementNS(SVG, 'text');
  written.textContent = text;
  const said: Readonly<Record<string, string>> = {
    x: shortNumbers(String(x)),
    y: shortNumbers(String(y)),
    'font-family': `${face.family}, serif`,
    'font-size': String(style.fontSize),
    fill: style.fill,
    textLength: shortNumbers(String(width)),
    lengthAdjust: 'spacingAndGlyphs',
    'xml:space': 'preserve',
    ...(style.bold ? { 'font-weight': 'bold' } : {}),
    ...(style.slanted ? { 'font-style': 'italic' } : {}),
  };
  for (const [name, value] of Object.entries(said)) written.setAttribute(name, value);
  return written;
}

function keptText(element: SVGTextElement, text: string, x: number): SVGElement {
  const kept = document.importNode(element, true);
  kept.textContent = text;
  kept.setAttribute('x', String(x));
  kept.setAttribute('text-anchor', 'start');
  kept.setAttribute('font-family', 'serif');
  return kept;
}
