import { describe, expect, test } from 'vitest';
import { fret, midiOf, ticks } from '../../src/core/base';
import type { FeelId } from '../../src/core/feel';
import { fingerLine, ticksPerSecond } from '../../src/core/fretboard';
import { type ComposeRequest, composeLine, type Level, levelLimits } from '../../src/core/line';
import { request } from './notation';
import { roundEffort } from './round-effort';

/** Changes of position and stretches in a line as the page fingers it, by the bar. */
function effortABar(asked: ComposeRequest): { readonly shifts: number; readonly stretches: number } {
  let at = 0;
  const bounds: { start: ReturnType<typeof ticks>; end: ReturnType<typeof ticks> }[] = [];
  const notes = composeLine(asked).bars.flatMap((bar, index) => {
    const start = at;
    at += asked.chart.bars[index]?.spans.reduce((sum, { duration }) => sum + duration, 0) ?? 0;
    bounds.push({ start: ticks(start), end: ticks(at) });
    return bar.map((note) => ({ ...note, start: ticks(start + note.start), midi: midiOf(note.pitch) }));
  });
  const hand = { ...asked.hand, highestFret: fret(levelLimits(asked.level).highestFret) };
  const fingered = fingerLine(notes, asked.instrument, hand, {
    ticksPerSecond: ticksPerSecond(asked.tempo, asked.chart.metre),
    loop: ticks(at),
    muted: asked.feel.bassTouch.muted,
    bars: bounds,
  });
  const { stretches } = roundEffort(fingered, asked.instrument, hand);
  return { shifts: fingered.shifts / bounds.length, stretches: stretches / bounds.length };
}

const CHARTS = [
  ['F', '| F | C7 | Dm | B♭ | F | C7 | B♭ | F |'],
  ['Am', '| Am | F | Dm | E7 | Am | Dm | E7 | Am |'],
  ['A♭', '| A♭ | E♭7 | Fm | D♭ | A♭ | D♭ | E♭7 | A♭ |'],
  ['G', '| G | C | D7 | G | Em | Am | D7 | G |'],
  ['Gm', '| Gm | Cm | D7 | Gm | E♭ | Cm | D7 | Gm |'],
  ['B♭', '| B♭ | Gm | E♭ | F7 | B♭ | E♭ | F7 | B♭ |'],
] as const;
const LEVELS: readonly Level[] = [1, 3, 5];

/** By the bar, over charts and levels, a seed each. */
function meanEffort(feel: FeelId, of: 'shifts' | 'stretches'): number {
  const all = CHARTS.flatMap(([key, chart]) =>
    LEVELS.map((level) => effortABar(request(chart, { feel, level, key, seed: level }))[of]),
  );
  return all.reduce((sum, one) => sum + one, 0) / all.length;
}

/** Most shifts by feel, none of which lets an open string ring on into its rests. */
const MOST_SHIFTS: readonly (readonly [FeelId, number])[] = [
  ['rocksteady', 0.06],
  ['rockers', 0.07],
  ['calypso', 0.15],
  ['disco', 0.19],
];

/** Most stretches, in feels whose shapes have many. */
const MOST_STRETCHES: readonly (readonly [FeelId, number])[] = [
  ['soul-backbeat', 0.5],
  ['rockers', 0.41],
  ['one-drop', 0.44],
  ['disco', 0.55],
];

describe('where the hand stands in a composed line', () => {
  test.each(MOST_SHIFTS)('it seldom moves: %s, %d shifts a bar', (feel, most) => {
    expect(meanEffort(feel, 'shifts')).toBeLessThanOrEqual(most);
  });

  test.each(MOST_STRETCHES)('it seldom opens wider than is easy: %s, %d stretches a bar', (feel, most) => {
    expect(meanEffort(feel, 'stretches')).toBeLessThanOrEqual(most);
  });
});
