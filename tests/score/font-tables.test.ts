import { expect, test } from 'vitest';
import { GLYPHS, type GlyphBox, LIGATURES, type Ligature } from '../../src/score/metrics/glyph-table';
import { OUTLINES } from '../../src/score/metrics/outlines';
import { ACADEMICO_BOLD_WIDTHS, ACADEMICO_WIDTHS, type WidthRow } from '../../src/score/metrics/text-widths';

interface FontTables {
  readonly glyphTable: () => readonly GlyphBox[];
  readonly ligatureTable: () => readonly Ligature[];
  readonly widthTable: (file: string) => readonly WidthRow[];
  readonly outlineTables: () => typeof OUTLINES;
}

const tables: FontTables = await import(new URL('../../build/font-tables.mjs', import.meta.url).href);

test('the tables of the fonts are what `npm run fonts` writes of the installed files', () => {
  expect(GLYPHS).toEqual(tables.glyphTable());
  expect(LIGATURES).toEqual(tables.ligatureTable());
  expect(ACADEMICO_WIDTHS).toEqual(tables.widthTable('academico.otf'));
  expect(ACADEMICO_BOLD_WIDTHS).toEqual(tables.widthTable('academico-bold.otf'));
  expect(OUTLINES).toEqual(tables.outlineTables());
});
