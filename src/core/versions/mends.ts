import { alike } from '../base';
import {
  type Lesson,
  type LessonVersion,
  type LineBar,
  linePiece,
  readPiece,
  type VersionBar,
} from '../lesson';
import { lessonOfVersion } from './derive';

/** A bar that was mended in the tune since a version got notes of its own there, so that the version does not show it. */
export interface Mend {
  /** Id of the version. */
  readonly version: string;
  /** Id of the line. */
  readonly line: string;
  /** Id of the bar. */
  readonly bar: string;
}

const barIn = (tune: Lesson, line: string, id: string): LineBar | undefined => {
  const piece = linePiece(tune, line);
  return [...(piece?.bars ?? []), ...(piece?.parked ?? [])].find((bar) => bar.id === id);
};

/** What was mended in the tune and not in the versions that have something of their own there, in their order. */
export function mendsOf(document: Lesson): readonly Mend[] {
  return (document.versions ?? []).flatMap(({ id: version, lines }) =>
    lines.flatMap(({ id: line, bars = [] }) =>
      bars.flatMap(({ id: bar, written }): readonly Mend[] => {
        const now = written && barIn(document, line, bar);
        return now === undefined || alike(now.notes, written?.was) ? [] : [{ version, line, bar }];
      }),
    ),
  );
}

/** A document with a version made anew; the version is in no other place of it. */
export const withVersion = (
  document: Lesson,
  id: string,
  change: (version: LessonVersion) => LessonVersion,
): Lesson => ({
  ...document,
  versions: (document.versions ?? []).map((version) => (version.id === id ? change(version) : version)),
});

/** A version with what it has of its own in a bar made anew; null for nothing. */
export const withOwnBar = (
  version: LessonVersion,
  line: string,
  bar: string,
  change: (own: VersionBar) => VersionBar | null,
): LessonVersion => ({
  ...version,
  lines: version.lines.map((own) => {
    if (own.id !== line) return own;
    const { bars = [], ...rest } = own;
    const changed = bars.flatMap((each) => (each.id === bar ? (change(each) ?? []) : each));
    return { ...rest, ...(changed.length === 0 ? {} : { bars: changed }) };
  }),
});

/** What a version has of its own in a bar beside its notes; null for nothing. */
function besideNotes({ written: _, ...own }: VersionBar): VersionBar | null {
  return Object.keys(own).length > 1 ? own : null;
}

/** The version has the tune's notes in the bar, in its own key; what else it has of its own there stays. */
export const carryMend = (document: Lesson, { version, line, bar }: Mend): Lesson =>
  withVersion(document, version, (before) => withOwnBar(before, line, bar, besideNotes));

/** The version keeps its own notes in the bar, and the mend is no longer offered. */
export const leaveMend = (document: Lesson, { version, line, bar }: Mend): Lesson => {
  const now = barIn(document, line, bar);
  return withVersion(document, version, (before) =>
    withOwnBar(before, line, bar, (own) =>
      own.written === undefined || now === undefined
        ? own
        : { ...own, written: { ...own.written, was: now.notes } },
    ),
  );
};

/** The number of a bar as a version has it, as written (0 for a pickup); null where it is parked or gone. */
export function numberOfBar(document: Lesson, { version, line, bar }: Mend): number | null {
  const seen = linePiece(lessonOfVersion(document, version), line);
  const at = seen?.bars.findIndex(({ id }) => id === bar) ?? -1;
  return seen === null || at < 0 ? null : (readPiece(seen).chart.bars[at]?.number ?? null);
}
