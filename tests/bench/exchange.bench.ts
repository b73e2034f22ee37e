import { strToU8 } from 'fflate';
import { describe } from 'vitest';
import { bpm } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import {
  loadReader,
  packMxl,
  writeLessonLink,
  writeMidi,
  writeMusicXml,
  writeTextTab,
} from '../../src/core/exchange';
import {
  deriveSheet,
  type Lesson,
  type LineSheet,
  newLesson,
  setChartText,
  setTempo,
} from '../../src/core/lesson';
import { buildPerformance } from '../../src/core/performance';
import { PARTS } from '../../src/core/playing';
import { codeOf } from '../../src/handout/code/lesson-code';
import { AT_ONCE, benchWithin, FEW, UNBROKEN } from './within';

const PIECE = 'piece-1';
const { readFile } = await loadReader();

/** A composed line over so many bars, a multiple of eight. */
function lessonOf(bars: number): Lesson {
  const lines = '| F | Dm | Gm | C7 | F | F7 | Bb C | F |\n'.repeat(bars / 8);
  const charted = setChartText(newLesson('bench', 'Bench'), PIECE, lines);
  return composePiece(setTempo(charted, PIECE, bpm(126)), PIECE).lesson;
}

function sheetOf({ pieces, instrument }: Lesson): LineSheet {
  const [piece] = pieces;
  const sheet = piece && deriveSheet(piece, instrument, 'letters');
  if (sheet?.kind !== 'line') throw new Error('no line');
  return sheet;
}

for (const [bars, budget, options] of [
  [32, AT_ONCE, {}],
  [512, UNBROKEN, FEW],
] as const) {
  const lesson = lessonOf(bars);
  const sheet = sheetOf(lesson);
  const performance = buildPerformance(sheet, { tempo: sheet.tempo, countIn: 1, passage: null });
  const xml = writeMusicXml(sheet, lesson.title);
  const partsOf = { performance, sheet, title: lesson.title, parts: new Set(PARTS) };

  describe(`exports of ${bars} bars`, () => {
    const written = [
      ['MusicXML', () => writeMusicXml(sheet, lesson.title)],
      ['MusicXML, packing only', () => packMxl(xml)],
      ['MIDI of all parts', () => writeMidi(partsOf)],
      ['text tab', () => writeTextTab(sheet, lesson.title)],
      ['lesson link', () => writeLessonLink(lesson, 'https://example.org/')],
      [
        'QR code of the link, or the sentence that it does not fit',
        () => codeOf(lesson, 'https://example.org/'),
      ],
    ] as const;
    for (const [name, write] of written)
      benchWithin({ what: `${bars} bars written: ${name}`, name, budget }, () => void write(), options);
  });

  describe(`reading of ${bars} bars`, () => {
    const files = {
      MusicXML: strToU8(xml),
      'MusicXML, compressed': packMxl(xml),
      MIDI: writeMidi(partsOf),
    };
    for (const [name, file] of Object.entries(files))
      benchWithin(
        { what: `${bars} bars read: ${name}`, name, budget: UNBROKEN },
        () => void readFile(file, 'Bench'),
        options,
      );
  });
}
