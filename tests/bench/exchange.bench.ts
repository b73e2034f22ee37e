import { strToU8 } from 'fflate';
import { bench, describe } from 'vitest';
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

for (const bars of [32, 512]) {
  const lesson = lessonOf(bars);
  const sheet = sheetOf(lesson);
  const performance = buildPerformance(sheet, { tempo: sheet.tempo, countIn: 1, passage: null });
  const xml = writeMusicXml(sheet, lesson.title);

  describe(`exports of ${bars} bars`, () => {
    bench('MusicXML', () => {
      writeMusicXml(sheet, lesson.title);
    });
    bench('MusicXML, packing only', () => {
      packMxl(xml);
    });
    bench('MIDI of all parts', () => {
      writeMidi({ performance, sheet, title: lesson.title, parts: new Set(PARTS) });
    });
    bench('text tab', () => {
      writeTextTab(sheet, lesson.title);
    });
    bench('lesson link', () => {
      writeLessonLink(lesson, 'https://example.org/');
    });
    bench('QR code of the link, or the sentence that it does not fit', () => {
      codeOf(lesson, 'https://example.org/');
    });
  });

  const plain = strToU8(xml);
  const packed = packMxl(xml);
  const midi = writeMidi({ performance, sheet, title: lesson.title, parts: new Set(PARTS) });
  describe(`reading of ${bars} bars`, () => {
    for (const [name, file] of [
      ['MusicXML', plain],
      ['MusicXML, compressed', packed],
      ['MIDI', midi],
    ] as const) {
      bench(name, () => {
        readFile(file, 'Bench');
      });
    }
  });
}
