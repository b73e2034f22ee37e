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

/** A place that an aim can be for, by its index in the chart. */
export type AimPlace =
  | { readonly kind: 'line' }
  | { readonly kind: 'section'; readonly index: number }
  | { readonly kind: 'bar'; readonly index: number };

/** `the line`, `section Verse`, `bar 3`. */
export function placeName(sheet: LineSheet, place: AimPlace): string {
  switch (place.kind) {
    case 'line':
      return 'the line';
    case 'section': {
      const name = sheet.chart.sections[place.index]?.name ?? null;
      return name === null ? `the section without a name, number ${place.index + 1}` : `section ${name}`;
    }
    case 'bar': {
      const number = sheet.chart.bars[place.index]?.number ?? place.index + 1;
      return barName(number);
    }
  }
}

/** How the lesson stores a place; null for a section that has no id yet. */
export function storedPlace(piece: LinePiece, place: AimPlace): AimWhere | null {
  if (place.kind === 'line') return place;
  const id = (place.kind === 'bar' ? piece.bars : piece.sections)[place.index]?.id;
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
  const placed = piece.aims.flatMap(({ where }): readonly AimPlace[] => {
    if (where.kind === 'line') return [where];
    const parts = where.kind === 'bar' ? piece.bars : piece.sections;
    const index = parts.findIndex(({ id }) => id === where.id);
    return index < 0 ? [] : [{ kind: where.kind, index }];
  });
  const rank = (place: AimPlace) =>
    place.kind === 'line' ? -1 : place.index + (place.kind === 'bar' ? piece.sections.length : 0);
  return placed.sort((one, other) => rank(one) - rank(other));
}
