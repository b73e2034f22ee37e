import { describe, expect, it } from 'vitest';
import { fret, midiNumber, midiOf } from '../../src/core/base';
import { createInstrument, DEFAULT_HAND, HAND_SPANS, placesOf, underHand } from '../../src/core/fretboard';

const bass = createInstrument();
const POSITIONS = [1, 2, 3, 5, 7, 9];

describe('the pitches under a hand', () => {
  it.each(POSITIONS)(
    'are those that its four fingers hold in position %i, each on some string',
    (position) => {
      const { frets } = underHand(position, bass, DEFAULT_HAND);
      for (let midi = 0; midi < 128; midi += 1) {
        const places = placesOf(midiNumber(midi), bass);
        const held = places.some((place) => place.fret >= position && place.fret <= position + 3);
        if (held) expect(frets[midi], `${midi}`).toBeGreaterThan(0);
        // No finger reaches further than one fret out of its place.
        const near = places.some((place) => place.fret >= position - 1 && place.fret <= position + 4);
        if (!near) expect(frets[midi], `${midi}`).toBe(0);
      }
    },
  );

  it.each(POSITIONS)('lie on frets that sound them in position %i', (position) => {
    const { frets } = underHand(position, bass, DEFAULT_HAND);
    frets.forEach((held, midi) => {
      const places = placesOf(midiNumber(midi), bass).map((place) => Number(place.fret));
      if (held > 0) expect(places, `${midi}`).toContain(held);
    });
  });

  it('have the open strings beside them, unless they are to be avoided', () => {
    const opens = bass.openStrings.map(midiOf);
    for (const midi of opens) {
      expect(underHand(2, bass, DEFAULT_HAND).open[midi]).toBe(true);
      expect(underHand(2, bass, { ...DEFAULT_HAND, openStrings: 'avoid' }).open[midi]).toBe(false);
    }
  });

  it('end at the highest fret of the hand', () => {
    const { frets } = underHand(3, bass, { ...DEFAULT_HAND, highestFret: fret(5) });
    expect(frets[midiOf({ letter: 'C', alteration: 0, octave: 3 })]).toBe(5);
    expect(frets[midiOf({ letter: 'C', alteration: 1, octave: 3 })]).toBe(0);
  });

  it('are fewer for a small hand in the system of three fingers', () => {
    const count = (frets: readonly number[]) => frets.filter((fret) => fret > 0).length;
    const small = { ...DEFAULT_HAND, ...HAND_SPANS.child, system: '1-2-4' as const };
    expect(count(underHand(2, bass, small).frets)).toBeLessThan(
      count(underHand(2, bass, DEFAULT_HAND).frets),
    );
  });
});
