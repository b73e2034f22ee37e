import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { exportName, packMxl, writeMusicXml } from '../../src/core/exchange';
import { sheetOf } from '../support/score-sheets';
import { schemaFaults } from './schema';

const sheet = sheetOf({ chart: '| Bb | F7 |', notes: 'B♭1/4 | F1/4', key: 'Bb', tempo: 90 });

describe('the name of an exported file', () => {
  it('says lesson, piece, key and tempo', () => {
    expect(exportName(sheet, 'Ferry queue, week 3')).toBe('Ferry queue, week 3, Line, B flat major, 90 bpm');
  });

  it('still says key and tempo after names of any length', () => {
    const sounding = (tempo: number, parts: readonly ('bass' | 'drums' | 'chops' | 'organ' | 'click')[]) =>
      exportName(sheet, 'Ferry queue', { tempo, parts });
    expect(sounding(60, ['bass', 'drums', 'chops', 'organ'])).toBe('Ferry queue, Line, B flat major, 60 bpm');
    expect(sounding(60.5, ['drums', 'chops', 'organ'])).toBe(
      'Ferry queue, Line, B flat major, 60.5 bpm, without bass',
    );
    expect(sounding(90, ['bass', 'click'])).toBe('Ferry queue, Line, B flat major, 90 bpm, bass');
    const name = exportName({ ...sheet, name: 'ab '.repeat(100) }, 'A lesson with a long name '.repeat(9));
    expect(name).toMatch(/^A lesson with .*, ab ab .*, B flat major, 90 bpm$/);
    // Some systems take 255 bytes, three of them for a character of East Asian scripts.
    expect([...name].length).toBeLessThanOrEqual(80);
  });

  it('does not say the same name twice', () => {
    expect(exportName({ ...sheet, name: 'Ferry queue' }, 'Ferry queue, week 3')).toBe(
      'Ferry queue, week 3, B flat major, 90 bpm',
    );
  });
});

describe('a compressed MusicXML file', () => {
  const xml = writeMusicXml(sheet, 'Ferry queue, week 3');
  const packed = packMxl(xml);

  it('begins with its media type, as it lies (MusicXML 4.0, compressed .mxl files)', () => {
    // A zip's local header is 30 bytes and the name; method 0 is "stored" (PKWARE APPNOTE).
    expect(strFromU8(packed.subarray(0, 4), true)).toBe('PK\u0003\u0004');
    expect(packed[8]).toBe(0);
    expect(strFromU8(packed.subarray(30, 30 + 8 + 34), true)).toBe(
      'mimetypeapplication/vnd.recordare.musicxml',
    );
  });

  it('has a container that is valid by its schema and names the score', async () => {
    const files = unzipSync(packed);
    const container = strFromU8(files['META-INF/container.xml'] ?? new Uint8Array());
    expect(await schemaFaults([container], 'container.xsd')).toEqual([]);
    const path = /full-path="([^"]+)"/.exec(container)?.[1] ?? '';
    expect(strFromU8(files[path] ?? new Uint8Array())).toBe(xml);
  });

  it('is the same for the same document', () => {
    expect(packMxl(xml)).toEqual(packed);
  });
});
