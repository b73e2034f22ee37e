import { describe, expect, test } from 'vitest';
import {
  checkLevel,
  type Loudness,
  levelWords,
  reportOf,
  summaryOf,
  summaryWords,
} from '../../src/core/listening';
import { expectedAt } from './players';

type Stretch = readonly [seconds: number, decibels: number, clipped?: boolean];

/** Readings every twentieth of a second: stretches of them, wavering by a few decibels. */
const readings = (...stretches: readonly Stretch[]): readonly Loudness[] => {
  const all: Loudness[] = [];
  for (const [seconds, level, clipped] of stretches)
    for (let count = 0; count < seconds * 20; count += 1)
      all.push({
        at: all.length / 20,
        level: level + 2 * Math.sin(all.length * 1.7),
        clipped: clipped === true,
      });
  return all;
};

describe('the check of the level', () => {
  test('waits for a silent room, then for the bass, and finds both', () => {
    expect(checkLevel(readings([1, -65])).stage).toBe('room');
    const waits = checkLevel(readings([2.5, -65]));
    expect(waits).toMatchObject({ stage: 'bass', verdict: null });
    expect(levelWords(waits)).toContain('It is quiet here. Now play your lowest string');
    const done = checkLevel(readings([2.5, -65], [1, -20]));
    expect(done).toMatchObject({ stage: 'done', verdict: 'good' });
    if (done.stage !== 'done') throw new Error('The check is not done.');
    expect(done.floor).toBeCloseTo(-65, -0.5);
    expect(Math.abs(done.bass + 19)).toBeLessThan(2);
  });

  test('says in words what is too quiet, too loud or noisy', () => {
    const said = (...stretches: readonly Stretch[]) => levelWords(checkLevel(readings(...stretches)));
    expect(said([2.5, -70], [1, -45])).toContain('too quiet');
    expect(said([2.5, -70], [8, -64])).toContain('too quiet');
    expect(said([2.5, -70], [1, -6, true])).toContain('too loud');
    expect(said([2.5, -40], [1, -27])).toMatch(/^It is loud here\. .*noisy/);
    expect(said([2.5, -50], [1, -20])).toMatch(/^There is some noise here\. .*comes through well/);
    expect(said([2.5, -100], [8, -100])).toContain('muted or not connected');
  });

  test('takes nobody who plays from the beginning for a room', () => {
    const playing = readings(
      ...Array.from({ length: 16 }, (_, index) => [0.4, index % 2 === 0 ? -15 : -45] as const),
    );
    expect(checkLevel(playing)).toEqual({ stage: 'room', restless: true });
    expect(levelWords(checkLevel(playing))).toContain('go on without the check');
    // What is silent afterwards is the room all the same.
    const last = playing.at(-1)?.at ?? 0;
    const after = readings([2.5, -66], [1, -22]).map((each) => ({ ...each, at: each.at + last }));
    expect(checkLevel([...playing, ...after])).toMatchObject({ stage: 'done', verdict: 'good' });
  });
});

test('who is not heard at all is sent to the level and the input', () => {
  const summary = summaryOf(reportOf(expectedAt(80), []));
  const [first] = summaryWords(summary, { numberOf: (bar) => bar + 1, tell: Math.round });
  expect(first).toContain('I heard none of the 14 written notes. If you played, look at the level');
});
