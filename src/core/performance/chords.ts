import { barTicks, type MidiNumber, ticks } from '../base';
import { type Feel, type FeelMetre, type Grid, readGrid, rhythmsIn } from '../feel';
import type { Chord } from '../theory';
import { endingGrid } from './form';
import type { PlannedBar } from './plan';
import { swung } from './swing';
import type { PitchedEvent } from './types';
import { leadVoices, type Register, type Voicing } from './voicing';

/**
 * The mid register, clear of a bass line that stays below C3 (48): common practice, no source. The chops are
 * four strings of a guitar, the organ two hands.
 */
const CHOPS: Register = { lowest: 54, highest: 77, centre: 65, voices: 4 };
const ORGAN_LEFT: Register = { lowest: 52, highest: 64, centre: 57, voices: 2 };
const ORGAN_RIGHT: Register = { lowest: 58, highest: 79, centre: 68, voices: 3 };

/** A chord that is held lies behind everybody, or it covers them (common practice, no source; the figures are ours). */
const STRENGTH = {
  chops: { plain: 88, accent: 108, held: 80 },
  organ: { plain: 80, accent: 96, held: 52 },
} as const;

/**
 * Seconds until a short stroke is let go, at every tempo: a chop is a stroke, not a share of the beat. At most a
 * sixteenth, and longer only where its grid holds it. The figures are ours: chops fall by 20 dB within 60 to 90 ms.
 */
const SHORT = { chops: 0.08, organ: 0.12 } as const;

/** A chord with the stretch of the performance it holds for, in straight ticks. */
interface HeldChord {
  readonly chord: Chord;
  readonly bar: PlannedBar;
  readonly from: number;
  readonly to: number;
}

function heldChords(bars: readonly PlannedBar[]): readonly HeldChord[] {
  return bars.flatMap((bar) =>
    (bar.sheetBar?.written.spans ?? []).flatMap((span): HeldChord[] =>
      span.harmony.kind === 'chord'
        ? [{ chord: span.harmony.chord, bar, from: span.start, to: span.start + span.duration }]
        : [],
    ),
  );
}

interface Hand {
  readonly part: 'chops' | 'organ';
  readonly register: Register;
  readonly grid: (bar: PlannedBar) => Grid | null;
  /** Ticks that a hit is held which its grid does not hold longer. */
  readonly length: number;
}

interface Hit {
  readonly start: number;
  readonly end: number;
  readonly accent: boolean;
  /** Its grid holds it, as an organ's pad. */
  readonly held: boolean;
}

/** A hit that its grid holds goes on under the next chord, which it then sounds anew. */
function hitsOf({ bar, from, to }: HeldChord, hand: Hand, ratio: number): readonly Hit[] {
  const grid = hand.grid(bar);
  if (grid === null) return [];
  const at = (position: number): number => bar.start + swung(position, bar.metre, ratio);
  const step = barTicks(bar.metre) / grid.length;
  return readGrid(grid, bar.metre).flatMap((hit): Hit[] => {
    const held = hit.duration > step;
    const begins = held ? Math.max(hit.start, from) : hit.start;
    const ends = Math.min(hit.start + hit.duration, to);
    if (begins < from || begins >= ends) return [];
    const [start, end] = [at(begins), at(ends)];
    return [
      { start, end: held ? end : Math.min(end, start + hand.length), accent: hit.stroke === 'accent', held },
    ];
  });
}

/** What one hand plays; a tone that two held chords share is not struck again, except in the last hit. */
function handEvents(
  stretches: readonly HeldChord[],
  voicings: readonly Voicing[],
  hand: Hand,
  ratio: number,
): readonly PitchedEvent[] {
  const events: PitchedEvent[] = [];
  /** Index of the last held event of a pitch. */
  const held = new Map<MidiNumber, number>();
  const strike = (midi: MidiNumber, { start, end, accent, held: isHeld }: Hit): void => {
    events.push({
      part: hand.part,
      midi,
      start: ticks(start),
      duration: ticks(Math.max(1, end - start)),
      velocity: STRENGTH[hand.part][isHeld ? 'held' : accent ? 'accent' : 'plain'],
      muted: false,
    });
  };
  const hold = (midi: MidiNumber, hit: Hit): void => {
    const index = held.get(midi) ?? -1;
    const before = events[index];
    if (before !== undefined && before.start + before.duration === hit.start) {
      events[index] = { ...before, duration: ticks(hit.end - before.start) };
    } else {
      held.set(midi, events.length);
      strike(midi, hit);
    }
  };
  for (const [index, stretch] of stretches.entries()) {
    for (const hit of hitsOf(stretch, hand, ratio)) {
      const tied = hit.held && stretch.bar.form !== 'ending';
      for (const midi of voicings[index] ?? []) (tied ? hold : strike)(midi, hit);
    }
  }
  return events;
}

interface Hands {
  readonly chops: Hand;
  readonly left: Hand;
  readonly right: Hand;
}

/** The chops and the organ's two hands, by the feel's grids; what each plays in a bar is its row, or the last hit. */
function handsOf(feel: Feel, ticksOf: (seconds: number) => number): Hands {
  const gridOf =
    (row: (metre: FeelMetre) => Grid) =>
    (bar: PlannedBar): Grid | null => {
      const metre = rhythmsIn(feel, bar.metre);
      if (metre === null) return null;
      return bar.form === 'ending' && row(metre) !== '' ? endingGrid(feel, bar) : row(metre);
    };
  const left: Hand = {
    part: 'organ',
    register: ORGAN_LEFT,
    grid: gridOf(({ organ }) => organ.left.grid),
    length: ticksOf(SHORT.organ),
  };
  return {
    chops: {
      part: 'chops',
      register: CHOPS,
      grid: gridOf(({ chops: { grid } }) => grid),
      length: ticksOf(SHORT.chops),
    },
    left,
    right: { ...left, register: ORGAN_RIGHT, grid: gridOf(({ organ }) => organ.right.grid) },
  };
}

function voicingsOf(stretches: readonly HeldChord[]): Readonly<Record<keyof Hands, readonly Voicing[]>> {
  const chords = stretches.map((stretch) => stretch.chord);
  const left = leadVoices(chords, ORGAN_LEFT);
  return { chops: leadVoices(chords, CHOPS), left, right: leadVoices(chords, ORGAN_RIGHT, left) };
}

/**
 * The chords' own rhythm section: off-beat chops and the organ's two hands, by the feel's grids.
 * @param ticksOf seconds in ticks, at the tempo in force
 */
export function chordEvents(
  bars: readonly PlannedBar[],
  feel: Feel,
  ratio: number,
  ticksOf: (seconds: number) => number,
): readonly PitchedEvent[] {
  const hands = handsOf(feel, ticksOf);
  const stretches = heldChords(bars);
  const voicings = voicingsOf(stretches);
  return (['chops', 'left', 'right'] as const).flatMap((hand) =>
    handEvents(stretches, voicings[hand], hands[hand], ratio),
  );
}

/** A chord as a hand strikes it, straight, before it is let go. */
export interface StruckChord {
  readonly bar: PlannedBar;
  readonly chord: Chord;
  readonly voicing: Voicing;
  /** Ticks of the performance. */
  readonly start: number;
  /** Until the grid stops holding it. */
  readonly end: number;
  readonly held: boolean;
}

/** What a hand strikes in the bars, for a part that is to be read. */
export function struckChords(
  bars: readonly PlannedBar[],
  feel: Feel,
  hand: keyof Hands,
): readonly StruckChord[] {
  const stretches = heldChords(bars);
  const voicings = voicingsOf(stretches)[hand];
  const player = { ...handsOf(feel, () => 0)[hand], length: Number.POSITIVE_INFINITY };
  return stretches.flatMap((stretch, index) =>
    hitsOf(stretch, player, 1).map(({ start, end, held }) => ({
      bar: stretch.bar,
      chord: stretch.chord,
      voicing: voicings[index] ?? [],
      start,
      end,
      held,
    })),
  );
}
