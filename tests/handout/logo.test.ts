import { describe, expect, test } from 'vitest';
import { isActive } from '../../src/handout/active-drawing';
import { isTooRich } from '../../src/handout/rich-drawing';

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

describe('a drawing that asks for more than a page can do at once', () => {
  const chain = (links: number, link: (index: number) => string): string =>
    `<defs><g id="n0"><rect width="9" height="9"/></g>${Array.from({ length: links }, (_, index) => link(index)).join('')}</defs>`;
  const doubling = (index: number): string =>
    `<g id="n${index + 1}"><use href="#n${index}"/><use xlink:href='#n${index}'/></g>`;

  test.each([
    ['doubled thirty times', `${chain(30, doubling)}<use href="#n30"/>`],
    [
      'behind a comment that closes what is open',
      `${chain(30, doubling).replaceAll('"><use', '"><!-- </g></g> --><use')}<use href="#n30"/>`,
    ],
    ['that draws itself', '<g id="a"><use href="#a"/></g>'],
    [
      'of patterns in patterns',
      `${chain(12, (index) => `<pattern id="n${index + 1}">${`<rect fill="url( '#n${index}')"/>`.repeat(9)}</pattern>`)}<rect fill="url(#n12)"/>`,
    ],
    ['whose styles name a pattern', '<style>rect { fill: url(#p) }</style><pattern id="p"/><rect/>'],
    ['whose names are disguised', '<g id="&#97;"><rect/></g><use href="#a"/>'],
    ['whose names are disguised as in an address', '<g id="a"><rect/></g><use href="#%61"/>'],
    ['with an effect', '<filter id="f"><feTurbulence numOctaves="99"/></filter>'],
    ['in very many elements', '<rect/>'.repeat(20_001)],
    ['in elements within each other', '<g id="a">'.repeat(100_000)],
    ['of very many letters', `<path d="${'M0 0h1'.repeat(200_000)}"/>`],
  ])('%s', (_what, inside) => {
    const before = process.cpuUsage();
    expect(isTooRich(drawing(inside))).toBe(true);
    const { user, system } = process.cpuUsage(before);
    expect((user + system) / 1e6).toBeLessThan(2);
  });

  test.each([
    ['plain', '<rect width="9" height="9"/><path d="M0 0h9"/>'],
    [
      'of a mark used some times',
      `<defs><g id="a"><path d="M0 0h9"/></g></defs>${'<use href="#a"/>'.repeat(500)}`,
    ],
    [
      'with a gradient',
      '<linearGradient id="g"><stop/></linearGradient><rect fill="url(#g)" style="stroke:url(#g)"/>',
    ],
    ['with styles', '<style>.a { fill: #f00 }</style><!-- <use href="#b"> --><rect class="a"/>'],
    ['doubled ten times', `${chain(10, doubling)}<use href="#n10"/>`],
  ])('but not one %s', (_what, inside) => {
    expect(isTooRich(drawing(inside))).toBe(false);
  });
});
