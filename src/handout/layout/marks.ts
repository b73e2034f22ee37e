import type { FretboardRequest } from '../../score';

/** What stands on a page, as data. Lengths are points; `y` of a text is its baseline. */
export type Mark =
  | TextMark
  | RuleMark
  | BlockMark
  | BoxMark
  | SystemMark
  | PictureMark
  | NeckMark
  | CodeMark
  | LinkMark;

export interface TextStyle {
  readonly size: number;
  readonly bold: boolean;
}

export interface TextMark extends TextStyle {
  readonly kind: 'text';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** A straight line; horizontal or vertical. */
export interface RuleMark {
  readonly kind: 'rule';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A filled rectangle, such as a thick bar line. */
export interface BlockMark {
  readonly kind: 'block';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An empty rectangle with a thin outline. */
export interface BoxMark {
  readonly kind: 'box';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A system of a score: staff, tab and what belongs to them. */
export interface SystemMark {
  readonly kind: 'system';
  /** Index into the scores that the layout gives back. */
  readonly score: number;
  /** Index into that score's systems. */
  readonly system: number;
  readonly x: number;
  readonly y: number;
}

/** A picture of pixels: the teacher's logo. */
export interface PictureMark {
  readonly kind: 'picture';
  /** A PNG without transparency or a JPEG, as a data address. */
  readonly source: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A picture of the neck, drawn at the width of its request and scaled to the width it has on the page. */
export interface NeckMark {
  readonly kind: 'neck';
  readonly request: FretboardRequest;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A QR code, drawn in modules and scaled to the width it has on the page. */
export interface CodeMark {
  readonly kind: 'code';
  /** SVG path data in modules. */
  readonly outline: string;
  /** Along one side. */
  readonly modules: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place of the page that leads to an address when it is clicked in the file; nothing is drawn. */
export interface LinkMark {
  readonly kind: 'link';
  readonly address: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Width of a text in points. */
export type TextMeasure = (text: string, style: TextStyle) => number;

/** The mark moved by a distance. */
export const moved = (mark: Mark, x: number, y: number): Mark => ({ ...mark, x: mark.x + x, y: mark.y + y });
