import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import { createRandom } from '../../src/core/base';
import { packMxl, writeMidi, writeMusicXml, writeTextTab } from '../../src/core/exchange';
import { toBase64Url } from '../../src/core/exchange/link/base64url';
import { buildPerformance } from '../../src/core/performance';
import type { Part } from '../../src/core/playing';
import { randomSheets } from '../exchange/random-sheets';
import { bytesOf, changed, damaged, scribbled } from './damage';
import { garbledLessons, mutatedLessons } from './mutated-lessons';

const lessons = fc.oneof({ weight: 5, arbitrary: mutatedLessons }, { weight: 1, arbitrary: garbledLessons });

/** How many real files there are to be damaged. */
const SOURCES = 40;

/** A tab as people type it, without the words of our own. */
const FOREIGN_TAB = `Walk to the quay
bpm 96

G|----------------|----5h7---------|
D|--------0-2-----|5-7-----7p5-----|
A|0-2-3-------3-2-|------------7/5-|  x2
E|----------------|----------------|

G|------------|--------(4)-|
D|2---x---2---|4-----------|
A|----x-------|------------|
E|--------3~~~|----------0-|
`;

const lessonOf = (seed: number): string => fc.sample(lessons, { numRuns: 1, seed })[0] ?? '';

/** Files and links as they come damaged, or made to harm: for every seed another one. */
export function damagedFiles() {
  const sources = randomSheets(SOURCES).map((sheet) => ({
    xml: writeMusicXml(sheet, 'Lesson'),
    tab: writeTextTab(sheet, 'Lesson'),
    midi: writeMidi({
      performance: buildPerformance(sheet, { tempo: sheet.tempo, countIn: 1, passage: null }),
      sheet,
      title: 'Lesson',
      parts: new Set<Part>(['bass', 'organ', 'drums']),
    }),
  }));
  const [first] = sources;
  if (first === undefined) throw new Error('no sheet');
  return {
    lesson: lessonOf,
    link: (seed: number): string => {
      const draw = createRandom(seed);
      const packed = toBase64Url(deflateSync(strToU8(lessonOf(seed))));
      const at = draw.below(packed.length);
      const cut = draw.below(3) === 0 ? packed.slice(0, at) + packed.slice(at + draw.below(3)) : packed;
      return `https://example.org/#lesson=${cut}`;
    },
    musicxml: (seed: number): Uint8Array => {
      const draw = createRandom(seed);
      const { xml } = sources[draw.below(sources.length)] ?? first;
      if (draw.below(6) > 0) return strToU8(changed(xml, draw));
      return damaged(draw.below(2) === 0 ? packMxl(xml) : strToU8(xml), draw);
    },
    tab: (seed: number): Uint8Array => {
      const draw = createRandom(seed);
      const { tab } = sources[draw.below(sources.length)] ?? first;
      const text = strToU8(scribbled(draw.below(3) === 0 ? FOREIGN_TAB : tab, draw));
      return draw.below(10) === 0 ? damaged(text, draw) : text;
    },
    midi: (seed: number): Uint8Array => {
      const draw = createRandom(seed);
      const { midi } = sources[draw.below(sources.length)] ?? first;
      if (draw.below(10) > 0) return damaged(midi, draw);
      return Uint8Array.from([
        ...midi.subarray(0, 14),
        ...strToU8('MTrk'),
        0,
        0,
        8,
        0,
        ...bytesOf(draw, 3000),
      ]);
    },
  };
}
