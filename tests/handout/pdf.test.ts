import { constants, inflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { deriveSheets, describeBar, sampleLesson, setHandout } from '../../src/core/lesson';
import type { PicturedText, PictureText } from '../../src/handout/pdf/fallback';
import { meaningOf } from '../../src/handout/pdf/music-signs';
import { writePdf } from '../../src/handout/pdf/write';
import { GLYPHS } from '../../src/score/metrics/glyph-table';
import { drawnPages, layOutForPrint } from './drawn';
import { FACES, readFaces, readPdf, readStructure, svg } from './pages';

const A4 = { width: 595.28, height: 841.89 };
const FACTS = { title: 'Tuesday class, week 3 ♭', author: 'An evening class', language: 'en' };
const PNG =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==';
const pictured: PictureText = ({ text, size }) =>
  text.includes('☃')
    ? null
    : { source: PNG, left: 0, top: -size, width: size, height: size, advance: 3 * size };
const write = (...children: ReturnType<typeof svg>[]) =>
  writePdf([{ ...A4, svg: svg('svg', {}, children) }], FACTS, FACES, pictured);

test('chord symbols keep their sharps and flats as text', async () => {
  const chords = ['F♯m7♭5', 'E♭maj7', 'B♭m7', 'C°7', 'A𝄫'];
  const { bytes, missing } = await write(
    ...chords.map((chord, index) =>
      svg('text', { x: 60, y: 60 + 20 * index, 'font-size': 13, 'font-weight': 'bold' }, chord),
    ),
  );
  expect(missing).toEqual([]);
  const { pages } = await readPdf(bytes);
  const words = pages[0]?.texts.map((text) => text.text).join('') ?? '';
  for (const chord of chords) expect(words).toContain(chord);
});

test('a page has the size it is given, and the document its title and language', async () => {
  const { bytes } = await write(svg('text', { x: 60, y: 60 }, 'one'));
  const { pages, info } = await readPdf(bytes);
  expect(pages.map(({ width, height }) => ({ width, height }))).toEqual([A4]);
  expect(info).toMatchObject({ Title: FACTS.title, Language: 'en' });
});

test('what one document has written with a font leaves the next as it would have been', async () => {
  const glyphs = [0xe050, 0xe0a4, 0xe262, 0xe4e5, 0xe240].map((code) => String.fromCodePoint(code)).join('');
  const texts = [
    svg('text', { x: 60, y: 60, 'font-size': 12 }, 'Ferry queue in F♯, fifth fret'),
    svg('text', { x: 60, y: 90, 'font-size': 12, 'font-weight': 'bold' }, 'Walk to the sixth'),
    svg('text', { x: 60, y: 120, 'font-size': 30, 'font-family': 'Bravura' }, glyphs),
  ];
  const streams = async (faces: typeof FACES) =>
    drawingOf((await writePdf([{ ...A4, svg: svg('svg', {}, texts) }], FACTS, faces, pictured)).bytes);
  const alone = await streams(readFaces());
  const used = readFaces();
  const other = svg('svg', {}, [
    svg('text', { x: 60, y: 60, 'font-size': 14 }, 'Quartz jigs vex 12 bold nymphs; 37 ½ %'),
    svg('text', { x: 60, y: 120, 'font-size': 30, 'font-family': 'Bravura' }, [...glyphs].reverse().join('')),
  ]);
  await writePdf([{ ...A4, svg: other }], FACTS, used, pictured);
  expect(await streams(used)).toEqual(alone);
});

test('text stands where the page says, whatever moves and scales it', async () => {
  const { bytes } = await write(
    svg('g', { transform: 'translate(50 100) scale(0.5)' }, [
      svg('text', { x: 20, y: 40, 'font-size': '15pt' }, 'start'),
      svg('text', { x: 300, y: 40, 'font-size': 20, 'text-anchor': 'end' }, 'finish'),
      svg('text', { x: 400, y: 40, 'font-size': 20, 'text-anchor': 'middle' }, 'middle'),
    ]),
  );
  const texts = (await readPdf(bytes)).pages[0]?.texts ?? [];
  const [start, finish, middle] = texts;
  expect(start).toMatchObject({ x: 60, y: A4.height - 120, size: 10 });
  expect((finish?.x ?? 0) + (finish?.width ?? 0)).toBeCloseTo(200, 1);
  expect((middle?.x ?? 0) + (middle?.width ?? 0) / 2).toBeCloseTo(250, 1);
});

test('what is hidden is not written', async () => {
  const { bytes } = await write(
    svg('text', { x: 60, y: 60 }, 'seen'),
    svg('text', { x: 60, y: 80, opacity: 0 }, 'unseen'),
    svg('g', { display: 'none' }, [svg('text', { x: 60, y: 90 }, 'unseen')]),
  );
  expect((await readPdf(bytes)).pages[0]?.texts.map((text) => text.text)).toEqual(['seen']);
});

test('a character that no font has is pictured, named, and shifts nothing', async () => {
  const { bytes, missing } = await write(
    svg('text', { x: 60, y: 60, 'font-size': 10 }, '№5'),
    svg('text', { x: 60, y: 90, 'font-size': 10 }, 'Привет № 7'),
  );
  expect(missing).toEqual(['№', 'П', 'р', 'и', 'в', 'е', 'т']);
  const five = (await readPdf(bytes)).pages[0]?.texts.find((text) => text.text.includes('5'));
  expect(five?.x).toBeCloseTo(60 + 30, 1);
});

test('a word in Cyrillic or Greek stands in one type, also where the text font has some of its letters', async () => {
  const asked: PicturedText[] = [];
  const text = svg('text', { x: 60, y: 60, 'font-family': 'Academico,Georgia' }, 'Я: занятие, Επίπεδο');
  await writePdf([{ ...A4, svg: svg('svg', {}, [text]) }], FACTS, FACES, (each) => {
    asked.push(each);
    return pictured(each);
  });
  expect(asked.map((each) => each.text)).toEqual(['Я', 'занятие', 'Επίπεδο']);
  // The browser is not asked for the embedded font either, which would draw the letters that it has.
  expect(asked.map(({ families }) => families)).toEqual([['Georgia'], ['Georgia'], ['Georgia']]);
});

test('a character that cannot even be pictured keeps its room', async () => {
  const { bytes, missing } = await write(svg('text', { x: 60, y: 60, 'font-size': 10 }, '☃☃5'));
  expect(missing).toEqual(['☃']);
  expect((await readPdf(bytes)).pages[0]?.texts[0]).toMatchObject({ text: '5', x: 70 });
});

test('an element of an unknown kind is refused, never dropped', async () => {
  await expect(write(svg('script', {}, 'alert(1)'))).rejects.toThrow('script');
});

test('a font is embedded, and only the part of it that is used', async () => {
  const { bytes } = await write(
    svg('text', { x: 60, y: 60, 'font-family': 'Bravura,Academico' }, '\ue062'),
    svg('text', { x: 60, y: 90 }, 'Line'),
  );
  const raw = Buffer.from(bytes).toString('latin1');
  expect(raw.match(/\/FontFile3 /g)?.length).toBe(2);
  expect(bytes.length).toBeLessThan(20_000);
});

/** What the file packs, unpacked: the content of the pages and the parts of the fonts. */
const drawingOf = (bytes: Uint8Array): string =>
  Buffer.from(bytes)
    .toString('latin1')
    .split('stream\n')
    .map((part) => Buffer.from(part, 'latin1'))
    .filter((part) => part[0] === 0x78)
    .map((part) => inflateSync(part, { finishFlush: constants.Z_SYNC_FLUSH }).toString('latin1'))
    .join('\n');

describe('a file that is read aloud', () => {
  const sample = setHandout(sampleLesson(0, 'sample'), { header: 'An evening class', numerals: true });
  const file = async () => {
    const layout = layOutForPrint(sample);
    const facts = { title: layout.title, author: 'An evening class', language: 'en' };
    return { layout, ...(await writePdf(drawnPages(layout), facts, FACES, pictured)) };
  };

  test('names every thing in the order in which it stands: headings, paragraphs and figures (pdf.js)', async () => {
    const { bytes, layout } = await file();
    const { structure, info } = await readStructure(bytes);
    expect(info).toMatchObject({ Author: 'An evening class' });
    const roles = structure.flat().map(({ role }) => role);
    expect(roles[0]).toBe('P');
    expect(roles[1]).toBe('H1');
    expect(new Set(roles)).toEqual(new Set(['P', 'H1', 'H2', 'H3', 'Figure']));
    const figures = structure.flat().filter(({ role }) => role === 'Figure');
    expect(figures.every(({ alternative }) => alternative !== undefined && alternative.length > 10)).toBe(
      true,
    );
    expect(layout.pages.length).toBe(structure.length);
  });

  test('tells of every bar its chord and notes, and of a sheet without tab no string and fret', async () => {
    const [sheet] = deriveSheets(sample);
    if (sheet?.kind !== 'line') throw new Error('the sample is a line');
    const said = async (parts: 'both' | 'staff') => {
      const layout = layOutForPrint(setHandout(sample, { blocks: ['music'], parts }));
      const facts = { title: layout.title, author: '', language: 'en' };
      const { bytes } = await writePdf(drawnPages(layout), facts, FACES, pictured);
      return (await readStructure(bytes)).structure
        .flat()
        .map(({ alternative = '' }) => alternative)
        .join(' ');
    };
    const both = await said('both');
    for (const bar of sheet.bars) expect(both).toContain(`Bar ${bar.written.number}, `);
    expect(both).toContain(sheet.bars[0] === undefined ? '' : describeBar(sheet, sheet.bars[0]));
    expect(both).toMatch(/string fret \d/);
    expect(await said('staff')).not.toMatch(/string|fret|finger/);
  });

  test('parts the words of a paragraph’s lines, and those of a chart’s symbols not', async () => {
    const line = (y: number, text: string) => svg('text', { x: 60, y }, text);
    const { bytes } = await write(
      svg('g', { 'data-role': 'P' }, [line(60, 'the chord (an'), line(80, 'arpeggio)'), line(100, 'and on')]),
      svg('g', { 'data-role': 'Figure', 'data-alternative': 'Bar 1, C7' }, [line(120, 'C'), line(120, '7')]),
    );
    // A reader that goes by the structure takes words together that no space parts: three lines, two spaces, two symbols.
    expect(drawingOf(bytes).match(/\bTJ\b/g)?.length).toBe(3 + 2 + 2);
  });

  test('has a paragraph for a step of practice, and none for the box before it', async () => {
    const layout = layOutForPrint(
      setHandout(sample, { blocks: ['practice'], steps: ['Clap it.', 'Loop it.'] }),
    );
    const facts = { title: layout.title, author: '', language: 'en' };
    const { bytes } = await writePdf(drawnPages(layout), facts, FACES, pictured);
    const said = (await readStructure(bytes)).structure.flat().map(({ role }) => role);
    // What the sheet is called, the heading, two steps, the tempo ladder and its tempos.
    expect(said).toEqual(['P', 'H1', 'H2', 'P', 'P', 'P', 'P']);
  });

  test('has a bookmark for every heading, and none for what only goes on', async () => {
    const { bytes } = await file();
    const { bookmarks, structure } = await readStructure(bytes);
    expect(bookmarks.length).toBe(
      structure.flat().filter(({ role }) => role === 'H2' || role === 'H3').length,
    );
    expect(bookmarks.join()).not.toContain('continued');
  });

  test('means by every sign of the music font what Unicode calls so', async () => {
    for (const { code, name } of GLYPHS) {
      const meaning = meaningOf(String.fromCodePoint(code));
      if (name.startsWith('flag') || name.startsWith('bracket')) expect(meaning, name).toBe('');
      else expect(meaning, name).toMatch(/^[^\uE000-\uF8FF]+$/u);
    }
    expect(meaningOf('F♯m7')).toBeNull();
    const { bytes } = await write(
      svg('text', { x: 60, y: 60, 'font-family': 'Bravura' }, '\u{e0a4}\u{e262}'),
    );
    expect(drawingOf(bytes)).toContain('/Span <<\n/ActualText');
  });
});
