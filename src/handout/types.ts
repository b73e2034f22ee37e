import type { Paper } from '../core/lesson';

/**
 * One finished page. The SVG is the whole page, white ground and margins included, in points (1/72 inch): the
 * preview shows it, the browser prints it, and the PDF is made from it, so the three cannot differ.
 */
export interface HandoutPage {
  /** From 1. */
  readonly number: number;
  /** In points. */
  readonly width: number;
  /** In points. */
  readonly height: number;
  /** Sized by its view box; a stylesheet may scale it. It has a role and a name of its own. */
  readonly svg: SVGSVGElement;
  /** What leads to it in a file of several handouts; none where it goes on with the one before. */
  readonly bookmark?: string;
  /** It answers the questions of the handout, and is not for the student. */
  readonly answers?: true;
}

/** The printed sheet of a lesson, laid out and drawn. */
export interface Handout {
  readonly paper: Paper;
  readonly title: string;
  /** The teacher's own line; '' where there is none. */
  readonly author: string;
  /** BCP 47: the language of the printed words. */
  readonly language: string;
  readonly pages: readonly HandoutPage[];
  /** What the teacher should know before handing it out, in sentences; empty when all is well. */
  readonly remarks: readonly string[];
}

/** A PDF file, and what could not be written in its own fonts. */
export interface HandoutPdf {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /**
   * Characters that none of the embedded fonts has, each once, in the order they were met. They stand on the
   * page as small pictures in whatever font the machine has for them.
   */
  readonly missing: readonly string[];
}
