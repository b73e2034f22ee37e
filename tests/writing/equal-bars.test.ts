import fc from 'fast-check';
import { expect, it } from 'vitest';
import { writeMidi, writeMusicXml } from '../../src/core/exchange';
import { deriveSheet, type Lesson, type LineSheet, linePiece } from '../../src/core/lesson';
import { buildPerformance } from '../../src/core/performance';
import { lineSheetOf, readBack } from '../exchange/read-back';
import { Hand } from './hand';

/** What may be pressed in a bar. */
const keys = fc.array(
  fc.constantFrom('1', '2', '3', '5', '7', '8', '0', ',', '[', ']', 'x', 'k', 'y', "'", 'Shift+ArrowUp'),
  { minLength: 3, maxLength: 9 },
);

const BARS = 8;

/** Three bars by hand, each again later as it is, in any order: the hand comes to equal bars from different ones. */
const hands = fc
  .tuple(
    fc.array(keys, { minLength: 3, maxLength: 3 }),
    fc.array(fc.nat({ max: 2 }), { minLength: BARS, maxLength: BARS }),
  )
  .map(([kinds, order]): Lesson => {
    const hand = new Hand(`|${' F |'.repeat(BARS)}`);
    kinds.forEach((pressed, bar) => {
      hand.pencil = { ...hand.pencil, bar, tick: 0, from: null, next: null };
      for (const key of pressed) hand.press(key);
    });
    const piece = linePiece(hand.lesson, hand.pencil.pieceId);
    if (!piece) throw new Error('no line');
    const bars = piece.bars.map(({ over: _, ...bar }, index) => ({
      ...bar,
      // Each bar whole by itself, so that those which come again are equal.
      notes: (piece.bars[order[index] ?? 0]?.notes ?? []).filter(
        ({ tiedOn, marks }) => tiedOn !== true && marks?.exit === undefined,
      ),
    }));
    const pieces = hand.lesson.pieces.map((each) => (each === piece ? { ...piece, bars } : each));
    return { ...hand.lesson, pieces };
  });

const sheetOf = (lesson: Lesson): LineSheet => {
  const sheet = deriveSheet(lesson.pieces[0] ?? fail(), lesson.instrument, lesson.noteNames);
  return sheet.kind === 'line' ? sheet : fail();
};

const fail = (): never => {
  throw new Error('no line');
};

/** Bars that are equal in their notes, and how each is fingered. */
function fingerings(sheet: LineSheet): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const { notes } of sheet.bars) {
    const bar = JSON.stringify(notes.map(({ note }) => note));
    const played = notes
      .map(
        ({ fingered: at }) =>
          at && `${at.string}/${at.fret} ${at.finger} ${at.finger === 0 ? '' : at.position}`,
      )
      .join();
    found.set(bar, (found.get(bar) ?? new Set()).add(played));
  }
  return found;
}

it('fingers equal bars alike: those written by hand, and those of a file that is read', () => {
  let equal = 0;
  fc.assert(
    fc.property(hands, (lesson) => {
      const sheet = sheetOf(lesson);
      const performance = buildPerformance(sheet, { tempo: sheet.tempo, countIn: 0, passage: null });
      const parts = new Set(['bass'] as const);
      const sheets = [
        sheet,
        lineSheetOf(readBack(writeMidi({ performance, sheet, title: 'Equal', parts })).lesson),
        lineSheetOf(readBack(writeMusicXml(sheet, 'Equal')).lesson),
      ];
      for (const each of sheets)
        for (const [bar, played] of fingerings(each)) {
          expect([...played], bar).toHaveLength(1);
          if (played.size < each.bars.length && bar !== '[]') equal += 1;
        }
    }),
    { seed: 15, numRuns: 30 },
  );
  expect(equal).toBeGreaterThan(60);
});
