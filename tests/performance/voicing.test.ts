import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bpm, COMMON_TIME, pitchClassOf, ticks } from '../../src/core/base';
import { type Chart, harmonyAt, parseChart } from '../../src/core/chart';
import { buildPerformance, type Performance } from '../../src/core/performance';
import type { Chord } from '../../src/core/theory';
import { sheetOf } from './sheets';

/** C3, the highest sounding pitch a beginner's line reaches by default (common practice, no source). */
const HIGHEST_USUAL_BASS = 48;

const ROOTS = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'];
const QUALITIES = [
  '',
  'm',
  '6',
  'm6',
  '7',
  'maj7',
  'm7',
  'm7b5',
  'dim',
  'dim7',
  'aug',
  'sus2',
  'sus4',
  '9',
  'add9',
];

/** The pitches struck together, in order of time. */
function struck(performance: Performance, part: 'chops' | 'organ'): { start: number; pitches: number[] }[] {
  const byStart = new Map<number, number[]>();
  for (const event of performance.events) {
    if (event.part === part) {
      byStart.set(event.start, [...(byStart.get(event.start) ?? []), event.midi]);
    }
  }
  return [...byStart].map(([start, pitches]) => ({ start, pitches: pitches.sort((a, b) => a - b) }));
}

const play = (chart: string) =>
  buildPerformance(sheetOf({ chart, feel: 'early-ska' }), { tempo: bpm(140), countIn: 0, passage: null });

const anyChart = fc
  .array(fc.tuple(fc.constantFrom(...ROOTS), fc.constantFrom(...QUALITIES)), { minLength: 1, maxLength: 8 })
  .map((chords) => `| ${chords.map(([root, quality]) => root + quality).join(' | ')} |`);

function chordAt(chart: Chart, start: number): Chord {
  const bar = chart.bars[Math.floor(start / 3840)];
  const harmony = bar === undefined ? null : harmonyAt(bar, ticks(start % 3840));
  if (harmony?.kind !== 'chord') {
    throw new Error(`There is no chord at ${start}`);
  }
  return harmony.chord;
}

function faultsOf(pitches: readonly number[], chord: Chord, part: 'chops' | 'organ'): string[] {
  const tones = new Set(chord.tones.map((tone) => pitchClassOf(tone.name)));
  const third = chord.tones.find((tone) => tone.degree.step === 3);
  const classes = new Set(pitches.map((pitch) => pitch % 12));
  return [
    ...(pitches.every((pitch) => tones.has(pitch % 12)) ? [] : ['a tone outside the chord']),
    ...(pitches.every((pitch) => pitch > HIGHEST_USUAL_BASS) ? [] : ['too low']),
    ...(pitches.every((pitch) => pitch <= 81) ? [] : ['too high']),
    ...(part === 'organ' || third === undefined || classes.has(pitchClassOf(third.name)) ? [] : ['no third']),
  ];
}

describe('chops and organ', () => {
  test('sound only tones of the chord, its third among them, in the mid register clear of the bass', () => {
    fc.assert(
      fc.property(anyChart, (text) => {
        const { chart } = parseChart(text, COMMON_TIME);
        const performance = play(text);
        for (const part of ['chops', 'organ'] as const) {
          for (const { start, pitches } of struck(performance, part)) {
            const faults = faultsOf(pitches, chordAt(chart, start), part);
            expect(faults, `${text} at ${start}: ${pitches.join(' ')}`).toEqual([]);
          }
        }
      }),
      { seed: 20, numRuns: 60 },
    );
  });

  test('voices move little: F to Dm moves one voice by a whole step', () => {
    const [first, , , , second] = struck(play('| F | Dm |'), 'chops');
    expect(first?.pitches.map((pitch) => pitch % 12).sort()).toEqual([0, 5, 9].sort());
    const moves = (first?.pitches ?? []).map((pitch, voice) =>
      Math.abs(pitch - (second?.pitches[voice] ?? 0)),
    );
    expect(moves.sort()).toEqual([0, 0, 2]);
  });

  test('no voice leaps by more than a fourth in a common progression', () => {
    const chords = struck(play('| F | Dm | Gm | Am | Bb | Gm | Eb | F |'), 'chops').map((hit) => hit.pitches);
    for (const [index, pitches] of chords.entries()) {
      for (const [voice, pitch] of pitches.entries()) {
        expect(Math.abs(pitch - (chords[index - 1]?.[voice] ?? pitch))).toBeLessThanOrEqual(5);
      }
    }
  });

  test('rest where there is no chord', () => {
    const performance = play('| C | N.C. | C |');
    for (const part of ['chops', 'organ'] as const) {
      const bars = struck(performance, part).map(({ start }) => Math.floor(start / 3840));
      expect(new Set(bars)).toEqual(new Set([0, 2]));
    }
  });

  test('follow the chords within a bar', () => {
    const hits = struck(play('| C F |'), 'chops');
    expect(hits.map(({ start }) => Math.floor(start / 960))).toEqual([0, 1, 2, 3]);
    expect(hits.map(({ pitches }) => pitches.some((pitch) => pitch % 12 === 4))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});
