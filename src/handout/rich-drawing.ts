/**
 * How much a drawing asks to be drawn. Some hundred letters can ask for a billion shapes: a `use`, a pattern or a mask
 * draws what it names once more, and what that names in its turn. The browser draws all of them on the page's own
 * thread, and cannot be stopped.
 */

/** Letters of a drawing's text. */
const MOST_LETTERS = 1_000_000;

/** Shapes that a drawing may come to. */
const MOST_SHAPES = 20_000;

/** Elements within each other. */
const DEEPEST = 60;

/** What is worked out pixel by pixel, or once more at each corner of a line. */
const EFFECT = /<\s*(?:[\w-]+:)?(?:filter|marker)[\s/>]/i;

/** A tag with what stands in it; a value in quotes may hold the sign of its end. */
const TAG = /<((?:[^<>"']|"[^"]*"|'[^']*')*)>/g;

const ID = /\sid\s*=\s*["']([^"']*)["']/;
const NAMED = /(?:href\s*=\s*["']\s*|url\([\s"']*)#([^"')\s]+)/gi;
const ADDRESS = /url\(/gi;

/** A name that is written in other letters than those it is looked for by. */
const DISGUISED = /&#|\\/;

interface Shape {
  /** Itself and what stands in it. */
  own: number;
  readonly names: string[];
}

/** The text without its comments, which may hold anything. */
const withoutComments = (svg: string): string =>
  svg
    .split('<!--')
    .map((part, index) => {
      const end = part.indexOf('-->');
      return index === 0 ? part : end === -1 ? '' : part.slice(end + 3);
    })
    .join('');

/** What stands in the tags of elements, in their order. */
const tagsOf = (svg: string): readonly string[] =>
  [...svg.matchAll(TAG)].flatMap(([, inside = '']) => (/^[!?]/.test(inside) ? [] : [inside]));

/** Whether a tag names something that cannot be looked for by its name. */
const isDisguised = (inside: string): boolean =>
  DISGUISED.test(inside) || namesIn(inside).some((name) => name.includes('%'));

const namesIn = (inside: string): readonly string[] =>
  [...inside.matchAll(NAMED)].map(([, name = '']) => name);

const addressesIn = (text: string): number => [...text.matchAll(ADDRESS)].length;

/** Whether everything that a drawing draws once more is named where it is drawn, in plain letters. */
function isOpenlyNamed(svg: string, tags: readonly string[]): boolean {
  // A sheet of styles may name a pattern for any number of shapes.
  const told = tags.reduce((sum, inside) => sum + addressesIn(inside), 0);
  return addressesIn(svg) === told && !tags.some(isDisguised);
}

/** The whole drawing, and what stands under each of its names; null where elements stand too deep in each other. */
function shapesOf(tags: readonly string[]) {
  const whole: Shape = { own: 0, names: [] };
  const named = new Map<string, Shape>();
  /** What is open, the whole first; null for an element without a name. */
  const open: (Shape | null)[] = [whole];
  for (const inside of tags) {
    if (inside.startsWith('/')) {
      if (open.length > 1) open.pop();
      continue;
    }
    if (open.length > DEEPEST) return null;
    const names = namesIn(inside);
    const id = ID.exec(inside)?.[1];
    const shape: Shape | null = id === undefined ? null : { own: 0, names: [] };
    if (id !== undefined && shape !== null && !named.has(id)) named.set(id, shape);
    for (const each of [...open, shape]) {
      if (each !== null) each.own += 1;
      each?.names.push(...names);
    }
    if (!inside.endsWith('/')) open.push(shape);
  }
  return { whole, named };
}

/** Whether a drawing asks for more shapes, or for other work, than a page can do at once. */
export function isTooRich(svg: string): boolean {
  if (svg.length > MOST_LETTERS || EFFECT.test(svg)) return true;
  const text = withoutComments(svg);
  const tags = tagsOf(text);
  const shapes = isOpenlyNamed(text, tags) ? shapesOf(tags) : null;
  if (shapes === null) return true;
  const known = new Map<Shape, number>();
  const countOf = (shape: Shape): number => {
    const before = known.get(shape);
    if (before !== undefined) return before;
    // What draws itself never comes to an end.
    known.set(shape, Number.POSITIVE_INFINITY);
    let count = shape.own;
    for (const name of shape.names) {
      const other = shapes.named.get(name);
      if (other !== undefined) count += countOf(other);
      if (count > MOST_SHAPES) break;
    }
    known.set(shape, count);
    return count;
  };
  return countOf(shapes.whole) > MOST_SHAPES;
}
