import { barName } from '../../../core/base';
import {
  type AimReading,
  type AimTerms,
  type AimWhere,
  aimFor,
  aimWords,
  type LessonAim,
  type LinePiece,
  type LineSheet,
} from '../../../core/lesson';
import type { AimPlace } from '../../../core/line';

/** `the line`, `section Verse`, `bar 3`. */
export function placeName(sheet: LineSheet, place: AimPlace): string {
  switch (place.kind) {
    case 'line':
      return 'the line';
    case 'section': {
      const name = sheet.chart.sections[place.section]?.name ?? null;
      return name === null ? `the section without a name, number ${place.section + 1}` : `section ${name}`;
    }
    case 'bar': {
      const number = sheet.chart.bars[place.bar]?.number ?? place.bar + 1;
      return barName(number);
    }
  }
}

/** Names a place among the choices of a field. */
export const idOf = (place: AimPlace): string =>
  place.kind === 'line' ? 'line' : `${place.kind} ${place.kind === 'bar' ? place.bar : place.section}`;

/** How the lesson stores a place; null for a section that has no id yet. */
export function storedPlace(piece: LinePiece, place: AimPlace): AimWhere | null {
  if (place.kind === 'line') return place;
  const id = place.kind === 'bar' ? piece.bars[place.bar]?.id : piece.sections[place.section]?.id;
  return id === undefined ? null : { kind: place.kind, id };
}

/** What is asked at a place; nothing where no aim is. */
export function termsAt(piece: LinePiece, place: AimPlace): AimTerms {
  const where = storedPlace(piece, place);
  const { where: _, ...terms }: Partial<LessonAim> = (where && aimFor(piece.aims, where)) ?? {};
  return terms;
}

const readingOf = (sheet: LineSheet): AimReading => ({
  key: sheet.key,
  naming: sheet.noteNames ?? 'letters',
});

/** What is asked at a place, in words; '' where nothing is. */
export const wordsAt = (piece: LinePiece, sheet: LineSheet, place: AimPlace): string =>
  aimWords(termsAt(piece, place), readingOf(sheet)).join(', ');

/** Every place that an aim is for, in the order of the chart: the line, sections, bars. */
export function aimedPlaces(piece: LinePiece): readonly AimPlace[] {
  const rank = (place: AimPlace): number => {
    if (place.kind === 'section') return place.section;
    return place.kind === 'line' || place.bar < 0 ? -1 : place.bar + piece.sections.length;
  };
  const placed = piece.aims.flatMap(({ where }): readonly AimPlace[] => {
    if (where.kind === 'line') return [where];
    const index = (parts: readonly { readonly id: string }[]) => parts.findIndex(({ id }) => id === where.id);
    const place: AimPlace =
      where.kind === 'bar'
        ? { kind: 'bar', bar: index(piece.bars) }
        : { kind: 'section', section: index(piece.sections) };
    return rank(place) < 0 ? [] : [place];
  });
  return placed.sort((one, other) => rank(one) - rank(other));
}
