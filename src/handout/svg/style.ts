/** The part of an SVG element that the PDF writer reads. A browser's element has it; so has a test's own tree. */
export interface SvgElement {
  readonly localName: string;
  readonly children: Iterable<SvgElement>;
  readonly textContent: string | null;
  getAttribute(name: string): string | null;
}

/** Presentation attributes that children take over from their parents (SVG 2, 6.4), in CSS pixels. */
export interface Style {
  readonly fill: string;
  readonly stroke: string;
  readonly strokeWidth: number;
  readonly strokeDash: string;
  readonly lineCap: string;
  readonly fontFamilies: readonly string[];
  readonly fontSize: number;
  readonly bold: boolean;
  readonly slanted: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** SVG's initial values, and the page's own text face. */
export const INITIAL_STYLE: Style = {
  fill: 'black',
  stroke: 'none',
  strokeWidth: 1,
  strokeDash: 'none',
  lineCap: 'butt',
  fontFamilies: ['Academico'],
  fontSize: 16,
  bold: false,
  slanted: false,
  anchor: 'start',
};

/** The parent's style with what the element says of its own. */
export function styleOf(element: SvgElement, parent: Style): Style {
  const own = (name: string) => element.getAttribute(name);
  const weight = own('font-weight');
  const slope = own('font-style');
  const families = own('font-family');
  return {
    fill: colour(own('fill'), parent.fill),
    stroke: colour(own('stroke'), parent.stroke),
    strokeWidth: length(own('stroke-width'), parent.strokeWidth),
    strokeDash: own('stroke-dasharray') ?? parent.strokeDash,
    lineCap: own('stroke-linecap') ?? parent.lineCap,
    fontFamilies: families === null ? parent.fontFamilies : familyNames(families),
    fontSize: length(own('font-size'), parent.fontSize),
    bold: weight === null ? parent.bold : weight === 'bold' || Number(weight) >= 600,
    slanted: slope === null ? parent.slanted : slope !== 'normal',
    anchor: anchorOf(own('text-anchor'), parent.anchor),
  };
}

/** Whether nothing of the element or of what is in it can be seen. */
export const isHidden = (element: SvgElement): boolean =>
  element.getAttribute('opacity') === '0' ||
  element.getAttribute('display') === 'none' ||
  element.getAttribute('visibility') === 'hidden';

function colour(value: string | null, inherited: string): string {
  if (value === null || value === 'inherit') return inherited;
  return value === 'currentColor' ? 'black' : value;
}

/** A length in CSS pixels; a point is 4/3 of one (CSS Values and Units 4, 6.2). */
function length(value: string | null, inherited: number): number {
  if (value === null) return inherited;
  const number = Number.parseFloat(value);
  if (!Number.isFinite(number)) return inherited;
  return value.trim().endsWith('pt') ? (number * 4) / 3 : number;
}

const familyNames = (list: string): readonly string[] =>
  list
    .split(',')
    .map((name) => name.trim().replace(/^['"]|['"]$/g, ''))
    .filter((name) => name !== '');

function anchorOf(value: string | null, inherited: Style['anchor']): Style['anchor'] {
  return value === 'start' || value === 'middle' || value === 'end' ? value : inherited;
}

/**
 * A stretch of a text element in one style, how far right of the end of the one before it begins, and how far its
 * baseline lies under the element's.
 */
export interface TextSpan {
  readonly text: string;
  readonly style: Style;
  readonly dx: number;
  readonly dy: number;
}

/** The spans of a text element: its `tspan` children, each moved from where the last one stood, or the text alone. */
export function textSpans(element: SvgElement, style: Style): readonly TextSpan[] {
  const spans = [...element.children].filter(({ localName }) => localName === 'tspan');
  let dy = 0;
  const found =
    spans.length === 0
      ? [{ text: plainText(element), style, dx: 0, dy }]
      : spans.map((span) => {
          dy += shift(span, 'dy');
          return { text: plainText(span), style: styleOf(span, style), dx: shift(span, 'dx'), dy };
        });
  return found.filter(({ text }) => text !== '');
}

const shift = (span: SvgElement, name: 'dx' | 'dy'): number =>
  Number.parseFloat(span.getAttribute(name) ?? '0') || 0;

const plainText = ({ textContent }: SvgElement): string => (textContent ?? '').replace(/\s+/g, ' ').trim();

export type Matrix = readonly [number, number, number, number, number, number];

/**
 * The matrices of a `transform` attribute, the outermost first.
 * @throws Error for a kind of transform that the score and the page do not use
 */
export function transformsOf(element: SvgElement): readonly Matrix[] {
  const text = element.getAttribute('transform');
  if (text === null) return [];
  return text.split(')').flatMap((written) => {
    const [kind = '', list] = written.split('(');
    return list === undefined ? [] : [matrixOf(lastWord(kind), numbersIn(list))];
  });
}

/** The kind of a transform without the comma and blanks before it. */
const lastWord = (text: string): string =>
  text
    .trim()
    .split(/[\s,]+/)
    .at(-1) ?? '';

const numbersIn = (list: string): readonly number[] =>
  list
    .split(/[\s,]+/)
    .filter((word) => word !== '')
    .map(Number);

function matrixOf(kind: string, values: readonly number[]): Matrix {
  const [a = 0, b, c = 0, d = 0, e = 0, f = 0] = values;
  switch (kind) {
    case 'translate':
      return [1, 0, 0, 1, a, b ?? 0];
    case 'scale':
      return [a, 0, 0, b ?? a, 0, 0];
    case 'rotate': {
      const [sin, cos] = [Math.sin((a * Math.PI) / 180), Math.cos((a * Math.PI) / 180)];
      return [cos, sin, -sin, cos, 0, 0];
    }
    case 'matrix':
      return [a, b ?? 0, c, d, e, f];
    default:
      throw new Error(`The page uses a transform that the PDF writer does not know: ${kind}`);
  }
}
