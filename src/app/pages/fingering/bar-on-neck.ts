import {
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
  stringName,
} from '../../../core/lesson';
import { useAtWork } from '../at-work';

/** A written bar (index from 0) with all that its fingering depends on. */
export interface BarOnNeck {
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
  readonly sheet: LineSheet;
  readonly bar: number;
}

/** Runs a command on the lesson as one step; the label names it for *Undo*. */
export function useChange() {
  const { session } = useAtWork();
  return (label: string, command: (lesson: Lesson) => Lesson) => session.lessons.change(command, { label });
}

/** `E 3 3 · D open`: each string by its name, then its frets as they follow each other. */
export function placesText(
  sheet: LineSheet,
  places: readonly ({ readonly string: number; readonly fret: number } | null)[],
): string {
  const runs: { readonly string: number; readonly frets: string[] }[] = [];
  for (const place of places) {
    const at = place === null ? '–' : place.fret === 0 ? 'open' : String(place.fret);
    const last = runs.at(-1);
    if (last !== undefined && last.string === (place?.string ?? 0)) last.frets.push(at);
    else runs.push({ string: place?.string ?? 0, frets: [at] });
  }
  return runs.map(({ string, frets }) => [stringName(sheet, string), ...frets].join(' ').trim()).join(' · ');
}
