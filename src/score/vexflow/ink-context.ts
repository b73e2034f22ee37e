import { type FontInfo, RenderContext, type TextMeasure } from 'vexflow/core';
import { blockMark, fontMark, type Mark, pathMark, type Segment } from '../ink';
import type { InkRole } from '../types';

const PIXELS_PER_POINT = 4 / 3;

/** Roles of glyphs by SMuFL's ranges (SMuFL 1.4). */
const GLYPH_ROLES: readonly (readonly [first: number, last: number, role: InkRole])[] = [
  [0xe0a0, 0xe0ff, 'note'],
  [0xe1e7, 0xe1e7, 'dot'],
  [0xe240, 0xe25f, 'flag'],
  [0xe260, 0xe26f, 'accidental'],
  [0xe4a0, 0xe4bf, 'articulation'],
  [0xe4e0, 0xe4ff, 'rest'],
];

/** Roles of strokes by the group the engraving library opens around them. */
const GROUP_ROLES: ReadonlyMap<string, InkRole> = new Map([
  ['stem', 'stem'],
  ['beam', 'beam'],
  ['stavenote', 'ledger-line'],
]);

/**
 * What the engraving library draws on: it keeps the strokes and glyphs as marks with their rectangles, so that
 * heights can be computed from the very ink that is drawn later.
 */
export class InkContext extends RenderContext {
  readonly marks: Mark[] = [];
  private readonly groups: string[] = [];
  private segments: Segment[] = [];
  private lineWidth = 1;
  private readonly saved: number[] = [];
  private size = 0;
  private family = '';

  private role(): InkRole {
    return this.groups.map((group) => GROUP_ROLES.get(group)).findLast((role) => role) ?? 'note';
  }

  beginPath(): this {
    this.segments = [];
    return this;
  }

  moveTo(x: number, y: number): this {
    return this.add_('M', x, y);
  }

  lineTo(x: number, y: number): this {
    return this.add_('L', x, y);
  }

  quadraticCurveTo(cpx: number, cpy: number, x: number, y: number): this {
    return this.add_('Q', cpx, cpy, x, y);
  }

  bezierCurveTo(cp1x: number, cp1y: number, cp2x: number, cp2y: number, x: number, y: number): this {
    return this.add_('C', cp1x, cp1y, cp2x, cp2y, x, y);
  }

  closePath(): this {
    return this.add_('Z');
  }

  private add_(command: Segment['command'], ...points: number[]): this {
    this.segments.push({ command, points });
    return this;
  }

  fill(): this {
    this.marks.push(pathMark(this.role(), this.segments, 0));
    return this;
  }

  stroke(): this {
    this.marks.push(pathMark(this.role(), this.segments, this.lineWidth));
    return this;
  }

  fillRect(x: number, y: number, width: number, height: number): this {
    this.marks.push(blockMark(this.role(), x, y, x + width, y + height));
    return this;
  }

  fillText(text: string, x: number, y: number): this {
    const code = text.codePointAt(0) ?? 0;
    const range = GLYPH_ROLES.find(([first, last]) => code >= first && code <= last);
    const role = range?.[2] ?? 'note';
    const font = this.family.startsWith('Bravura') ? 'Bravura' : 'Academico';
    this.marks.push(fontMark(role, text, x, y, font, this.size, false, false));
    return this;
  }

  setFont(font?: string | FontInfo, size?: string | number): this {
    const chosen = typeof font === 'object' ? font.size : size;
    this.family = (typeof font === 'object' ? font.family : font) ?? '';
    const number = Number.parseFloat(String(chosen ?? 0));
    this.size = typeof chosen === 'string' && chosen.endsWith('px') ? number : number * PIXELS_PER_POINT;
    return this;
  }

  getFont(): string {
    return `${this.size}px ${this.family}`;
  }

  measureText(): TextMeasure {
    return { x: 0, y: 0, width: 0, height: 0 };
  }

  save(): this {
    this.saved.push(this.lineWidth);
    return this;
  }

  restore(): this {
    this.lineWidth = this.saved.pop() ?? this.lineWidth;
    return this;
  }

  setLineWidth(width: number): this {
    this.lineWidth = width;
    return this;
  }

  openGroup(name?: string): undefined {
    this.groups.push(name ?? '');
  }

  closeGroup(): void {
    this.groups.pop();
  }

  // Colours, shadows, turning and clearing have no part in the ink.
  get fillStyle(): string {
    return '#000';
  }

  set fillStyle(_style: string | CanvasGradient | CanvasPattern) {}

  get strokeStyle(): string {
    return '#000';
  }

  set strokeStyle(_style: string | CanvasGradient | CanvasPattern) {}

  setFillStyle(): this {
    return this;
  }

  setBackgroundFillStyle(): this {
    return this;
  }

  setStrokeStyle(): this {
    return this;
  }

  setShadowColor(): this {
    return this;
  }

  setShadowBlur(): this {
    return this;
  }

  setLineCap(): this {
    return this;
  }

  setLineDash(): this {
    return this;
  }

  scale(): this {
    return this;
  }

  resize(): this {
    return this;
  }

  rect(): this {
    return this;
  }

  clearRect(): this {
    return this;
  }

  pointerRect(): this {
    return this;
  }

  arc(): this {
    return this;
  }

  clear(): void {}

  add(): void {}

  openRotation(): void {}

  closeRotation(): void {}
}
