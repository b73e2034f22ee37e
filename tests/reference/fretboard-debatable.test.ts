import { describe, expect, it } from 'vitest';
import { alternativesFor, createInstrument, DEFAULT_HAND, type HandSettings } from '../../src/core/fretboard';
import { run, written } from '../fretboard/lines';

/**
 * Lines about which players differ, and the two ways that they would defend. The table is our own reasoning
 * (common practice, no source): a search that hides one of the two ways hides a choice that is the teacher's.
 */
const closed: HandSettings = { ...DEFAULT_HAND, openStrings: 'avoid' };
const open: HandSettings = { ...DEFAULT_HAND, openStrings: 'allow' };
const automatic: HandSettings = { ...DEFAULT_HAND, system: 'automatic' };

interface Debate {
  readonly line: string;
  readonly midis: readonly number[];
  readonly hand: HandSettings;
  readonly one: string;
  readonly other: string;
  readonly about: string;
}

const DEBATES: readonly Debate[] = [
  {
    line: 'C major scale',
    midis: [36, 38, 40, 41, 43, 45, 47, 48],
    hand: closed,
    one: 'A3.2 A5.4 D2.1 D3.2 D5.4 G2.1 G4.3 G5.4',
    other: 'E8.2 E10.4 A7.1 A8.2 A10.4 D7.1 D9.3 D10.4',
    about: 'low frets that beginners know, or narrow frets that ask for no stretch',
  },
  {
    line: 'G minor up the octave',
    midis: [31, 34, 38, 43],
    hand: automatic,
    one: 'E3.1 E6.4 A5.3 D5.4',
    other: 'E3.4 A1.1 D0.0 G0.0',
    about: 'a movable shape that can be muted, or open strings without a stretch',
  },
  {
    line: 'C, fifth, octave',
    midis: [36, 43, 48, 43],
    hand: closed,
    one: 'A3.1 D5.3 G5.3 D5.3',
    other: 'A3.2 D5.4 G5.4 D5.4',
    about: 'from the first finger, or from the second, where the major third is under the hand',
  },
  {
    line: 'F, A, C',
    midis: [29, 33, 36, 33],
    hand: closed,
    one: 'E1.1 E5.4 A3.2 E5.4',
    other: 'E1.1 E5.1 E8.4 E5.1',
    about: 'a small shift across two strings, or a long one along one string and its one sound',
  },
  {
    line: 'octaves on A',
    midis: [33, 45, 33, 45],
    hand: automatic,
    one: 'E5.1 D7.3 E5.1 D7.3',
    other: 'A0.0 G2.2 A0.0 G2.2',
    about: 'fretted and short, or open and ringing',
  },
  {
    line: 'G up to C by half steps',
    midis: [31, 32, 33, 34, 35, 36],
    hand: closed,
    one: 'E3.1 E4.2 E5.3 E6.4 A2.1 A3.2',
    other: 'E3.2 E4.3 E5.4 A1.1 A2.2 A3.3',
    about: 'all four fingers before the shift, or the shift one note earlier',
  },
  {
    line: 'shuffle on A',
    midis: [33, 37, 40, 42, 45, 42, 40, 37],
    hand: open,
    one: 'E5.2 A4.1 A7.4 D4.1 D7.4 D4.1 A7.4 A4.1',
    other: 'A0.0 A4.3 D2.1 D4.3 G2.1 D4.3 D2.1 A4.3',
    about: 'the pattern that moves to the next chord as it is, or the open root with an easy hand',
  },
  {
    line: 'B♭ up the octave',
    midis: [34, 38, 41, 46],
    hand: open,
    one: 'E6.2 A5.1 A8.4 D8.4',
    other: 'A1.1 D0.0 D3.3 G3.3',
    about: 'one movable shape, or the first position with an open third',
  },
  {
    line: 'A minor seventh',
    midis: [33, 36, 40, 43],
    hand: closed,
    one: 'E5.1 E8.4 A7.3 D5.1',
    other: 'E5.4 A3.2 D2.1 D5.4',
    about: 'up the neck from the first finger, or down the neck from the fourth',
  },
  {
    line: 'C major seventh',
    midis: [36, 40, 43, 47],
    hand: open,
    one: 'A3.2 D2.1 D5.4 G4.3',
    other: 'E8.2 A7.1 A10.4 D9.3',
    about: 'one stretch low down, or none higher up',
  },
];

describe('lines that players finger in two ways', () => {
  it.each(DEBATES)('$line: $about', ({ midis, hand, one, other }) => {
    const stretch = { first: 0, last: midis.length - 1 };
    const ways = alternativesFor(
      run(midis),
      stretch,
      createInstrument(),
      hand,
      { ticksPerSecond: 1920, loop: null },
      3,
    );
    const offered = ways.map(({ fingering }) => written(fingering.notes));
    expect(offered).toContain(one);
    expect(offered).toContain(other);
  });
});
