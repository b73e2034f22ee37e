import { remembered } from '../core/base';
import type { Ink, PathInk, ScoreLayout, SystemLayout, TextInk, TextRun } from './types';

const SVG = 'http://www.w3.org/2000/svg';

/**
 * Drawn systems by fingerprint, null for one that was drawn once: most are never drawn again, and what is drawn a second
 * time, as by taking an edit back or on the printed pages after each rest, is copied from then on.
 */
const drawn = new Map<string, SVGSVGElement | null>();
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
  drawn.set(system.fingerprint, kept === null ? picture : null);
  return kept === null ? clone(picture) : picture;
}

/** What each picture shows: by it, the picture is brought up to date where it stands. */
const shown = new WeakMap<SVGSVGElement, readonly Ink[]>();

function clone(picture: SVGSVGElement): SVGSVGElement {
  const copy = document.importNode(picture, true);
  const ink = shown.get(picture);
  if (ink !== undefined) shown.set(copy, ink);
  return copy;
}

function draw(system: SystemLayout): SVGSVGElement {
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
  for (const ink of system.ink) svg.append(mark(ink));
  shown.set(svg, system.ink);
  return svg;
}

const frameOf = (system: SystemLayout) => ({
  width: system.width,
  height: system.height,
  viewBox: `0 0 ${round(system.width / system.scale)} ${round(system.height / system.scale)}`,
});

/**
 * Brings a picture of {@link drawSystem} up to date where it stands, as if it were drawn anew: marks that are the same
 * stay in the page, others of their kind are changed, so that the page has little to lay out and to paint.
 * @param index index into the layout's systems
 * @returns false where the picture is not one of `drawSystem`, or the layout has no such system; nothing is changed then
 */
export function redrawSystem(picture: Element, layout: ScoreLayout, index: number): boolean {
  const system = layout.systems[index];
  const before = picture instanceof SVGSVGElement ? shown.get(picture) : undefined;
  if (!system || !(picture instanceof SVGSVGElement) || before?.length !== picture.childNodes.length)
    return false;
  setAll(picture, frameOf(system));
  const marks = reused(before, [...picture.children], system.ink);
  let place = picture.firstChild;
  for (const each of marks) {
    if (each === place) place = place.nextSibling;
    else picture.insertBefore(each, place);
  }
  shown.set(picture, system.ink);
  return true;
}

/** The marks of some ink in its order: those that stand already, those that only have to change, and new ones. */
function reused(before: readonly Ink[], marks: readonly Element[], ink: readonly Ink[]): readonly Element[] {
  const standing = new Map<string, Element[]>();
  const put = (key: string, element: Element) => {
    const alike = standing.get(key);
    if (alike === undefined) standing.set(key, [element]);
    else alike.push(element);
  };
  before.forEach((each, index) => {
    const element = marks[index];
    if (element !== undefined) put(textOf(each), element);
  });
  const same = ink.map((each) => standing.get(textOf(each))?.shift() ?? null);
  const kept = new Set(same);
  standing.clear();
  before.forEach((each, index) => {
    const element = marks[index];
    if (element !== undefined && !kept.has(element)) put(kindOf(each), element);
  });
  const all = ink.map((each, index) => same[index] ?? changed(standing.get(kindOf(each))?.shift(), each));
  for (const left of standing.values()) for (const element of left) element.remove();
  return all;
}

/** Everything about a mark. */
const textOf = (ink: Ink): string =>
  ink.kind === 'path'
    ? `${kindOf(ink)} ${ink.d}`
    : `${kindOf(ink)} ${round(ink.x)} ${round(ink.y)} ${ink.size} ${ink.text}`;

/** What marks have in common of which one can become the other. */
const kindOf = (ink: Ink): string =>
  ink.kind === 'path' ? `${ink.role} ${ink.stroke}` : `${ink.role} ${ink.font} ${ink.bold} ${ink.italic}`;

function changed(element: Element | undefined, ink: Ink): Element {
  if (element === undefined) return mark(ink);
  if (ink.kind === 'path') element.setAttribute('d', ink.d);
  else {
    setAll(element, { x: round(ink.x), y: round(ink.y), 'font-size': ink.size });
    if (ink.runs || element.childElementCount > 0) element.replaceChildren(...contentsOf(ink));
    else if (element.textContent !== ink.text) element.textContent = ink.text;
  }
  return element;
}

function mark(ink: Ink): SVGElement {
  return ink.kind === 'path' ? pathOf(ink) : textOfInk(ink);
}

/** What is new has no attributes that would have to be asked for first. */
function pathOf({ role, d, stroke }: PathInk): SVGElement {
  const path = document.createElementNS(SVG, 'path');
  path.setAttribute('class', role);
  path.setAttribute('d', d);
  if (stroke > 0) {
    path.setAttribute('fill', 'none');
    path.setAttribute('stroke', '#000');
    path.setAttribute('stroke-width', String(stroke));
  }
  return path;
}

/** An empty text of each look: a copy has to be placed only, which is quicker than setting all its attributes. */
const empties = new Map<string, SVGTextElement>();

function emptyText({ role, font, size, bold, italic }: TextInk): SVGTextElement {
  const look = `${role} ${font} ${size} ${bold} ${italic}`;
  return remembered(empties, look, () => {
    const text = document.createElementNS(SVG, 'text');
    setAll(text, {
      class: role,
      x: 0,
      y: 0,
      'font-family': font === 'Bravura' ? 'Bravura' : 'Academico, Bravura, serif',
      'font-size': size,
    });
    if (bold) text.setAttribute('font-weight', 'bold');
    if (italic) text.setAttribute('font-style', 'italic');
    return text;
  });
}

function textOfInk(ink: TextInk): SVGElement {
  const text = document.importNode(emptyText(ink));
  text.setAttribute('x', String(round(ink.x)));
  text.setAttribute('y', String(round(ink.y)));
  text.append(...contentsOf(ink));
  return text;
}

const contentsOf = ({ text, runs }: TextInk): readonly (Node | string)[] => (runs ? runsOf(runs) : [text]);

/** Each run begins where the last one ended, moved up or down from its baseline, or as far back as it says. */
function runsOf(runs: readonly TextRun[]): readonly SVGElement[] {
  let rise = 0;
  return runs.map((run) => {
    const span = document.createElementNS(SVG, 'tspan');
    setAll(span, { 'font-size': round(run.size), dy: round(rise - run.rise) });
    if (run.back !== undefined) setAll(span, { dx: round(-run.back) });
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

const round = (value: number): number => Math.round(value * 100) / 100;
