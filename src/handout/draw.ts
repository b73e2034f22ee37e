import { drawFretboard, drawMarks } from '../score';
import { byTag, type Mark, type PageLayout, type TaggedMarks, type TextMeasure } from './layout/marks';
import type { HandoutLayout } from './layout/pages';
import type { HandoutPage } from './types';

const SVG = 'http://www.w3.org/2000/svg';

/** The faces of the page: the score's text face, then its music face for `♩`, then what the machine has. */
const FACES = 'Academico, Bravura, serif';
const RULE_WIDTH = 0.6;
/** The canvas measures at whole pixels of size, so it is asked for a large size and the answer scaled down. */
const MEASURE_SIZE = 100;

/** Measures texts with the page's own fonts, which must have been loaded. */
export function createMeasure(): TextMeasure {
  const pen = document.createElement('canvas').getContext('2d');
  if (pen === null) throw new Error('This browser cannot measure text.');
  return (text, style) => {
    pen.font = `${style.bold ? 'bold ' : ''}${MEASURE_SIZE}px ${FACES}`;
    return (pen.measureText(text).width * style.size) / MEASURE_SIZE;
  };
}

/** Draws a page that has been laid out. */
export function drawPage(layout: HandoutLayout, index: number): HandoutPage {
  const page = layout.pages[index];
  if (page === undefined) throw new RangeError(`The handout has no page ${index}`);
  const svg = element('svg', {
    class: 'handout-page',
    viewBox: `0 0 ${round(page.width)} ${round(page.height)}`,
    width: `${round(page.width)}pt`,
    height: `${round(page.height)}pt`,
    role: 'img',
    'aria-label': `Page ${index + 1} of ${layout.pages.length}: ${layout.title}`,
    'font-family': FACES,
    // Letters stand where they will be printed, not on the screen's whole pixels.
    'text-rendering': 'geometricPrecision',
    fill: '#000',
    stroke: 'none',
  });
  svg.append(ground(page), ...byTag(page.marks).map((thing) => drawThing(thing, layout)));
  return { number: index + 1, width: page.width, height: page.height, svg };
}

const ground = (page: PageLayout): SVGElement =>
  element('rect', { x: 0, y: 0, width: round(page.width), height: round(page.height), fill: '#fff' });

/** One thing of the page, with what the file says about it. */
function drawThing({ tag, marks }: TaggedMarks, layout: HandoutLayout): SVGElement {
  const { role, alternative } = tag;
  const group = element('g', {
    'data-role': role,
    ...(alternative === undefined ? {} : { 'data-alternative': alternative }),
  });
  group.append(...marks.map((mark) => drawMark(mark, layout)));
  return group;
}

function drawMark(mark: Mark, layout: HandoutLayout): SVGElement {
  switch (mark.kind) {
    case 'text': {
      const text = element('text', {
        x: round(mark.x),
        y: round(mark.y),
        'font-size': mark.size,
        'font-weight': mark.bold ? 'bold' : 'normal',
        'text-anchor': mark.anchor,
      });
      text.textContent = mark.text;
      return text;
    }
    case 'rule':
      return element('path', {
        d: `M${round(mark.x)} ${round(mark.y)}L${round(mark.x + mark.width)} ${round(mark.y + mark.height)}`,
        fill: 'none',
        stroke: '#000',
        'stroke-width': RULE_WIDTH,
      });
    case 'block':
      return element('rect', {
        x: round(mark.x),
        y: round(mark.y),
        width: round(mark.width),
        height: round(mark.height),
      });
    case 'box':
      return element('rect', {
        x: round(mark.x + RULE_WIDTH / 2),
        y: round(mark.y + RULE_WIDTH / 2),
        width: round(mark.width - RULE_WIDTH),
        height: round(mark.height - RULE_WIDTH),
        fill: 'none',
        stroke: '#000',
        'stroke-width': RULE_WIDTH,
      });
    case 'picture':
      return element('image', {
        href: mark.source,
        x: round(mark.x),
        y: round(mark.y),
        width: round(mark.width),
        height: round(mark.height),
        preserveAspectRatio: 'none',
      });
    case 'neck': {
      const scale = round(mark.width / mark.request.width);
      const group = element('g', {
        transform: `translate(${round(mark.x)} ${round(mark.y)}) scale(${scale})`,
      });
      group.append(...drawFretboard(mark.request).childNodes);
      return group;
    }
    case 'code':
      return element('path', {
        d: mark.outline,
        transform: `translate(${round(mark.x)} ${round(mark.y)}) scale(${round(mark.width / mark.modules)})`,
      });
    case 'link':
      // On the screen the page is a picture; only its file has places to click.
      return element('rect', {
        'data-link': mark.address,
        x: round(mark.x),
        y: round(mark.y),
        width: round(mark.width),
        height: round(mark.height),
        fill: 'none',
      });
    case 'system':
      return drawScoreSystem(mark.score, mark.system, mark.x, mark.y, layout);
  }
}

function drawScoreSystem(
  score: number,
  system: number,
  x: number,
  y: number,
  layout: HandoutLayout,
): SVGElement {
  const scoreLayout = layout.scores[score];
  const scale = scoreLayout?.systems[system]?.scale;
  if (scoreLayout === undefined || scale === undefined) {
    throw new RangeError(`The handout has no system ${system} of piece ${score}`);
  }
  const group = element('g', { transform: `translate(${round(x)} ${round(y)}) scale(${scale})` });
  group.append(...drawMarks(scoreLayout, system).childNodes);
  return group;
}

function element<Name extends keyof SVGElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string | number>>,
): SVGElementTagNameMap[Name] {
  const made = document.createElementNS(SVG, name);
  for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, String(value));
  return made;
}

/** To a thousandth of a point: finer than any printer. */
const round = (value: number): number => Math.round(value * 1000) / 1000;
