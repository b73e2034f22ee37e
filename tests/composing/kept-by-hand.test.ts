import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import {
  type Lesson,
  type LinePiece,
  linePiece,
  newLesson,
  setChartText,
  setFeel,
} from '../../src/core/lesson';
import { commandById, newPencil, type Pencil } from '../../src/core/writing';

const ID = newLesson('lesson-1', 'Kept').pieces[0]?.id ?? '';

const chord = fc.constantFrom('C', 'F', 'G7', 'Am', 'Dm7', 'Em', 'B♭', 'D7', 'Fm', 'E7');
/** A chart of eight bars, the bars that are written by hand, and what is written in each: degrees and lengths. */
const cases = fc.record({
  chords: fc.array(chord, { minLength: 8, maxLength: 8 }),
  feel: fc.constantFrom('early-ska' as const, 'rocksteady' as const, 'walking-swing' as const),
  byHand: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 3 }),
  keys: fc.array(fc.constantFrom('degree 1', 'degree 3', 'degree 5', 'degree 2', 'silence'), {
    minLength: 4,
    maxLength: 4,
  }),
});

function written(lesson: Lesson, bars: readonly number[], keys: readonly string[]): Lesson {
  return bars.reduce((before, bar) => {
    let state: { readonly lesson: Lesson; readonly pencil: Pencil } = {
      lesson: before,
      pencil: newPencil(ID, bar),
    };
    // Its first note is certain, so that there is something to lead to.
    for (const id of ['degree 1', ...keys.slice(1)])
      state = commandById(id).gesture(state.lesson, state.pencil);
    return state.lesson;
  }, lesson);
}

const pieceOf = (lesson: Lesson): LinePiece => {
  const piece = linePiece(lesson, ID);
  if (piece === null) throw new Error('no line');
  return piece;
};

/** Half steps from the last note of a bar to the first of the next; null where one of them is silent. */
function seam(piece: LinePiece, bar: number): number | null {
  const last = piece.bars[bar]?.notes.at(-1);
  const first = piece.bars[bar + 1]?.notes[0];
  return last === undefined || first === undefined
    ? null
    : Math.abs(midiOf(first.pitch) - midiOf(last.pitch));
}

/** Each case once composed around its bars. */
const composed = fc.sample(cases, { numRuns: 24, seed: 15 }).map(({ chords, feel, byHand, keys }) => {
  const empty = setFeel(
    setChartText(newLesson('lesson-1', 'Kept'), ID, `| ${chords.join(' | ')} |`),
    ID,
    feel,
  );
  const hand = written(empty, byHand, keys);
  return { chords, byHand, before: pieceOf(hand), after: pieceOf(composePiece(hand, ID).lesson) };
});

const share = (steps: readonly number[], test: (step: number) => boolean): number =>
  steps.filter(test).length / steps.length;

describe('composing around bars written by hand', () => {
  it('leaves them as they are, note by note, and fills the others', () => {
    for (const { byHand, before, after } of composed) {
      for (const bar of byHand) expect(after.bars[bar]).toEqual(before.bars[bar]);
      const silent = after.bars.filter(({ notes }, index) => !byHand.includes(index) && notes.length === 0);
      expect(silent.length).toBeLessThanOrEqual(1);
    }
  });

  it('leads into them as into any change: as near, as seldom on the note itself, never by a jolt', () => {
    const into = { kept: [] as number[], composed: [] as number[] };
    for (const { chords, byHand, after } of composed) {
      for (let bar = 0; bar < 7; bar += 1) {
        const step = seam(after, bar);
        if (chords[bar] === chords[bar + 1] || step === null || byHand.includes(bar)) continue;
        (byHand.includes(bar + 1) ? into.kept : into.composed).push(step);
      }
    }
    const near = (step: number) => step > 0 && step <= 2;
    expect(into.kept.length).toBeGreaterThan(12);
    expect(into.composed.length).toBeGreaterThan(40);
    expect(share(into.kept, near)).toBeGreaterThanOrEqual(share(into.composed, near) - 0.15);
    expect(share(into.kept, (step) => step === 0)).toBeLessThanOrEqual(
      share(into.composed, (step) => step === 0) + 0.1,
    );
    expect(Math.max(...into.kept)).toBeLessThanOrEqual(12);
  });
});

/** A pickup, a repeat with two endings and a last part; bars count from the pickup, 0. */
const WAYS = '(2) | C7 |\n|: F | Dm | Gm7 | 1. C7 :| 2. C7 |\nB:\n| B♭ | C7 | F | F |';

describe('around bars by hand in a chart with a pickup and endings', () => {
  const cases = fc
    .sample(
      fc.record({
        byHand: fc.uniqueArray(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 3 }),
        keys: fc.array(fc.constantFrom('degree 1', 'degree 3', 'degree 5'), { minLength: 2, maxLength: 2 }),
        emptied: fc.integer({ min: 1, max: 9 }),
        feel: fc.constantFrom('early-ska' as const, 'rocksteady' as const, 'walking-swing' as const),
      }),
      { numRuns: 10, seed: 15 },
    )
    .map(({ byHand, keys, emptied, feel }) => {
      const empty = setFeel(setChartText(newLesson('lesson-1', 'Kept'), ID, WAYS), ID, feel);
      const hand = written(empty, byHand, keys);
      const start = { lesson: hand, pencil: newPencil(ID, emptied) };
      // A bar is emptied by hand, too: what stood there is gone, and the silence is meant.
      const once = commandById('degree 1').gesture(start.lesson, start.pencil);
      const gone = commandById('empty bar').gesture(once.lesson, newPencil(ID, emptied));
      return {
        byHand: [...new Set([...byHand, emptied])],
        emptied,
        before: pieceOf(gone.lesson),
        after: pieceOf(composePiece(gone.lesson, ID).lesson),
      };
    });

  it('keeps them, the empty one too, and composes all others', () => {
    for (const { byHand, emptied, before, after } of cases) {
      expect(after.bars).toHaveLength(10);
      for (const bar of byHand) expect(after.bars[bar]).toEqual(before.bars[bar]);
      expect(after.bars[emptied]?.notes).toEqual([]);
      const silent = after.bars.filter(({ notes }, index) => !byHand.includes(index) && notes.length === 0);
      expect(silent.length).toBeLessThanOrEqual(1);
    }
  });

  it('comes into every bar that can follow within an octave, and mostly by a step or by the chord', () => {
    // The first ending leads back to the repeat's beginning, and the bar before the endings into both of them.
    const seams = [...Array.from({ length: 9 }, (_, bar) => [bar, bar + 1]), [4, 1], [3, 5]].filter(
      ([from, to]) => !(from === 4 && to === 5),
    );
    const into: number[] = [];
    for (const { byHand, after } of cases)
      for (const [from = 0, to = 0] of seams) {
        const last = after.bars[from]?.notes.at(-1);
        const first = after.bars[to]?.notes[0];
        if (byHand.includes(from) || !byHand.includes(to) || !last || !first) continue;
        into.push(Math.abs(midiOf(first.pitch) - midiOf(last.pitch)));
      }
    expect(into.length).toBeGreaterThan(10);
    expect(Math.max(...into)).toBeLessThanOrEqual(12);
    expect(share(into, (step) => step > 0 && step <= 5)).toBeGreaterThan(0.6);
  });
});
