import type { Font } from 'fontkit';

/** A font that the handout's files are made with. */
export interface Face {
  /** Its name in a document. */
  readonly name: string;
  /** The family that the SVG asks for. */
  readonly family: string;
  readonly bold: boolean;
  /** Read once, for every document: what has been read of it stays known. */
  readonly font: Font;
}

/** A stretch of a text in one font; null where no font has the characters. */
export interface FontRun {
  readonly text: string;
  readonly face: Face | null;
}

/** Scripts of which the embedded fonts have a letter or two, as signs; a word of them stands in one type all the same. */
const FEW_LETTERS = /[\p{Script=Cyrillic}\p{Script=Greek}]/u;

/**
 * Chooses a font for every character as a browser does: the first family of the list that has the glyph, then
 * any other embedded font. A weight that a family lacks falls back to the one it has.
 */
export function fontRuns(
  text: string,
  families: readonly string[],
  bold: boolean,
  faces: readonly Face[],
): readonly FontRun[] {
  const order = preference(families, bold, faces);
  const runs: { text: string; face: Face | null }[] = [];
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    const face = FEW_LETTERS.test(character)
      ? null
      : (order.find(({ font }) => font.hasGlyphForCodePoint(codePoint)) ?? null);
    const last = runs.at(-1);
    if (last !== undefined && last.face === face) last.text += character;
    else runs.push({ text: character, face });
  }
  return runs;
}

function preference(families: readonly string[], bold: boolean, faces: readonly Face[]) {
  const rank = (face: Face) => {
    const place = families.indexOf(face.family);
    return (place === -1 ? families.length : place) * 2 + (face.bold === bold ? 0 : 1);
  };
  return [...faces].sort((one, other) => rank(one) - rank(other));
}
