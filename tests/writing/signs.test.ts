import { describe, expect, it } from 'vitest';
import { linePiece } from '../../src/core/lesson';
import { announce, deskOf, stepName, writeWord } from '../../src/core/writing';
import { Hand } from './hand';

const bars = (hand: Hand) => linePiece(hand.lesson, hand.pencil.pieceId)?.bars ?? [];
const signs = (hand: Hand, bar: number) =>
  (bars(hand)[bar]?.dynamics ?? []).map(({ at, level, hairpin }) =>
    [at, level, hairpin].filter((part) => part !== undefined).join(' '),
  );

describe('signs of loudness by hand', () => {
  it('go up and down one level from what holds there, mezzo forte where nothing does', () => {
    const hand = new Hand('| F | Dm |').press('1 3 5 1 Home Shift+G');
    expect(signs(hand, 0)).toEqual(['0 f']);
    hand.press('Enter Shift+H Shift+H');
    expect(signs(hand, 1)).toEqual(['0 mp']);
    hand.press('Shift+H Shift+H Shift+H Shift+H');
    expect(signs(hand, 1)).toEqual(['0 ppp']);
    expect(hand.refusal).toBe('no softer sign');
  });

  it('lead a hairpin over what is selected and no further, over the bar line too, and take it away again', () => {
    const hand = new Hand('| F | Dm |').press('1 3 5 1 1 3 5 1 Home Shift+Enter Shift+C');
    expect(signs(hand, 0)).toEqual(['0 crescendo']);
    hand.press('Shift+C');
    expect(signs(hand, 0)).toEqual([]);
    hand.press('Home Shift+ArrowRight Shift+ArrowRight Shift+V');
    expect(signs(hand, 0)).toEqual(['0 diminuendo', '2880']);
    hand.press('Shift+X');
    expect(signs(hand, 0)).toEqual([]);
    expect(hand.press('Shift+X').refusal).toBe('no sign here');
  });

  it('stay with the bar, whose notes are as composed as they were', () => {
    const hand = new Hand('| F | Dm |');
    const before = bars(hand)[0];
    hand.press('Shift+G');
    expect(bars(hand)[0]).toEqual({ ...before, dynamics: [{ at: 0, level: 'f' }] });
  });
});

it('writes a word above the bar at hand, and takes it away where nothing is written', () => {
  const hand = new Hand('| F | Dm |');
  hand.take(writeWord('  build  ')(hand.lesson, hand.pencil));
  expect(bars(hand)[0]?.words).toBe('build');
  const done = hand.last;
  const desk = done && deskOf(done.lesson, done.pencil);
  if (!done || !desk || done.did.kind === 'refused') throw new Error('nothing was written');
  expect(announce(done)).toMatch(/^Above bar 1: build\. Silence, beat 1 of bar 1$/);
  expect(stepName(desk, done.did)).toBe('change the word in bar 1');
  hand.take(writeWord('build')(hand.lesson, hand.pencil));
  expect(hand.refusal).toBe('same word already');
  hand.take(writeWord('')(hand.lesson, hand.pencil));
  expect(bars(hand)[0]).not.toHaveProperty('words');
});
