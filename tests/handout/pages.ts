import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create } from 'fontkit';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Face } from '../../src/handout/fonts/runs';
import type { SvgElement } from '../../src/handout/svg/style';

const require = createRequire(import.meta.url);

const readFace = (name: string, family: string, bold: boolean, path: string): Face => ({
  name,
  family,
  bold,
  font: create(new Uint8Array(readFileSync(require.resolve(path)))),
});

/** The faces that the handout embeds, read anew from the packages that ship them. */
export const readFaces = (): readonly Face[] => [
  readFace('text', 'Academico', false, '@vexflow-fonts/academico/academico.otf'),
  readFace('text bold', 'Academico', true, '@vexflow-fonts/academico/academico-bold.otf'),
  readFace('music', 'Bravura', false, '@vexflow-fonts/bravura/bravura.otf'),
];

export const FACES = readFaces();

/** An SVG element without a browser: `svg('text', { x: 10 }, 'F♯m7')`. */
export function svg(
  localName: string,
  attributes: Readonly<Record<string, string | number>> = {},
  content: string | readonly SvgElement[] = [],
): SvgElement {
  return {
    localName,
    children: typeof content === 'string' ? [] : content,
    textContent: typeof content === 'string' ? content : content.map((child) => child.textContent).join(''),
    getAttribute: (name) => (name in attributes ? String(attributes[name]) : null),
  };
}

export interface ReadText {
  readonly text: string;
  /** In points from the left and the bottom of the page. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
  readonly font: string;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
}

/** What an independent reader (pdf.js) finds in a PDF. */
export async function readPdf(bytes: Uint8Array) {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [
            {
              text: item.str,
              x: Number(item.transform[4]),
              y: Number(item.transform[5]),
              width: item.width,
              size: item.height,
              font: item.fontName,
            },
          ]
        : [],
    );
    pages.push({ width: right - left, height: top - bottom, texts });
  }
  const metadata = await document.getMetadata();
  await task.destroy();
  return { pages, info: metadata.info as Readonly<Record<string, unknown>> };
}

/** How the reader's paths say what follows: so many numbers after each, a curve's six among them. */
const PATH_STEPS = [2, 2, 6, 4, 0] as const;
const CURVE = 2;

const curvesIn = (path: Readonly<ArrayLike<number>>): number => {
  let curves = 0;
  for (let at = 0; at < path.length; at += 1 + (PATH_STEPS[path[at] ?? 0] ?? 0))
    if (path[at] === CURVE) curves += 1;
  return curves;
};

/** How many curves a PDF draws: signs that are drawn by their outlines are made of them, lines and words are not. */
export async function readCurves(bytes: Uint8Array): Promise<number> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const document = await task.promise;
  let curves = 0;
  for (let number = 1; number <= document.numPages; number += 1) {
    const { fnArray, argsArray } = await (await document.getPage(number)).getOperatorList();
    fnArray.forEach((operation, index) => {
      const [path] = operation === OPS.constructPath ? (argsArray[index][1] ?? []) : [];
      if (path) curves += curvesIn(path);
    });
  }
  await task.destroy();
  return curves;
}

export interface ReadElement {
  readonly role: string;
  readonly alternative?: string;
}

/** The structure of every page, in reading order, and the names of the bookmarks (pdf.js). */
export async function readStructure(bytes: Uint8Array) {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const document = await task.promise;
  const structure: ReadElement[][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const tree = await (await document.getPage(number)).getStructTree();
    structure.push(elementsOf(tree));
  }
  const bookmarks = namesOf(await document.getOutline());
  const { info } = await document.getMetadata();
  await task.destroy();
  return { structure, bookmarks, info: info as Readonly<Record<string, unknown>> };
}

interface TreeNode {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly unknown[];
}

/** The elements that hold content themselves. */
function elementsOf(node: TreeNode | null): ReadElement[] {
  if (node === null) return [];
  const children = (node.children ?? []) as readonly TreeNode[];
  const inner = children.flatMap(elementsOf);
  const { role = '', alt } = node;
  const holds = children.some((child) => child.role === undefined);
  return holds ? [{ role, ...(alt === undefined ? {} : { alternative: alt }) }, ...inner] : inner;
}

interface Bookmark {
  readonly title: string;
  readonly items: readonly Bookmark[];
}

const namesOf = (bookmarks: readonly Bookmark[] | null): readonly string[] =>
  (bookmarks ?? []).flatMap(({ title, items }) => [title, ...namesOf(items)]);
