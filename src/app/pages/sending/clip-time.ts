import { listed } from '../../../core/base';
import type { LineSheet, SheetNote } from '../../../core/lesson';
import { type Performance, playedBarAt, secondsAt, tickAt } from '../../../core/performance';
import { straightened } from '../../../core/playing';

/** What is heard at a moment of the clip. */
export type ClipMoment =
  | { readonly kind: 'counting'; readonly beat: number }
  | {
      readonly kind: 'playing';
      /** Index of the written bar, and the place in it with the swing taken out. */
      readonly bar: number;
      readonly tick: number;
      readonly note: SheetNote | null;
      /** Index among all bars that the clip plays. */
      readonly played: number;
    }
  | { readonly kind: 'ringing' };

/** Seconds that a clip goes on when the last bar is over, so that its notes ring out. */
const RING = 1.5;

interface Begun {
  readonly performance: Performance;
  /** Seconds into the clip. */
  readonly from: number;
  readonly barsBefore: number;
}

/** A clip's rounds in their time. */
export function clipTime(rounds: readonly Performance[], sheet: LineSheet) {
  const begun: Begun[] = [];
  let [from, barsBefore] = [0, 0];
  for (const performance of rounds) {
    begun.push({ performance, from, barsBefore });
    from += secondsAt(performance, performance.end);
    barsBefore += performance.bars.length;
  }
  const at = (seconds: number): ClipMoment => {
    const round = begun.findLast((each) => each.from <= seconds) ?? begun[0];
    if (round === undefined) return { kind: 'ringing' };
    const { performance } = round;
    const tick = tickAt(performance, seconds - round.from);
    const counted = performance.countIn - performance.intro;
    if (tick < counted) return { kind: 'counting', beat: Math.floor(tick / performance.beat) + 1 };
    const played = playedBarAt(performance, tick);
    if (played === null) return { kind: 'ringing' };
    const { bar, start } = played.bar;
    const straight = straightened(tick - start, sheet, performance.tempo);
    const note =
      sheet.bars[bar]?.notes.find(
        (each) => each.note.start <= straight && straight < each.note.start + each.note.duration,
      ) ?? null;
    return { kind: 'playing', bar, tick: straight, note, played: round.barsBefore + played.index };
  };
  return { seconds: from + RING, at };
}

/** The beats that were counted so far: `Count-in: 1, 2 and 3`. */
export const countWords = (beat: number): string =>
  `Count-in: ${listed(Array.from({ length: beat }, (_, index) => index + 1))}`;
