import { CAPITAL_HEIGHT, textWidth } from '../metrics/measure';
import { layoutFretboard } from './layout';
import type { FretboardRequest, NeckLine, NeckPlate, NeckText } from './types';

const SVG = 'http://www.w3.org/2000/svg';
const INK = '#000';
const PAPER = '#fff';

/**
 * Draws a stretch of the neck with its notes: degrees, names or fingers are written, never coded by colour or
 * shape, so that the picture can be printed in grey. Only paths and texts are used. The text alternative is its name.
 */
export function drawFretboard(request: FretboardRequest): SVGSVGElement {
  const layout = layoutFretboard(request);
  const svg = make('svg', {
    class: 'fretboard-picture',
    width: layout.width,
    height: layout.height,
    viewBox: `0 0 ${layout.width} ${layout.height}`,
    role: 'img',
    'aria-label': layout.description,
  });
  for (const mark of layout.marks) {
    if (mark.kind === 'line') svg.append(line(mark));
    else if (mark.kind === 'text') svg.append(text(mark, INK));
    else svg.append(...plate(mark));
  }
  return svg;
}

const line = ({ role, x1, y1, x2, y2, stroke, dashed }: NeckLine): SVGElement =>
  make('path', {
    class: role,
    d: `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}`,
    fill: 'none',
    stroke: INK,
    'stroke-width': stroke,
    ...(dashed ? { 'stroke-dasharray': '5 4' } : {}),
  });

function text(mark: Omit<NeckText, 'kind' | 'role'> & { readonly role: string }, fill: string): SVGElement {
  const left = mark.x - textWidth(mark.text, mark.size, mark.bold) / 2;
  const element = make('text', {
    class: mark.role,
    x: round(left),
    y: round(mark.y),
    fill,
    'font-family': 'Academico, Bravura, serif',
    'font-size': mark.size,
    ...(mark.bold ? { 'font-weight': 'bold' } : {}),
  });
  element.textContent = mark.text;
  return element;
}

const CORNER = 5;
const RIM = { plain: 1.2, root: 3 } as const;

function plate(mark: NeckPlate): readonly SVGElement[] {
  const { x, y, width, height, root, sounding, size } = mark;
  const [left, right, top, bottom] = [x - width / 2, x + width / 2, y - height / 2, y + height / 2].map(
    round,
  );
  const ground = make('path', {
    class: sounding ? 'plate sounding' : 'plate',
    d: `M${round(x - width / 2 + CORNER)} ${top}H${round(x + width / 2 - CORNER)}Q${right} ${top} ${right} ${round(y - height / 2 + CORNER)}V${round(y + height / 2 - CORNER)}Q${right} ${bottom} ${round(x + width / 2 - CORNER)} ${bottom}H${round(x - width / 2 + CORNER)}Q${left} ${bottom} ${left} ${round(y + height / 2 - CORNER)}V${round(y - height / 2 + CORNER)}Q${left} ${top} ${round(x - width / 2 + CORNER)} ${top}Z`,
    fill: sounding ? INK : PAPER,
    stroke: INK,
    'stroke-width': root ? RIM.root : RIM.plain,
  });
  const words = {
    role: sounding ? 'plate-text sounding' : 'plate-text',
    text: mark.text,
    x,
    y: y + (CAPITAL_HEIGHT * size) / 2,
    size,
    bold: true,
  };
  return [ground, text(words, sounding ? PAPER : INK)];
}

function make<Name extends keyof SVGElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string | number>>,
): SVGElementTagNameMap[Name] {
  const element = document.createElementNS(SVG, name);
  for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, String(value));
  return element;
}

const round = (value: number): number => Math.round(value * 100) / 100;
