/** What is heard at a moment. */
export interface Moment {
  /** On a clock that only goes forward, in seconds. */
  readonly at: number;
  readonly rung: number;
  readonly round: number;
  /** Index of the played bar; null in a count-in and in an empty bar. */
  readonly playedBar: number | null;
  /** Notes that are struck in the bar. */
  readonly notes: number;
  /** Whether the line is silent for a beat or longer in the bar. */
  readonly breathes: boolean;
  /** Beats a minute, as they are told. */
  readonly tempo: number;
  /** Whether the last beat of the round has begun. */
  readonly ending: boolean;
}

/** What is played from a beginning to a stop. */
export interface Stretch {
  readonly began: number;
  readonly last: Moment;
  readonly notes: number;
  /** Rounds played to their end, and the fastest of them, in beats a minute. */
  readonly rounds: number;
  readonly tempo: number | null;
  /** Since when the line has had no rest, and the longest time that it had none, in seconds. */
  readonly without: number;
  readonly longest: number;
}

const finishing = (stretch: Stretch, tempo: number): Stretch => ({
  ...stretch,
  rounds: stretch.rounds + 1,
  tempo: Math.max(stretch.tempo ?? 0, tempo),
});

/** A stretch with one moment more; null begins one. */
export function hear(stretch: Stretch | null, moment: Moment): Stretch {
  if (stretch === null) {
    const notes = moment.playedBar === null ? 0 : moment.notes;
    return { began: moment.at, last: moment, notes, rounds: 0, tempo: null, without: moment.at, longest: 0 };
  }
  const { last } = stretch;
  const nextRound = moment.round !== last.round || moment.rung !== last.rung;
  const nextBar = nextRound || moment.playedBar !== last.playedBar;
  const counted = nextRound ? finishing(stretch, last.tempo) : stretch;
  const rests = moment.playedBar === null || moment.breathes;
  const without = rests ? moment.at : stretch.without;
  return {
    ...counted,
    last: moment,
    notes: stretch.notes + (nextBar && moment.playedBar !== null ? moment.notes : 0),
    without,
    longest: Math.max(stretch.longest, moment.at - without),
  };
}

/** A stretch that has ended: a round is finished where it came to its last beat. */
export const closed = (stretch: Stretch): Stretch =>
  stretch.last.ending ? finishing(stretch, stretch.last.tempo) : stretch;
