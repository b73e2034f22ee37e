import { alike } from '../base';
import { type InstrumentSettings, type Lesson, type LinePiece, linePiece, readPiece } from '../lesson';
import type { Key } from '../theory';
import { lessonOfVersion } from './derive';

/** What belongs to a version and differs from what the tune has: how it is there, and how it is here. */
export interface Apart<Value> {
  readonly tune: Value;
  readonly here: Value;
}

/** In what a line of a version is for someone else than the tune. */
export interface LineApart {
  readonly name: string;
  readonly key: Apart<Key> | null;
  readonly level: Apart<number> | null;
  /** The hand that it is fingered for. */
  readonly hand: boolean;
}

/** In what a version is for someone else than the tune: key, level, hand and instrument. */
export interface VersionApart {
  /** The lines of which there is anything to say. */
  readonly lines: readonly LineApart[];
  readonly instrument: Apart<InstrumentSettings> | null;
}

const apart = <Value>(tune: Value, here: Value): Apart<Value> | null =>
  alike(tune, here) ? null : { tune, here };

function lineApart(tune: LinePiece, here: LinePiece): LineApart | null {
  const charted = tune.chartText.trim() !== '' && here.chartText.trim() !== '';
  const found = {
    name: here.name,
    key: charted ? apart(readPiece(tune).key, readPiece(here).key) : null,
    level: apart(tune.level, here.level),
    hand: !alike(tune.hand, here.hand),
  };
  return found.key === null && found.level === null && !found.hand ? null : found;
}

/** In what a version is for someone else than the tune. */
export function apartFromTune(document: Lesson, versionId: string): VersionApart {
  const [tune, here] = [lessonOfVersion(document, null), lessonOfVersion(document, versionId)];
  return {
    lines: here.pieces.flatMap((piece) => {
      const shared = linePiece(tune, piece.id);
      return piece.kind === 'line' && shared !== null ? (lineApart(shared, piece) ?? []) : [];
    }),
    instrument: apart(tune.instrument, here.instrument),
  };
}
