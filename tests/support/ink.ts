/** The ink of a score as it stands in the page, sign by sign. */
import type { Page } from 'playwright-core';

/** A rectangle in CSS pixels of the window. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** One line or sign of a score. */
export interface SeenInk extends Box {
  readonly role: string;
}

export const meets = (one: Box, other: Box): boolean =>
  one.left < other.right && one.right > other.left && one.top < other.bottom && one.bottom > other.top;

/**
 * What the chosen elements of scores show. One element of a system holds all lines, or all signs, of one look: its own
 * box is around all of them, and says of none where it is.
 */
export const inkIn = (page: Page, selector: string): Promise<readonly SeenInk[]> =>
  page.locator(selector).evaluateAll((elements) => {
    const linesOf = (path: SVGPathElement) =>
      (path.getAttribute('d') ?? '').split(/(?=M)/).map((line): Box => {
        const one = path.cloneNode() as SVGPathElement;
        one.setAttribute('d', line);
        path.after(one);
        const { left, right, top, bottom } = one.getBoundingClientRect();
        one.remove();
        return { left, right, top, bottom };
      });
    // A line box is far higher than its ink: a capital is seven tenths of its size high.
    const signsOf = (text: SVGTextElement) => {
      const matrix = text.getScreenCTM() ?? new DOMMatrix();
      const size = Number(text.getAttribute('font-size'));
      return Array.from({ length: text.getNumberOfChars() }, (_, index): Box => {
        const { x, y } = text.getStartPositionOfChar(index).matrixTransform(matrix);
        const right = text.getEndPositionOfChar(index).matrixTransform(matrix).x;
        return { left: x, right, top: y - 0.7 * size * matrix.d, bottom: y };
      });
    };
    return elements.flatMap((element) => {
      const role = element.getAttribute('class') ?? '';
      const boxes =
        element instanceof SVGPathElement
          ? linesOf(element)
          : element instanceof SVGTextElement
            ? signsOf(element)
            : [];
      return boxes.map((box) => ({ role, ...box }));
    });
  });
