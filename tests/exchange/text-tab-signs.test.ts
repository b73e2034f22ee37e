import { expect, it } from 'vitest';
import { writeTextTab } from '../../src/core/exchange';
import { sheetOf } from '../support/score-sheets';

/** The letters are those that players use in text tab: common practice, no source. */
it('types signs by their usual letters, and says what they mean', () => {
  const sheet = sheetOf({
    key: 'G',
    chart: '| G | C |',
    notes:
      "G1/.5{hammer} A1/.5{hammer} G1/1> B1/1{slide,palm_mute} C2/1x | C2/1{slide_from_below} C2/1{slap} D2/1{slide_down} C2/1'{i}",
    over: {
      0: { words: 'dig in', dynamics: [{ at: 0, level: 'p', hairpin: 'crescendo' }] },
      1: { dynamics: [{ at: 0, level: 'f' }] },
    },
  });
  expect(writeTextTab(sheet, 'Signs')).toMatchInlineSnapshot(`
    "Signs
    Line
    G major, 4/4, 126 bpm in the fast count, One drop, eighths swung
    Tuning, lowest string first: E A D G. The lowest line is the lowest string.
    Counting stands below; a dot is a beat that is not struck, a minus where silence
    begins, x a dead note.
    On the strings: h hammer-on, p pull-off, / and \\ slide to the next note, / slide
    in from below, \\ slide out downwards.
    Over the strings: > accent, pm palm mute, S slap, . staccato, i index finger.
    Under the counting: dynamics; < grows, > falls, ! ends it.

    Bar 1: dig in
      1                    2
       G                    C
             >   pm              S        . i
    G|--------------------|---------------------|
    D|--------------------|---------------------|
    A|-----------2/---x---|-/3---3---5\\---3-----|
    E|-3h-5p-3------------|---------------------|
       1  &  2   3    4     1    2   3    4
       p<                   f
    "
  `);
});
