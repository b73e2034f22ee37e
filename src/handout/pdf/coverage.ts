/**
 * Which characters a font file can show, read from its `cmap` table (OpenType 1.9, formats 4 and 12). The PDF
 * writer's own library draws a blank or a box for a character it lacks, and says nothing.
 */

const UNICODE_TABLES = [
  { platform: 3, encoding: 10 },
  { platform: 0, encoding: 4 },
  { platform: 3, encoding: 1 },
  { platform: 0, encoding: 3 },
] as const;

/**
 * @param file - an OpenType or TrueType font, not packed as WOFF
 * @returns whether the font has a glyph for a code point
 * @throws Error when the file is not a font or has no Unicode map of a kind named above
 */
export function glyphCoverage(file: Uint8Array): (codePoint: number) => boolean {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const cmap = tableOffset(view, 'cmap');
  const subtable = unicodeSubtable(view, cmap);
  const format = view.getUint16(subtable);
  if (format === 12) return segmentedCoverage(view, subtable);
  if (format === 4) return deltaCoverage(view, subtable);
  throw new Error(`The font's character map has format ${format}, which is not read here`);
}

function tableOffset(view: DataView, name: string): number {
  const tables = view.getUint16(4);
  for (let index = 0; index < tables; index += 1) {
    const record = 12 + index * 16;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((byte) => view.getUint8(record + byte)));
    if (tag === name) return view.getUint32(record + 8);
  }
  throw new Error(`The file has no ${name} table: it is not a font`);
}

function unicodeSubtable(view: DataView, cmap: number): number {
  const count = view.getUint16(cmap + 2);
  for (const wanted of UNICODE_TABLES) {
    for (let index = 0; index < count; index += 1) {
      const record = cmap + 4 + index * 8;
      if (view.getUint16(record) === wanted.platform && view.getUint16(record + 2) === wanted.encoding) {
        return cmap + view.getUint32(record + 4);
      }
    }
  }
  throw new Error('The font has no Unicode character map');
}

/** Format 12: groups of consecutive code points. */
function segmentedCoverage(view: DataView, start: number): (codePoint: number) => boolean {
  const groups = view.getUint32(start + 12);
  return (codePoint) => {
    for (let index = 0; index < groups; index += 1) {
      const group = start + 16 + index * 12;
      if (codePoint < view.getUint32(group)) return false;
      if (codePoint <= view.getUint32(group + 4)) return true;
    }
    return false;
  };
}

/** Format 4: segments of the first 65,536 code points, each with a delta or a list of glyphs. */
function deltaCoverage(view: DataView, start: number): (codePoint: number) => boolean {
  const segments = view.getUint16(start + 6) / 2;
  const ends = start + 14;
  const starts = ends + segments * 2 + 2;
  const deltas = starts + segments * 2;
  const offsets = deltas + segments * 2;
  return (codePoint) => {
    for (let index = 0; index < segments; index += 1) {
      if (codePoint > view.getUint16(ends + index * 2)) continue;
      const first = view.getUint16(starts + index * 2);
      if (codePoint < first) return false;
      const offset = view.getUint16(offsets + index * 2);
      const delta = view.getUint16(deltas + index * 2);
      if (offset === 0) return (codePoint + delta) % 65536 !== 0;
      return view.getUint16(offsets + index * 2 + offset + (codePoint - first) * 2) !== 0;
    }
    return false;
  };
}
