import type { Ink, ScoreLayout, SystemLayout } from './types';

const SVG = 'http://www.w3.org/2000/svg';

/** Drawn systems by fingerprint: an edit of one bar draws one system again, and taking it back draws none. */
const drawn = new Map<string, SVGSVGElement>();
const MOST_KEPT = 400;

/**
 * Draws one system as an SVG of the system's width and height. Every mark carries its role as its class; the
 * ink is black unless a style sheet says otherwise, and the ground is left open.
 * @param index index into the layout's systems
 * @throws RangeError when the layout has no such system
 */
export function drawSystem(layout: ScoreLayout, index: number): SVGSVGElement {
  const system = layout.systems[index];
  if (!system) throw new RangeError(`The score has no system ${index}.`);
  const kept = drawn.get(system.fingerprint);
  if (kept) return clone(kept);
  const picture = draw(system);
  if (drawn.size >= MOST_KEPT) drawn.clear();
  drawn.set(system.fingerprint, picture);
  return clone(picture);
}

const clone = (picture: SVGSVGElement): SVGSVGElement => document.importNode(picture, true);

function draw(system: SystemLayout): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  setAll(svg, {
    class: 'score-system',
    width: system.width,
    height: system.height,
    viewBox: `0 0 ${round(system.width / system.scale)} ${round(system.height / system.scale)}`,
    fill: '#000',
    stroke: 'none',
    'aria-hidden': 'true',
  });
  for (const ink of system.ink) svg.append(mark(ink));
  return svg;
}

function mark(ink: Ink): SVGElement {
  if (ink.kind === 'path') {
    const path = document.createElementNS(SVG, 'path');
    setAll(path, { class: ink.role, d: ink.d });
    if (ink.stroke > 0) setAll(path, { fill: 'none', stroke: '#000', 'stroke-width': ink.stroke });
    return path;
  }
  const text = document.createElementNS(SVG, 'text');
  setAll(text, {
    class: ink.role,
    x: round(ink.x),
    y: round(ink.y),
    'font-family': ink.font === 'Bravura' ? 'Bravura' : 'Academico, Bravura, serif',
    'font-size': ink.size,
  });
  if (ink.bold) text.setAttribute('font-weight', 'bold');
  if (ink.italic) text.setAttribute('font-style', 'italic');
  text.textContent = ink.text;
  return text;
}

function setAll(element: Element, attributes: Readonly<Record<string, string | number>>): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
}

const round = (value: number): number => Math.round(value * 100) / 100;
