declare module 'fontkit' {
  /** An outline in font units; every change gives a new path. */
  export interface GlyphPath {
    scale(x: number, y: number): GlyphPath;
    translate(x: number, y: number): GlyphPath;
    toSVG(): string;
  }

  export interface GlyphRun {
    readonly glyphs: readonly { readonly path: GlyphPath }[];
    /** In font units. */
    readonly positions: readonly {
      readonly xAdvance: number;
      readonly xOffset: number;
      readonly yOffset: number;
    }[];
    readonly advanceWidth: number;
  }

  export interface Font {
    readonly unitsPerEm: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(text: string): GlyphRun;
    /** What a file embeds of the font; the font's outlines are read for it. */
    createSubset(): unknown;
  }

  export function create(file: Uint8Array): Font;
}
