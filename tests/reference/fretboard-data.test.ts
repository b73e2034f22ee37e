import { expect, it } from 'vitest';
import { frequencyOf, fret, midiNumber, midiOf } from '../../src/core/base';
import { fretDistance, handSpan, TUNINGS } from '../../src/core/fretboard';
import { formatPitch } from '../../src/core/theory';
import { describeWithReferenceData } from '../support/reference-data';

/** The columns of a table with tabs between them, the heading left out. */
const rows = (text: string): readonly (readonly string[])[] =>
  text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split('\t'));

const IDS: Readonly<Record<string, string>> = {
  '4-string': 'standard',
  '5-string low B': 'five-strings',
  '6-string B-C': 'six-strings',
};

// ISO 16:1975 (A4 = 440 Hz), twelve-tone equal temperament, and the fret rule d = L · (1 − 2^(−n/12)).
describeWithReferenceData('pitch and neck by equal temperament', 168, (read) => {
  it('every MIDI number has its frequency', () => {
    const table = rows(read('fretboard/equal-temperament-A440.tsv'));
    expect(table).toHaveLength(128);
    for (const [midi, , hertz] of table) {
      const frequency = frequencyOf(midiNumber(Number(midi)));
      expect(Math.abs(frequency - Number(hertz))).toBeLessThan(0.00006 + Number(hertz) * 1e-6);
    }
  });

  it('every fret of a 34-inch neck lies where the rule puts it', () => {
    for (const [at, fromNut, apart] of rows(read('fretboard/fret-distance-34in.tsv'))) {
      const number = Number(at);
      expect(fretDistance(number, 863.6)).toBeCloseTo(Number(fromNut), 3);
      if (number > 0) expect(handSpan(fret(number - 1), fret(number), 863.6)).toBeCloseTo(Number(apart), 3);
    }
  });

  it('every open string sounds its pitch', () => {
    for (const [instrument = '', string, pitch, midi] of rows(read('fretboard/tunings.tsv'))) {
      const tuning = TUNINGS.find(({ id }) => id === IDS[instrument]);
      const open = tuning?.openStrings[Number(string) - 1];
      expect(open && formatPitch(open)).toBe(pitch);
      expect(open && midiOf(open)).toBe(Number(midi));
    }
  });
});
