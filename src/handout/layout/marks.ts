import type { FretboardRequest } from '../../score';

/**
 * What a mark belongs to, for someone who has the file read aloud (PDF 1.7, 14.8.4: standard structure types). The
 * marks of one thing share one tag; a text without a tag is a paragraph, any other mark is left out of the reading.
 */
export interface Tag {
  /** Where in the page's order of headings, what kind of thing, or not to be read at all. */
  readonly role: 'H1' | 'H2' | 'H3' | 'P' | 'Figure' | 'Link' | 'Artifact';
  /** What is read in the place of a figure. */
  readonly alternative?: string;
}

/** What stands on a page, as data. Lengths are points; `y` of a text is its baseline. */
export type Mark = Drawn & { readonly tag?: Tag };

type Drawn =
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

/** Where a link of the file leads that stays in it: to one of its pages, counted from 1. */
export const pageAddress = (page: number): string => `#page-${page}`;

/** A place of the page that leads to an address, or to a page, when it is clicked in the file; nothing is drawn. */
export interface LinkMark {
  readonly kind: 'link';
  readonly address: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A page as data: what stands where, in points from its top left corner. */
export interface PageLayout {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** Width of a text in points. */
export type TextMeasure = (text: string, style: TextStyle) => number;

/** The marks as one thing for someone who has the file read aloud; marks that have a tag of their own keep it. */
export const tagged = (marks: readonly Mark[], tag: Tag): readonly Mark[] =>
  marks.map((mark) => ({ tag, ...mark }));

/** Marks that are one thing, in the page's order. */
export interface TaggedMarks {
  readonly tag: Tag;
  readonly marks: readonly Mark[];
}

const PARAGRAPH: Tag = { role: 'P' };
const UNREAD: Tag = { role: 'Artifact' };

/** The marks of a page by what they belong to: those that follow each other with the same tag are one thing. */
export function byTag(marks: readonly Mark[]): readonly TaggedMarks[] {
  const things: { readonly tag: Tag; readonly marks: Mark[] }[] = [];
  for (const mark of marks) {
    const tag = mark.tag ?? (mark.kind === 'text' ? PARAGRAPH : UNREAD);
    const last = things.at(-1);
    if (last !== undefined && last.tag === tag && tag !== PARAGRAPH) last.marks.push(mark);
    else things.push({ tag, marks: [mark] });
  }
  return things;
}

/** The mark moved by a distance. */
export const moved = (mark: Mark, x: number, y: number): Mark => ({ ...mark, x: mark.x + x, y: mark.y + y });
