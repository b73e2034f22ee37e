import { describe, expect, it } from 'vitest';
import { readGrid, rhythmCellsOf } from '../../src/core/feel';
import { linePiece } from '../../src/core/lesson';
import { announce, barTime, deskOf, quantised, rhythmChoices, tapped } from '../../src/core/writing';
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

  it('may have a triplet in one quarter or over two, and straight eighths in the others', () => {
    const off = [18, -22, 9, -14, 20];
    const read = (starts: readonly number[]) =>
      quantised(
        starts.map((start, index) => ({ down: start + (off[index % 5] ?? 0), up: start + 200 })),
        3840,
      ).map(({ start }) => start);
    for (const rhythm of [
      [0, 480, 960, 1280, 1600, 1920, 2880, 3360],
      [0, 320, 640, 960, 1440, 1680, 1920],
      [0, 640, 1280, 1920, 2400, 2880],
      [0, 720, 960, 1440, 1920, 2160, 2400, 2640],
    ])
      expect(read(rhythm)).toEqual(rhythm);
    // One late eighth is no triplet.
    expect(read([0, 590, 960, 1920])).toEqual([0, 480, 960, 1920]);
  });

  it('ends a short note where its quarter has a place for it', () => {
    const struck = [0, 320, 640, 1920, 2400].map((down) => ({ down, up: down + 600 }));
    // The last of the triplet goes on into a quarter of sixteenths.
    expect(quantised(struck, 3840).map(({ start, duration }) => [start, start + duration])).toEqual([
      [0, 320],
      [320, 640],
      [640, 1200],
      [1920, 2400],
      [2400, 3120],
    ]);
  });

  it('is in eighths where the feel swings them, swung or straight under the finger, and in triplets where there are three', () => {
    const read = (starts: readonly number[], ratio: number) =>
      quantised(
        starts.map((start, index) => ({ down: start + (index % 2 === 0 ? 15 : -15), up: start + 100 })),
        3840,
        ratio,
      ).map(({ start }) => start);
    const eighths = [0, 480, 960, 1440, 2400, 2880];
    for (const ratio of [1.4, 1.8, 2, 2.4]) {
      const long = (960 * ratio) / (1 + ratio);
      const swung = eighths.map((tick) => (tick % 960 === 0 ? tick : tick - 480 + long));
      expect(read(swung, ratio), `swung by ${ratio}`).toEqual(eighths);
      expect(read(eighths, ratio), `straight against ${ratio}`).toEqual(eighths);
      expect(read([0, 320, 640, 960, 1280, 1600, 1920], ratio)).toEqual([0, 320, 640, 960, 1280, 1600, 1920]);
    }
  });

  it('says which taps got no note of their own', () => {
    const said = (starts: readonly number[]) => {
      const hand = new Hand('| F | Dm |');
      const struck = starts.map((down) => ({ down, up: down + 150 }));
      return announce(tapped(struck)(hand.lesson, hand.pencil)).split('. ')[0];
    };
    expect(said([0, 960, 1920])).toBe('Bar 1 has the rhythm that was tapped');
    expect(said([0, 960, 1010, 1920, 3800])).toBe(
      'Bar 1 has the rhythm that was tapped, without 2 taps that fell on another or behind the bar line',
    );
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
