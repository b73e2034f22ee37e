import type { HeardLine } from '../hearing';
import { changesBetween, type LineModel } from '../model';
import { isHome, type Tone } from '../tones';
import { type Counted, mostOf, share, sum } from './counted';

const mod = (midi: number): number => ((midi % 12) + 12) % 12;

interface Meeting {
  readonly last: Tone;
  readonly before: Tone | undefined;
  readonly first: Tone;
  readonly barLine: boolean;
}

/** Where one chord goes over into another, also in the middle of a bar and round the end. */
function changesOfLine(model: LineModel, heard: HeardLine): { changes: Meeting[]; joins: Meeting[] } {
  const changes: Meeting[] = [];
  const joins: Meeting[] = [];
  for (const bar of model.bars) {
    const tones = heard[bar.index] ?? [];
    tones.forEach((tone, index) => {
      const before = tones[index - 1];
      if (before && before.stretch !== tone.stretch)
        changes.push({ last: before, before: tones[index - 2], first: tone, barLine: false });
    });
    const last = tones.at(-1);
    for (const index of bar.after) {
      const next = model.bars[index];
      const first = heard[index]?.[0];
      if (!last || !next || !first) continue;
      const meeting = { last, before: tones.at(-2), first, barLine: true };
      joins.push(meeting);
      if (changesBetween(bar, next) && first.stretch?.chord) changes.push(meeting);
    }
  }
  return { changes, joins };
}

/** Whether the first note of a chord has just been played: it arrives nowhere. */
const isForetold = ({ before, first, last }: Meeting): boolean =>
  before !== undefined && before.midi === first.midi && last.midi !== first.midi;

/** Share of bars that may end on a note outside the scale before it is a tic. */
const CHROMATIC_ENDS = 0.25;

/** Share of changes that half steps lead into before more of them is no better. */
const HALF_STEPS = 0.5;

/** How the line goes from chord to chord, from bar to bar, and round its end. */
export function waysCounted({ model, heard, bars, lists, flat, walk }: Counted) {
  const { changes, joins } = changesOfLine(model, heard);
  const step = ({ last, first }: Pick<Meeting, 'last' | 'first'>) => Math.abs(first.midi - last.midi);
  const dominant = ({ last, first }: Pick<Meeting, 'last' | 'first'>) => mod(last.midi - first.midi) === 7;
  const lastTone = flat.at(-1);
  const firstTone = flat[0];
  const lastBar = bars.at(-1);
  const lastNotes = lists.at(-1) ?? [];
  const inLastBeat = lastBar ? lastNotes.filter(({ start }) => start >= lastBar.ticks - lastBar.beat) : [];
  const arrivals = joins.filter((meeting) => step(meeting) > 0);
  const ups = arrivals.filter(({ last, first }) => first.midi > last.midi).length;
  const opens = bars.flatMap((bar, index) =>
    bar.stretches.flatMap((stretch, at) => {
      const fresh =
        at > 0 ||
        bar.before.some((other) => {
          const before = model.bars[other];
          return before !== undefined && changesBetween(before, bar);
        });
      const first = (lists[index] ?? []).find((tone) => tone.stretch === stretch);
      return stretch.chord && fresh && first ? [isHome(first) ? 0 : 1] : [];
    }),
  );
  const pumps = model.request.feel.bassRole.mayPump;
  const isFar = (size: number) => size >= 10 && !(pumps && size === 12);
  const isOutside = ({ stretch, member, interval }: Tone) =>
    stretch?.chord !== null && !member && !stretch?.steps.some((one) => one?.halfSteps === interval);
  const homeward = lastTone && firstTone ? { last: lastTone, first: firstTone } : null;
  return {
    ledByStep: share(changes.filter((one) => step(one) === 1 || step(one) === 2).length, changes.length),
    halfStepJoins: Math.min(
      HALF_STEPS,
      share(changes.filter((one) => step(one) === 1).length, changes.length),
    ),
    ledByLeap: share(changes.filter((one) => step(one) > 4 && !dominant(one)).length, changes.length),
    ledByTritone: share(
      changes.filter((one) => step(one) === 6 || (step(one) > 7 && step(one) !== 12)).length,
      changes.length,
    ),
    stuck: share(changes.filter((one) => step(one) === 0).length, changes.length),
    stutter: share(changes.filter((one) => one.before?.midi === one.last.midi).length, changes.length),
    uniformLeads:
      arrivals.length >= 4
        ? Math.max(
            0,
            share(mostOf(arrivals.map(({ last, first }) => `${first.midi - last.midi}`)), arrivals.length) -
              0.5,
          )
        : 0,
    oneSided: arrivals.length >= 4 ? Math.max(0, Math.abs(share(ups, arrivals.length) - 0.5) - 0.25) : 0,
    seamByStep: lastTone && firstTone && [1, 2].includes(Math.abs(lastTone.midi - firstTone.midi)) ? 1 : 0,
    seamPickup:
      inLastBeat.length >= 2 ||
      (inLastBeat.length === 1 && (inLastBeat[0]?.duration ?? 0) < (lastBar?.beat ?? 0))
        ? 1
        : 0,
    seamLost:
      homeward && ![1, 2].includes(step(homeward)) && !(step(homeward) > 0 && dominant(homeward)) ? 1 : 0,
    farJoins: share(joins.filter((one) => isFar(step(one))).length, joins.length),
    chromaticEnds: walk
      ? 0
      : Math.max(0, share(joins.filter(({ last }) => isOutside(last)).length, joins.length) - CHROMATIC_ENDS),
    foretold: share(changes.filter(isForetold).length, changes.length),
    hangs: share(joins.filter(({ last, first }) => first.start > 0 && isOutside(last)).length, joins.length),
    lateRoot: share(sum(opens), opens.length),
    leadingHome: lastTone && firstTone && firstTone.midi - lastTone.midi === 1 ? 1 : 0,
  };
}
