import type { Paper } from '../../core/lesson';

/** Points (1/72 inch) in a millimetre. */
export const points = (millimetres: number): number => (millimetres * 72) / 25.4;

/** The sheet of paper and the part of it that may carry ink, in points from its top left corner. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Margins of 15 mm, as printers and photocopiers need them (elasticdog.com notation style guide). */
const MARGIN = points(15);

/** A4 is 210 × 297 mm (ISO 216); Letter is 8.5 × 11 in (ANSI/ASME Y14.1). */
const SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: points(210), height: points(297) },
  Letter: { width: 8.5 * 72, height: 11 * 72 },
};

/** The sheet of a paper in upright format. */
export function sheetOf(paper: Paper): Sheet {
  const { width, height } = SIZES[paper];
  return { width, height, left: MARGIN, top: MARGIN, right: width - MARGIN, bottom: height - MARGIN };
}

/** CSS's name for the paper and its size (CSS Paged Media 3, 7.1). */
export const CSS_PAPER: Readonly<Record<Paper, { readonly size: string; readonly height: string }>> = {
  A4: { size: '210mm 297mm', height: '297mm' },
  Letter: { size: '8.5in 11in', height: '11in' },
};
