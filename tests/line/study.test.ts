import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barTicks, beatTicks, type LineNote, midiOf, samePitch } from '../../src/core/base';
import { playOrder } from '../../src/core/chart';
import {
  analyseLine,
  type LineNotes,
  type LineRequest,
  type LineStudy,
  studyLine,
} from '../../src/core/line';
import { line, request } from './notation';
import { randomLines } from './random-lines';

const CHART = '| C | F | G7 | C |';
const studied = (notes: string): LineStudy => {
  const study = studyLine(request(CHART, { tempo: 120 }), line(notes));
  if (study === null) throw new Error('The line has notes.');
  return study;
};

/** Whether a note goes on from a bar that can come before; written anew from the chart's order of playing. */
function isHeld(asked: LineRequest, bars: LineNotes, bar: number, note: LineNote | undefined): boolean {
  if (note?.start !== 0) return false;
  const order = playOrder(asked.chart);
  return order.some((each, index) => {
    const before = order[(index + order.length - 1) % order.length] ?? -1;
    const last = bars[before]?.at(-1);
    return each === bar && last?.tiedOn === true && midiOf(last.pitch) === midiOf(note.pitch);
  });
}

/** Each claim computed again, by other means than the study's own. */
function holds(asked: LineRequest, bars: LineNotes, study: LineStudy): void {
  const all = bars.flatMap((notes, bar) =>
    notes.map((note, index) => ({ note, bar, held: index === 0 && isHeld(asked, bars, bar, note) })),
  );
  const struck = all.filter(({ held }) => !held);
  expect(study.notes).toBe(struck.length);
  expect(Object.values(study.functions).reduce((sum, count) => sum + count, 0)).toBe(struck.length);

  const time = asked.chart.bars.reduce((sum, { metre }) => sum + barTicks(metre), 0);
  const sounding = all.reduce((sum, { note }) => sum + note.duration, 0);
  expect(study.silence).toBeCloseTo(1 - sounding / time, 9);
  expect(study.silentOnes).toEqual(
    bars.flatMap((notes, bar) =>
      notes[0] && notes[0].start > 0 && !asked.chart.bars[bar]?.pickup ? [bar] : [],
    ),
  );
  const heights = all.map(({ note }) => midiOf(note.pitch));
  expect([midiOf(study.lowest), midiOf(study.highest)]).toEqual([Math.min(...heights), Math.max(...heights)]);
  expect(study.range).toBe(Math.max(...heights) - Math.min(...heights));

  // From note to note as they are played; what a repeat brings again is one move.
  const played = playOrder(asked.chart).flatMap((bar) => all.filter((each) => each.bar === bar));
  const leaps = played.slice(1).flatMap(({ note }, index) => {
    const from = played[index]?.note;
    const size = from === undefined ? 0 : Math.abs(midiOf(note.pitch) - midiOf(from.pitch));
    return from !== undefined && size > 2 ? [{ from, note, size }] : [];
  });
  const apart = leaps.filter(
    ({ from, note }, index) => leaps.findIndex((each) => each.from === from && each.note === note) === index,
  );
  expect(study.leaps.count).toBe(apart.length);
  expect(study.leaps.widest).toBe(Math.max(0, ...leaps.map(({ size }) => size)));
  expect(study.silentBars).toEqual(bars.flatMap((notes, bar) => (notes.length === 0 ? [bar] : [])));

  const analyses = analyseLine(asked, bars);
  for (const { technique, bars: shown } of study.techniques)
    expect(shown).toEqual(
      analyses.flatMap(({ techniques }, bar) => (techniques.includes(technique) ? [bar] : [])),
    );

  const order = playOrder(asked.chart);
  const seconds =
    (order.reduce((sum, bar) => sum + barTicks(asked.chart.bars[bar]?.metre ?? asked.chart.metre), 0) /
      (beatTicks(asked.chart.metre) * asked.tempo)) *
    60;
  const strokes = order.reduce((sum, bar) => sum + struck.filter((each) => each.bar === bar).length, 0);
  expect(study.load.notesPerMinute).toBeCloseTo((strokes / seconds) * 60, 6);
  expect(study.load.run.seconds).toBeLessThanOrEqual(seconds + 1e-9);

  // Parts of one letter without a stroke are the same; a new letter shares no more than half of its rhythms with an earlier one.
  const shape = (part: LineStudy['form'][number]) =>
    part.bars.map((bar) =>
      JSON.stringify([
        barTicks(asked.chart.bars[bar]?.metre ?? asked.chart.metre),
        struck.filter((each) => each.bar === bar).map(({ note }) => note.start),
        analyses[bar]?.notes.map(({ degreeText }) => degreeText),
      ]),
    );
  for (const one of study.form)
    for (const other of study.form)
      if (one.letter === other.letter && !one.letter.includes('′')) expect(shape(one)).toEqual(shape(other));
}

describe('what is said of any line', () => {
  test('is what its notes say', () => {
    fc.assert(
      fc.property(randomLines, ({ asked, bars }) => {
        const study = studyLine(asked, bars);
        if (study === null) expect(bars.every((notes) => notes.length === 0)).toBe(true);
        else holds(asked, bars, study);
      }),
      { numRuns: 30, seed: 20261129 },
    );
  });
});

describe('a line is studied', () => {
  const LINE = 'C2 . E2 . G1 . E1 . | - . F1 A1 C2 . A1 . | C2 . E2 . G1 . E1 . | - . F1 A1 C2 . - G1';

  test('its silence, range and leaps', () => {
    const study = studied(LINE);
    expect(study.silence).toBeCloseTo(5 / 32);
    expect(study.silentOnes).toEqual([1, 3]);
    expect(study.range).toBe(12);
    expect(study.leaps.widest).toBe(9);
    expect(samePitch(study.lowest, { letter: 'E', alteration: 0, octave: 1 })).toBe(true);
  });

  test('its form, bar by bar', () => {
    expect(studied(LINE).form.map(({ letter }) => letter)).toEqual(['a', 'b', 'a′', 'c']);
    const same = 'C2 . E2 . G1 . E1 . | F1 . A1 . C2 . A1 .';
    expect(
      studied(`${same} | ${same}`)
        .form.map(({ letter }) => letter)
        .slice(0, 2),
    ).toEqual(['a', 'a']);
  });

  test('its syncopation, over the bar line too', () => {
    expect(
      studied('C2 . C2 . C2 . C2 . | F1 . F1 . F1 . F1 . | G1 . . . G1 . . . | C2 . . . . . . .').syncopation,
    ).toEqual([0, 0, 0, 0]);
    // A note on the & of four before an empty one: from −3 to 0.
    expect(
      studied('C2 . - - - - - F1 | - - F1 - F1 - - - | G1 . . . . . . . | C2 . . . . . . .').syncopation[0],
    ).toBe(3);
  });

  test('its load on the hand', () => {
    const { run, notesPerMinute } = studied(
      'C2 . C2 . C2 . C2 . | F1 . F1 . - - - - | G1 . - - - - - - | C2 . . . - - - -',
    ).load;
    expect(run.notes).toBe(6);
    expect(run.seconds).toBeCloseTo(3);
    expect(notesPerMinute).toBeCloseTo(60);
  });

  test('an unwritten line is not', () => {
    expect(studyLine(request(CHART), [[], [], [], []])).toBeNull();
  });
});
