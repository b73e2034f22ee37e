import { expect, test } from 'vitest';
import { isActive } from '../../src/handout/active-drawing';

const BLANKS = ' '.repeat(3_000_000);
const drawing = (inside: string) => `<svg xmlns="http://www.w3.org/2000/svg">${inside}</svg>`;

test.each([
  ['a reference inside the drawing', '<use href="#shape"/>', false],
  ['a reference inside the drawing, with blanks', "<use href = ' #shape'/>", false],
  ['a picture in it', '<image href="data:image/png;base64,AAAA"/>', false],
  ['a link', '<image href = "https://example.org/a.png"/>', true],
  ['a link without quotes', '<image href=a.png>', true],
  ['a script', '< script>', true],
  ['a handler', '<rect onload ="f()"/>', true],
])('%s', (_name, inside, active) => {
  expect(isActive(drawing(inside))).toBe(active);
});

test('megabytes of blanks are read to their end', () => {
  expect(isActive(drawing(`<use href=${BLANKS}"#shape"/>`))).toBe(false);
  expect(isActive(drawing(`<use href=${BLANKS}"a.svg"/>`))).toBe(true);
  expect(isActive(drawing(`<use href="${BLANKS}#shape"/>`))).toBe(false);
  expect(isActive(drawing(`<use href${BLANKS}="#shape"/>`))).toBe(false);
  expect(isActive(drawing(`<${BLANKS}rect on${BLANKS}/>`))).toBe(false);
});
