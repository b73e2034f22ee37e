import { type FontRun, fontRuns, type PdfFont } from './runs';
import { INITIAL_STYLE, isHidden, type Style, type SvgElement, styleOf, transformsOf } from './style';

/** What the walker needs of a PDF document: pdfkit's, or a test's recorder. */
export type Canvas = Pick<
  PDFKit.PDFDocument,
  | 'save'
  | 'restore'
  | 'transform'
  | 'path'
  | 'rect'
  | 'fill'
  | 'stroke'
  | 'fillAndStroke'
  | 'lineWidth'
  | 'lineCap'
  | 'dash'
  | 'font'
  | 'fontSize'
  | 'fillColor'
  | 'text'
  | 'widthOfString'
>;

interface Pen {
  readonly canvas: Canvas;
  readonly fonts: readonly PdfFont[];
  readonly missing: Set<string>;
}

/**
 * Draws an SVG made of `g`, `path`, `rect` and `text` (all that the score and the page are made of) into a PDF
 * page whose unit is the SVG's own. Text stays text.
 *
 * @returns the characters that no font could show; their width is left empty
 * @throws Error for an element of another kind, so that nothing is dropped silently
 */
export function drawSvg(svg: SvgElement, canvas: Canvas, fonts: readonly PdfFont[]): ReadonlySet<string> {
  const pen: Pen = { canvas, fonts, missing: new Set() };
  const style = styleOf(svg, INITIAL_STYLE);
  for (const child of svg.children) drawElement(child, style, pen);
  return pen.missing;
}

function drawElement(element: SvgElement, parent: Style, pen: Pen): void {
  if (isHidden(element)) return;
  const style = styleOf(element, parent);
  const transforms = transformsOf(element);
  if (transforms.length > 0) {
    pen.canvas.save();
    for (const matrix of transforms) pen.canvas.transform(...matrix);
  }
  drawOne(element, style, pen);
  if (transforms.length > 0) pen.canvas.restore();
}

function drawOne(element: SvgElement, style: Style, pen: Pen): void {
  switch (element.localName) {
    case 'g':
      for (const child of element.children) drawElement(child, style, pen);
      return;
    case 'path': {
      const data = element.getAttribute('d') ?? '';
      if (data.trim() !== '') paint(style, pen.canvas, () => pen.canvas.path(data));
      return;
    }
    case 'rect':
      paint(style, pen.canvas, () =>
        pen.canvas.rect(
          number(element, 'x'),
          number(element, 'y'),
          number(element, 'width'),
          number(element, 'height'),
        ),
      );
      return;
    case 'text':
      drawText(element, style, pen);
      return;
    case 'title':
    case 'desc':
      return;
    default:
      throw new Error(`The page holds an element that the PDF writer does not know: ${element.localName}`);
  }
}

const number = (element: SvgElement, name: string): number =>
  Number.parseFloat(element.getAttribute(name) ?? '0') || 0;

function paint(style: Style, canvas: Canvas, outline: () => void): void {
  const filled = style.fill !== 'none' && style.fill !== 'transparent';
  const stroked = style.stroke !== 'none' && style.stroke !== 'transparent' && style.strokeWidth > 0;
  if (!filled && !stroked) return;
  const dashes = dashLengths(style.strokeDash);
  if (stroked) {
    if (dashes.length > 0) canvas.save();
    canvas.lineWidth(style.strokeWidth).lineCap(lineCap(style.lineCap));
    const [length, space = length] = dashes;
    if (length !== undefined) canvas.dash(length, space === undefined ? {} : { space });
  }
  outline();
  if (filled && stroked) canvas.fillAndStroke(style.fill, style.stroke);
  else if (filled) canvas.fill(style.fill);
  else canvas.stroke(style.stroke);
  if (stroked && dashes.length > 0) canvas.restore();
}

const dashLengths = (list: string): readonly number[] =>
  list === 'none'
    ? []
    : list
        .split(/[\s,]+/)
        .map(Number)
        .filter((length) => length > 0);

const lineCap = (name: string): 'butt' | 'round' | 'square' =>
  name === 'round' || name === 'square' ? name : 'butt';

function drawText(element: SvgElement, style: Style, pen: Pen): void {
  const text = (element.textContent ?? '').replace(/\s+/g, ' ').trim();
  if (text === '' || style.fill === 'none' || style.fontSize === 0) return;
  const runs = fontRuns(text, style.fontFamilies, style.bold, pen.fonts);
  const widths = runs.map((run) => widthOf(run, style.fontSize, pen));
  const width = widths.reduce((sum, one) => sum + one, 0);
  let x = number(element, 'x') - { start: 0, middle: width / 2, end: width }[style.anchor];
  const y = number(element, 'y');
  pen.canvas.fillColor(style.fill);
  runs.forEach((run, index) => {
    if (run.font === null) for (const character of run.text) pen.missing.add(character);
    else {
      pen.canvas
        .font(run.font.name)
        .fontSize(style.fontSize)
        .text(run.text, x, y, { lineBreak: false, baseline: 'alphabetic' });
    }
    x += widths[index] ?? 0;
  });
}

/** A character that no font can show keeps half an em, so that what follows does not move onto it. */
const widthOf = (run: FontRun, size: number, pen: Pen): number =>
  run.font === null
    ? [...run.text].length * size * 0.5
    : pen.canvas.font(run.font.name).fontSize(size).widthOfString(run.text);
