import { describe, expect, test } from 'vitest';
import { ticks } from '../../src/core/base';
import {
  buildUpOf,
  copyPiece,
  deriveSheet,
  editStage,
  type Lesson,
  type LinePiece,
  moveThing,
  parseLesson,
  printLesson,
  sampleLesson,
  setBuildUp,
  setChartText,
  stagePlaces,
  transposeTo,
  withChoice,
} from '../../src/core/lesson';

const lineIn = (lesson: Lesson): LinePiece => {
  const [piece] = lesson.pieces;
  if (piece?.kind !== 'line') throw new Error('The sample has a line.');
  return piece;
};
const plain = sampleLesson(0, 'test');
const { id } = lineIn(plain);
const built = setBuildUp(plain, id, {});
const stagesIn = (lesson: Lesson) => buildUpOf(lineIn(lesson), lesson.instrument).stages;
const notesOf = ({ bars }: LinePiece) => bars.map(({ notes }) => notes);

const edited = (lesson: Lesson, bar: number): Lesson => {
  const stage = stagesIn(lesson)[1];
  const written = deriveSheet(lineIn(lesson), lesson.instrument, undefined);
  if (stage === undefined || written.kind !== 'line') throw new Error('There is a second stage.');
  const at = written.bars[bar]?.written;
  if (at === undefined) throw new Error('There is such a bar.');
  const [place] = stagePlaces(lineIn(lesson), stage, at, bar, lesson.instrument);
  if (place === undefined) throw new Error('The bar has a place.');
  const changed = withChoice(stage.piece.bars[bar]?.notes ?? [], place, null);
  return editStage(lesson, id, stage.stage, bar, changed);
};

describe('a build-up on the sheet', () => {
  test('ends a tied note where another is put into it, and its tie with it', () => {
    const pitch = { letter: 'F', alteration: 0, octave: 1 } as const;
    const held = [{ start: ticks(0), duration: ticks(3840), pitch, tiedOn: true }];
    const place = { start: ticks(1920), note: null, duration: ticks(1920), choices: [] };
    expect(withChoice(held, place, pitch)).toEqual([
      { start: 0, duration: 1920, pitch },
      { start: 1920, duration: 1920, pitch },
    ]);
  });

  test('has stages that are lines of their own, the last one the line', () => {
    const stages = stagesIn(built);
    expect(stages.length).toBeGreaterThanOrEqual(3);
    expect(stages.map(({ name }) => name)[1]).toMatch(/^Stage 2 of \d: its /);
    expect(notesOf(stages.at(-1)?.piece ?? lineIn(plain))).toEqual(notesOf(lineIn(plain)));
    expect(new Set(stages.map(({ piece }) => piece.id)).size).toBe(stages.length);
    const line = deriveSheet(lineIn(built), built.instrument, undefined);
    for (const { piece } of stages) {
      const sheet = deriveSheet(piece, built.instrument, undefined);
      expect(sheet.kind === 'line' && line.kind === 'line' && sheet.key).toEqual(
        line.kind === 'line' && line.key,
      );
      expect(sheet.kind === 'line' && sheet.problems).toEqual([]);
    }
  });

  test('is off the sheet, changes and all, when it is taken off', () => {
    expect(setBuildUp(edited(built, 0), id, null)).toEqual(plain);
    expect(buildUpOf(lineIn(plain), plain.instrument).stages).toEqual([]);
  });

  test('stores the one bar that was changed, and derives every other', () => {
    const changed = edited(built, 1);
    expect(lineIn(changed).buildUp?.edits.length).toBe(1);
    const [before, after] = [stagesIn(built), stagesIn(changed)];
    after.forEach(({ piece, edited: bars }, index) => {
      const same = notesOf(piece).map(
        (notes, bar) => JSON.stringify(notes) === JSON.stringify(before[index]?.piece.bars[bar]?.notes),
      );
      expect(same.flatMap((is, bar) => (is ? [] : [bar]))).toEqual(index === 1 ? [1] : []);
      expect(bars).toEqual(index === 1 ? [1] : []);
    });
    expect(notesOf(lineIn(changed))).toEqual(notesOf(lineIn(built)));
    expect(editStage(changed, id, after[1]?.stage ?? 'roots', 1, null)).toEqual(built);
  });

  test('keeps a change with a copy and in another key, and lets it wait while its chords are away', () => {
    const changed = edited(built, 1);
    const copy = copyPiece(changed, id).pieces[1];
    expect(copy?.kind === 'line' && buildUpOf(copy, changed.instrument).stages[1]?.edited).toEqual([1]);
    const moved = transposeTo(changed, id, { letter: 'D', alteration: 0 });
    expect(stagesIn(moved)[1]?.edited).toEqual([1]);
    const { chartText } = lineIn(changed);
    const away = setChartText(changed, id, chartText.replace('| F | Dm |', '| F | B♭ |'));
    expect(stagesIn(away)[1]?.edited).toEqual([]);
    expect(stagesIn(away)[1]?.derived).toEqual(notesOf(stagesIn(away)[1]?.piece ?? lineIn(away)));
  });

  test('takes another order, and can be saved and read again', () => {
    const moved = moveThing(edited(built, 0), id, 'chord tones', -1);
    expect(lineIn(moved).buildUp?.order[0]).toBe('chord tones');
    expect(moveThing(moved, id, 'chord tones', -1)).toBe(moved);
    expect(parseLesson(printLesson(moved))).toEqual({ ok: true, value: moved });
  });
});
