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
/** Half a sheet has less to give away, and its inner margin is not at the edge of the paper. */
const HALF_MARGIN = points(12);
/** So much more at the left: punched holes reach 15 mm into the sheet (ISO 838: 6 mm wide, centred 12 mm from the edge). */
const BINDING = points(10);

/** A4 is 210 × 297 mm (ISO 216); Letter is 8.5 × 11 in (ANSI/ASME Y14.1). */
const SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: points(210), height: points(297) },
  Letter: { width: 8.5 * 72, height: 11 * 72 },
};

/** How the sheets of paper are used. */
export interface PaperUse {
  /** Two pages side by side on each sheet, which lies on its side. */
  readonly twoUp: boolean;
  /** A wider margin at the left. */
  readonly binding: boolean;
}

/** A page of a paper in upright format: the whole sheet, or half of it. */
export function sheetOf(paper: Paper, { twoUp, binding }: PaperUse): Sheet {
  const whole = SIZES[paper];
  const { width, height } = twoUp ? { width: whole.height / 2, height: whole.width } : whole;
  const margin = twoUp ? HALF_MARGIN : MARGIN;
  const left = margin + (binding ? BINDING : 0);
  return { width, height, left, top: margin, right: width - margin, bottom: height - margin };
}

/** CSS's sizes of the paper in upright format (CSS Paged Media 3, 7.1). */
const CSS_PAPER: Readonly<Record<Paper, readonly [width: string, height: string]>> = {
  A4: ['210mm', '297mm'],
  Letter: ['8.5in', '11in'],
};

/** A page's width and height as CSS has those of its paper, which lies on its side where the page does. */
export function cssSize({ width, height }: { readonly width: number; readonly height: number }): string {
  const short = Math.min(width, height);
  const isLetter = Math.abs(short - SIZES.Letter.width) < Math.abs(short - SIZES.A4.width);
  const upright = CSS_PAPER[isLetter ? 'Letter' : 'A4'];
  return (width > height ? upright.toReversed() : upright).join(' ');
}
