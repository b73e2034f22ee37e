import { summaryOf } from './summary';
import type { ListeningReport, NoteReport } from './types';

/** What the ear cannot know. */
export interface Limits {
  /** How late the device hears was measured. */
  readonly timed: boolean;
  /** The rhythm section is in the microphone. */
  readonly bleeds: boolean;
}

const untimed = (note: NoteReport): NoteReport => ({ ...note, late: null, lateBeats: null });

/** A report without what would be a guess: it says less rather than something wrong. */
export const withoutGuesses = (report: ListeningReport, { timed, bleeds }: Limits): ListeningReport =>
  report.map((round) => ({
    ...round,
    late: timed ? round.late : null,
    bars: round.bars.map((bar) => ({
      ...bar,
      notes: timed ? bar.notes : bar.notes.map(untimed),
      extras: bleeds ? [] : bar.extras,
      rests: bleeds ? bar.rests.map((rest) => ({ ...rest, verdict: 'not heard' as const })) : bar.rests,
    })),
  }));

/** What stands on the score at a bar, by its index, of the last time that it was heard: a few words. */
export function barMarks(report: ListeningReport): ReadonlyMap<number, string> {
  const marks = new Map<number, string>();
  for (const bar of report.flatMap((round) => round.bars)) {
    const { notes, unknown, stuck } = summaryOf([
      { round: 0, tempo: 1, pace: null, late: null, bars: [bar] },
    ]);
    const silent = bar.notes.length === 0;
    const heard = notes > 0 || (silent && unknown === 0);
    marks.set(bar.bar, heard ? (stuck.length === 0 ? 'as written' : 'once more') : 'not heard');
  }
  return marks;
}
