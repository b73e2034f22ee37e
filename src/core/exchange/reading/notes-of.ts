import { barTicks, type LineNote, type Metre, midiOf, type Pins, type SpelledPitch, ticks } from '../../base';
import type { Instrument } from '../../fretboard';
import { placesOf } from '../../fretboard';
import { LESSON_LIMITS } from '../../lesson';
import type { FoundNote } from './found';
import type { Remarks } from './remarks';

/** The shortest values that a sheet writes: a 32nd, and a sixteenth of a triplet. */
const FINEST = 120;
const FINEST_TRIPLET = 160;
/** A note that is cut short by less than this was only rounded. */
const UNHEARD = 2;

const canBeWritten = (tick: number): boolean => tick % FINEST === 0 || tick % FINEST_TRIPLET === 0;

/** The pins that agree with the pitch on this instrument; null for those that do not. */
function fittingPins(pins: Pins, pitch: SpelledPitch, instrument: Instrument): Pins | null {
  const { string, fret, finger } = pins;
  if (string === undefined && fret === undefined) return finger === undefined ? {} : { finger };
  const place = placesOf(midiOf(pitch), instrument).find(
    (each) => (string === undefined || each.string === string) && (fret === undefined || each.fret === fret),
  );
  if (place === undefined) return null;
  const open = place.fret === 0;
  const fingered = finger !== undefined && open === (finger === 0);
  return { string: place.string, fret: place.fret, ...(fingered ? { finger } : {}) };
}

/** Without what is not there, as a lesson stores its notes. */
const storedNote = (
  { pitch, marks }: FoundNote,
  time: Pick<LineNote, 'start' | 'duration'>,
  tiedOn: boolean,
  pins: Pins,
): LineNote => ({
  ...time,
  pitch,
  ...(tiedOn ? { tiedOn } : {}),
  ...(marks === null ? {} : { marks }),
  ...(Object.keys(pins).length === 0 ? {} : { pins }),
});

interface NotesRequest {
  readonly notes: readonly FoundNote[];
  /** Index of the bar, from 0. */
  readonly bar: number;
  readonly metre: Metre;
  readonly factor: number;
  readonly instrument: Instrument;
}

/** The notes of a bar as a lesson stores them: whole ticks, in order, none over another or over the bar's end. */
export function notesOf(request: NotesRequest, remarks: Remarks): readonly LineNote[] {
  const { bar, metre, factor, instrument } = request;
  const length = barTicks(metre);
  const notes: LineNote[] = [];
  for (const found of request.notes) {
    const start = Math.round(found.start * factor);
    const end = Math.round((found.start + found.duration) * factor);
    const now = notes.at(-1);
    const from = Math.max(start, now === undefined ? 0 : now.start + now.duration);
    const to = Math.min(end, length);
    if (to <= from || notes.length >= LESSON_LIMITS.notesInBar) {
      remarks.inBar('A note that the bar has no room for is left out', bar);
      continue;
    }
    if (end - to > UNHEARD) remarks.inBar('A note that is longer than its bar is cut off at its end', bar);
    if (!canBeWritten(from) || !canBeWritten(to)) {
      remarks.inBar(
        'A rhythm finer than 32nds or triplets is played as it is, but drawn at the nearest 32nd',
        bar,
      );
    }
    const pins = fittingPins(found.pins, found.pitch, instrument);
    if (pins === null) {
      remarks.inBar('A string and fret that do not sound the written note are left out', bar);
    }
    const tiedOn = found.tiedOn && to === length;
    notes.push(storedNote(found, { start: ticks(from), duration: ticks(to - from) }, tiedOn, pins ?? {}));
  }
  return notes;
}
