import type { HeardLine } from '../hearing';
import type { BarModel, LineModel } from '../model';
import type { Tone } from '../tones';
import type { Entry, Exit } from './ends';
import type { RuleNumber } from './numbers';

/** A bar by itself, whatever its neighbours play. */
export interface Alone {
  readonly model: LineModel;
  readonly bar: BarModel;
  readonly tones: readonly Tone[];
}

/** One bar going over into another, by the ends that meet. */
export interface Meeting {
  readonly model: LineModel;
  readonly from: BarModel;
  readonly exit: Exit;
  readonly to: BarModel;
  readonly entry: Entry;
}

/** The whole line. */
export interface Whole {
  readonly model: LineModel;
  readonly heard: HeardLine;
}

/** A test that needs to hear more than two bars. */
export interface WholeTest {
  /**
   * Indices of the bars that break the rule.
   * @param near the only bars that are asked about; all when left out
   */
  places(line: Whole, near?: ReadonlySet<number>): readonly number[];
  /** Whether the rule is broken in or beside a bar by what that bar plays: what an idea for it has to own up to. */
  concerns(line: Whole, bar: BarModel): boolean;
}

/** What an idea is offered with when it breaks a rule beside the present neighbours; null where nothing is said. */
export interface Caution {
  /** By itself, or on the way into the next bar. */
  readonly own: string | null;
  /** Where the bar before leads into it; where null, as `own`. */
  readonly entering: string | null;
}

/** A rule of a teacher's list: everything that the program knows about it. */
export interface Rule {
  readonly number: RuleNumber;
  /** The rule itself, as a teacher would put it. */
  readonly rule: string;
  readonly source: string;
  /** What is heard where it is broken, and what mends it: parts of a sentence. */
  readonly heard: string;
  readonly mend: string;
  /** What is heard in the very bar, where a rule holds several things; `heard` in all others. */
  readonly heardIn?: (line: Whole, bar: BarModel) => string;
  readonly caution: Caution;
  /** Whether a bar breaks it by itself; null where no single bar can. */
  readonly alone: ((at: Alone) => boolean) | null;
  /** Whether part of a bar is held to that, too: not where it counts the notes of a bar, or asks for one of its beats. */
  readonly inParts: boolean;
  /** Whether two bars break it where they meet, both notes struck. */
  readonly meeting: ((at: Meeting) => boolean) | null;
  /** Whether a note that is tied over into the next bar breaks it. */
  readonly tied: ((at: Meeting) => boolean) | null;
  /** Where the line as a whole breaks it. */
  readonly whole: WholeTest | null;
}

/** Where a list is common practice and nobody's in particular. */
export const TEACHERS_LIST = 'a teacher’s list: common practice, no source';

export const NO_CAUTION: Caution = { own: null, entering: null };

/** A bar and those that can follow it: where a silent one or an uneven number of notes is heard. */
export const itselfAndNext = (bar: BarModel): ReadonlySet<number> => new Set([bar.index, ...bar.after]);
