import { expect, test } from 'vitest';
import { createAnswers } from '../../src/app/composer/answers';
import type { ComposerJob } from '../../src/app/composer/messages';
import { finish } from '../../src/core/base';
import { checkLesson, composePiece, explainPiece, rankTakes, severalTakes } from '../../src/core/composing';
import { deriveSheet, linePiece, newLesson, setChartText, setTempo } from '../../src/core/lesson';

const PIECE = 'piece-1';
const chart = '| F | Dm | Gm | C7 |';
const composed = composePiece(setChartText(newLesson('test', 'Test'), PIECE, chart), PIECE).lesson;
// Too fast for the feel, and in a key that is none of its chords'.
const faulty = setChartText(setTempo(composed, PIECE, 300), PIECE, `(key: E) ${chart}`);

/** What crosses to the worker and back is a copy. */
const ask = (answers: ReturnType<typeof createAnswers>, job: ComposerJob) =>
  structuredClone(finish(answers(structuredClone(job))));

test('takes that are composed one a step are those composed at once', () => {
  const steps = createAnswers()({
    kind: 'compose',
    deed: 'compose several takes',
    lesson: composed,
    pieceId: PIECE,
  });
  let pauses = 0;
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) pauses += 1;
  expect(pauses).toBe(5);
  expect(step.value).toEqual({
    kind: 'composition',
    composition: finish(severalTakes(composed, PIECE)),
  });
});

test('the findings and repairs that come back are those of the lesson, and a repair is the lesson mended', () => {
  const answers = createAnswers();
  const found = checkLesson(faulty);
  expect(found.length).toBeGreaterThan(1);
  expect(ask(answers, { kind: 'check', lesson: faulty })).toEqual({
    kind: 'findings',
    findings: found.map(({ repair, ...finding }) => ({ ...finding, mendable: repair !== undefined })),
  });
  const repairs = found.map((_, finding) => ask(answers, { kind: 'repair', finding }));
  expect(repairs).toEqual(
    found.map(({ repair }) => {
      const mends = repair?.() ?? null;
      return {
        kind: 'repair',
        repair: mends && { label: mends.label, lesson: mends.apply(faulty) },
      };
    }),
  );
  expect(JSON.stringify(repairs)).toMatch(/Set the tempo to/);
});

test('a repair without a check before it, or of a finding that is not there, is none', () => {
  const none = { kind: 'repair', repair: null };
  const answers = createAnswers();
  expect(ask(answers, { kind: 'repair', finding: 0 })).toEqual(none);
  ask(answers, { kind: 'check', lesson: composed });
  expect(ask(answers, { kind: 'repair', finding: 9 })).toEqual(none);
});

test('takes come back in their order, by their ids', () => {
  const lesson = finish(severalTakes(composed, PIECE)).lesson;
  const piece = linePiece(lesson, PIECE);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (piece === null || sheet?.kind !== 'line') throw new Error('The line is gone.');
  expect(ask(createAnswers(), { kind: 'rank takes', lesson, pieceId: PIECE })).toEqual({
    kind: 'ranking',
    takes: rankTakes(piece, sheet, lesson.instrument).map(({ take, words, inLine }) => ({
      takeId: take.id,
      words,
      inLine,
    })),
  });
});

test('a line is explained as the core explains it, and nothing where there is no line', () => {
  const piece = linePiece(composed, PIECE);
  const sheet = piece && deriveSheet(piece, composed.instrument, composed.noteNames);
  if (piece === null || sheet?.kind !== 'line') throw new Error('The line is gone.');
  expect(ask(createAnswers(), { kind: 'explain', lesson: composed, pieceId: PIECE })).toEqual({
    kind: 'explanation',
    sentences: explainPiece(piece, sheet, composed.instrument),
  });
  expect(ask(createAnswers(), { kind: 'explain', lesson: composed, pieceId: 'gone' })).toEqual({
    kind: 'explanation',
    sentences: [],
  });
});
