import { describe, expect, it } from 'vitest';
import { barTicks, beatTicks, marksOf, samePitch } from '../../src/core/base';
import { type Harmony, harmonyText, playOrder } from '../../src/core/chart';
import { packMxl, writeMusicXml } from '../../src/core/exchange';
import { deriveSheets, type LineSheet, SAMPLE_TITLES, sampleLesson } from '../../src/core/lesson';
import { keySignature } from '../../src/core/theory';
import { heardLine } from './expected';
import { randomSheets } from './random-sheets';
import { lineSheetOf, readBack } from './read-back';
import { waySheets } from './way-sheets';

/** The harmonies of a sheet as `symbol@start`, bar by bar; what is no chord symbol is words to a reader, and no chord. */
function harmonies(sheet: LineSheet): readonly string[] {
  let before = 'N.C.';
  const textOf = (harmony: Harmony): string => {
    if (harmony.kind !== 'unknown') before = harmonyText(harmony);
    return before;
  };
  return sheet.bars.map(({ written }) =>
    written.spans
      .map((span) => ({ text: textOf(span.harmony), start: span.start }))
      .filter(({ text }, index, all) => text !== all[index - 1]?.text)
      .map(({ text, start }) => `${text}@${start}`)
      .join(' '),
  );
}

/** Notes as written; a tie that no bar takes up is none. */
function writtenNotes(sheet: LineSheet): readonly unknown[] {
  const order = playOrder(sheet.chart);
  const holds = (bar: number): boolean =>
    order.some((each, place) => {
      const last = sheet.bars[bar]?.notes.at(-1)?.note;
      const first = sheet.bars[order[place + 1] ?? -1]?.notes[0]?.note;
      return each === bar && last && first?.start === 0 && samePitch(last.pitch, first.pitch);
    });
  return sheet.bars.map(({ notes }, bar) =>
    notes.map(({ note, fingered }) => ({
      start: note.start,
      duration: note.duration,
      pitch: note.pitch,
      tied: note.tiedOn === true && holds(bar),
      marks: marksOf(note),
      place: fingered && `${fingered.string}/${fingered.fret} ${fingered.finger}`,
    })),
  );
}

const musicOf = (sheet: LineSheet) => ({
  name: sheet.name,
  feel: sheet.feel.id,
  notes: writtenNotes(sheet),
  heard: heardLine(sheet).map(({ start, duration, midi }) => `${start} ${duration} ${midi}`),
  chords: harmonies(sheet),
  lengths: sheet.bars.map(({ written }) => barTicks(written.metre)),
  pickups: sheet.bars.map(({ written }) => written.pickup),
  signatures: sheet.bars.map(({ written }) => keySignature(written.key ?? sheet.key)),
  modes: sheet.bars.map(({ written }) => (written.key ?? sheet.key).mode),
  order: playOrder(sheet.chart),
  way: sheet.bars.map(({ written }) => written.navigation ?? []),
  endings: sheet.bars.map(({ written }) => written.ending),
  sections: sheet.bars.map(({ written }, bar) => {
    const section = sheet.chart.sections[written.section];
    return section?.start === bar && section.name !== null;
  }),
  dynamics: sheet.bars.map(({ dynamics = [] }) => dynamics),
  // A chord that was not understood is words in the file, and comes back as such.
  words: sheet.bars.map(({ words = '' }) => words.replace(/Zq/g, '').trim()),
  strings: sheet.instrument.openStrings,
  tempo: tempoOf(sheet),
});

/** In beats of the first whole bar, to a half, within what can be played (40 to 220). */
function tempoOf({ bars, metre, tempo }: LineSheet): number {
  const first = bars.find(({ written }) => !written.pickup)?.written.metre ?? metre;
  const told = (tempo * beatTicks(metre)) / beatTicks(first);
  return Math.min(220, Math.max(40, Math.round(told * 2) / 2));
}

const samples: readonly LineSheet[] = SAMPLE_TITLES.flatMap((_, index) =>
  deriveSheets(sampleLesson(index, 'sample')).flatMap((sheet) => (sheet.kind === 'line' ? [sheet] : [])),
);

const cases = [...samples, ...randomSheets(60), ...waySheets].map((sheet, index) => ({
  name: `line ${index}`,
  sheet,
}));

describe('a line that was written as MusicXML and is read again', () => {
  it.each(cases)('$name is the same music', ({ sheet }) => {
    const xml = writeMusicXml(sheet, 'Lesson "1" <b>&');
    const read = readBack(xml);
    expect(readBack(packMxl(xml))).toEqual(read);
    expect(read.lesson.title).toBe('Lesson "1" <b>&');
    expect(musicOf(lineSheetOf(read.lesson))).toEqual(musicOf(sheet));
    expect(read.parts.all).toHaveLength(1);
    expect(read.facts).toMatchObject({ own: true, feel: sheet.feel.id });
  });
});
