import { type LineNote, listed } from '../base';
import { barSignature } from '../chart';
import { buildUp, type StageThing, stageThingName, thingsOf } from '../line';
import { sameKey } from '../theory';
import { lineRequest } from './line-request';
import { readPiece } from './request';
import type { BuildUp, InstrumentSettings, LinePiece, StageEdit } from './types';

/** A stage of a line's build-up, as a line of its own. */
export interface BuiltStage {
  /** What it adds, the first thing first. */
  readonly things: readonly StageThing[];
  /** The last of them, by which the stage is known. */
  readonly stage: StageThing;
  /** `Stage 2 of 5: its rhythm`. */
  readonly name: string;
  /** The line as it is at this stage: what derives a sheet, plays and prints, as every line does. */
  readonly piece: LinePiece;
  /** The notes of each bar before the teacher's changes. */
  readonly derived: readonly (readonly LineNote[])[];
  /** Indices of the bars that the teacher changed. */
  readonly edited: readonly number[];
  /** Indices of the bars whose change waits, because it was made for other chords. */
  readonly waiting: readonly number[];
}

interface Built {
  readonly instrument: InstrumentSettings;
  readonly stages: readonly BuiltStage[];
  readonly things: readonly StageThing[];
}

/** Documents never change in place, so what was built from a piece stays true. */
const built = new WeakMap<LinePiece, Built>();

const NO_NOTES: readonly LineNote[] = [];

/** `its chord tones and its silence on one`. */
const thingsWords = (things: readonly StageThing[]): string => listed(things.map(stageThingName));

/** What a stage is called among so many. */
const stageNames = (things: readonly StageThing[], index: number, count: number): string =>
  `Stage ${index + 1} of ${count}: ${thingsWords(things)}${index === count - 1 ? ', the line itself' : ''}`;

function builtAnew(piece: LinePiece, wanted: BuildUp, instrument: InstrumentSettings): Built {
  const { chart, key, sectionKeys } = readPiece(piece);
  const notes = chart.bars.map((_, index) => piece.bars[index]?.notes ?? NO_NOTES);
  const request = lineRequest(piece, chart, key, instrument);
  const touched = piece.bars.some(({ dynamics = [] }) => dynamics.length > 0);
  const wish = { order: wanted.order, leftOut: wanted.leftOut, touched };
  const stages = buildUp(request, notes, wish);
  const signatures = chart.bars.map(barSignature);
  // The key is found from the chords alone where notes differ: it stays the line's.
  const oneKey = sectionKeys.every((own) => own === null || sameKey(own, key));
  const staged = stages.map(({ things, bars }, index): BuiltStage => {
    const stage = things.at(-1) ?? 'roots';
    const last = index === stages.length - 1;
    const edits = last ? [] : wanted.edits.filter((edit) => edit.stage === stage);
    const editOf = (bar: number): StageEdit | undefined =>
      edits.find(({ bar: id }) => id === piece.bars[bar]?.id);
    const stands = (bar: number) => editOf(bar)?.harmony === signatures[bar];
    const indices = chart.bars.map((_, bar) => bar);
    const { buildUp: _, ...line } = piece;
    return {
      things,
      stage,
      name: stageNames(things, index, stages.length),
      derived: bars,
      edited: indices.filter((bar) => editOf(bar) !== undefined && stands(bar)),
      waiting: indices.filter((bar) => editOf(bar) !== undefined && !stands(bar)),
      piece: {
        ...line,
        id: `${piece.id} ${stage}`,
        name: `${piece.name}, stage ${index + 1}`,
        key: piece.key ?? (oneKey ? key : null),
        takes: [],
        parked: [],
        bars: piece.bars.map(({ over: _over, dynamics, ...bar }, place) => ({
          ...bar,
          notes: (stands(place) ? editOf(place)?.notes : bars[place]) ?? NO_NOTES,
          ...(dynamics === undefined || !last ? {} : { dynamics }),
        })),
      },
    };
  });
  return { instrument, stages: staged, things: thingsOf(request, notes, wish) };
}

/**
 * The stages of a line whose build-up is on the sheet, and all the things that it could have a stage for; none where
 * there is no build-up, or no line.
 */
export function buildUpOf(piece: LinePiece, instrument: InstrumentSettings): Omit<Built, 'instrument'> {
  if (piece.buildUp === undefined) return { stages: [], things: [] };
  const known = built.get(piece);
  if (known?.instrument === instrument) return known;
  const made = builtAnew(piece, piece.buildUp, instrument);
  built.set(piece, made);
  return made;
}
