import { barName, capitalised } from '../../../core/base';
import {
  handMoves,
  type LineSheet,
  type NeckShape,
  type SheetBar,
  type SheetNote,
} from '../../../core/lesson';
import { formatNameIn, type Naming } from '../../../core/theory';
import type { FretboardRequest, NeckNote } from '../../../score';
import { chordsOf } from '../words';

/** What can be written on the notes. */
export type NeckLabel = FretboardRequest['show'];

export const NECK_LABELS: readonly { readonly value: NeckLabel; readonly label: string }[] = [
  { value: 'degree', label: 'degree' },
  { value: 'name', label: 'name' },
  { value: 'finger', label: 'finger' },
];

/** The choice that is no view: what the line plays in the bar. */
export const LINE_NOTES = 'line';

/** What the neck can show for a bar, as choices of a list. */
export const neckChoices = (views: readonly NeckShape[]) => [
  { value: LINE_NOTES, label: 'the notes of the line' },
  ...views.map(({ id, title }) => ({ value: id, label: title })),
];

/**
 * The neck for one bar: a view, or the notes of the line with the hand that plays them.
 * @param index - of the written bar
 * @param sounding - the note that is heard now
 */
export function neckPicture(
  sheet: LineSheet,
  index: number,
  view: NeckShape | undefined,
  sounding: SheetNote | null,
): Omit<FretboardRequest, 'show' | 'width'> | null {
  const bar = sheet.bars[index];
  if (bar === undefined) return null;
  const about = `${capitalised(barName(bar.written.number))}, ${chordsOf(bar.written, sheet.noteNames)}`;
  const { instrument, noteNames = 'letters' } = sheet;
  return view === undefined
    ? {
        title: about,
        instrument,
        noteNames,
        notes: neckNotes(bar, noteNames),
        ...handMoves(sheet, index, sounding),
        frets: fretsOf(sheet),
        sounding: sounding?.fingered ?? null,
      }
    : {
        title: `${about}: ${view.title}`,
        instrument,
        noteNames,
        notes: view.notes,
        position: view.position,
        sounding: sounding?.fingered ?? null,
      };
}

/** The same frets for the whole line, so that the neck stands still while it plays. */
function fretsOf(sheet: LineSheet): { readonly first: number; readonly last: number } {
  const fretted = sheet.bars
    .flatMap((bar) => bar.notes)
    .flatMap(({ fingered }) => (fingered === null || fingered.fret === 0 ? [] : [fingered.fret]));
  const first = Math.max(1, Math.min(...fretted, 12) - 1);
  return { first, last: Math.max(first + 4, ...fretted) };
}

/** Every place of the bar once. */
function neckNotes(bar: SheetBar, naming: Naming): readonly NeckNote[] {
  const places = new Map<string, NeckNote>();
  for (const { note, fingered, degreeText } of bar.notes) {
    if (fingered !== null) {
      places.set(`${fingered.string} ${fingered.fret}`, {
        string: fingered.string,
        fret: fingered.fret,
        finger: fingered.finger,
        degree: degreeText,
        name: formatNameIn(naming, note.pitch),
      });
    }
  }
  return [...places.values()];
}
