import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import type { FeelId } from '../../src/core/feel';
import { buildPerformance, type Performance, secondsAt } from '../../src/core/performance';
import { sheetOf } from './sheets';

const play = (chart: string, feel: FeelId, tempo = 120): Performance =>
  buildPerformance(sheetOf({ chart, feel }), { tempo: bpm(tempo), countIn: 0, passage: null });

const eventsOf = (performance: Performance, part: 'chops' | 'organ') =>
  performance.events.flatMap((event) => (event.part === part ? [event] : []));

/** Pitches of each stroke of a part, from low to high, in order of time. */
function grips(performance: Performance, part: 'chops' | 'organ'): readonly number[][] {
  const starts = [...new Set(eventsOf(performance, part).map(({ start }) => start))];
  return starts.map((at) =>
    eventsOf(performance, part)
      .filter(({ start }) => start === at)
      .map(({ midi }) => midi as number)
      .sort((one, other) => one - other),
  );
}

const COLOURS = ['maj7', 'maj9', 'm9', '7b9', '7#9', '13', 'maj7#11', 'm(add9)', 'sus4', '6', 'm7b5', '7#5'];

describe('a chop', () => {
  test.each([40, 60, 90, 126, 150, 180])('is as short at %i a minute as at every tempo', (tempo) => {
    const performance = play('| F | Dm | Gm | C7 |', 'early-ska', tempo);
    for (const { duration } of eventsOf(performance, 'chops')) {
      expect(secondsAt(performance, duration)).toBeGreaterThan(0.075);
      expect(secondsAt(performance, duration)).toBeLessThan(0.085);
    }
  });

  // Common practice, no source: a half step and a minor ninth grate in a chord that is struck short.
  test.each(COLOURS)('of a %s chord has no half step between its strings', (colour) => {
    for (const root of ['C', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B']) {
      for (const pitches of grips(play(`| ${root}${colour} |`, 'early-ska'), 'chops')) {
        const apart = pitches.flatMap((low, index) => pitches.slice(index + 1).map((high) => high - low));
        expect(apart, `${root}${colour}: ${pitches.join(' ')}`).not.toContain(1);
        expect(apart, `${root}${colour}: ${pitches.join(' ')}`).not.toContain(13);
      }
    }
  });

  test('leaves the root to the bass before it leaves out the fifth', () => {
    // C9 has five tones, a hand of four strings plays E G B♭ D.
    const [grip = []] = grips(play('| C9 |', 'early-ska'), 'chops');
    expect(new Set(grip.map((pitch) => pitch % 12))).toEqual(new Set([4, 7, 10, 2]));
  });

  test('keeps the root where the bass has another note', () => {
    const [grip = []] = grips(play('| C9/E |', 'early-ska'), 'chops');
    expect(grip.map((pitch) => pitch % 12)).toContain(0);
  });
});

describe('the organ', () => {
  test('ties the tones that two held chords share', () => {
    const organ = eventsOf(play('| C | Am | F | C |', 'soul-backbeat'), 'organ');
    const ties = organ.filter(({ duration }) => duration > 3840);
    expect(ties.length).toBeGreaterThan(0);
    for (const { midi, start } of organ) {
      const sounding = organ.filter((other) => other.start < start && other.start + other.duration >= start);
      expect(sounding.map((other) => other.midi)).not.toContain(midi);
    }
  });

  test('a held chord changes with a split bar', () => {
    const starts = eventsOf(play('| C F |', 'soul-backbeat'), 'organ').map(({ start }) => start as number);
    expect(new Set(starts)).toEqual(new Set([0, 1920]));
  });

  test('has no note in both hands', () => {
    for (const feel of ['rocksteady', 'one-drop', 'soul-backbeat', 'bossa'] as const) {
      const organ = eventsOf(play('| C | Am | Dm7 | G7 | Fmaj7 | Bb | Eb6 | Ab |', feel), 'organ');
      const sounding = organ.map(({ midi, start }) => `${midi} ${start}`);
      expect(new Set(sounding).size, feel).toBe(sounding.length);
    }
  });
});
