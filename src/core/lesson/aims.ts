import { type Chart, matchBars } from '../chart';
import type { Technique } from '../line';
import type { AimTerms, AimWhere, LessonAim, LineBar, LinePiece, LineSection } from './types';

const sameWhere = (one: AimWhere, other: AimWhere): boolean =>
  one.kind === 'line' || other.kind === 'line'
    ? one.kind === other.kind
    : one.kind === other.kind && one.id === other.id;

/** The aim for a place, if there is one. */
export const aimFor = (aims: readonly LessonAim[], where: AimWhere): LessonAim | null =>
  aims.find((aim) => sameWhere(aim.where, where)) ?? null;

/** What an aim says of a technique; null when it does not speak of it. */
export type Say = 'wanted' | 'allowed' | 'forbidden';
export const sayOf = (terms: AimTerms, technique: Technique): Say | null =>
  SAYS.find((say) => terms[say]?.includes(technique)) ?? null;
const SAYS = ['wanted', 'allowed', 'forbidden'] as const satisfies readonly Say[];

interface FollowedSections {
  readonly sections: readonly LineSection[];
  readonly parkedSections: readonly LineSection[];
}

/**
 * The sections of a changed chart with the ids they had: by name in their order; then wherever the name moved to;
 * then by their place, since a section may be renamed. One that went away is parked while an aim waits for it.
 */
export function followSections(piece: LinePiece, chart: Chart, freshId: () => string): FollowedSections {
  const old = piece.sections;
  const text = (section: { readonly name: string | null }) =>
    section.name === null ? '' : `:${section.name}`;
  const ids = matchBars(old.map(text), chart.sections.map(text)).map((index) =>
    index === null ? null : (old[index]?.id ?? null),
  );
  const free = new Map([...old, ...piece.parkedSections].map((section) => [section.id, section]));
  for (const id of ids) if (id !== null) free.delete(id);
  const take = (section: LineSection | undefined): string | null => {
    if (section === undefined || !free.delete(section.id)) return null;
    return section.id;
  };
  chart.sections.forEach(({ name }, index) => {
    if (name !== null) ids[index] ??= take([...free.values()].find((section) => section.name === name));
  });
  chart.sections.forEach((_, index) => {
    if (ids[index] === null && old.length === chart.sections.length) ids[index] = take(old[index]);
  });
  return {
    sections: chart.sections.map(({ name }, index) => ({ id: ids[index] ?? freshId(), name })),
    parkedSections: [...free.values()].filter(
      ({ id }) => aimFor(piece.aims, { kind: 'section', id }) !== null,
    ),
  };
}

/**
 * The aims after an edit of the chart. An aim for a bar whose chords were written over stays with the place: it
 * goes to the new bar between the same neighbours.
 */
export function followBarAims(piece: LinePiece, bars: readonly LineBar[]): readonly LessonAim[] {
  if (piece.aims.every(({ where }) => where.kind !== 'bar')) return piece.aims;
  const heirs = heirsOf(piece.bars, bars);
  const heirOf = ({ where }: LessonAim) => (where.kind === 'bar' ? heirs.get(where.id) : undefined);
  const inherited = new Set(piece.aims.flatMap((aim) => heirOf(aim) ?? []));
  return piece.aims.flatMap((aim): readonly LessonAim[] => {
    const heir = heirOf(aim);
    if (heir !== undefined) return [{ ...aim, where: { kind: 'bar', id: heir } }];
    return aim.where.kind === 'bar' && inherited.has(aim.where.id) ? [] : [aim];
  });
}

/** For each old bar that went away, the new one in its place: between the same neighbours, as many as there were. */
function heirsOf(before: readonly LineBar[], after: readonly LineBar[]): ReadonlyMap<string, string> {
  const heirs = new Map<string, string>();
  const old = new Map(before.map(({ id }, index) => [id, index]));
  let gone = 0;
  let born: string[] = [];
  const settle = (until: number) => {
    const left = before.slice(gone, until);
    if (left.length === born.length) {
      for (const [index, { id }] of left.entries()) heirs.set(id, born[index] ?? id);
    }
    born = [];
  };
  for (const { id } of after) {
    const index = old.get(id);
    if (index === undefined || index < gone) born.push(id);
    else {
      settle(index);
      gone = index + 1;
    }
  }
  settle(before.length);
  return heirs;
}
