/**
 * Writes the tables of the score's fonts, `src/score/metrics/glyph-table.ts`, `text-widths.ts` and `outlines.ts`, from
 * the fonts' own files: `npm run fonts`. A glyph that the score draws and that is not in its table gets its row below.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { openSync } from 'fontkit';

const require = createRequire(import.meta.url);
const packageOf = (name) => JSON.parse(readFileSync(require.resolve(`${name}/package.json`), 'utf8'));
const fileOf = (name, file) => require.resolve(`${name}/package.json`).replace(/package\.json$/, file);

const BRAVURA = '@vexflow-fonts/bravura';
const ACADEMICO = '@vexflow-fonts/academico';

/** The glyphs that the score uses: SMuFL's name and code point (SMuFL 1.4). */
const USED = [
  ['bracketTop', 0xe003],
  ['bracketBottom', 0xe004],
  ['noteheadDoubleWhole', 0xe0a0],
  ['noteheadWhole', 0xe0a2],
  ['noteheadHalf', 0xe0a3],
  ['noteheadBlack', 0xe0a4],
  ['noteheadXWhole', 0xe0a7],
  ['noteheadXHalf', 0xe0a8],
  ['noteheadXBlack', 0xe0a9],
  ['flag8thUp', 0xe240],
  ['flag8thDown', 0xe241],
  ['flag16thUp', 0xe242],
  ['flag16thDown', 0xe243],
  ['flag32ndUp', 0xe244],
  ['flag32ndDown', 0xe245],
  ['flag64thUp', 0xe246],
  ['flag64thDown', 0xe247],
  ['accidentalFlat', 0xe260],
  ['accidentalNatural', 0xe261],
  ['accidentalSharp', 0xe262],
  ['accidentalDoubleSharp', 0xe263],
  ['accidentalDoubleFlat', 0xe264],
  ['accidentalParensLeft', 0xe26a],
  ['accidentalParensRight', 0xe26b],
  ['augmentationDot', 0xe1e7],
  ['restWhole', 0xe4e3],
  ['restHalf', 0xe4e4],
  ['restQuarter', 0xe4e5],
  ['rest8th', 0xe4e6],
  ['rest16th', 0xe4e7],
  ['rest32nd', 0xe4e8],
  ['rest64th', 0xe4e9],
  ['restWholeLegerLine', 0xe4f4],
  ['restHalfLegerLine', 0xe4f5],
  ['gClef', 0xe050],
  ['fClef', 0xe062],
  ['unpitchedPercussionClef1', 0xe069],
  ['6stringTabClef', 0xe06d],
  ['4stringTabClef', 0xe06e],
  ['articAccentAbove', 0xe4a0],
  ['articAccentBelow', 0xe4a1],
  ['articStaccatoAbove', 0xe4a2],
  ['articStaccatoBelow', 0xe4a3],
  ['segno', 0xe047],
  ['coda', 0xe048],
  ['articTenutoAbove', 0xe4a4],
  ['articTenutoBelow', 0xe4a5],
  ['articMarcatoAbove', 0xe4ac],
  ['articMarcatoBelow', 0xe4ad],
  ['articTenutoStaccatoAbove', 0xe4b2],
  ['articTenutoStaccatoBelow', 0xe4b3],
  ['fermataAbove', 0xe4c0],
  ['dynamicPiano', 0xe520],
  ['dynamicForte', 0xe522],
  ['dynamicPPP', 0xe52a],
  ['dynamicPP', 0xe52b],
  ['dynamicMP', 0xe52c],
  ['dynamicMF', 0xe52d],
  ['dynamicFF', 0xe52f],
  ['dynamicFFF', 0xe530],
  ['timeSig0', 0xe080],
  ['tuplet0', 0xe880],
  ['timeSig1', 0xe081],
  ['tuplet1', 0xe881],
  ['timeSig2', 0xe082],
  ['tuplet2', 0xe882],
  ['timeSig3', 0xe083],
  ['tuplet3', 0xe883],
  ['timeSig4', 0xe084],
  ['tuplet4', 0xe884],
  ['timeSig5', 0xe085],
  ['tuplet5', 0xe885],
  ['timeSig6', 0xe086],
  ['tuplet6', 0xe886],
  ['timeSig7', 0xe087],
  ['tuplet7', 0xe887],
  ['timeSig8', 0xe088],
  ['tuplet8', 0xe888],
  ['timeSig9', 0xe089],
  ['tuplet9', 0xe889],
];

/** What the font draws as one glyph, by the name of that glyph (`ligatures` of the metadata file, SMuFL 1.4). */
const JOINED = [
  'accidentalFlatParens',
  'accidentalNaturalParens',
  'accidentalSharpParens',
  'accidentalDoubleSharpParens',
  'accidentalDoubleFlatParens',
];

/** Characters of the text font whose widths are known to the layout, where the font has them. */
const CHARACTERS = [
  ...Array.from({ length: 0x7f - 0x20 }, (_, index) => 0x20 + index),
  ...Array.from({ length: 0x100 - 0xa1 }, (_, index) => 0xa1 + index),
  ...[...'–—‘’“”„…€♭♮♯'].map((sign) => sign.codePointAt(0)),
];

/** What is drawn by its outline on the page, because a system can be full of it: signs by their SMuFL names. */
const OUTLINED =
  /^(bracket.*|notehead(Whole|Half|Black|XBlack)|flag(8th|16th).*|accidental(Flat|Natural|Sharp)|augmentationDot|rest(Whole|Half|Quarter|8th|16th)|fClef|.stringTabClef|artic(Accent|Staccato|Tenuto)(Above|Below)|tuplet3)$/;

/** Of the text font, the letters of fret numbers, degrees, fingers and counting. */
const OUTLINED_LETTERS = '0123456789()x?+R♭♯♮&aeilprt';

/** Three decimals of a staff space, about a thousandth of a millimetre on paper. */
const rounded = (value) => Math.round(value * 1000) / 1000 + 0;

const metadata = () => JSON.parse(readFileSync(fileOf(BRAVURA, 'metadata.json'), 'utf8'));

function outlineOf(name, { glyphBBoxes, glyphAdvanceWidths }) {
  const box = glyphBBoxes[name];
  if (box === undefined) throw new Error(`The font's metadata knows no glyph ${name}.`);
  const [left, bottom] = box.bBoxSW.map(rounded);
  const [right, top] = box.bBoxNE.map(rounded);
  return { advance: rounded(glyphAdvanceWidths[name]), left, bottom, right, top };
}

/** Every used glyph in staff spaces, from the font's metadata file. */
export function glyphTable() {
  const font = metadata();
  return USED.map(([name, code]) => ({ name, code, ...outlineOf(name, font) }));
}

/** The glyphs that the font draws in the place of several, in staff spaces. */
export function ligatureTable() {
  const font = metadata();
  const codes = new Map(USED);
  return JOINED.map((name) => ({
    name,
    codes: font.ligatures[name].componentGlyphs.map((part) => codes.get(part)),
    ...outlineOf(name, font),
  }));
}

/** The widths of a font of the text, in thousandths of its size: one row a width, with the characters that have it. */
export function widthTable(file) {
  const font = openSync(fileOf(ACADEMICO, file));
  const rows = new Map();
  for (const code of CHARACTERS) {
    if (!font.hasGlyphForCodePoint(code)) continue;
    const width = Math.round((font.glyphForCodePoint(code).advanceWidth * 1000) / font.unitsPerEm);
    rows.set(width, (rows.get(width) ?? '') + String.fromCodePoint(code));
  }
  return [...rows].sort(([one], [other]) => one - other);
}

const COMMANDS = { moveTo: 'm', lineTo: 'l', bezierCurveTo: 'c', quadraticCurveTo: 'q', closePath: 'z' };

/** The outline of a character as SVG path data, each stroke from where the one before ended, y downwards. */
function pathOf(font, code) {
  let [x, y, startX, startY] = [0, 0, 0, 0];
  let data = '';
  for (const { command, args } of font.glyphForCodePoint(code).path.commands) {
    const moved = args.map((value, index) => (index % 2 === 0 ? value - x : -value - y));
    data += COMMANDS[command] + moved.map((value) => Math.round(value)).join(' ');
    if (command === 'closePath') [x, y] = [startX, startY];
    else [x, y] = [args.at(-2), -args.at(-1)];
    if (command === 'moveTo') [startX, startY] = [x, y];
  }
  return data;
}

/** The outlines of what is drawn by them: one row a character, in thousandths of the font size. */
export function outlineTables() {
  const rowsOf = (name, file, codes) => {
    const font = openSync(fileOf(name, file));
    if (font.unitsPerEm !== 1000) throw new Error(`${file} is not drawn in thousandths.`);
    return codes.map((code) => [String.fromCodePoint(code), pathOf(font, code)]);
  };
  const signs = USED.filter(([name]) => OUTLINED.test(name)).map(([, code]) => code);
  const letters = [...OUTLINED_LETTERS].map((letter) => letter.codePointAt(0));
  return {
    Bravura: rowsOf(BRAVURA, 'bravura.otf', signs),
    Academico: rowsOf(ACADEMICO, 'academico.otf', letters),
  };
}

const list = (rows) => `[\n${rows.map((row) => `  ${JSON.stringify(row)},`).join('\n')}\n]`;

const GLYPH_FILE =
  () => `/** The outline of a music glyph in staff spaces, upwards from its baseline and right from its origin. */
interface Outline {
  /** SMuFL's name. */
  readonly name: string;
  readonly advance: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export interface GlyphBox extends Outline {
  /** SMuFL's code point. */
  readonly code: number;
}

/** One glyph that is drawn for several characters in a row: wider than they are, one after the other. */
export interface Ligature extends Outline {
  /** SMuFL's code points. */
  readonly codes: readonly number[];
}

/**
 * The glyphs that the score uses, written by build/font-tables.mjs from the metadata file of ${BRAVURA}
 * ${packageOf(BRAVURA).version} (SMuFL 1.4).
 */
export const GLYPHS: readonly GlyphBox[] = ${list(glyphTable()).replace(/"code":(\d+)/g, (_, code) => `"code":0x${Number(code).toString(16)}`)};

export const LIGATURES: readonly Ligature[] = ${list(ligatureTable()).replace(/\b\d{5}\b/g, (code) => `0x${Number(code).toString(16)}`)};
`;

const WIDTH_FILE = () => `/**
 * Advance widths of the Academico fonts in thousandths of the font size, written by build/font-tables.mjs from the
 * files of ${ACADEMICO} ${packageOf(ACADEMICO).version}: one row a width, with the characters that have it.
 */
export type WidthRow = readonly [width: number, characters: string];

export const ACADEMICO_WIDTHS: readonly WidthRow[] = ${list(widthTable('academico.otf'))};

export const ACADEMICO_BOLD_WIDTHS: readonly WidthRow[] = ${list(widthTable('academico-bold.otf'))};
`;

const outlineList = (rows) =>
  list(rows).replace(/[\ue000-\uf8ff]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16)}`);

const OUTLINE_FILE = () => {
  const { Bravura, Academico } = outlineTables();
  return `import type { ScoreFont } from '../types';

/** A character, and its outline as SVG path data in thousandths of the font size, from its origin, y downwards. */
export type OutlineRow = readonly [character: string, data: string];

/**
 * The characters that the page draws by their outlines, written by build/font-tables.mjs from the files of ${BRAVURA}
 * ${packageOf(BRAVURA).version} and ${ACADEMICO} ${packageOf(ACADEMICO).version}. Every stroke begins where the one before ended.
 */
export const OUTLINES: Readonly<Record<ScoreFont, readonly OutlineRow[]>> = {
  Bravura: ${outlineList(Bravura)},
  Academico: ${outlineList(Academico)},
};
`;
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(new URL('../src/score/metrics/glyph-table.ts', import.meta.url), GLYPH_FILE());
  writeFileSync(new URL('../src/score/metrics/text-widths.ts', import.meta.url), WIDTH_FILE());
  writeFileSync(new URL('../src/score/metrics/outlines.ts', import.meta.url), OUTLINE_FILE());
}
