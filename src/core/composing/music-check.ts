import { barName, type LineNote, midiOf, remembered } from '../base';
import { feelById, feelTempo } from '../feel';
import {
  changeBars,
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
  lineRequest,
  setTempo,
  takeIdea,
  toldTempo,
  transposeTo,
} from '../lesson';
import {
  barBreaches,
  ideasForBar,
  type LineNotes,
  type LineRequest,
  MOST_ACCIDENTALS,
  type MusicFinding,
  musicFindings,
  nearestBars,
} from '../line';
import { describeKeyIn, type Key, keySignature, keysOfMode, transpositionTo } from '../theory';
import type { Repair } from './hand-check';
import { apartBy } from './ideas';

/** Something about the music of a line, with its place and the way out. */
export interface MusicCheck {
  readonly bar: number | null;
  /** See `Finding.id`. */
  readonly id: string;
  readonly message: string;
  readonly repair: () => Repair | null;
}

/** A sheet never changes in place, so what was found once stays true. */
const known = new WeakMap<LineSheet, readonly MusicFinding[]>();

function findingsOf(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
): readonly MusicFinding[] {
  return remembered(known, sheet, () => {
    const notes = sheet.bars.map((bar) => bar.notes.map(({ note }) => note));
    return musicFindings(lineRequest(piece, sheet.chart, sheet.key, settings, sheet.noteNames), notes);
  });
}

/** What is to be pointed out about the music of a line, with the change that mends it where there is one. */
export function checkMusic(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
): readonly MusicCheck[] {
  const found = findingsOf(piece, sheet, settings);
  // What lies too far up the neck is the hand's to say, who knows where it is played.
  return found
    .filter(({ kind }) => kind !== 'fret')
    .map((finding) => ({
      bar: finding.bar,
      id: idOf(piece, finding),
      message: `${finding.message} ${finding.repair}`,
      repair: () => repairOf(piece, sheet, settings, finding),
    }));
}

/** What is found, at which note or by which rule; another note there is another finding. */
function idOf(piece: LinePiece, { kind, rule, bar, note }: MusicFinding): string {
  const at = bar === null || note === null ? undefined : piece.bars[bar]?.notes[note];
  return [
    kind,
    ...(rule === undefined ? [] : [rule]),
    ...(at === undefined ? [] : [at.start, midiOf(at.pitch)]),
  ].join(' ');
}

function repairOf(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
  finding: MusicFinding,
): Repair | null {
  const { bar, kind, mended } = finding;
  if (kind === 'tempo') return tempoRepair(piece);
  if (bar === null) return kind === 'key' ? keyRepair(piece, sheet) : null;
  if (mended !== null) {
    const write = (lesson: Parameters<Repair['apply']>[0]) =>
      changeBars(lesson, piece.id, (each, index) =>
        index === bar ? { ...each, notes: mended.notes, origin: 'hand' } : each,
      );
    return { label: mended.deed, apply: write };
  }
  return ideaRepair(piece, sheet, settings, finding, bar);
}

/** The nearest tempo at which the feel is played, told in the count of the piece. */
function tempoRepair(piece: LinePiece): Repair {
  const { least, most } = feelTempo(feelById(piece.feel), piece.metre);
  const tempo = piece.tempo < least ? least : most;
  return {
    label: `Set the tempo to ${toldTempo(piece, tempo)} bpm`,
    apply: (lesson) => setTempo(lesson, piece.id, tempo),
  };
}

/** The nearest key that the level reads. */
function keyRepair(piece: LinePiece, sheet: LineSheet): Repair | null {
  const most = MOST_ACCIDENTALS[piece.level] ?? 0;
  const distance = (key: Key) => Math.abs(transpositionTo(sheet.key, key.tonic).interval.halfSteps);
  const [nearest] = keysOfMode(sheet.key.mode)
    .filter((key) => Math.abs(keySignature(key)) <= most)
    .sort((one, other) => distance(one) - distance(other));
  return nearest === undefined
    ? null
    : {
        label: `Transpose the lesson to ${describeKeyIn(sheet.noteNames ?? 'letters', nearest)}`,
        apply: (lesson) => transposeTo(lesson, piece.id, nearest.tonic),
      };
}

/** The idea most like the bar as it stands that is without the fault and brings no other. */
function ideaRepair(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
  finding: MusicFinding,
  bar: number,
): Repair | null {
  const request = lineRequest(piece, sheet.chart, sheet.key, settings, sheet.noteNames);
  const notes = piece.bars.map((each) => each.notes);
  const number = barName(sheet.chart.bars[bar]?.number ?? bar + 1);
  const simpler =
    finding.kind === 'level'
      ? nearestBars(request, notes, bar)
          .slice(0, SIMPLER_TRIED)
          .find((each) => mends(request, notes, bar, each, finding))
      : undefined;
  if (simpler !== undefined) {
    return {
      label: `Make ${number} simpler, keeping what the level has of it`,
      apply: (lesson) =>
        changeBars(lesson, piece.id, (each, index) =>
          index === bar ? { ...each, notes: simpler, origin: 'idea' } : each,
        ),
    };
  }
  const apart = apartBy(request, notes, bar);
  const idea = [...ideasForBar(request, notes, bar)]
    .sort((one, other) => apart(one) - apart(other))
    .find((each) => mends(request, notes, bar, each.notes, finding));
  return idea === undefined
    ? null
    : {
        label: `Take the nearest idea for ${number} that mends it`,
        apply: (lesson) => takeIdea(lesson, piece.id, bar, idea),
      };
}

/** How many simpler forms of a bar are tried beside its neighbours. */
const SIMPLER_TRIED = 24;

/** Whether a line with other notes in its bar is without the finding, and breaks no more rules around the bar. */
function mends(
  request: LineRequest,
  notes: LineNotes,
  bar: number,
  tried: readonly LineNote[],
  finding: MusicFinding,
): boolean {
  const other = notes.map((each, index) => (index === bar ? tried : each));
  if (barBreaches(request, other, bar).length > barBreaches(request, notes, bar).length) return false;
  const before = musicFindings(request, notes);
  const after = musicFindings(request, other);
  return after.length < before.length && after.every(({ message }) => message !== finding.message);
}
