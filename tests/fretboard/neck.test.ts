import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fret, midiNumber, midiOf, stringNumber } from '../../src/core/base';
import { createInstrument, pitchAt, placesOf, rangeOf, TUNINGS, writeTuning } from '../../src/core/fretboard';

const instruments = TUNINGS.flatMap(({ id, openStrings }) =>
  [20, 24].map((frets) => ({
    name: `${id}, ${frets} frets`,
    instrument: createInstrument(openStrings, frets),
  })),
);

describe.each(instruments)('the neck: $name', ({ instrument }) => {
  it('sounds the pitch at each of its places, and lists every place that sounds it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 127 }), (midi) => {
        const places = placesOf(midiNumber(midi), instrument);
        for (const place of places) expect(pitchAt(place, instrument)).toBe(midi);
        const all = instrument.openStrings.flatMap((_, index) =>
          Array.from({ length: instrument.frets + 1 }, (__, at) => ({
            string: stringNumber(index + 1),
            fret: fret(at),
          })),
        );
        expect(places).toEqual(all.filter((place) => pitchAt(place, instrument) === midi));
      }),
      { seed: 4 },
    );
  });

  it('ranges from the lowest open string to the last fret of the highest one', () => {
    const open = instrument.openStrings.map(midiOf);
    expect(rangeOf(instrument)).toEqual({
      lowest: Math.min(...open),
      highest: Math.max(...open) + instrument.frets,
    });
    expect(rangeOf(instrument, 5).highest).toBe(Math.max(...open) + 5);
  });
});

describe('an instrument', () => {
  it('refuses places that it does not have', () => {
    const bass = createInstrument();
    expect(() => pitchAt({ string: stringNumber(5), fret: fret(0) }, bass)).toThrow(RangeError);
    expect(() => pitchAt({ string: stringNumber(1), fret: fret(21) }, bass)).toThrow(RangeError);
  });

  it('lists no place for a pitch below or above the neck', () => {
    const bass = createInstrument();
    expect(placesOf(midiNumber(27), bass)).toEqual([]);
    expect(placesOf(midiNumber(64), bass)).toEqual([]);
  });

  it('spells its tunings as players say them, the lowest string first', () => {
    expect(TUNINGS.map(({ id, openStrings }) => [id, writeTuning(openStrings, 'letters')])).toEqual([
      ['standard', 'E A D G'],
      ['drop-d', 'D A D G'],
      ['whole-step-down', 'D G C F'],
      ['half-step-down', 'E♭ A♭ D♭ G♭'],
      ['five-strings', 'B E A D G'],
      ['five-strings-high', 'E A D G C'],
      ['six-strings', 'B E A D G C'],
    ]);
  });

  it.each([
    ['six-strings', 'letters', 'B E A D G C', 'Six strings, low B to high C'],
    ['six-strings', 'german', 'H E A D G C', 'Six strings, low H to high C'],
    ['five-strings', 'fixed do', 'Si Mi La Re Sol', 'Five strings, low Si'],
    ['half-step-down', 'german', 'Es As Des Ges', 'Half a step down'],
    ['drop-d', 'fixed do', 'Re La Re Sol', 'Drop Re'],
  ] as const)('names %s in %s as %s, %s', (id, naming, spelling, name) => {
    const tuning = TUNINGS.find((each) => each.id === id);
    expect(tuning && writeTuning(tuning.openStrings, naming)).toBe(spelling);
    expect(tuning?.name(naming)).toBe(name);
  });
});
