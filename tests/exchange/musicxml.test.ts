import { describe, expect, it } from 'vitest';
import { writeMusicXml } from '../../src/core/exchange';
import { deriveSheets, type LineSheet, SAMPLE_TITLES, sampleLesson } from '../../src/core/lesson';
import { sheetOf } from '../support/score-sheets';
import { randomSheets } from './random-sheets';
import { schemaFaults } from './schema';
import { waySheets } from './way-sheets';

const sampleSheets: readonly LineSheet[] = SAMPLE_TITLES.flatMap((_, index) =>
  deriveSheets(sampleLesson(index, 'sample')).flatMap((sheet) => (sheet.kind === 'line' ? [sheet] : [])),
);

describe('a line as MusicXML', () => {
  it('is valid by the schema of MusicXML 4.0, for the samples and for random lines', async () => {
    const sheets = [...sampleSheets, ...randomSheets(60), ...waySheets];
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

/** The elements of a name in a document, each on one line. */
const found = (xml: string, name: string): readonly string[] =>
  [...xml.matchAll(new RegExp(`<${name}[ >/](?:[^<]|<(?!/${name}>))*?(?:</${name}>|/>)`, 'g'))].map(
    ([text]) => text.replace(/\s*\n\s*/g, ''),
  );

const partsOf = (sheet: LineSheet): readonly string[] =>
  writeMusicXml(sheet, 'Lesson').split('<part id=').slice(1);

describe('what a program must find in the file', () => {
  it('is one metre where a pickup completes a bar, the end of which is not counted', () => {
    const verse = 'G1/1 | C2/4 | C2/3';
    const chart = 'Verse:\n(1) | G | C | (3/4) C |\nVerse';
    const [staff = ''] = partsOf(sheetOf({ key: 'C', chart, notes: `${verse} | ${verse}` }));
    const shown = found(staff, 'time').filter((text) => !text.includes('print-object="no"'));
    expect(shown).toEqual(['<time><beats>4</beats><beat-type>4</beat-type></time>']);
    const measures = [...staff.matchAll(/<measure ([^>]*)>/g)].map(([, attributes = '']) => attributes);
    expect(measures.map((attributes) => attributes.includes('implicit="yes"'))).toEqual([
      true,
      false,
      false,
      true,
      false,
      false,
    ]);
  });

  const plain = sheetOf({ chart: '| F | Bb |', notes: 'F1/4 | B♭1/4', key: 'F' });

  it('is a plain bass clef an octave above its sound, and never an octave clef as well', () => {
    const [staff = '', tab = ''] = partsOf(plain);
    expect(found(staff, 'clef')).toEqual(['<clef><sign>F</sign><line>4</line></clef>']);
    expect(found(staff, 'octave-change')).toEqual(['<octave-change>-1</octave-change>']);
    // Sounding F1 and B flat 1.
    expect(found(staff, 'pitch')).toEqual([
      '<pitch><step>F</step><octave>2</octave></pitch>',
      '<pitch><step>B</step><alter>-1</alter><octave>2</octave></pitch>',
    ]);
    expect(tab).not.toContain('<transpose>');
    expect(staff + tab).not.toContain('clef-octave-change');
  });

  it('is a tab whose strings and frets add up to its pitches', () => {
    const [, tab = ''] = partsOf(plain);
    expect(found(tab, 'tuning-step').join()).toContain('E</tuning-step>');
    expect(found(tab, 'pitch')[0]).toBe('<pitch><step>F</step><octave>1</octave></pitch>');
    expect(found(tab, 'technical')[0]).toBe('<technical><string>4</string><fret>1</fret></technical>');
  });

  it('counts a tempo in dotted quarters in compound time', () => {
    const sheet = sheetOf({ chart: '| F |', notes: 'F1/3', metre: { count: 6, unit: 8 }, tempo: 60 });
    const [staff = ''] = partsOf(sheet);
    expect(staff.replace(/\s*\n\s*/g, '')).toContain(
      '<beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>60</per-minute>',
    );
    expect(staff).toContain('<sound tempo="90"/>');
  });

  it('begins a repeat where one goes back to, and none where a jump leads', () => {
    const repeats = (chart: string) => {
      const sheet = sheetOf({ chart, notes: Array(6).fill('F1/4').join(' | ') });
      const [staff = ''] = partsOf(sheet);
      return staff.split('<measure ').map((measure) => measure.includes('<repeat direction="forward"/>'));
    };
    const none: readonly boolean[] = Array<boolean>(7).fill(false);
    expect(repeats('| F | (segno) C | F (to coda) | C (D.S. al coda) | (coda) F | F |')).toEqual(none);
    expect(repeats('| F | C | F (fine) | C | F | C (D.C. al fine) |')).toEqual(none);
    expect(repeats('Verse:\n| F | C |\nChorus:\n| F | C :|\n| F | F |')).toEqual(none.with(3, true));
  });

  it('writes where the way leads as it is printed, and says it for players (MusicXML 4.0, element sound)', () => {
    const way = waySheets
      .flatMap((sheet) => (partsOf(sheet)[0] ?? '').split('<direction ').slice(1))
      .map((text) =>
        `<direction ${text.slice(0, text.indexOf('</direction>'))}</direction>`.replace(/\s*\n\s*/g, ''),
      )
      .filter((text) => /<sound (?!tempo)/.test(text));
    const above = (drawn: readonly string[], said: string): string =>
      `<direction placement="above">${drawn.map((sign) => `<direction-type>${sign}</direction-type>`).join('')}<sound ${said}/></direction>`;
    const toCoda = above(['<words>To Coda</words>', '<coda/>'], 'tocoda="coda"');
    const [segno, coda] = [above(['<segno/>'], 'segno="segno"'), above(['<coda/>'], 'coda="coda"')];
    const fine = above(['<words>Fine</words>'], 'fine="yes"');
    const daCapo = above(['<words>D.C. al Fine</words>'], 'dacapo="yes"');
    expect(way).toEqual([
      ...[segno, toCoda, above(['<words>D.S. al Coda</words>'], 'dalsegno="segno"'), coda],
      ...[fine, daCapo],
      ...[fine, daCapo],
      ...[segno, toCoda, above(['<words>D.S.</words>'], 'dalsegno="segno"'), coda],
    ]);
  });

  it('says how long a repeat goes on and which ending comes when', () => {
    const sheet = sheetOf({ chart: '|: F :| x3\n|: Bb |1.,2. C :|3. F ||', notes: 'F1/4|B♭1/4|C2/4|F1/4' });
    const [staff = ''] = partsOf(sheet);
    expect(found(staff, 'repeat')).toEqual([
      '<repeat direction="forward"/>',
      '<repeat direction="backward" times="3"/>',
      '<repeat direction="forward"/>',
      '<repeat direction="backward"/>',
    ]);
    expect(found(staff, 'ending')).toEqual([
      '<ending number="1,2" type="start">1, 2.</ending>',
      '<ending number="1,2" type="stop"/>',
      '<ending number="3" type="start">3.</ending>',
      '<ending number="3" type="stop"/>',
    ]);
  });

  it('ties a note into the next bar, and lets it ring where it goes on elsewhere', () => {
    const sheet = sheetOf({ chart: '|: F | F | C :|', notes: 'C2/4~ | C2/2 r/1 C2/1 | F1/3 C2/1~' });
    const [staff = ''] = partsOf(sheet);
    expect(found(staff, 'tied')).toEqual([
      '<tied type="start"/>',
      '<tied type="stop"/>',
      '<tied type="let-ring"/>',
    ]);
  });

  it('changes the signature where the chart changes the key', () => {
    const sheet = sheetOf({ chart: '| F | (key: D) F#m | D |', notes: 'F1/4 | F♯1/4 | D2/4', key: 'F' });
    const [staff = ''] = partsOf(sheet);
    expect(found(staff, 'fifths')).toEqual(['<fifths>-1</fifths>', '<fifths>2</fifths>']);
    expect(found(staff, 'accidental')).toEqual([]);
  });
});
