import { describe, expect, it } from 'vitest';
import { fret, stringNumber } from '../../src/core/base';
import {
  createInstrument,
  DEFAULT_HAND,
  fretDistance,
  octaveShapes,
  TUNINGS,
} from '../../src/core/fretboard';
import { formatNameIn, parseChord } from '../../src/core/theory';
import { layoutFretboard } from '../../src/score/neck/layout';
import type { FretboardLayout, FretboardRequest, NeckNote, NeckPlate } from '../../src/score/neck/types';

const instrument = createInstrument();

const note = (
  string: number,
  at: number,
  degree: string,
  name: string,
  finger: NeckNote['finger'],
): NeckNote => ({
  string: stringNumber(string),
  fret: fret(at),
  degree,
  name,
  finger,
});

/** F major from the first fret of the E string. */
const F_MAJOR: readonly NeckNote[] = [
  note(4, 1, 'R', 'F', 1),
  note(3, 0, '3', 'A', 0),
  note(3, 3, '5', 'C', 3),
  note(2, 3, '8', 'F', 3),
];

const picture = (request: Partial<FretboardRequest> = {}): FretboardLayout =>
  layoutFretboard({
    title: 'F, chord tones',
    instrument,
    noteNames: 'letters',
    notes: F_MAJOR,
    show: 'degree',
    position: 1,
    width: 360,
    ...request,
  });

const plates = ({ marks }: FretboardLayout): readonly NeckPlate[] =>
  marks.flatMap((mark) => (mark.kind === 'plate' ? [mark] : []));

const texts = ({ marks }: FretboardLayout, role: string): readonly string[] =>
  marks.flatMap((mark) => (mark.kind === 'text' && mark.role === role ? [mark.text] : []));

describe('the fretboard picture', () => {
  it('names the strings as the lesson does, in the picture and in its words', () => {
    const five = createInstrument(TUNINGS.find(({ id }) => id === 'five-strings')?.openStrings);
    const german = picture({ noteNames: 'german', instrument: five, notes: [note(5, 0, 'R', 'H', 0)] });
    expect(texts(german, 'string-name')).toEqual(['G', 'D', 'A', 'E', 'H']);
    expect(german.description).toContain('H string: open H, root.');
    const fixedDo = picture({ noteNames: 'fixed do', instrument: five, notes: [] });
    expect(texts(fixedDo, 'string-name')).toEqual(['Sol', 'Re', 'La', 'Mi', 'Si']);
  });

  it('writes degrees, names or fingers', () => {
    const written = (show: FretboardRequest['show']) => plates(picture({ show })).map(({ text }) => text);
    expect(written('degree')).toEqual(['R', '3', '5', '8']);
    expect(written('name')).toEqual(['F', 'A', 'C', 'F']);
    expect(written('finger')).toEqual(['1', '0', '3', '3']);
  });

  it('has the lowest string at the bottom, as the tab has', () => {
    expect(texts(picture(), 'string-name')).toEqual(['G', 'D', 'A', 'E']);
    const [low, , , high] = plates(picture());
    expect(low?.y).toBeGreaterThan(high?.y ?? Number.POSITIVE_INFINITY);
  });

  it('begins at the nut near the nut, and with the hand elsewhere', () => {
    expect(texts(picture(), 'fret-number')).toEqual(['1', '2', '3', '4', '5']);
    const high = picture({ notes: [note(3, 8, 'R', 'F', 1)], position: 8 });
    expect(texts(high, 'fret-number')).toEqual(['8', '9', '10', '11', '12']);
    expect(texts(high, 'position')).toEqual(['VIII']);
  });

  it('never goes beyond the neck', () => {
    const end = picture({ notes: [note(1, 20, 'R', 'E♭', 4)], position: 17 });
    expect(texts(end, 'fret-number').at(-1)).toBe('20');
  });

  // Equal temperament: d = L(1 − 2^(−n/12)).
  it('spaces the frets as the neck does', () => {
    const xs = picture().marks.flatMap((mark) =>
      mark.kind === 'line' && mark.role === 'fret' ? [mark.x1] : [],
    );
    const [one = 0, two = 0, three = 0] = xs;
    const wire = (at: number) => fretDistance(at, instrument.scaleLength);
    expect((two - one) / (three - two)).toBeCloseTo((wire(2) - wire(1)) / (wire(3) - wire(2)), 5);
  });

  it('is mirrored for a left-handed player, its words unchanged', () => {
    const right = picture();
    const left = picture({ instrument: { ...instrument, leftHanded: true } });
    expect(plates(left).map(({ text }) => text)).toEqual(plates(right).map(({ text }) => text));
    plates(left).forEach((plate, index) => {
      expect(plate.x).toBeCloseTo(360 - (plates(right)[index]?.x ?? 0), 5);
    });
    expect(left.description).toBe(right.description);
  });

  it('marks the sounding note and announces the coming shift', () => {
    const now = picture({ sounding: { string: stringNumber(3), fret: fret(3) }, nextPosition: 5 });
    expect(plates(now).map(({ sounding }) => sounding)).toEqual([false, false, true, false]);
    expect(texts(now, 'next-position')).toEqual(['then V']);
  });

  it('keeps its strings in their place, shift or no shift, where it is to stand still', () => {
    const stringsOf = (request: Partial<FretboardRequest>) =>
      picture({ ...request, steady: true }).marks.flatMap((mark) =>
        mark.kind === 'line' && mark.role === 'string' ? [mark.y1] : [],
      );
    expect(stringsOf({ nextPosition: 5 })).toEqual(stringsOf({}));
    expect(stringsOf({ position: null, notes: [] })).toEqual(stringsOf({}));
  });

  it('leaves air between the numeral of the hand and the plates under it', () => {
    const high = picture({ notes: [note(1, 2, 'R', 'A', 2), note(1, 3, '♭2', 'B♭', 3)] });
    const numeral = high.marks.find((mark) => mark.kind === 'text' && mark.role === 'position');
    const top = Math.min(...plates(high).map(({ y, height }) => y - height / 2));
    expect(numeral?.kind === 'text' && numeral.y).toBeLessThan(top - 4);
    expect(numeral?.kind === 'text' && numeral.y - numeral.size).toBeGreaterThan(-4);
  });

  it('says everything in words', () => {
    expect(picture({ nextPosition: 5 }).description).toBe(
      'F, chord tones, hand position I. E string: fret 1 F, root, finger 1. A string: open A, 3; fret 3 C, 5, finger 3. D string: fret 3 F, 8, finger 3. Then the hand moves to position V.',
    );
    expect(picture({ notes: [], position: null }).description).toBe('F, chord tones. No notes.');
  });

  it.each(TUNINGS)(
    'keeps plates and words apart and inside for every shape of a chord: $id',
    ({ openStrings }) => {
      const chord = parseChord('B♭m7♭5');
      if (!chord.ok) throw new Error('The chord is gone.');
      const neck = createInstrument(openStrings);
      const names = chord.value.tones.map(({ name }) => name);
      for (const shape of octaveShapes(names, neck, DEFAULT_HAND).slice(0, 20)) {
        const looks = [300, 390, 900].flatMap((width) =>
          (['degree', 'name'] as const).map((show) => ({ width, show })),
        );
        for (const { width, show } of looks) {
          const notes = shape.notes.map((each) => ({
            ...each,
            degree: '♭♭7',
            name: formatNameIn('fixed do', each.name),
          }));
          const layout = layoutFretboard({
            title: 'B♭m7♭5',
            instrument: neck,
            noteNames: 'fixed do',
            notes,
            show,
            position: shape.position,
            width,
          });
          const all = plates(layout);
          const lowest = Math.max(...all.map(({ y, height }) => y + height / 2));
          const numbers = layout.marks.flatMap((mark) =>
            mark.kind === 'text' && mark.role === 'fret-number' ? [mark.y - mark.size * 0.722] : [],
          );
          expect(Math.min(...numbers)).toBeGreaterThan(lowest + 2);
          all.forEach((one, index) => {
            expect(one.x - one.width / 2).toBeGreaterThanOrEqual(0);
            expect(one.x + one.width / 2).toBeLessThanOrEqual(width);
            for (const other of all.slice(index + 1)) {
              const apart =
                Math.abs(one.x - other.x) >= (one.width + other.width) / 2 ||
                Math.abs(one.y - other.y) >= (one.height + other.height) / 2;
              expect(apart).toBe(true);
            }
          });
        }
      }
    },
  );
});
