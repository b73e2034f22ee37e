/** Files made to harm, and files damaged on their way: whatever the bytes, the answer is a lesson or a sentence. */
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createRandom, type Random } from '../../src/core/base';
import { packMxl, writeMidi, writeMusicXml } from '../../src/core/exchange';
import { parseLesson, printLesson } from '../../src/core/lesson';
import { buildPerformance, type Part } from '../../src/core/performance';
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

const bytesOf = (draw: Random, length: number): Uint8Array =>
  Uint8Array.from({ length }, () => draw.below(256));

function damaged(bytes: Uint8Array, draw: Random): Uint8Array {
  const copy = Uint8Array.from(bytes);
  const times = 1 + draw.below(6);
  for (let time = 0; time < times; time += 1) copy[draw.below(copy.length)] = draw.below(256);
  return draw.below(4) === 0 ? copy.subarray(0, draw.below(copy.length)) : copy;
}

/** Numbers and words that a careless or an evil program writes. */
const VALUES = [
  '0',
  '-1',
  '1e99',
  '99999999999999999999',
  '0.0001',
  'NaN',
  '',
  '-7',
  '1000000',
  'C',
  '64',
  '256',
  '__proto__',
];

/** A document that stays well-formed, with some of its values changed and some of its elements gone or doubled. */
function changed(document: string, draw: Random): string {
  const pieces = document.split(/(?<=>)(?=[^<]*<\/)|(?=<\/)/);
  const times = 1 + draw.below(8);
  for (let time = 0; time < times; time += 1) {
    const place = draw.below(pieces.length);
    const piece = pieces[place] ?? '';
    if (!piece.includes('<')) pieces[place] = VALUES[draw.below(VALUES.length)] ?? '';
  }
  const whole = pieces.join('');
  const elements = [
    ...whole.matchAll(/<(note|attributes|backup|barline|harmony|measure|direction)\b[\s\S]*?<\/\1>\n?/g),
  ];
  const chosen = elements[draw.below(Math.max(1, elements.length))];
  if (chosen === undefined) return whole;
  const after = chosen.index + chosen[0].length;
  return (
    whole.slice(0, chosen.index) + (draw.below(2) === 0 ? chosen[0] + chosen[0] : '') + whole.slice(after)
  );
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
