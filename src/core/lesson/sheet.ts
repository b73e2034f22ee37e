import type { LineNote } from '../base';
import { fieldTable, sameFields } from '../base';
import type { Chart } from '../chart';
import { feelById, feelInWay } from '../feel';
import { analyseAhead, analyseLine, type LineRequest, reasonsFor } from '../line';
import { type Key, type Naming, sameKey } from '../theory';
import { lineAtHand } from './at-hand';
import { lettersReading } from './chart-reading';
import { fingeredLine } from './fingered';
import { isHeld } from './held';
import { LastOf } from './last-of';
import { lineRequest } from './line-request';
import { instrumentOf, keyGuessesIn } from './request';
import type { BlankSheet, LineSheet, Sheet, SheetBar } from './sheet-types';
import type { BlankPiece, InstrumentSettings, Lesson, LinePiece, Piece } from './types';

/** Which parts of a line piece its request depends on, besides the chart; positions of bars are looked at apart. */
const READ_BY_REQUEST = fieldTable<LinePiece>()({
  kind: false,
  id: false,
  name: false,
  chartText: false,
  key: false,
  metre: false,
  tempo: true,
  count: false,
  feel: true,
  level: true,
  techniques: true,
  hand: true,
  seed: false,
  playing: false,
  bars: false,
  parked: false,
  aims: true,
  sections: true,
  parkedSections: false,
  meant: false,
  takes: false,
  buildUp: false,
  leftOut: false,
});

const NO_NOTES: readonly LineNote[] = [];

interface Asked {
  readonly piece: LinePiece;
  readonly settings: InstrumentSettings;
  readonly key: Key;
  readonly request: LineRequest;
}

const asked = new WeakMap<Chart, Asked>();

/** The request of a piece; the same one again while only notes were written. */
function requestFor(piece: LinePiece, chart: Chart, key: Key, settings: InstrumentSettings): LineRequest {
  const known = asked.get(chart);
  const stands =
    known !== undefined &&
    known.settings === settings &&
    sameKey(known.key, key) &&
    sameFields(READ_BY_REQUEST, known.piece, piece) &&
    piece.bars.length === known.piece.bars.length &&
    piece.bars.every(
      (bar, index) =>
        bar.position === known.piece.bars[index]?.position && bar.id === known.piece.bars[index]?.id,
    );
  if (stands) return known.request;
  const request = lineRequest(piece, chart, key, settings);
  asked.set(chart, { piece, settings, key, request });
  return request;
}

const askedLast = new LastOf<LineRequest>();

const notesOf = ({ bars }: LinePiece, chart: Chart): readonly (readonly LineNote[])[] =>
  chart.bars.map((_, index) => bars[index]?.notes ?? NO_NOTES);

/** What a line's sheet is made of; the same again while nothing that it depends on has changed. */
function partsOf(piece: LinePiece, settings: InstrumentSettings) {
  const reading = lettersReading(piece);
  const { chart, key } = reading;
  return { reading, chart, request: requestFor(piece, chart, key, settings) };
}

function deriveLine(piece: LinePiece, settings: InstrumentSettings): LineSheet {
  const { reading, chart, request } = partsOf(piece, settings);
  const notes = notesOf(piece, chart);
  const fingering = fingeredLine({ piece, settings, chart }, request);
  const analyses = analyseLine(request, notes, askedLast.get(piece.id));
  askedLast.set(piece.id, request);
  const bars = chart.bars.map((written, index): SheetBar => {
    const analysis = analyses[index] ?? { notes: [], techniques: [], reason: '' };
    const { dynamics = [], words } = piece.bars[index] ?? {};
    return {
      written,
      analysis,
      ...(dynamics.length === 0 ? {} : { dynamics }),
      ...(words === undefined ? {} : { words }),
      kept: isHeld(piece.bars[index]),
      notes: (notes[index] ?? []).map((note, position) => ({
        note,
        fingered: fingering.bars[index]?.[position] ?? null,
        degreeText: analysis.notes[position]?.degreeText ?? '',
      })),
    };
  });
  const feel = feelById(piece.feel);
  return {
    kind: 'line',
    id: piece.id,
    name: piece.name,
    ...reading,
    metre: piece.metre,
    tempo: piece.tempo,
    ...(piece.count === undefined ? {} : { count: piece.count }),
    feel,
    instrument: request.instrument,
    bars,
    fingering: fingering.whole,
  };
}

const deriveBlank = (piece: BlankPiece, settings: InstrumentSettings): BlankSheet => ({
  kind: 'blank',
  id: piece.id,
  name: piece.name,
  metre: piece.metre,
  bars: piece.bars,
  instrument: instrumentOf(settings),
});

/** Which parts of a line piece its sheet depends on: a new part is refused until it stands here. */
const READ_BY_SHEET = fieldTable<LinePiece>()({
  kind: false,
  id: false,
  name: true,
  chartText: true,
  key: true,
  metre: true,
  tempo: true,
  count: true,
  feel: true,
  level: true,
  techniques: true,
  hand: true,
  seed: false,
  playing: false,
  bars: true,
  parked: false,
  aims: true,
  sections: true,
  parkedSections: false,
  meant: false,
  takes: false,
  buildUp: false,
  leftOut: false,
});

function sameForSheet(one: Piece, other: Piece): boolean {
  return one.kind === 'line' && other.kind === 'line' ? sameFields(READ_BY_SHEET, one, other) : one === other;
}

interface Derived {
  readonly piece: Piece;
  readonly settings: InstrumentSettings;
  readonly sheet: Sheet;
}

/** Documents never change in place, so what was derived from one stays true; its list of bars is the handle. */
const derived = new WeakMap<object, Derived>();

const handleOf = (piece: Piece): object => (piece.kind === 'line' ? piece.bars : piece);

/** The sheet that was derived of a piece; null where there is none that still holds. */
function knownSheet(piece: Piece, settings: InstrumentSettings): Sheet | null {
  const known = derived.get(handleOf(piece));
  return known !== undefined && known.settings === settings && sameForSheet(known.piece, piece)
    ? known.sheet
    : null;
}

function sheetOf(piece: Piece, settings: InstrumentSettings): Sheet {
  const known = knownSheet(piece, settings);
  if (known !== null) return known;
  const sheet = piece.kind === 'line' ? deriveLine(piece, settings) : deriveBlank(piece, settings);
  derived.set(handleOf(piece), { piece, settings, sheet });
  return sheet;
}

/** A part of a line's sheet that can be worked out ahead. */
export interface SheetStage {
  readonly name: string;
  readonly work: (piece: LinePiece, settings: InstrumentSettings) => void;
}

const stage = (name: string, work: SheetStage['work']): SheetStage => ({
  name,
  work: (piece, settings) => {
    if (knownSheet(piece, settings) === null) work(piece, settings);
  },
});

/**
 * The sheet of a line in stages, in this order, for whoever must not work for long at a time: what each works out is
 * remembered, so that {@link deriveSheet} has little left to do. Of a line whose sheet is known none does anything.
 */
export const SHEET_STAGES: readonly SheetStage[] = [
  stage('chart', (piece, settings) => void partsOf(piece, settings)),
  stage('fingering', (piece, settings) => {
    const { chart, request } = partsOf(piece, settings);
    fingeredLine({ piece, settings, chart }, request);
  }),
  ...[0, 1 / 3, 2 / 3, 1].map((share, index) =>
    stage(`analysis ${index}`, (piece, settings) => {
      const { chart, request } = partsOf(piece, settings);
      analyseAhead(request, notesOf(piece, chart), askedLast.get(piece.id), share);
    }),
  ),
];

const played = new WeakMap<LineSheet, LineSheet>();

/** The sheet with its feel as the chosen pattern of the drums has it; the same object again for the same choice. */
function withFeelPlayed(sheet: Sheet, piece: Piece): Sheet {
  if (sheet.kind !== 'line' || piece.kind !== 'line') return sheet;
  const feel = feelInWay(sheet.feel, sheet.metre, piece.playing.drumWay);
  if (feel === sheet.feel) return sheet;
  const known = played.get(sheet);
  if (known?.feel === feel) return known;
  const chosen = { ...sheet, feel };
  played.set(sheet, chosen);
  return chosen;
}

const named = new WeakMap<LineSheet, LineSheet>();

/** The sheet with its note names written so; the same object again for the same sheet. */
function withNames(sheet: Sheet, piece: Piece, settings: InstrumentSettings, noteNames: Naming): Sheet {
  if (sheet.kind !== 'line' || piece.kind !== 'line' || noteNames === 'letters') return sheet;
  const known = named.get(sheet);
  if (known?.noteNames === noteNames) return known;
  const renamed = renamedLine(sheet, piece, settings, noteNames);
  named.set(sheet, renamed);
  return renamed;
}

/** What is said in words is said again; a bar of which nothing else is said stays the same object. */
function renamedLine(
  sheet: LineSheet,
  piece: LinePiece,
  settings: InstrumentSettings,
  noteNames: Naming,
): LineSheet {
  const request = lineRequest(piece, sheet.chart, sheet.key, settings, noteNames);
  const reasons = reasonsFor(
    request,
    sheet.bars.map(({ notes }) => notes.map(({ note }) => note)),
    sheet.bars.map(({ analysis }) => analysis),
  );
  const bars = sheet.bars.map((bar, index) => {
    const reason = reasons[index] ?? '';
    return reason === bar.analysis.reason ? bar : { ...bar, analysis: { ...bar.analysis, reason } };
  });
  return { ...sheet, noteNames, bars, keyGuesses: keyGuessesIn(noteNames, piece, sheet.chart) };
}

/**
 * Everything computed about one piece; the same object again while nothing it depends on has changed.
 * @param noteNames - as the lesson has them; without them, the letters. The music is the same under all of them
 */
export const deriveSheet = (
  piece: Piece,
  settings: InstrumentSettings,
  noteNames: Naming | undefined,
): Sheet =>
  withNames(withFeelPlayed(sheetOf(piece, settings), piece), piece, settings, noteNames ?? 'letters');

/** The sheet of the line at hand; null in a lesson without a line. */
export function sheetAtHand(lesson: Lesson, pieceId: string): LineSheet | null {
  const piece = lineAtHand(lesson, pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  return sheet?.kind === 'line' ? sheet : null;
}

/** The sheets of all pieces, in the order of the lesson. */
export const deriveSheets = (lesson: Lesson): readonly Sheet[] =>
  lesson.pieces.map((piece) => deriveSheet(piece, lesson.instrument, lesson.noteNames));
