/** The sides of a module, clockwise: the neighbour beyond, and the two corners, in modules from its top left one. */
const SIDES = [
  { beyond: [0, -1], from: [0, 0], to: [1, 0] },
  { beyond: [1, 0], from: [1, 0], to: [1, 1] },
  { beyond: [0, 1], from: [1, 1], to: [0, 1] },
  { beyond: [-1, 0], from: [0, 1], to: [0, 0] },
] as const;

/**
 * Outlines of the dark modules, clockwise, and of the holes in them, the other way round, as SVG path data in
 * modules. Squares that touch share one outline, so no hairline is left between them where a screen or printer
 * rounds.
 * @param dark - rows of modules, as many as a row has
 */
export function outlineOf(dark: readonly (readonly boolean[])[]): string {
  const columns = dark.length + 1;
  const edges = new Map<number, number[]>();
  dark.forEach((row, y) => {
    row.forEach((isDark, x) => {
      if (!isDark) return;
      for (const { beyond, from, to } of SIDES) {
        if (dark[y + beyond[1]]?.[x + beyond[0]] === true) continue;
        const start = (y + from[1]) * columns + x + from[0];
        const end = (y + to[1]) * columns + x + to[0];
        edges.set(start, [...(edges.get(start) ?? []), end]);
      }
    });
  });
  const loops: string[] = [];
  for (const [start, ends] of edges) {
    for (let end = ends.pop(); end !== undefined; end = ends.pop()) {
      loops.push(loopFrom(start, end, edges, columns));
    }
  }
  return loops.join('');
}

/** Takes the edges of one closed outline away and writes it, a run of edges in one direction as one line. */
function loopFrom(start: number, second: number, edges: Map<number, number[]>, columns: number): string {
  const place = (corner: number): string => `${corner % columns} ${Math.floor(corner / columns)}`;
  let path = `M${place(start)}`;
  let [from, to] = [start, second];
  while (to !== start) {
    const next = edges.get(to)?.pop();
    if (next === undefined) break;
    if (next - to !== to - from) path += `L${place(to)}`;
    [from, to] = [to, next];
  }
  return `${path}Z`;
}
