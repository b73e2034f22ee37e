import { type Face, type FontRun, fontRuns } from '../fonts/runs';
import {
  INITIAL_STYLE,
  isHidden,
  type Style,
  type SvgElement,
  styleOf,
  textSpans,
  transformsOf,
} from '../svg/style';
import type { PictureText, TextPicture } from './fallback';
import { meaningOf } from './music-signs';
import type { Reading } from './reading';

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
  | 'image'
  | 'goTo'
  | 'link'
  | 'markContent'
  | 'endMarkedContent'
>;

interface Pen {
  readonly reading: Reading;
  /** Of the structure, for what is being drawn. */
  readonly element: PDFKit.PDFStructureElement | null;
  /** Texts of what is being drawn behind which another one follows: they are read as words, not as one. */
  readonly before?: ReadonlySet<SvgElement>;
  readonly canvas: Canvas;
  readonly faces: readonly Face[];
  readonly picture: PictureText;
  readonly missing: Set<string>;
}

/**
 * Draws an SVG made of `g`, `path`, `rect`, `text` and `image` (all that the score and the page are made of) into a PDF
 * page whose unit is the SVG's own. Text stays text.
 *
 * @param picture - shows the characters that no font has
 * @param reading - learns of every group with a role (`data-role`), in the order of the drawing
 * @returns those characters
 * @throws Error for an element of another kind, so that nothing is dropped silently
 */
export function drawSvg(
  svg: SvgElement,
  canvas: Canvas,
  faces: readonly Face[],
  picture: PictureText,
  reading: Reading,
): ReadonlySet<string> {
  const pen: Pen = { canvas, faces, picture, reading, element: null, missing: new Set() };
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
      drawGroup(element, style, pen);
      return;
    case 'path': {
      const data = element.getAttribute('d') ?? '';
      if (data.trim() !== '') paint(style, pen.canvas, () => pen.canvas.path(data));
      return;
    }
    case 'rect':
      linkTo(element, pen);
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
    case 'image':
      pen.canvas.image(element.getAttribute('href') ?? '', number(element, 'x'), number(element, 'y'), {
        width: number(element, 'width'),
        height: number(element, 'height'),
      });
      return;
    case 'title':
    case 'desc':
      return;
    default:
      throw new Error(`The page holds an element that the PDF writer does not know: ${element.localName}`);
  }
}

function drawGroup(element: SvgElement, style: Style, pen: Pen): void {
  const drawIn = (group: Pen): void => {
    for (const child of element.children) drawElement(child, style, group);
  };
  const role = element.getAttribute('data-role');
  if (role === null) {
    drawIn(pen);
    return;
  }
  const texts = [...element.children].filter(({ localName }) => localName === 'text');
  const thing = {
    role,
    alternative: element.getAttribute('data-alternative'),
    words: texts.map(({ textContent }) => (textContent ?? '').trim()).join(' '),
    top: Math.max(0, ...texts.slice(0, 1).map((text) => number(text, 'y') - number(text, 'font-size'))),
  };
  const before = new Set(role === 'Figure' ? [] : texts.slice(0, -1));
  pen.reading.add(thing, (read) => drawIn({ ...pen, element: read, before }));
}

/** A rectangle that leads to an address, or to a page of the file by its name, becomes a place to click. */
function linkTo(element: SvgElement, { canvas, element: read }: Pen): void {
  const address = element.getAttribute('data-link');
  if (address === null) return;
  const [x, y] = [number(element, 'x'), number(element, 'y')];
  const options = read === null ? {} : { structParent: read };
  const [width, height] = [number(element, 'width'), number(element, 'height')];
  if (address.startsWith('#')) canvas.goTo(x, y, width, height, address, options);
  else canvas.link(x, y, width, height, address, options);
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
  if (style.fill === 'none' || style.fontSize === 0) return;
  const parts = textSpans(element, style).flatMap((span) =>
    fontRuns(span.text, span.style.fontFamilies, span.style.bold, pen.faces).map((run, index) => {
      const part = partOf(run, span.style, pen);
      const dx = index === 0 ? span.dx : 0;
      return { width: dx + part.width, draw: (x: number, y: number) => part.draw(x + dx, y + span.dy) };
    }),
  );
  if (parts.length === 0) return;
  const width = parts.reduce((sum, part) => sum + part.width, 0);
  let x = number(element, 'x') - { start: 0, middle: width / 2, end: width }[style.anchor];
  const y = number(element, 'y');
  for (const part of parts) {
    part.draw(x, y);
    x += part.width;
  }
  if (pen.before?.has(element) !== true) return;
  for (const run of fontRuns(' ', style.fontFamilies, style.bold, pen.faces))
    partOf(run, style, pen).draw(x, y);
}

/** A run of a text, measured and ready to be drawn from a point of the baseline. */
interface Part {
  readonly width: number;
  readonly draw: (x: number, y: number) => void;
}

function partOf(run: FontRun, style: Style, pen: Pen): Part {
  const { canvas } = pen;
  const { face } = run;
  if (face !== null) {
    return {
      width: canvas.font(face.name).fontSize(style.fontSize).widthOfString(run.text),
      draw: (x, y) => {
        const actual = meaningOf(run.text);
        if (actual !== null) canvas.markContent('Span', { actual });
        canvas
          .font(face.name)
          .fontSize(style.fontSize)
          .fillColor(style.fill)
          .text(run.text, x, y, { lineBreak: false, baseline: 'alphabetic', ...slant(style) });
        if (actual !== null) canvas.endMarkedContent();
      },
    };
  }
  for (const character of run.text) pen.missing.add(character);
  const picture = pen.picture({
    text: run.text,
    // An embedded font would draw the few letters that it has, and the browser the others.
    families: style.fontFamilies.filter((family) => !pen.faces.some((each) => each.family === family)),
    size: style.fontSize,
    bold: style.bold,
  });
  // Even a character that cannot be shown at all keeps half an em, so that nothing moves onto its place.
  if (picture === null) return { width: [...run.text].length * style.fontSize * 0.5, draw: () => undefined };
  return { width: picture.advance, draw: (x, y) => drawPicture(run.text, picture, x, y, canvas) };
}

/** A browser slants an upright face by 14 degrees where a slanted one is asked for (CSS Fonts 4, 2.4). */
const slant = (style: Style): { readonly oblique?: number } => (style.slanted ? { oblique: 14 } : {});

function drawPicture(text: string, picture: TextPicture, x: number, y: number, canvas: Canvas): void {
  canvas.markContent('Span', { actual: text });
  canvas.image(picture.source, x + picture.left, y + picture.top, {
    width: picture.width,
    height: picture.height,
  });
  canvas.endMarkedContent();
}
