import {
  barName,
  beatAt,
  capitalised,
  type Fret,
  type LineNote,
  midiOf,
  type Ticks,
  ticks,
  withMark,
} from '../base';
import { type WrittenMetre, writtenMetres } from '../chart';
import { type PlayingFinding, type PlayingRepair, playingFindings, repairFor } from '../fretboard';
import {
  changeBars,
  type HandLine,
  handLine,
  type InstrumentSettings,
  keepPosition,
  type Lesson,
  type LinePiece,
  levelFret,
  type NotePlace,
  setHand,
  setLevel,
  setPins,
  setTempo,
  TEMPO_RANGE,
  tempoWords,
} from '../lesson';
import { LEVELS } from '../line';
import { formatPitchIn, type Naming, transposePitch } from '../theory';

/** A change that mends a finding in one step. */
export interface Repair {
  /** What its button says: a verb and its object. */
  readonly label: string;
  readonly apply: (lesson: Lesson) => Lesson;
}

/** Something about playing a line, with its place. */
export interface HandFinding {
  /** Index of the written bar. */
  readonly bar: number;
  /** See `Finding.id`. */
  readonly id: string;
  readonly message: string;
  /** Looks for a repair when it is asked for; null where only the player can mend it. */
  readonly repair: () => Repair | null;
}

/**
 * What is hard or impossible to play in a line, in the order of its notes.
 * @param noteNames - as the lesson has them; letters when left out
 */
export function checkHand(
  piece: LinePiece,
  settings: InstrumentSettings,
  noteNames: Naming = 'letters',
): readonly HandFinding[] {
  const hand = handLine(piece, settings);
  return hand === null
    ? []
    : playingFindings(hand.line).flatMap((finding) => {
        const place = hand.struck.parts[finding.note]?.[0];
        return place === undefined ? [] : [describe(piece, hand, finding, place, noteNames)];
      });
}

function describe(
  piece: LinePiece,
  hand: HandLine,
  finding: PlayingFinding,
  place: NotePlace,
  naming: Naming,
): HandFinding {
  const written = hand.sheet.chart.bars[place.bar];
  const note = piece.bars[place.bar]?.notes[place.note];
  const where =
    written === undefined || note === undefined
      ? ''
      : `${capitalised(barName(written.number))}, ${beatName(note.start, writtenMetres(hand.sheet.chart)[place.bar] ?? { metre: written.metre, from: 0 })}: `;
  const what =
    finding.kind === 'off the neck' && note !== undefined
      ? `${formatPitchIn(naming, note.pitch)} does not lie on this instrument.`
      : finding.message;
  return {
    bar: place.bar,
    id: note === undefined ? finding.kind : `${finding.kind} ${note.start} ${midiOf(note.pitch)}`,
    message: where + what,
    repair: once(() => {
      const repair = repairFor(hand.line, finding, (each) => asCommand(piece, hand, each) !== null);
      return repair === null ? null : asCommand(piece, hand, repair);
    }),
  };
}

/** `beat 2`, or `after beat 2` between the beats; of a pickup, as under its notes. */
function beatName(start: Ticks, { metre, from }: WrittenMetre): string {
  const beat = beatAt(metre, from + start);
  return `${from + start === beat.start ? 'beat' : 'after beat'} ${beat.index + 1}`;
}

function once<Value>(find: () => Value): () => Value {
  let found: { readonly value: Value } | null = null;
  return () => {
    found ??= { value: find() };
    return found.value;
  };
}

function asCommand(piece: LinePiece, { struck }: HandLine, repair: PlayingRepair): Repair | null {
  const { label } = repair;
  const partsOf = (note: number) => struck.parts[note] ?? [];
  const first = (note: number) => partsOf(note).slice(0, 1);
  switch (repair.kind) {
    case 'pin': {
      const choices = repair.pins.flatMap(({ note, pins }) => first(note).map((at) => ({ at, pins })));
      return { label, apply: (lesson) => setPins(lesson, piece.id, choices) };
    }
    case 'release': {
      const choices = repair.notes.flatMap((note) => first(note).map((at) => ({ at, pins: null })));
      return { label, apply: (lesson) => setPins(lesson, piece.id, choices) };
    }
    case 'release position': {
      const bar = first(repair.note)[0]?.bar ?? 0;
      return { label, apply: (lesson) => keepPosition(lesson, piece.id, { first: bar, last: bar }, null) };
    }
    case 'shorten':
      return { label, apply: (lesson) => shorten(lesson, piece.id, partsOf(repair.note), repair.duration) };
    case 'mark short':
      return { label, apply: (lesson) => markShort(lesson, piece.id, repair.notes.flatMap(first)) };
    case 'raise limit':
      return raiseLimit(piece, repair.fret);
    case 'octave':
      return {
        label,
        apply: (lesson) => moveOctaves(lesson, piece.id, partsOf(repair.note), repair.halfSteps / 12),
      };
    case 'slow down': {
      const tempo = Math.floor((piece.tempo * repair.percent) / 100);
      return tempo < TEMPO_RANGE.least
        ? null
        : {
            label: `Set the tempo to ${tempoWords(piece, tempo)}`,
            apply: (lesson) => setTempo(lesson, piece.id, tempo),
          };
    }
  }
}

/** Lets the hand reach a fret that its settings, the level or both keep it from. */
function raiseLimit({ id, hand, level }: LinePiece, to: Fret): Repair {
  const enough = LEVELS.find((each) => each >= level && levelFret(each) >= to) ?? level;
  return {
    label: enough === level ? `Allow frets up to ${to}` : `Raise the level to ${enough}`,
    apply: (lesson) => {
      const raised = enough === level ? lesson : setLevel(lesson, id, enough);
      return hand.highestFret >= to ? raised : setHand(raised, id, { highestFret: to });
    },
  };
}

/** Changes written notes and keeps their bars, or composing again would undo what the teacher has mended. */
function changeNotes(
  lesson: Lesson,
  pieceId: string,
  parts: readonly NotePlace[],
  change: (note: LineNote, part: number) => LineNote | null,
): Lesson {
  return changeBars(lesson, pieceId, (bar, index) => {
    if (parts.every((part) => part.bar !== index)) return bar;
    const notes = bar.notes.flatMap((note, at) => {
      const part = parts.findIndex((place) => place.bar === index && place.note === at);
      const changed = part < 0 ? note : change(note, part);
      return changed === null ? [] : [changed];
    });
    return { ...bar, notes, origin: 'hand', kept: true };
  });
}

/** Cuts a note, tied ones across their bar lines, to a duration; what is left over becomes silence. */
function shorten(lesson: Lesson, pieceId: string, parts: readonly NotePlace[], duration: number): Lesson {
  let left = duration;
  return changeNotes(lesson, pieceId, parts, (note) => {
    const taken = Math.min(left, note.duration);
    left -= taken;
    if (taken === 0) return null;
    const { tiedOn, ...rest } = note;
    return { ...rest, duration: ticks(taken), ...(tiedOn === true && left > 0 ? { tiedOn } : {}) };
  });
}

const markShort = (lesson: Lesson, pieceId: string, parts: readonly NotePlace[]): Lesson =>
  changeNotes(lesson, pieceId, parts, (note) => withMark(note, 'staccato'));

/** Moves a note by whole octaves and lets its pins go. */
const moveOctaves = (lesson: Lesson, pieceId: string, parts: readonly NotePlace[], octaves: number): Lesson =>
  changeNotes(lesson, pieceId, parts, ({ pins: _, ...note }) => ({
    ...note,
    pitch: transposePitch(note.pitch, { steps: 7 * octaves, halfSteps: 12 * octaves }),
  }));
