/** Chords told from notes, held against the chord finder of Tonal (tonaljs/tonal, MIT) and against our own exports. */
import { Chord as Tonal } from 'tonal';
import { describe, expect, it } from 'vitest';
import { midiOf, TICKS_PER_QUARTER } from '../../src/core/base';
import { parseChart } from '../../src/core/chart';
import { chordalBars, chordsByTriads, type SoundingBar } from '../../src/core/exchange/reading/triads';
import { parseChord } from '../../src/core/theory';

const QUARTER = TICKS_PER_QUARTER;
const KEY = { tonic: { letter: 'F', alteration: 0 }, mode: 'major' } as const;

/** Notes over beats of a bar in 4/4: a list of `beat, beats, MIDI numbers`. */
const bar = (...strokes: readonly (readonly [number, number, ...number[]])[]): SoundingBar => ({
  notes: strokes.flatMap(([beat, beats, ...keys]) =>
    keys.map((midi) => ({ start: beat * QUARTER, end: (beat + beats) * QUARTER, midi })),
  ),
  length: 4 * QUARTER,
  beat: QUARTER,
  key: KEY,
});

const read = (...bars: readonly SoundingBar[]): readonly string[] =>
  chordsByTriads(bars).map((chords) =>
    chords.map(({ at, chord }) => `${chord?.symbol}@${at / QUARTER}`).join(' '),
  );

/** A chord's tones from its root up, over middle C. */
function tonesOf(symbol: string): readonly number[] {
  const chord = parseChord(symbol);
  if (!chord.ok) throw new Error(symbol);
  const tones = chord.value.tones.map(({ name }) => midiOf({ ...name, octave: 4 }) % 12);
  let last = 47;
  return tones.map((tone) => {
    last += (((tone - last) % 12) + 12) % 12 || 12;
    return last;
  });
}

const SUFFIXES = ['', 'm', 'dim', '7', 'm7', 'maj7', 'm7b5'];
const ROOTS = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];

describe('the chords that notes make', () => {
  it('are those they were written from, in every inversion, as Tonal finds them too', () => {
    for (const root of ROOTS) {
      for (const suffix of SUFFIXES) {
        const tones = tonesOf(root + suffix);
        for (const turned of tones.keys()) {
          const keys = tones.map((key, index) => (index < turned ? key + 12 : key));
          const [found = ''] = read(bar([0, 4, ...keys]));
          const chord = parseChord(found.slice(0, found.indexOf('@')));
          const pitches = new Set(
            chord.ok ? chord.value.tones.map(({ name }) => midiOf({ ...name, octave: 4 }) % 12) : [],
          );
          expect([root + suffix, [...pitches].sort()]).toEqual([
            root + suffix,
            [...new Set(keys.map((key) => key % 12))].sort(),
          ]);
        }
        const names = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];
        const detected = Tonal.detect(tones.map((key) => names[key % 12] ?? ''));
        const [own = ''] = read(bar([0, 4, ...tones]));
        const ours = Tonal.get(
          own.slice(0, own.indexOf('@')).replace(/♭/g, 'b').replace(/♯/g, '#').replace('♭5', 'b5'),
        );
        const theirs = detected.map((name) => Tonal.get(name.split('/')[0] ?? '').chroma);
        expect(theirs).toContain(ours.chroma);
      }
    }
  });

  it('begin on the beats where they change, and sound on where nothing new can be told', () => {
    expect(
      read(bar([0, 2, 65, 69, 72], [2, 2, 67, 70, 74]), bar([0, 4, 67, 70, 74]), bar(), bar([0, 4, 60])),
    ).toEqual(['F@0 Gm@2', '', '', '']);
    // Off-beat chops, a passing tone and a broken chord are one chord each (common practice, no source).
    expect(
      read(
        bar([0.5, 0.5, 65, 69, 72], [1.5, 0.5, 65, 69, 72], [2.5, 0.5, 65, 69, 72], [3.5, 0.5, 65, 69, 72]),
        bar([0, 4, 60, 64, 67], [3, 0.2, 62]),
        bar([0, 1, 62], [1, 1, 65], [2, 1, 69], [3, 1, 65]),
      ),
    ).toEqual(['F@0', 'C@0', 'Dm@0']);
  });

  it('are spelled by the key', () => {
    const inC = { ...bar([0, 4, 58, 62, 65]), key: KEY };
    expect(read(inC)).toEqual(['B♭@0']);
    expect(read({ ...inC, key: { tonic: { letter: 'B', alteration: 0 }, mode: 'major' } })).toEqual(['A♯@0']);
  });

  it('are asked of parts that play several notes together, and of no tune', () => {
    expect(chordalBars([bar([0, 4, 60, 64, 67]).notes, bar([0, 1, 60], [1, 1, 64], [2, 1, 67]).notes])).toBe(
      1,
    );
  });
});

it('reads a chart of its own grammar the same way', () => {
  const { chart } = parseChart('| F | Gm |', { count: 4, unit: 4 });
  const symbols = chart.bars.flatMap(({ spans }) =>
    spans.flatMap(({ harmony }) => (harmony.kind === 'chord' ? [harmony.chord.symbol] : [])),
  );
  expect(symbols.map((symbol) => read(bar([0, 4, ...tonesOf(symbol)]))[0])).toEqual(['F@0', 'Gm@0']);
});
