import { describe, expect, it } from 'vitest';
import { readGrid, rhythmCellsOf } from '../../src/core/feel';
import { linePiece } from '../../src/core/lesson';
import { barTime, deskOf, quantised, rhythmChoices, tapped } from '../../src/core/writing';
import { Hand } from './hand';

const deskNow = (hand: Hand) => {
  const desk = deskOf(hand.lesson, hand.pencil);
  if (desk === null) throw new Error('no line');
  return desk;
};

const rhythm = (hand: Hand, bar: number) =>
  (linePiece(hand.lesson, hand.pencil.pieceId)?.bars[bar]?.notes ?? []).map(
    ({ start, duration }) => `${start}+${duration}`,
  );

describe('the rhythm of another bar', () => {
  it('is taken from a later bar as well, each rhythm of the line offered once', () => {
    const hand = new Hand('| F | Dm | Gm |').press(
      '1 3 5 1 Enter [ 1 3 5 3 1 3 5 3 Shift+Enter Shift+Enter Shift+Enter',
    );
    const choices = rhythmChoices(deskNow(hand));
    expect(choices.filter(({ bar }) => bar !== null).map(({ bar, text }) => `${bar}: ${text}`)).toEqual([
      '1: 1 1& 2 2& 3 3& 4 4&',
    ]);
    const later = choices.find(({ bar }) => bar === 1);
    if (later === undefined) throw new Error('no later bar');
    hand.take(later.gesture(hand.lesson, hand.pencil));
    expect(rhythm(hand, 0)).toEqual(rhythm(hand, 1));
  });

  it('is one of the feel: every rhythm offered is in its own cells or phrases, and the key goes through them', () => {
    const hand = new Hand('| F | Dm |').press('1 3 5 1 Home');
    const piece = linePiece(hand.lesson, hand.pencil.pieceId);
    if (piece === null) throw new Error('no line');
    const cells = rhythmCellsOf(piece.feel, piece.metre) ?? [];
    const usable = cells.filter(({ level }) => level <= piece.level);
    expect(usable.length).toBeGreaterThan(0);
    const seen = new Set<string>();
    for (let turn = 0; turn < 30; turn += 1) seen.add(rhythm(hand.press('Shift+Y'), 0).join(' '));
    for (const { grid } of usable) {
      const wanted = readGrid(grid, piece.metre).map(({ start, duration }) => `${start}+${duration}`);
      if (wanted.join(' ') !== '0+960 960+960 1920+960 2880+960') expect(seen).toContain(wanted.join(' '));
    }
  });
});

describe('a rhythm that is tapped', () => {
  /** Taps in sixteenths, each a little off and held for a share of the way to the next. */
  const taps = (starts: readonly number[], held: number, off = 25) =>
    starts.map((start, index) => ({
      down: start * 240 + (index % 2 === 0 ? off : -off),
      up: start * 240 + held * ((starts[index + 1] ?? 16) - start) * 240,
    }));

  it('is quantised to sixteenths, long notes long and short ones short', () => {
    const struck = (held: number) =>
      quantised(taps([0, 3, 4, 8, 14], held), 3840).map(({ start, duration }) => `${start}+${duration}`);
    expect(struck(0.9)).toEqual(['0+720', '720+240', '960+960', '1920+1440', '3360+480']);
    expect(struck(0.25)).toEqual(['0+240', '720+240', '960+240', '1920+480', '3360+240']);
  });

  it('is quantised to triplets where they fit clearly better', () => {
    const triplets = [0, 320, 640, 960, 1920].map((down) => ({ down: down + 12, up: down + 300 }));
    expect(quantised(triplets, 3840).map(({ start }) => start)).toEqual([0, 320, 640, 960, 1920]);
  });

  it('goes into the bar at hand with its degrees, and leaves it alone where nothing was tapped', () => {
    const hand = new Hand('| F | Dm |').press('1 3 5 1 Home');
    hand.take(tapped(taps([2, 8], 0.9))(hand.lesson, hand.pencil));
    expect(hand.bar(0)).toBe('F1@480+1440 A1@1920+1920');
    hand.take(tapped([])(hand.lesson, hand.pencil));
    expect(hand.refusal).toBe('nothing tapped');
  });

  it('is counted in the tempo of the piece', () => {
    const hand = new Hand('| F |');
    const { beats, beatMs, ticksPerMs } = barTime(deskNow(hand));
    const tempo = linePiece(hand.lesson, hand.pencil.pieceId)?.tempo ?? 0;
    expect(beats).toBe(4);
    expect(beatMs).toBeCloseTo(60_000 / tempo);
    expect(beatMs * ticksPerMs).toBeCloseTo(960);
  });
});
