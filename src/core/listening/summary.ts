import type { BarReport, ListeningReport, NoteReport } from './types';

/** How much a fault asks for practice; the figures are ours. A rest that is filled weighs most: in these styles the rests are the line. */
const TROUBLE = { rest: 1.2, leftOut: 1, otherPitch: 1, extra: 0.8, offBeat: 0.5, held: 0.25 } as const;

/** A note this many seconds from its place is off it, or this share of the beat where that is more; ours. */
const OFF = { seconds: 0.05, beat: 0.08 } as const;

/** A round is reached when so many of its notes and rests that were heard are as written, and so many were heard; ours. */
const REACHED = { right: 0.9, heard: 0.7 } as const;

/** Bars with less trouble than this, a round, need no practice of their own. */
const WORTH = 0.5;

/** What is practised is slowed down to this share, to the tempo that was reached at most; ours. */
const SLOWER = 0.8;

export const isOff = ({ late, note }: NoteReport): boolean =>
  late !== null && Math.abs(late) > Math.max(OFF.seconds, OFF.beat * note.beat);

function troubleOf({ notes, extras, rests }: BarReport): number {
  const ofNote = (note: NoteReport): number => {
    if (note.verdict.kind === 'left out') return TROUBLE.leftOut;
    const pitch = note.verdict.kind === 'other pitch' ? TROUBLE.otherPitch : 0;
    const length = note.held === 'short' || note.held === 'long' ? TROUBLE.held : 0;
    return pitch + length + (isOff(note) ? TROUBLE.offBeat : 0);
  };
  const filled = rests.filter(({ verdict }) => verdict === 'filled').length;
  return (
    notes.reduce((sum, note) => sum + ofNote(note), 0) + extras.length * TROUBLE.extra + filled * TROUBLE.rest
  );
}

/** How much of what was asked was heard, and how much of that was as written. */
export interface Tally {
  readonly notes: number;
  readonly right: number;
  readonly rests: number;
  readonly kept: number;
  /** Notes and rests of which it is not known. */
  readonly unknown: number;
  readonly extras: number;
}

export function tallyOf(bars: readonly BarReport[]): Tally {
  const notes = bars.flatMap((bar) => bar.notes);
  const rests = bars.flatMap((bar) => bar.rests);
  const judged = notes.filter(({ verdict }) => verdict.kind !== 'not heard');
  const told = rests.filter(({ verdict }) => verdict !== 'not heard');
  return {
    notes: judged.length,
    right: judged.filter((note) => note.verdict.kind === 'played').length,
    rests: told.length,
    kept: told.filter(({ verdict }) => verdict === 'kept').length,
    unknown: notes.length + rests.length - judged.length - told.length,
    extras: bars.reduce((sum, { extras }) => sum + extras.length, 0),
  };
}

function isReached(bars: readonly BarReport[]): boolean {
  const { notes, right, rests, kept, unknown, extras } = tallyOf(bars);
  const known = notes + rests;
  if (known === 0 || known / (known + unknown) < REACHED.heard) return false;
  const off = bars.flatMap((bar) => bar.notes).filter(isOff).length;
  return (right - off + kept - extras) / known >= REACHED.right;
}

/** What to practise: two neighbouring bars, or one where the line has no more. */
export interface ToPractise {
  /** Indices of written bars. */
  readonly first: number;
  readonly last: number;
  /** Beats a minute. */
  readonly tempo: number;
}

export interface Summary extends Tally {
  readonly rounds: number;
  /** Beats a minute of the fastest round that was as written but for a tenth of it; null where none was. */
  readonly reached: number | null;
  /** Null where nothing asks for it. */
  readonly practise: ToPractise | null;
  /** Written bars in trouble, by their index, the worst first. */
  readonly stuck: readonly number[];
}

/** What comes of a hearing. */
export function summaryOf(report: ListeningReport): Summary {
  const bars = report.flatMap((round) => round.bars);
  const trouble = new Map<number, number>();
  for (const bar of bars) {
    const times = bars.filter((each) => each.bar === bar.bar).length;
    trouble.set(bar.bar, (trouble.get(bar.bar) ?? 0) + troubleOf(bar) / times);
  }
  const written = [...trouble.keys()].sort((one, other) => one - other);
  const of = (bar: number): number => trouble.get(bar) ?? 0;
  const pairs = written.flatMap((bar) =>
    trouble.has(bar + 1)
      ? [{ first: bar, last: bar + 1 }]
      : written.length === 1
        ? [{ first: bar, last: bar }]
        : [],
  );
  const weight = ({ first, last }: { first: number; last: number }): number =>
    first === last ? of(first) : of(first) + of(last);
  const worst = pairs.toSorted((one, other) => weight(other) - weight(one))[0];
  const tempos = report.filter((round) => isReached(round.bars)).map(({ tempo }) => tempo);
  const reached = tempos.length === 0 ? null : Math.max(...tempos);
  const slowest = Math.min(...report.map(({ tempo }) => tempo));
  return {
    ...tallyOf(bars),
    rounds: report.length,
    reached,
    practise:
      worst === undefined || weight(worst) < WORTH
        ? null
        : { ...worst, tempo: reached === null ? slowest * SLOWER : Math.min(reached, slowest * SLOWER) },
    stuck: written.filter((bar) => of(bar) >= WORTH).sort((one, other) => of(other) - of(one)),
  };
}
