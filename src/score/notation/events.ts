import {
  barTicks,
  hasMark,
  LETTERS,
  type LineNote,
  type Metre,
  marksOf,
  type Sign,
  type SpelledPitch,
  sameMetre,
} from '../../core/base';
import type { BarTies, SheetNote } from '../../core/lesson';
import {
  type Accidental,
  type CountMark,
  countingOf,
  type NotatedEvent,
  notateBar,
} from '../../core/notation';
import type { BarSigns, ContentEvent, ContentExit } from './types';

/** The notes of a bar and what of the sheet bears on them. */
export interface BarNotes {
  readonly notes: readonly SheetNote[];
  /** One entry a note. */
  readonly accidentals: readonly (Accidental | null)[];
  /** One entry a note: the hand position that is new with it, in Roman numerals, or ''. */
  readonly positions: readonly string[];
  readonly strings: number;
  /** One entry a note. */
  readonly exits: readonly (ContentExit | null)[];
  readonly ties: BarTies;
  /** The music goes on behind the bar, which is not shown. */
  readonly cutOff: boolean;
  /** The time that is there, and the metre it is counted in, from a moment of that on: a pickup has only the end of a bar. */
  readonly metre: Metre;
  readonly countedIn: Metre;
  readonly countedFrom: number;
}

/** Writes a bar's notes as signs. */
export function signsOf(bar: BarNotes): BarSigns {
  const { events, beams, triplets } = notateBar(
    bar.notes.map(({ note }) => note),
    bar.metre,
  );
  return {
    events: events.map((event) => contentEvent(event, bar)),
    beams,
    triplets,
    counts: countsOf(events, bar),
  };
}

/** The same text for the same signs, far quicker to make than the signs. */
export function signsKey(bar: BarNotes): string {
  const { notes, accidentals, positions, exits, strings, ties, cutOff, metre, countedIn, countedFrom } = bar;
  const { left, elsewhere, struck, to } = ties;
  let key = `${strings} ${left} ${elsewhere} ${struck} ${to} ${cutOff} ${metre.count}/${metre.unit} ${countedIn.count}/${countedIn.unit} ${countedFrom}`;
  notes.forEach(({ note, fingered, degreeText }, index) => {
    const { start, duration, pitch, tiedOn } = note;
    const accidental = accidentals[index];
    key += `|${start} ${duration} ${pitch.letter}${pitch.alteration} ${pitch.octave} ${tiedOn === true} ${marksOf(note).join()}`;
    key += ` ${accidental ? accidental.alteration : ''} ${accidental?.courtesy === true}`;
    key += ` ${fingered ? `${fingered.string} ${fingered.fret} ${fingered.finger}` : ''} ${degreeText} ${positions[index] ?? ''}`;
    const exit = exits[index];
    if (exit) key += ` ${exit.sign} ${exit.leads} ${exit.rises}`;
  });
  return key;
}

/** A part of a bar is counted as that part: one beat before the first bar of 4/4 is a four. */
function countsOf(
  events: readonly NotatedEvent[],
  { metre, countedIn, countedFrom: from, ties }: BarNotes,
): readonly CountMark[] {
  const held = !ties.struck;
  if (sameMetre(metre, countedIn)) return countingOf(events, metre, held);
  const until = from + barTicks(metre);
  const within = events.map((event) => ({ ...event, start: event.start + from }));
  return countingOf(within, countedIn, held)
    .filter(({ tick }) => tick >= from && tick < until)
    .map(({ tick, text }) => ({ tick: tick - from, text }));
}

function contentEvent(event: NotatedEvent, bar: BarNotes): ContentEvent {
  const { notes, accidentals, strings } = bar;
  const sounding = event.note === null ? undefined : notes[event.note];
  if (event.note === null || !sounding) {
    return {
      ...event,
      height: 0,
      accidental: null,
      signs: [],
      exit: null,
      fret: null,
      degree: '',
      finger: '',
      position: '',
      tiedIn: null,
      tiedOut: false,
    };
  }
  const { note, fingered, degreeText } = sounding;
  const head = event.start <= note.start;
  const first = head && event.note === 0;
  const lastPiece = !event.tied;
  const tiedOut = lastPiece && event.note === notes.length - 1 && leadsOut(note, bar);
  const held = first && !bar.ties.struck;
  const attacked = head && !held;
  return {
    ...event,
    height: heightOf(note.pitch),
    accidental: head ? (accidentals[event.note] ?? null) : null,
    signs: signsAt(note, attacked, lastPiece && !tiedOut),
    exit: lastPiece && !tiedOut ? (bar.exits[event.note] ?? null) : null,
    fret: head ? fretMark(sounding, strings, held) : null,
    degree: attacked ? degreeText : '',
    finger: attacked && fingered ? String(fingered.finger) : '',
    position: attacked ? (bar.positions[event.note] ?? '') : '',
    tiedIn: first ? tiedFrom(bar.ties) : null,
    tiedOut,
  };
}

const leadsOut = ({ tiedOn }: LineNote, { ties, cutOff }: BarNotes): boolean =>
  tiedOn === true && (ties.to !== 'none' || cutOff);

const tiedFrom = ({ left, elsewhere }: BarTies): ContentEvent['tiedIn'] =>
  left ? 'left' : elsewhere ? 'elsewhere' : null;

function signsAt(note: LineNote, attacked: boolean, ends: boolean): readonly Sign[] {
  return marksOf(note).flatMap((mark): readonly Sign[] => {
    if (mark === note.marks?.exit || mark === 'hammer') return [];
    const stands = mark === 'ghost' || (mark === 'fermata' ? ends : attacked);
    return stands ? [mark] : [];
  });
}

/** D3 as written is D2 as it sounds: bass notation stands an octave above its sound. */
const MIDDLE_LINE = 2 * 7 + LETTERS.indexOf('D');

const heightOf = (pitch: SpelledPitch): number =>
  pitch.octave * 7 + LETTERS.indexOf(pitch.letter) - MIDDLE_LINE;

/** A note that is only held over the bar line keeps its fret in brackets; one that is not on the instrument shows a question mark. */
function fretMark(
  { fingered, note }: SheetNote,
  strings: number,
  held: boolean,
): { readonly string: number; readonly text: string } {
  if (!fingered) return { string: heightOf(note.pitch) < 0 ? strings : 1, text: '?' };
  const fret = hasMark(note, 'ghost') ? 'x' : String(fingered.fret);
  return { string: fingered.string, text: held ? `(${fret})` : fret };
}
