import { remembered } from '../../src/core/base';
import { deriveSheets, type Lesson } from '../../src/core/lesson';
import { byTag, type Mark } from '../../src/handout/layout/marks';
import { type HandoutLayout, handoutPages } from '../../src/handout/layout/pages';
import type { PageToWrite } from '../../src/handout/pdf/write';
import type { SvgElement } from '../../src/handout/svg/style';
import { engraveInSteps as engrave } from '../../src/score/engrave';
import { layoutFretboard } from '../../src/score/neck/layout';
import type { FretboardRequest } from '../../src/score/neck/types';
import { finished } from '../../src/score/steps';
import type { Ink, TextRun } from '../../src/score/types';
import { FACES, svg } from './pages';

/** Widths of texts at size 1, measured once. */
const widths = new Map<string, number>();

/** Widths from the page's own faces, as a browser measures them. */
export const measureAsPrinted = (
  text: string,
  { size, bold }: { readonly size: number; readonly bold: boolean },
): number => remembered(widths, `${bold} ${text}`, () => widthOf(text, bold)) * size;

function widthOf(text: string, bold: boolean): number {
  const face = FACES.find((one) => one.family === 'Academico' && one.bold === bold);
  if (face === undefined) throw new Error('the text face is missing');
  return face.font.layout(text).advanceWidth / face.font.unitsPerEm;
}

/** The pages of a lesson as they are laid out for print, without a browser. */
export const layOutForPrint = (lesson: Lesson): HandoutLayout =>
  finished(handoutPages(lesson, deriveSheets(lesson), null, { measure: measureAsPrinted, engrave }));

/** The drawing of every page, as the PDF writer reads it. */
export const drawnPages = (layout: HandoutLayout): readonly PageToWrite[] =>
  layout.pages.map(({ width, height, marks }) => ({
    width,
    height,
    svg: svg(
      'svg',
      {},
      byTag(marks).map(({ tag, marks: own }) =>
        svg(
          'g',
          {
            'data-role': tag.role,
            ...(tag.alternative === undefined ? {} : { 'data-alternative': tag.alternative }),
          },
          own.map((mark) => drawnMark(mark, layout)),
        ),
      ),
    ),
  }));

const placeOf = ({ x, y, width, height }: Extract<Mark, { readonly width: number }>) => ({
  x,
  y,
  width,
  height,
});

function drawnMark(mark: Mark, layout: HandoutLayout): SvgElement {
  switch (mark.kind) {
    case 'text':
      return svg(
        'text',
        {
          x: mark.x,
          y: mark.y,
          'font-size': mark.size,
          'font-weight': mark.bold ? 'bold' : 'normal',
          'text-anchor': mark.anchor,
        },
        mark.text,
      );
    case 'rule':
      return svg('path', { d: `M${mark.x} ${mark.y}l${mark.width} ${mark.height}`, stroke: 'black' });
    case 'block':
      return svg('rect', placeOf(mark));
    case 'box':
      return svg('rect', { ...placeOf(mark), fill: 'none', stroke: 'black' });
    case 'picture':
      return svg('image', { ...placeOf(mark), href: mark.source });
    case 'neck': {
      const transform = `translate(${mark.x} ${mark.y}) scale(${mark.width / mark.request.width})`;
      return svg('g', { transform }, drawnNeck(mark.request));
    }
    case 'code': {
      const transform = `translate(${mark.x} ${mark.y}) scale(${mark.width / mark.modules})`;
      return svg('path', { d: mark.outline, transform });
    }
    case 'link': {
      const { address, x, y, width, height } = mark;
      return svg('rect', { 'data-link': address, x, y, width, height, fill: 'none' });
    }
    case 'system': {
      const system = layout.scores[mark.score]?.systems[mark.system];
      const transform = `translate(${mark.x} ${mark.y}) scale(${system?.scale ?? 1})`;
      return svg('g', { transform }, (system?.ink ?? []).map(drawnInk));
    }
  }
}

/** The words on the neck's picture, and its lines. */
const drawnNeck = (request: FretboardRequest): readonly SvgElement[] =>
  layoutFretboard(request).marks.map((mark) =>
    mark.kind === 'line'
      ? svg('path', { d: `M${mark.x1} ${mark.y1}L${mark.x2} ${mark.y2}`, stroke: 'black' })
      : mark.kind === 'text'
        ? neckWords(mark, mark.y)
        : svg('g', {}, [
            svg('rect', {
              x: mark.x - mark.width / 2,
              y: mark.y - mark.height / 2,
              width: mark.width,
              height: mark.height,
              fill: 'white',
              stroke: 'black',
              'stroke-width': mark.root ? 3 : 1.2,
            }),
            neckWords(mark, mark.y + mark.size * 0.36),
          ]),
  );

const neckWords = (mark: { readonly x: number; readonly size: number; readonly text: string }, y: number) =>
  svg('text', { x: mark.x, y, 'font-size': mark.size, 'text-anchor': 'middle' }, mark.text);

const drawnInk = (ink: Ink): SvgElement =>
  ink.kind === 'path'
    ? svg(
        'path',
        ink.stroke > 0
          ? { d: ink.d, fill: 'none', stroke: 'black', 'stroke-width': ink.stroke }
          : { d: ink.d },
      )
    : svg(
        'text',
        {
          x: ink.x,
          y: ink.y,
          'font-family': ink.font === 'Bravura' ? 'Bravura' : 'Academico, Bravura',
          'font-size': ink.size,
          'font-weight': ink.bold ? 'bold' : 'normal',
        },
        ink.runs ? drawnRuns(ink.runs) : ink.text,
      );

function drawnRuns(runs: readonly TextRun[]): readonly SvgElement[] {
  let rise = 0;
  return runs.map((run) => {
    const moved = { dx: -(run.back ?? 0), dy: rise - run.rise };
    const span = svg('tspan', { ...moved, 'font-size': run.size }, run.text);
    rise = run.rise;
    return span;
  });
}
