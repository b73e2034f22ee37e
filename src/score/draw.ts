import { digitsOf } from './digits';
import { apart, type Drawable, kindOf, placeOf, together, wordsOf } from './elements';
import type { Ink, InkRole, ScoreLayout, SystemLayout, TextInk, TextRun } from './types';

const SVG = 'http://www.w3.org/2000/svg';
const MOST_KEPT = 400;

/**
 * Pictures by the fingerprint of their system, null for one that was drawn once: most are never drawn again, and what is
 * drawn a second time, as by taking an edit back or on the printed pages after each rest, is copied from then on.
 */
class Drawn {
  private readonly kept = new Map<string, SVGSVGElement | null>();

  constructor(private readonly drawablesOf: (ink: readonly Ink[]) => readonly Drawable[]) {}

  of(layout: ScoreLayout, index: number): SVGSVGElement {
    const system = layout.systems[index];
    if (!system) throw new RangeError(`The score has no system ${index}.`);
    const known = this.kept.get(system.fingerprint);
    if (known) return document.importNode(known, true);
    const picture = draw(system, this.drawablesOf(system.ink));
    if (this.kept.size >= MOST_KEPT) this.kept.clear();
    this.kept.set(system.fingerprint, known === null ? picture : null);
    return known === null ? document.importNode(picture, true) : picture;
  }
}

const pictures = new Drawn(together);
const picturesApart = new Drawn(apart);

function draw(system: SystemLayout, drawables: readonly Drawable[]): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  setAll(svg, {
    class: 'score-system',
    ...frameOf(system),
    fill: '#000',
    stroke: 'none',
    // Letters stand where they are laid out, not on the screen's whole pixels, which makes a text wider than its room.
    'text-rendering': 'geometricPrecision',
    'aria-hidden': 'true',
  });
  svg.append(...drawables.map(elementOf));
  return svg;
}

/** What each picture shows: by it, the picture is brought up to date where it stands. */
const shown = new WeakMap<SVGSVGElement, readonly Ink[]>();

/**
 * Draws one system as an SVG of the system's width and height. Every mark carries its role as its class, and marks of
 * one role and look share an element: placing elements is most of a browser's work on a score. The ink is black unless
 * a style sheet says otherwise, and the ground is left open.
 * @param index index into the layout's systems
 * @throws RangeError when the layout has no such system
 */
export function drawSystem(layout: ScoreLayout, index: number): SVGSVGElement {
  const picture = pictures.of(layout, index);
  const system = layout.systems[index];
  if (system) shown.set(picture, system.ink);
  return picture;
}

/**
 * The same picture with an element for each mark: for what is written into files, where every text is a text of its own
 * in one place.
 * @param index index into the layout's systems
 * @throws RangeError when the layout has no such system
 */
export const drawMarks = (layout: ScoreLayout, index: number): SVGSVGElement =>
  picturesApart.of(layout, index);

const frameOf = ({ width, height, scale }: SystemLayout) => ({
  width,
  height,
  viewBox: `0 0 ${digitsOf(width / scale)} ${digitsOf(height / scale)}`,
});

/**
 * Brings a picture of {@link drawSystem} up to date where it stands, as if it were drawn anew: elements that show the
 * same stay as they are, others of their kind are changed, so that the page has little to lay out and to paint.
 * @param index index into the layout's systems
 * @returns false where the picture is not one of `drawSystem`, or the layout has no such system; nothing is changed then
 */
export function redrawSystem(picture: Element, layout: ScoreLayout, index: number): boolean {
  const system = layout.systems[index];
  const before = picture instanceof SVGSVGElement ? shown.get(picture) : undefined;
  if (!system || !(picture instanceof SVGSVGElement) || before === undefined) return false;
  const standing = together(before);
  if (standing.length !== picture.childNodes.length) return false;
  setAll(picture, frameOf(system));
  let place = picture.firstChild;
  for (const each of reused(standing, [...picture.children], together(system.ink))) {
    if (each === place) place = place.nextSibling;
    else picture.insertBefore(each, place);
  }
  shown.set(picture, system.ink);
  return true;
}

/** The elements of some drawables in their order: those that stand already and have to change at most, and new ones. */
function reused(
  before: readonly Drawable[],
  elements: readonly Element[],
  drawables: readonly Drawable[],
): readonly Element[] {
  const standing = new Map<string, Element[]>();
  before.forEach((drawable, index) => {
    const element = elements[index];
    if (element === undefined) return;
    const alike = standing.get(kindOf(drawable));
    if (alike === undefined) standing.set(kindOf(drawable), [element]);
    else alike.push(element);
  });
  const all = drawables.map((drawable) => {
    const element = standing.get(kindOf(drawable))?.shift();
    return element === undefined ? elementOf(drawable) : changed(element, drawable);
  });
  for (const left of standing.values()) for (const element of left) element.remove();
  return all;
}

function changed(element: Element, drawable: Drawable): Element {
  const [first] = drawable.ink;
  setAll(element, placeOf(drawable));
  if (!drawable.isText || first.kind === 'path') return element;
  if (first.runs || element.childElementCount > 0) element.replaceChildren(...contentsOf(drawable));
  else if (element.textContent !== wordsOf(drawable)) element.textContent = wordsOf(drawable);
  return element;
}

/** An empty element of each look: a copy has to be placed only, which is quicker than setting all its attributes. */
const empties = new Map<string, SVGElement>();

function elementOf(drawable: Drawable): SVGElement {
  const kind = kindOf(drawable);
  let empty = empties.get(kind);
  if (empty === undefined) {
    const [first] = drawable.ink;
    empty =
      drawable.isText && first.kind === 'text'
        ? emptyText(first)
        : emptyPath(first.role, first.kind === 'path' ? first.stroke : 0);
    empties.set(kind, empty);
  }
  const element = document.importNode(empty);
  // What is new has no attributes that would have to be asked for first.
  for (const [name, value] of Object.entries(placeOf(drawable))) element.setAttribute(name, value);
  if (drawable.isText) element.append(...contentsOf(drawable));
  return element;
}

function emptyPath(role: InkRole, stroke: number): SVGElement {
  const path = document.createElementNS(SVG, 'path');
  setAll(path, {
    class: role,
    d: '',
    ...(stroke > 0 ? { fill: 'none', stroke: '#000', 'stroke-width': stroke } : {}),
  });
  return path;
}

function emptyText({ role, font, size, bold, italic }: TextInk): SVGElement {
  const text = document.createElementNS(SVG, 'text');
  setAll(text, {
    class: role,
    x: '',
    y: '',
    'font-family': font === 'Bravura' ? 'Bravura' : 'Academico, Bravura, serif',
    'font-size': size,
    ...(bold ? { 'font-weight': 'bold' } : {}),
    ...(italic ? { 'font-style': 'italic' } : {}),
  });
  return text;
}

function contentsOf(drawable: Drawable): readonly (Node | string)[] {
  const [first] = drawable.ink;
  return first.kind === 'text' && first.runs ? runsOf(first.runs) : [wordsOf(drawable)];
}

/** Each run begins where the last one ended, moved up or down from its baseline, or as far back as it says. */
function runsOf(runs: readonly TextRun[]): readonly SVGElement[] {
  let rise = 0;
  return runs.map((run) => {
    const span = document.createElementNS(SVG, 'tspan');
    setAll(span, { 'font-size': digitsOf(run.size), dy: digitsOf(rise - run.rise) });
    if (run.back !== undefined) setAll(span, { dx: digitsOf(-run.back) });
    rise = run.rise;
    span.textContent = run.text;
    return span;
  });
}

/** An attribute that is as it should be is left alone: setting it would have the page computed anew. */
function setAll(element: Element, attributes: Readonly<Record<string, string | number>>): void {
  for (const [name, value] of Object.entries(attributes)) {
    const text = String(value);
    if (element.getAttribute(name) !== text) element.setAttribute(name, text);
  }
}
