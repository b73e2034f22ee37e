/** A section of the chart as it will be written. */
export interface PlannedSection {
  name: string | null;
  start: number;
  length: number;
  /** Written by its name alone. */
  again: boolean;
}

const LONGEST_NAME = 60;

/** A name that a line of the chart can be: it begins with a letter or a figure and holds no sign of the chart. */
export function sectionName(text: string): string | null {
  const tidy = text
    .replace(/[|:;]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[^\p{L}\p{N}]+/u, '')
    .slice(0, LONGEST_NAME)
    .trim();
  return tidy === '' ? null : tidy;
}

const idOf = (name: string): string => name.toLowerCase();

/** `Verse 2` where there is a `Verse` already. */
function unlike(name: string, used: ReadonlySet<string>): string {
  for (let count = 2; ; count += 1) {
    const next = `${name.slice(0, LONGEST_NAME - 6)} ${count}`;
    if (!used.has(idOf(next))) return next;
  }
}

/**
 * The sections of a chart. One that comes again bar by bar is written by its name alone; one of the same name with
 * other bars gets a number.
 * @param names one a bar: the section that begins there
 * @param contents one a bar: equal for bars that are written alike
 * @param again false where every section is to be written out
 */
export function planSections(
  names: readonly (string | null)[],
  contents: readonly string[],
  again: boolean,
): readonly PlannedSection[] {
  const starts = names.flatMap((name, index) => (name !== null || index === 0 ? [index] : []));
  const used = new Set(names.flatMap((name) => (name === null ? [] : [idOf(name)])));
  const written = new Map<string, PlannedSection>();
  return starts.flatMap((start, place): PlannedSection[] => {
    const length = (starts[place + 1] ?? names.length) - start;
    const name = names[start] ?? null;
    if (name === null) return [{ name, start, length, again: false }];
    const known = written.get(idOf(name));
    if (known === undefined) {
      const section = { name, start, length, again: false };
      written.set(idOf(name), section);
      return [section];
    }
    const alike =
      again &&
      known.length <= length &&
      contents.slice(known.start, known.start + known.length).join('\n') ===
        contents.slice(start, start + known.length).join('\n');
    if (alike) {
      const rest = length - known.length;
      const repeated = { name: known.name, start, length: known.length, again: true };
      return rest === 0
        ? [repeated]
        : [repeated, { name: null, start: start + known.length, length: rest, again: false }];
    }
    const other = unlike(name, used);
    used.add(idOf(other));
    const section = { name: other, start, length, again: false };
    written.set(idOf(other), section);
    return [section];
  });
}
