import { type Performance, type PitchedEvent, type PlayedBar, secondsAt } from '../performance';
import type { Expected, ExpectedBar, ExpectedNote, ExpectedRest } from './types';

/** A round as it was heard. */
export interface PlayedRound {
  readonly performance: Performance;
  /** Rounds played before it. */
  readonly round: number;
  /** When the performance's first tick sounded, in seconds on the clock of the hearing. */
  readonly origin: number;
}

/** Shorter silences lie between notes and are no rests, in beats: with half a beat written, a hair of it may be lost. */
const LEAST_REST = 0.45;

/**
 * Which bars the student plays, and from which the notes are taken: all of them from themselves, but where the bass calls
 * and leaves the answer to the student, the answers alone, each from the bar that called.
 */
function judgedBars(bars: readonly PlayedBar[]): readonly { bar: PlayedBar; from: PlayedBar }[] {
  if (!bars.some(({ answer }) => answer)) return bars.map((bar) => ({ bar, from: bar }));
  return bars.flatMap((bar, index) => {
    const from = bars.slice(0, index).findLast((each) => each.bar === bar.bar && each.answer !== true);
    return bar.answer === true && from !== undefined ? [{ bar, from }] : [];
  });
}

/** The silences of a bar between its sounds, which may reach into it from the bar before. */
function restsOf(bar: ExpectedBar, notes: readonly ExpectedNote[], beat: number): readonly ExpectedRest[] {
  const rests: ExpectedRest[] = [];
  let silentFrom = bar.start;
  const until = (end: number) => {
    if (end - silentFrom >= LEAST_REST * beat)
      rests.push({ start: silentFrom, end, bar: bar.bar, round: bar.round });
  };
  for (const note of notes) {
    if (note.end <= bar.start || note.start >= bar.end) continue;
    until(note.start);
    silentFrom = Math.max(silentFrom, note.end);
  }
  until(bar.end);
  return rests;
}

/** What is to be played and where silence is to be kept, round by round in the order of time. */
export function expectedOf(rounds: readonly PlayedRound[]): Expected {
  const notes: ExpectedNote[] = [];
  const rests: ExpectedRest[] = [];
  const bars: ExpectedBar[] = [];
  for (const { performance, round, origin } of rounds) {
    const at = (tick: number) => origin + secondsAt(performance, tick);
    const beat = secondsAt(performance, performance.beat);
    const bass = performance.events.filter((event): event is PitchedEvent => event.part === 'bass');
    const judged = judgedBars(performance.bars).map(({ bar, from }) => {
      const within = ({ start }: PitchedEvent) => start >= from.start && start < from.start + from.duration;
      const moved = bar.start - from.start;
      return {
        bar: {
          start: at(bar.start),
          end: at(bar.start + bar.duration),
          bar: bar.bar,
          round,
          tempo: performance.tempo,
        },
        notes: bass.filter(within).map(
          (event): ExpectedNote => ({
            start: at(event.start + moved),
            end: at(event.start + event.duration + moved),
            midi: event.midi,
            dead: event.muted,
            soft: event.attack !== undefined,
            bar: bar.bar,
            round,
            beat,
          }),
        ),
      };
    });
    const played = judged.flatMap((each) => each.notes);
    notes.push(...played);
    bars.push(...judged.map(({ bar }) => bar));
    rests.push(...judged.flatMap(({ bar }) => restsOf(bar, played, beat)));
  }
  return { notes, rests, bars };
}
