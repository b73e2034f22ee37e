import { describe, expect, test } from 'vitest';
import { fasterBy, loopOver, passageFor, passageTyped, practiceTempo } from '../../src/core/playing';
import { lessonOf, lineOf } from './lines';

const line = (playing = {}, chart = '| C | F | G | C |') => lineOf(lessonOf({ chart, playing }));

describe('bars that are dragged over', () => {
  test('go round, from whichever end they were touched', () => {
    const { sheet } = line();
    expect(loopOver(sheet, 3, 2)).toEqual({ loop: true, passage: { first: 2, last: 3 } });
    expect(loopOver(sheet, 2, 2)).toEqual({ loop: true, passage: { first: 2, last: 2 } });
  });

  test('are the whole piece where they are all bars, a pickup included', () => {
    expect(loopOver(line().sheet, 1, 4).passage).toBeNull();
    const { sheet } = line({}, '(1) C | F | G |');
    expect(loopOver(sheet, 0, 2).passage).toBeNull();
    expect(loopOver(sheet, 1, 2).passage).toEqual({ first: 1, last: 2 });
  });
});

test('typing one end of a passage leaves the other where it was, whatever digits come on the way', () => {
  const { sheet } = line({}, `${'| C | F | G | C '.repeat(4)}|`);
  const begun = { first: 5, last: 8 };
  expect(passageTyped(sheet, begun, 'last', 1)).toEqual({ passage: { first: 1, last: 1 } });
  expect(passageTyped(sheet, begun, 'last', 12)).toEqual({ passage: { first: 5, last: 12 } });
  expect(passageTyped(sheet, begun, 'first', 9)).toEqual({ passage: { first: 9, last: 9 } });
  expect(passageTyped(sheet, begun, 'first', 1)).toEqual({ passage: { first: 1, last: 8 } });
  expect(passageTyped(sheet, { first: 1, last: 8 }, 'last', 16)).toEqual({ passage: null });
});

test('a bar within the loop leaves it, another one lifts it', () => {
  const { piece, sheet } = line({ passage: { first: 2, last: 3 } });
  expect(passageFor(piece, sheet, 3)).toBeNull();
  expect(passageFor(piece, sheet, 4)).toEqual({ passage: null });
  expect(passageFor(line().piece, sheet, 4)).toBeNull();
});

// Steps of 5 bpm after right rounds: studygeniuspro.com, a weak source, as for the ladder.
test('slower and faster go by whole fives, to the bounds and no further', () => {
  const { piece } = line();
  const at = (tempoShare: number) => ({ ...piece, playing: { ...piece.playing, tempoShare } });
  const tempo = (change: ReturnType<typeof fasterBy>) =>
    change?.tempoShare === undefined ? null : Number(practiceTempo(at(change.tempoShare)));
  expect(Number(piece.tempo)).toBe(126);
  expect(tempo(fasterBy(piece, 1))).toBe(130);
  expect(tempo(fasterBy(piece, -1))).toBe(125);
  expect(tempo(fasterBy(at(79.37), 1))).toBe(105);
  expect(fasterBy(at(200), 1)).toBeNull();
  expect(fasterBy(at(20), -1)).toBeNull();
});
