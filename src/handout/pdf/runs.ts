/** A font that the PDF embeds. */
export interface PdfFont {
  /** Its name in the document. */
  readonly name: string;
  /** The family that the SVG asks for. */
  readonly family: string;
  readonly bold: boolean;
  readonly file: Uint8Array;
  readonly covers: (codePoint: number) => boolean;
}

/** A stretch of a text in one font; null where no font has the characters. */
export interface FontRun {
  readonly text: string;
  readonly font: PdfFont | null;
}

/**
 * Chooses a font for every character as a browser does: the first family of the list that has the glyph, then
 * any other embedded font. A weight that a family lacks falls back to the one it has.
 */
export function fontRuns(
  text: string,
  families: readonly string[],
  bold: boolean,
  fonts: readonly PdfFont[],
): readonly FontRun[] {
  const order = preference(families, bold, fonts);
  const runs: { text: string; font: PdfFont | null }[] = [];
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    const font = order.find((candidate) => candidate.covers(codePoint)) ?? null;
    const last = runs.at(-1);
    if (last !== undefined && last.font === font) last.text += character;
    else runs.push({ text: character, font });
  }
  return runs;
}

function preference(families: readonly string[], bold: boolean, fonts: readonly PdfFont[]) {
  const rank = (font: PdfFont) => {
    const place = families.indexOf(font.family);
    return (place === -1 ? families.length : place) * 2 + (font.bold === bold ? 0 : 1);
  };
  return [...fonts].sort((one, other) => rank(one) - rank(other));
}
