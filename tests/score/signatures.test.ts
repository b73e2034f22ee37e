/** Clefs, key and time signatures are worked out from tables; they stand where the engraving library draws them. */
import { Clef, KeySignature, Stave, TimeSignature } from 'vexflow/core';
import { expect, test } from 'vitest';
import type { Mark } from '../../src/score/ink';
import { type ClefKind, clefInk, keyInk, timeInk } from '../../src/score/signs/signatures';
import { InkContext } from '../../src/score/vexflow/ink-context';
import { measureByTables } from '../../src/score/vexflow/ruler';

measureByTables();

const CLEFS: readonly ClefKind[] = ['bass', 'treble', 'percussion'];
const KEYS = ['Cb', 'Gb', 'Db', 'Ab', 'Eb', 'Bb', 'F', 'C', 'G', 'D', 'A', 'E', 'B', 'F#', 'C#'];

type Sign = Clef | KeySignature | TimeSignature;

function drawnByLibrary(sign: Sign, clef: string): readonly Mark[] {
  const context = new InkContext();
  sign.setStave(new Stave(0, -40, 1000).setClef(clef).setContext(context));
  sign.setContext(context).setX(0);
  sign.draw();
  return context.marks;
}

/** What is drawn where, by hundredths of a unit. */
const placed = (marks: readonly Mark[]): readonly unknown[] =>
  marks.map((mark) =>
    mark.kind === 'text'
      ? { text: mark.text, size: mark.size, font: mark.font, x: mark.x.toFixed(2), y: mark.y.toFixed(2) }
      : mark,
  );

const expectSame = (own: readonly Mark[], sign: Sign, clef = 'bass'): void => {
  expect(own.length).toBeGreaterThan(0);
  expect(placed(own)).toEqual(placed(drawnByLibrary(sign, clef)));
};

test.each(CLEFS)('the clef of %s', (kind) => {
  expectSame(clefInk(kind), new Clef(kind), kind);
});

test.each(CLEFS)('every key in the clef of %s, and the naturals that take it back', (clef) => {
  for (let fifths = -7; fifths <= 7; fifths += 1) {
    if (fifths === 0) continue;
    const name = KEYS[fifths + 7] ?? '';
    expectSame(keyInk(fifths, 0, clef), new KeySignature(name), clef);
    expectSame(keyInk(0, fifths, clef), new KeySignature('C', name), clef);
  }
  expect(keyInk(0, 0, clef)).toEqual([]);
});

test('metres of one figure and of two', () => {
  for (const unit of [2, 4, 8] as const)
    for (let count = 1; count <= 24; count += 1)
      expectSame(timeInk({ count, unit }), new TimeSignature(`${count}/${unit}`));
});
