import type { Finger, Fret, SpelledName } from '../base';
import {
  type HandSettings,
  homePosition,
  notesInPosition,
  octaveShapes,
  type Place,
  romanNumeral,
  type ShapeNote,
} from '../fretboard';
import {
  type Chord,
  degreeOf,
  describeScaleIn,
  formatChordIn,
  formatDegree,
  formatNameIn,
  type Key,
  type Naming,
  scaleFor,
} from '../theory';
import type { LineSheet, SheetBar, SheetNote } from './sheet-types';

/** A note of a shape with its words. */
export interface NamedShapeNote extends Place {
  /** Over the chord: `R`, `♭3`. */
  readonly degree: string;
  /** As the lesson names notes: `B♭`. */
  readonly name: string;
  readonly finger: Finger | null;
}

/** Something to look at on the neck besides the line itself. */
export interface NeckShape {
  /** The same for the same kind of shape in every bar, so that it can be followed through the chart. */
  readonly id: string;
  /** In a list of choices and in the picture's text: `chord tones in position V`, with the chord where a bar has two. */
  readonly title: string;
  /** Its place in words: `in position V`, `in position V from the A string`. */
  readonly where: string;
  readonly position: number;
  readonly notes: readonly NamedShapeNote[];
}

/** What a shape is made of. */
export interface ShapeKind {
  /** In ids: `tones`. */
  readonly id: 'tones' | 'scale';
  /** `chord tones`, `F major scale`. */
  readonly what: string;
  readonly names: readonly SpelledName[];
}

/** The tones of a chord, and the scale that fits it in its key. */
export function kindsOf(
  chord: Chord,
  key: Key,
  naming: Naming,
): { readonly tones: ShapeKind; readonly scale: ShapeKind } {
  const scale = scaleFor(chord, key);
  return {
    tones: { id: 'tones', what: 'chord tones', names: tonesOf(chord) },
    scale: { id: 'scale', what: `${describeScaleIn(naming, scale)} scale`, names: scale.names },
  };
}

/**
 * The shapes for the chords of a bar: chord tones and scale in the position that the line uses there, then every
 * one-octave shape of the chord and of its scale on the neck, the lowest position first.
 */
export function neckShapes(sheet: LineSheet, bar: SheetBar, hand: HandSettings): readonly NeckShape[] {
  const chords = new Map<string, Chord>();
  for (const { harmony } of bar.written.spans) {
    if (harmony.kind === 'chord') chords.set(harmony.chord.symbol, harmony.chord);
  }
  const position =
    homePosition(bar.notes.map(({ fingered }) => fingered)) ?? homePosition(sheet.fingering.notes);
  return [...chords.values()].flatMap((chord, order) => {
    const { tones, scale } = kindsOf(chord, bar.written.key ?? sheet.key, namingOf(sheet));
    const kinds = [tones, scale];
    const shapes = [
      ...(position === null ? [] : kinds.map((kind) => shapeAt(sheet, chord, kind, position, hand))),
      ...kinds.flatMap((kind) => octavesOf(sheet, chord, kind, hand)),
    ];
    const name = chords.size === 1 ? '' : `${formatChordIn(namingOf(sheet), chord)}, `;
    return shapes.map((shape) => ({ ...shape, id: `${shape.id} ${order}`, title: `${name}${shape.title}` }));
  });
}

/** All the notes of a kind that lie under the hand in a position. */
export const shapeAt = (
  sheet: LineSheet,
  chord: Chord,
  { id, what, names }: ShapeKind,
  position: Fret,
  hand: HandSettings,
): NeckShape => ({
  id,
  title: `${what} in position ${romanNumeral(position)}`,
  where: `in position ${romanNumeral(position)}`,
  position,
  notes: named(sheet, notesInPosition(names, position, sheet.instrument, hand), chord),
});

/** Every shape of one octave on the neck up to the hand's highest fret, the lowest position first. */
export function octavesOf(
  sheet: LineSheet,
  chord: Chord,
  { id, what, names }: ShapeKind,
  hand: HandSettings,
): readonly NeckShape[] {
  const shapes = octaveShapes(names, sheet.instrument, hand);
  return shapes.map((shape, index): NeckShape => {
    const root = shape.notes[0];
    const string = root && sheet.instrument.openStrings[root.string - 1];
    const from = string === undefined ? '' : ` from the ${formatNameIn(namingOf(sheet), string)} string`;
    const where = `in position ${romanNumeral(shape.position)}${from}`;
    return {
      id: `octave of ${id} ${index}`,
      title: `octave of ${what} ${where} (${index + 1} of ${shapes.length})`,
      where,
      position: shape.position,
      notes: named(sheet, shape.notes, chord),
    };
  });
}

const namingOf = ({ noteNames = 'letters' }: LineSheet): Naming => noteNames;

const tonesOf = (chord: Chord): readonly SpelledName[] => chord.tones.map(({ name }) => name);

const named = (sheet: LineSheet, notes: readonly ShapeNote[], chord: Chord): readonly NamedShapeNote[] =>
  notes.map(({ string, fret, finger, name }) => ({
    string,
    fret,
    finger,
    degree: formatDegree(degreeOf(name, chord.root)),
    name: formatNameIn(namingOf(sheet), name),
  }));

const isFretted = ({ fingered }: SheetNote): boolean => fingered !== null && fingered.finger !== 0;

/** Where the hand stands now, or at the bar's beginning, and where it goes next within this bar and the next one. */
export function handMoves(sheet: LineSheet, index: number, sounding: SheetNote | null) {
  const inBar = sheet.bars[index]?.notes ?? [];
  const from = sounding === null ? 0 : Math.max(0, inBar.indexOf(sounding));
  const coming = [...inBar.slice(from), ...(sheet.bars[index + 1]?.notes ?? [])].filter(isFretted);
  const positions = coming.flatMap(({ fingered }) => (fingered === null ? [] : [fingered.position]));
  const position = sounding?.fingered?.position ?? positions[0] ?? null;
  return { position, nextPosition: positions.find((each) => each !== position) ?? null };
}
