import { barRange } from '../../../core/base';
import type { AimTerms, LinePiece, LineSheet } from '../../../core/lesson';
import type { AimPlace } from '../../../core/line';
import { placeName, termsAt } from './places';

/** Bars that get an aim at once: from the first to the last, every second or third of them. */
export interface SeveralBars {
  readonly kind: 'bars';
  readonly first: number;
  readonly last: number;
  /** 1 for each of them. */
  readonly every: number;
}

/** Where aims are edited. */
export type EditedPlace = AimPlace | SeveralBars;

/** The indices of the bars. */
export const barsIn = ({ first, last, every }: SeveralBars): readonly number[] =>
  Array.from({ length: Math.floor((last - first) / every) + 1 }, (_, step) => first + step * every);

export const numberOf = (sheet: LineSheet, bar: number): number => sheet.chart.bars[bar]?.number ?? bar + 1;

/** `bars 3 to 6`, `every second bar from 3 to 9`. */
export function editedName(sheet: LineSheet, place: EditedPlace): string {
  if (place.kind !== 'bars') return placeName(sheet, place);
  const [first, last] = [numberOf(sheet, place.first), numberOf(sheet, place.last)];
  if (place.every === 1) return barRange(first, last);
  return `every ${place.every === 2 ? 'second' : 'fourth'} bar from ${first} to ${last}`;
}

/** What is asked at a place; of several bars what is asked of each of them. */
export function editedTerms(piece: LinePiece, place: EditedPlace): AimTerms {
  if (place.kind !== 'bars') return termsAt(piece, place);
  const [own, ...others] = barsIn(place).map((bar) => termsAt(piece, { kind: 'bar', bar }));
  const shared = Object.entries(own ?? {}).filter(([term, value]) =>
    others.every(
      (other) =>
        JSON.stringify(Object.entries(other).find(([each]) => each === term)?.[1]) === JSON.stringify(value),
    ),
  );
  return Object.fromEntries(shared);
}
