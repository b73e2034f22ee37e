import {
  type LinePiece,
  type LineSheet,
  PLAYING_LIMITS,
  type PlayingSettings,
  toldTempo,
  writtenTempo,
} from '../lesson';
import { boundsOf, passageOf, practiceTempo } from './wishes';

type Change = Partial<PlayingSettings>;

/** Whole beats a minute, in the count that the tempo is told in, by which a student goes faster or slower (CP: 5 after three right rounds). */
const TEMPO_STEP = 5;

/** All bars are the whole piece, which is no passage. */
function passageOver(sheet: LineSheet, first: number, last: number): PlayingSettings['passage'] {
  const { least, most } = boundsOf(sheet);
  return first === least && last === most ? null : { first, last };
}

/** Loops the bars between two written numbers, whichever comes first; all of them are the whole piece. */
export function loopOver(sheet: LineSheet, one: number, other: number): Change {
  const { least, most } = boundsOf(sheet);
  const first = Math.max(least, Math.min(one, other));
  const last = Math.min(most, Math.max(one, other));
  return { loop: true, passage: passageOver(sheet, first, last) };
}

/**
 * The passage while one of its ends is typed. The other end stays as it was when the typing began, whatever the digits
 * on the way to a number said, and goes along only where the two would cross: who types 12 begins with 1.
 * @param begun - written numbers of the bars as they were then
 * @param bar - written number of the bar that is typed
 */
export function passageTyped(
  sheet: LineSheet,
  begun: { readonly first: number; readonly last: number },
  end: 'first' | 'last',
  bar: number,
): Change {
  const first = end === 'first' ? bar : Math.min(begun.first, bar);
  const last = end === 'last' ? bar : Math.max(begun.last, bar);
  return { passage: passageOver(sheet, first, last) };
}

/**
 * What has to change so that a bar can be played from: a loop that holds it stays, another passage gives way to the
 * whole piece. Null where nothing has to change.
 * @param bar its written number
 */
export function passageFor(piece: LinePiece, sheet: LineSheet, bar: number): Change | null {
  const passage = passageOf(piece, sheet);
  return passage === null || (bar >= passage.first && bar <= passage.last) ? null : { passage: null };
}

/**
 * The tempo by so many steps faster (slower, where negative), moved on to the next whole step; null where that is as far
 * as it goes.
 */
export function fasterBy(piece: LinePiece, steps: number): Change | null {
  const { tempo } = piece;
  const { tempo: bounds, share } = PLAYING_LIMITS;
  const now = toldTempo(piece, practiceTempo(piece));
  const next =
    steps > 0
      ? Math.floor(now / TEMPO_STEP + steps) * TEMPO_STEP
      : Math.ceil(now / TEMPO_STEP + steps) * TEMPO_STEP;
  const written = writtenTempo(piece, next);
  const tempoShare = Math.round((written / tempo) * 10_000) / 100;
  const within =
    written >= bounds.least &&
    written <= bounds.most &&
    tempoShare >= share.least &&
    tempoShare <= share.most;
  return within ? { tempoShare } : null;
}
