import { ticks } from '../base';
import { type Feel, feelMetre, type Grid, readGrid } from '../feel';
import type { Chord } from '../theory';
import type { PlannedBar } from './plan';
import { swung } from './swing';
import type { PitchedEvent } from './types';
import { leadVoices, type Register, type Voicing } from './voicing';

/**
 * The mid register, clear of a bass line that stays below C3 (48): common practice, no source. The chops are
 * four strings of a guitar, the organ two hands.
 */
const CHOPS: Register = { lowest: 55, highest: 76, centre: 65, voices: 4 };
const ORGAN_LEFT: Register = { lowest: 52, highest: 64, centre: 57, voices: 2 };
const ORGAN_RIGHT: Register = { lowest: 58, highest: 79, centre: 68, voices: 3 };

const STRENGTH = {
  chops: { plain: 88, accent: 108 },
  organ: { plain: 80, accent: 96 },
} as const;

/** A chop is let go after a sixteenth unless its grid holds it. */
const CHOP_LENGTH = 240;

/** A chord with the stretch of the performance it holds for, in straight ticks. */
interface Stretch {
  readonly chord: Chord;
  readonly bar: PlannedBar;
  readonly from: number;
  readonly to: number;
}

function stretchesOf(bars: readonly PlannedBar[]): readonly Stretch[] {
  return bars.flatMap((bar) =>
    (bar.sheetBar?.written.spans ?? []).flatMap((span): Stretch[] =>
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
  /** The longest a hit is held that its grid does not hold longer. */
  readonly length: number;
}

function hitsOf(stretch: Stretch, voicing: Voicing, hand: Hand, ratio: number): PitchedEvent[] {
  const { bar } = stretch;
  const at = (position: number): number => bar.start + swung(position, bar.metre, ratio);
  const grid = hand.grid(bar);
  return (grid === null ? [] : readGrid(grid, bar.metre))
    .filter((hit) => hit.start >= stretch.from && hit.start < stretch.to)
    .flatMap((hit) => {
      const start = at(hit.start);
      const step = hit.duration > hand.length ? hit.duration : Math.min(hit.duration, hand.length);
      const end = at(Math.min(hit.start + step, stretch.to));
      return voicing.map(
        (midi): PitchedEvent => ({
          part: hand.part,
          midi,
          start: ticks(start),
          duration: ticks(Math.max(1, end - start)),
          velocity: STRENGTH[hand.part][hit.accent ? 'accent' : 'plain'],
          muted: false,
        }),
      );
    });
}

/** The chords' own rhythm section: off-beat chops and the organ's two hands, by the feel's grids. */
export function chordEvents(bars: readonly PlannedBar[], feel: Feel, ratio: number): readonly PitchedEvent[] {
  const metreOf = (bar: PlannedBar) => feelMetre(feel, bar.metre);
  const hands: readonly Hand[] = [
    {
      part: 'chops',
      register: CHOPS,
      grid: (bar) => metreOf(bar)?.chops.grid ?? null,
      length: CHOP_LENGTH,
    },
    {
      part: 'organ',
      register: ORGAN_LEFT,
      grid: (bar) => metreOf(bar)?.organ.left.grid ?? null,
      length: CHOP_LENGTH,
    },
    {
      part: 'organ',
      register: ORGAN_RIGHT,
      grid: (bar) => metreOf(bar)?.organ.right.grid ?? null,
      length: CHOP_LENGTH,
    },
  ];
  const stretches = stretchesOf(bars);
  const chords = stretches.map((stretch) => stretch.chord);
  return hands.flatMap((hand) => {
    const voicings = leadVoices(chords, hand.register);
    return stretches.flatMap((stretch, index) => hitsOf(stretch, voicings[index] ?? [], hand, ratio));
  });
}
