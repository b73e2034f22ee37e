import type { Metre } from '../../base';
import { barSignature, type ChartProblem, parseChart, rewritePlace } from '../../chart';
import { feelBeats, feelById } from '../../feel';
import { type Key, sameKey, transpositionTo } from '../../theory';
import { aimFor, followBarAims, followSections } from '../aims';
import { freshIds } from '../identity';
import { instrumentOf, parsedChart, readPiece } from '../request';
import { spelledInKey, tiesSpelledAlike } from '../spelling';
import type { Lesson, LineBar, LinePiece } from '../types';
import {
  followBars,
  followOrder,
  isUnknown,
  matchesOf,
  parkedWithin,
  takeNext,
  takeParked,
  takeUnwritten,
  underChords,
} from './follow-bars';
import { changeLine } from './piece';
import { tempoWithin } from './settings';
import { nearestMove, transposePiece } from './transpose';

/** The bars of a piece, those that stood in another key before spelled by their own. */
function inTheirKeys(before: LinePiece, { bars, ...rest }: LinePiece): readonly LineBar[] {
  const old = readPiece(before);
  const now = readPiece({ ...rest, bars });
  const keys = new Map(before.bars.map(({ id }, index) => [id, old.chart.bars[index]?.key ?? old.key]));
  const spelled = bars.map((bar, index) => {
    const written = now.chart.bars[index];
    const was = keys.get(bar.id);
    const is = written?.key ?? now.key;
    return written === undefined || was === undefined || sameKey(was, is) || isUnknown(written)
      ? bar
      : spelledInKey(bar, written, is);
  });
  return spelled.every((bar, index) => bar === bars[index]) ? bars : spelled;
}

/** What a change gives the piece besides its line. */
type ChartChange = Partial<Pick<LinePiece, 'chartText' | 'metre' | 'key'>>;

/** The piece with another chart and its line led after it; `order` as in {@link followOrder}, where it is known. */
export function withChart(
  lesson: Lesson,
  piece: LinePiece,
  change: ChartChange,
  order: readonly (LineBar | null)[] | null = null,
  caret: number | null = null,
): LinePiece {
  const next = { ...piece, ...change };
  const { chart } = parsedChart(next);
  const fresh = freshIds(lesson);
  const copy = (bar: LineBar): LineBar => ({ ...bar, id: fresh('bar'), kept: false });
  const followed =
    (order && followOrder(order, chart.bars, copy)) ??
    followBars(piece.bars, chart.bars, matchesOf(piece, next.chartText, chart, caret));
  const used = new Set(followed);
  const away = piece.bars.filter((bar) => !used.has(bar));
  const parked = [...piece.parked, ...away.filter((bar) => bar.notes.length > 0)];
  let found: Key | null = null;
  const key = (): Key => {
    found ??= readPiece(next).key;
    return found;
  };
  let before: LineBar | null = null;
  const followedBars = chart.bars.map((written, index): LineBar => {
    const own = followed[index] ?? null;
    before = (own && underChords(own, written, key)) ??
      takeNext(parked, written, before, key) ??
      takeParked(parked, written) ??
      takeUnwritten(parked, written, key) ?? {
        id: fresh('bar'),
        harmony: barSignature(written),
        origin: 'composed',
        kept: false,
        notes: [],
      };
    return before;
  });
  const keyed = inTheirKeys(piece, { ...next, bars: followedBars });
  const bars = found === null && keyed === followedBars ? followedBars : tiesSpelledAlike(keyed);
  const aims = followBarAims(piece, bars);
  const waiting = away.filter(
    ({ id, notes }) => notes.length === 0 && aimFor(aims, { kind: 'bar', id }) !== null,
  );
  const sections = followSections({ ...piece, aims }, chart, () => fresh('section'));
  return { ...next, ...parkedWithin([...parked, ...waiting], aims), bars, ...sections };
}

/**
 * Another chart text. Bars whose chords are still there keep their notes, wherever they moved; notes whose bar
 * went away are parked, and come back by themselves when such a bar returns. Where the text was typed, `caret` says
 * behind how many characters of it, so that among bars of the same chord the one that was meant comes or goes.
 */
export const setChartText = (
  lesson: Lesson,
  pieceId: string,
  chartText: string,
  caret: number | null = null,
): Lesson =>
  changeLine(lesson, pieceId, (piece) =>
    chartText === piece.chartText ? piece : withChart(lesson, piece, { chartText }, null, caret),
  );

/**
 * Another metre for the whole piece; bars whose notes no longer fit are parked. Where the beat becomes another note
 * value, as from 4/4 to 2/2, the tempo is told in the new beat, and the music is as fast as before.
 */
export const setMetre = (lesson: Lesson, pieceId: string, metre: Metre): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const feel = feelById(piece.feel);
    const told = (piece.tempo * feelBeats(feel, piece.metre)) / feelBeats(feel, metre);
    return { ...withChart(lesson, piece, { metre }), tempo: tempoWithin(told) };
  });

const sameChoice = (one: Key | null, other: Key | null): boolean =>
  one === null || other === null ? one === other : sameKey(one, other);

/**
 * The key of a piece; null lets it be found from the chords. Chords written as numerals are others in another
 * key: their notes move along by the interval between the keys, while bars with chord symbols stay.
 */
export const setKey = (lesson: Lesson, pieceId: string, key: Key | null): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    if (sameChoice(piece.key, key)) return piece;
    const moved = piece.key === null || key === null ? piece : withNumerals(lesson, piece, piece.key, key);
    return withChart(lesson, moved, { key });
  });

/** The piece with the bars that are written in numerals moved from one key to another, notes and all. */
function withNumerals(lesson: Lesson, piece: LinePiece, from: Key, to: Key): LinePiece {
  const before = parseChart(piece.chartText, piece.metre, from).chart.bars.map(barSignature);
  const after = parseChart(piece.chartText, piece.metre, to).chart.bars.map(barSignature);
  const moves = new Map(before.flatMap((old, index) => (old === after[index] ? [] : [[old, after[index]]])));
  if (moves.size === 0) return piece;
  const { interval } = transpositionTo(from, to.tonic);
  const stays = (harmony: string, index: number | null) =>
    index === null ? !moves.has(harmony) : before[index] === after[index];
  const nearest = nearestMove(
    lesson,
    piece.bars.filter(({ harmony }, index) => !stays(harmony, index)),
    interval,
  );
  const moved = transposePiece(piece, nearest, instrumentOf(lesson.instrument));
  return {
    ...piece,
    bars: piece.bars.map((bar, index) => {
      const own = moved.bars[index];
      // In the other mode a numeral may be another chord: then only its root moves by the interval.
      return own === undefined || stays(bar.harmony, index) || own.harmony !== after[index] ? bar : own;
    }),
    parked: piece.parked.map((bar, index) => (stays(bar.harmony, null) ? bar : (moved.parked[index] ?? bar))),
    takes: piece.takes.map((take, index) => ({
      ...take,
      bars: take.bars.map((bar, at) =>
        stays(bar.harmony, null) ? bar : (moved.takes[index]?.bars[at] ?? bar),
      ),
    })),
  };
}

/**
 * Writes what was probably meant in place of what is wrong. A problem without a suggestion, or one that the chart
 * no longer has, changes nothing.
 */
export const takeSuggestion = (lesson: Lesson, pieceId: string, problem: ChartProblem): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const { problems } = parseChart(piece.chartText, piece.metre, piece.key);
    const stands = problems.some(
      ({ line, column, message }) =>
        line === problem.line && column === problem.column && message === problem.message,
    );
    if (problem.suggestion === undefined || !stands) return piece;
    const { suggestion } = problem;
    // Accidentals as the text has them.
    const typed = /[♭♯]/.test(piece.chartText)
      ? suggestion
      : suggestion.replace(/♭/g, 'b').replace(/♯/g, '#');
    return withChart(lesson, piece, { chartText: rewritePlace(piece.chartText, problem, typed) });
  });
