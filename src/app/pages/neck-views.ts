import type { SpelledName } from '../../core/base';
import {
  type HandSettings,
  homePosition,
  notesInPosition,
  octaveShapes,
  romanNumeral,
  type ShapeNote,
} from '../../core/fretboard';
import type { LineSheet, SheetBar } from '../../core/lesson';
import { type Chord, degreeOf, formatDegree, formatName, scaleFor } from '../../core/theory';
import type { NeckNote } from '../../score';

/** Something to look at on the neck besides the line itself. */
export interface NeckView {
  /** The same for the same kind of shape in every bar, so that it can be followed through the chart. */
  readonly id: string;
  /** In a list of choices and in the picture's text: `chord tones in position V`, with the chord where a bar has two. */
  readonly title: string;
  readonly position: number;
  readonly notes: readonly NeckNote[];
}

/**
 * The shapes for the chords of a bar: chord tones and scale in the position that the line uses there, then every
 * one-octave shape of the chord on the neck, the lowest position first.
 */
export function neckViews(sheet: LineSheet, bar: SheetBar, hand: HandSettings): readonly NeckView[] {
  const chords = new Map<string, Chord>();
  for (const { harmony } of bar.written.spans) {
    if (harmony.kind === 'chord') chords.set(harmony.chord.symbol, harmony.chord);
  }
  const position =
    homePosition(bar.notes.map(({ fingered }) => fingered)) ?? homePosition(sheet.fingering.notes);
  return [...chords.values()].flatMap((chord, order) => {
    const views = [
      ...(position === null ? [] : inPosition(sheet, chord, order, position, hand)),
      ...octaves(sheet, chord, order, hand),
    ];
    return chords.size === 1
      ? views
      : views.map((view) => ({ ...view, title: `${chord.symbol}, ${view.title}` }));
  });
}

function inPosition(
  sheet: LineSheet,
  chord: Chord,
  order: number,
  position: NonNullable<ReturnType<typeof homePosition>>,
  hand: HandSettings,
): readonly NeckView[] {
  const scale = scaleFor(chord, sheet.key);
  const view = (id: string, what: string, names: readonly SpelledName[]): NeckView => ({
    id: `${id} ${order}`,
    title: `${what} in position ${romanNumeral(position)}`,
    position,
    notes: asNeckNotes(notesInPosition(names, position, sheet.instrument, hand), chord),
  });
  return [view('tones', 'chord tones', tonesOf(chord)), view('scale', `${scale.name} scale`, scale.names)];
}

function octaves(sheet: LineSheet, chord: Chord, order: number, hand: HandSettings): readonly NeckView[] {
  const shapes = octaveShapes(tonesOf(chord), sheet.instrument, hand);
  return shapes.map((shape, index) => {
    const root = shape.notes[0];
    const string = root && sheet.instrument.openStrings[root.string - 1];
    const from = string === undefined ? '' : ` from the ${formatName(string)} string`;
    return {
      id: `octave ${order} ${index}`,
      title: `octave in position ${romanNumeral(shape.position)}${from} (${index + 1} of ${shapes.length})`,
      position: shape.position,
      notes: asNeckNotes(shape.notes, chord),
    };
  });
}

const tonesOf = (chord: Chord): readonly SpelledName[] => chord.tones.map(({ name }) => name);

const asNeckNotes = (notes: readonly ShapeNote[], chord: Chord): readonly NeckNote[] =>
  notes.map(({ string, fret, finger, name }) => ({
    string,
    fret,
    finger,
    degree: formatDegree(degreeOf(name, chord.root)),
    name: formatName(name),
  }));
