import { barRange, bpm } from '../base';
import { type LinePiece, type LineSheet, type PlayingSettings, tempoWords } from '../lesson';
import { climbs, PARTS, passageOf, practiceTempo } from '../playing';
import { dayWords } from './diary';
import type { LastPractice } from './record';

/** How it was played last, for a piece as it is now: a ladder is climbed only where there is one. */
export function settingsOf(last: LastPractice, { playing }: LinePiece): Partial<PlayingSettings> {
  const { bass, drums, chops, organ, click, loop, passage, tempoShare, rung } = last;
  const { ladder } = playing;
  return {
    ...{ bass, drums, chops, organ, click, loop, passage, tempoShare },
    ...(ladder === undefined ? {} : { ladder: { ...ladder, climbed: rung !== null } }),
  };
}

/** `Ferry queue, bars 3 to 6, 95 bpm, without bass, on 28 November 2026`. */
export function lastWords(last: LastPractice, piece: LinePiece, sheet: LineSheet): string {
  const then: LinePiece = { ...piece, playing: { ...piece.playing, ...settingsOf(last, piece) } };
  const passage = passageOf(then, sheet);
  const rungs = then.playing.ladder?.rungs ?? [];
  const rung = climbs(then.playing) ? rungs[Math.min(last.rung ?? 0, rungs.length - 1)] : undefined;
  const silent = PARTS.filter((part) => part !== 'click' && !then.playing[part]);
  return [
    piece.name,
    passage === null ? 'all bars' : barRange(passage.first, passage.last),
    rung === undefined
      ? tempoWords(piece, practiceTempo(then))
      : `rung ${(last.rung ?? 0) + 1} of the ladder (${tempoWords(piece, bpm(rung.tempo))})`,
    ...(silent.includes('bass') ? ['without the bass'] : []),
    `on ${dayWords(last.day)}`,
  ].join(', ');
}
