import { rememberedFor } from '../../base';
import type { BarModel } from '../model';
import type { Tone } from '../tones';
import { type Counted, share } from './counted';
import { isPumped } from './node-cost';

/** From this level on a line has the steps of the scale. */
const STEPS_FROM = 3;

/** The level that first has the third. */
const THIRDS_FROM = 2;

/** A shape has this many different moves at least. */
const LEAST_MOVES = 2;

const movesIn = (tones: readonly Tone[]): readonly number[] =>
  tones.slice(1).flatMap((tone, index) => {
    const move = tone.midi - (tones[index]?.midi ?? tone.midi);
    return move === 0 ? [] : [move];
  });

/** What is told of a bar by its tones alone. */
interface Sung {
  readonly arpeggio: boolean;
  readonly zigzag: boolean;
  readonly rhythm: string;
}

const sungOf = rememberedFor((tones: readonly Tone[]): Sung => {
  const moves = movesIn(tones);
  const pumped = isPumped(tones.map(({ midi }) => midi));
  return {
    arpeggio: !pumped && moves.length >= LEAST_MOVES && moves.every((move) => Math.abs(move) > 2),
    zigzag:
      !pumped &&
      moves.length > LEAST_MOVES &&
      moves.every((move, index) => index === 0 || move * (moves[index - 1] ?? 0) < 0),
    rhythm: tones.map(({ start }) => start).join(' '),
  };
});

/** Share of neighbouring bars that may have one rhythm before it is a march: of a walk, and of any other line (hand-set). */
const MARCH = { walk: 0.75, riff: 0.35 } as const;

/** The notes of the second half of a bar. */
const endOf = (bar: BarModel, tones: readonly Tone[]): readonly Tone[] =>
  tones.filter(({ start }) => start >= bar.ticks / 2);

/** The end of a bar: rhythm and degrees of its second half. */
const endingOf = (bar: BarModel, tones: readonly Tone[]): string => degreesOf(endOf(bar, tones));

/** Rhythm and degrees of notes, in text. */
const degreesOf = (tones: readonly Tone[]): string =>
  tones.map(({ start, interval }) => `${start}:${interval}`).join(' ');

/** What a bar of several chords makes of them: rhythm and degrees. */
const shapeOf = rememberedFor(degreesOf);

/** Bars that a phrase of four and of eight end on. */
const [HALF_WAY, WHOLE] = [4, 8] as const;

/** What two ends in one rhythm have of two that are alike (hand-set). */
const SAME_RHYTHM = 0.4;

/** How far the two phrases of a tune of eight bars end alike, of one: a comma and a full stop are not the same sign. */
function endsAlike({ bars, lists, count }: Counted): number {
  let most = 0;
  for (let end = WHOLE - 1; end < count; end += WHOLE) {
    const [one, other] = [bars[end - HALF_WAY], bars[end]];
    const [tones, others] = [lists[end - HALF_WAY] ?? [], lists[end] ?? []];
    if (!one || !other) continue;
    if (endingOf(one, tones) === endingOf(other, others)) return 1;
    if (sungOf(tones).rhythm === sungOf(others).rhythm) most = SAME_RHYTHM;
  }
  return most;
}

/** Whether the last bar ends as the one before does, two notes and more of it: the last word was said already. */
function saidTwice({ bars, lists, count }: Counted): boolean {
  const [before, last] = [bars[count - 2], bars[count - 1]];
  if (count < HALF_WAY || !before || !last) return false;
  const [one, other] = [endOf(before, lists[count - 2] ?? []), endOf(last, lists[count - 1] ?? [])];
  return (
    one.length > 1 &&
    one.length === other.length &&
    one.every(({ start, midi }, index) => start === other[index]?.start && midi === other[index]?.midi)
  );
}

/** Whether a line can be sung: steps among its leaps, turns, rhythms that answer, ends that differ. */
export function songCounted(counted: Counted) {
  const { model, bars, lists, count, walk } = counted;
  const { level } = model.request;
  const sung = lists.map(sungOf);
  const marching = sung.filter(({ rhythm }, index) => index > 0 && rhythm === sung[index - 1]?.rhythm).length;
  const split = lists.filter((_, index) => (bars[index]?.stretches.length ?? 0) > 1).map(shapeOf);
  return {
    arpeggios: level < STEPS_FROM ? 0 : share(sung.filter(({ arpeggio }) => arpeggio).length, count),
    zigzags: level < THIRDS_FROM ? 0 : share(sung.filter(({ zigzag }) => zigzag).length, count),
    march:
      level < STEPS_FROM ? 0 : Math.max(0, share(marching, count - 1) - (walk ? MARCH.walk : MARCH.riff)),
    endsAlike: endsAlike(counted),
    saidTwice: saidTwice(counted) ? 1 : 0,
    splitTwins: share(
      split.filter((shape, index) => index > 0 && shape === split[index - 1]).length,
      split.length,
    ),
  };
}
