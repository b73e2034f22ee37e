import { describe, expect, it } from 'vitest';
import { newHistory, record, undo } from '../../src/app/state/history';
import { createRandom, type LineNote, midiOf, type Random } from '../../src/core/base';
import { rangeOf } from '../../src/core/fretboard';
import { type Lesson, newLesson, readLesson, setChartText, setKey } from '../../src/core/lesson';
import {
  announce,
  COMMANDS,
  type Command,
  type Desk,
  type Done,
  deskOf,
  fitPencil,
  lengthOf,
  mend,
  newPencil,
  notesIn,
  type Pencil,
  wholenessOf,
} from '../../src/core/writing';

const CHARTS = [
  '| F | Dm | Bb C | N.C. |: Gm7 | C7 :| F |',
  '(1) C | (3/4) Am | Dm G7 | C/E | what | F#m7b5 B7 | Em |',
  '(12/8) E7 | A7 | (4/4) Cm | G7alt |',
];

/** What is wrong with a bar's notes; null where nothing is. */
function faultIn(notes: readonly LineNote[], from: number, to: number, range: Range): string | null {
  let end = from;
  for (const note of notes) {
    if (note.start < end) return 'notes overlap';
    end = note.start + note.duration;
    const midi = midiOf(note.pitch);
    if (midi < range.lowest || midi > range.highest) return 'a note is not on the instrument';
    if (note.tiedOn === true && end !== to && Number.isFinite(to)) return 'a tie leads nowhere';
  }
  return end > to ? 'the notes end behind the bar' : null;
}

type Range = ReturnType<typeof rangeOf>;

/** What must be true of every bar after every gesture. */
function expectWhole(lesson: Lesson, pencil: Pencil): void {
  const desk = deskOf(lesson, pencil);
  if (desk === null) throw new Error('no line');
  const range = rangeOf(desk.instrument);
  const faults = desk.piece.bars.flatMap((bar, index) => {
    const length = lengthOf(desk, index);
    return [
      faultIn(bar.notes, 0, length, range),
      faultIn(bar.over ?? [], length, Number.POSITIVE_INFINITY, range),
      bar.over?.length === 0 ? 'nothing is too much' : null,
    ].filter((fault) => fault !== null);
  });
  if (faults.length > 0) throw new Error(`${faults.join(', ')}: ${JSON.stringify(desk.piece.bars)}`);
}

const commandAt = (random: Random): Command => {
  const command = COMMANDS[random.below(COMMANDS.length)];
  if (command === undefined) throw new Error('no command');
  return command;
};

/** A lesson with a chart in a chosen key: the walk then does not wait for a key to be found anew. */
function begin(chart: string): { readonly lesson: Lesson; readonly pencil: Pencil } {
  const empty = newLesson('lesson-1', 'Walk');
  const pieceId = empty.pieces[0]?.id ?? '';
  const lesson = setKey(setChartText(empty, pieceId, chart), pieceId, {
    tonic: { letter: 'F', alteration: 0 },
    mode: 'major',
  });
  return { lesson, pencil: newPencil(pieceId, 0) };
}

/** One gesture, and what must be true after it whatever it was. */
function gesture(lesson: Lesson, pencil: Pencil, command: Command): Done {
  const done = command.gesture(lesson, pencil);
  if (done.did.kind === 'refused') {
    if (done.lesson !== lesson || done.pencil !== pencil) throw new Error(`refused, yet done: ${command.id}`);
    return done;
  }
  if (fitPencil(done.lesson, done.pencil) !== done.pencil) throw new Error(`nowhere: ${command.id}`);
  expectWhole(done.lesson, done.pencil);
  return done;
}

function walk(chart: string, seed: number, steps: number): void {
  const random = createRandom(seed);
  const start = begin(chart);
  let history = newHistory(start.lesson);
  let { pencil } = start;
  const passed: Lesson[] = [];
  for (let step = 0; step < steps; step += 1) {
    const done = gesture(history.present, pencil, commandAt(random));
    if (done.lesson !== history.present) passed.push(history.present);
    history = record(history, done.lesson, 'step');
    pencil = done.pencil;
    if (step % 20 === 0) {
      expect(readLesson(JSON.parse(JSON.stringify(done.lesson)))).toEqual({ ok: true, value: done.lesson });
      expect(announce(done)).not.toMatch(/undefined|NaN|null/);
    }
  }
  expect(passed.length).toBeGreaterThan(steps / 5);
  while (history.past.length > 0) {
    history = undo(history);
    expect(history.present === passed.pop()).toBe(true);
    pencil = fitPencil(history.present, pencil) ?? pencil;
    if (fitPencil(history.present, pencil) !== pencil) throw new Error('the pencil stands nowhere');
  }
  expect(history.present).toBe(start.lesson);
}

describe('a random walk of writing', () => {
  it.each(CHARTS.flatMap((chart, index) => [[chart, index]] as const))(
    'keeps every bar of %s whole and valid, and undo leads back exactly',
    (chart, index) => {
      for (let round = 0; round < 17; round += 1) walk(chart, 100 * index + round, 200);
    },
  );

  it('loses no note when a bar that holds too much is drawn together or pushed on', () => {
    const random = createRandom(7);
    let { lesson, pencil } = begin('| F | Dm | Bb | C |');
    let mended = 0;
    for (let step = 0; step < 1000; step += 1) {
      ({ lesson, pencil } = commandAt(random).gesture(lesson, pencil));
      for (let bar = 0; bar < 4; bar += 1) mended += expectMended(lesson, pencil, bar);
    }
    expect(mended).toBeGreaterThan(50);
  });
});

/** Mends a bar in every way that is offered; says in how many. */
function expectMended(lesson: Lesson, pencil: Pencil, bar: number): number {
  const desk = deskOf(lesson, pencil);
  const whole = desk === null ? null : wholenessOf(desk, bar);
  if (desk === null || whole === null || whole.kind === 'whole') return 0;
  for (const way of whole.mends) {
    const after = mend(bar, way)(lesson, pencil);
    const now = deskOf(after.lesson, after.pencil);
    if (now === null) throw new Error('no line');
    // A note that is pushed over a bar line is two, tied.
    const gone = way === 'cut' ? whole.lost : 0;
    expect(countNotes(now)).toBeGreaterThanOrEqual(countNotes(desk) - gone);
    expect(wholenessOf(now, bar)).toEqual({ kind: 'whole' });
  }
  return whole.mends.length;
}

const countNotes = (desk: Desk): number =>
  desk.piece.bars.reduce((sum, _, bar) => sum + notesIn(desk, bar).length, 0);
