import { describe, expect, it } from 'vitest';
import { writeMusicXml } from '../../src/core/exchange';
import { deriveSheets, type LineSheet, SAMPLE_TITLES, sampleLesson } from '../../src/core/lesson';
import { randomSheets } from './random-sheets';
import { schemaFaults } from './schema';

const sampleSheets: readonly LineSheet[] = SAMPLE_TITLES.flatMap((_, index) =>
  deriveSheets(sampleLesson(index, 'sample')).flatMap((sheet) => (sheet.kind === 'line' ? [sheet] : [])),
);

describe('a line as MusicXML', () => {
  it('is valid by the schema of MusicXML 4.0, for the samples and for random lines', async () => {
    const sheets = [...sampleSheets, ...randomSheets(60)];
    const documents = sheets.map((sheet) => writeMusicXml(sheet, 'Lesson "1" <script>&\u0001'));
    expect(await schemaFaults(documents)).toEqual([]);
  });

  it('is refused by the schema when an element stands in the wrong place', async () => {
    const [sheet] = sampleSheets;
    if (!sheet) throw new Error('no sample');
    const broken = writeMusicXml(sheet, 'Lesson').replace('<voice>1</voice>', '<dot/><voice>1</voice>');
    expect((await schemaFaults([broken])).join()).toContain('dot');
  });
});
