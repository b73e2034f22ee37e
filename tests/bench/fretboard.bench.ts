import { describe } from 'vitest';
import { createRandom, midiNumber, ticks } from '../../src/core/base';
import {
  alternativesFor,
  createHandGauge,
  createInstrument,
  DEFAULT_HAND,
  fingerLine,
  lineAlternatives,
  rangeOf,
  TUNINGS,
} from '../../src/core/fretboard';
import { AT_ONCE, benchWithin, UNBROKEN } from './within';

const tuning = TUNINGS.find(({ id }) => id === 'six-strings');
const six = createInstrument(tuning?.openStrings, 24);
const EIGHTH = 480;

/** Any notes of the whole neck: harder than music, which comes back to the same few pitches. */
function randomLine(count: number) {
  const random = createRandom(1);
  const { lowest, highest } = rangeOf(six);
  return Array.from({ length: count }, (_, index) => ({
    start: ticks(index * EIGHTH),
    duration: ticks(EIGHTH),
    midi: midiNumber(lowest + random.below(highest - lowest + 1)),
  }));
}

/** Notes that stay near each other, as lines do. */
function wanderingLine(count: number) {
  const random = createRandom(2);
  let midi = 36;
  return Array.from({ length: count }, (_, index) => {
    midi = Math.min(55, Math.max(25, midi + random.below(11) - 5));
    return { start: ticks(index * EIGHTH), duration: ticks(EIGHTH), midi: midiNumber(midi) };
  });
}

const anywhere = { ...DEFAULT_HAND, highestFret: six.frets };

describe.each([
  ['random', randomLine],
  ['wandering', wanderingLine],
] as const)('fingering of a %s line, six strings, 24 frets', (kind, line) => {
  for (const count of [1000, 2000, 4000]) {
    const notes = line(count);
    for (const [how, loop] of [
      ['once', null],
      ['round and round', ticks(count * EIGHTH)],
    ] as const) {
      const name = `${count} notes, ${how}`;
      benchWithin({ what: `The fingering of a ${kind} line, ${name}`, name, budget: UNBROKEN }, () => {
        fingerLine(notes, six, anywhere, { ticksPerSecond: 1920, loop });
      });
    }
  }
});

describe('the composer asks what a bar of eight notes costs', () => {
  const bass = createInstrument();
  const gauge = createHandGauge(bass, DEFAULT_HAND, 1920);
  const notes = wanderingLine(16);
  const outlook = gauge.after(gauge.start, notes.slice(0, 8));
  const bar = notes.slice(8);
  const what = 'What a bar of eight notes costs the hand, four strings';
  benchWithin({ what, name: 'four strings', budget: { most: 0.05 } }, () => {
    gauge.after(outlook, bar);
  });
});

describe('other ways to play 32 bars of eighths, round and round', () => {
  const bass = createInstrument();
  const notes = wanderingLine(256).map((note) => ({ ...note, midi: midiNumber(note.midi + 4) }));
  const context = { ticksPerSecond: 1920, loop: ticks(256 * EIGHTH) };
  const other = 'Other ways to play';
  benchWithin({ what: `${other} a bar of 32`, name: 'a bar', budget: AT_ONCE }, () => {
    alternativesFor(notes, { first: 80, last: 87 }, bass, DEFAULT_HAND, context);
  });
  benchWithin({ what: `${other} a line of 32 bars`, name: 'the line', budget: AT_ONCE }, () => {
    lineAlternatives(notes, bass, DEFAULT_HAND, context);
  });
});
