/** Files made to harm, and files damaged on their way: whatever the bytes, the answer is a lesson or a sentence. */
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/base';
import { packMxl, writeMidi, writeMusicXml } from '../../src/core/exchange';
import { parseLesson, printLesson } from '../../src/core/lesson';
import { buildPerformance } from '../../src/core/performance';
import type { Part } from '../../src/core/playing';
import { bytesOf, changed, damaged } from '../support/damage';
import { randomSheets } from './random-sheets';
import { lineSheetOf, readBack, refusal } from './read-back';

const SEED = Number(process.env.HOSTILE_SEED ?? 7);
const RUNS = Number(process.env.HOSTILE_RUNS ?? 60);

const [sheet] = randomSheets(1);
if (!sheet) throw new Error('no sheet');
const xml = writeMusicXml(sheet, 'Lesson');
const midi = writeMidi({
  performance: buildPerformance(sheet, { tempo: sheet.tempo, countIn: 1, passage: null }),
  sheet,
  title: 'Lesson',
  parts: new Set<Part>(['bass', 'organ']),
});

/** What a sentence must never be: that would be a fault of the program, not of the file. */
const UNFORESEEN = /not foreseen/;

/** Reads whatever it is; a lesson must be one, and must be derived. Gives whether there was one. */
function survives(file: string | Uint8Array): boolean {
  const sentence = refusal(file);
  if (sentence !== null) {
    expect(sentence).not.toMatch(UNFORESEEN);
    expect(sentence).toMatch(/\.$/);
    return false;
  }
  const { lesson, sentences } = readBack(file);
  expect(sentences.length).toBeGreaterThan(0);
  expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
  expect(lineSheetOf(lesson).bars.length).toBeGreaterThan(0);
  return true;
}

describe('whatever a file of another program holds', () => {
  it('random bytes are refused with a sentence', () => {
    const draw = createRandom(SEED);
    for (let run = 0; run < RUNS; run += 1) {
      const random = bytesOf(draw, draw.below(3000));
      survives(random);
      survives(Uint8Array.from([0x50, 0x4b, 3, 4, ...random]));
      survives(Uint8Array.from([...strToU8('<score-partwise>'), ...random]));
      survives(Uint8Array.from([...midi.subarray(0, 14), ...strToU8('MTrk'), 0, 0, 8, 0, ...random]));
    }
  });

  it('damaged MusicXML, plain and compressed, is read or refused', () => {
    const draw = createRandom(SEED);
    let read = 0;
    for (let run = 0; run < RUNS; run += 1) {
      if (survives(damaged(strToU8(xml), draw))) read += 1;
      if (survives(damaged(packMxl(xml), draw))) read += 1;
      if (survives(changed(xml, draw))) read += 1;
    }
    process.stdout.write(`Hostile MusicXML: ${3 * RUNS} with seed ${SEED}, ${read} of them read.\n`);
    expect(read).toBeGreaterThan(0);
  });

  it('damaged MIDI is read or refused', () => {
    const draw = createRandom(SEED);
    let read = 0;
    for (let run = 0; run < RUNS; run += 1) if (survives(damaged(midi, draw))) read += 1;
    process.stdout.write(`Hostile MIDI: ${RUNS} with seed ${SEED}, ${read} of them read.\n`);
    expect(read).toBeGreaterThan(0);
  });
});
