import type { LineSheet } from '../../core/lesson';
import { drawMarks, layoutScore, loadScoreFonts, type ScoreOptions } from '../../score';
import { excerptOf } from '../excerpt';
import { loadFaces } from '../fonts/load';
import { type Letters, outlined } from './outline';

const SVG = 'http://www.w3.org/2000/svg';

/** What stands under the tab of a picture. */
export type PictureRows = Pick<
  ScoreOptions,
  'degrees' | 'fingers' | 'counting' | 'numerals' | 'positions' | 'parts'
>;

/** Bars side by side, and the width that each of them and the clef get, in CSS pixels. */
const MOST_BARS = 4;
const BAR_WIDTH = 210;
const CLEF_WIDTH = 110;
/** White space around the drawing, so that no edge is cut by a rounding. */
const EDGE = 4;

/**
 * A picture of some bars of a line on a transparent ground, its signs as outlines and its letters as asked: for slides
 * and video.
 * @param first - index of the first written bar
 * @param last - index of the last one, included
 * @throws RangeError when the line has no such bars; Error when a font cannot be fetched
 */
export async function barsPicture(
  sheet: LineSheet,
  first: number,
  last: number,
  rows: PictureRows,
  letters: Letters = 'outlines',
): Promise<SVGSVGElement> {
  const [faces] = await Promise.all([loadFaces(), loadScoreFonts()]);
  const isWhole = first === 0 && last === sheet.bars.length - 1;
  const shown = isWhole ? sheet : excerptOf(sheet, first, last);
  const barsPerSystem = Math.min(MOST_BARS, shown.bars.length);
  const layout = layoutScore(shown, {
    degrees: rows.degrees,
    fingers: rows.fingers,
    counting: rows.counting || rows.parts === 'tab',
    // What a chord leads to may be cut off from some of the bars, and its numeral would be another.
    numerals: isWhole && rows.numerals === true,
    positions: rows.positions ?? false,
    parts: rows.parts ?? 'both',
    feel: isWhole,
    width: CLEF_WIDTH + BAR_WIDTH * barsPerSystem,
    barsPerSystem,
    measureNumbers: !isWhole || shown.bars.length > barsPerSystem,
  });
  const picture = document.createElementNS(SVG, 'svg');
  const [width, height] = [layout.width + 2 * EDGE, Math.ceil(layout.height) + 2 * EDGE];
  picture.setAttribute('viewBox', `${-EDGE} ${-EDGE} ${width} ${height}`);
  picture.setAttribute('width', String(width));
  picture.setAttribute('height', String(height));
  for (const system of layout.systems) {
    const group = document.createElementNS(SVG, 'g');
    group.setAttribute('transform', `translate(0 ${system.y}) scale(${system.scale})`);
    group.append(...drawMarks(layout, system.index).childNodes);
    picture.append(group);
  }
  return outlined(picture, faces, letters);
}
