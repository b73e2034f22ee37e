import type { SpelledName } from '../../core/base';
import {
  type HandSettings,
  homePosition,
  notesInPosition,
  octaveShapes,
  romanNumeral,
  type ShapeNote,
} from '../../core/fretboard';
import type { LineSheet, SheetBar, SheetNote } from '../../core/lesson';
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
 * one-octave shape of the chord and of its scale on the neck, the lowest position first.
 */
export function neckViews(sheet: LineSheet, bar: SheetBar, hand: HandSettings): readonly NeckView[] {
  const chords = new Map<string, Chord>();
  for (const { harmony } of bar.written.spans) {
    if (harmony.kind === 'chord') chords.set(harmony.chord.symbol, harmony.chord);
  }
  const position =
    homePosition(bar.notes.map(({ fingered }) => fingered)) ?? homePosition(sheet.fingering.notes);
  return [...chords.values()].flatMap((chord, order) => {
    const scale = scaleFor(chord, sheet.key);
    const kinds: readonly Kind[] = [
      { id: `tones ${order}`, what: 'chord tones', names: tonesOf(chord) },
      { id: `scale ${order}`, what: `${scale.name} scale`, names: scale.names },
    ];
    const views = [
      ...(position === null ? [] : kinds.map((kind) => inPosition(sheet, chord, kind, position, hand))),
      ...kinds.flatMap((kind) => octaves(sheet, chord, kind, hand)),
    ];
    return chords.size === 1
      ? views
      : views.map((view) => ({ ...view, title: `${chord.symbol}, ${view.title}` }));
  });
}

function inPosition(
  sheet: LineSheet,
  chord: Chord,
  { id, what, names }: Kind,
  position: NonNullable<ReturnType<typeof homePosition>>,
  hand: HandSettings,
): NeckView {
  return {
    id,
    title: `${what} in position ${romanNumeral(position)}`,
    position,
    notes: asNeckNotes(notesInPosition(names, position, sheet.instrument, hand), chord),
  };
}

interface Kind {
  /** In ids: `tones 0`. */
  readonly id: string;
  readonly what: string;
  readonly names: readonly SpelledName[];
}

function octaves(sheet: LineSheet, chord: Chord, { id, what, names }: Kind, hand: HandSettings) {
  const shapes = octaveShapes(names, sheet.instrument, hand);
  return shapes.map((shape, index): NeckView => {
    const root = shape.notes[0];
    const string = root && sheet.instrument.openStrings[root.string - 1];
    const from = string === undefined ? '' : ` from the ${formatName(string)} string`;
    return {
      id: `octave of ${id} ${index}`,
      title: `octave of ${what} in position ${romanNumeral(shape.position)}${from} (${index + 1} of ${shapes.length})`,
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
