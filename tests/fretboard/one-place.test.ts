import { expect, test } from 'vitest';
import { ticks } from '../../src/core/base';
import { createInstrument, DEFAULT_HAND, fingerLine, type LineContext } from '../../src/core/fretboard';
import { run, written } from './lines';

const BAR = 3840;
const context = (bars: number, muted: boolean): LineContext => ({
  ticksPerSecond: 1920,
  loop: ticks(bars * BAR),
  muted,
  bars: Array.from({ length: bars }, (_, index) => ({
    start: ticks(index * BAR),
    end: ticks((index + 1) * BAR),
  })),
});

/** D A D A and a breath, in eighths: the second A must stop, the first leads on. */
const figure = [
  ...run([38, 33, 38, 33]),
  ...run([33, 38, 37]).map((note) => ({ ...note, start: ticks(note.start + 5 * 480) })),
];
const bass = createInstrument();

test('a pitch that may not ring on has one place in a bar, where that costs the hand little', () => {
  const { bars: _, ...unbarred } = context(1, true);
  expect(written(fingerLine(figure, bass, DEFAULT_HAND, unbarred).notes)).toMatch(/^A5\.\d A0\.0 A5\.\d E5/);
  expect(written(fingerLine(figure, bass, DEFAULT_HAND, context(1, true)).notes)).toMatch(
    /^A5\.\d E5\.\d A5\.\d E5\.\d E5\.\d A5\.\d A4\.\d$/,
  );
});

test('no other pitch goes to and fro in its place', () => {
  const next = run([35, 47, 35, 47, 45, 42, 38, 38]).map((note) => ({
    ...note,
    start: ticks(note.start + BAR),
  }));
  const notes = [...figure, ...next];
  const first = written(fingerLine(notes, bass, DEFAULT_HAND, context(2, true)).notes);
  expect(first.split(' ').slice(0, 7).join(' ')).toMatch(/^(A5\.\d E5\.\d ){2}E5\.\d A5\.\d A4\.\d$/);
});

test('where strings may ring on, an open one is free to carry a shift', () => {
  expect(written(fingerLine(figure, bass, DEFAULT_HAND, context(1, false)).notes)).toContain('A0.0');
});
