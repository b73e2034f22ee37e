import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import { composeRequest } from '../../src/core/composing/compose';
import { FEEL_IDS } from '../../src/core/feel';
import { changeLine, keepBar, type Lesson, type LinePiece, linePiece } from '../../src/core/lesson';
import { barBreaches, checkLine, levelLimits } from '../../src/core/line';
import { RULES } from '../../src/core/line/rules/table';
import { commandById, newPencil } from '../../src/core/writing';
import { LINE, typedLesson } from '../support/typed-lessons';

const BARS = 8;

const chord = fc.constantFrom('C', 'F', 'G7', 'Am', 'Dm7', 'Em', 'B♭', 'D7', 'Fm', 'E7', 'Gm');
const byHand = fc.uniqueArray(fc.integer({ min: 0, max: BARS - 1 }), { minLength: 1, maxLength: 3 });
const task = fc.record({
  chords: fc.array(chord, { minLength: BARS, maxLength: BARS }),
  feel: fc.constantFrom(...FEEL_IDS),
  level: fc.constantFrom(0 as const, 1 as const, 2 as const, 3 as const, 4 as const, 5 as const),
});

type Task = typeof task extends fc.Arbitrary<infer Value> ? Value : never;

const lessonOf = ({ chords, feel, level }: Task): Lesson =>
  typedLesson('lesson-1', { chart: `| ${chords.join(' | ')} |`, feel, level });

function pieceOf(lesson: Lesson): LinePiece {
  const piece = linePiece(lesson, LINE);
  if (piece === null) throw new Error('no line');
  return piece;
}

interface Join {
  readonly from: number;
  readonly to: number;
  /** Rules that are broken where the bars meet, by number. */
  readonly broken: readonly number[];
  /** Half steps from the last note of one bar to the first of the other; null where one is silent. */
  readonly leap: number | null;
}

/** What a line plays where a bar written by hand and a composed one meet, round the loop. */
function joinsOf(lesson: Lesson, hand: ReadonlySet<number>): readonly Join[] {
  const piece = pieceOf(lesson);
  const request = composeRequest(lesson, piece);
  const line = piece.bars.map(({ notes }) => notes);
  const breaches = checkLine(request, line);
  return line.flatMap((notes, from) => {
    const to = (from + 1) % BARS;
    if (hand.has(from) === hand.has(to)) return [];
    const alone = new Set(barBreaches(request, line, from).map(({ rule }) => rule));
    const [last, first] = [notes.at(-1), line[to]?.[0]];
    return [
      {
        from,
        to,
        broken: breaches
          .filter(({ bar, rule }) => bar === from && !alone.has(rule) && RULES[rule].meeting !== null)
          .map(({ rule }) => rule),
        leap: last && first ? midiOf(first.pitch) - midiOf(last.pitch) : null,
      },
    ];
  });
}

/** The octave of the composed note that lies nearer to the one by hand, where they are over an octave apart. */
function octaveNearer(lesson: Lesson, hand: ReadonlySet<number>, { from, to, leap }: Join): number | null {
  if (leap === null || Math.abs(leap) <= 12) return null;
  const { bars } = pieceOf(lesson);
  const free = hand.has(from) ? bars[to]?.notes[0] : bars[from]?.notes.at(-1);
  if (free === undefined) return null;
  return midiOf(free.pitch) + 12 * Math.sign(leap) * (hand.has(from) ? -1 : 1);
}

describe('the joins between bars written by hand and composed ones', () => {
  const degree = fc.constantFrom('degree 1', 'degree 3', 'degree 5', 'degree 2', 'degree 8', 'silence');
  const tasks = fc.sample(
    fc.record({
      task,
      byHand,
      keys: fc.array(degree, { minLength: 3, maxLength: 3 }),
      high: fc.boolean(),
    }),
    { numRuns: 12, seed: 15 },
  );
  const composed = tasks.map(({ task: given, byHand: bars, keys, high }) => {
    const before = bars.reduce((lesson, bar) => {
      let at = { lesson, pencil: newPencil(LINE, bar) };
      for (const id of ['degree 1', ...(high ? ['octave up', 'octave up'] : []), ...keys])
        at = commandById(id).gesture(at.lesson, at.pencil);
      return at.lesson;
    }, lessonOf(given));
    return { given, bars: new Set(bars), before, ...composePiece(before, LINE) };
  });

  it('keep the bars note by note', () => {
    for (const { before, lesson, bars } of composed)
      for (const bar of bars) expect(pieceOf(lesson).bars[bar]).toEqual(pieceOf(before).bars[bar]);
  });

  it('leap over an octave only where no octave of the composed note is nearer in the level’s range', () => {
    const far = composed.flatMap(({ given, lesson, bars }) =>
      joinsOf(lesson, bars)
        .flatMap((join) => octaveNearer(lesson, bars, join) ?? [])
        .map((nearer) => ({
          nearer,
          most: levelLimits(given.level).highestMidi,
        })),
    );
    expect(far.filter(({ nearer, most }) => nearer >= 28 && nearer <= most)).toEqual([]);
    expect(far.length).toBeGreaterThan(1);
  });

  it('say of every rule that is broken in them that the bar is kept', () => {
    let told = 0;
    for (const { lesson, bars, remarks } of composed) {
      for (const { from, to, broken } of joinsOf(lesson, bars)) {
        if (broken.length === 0) continue;
        told += 1;
        const way = bars.has(from) ? `out of bar ${from + 1}` : `into bar ${to + 1}`;
        expect(remarks.join('\n')).toContain(`There is no better way ${way}, which is kept as it is.`);
      }
    }
    expect(told).toBeGreaterThan(3);
  });

  it('break no rule where the bars are such as the level writes', () => {
    const given = fc.sample(fc.record({ task, byHand }), { numRuns: 8, seed: 8 });
    let joins = 0;
    for (const { task: asked, byHand: bars } of given) {
      const first = composePiece(lessonOf(asked), LINE).lesson;
      const kept = bars.reduce((lesson, bar) => keepBar(lesson, LINE, bar, true), first);
      const { lesson } = composePiece(
        changeLine(kept, LINE, (piece) => ({ ...piece, seed: piece.seed + 1 })),
        LINE,
      );
      for (const bar of bars)
        expect(pieceOf(lesson).bars[bar]?.notes).toEqual(pieceOf(first).bars[bar]?.notes);
      for (const { from, to, broken } of joinsOf(lesson, new Set(bars))) {
        joins += 1;
        expect(broken, `${JSON.stringify(asked)} ${from} to ${to}`).toEqual([]);
      }
    }
    expect(joins).toBeGreaterThan(16);
  });
});
