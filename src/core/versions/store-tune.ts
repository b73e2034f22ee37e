import { alike } from '../base';
import {
  instrumentOf,
  type Lesson,
  type LessonVersion,
  type LineBar,
  type LinePiece,
  transposePiece,
  type VersionBar,
  type VersionLine,
} from '../lesson';
import { type Interval, invertDirection } from '../theory';
import { lineOfVersion } from './derive';
import { movedLine, stepBetween, together } from './moved';

/** Notes in the tune's key as they are after the tune was transposed. */
function inNewKey(
  tune: LinePiece,
  bars: readonly VersionBar[],
  step: Interval,
  instrument: Lesson['instrument'],
) {
  const was = bars.flatMap(({ id, written }) => (written === undefined ? [] : [{ id, notes: written.was }]));
  const blank = { harmony: '', origin: 'hand', kept: false } as const;
  const moved = transposePiece(
    { ...tune, bars: was.map((bar): LineBar => ({ ...blank, ...bar })), parked: [], takes: [] },
    step,
    instrumentOf(instrument),
  );
  const notes = new Map(moved.bars.map((bar) => [bar.id, bar.notes]));
  return bars.map(
    (bar): VersionBar =>
      bar.written === undefined
        ? bar
        : { ...bar, written: { ...bar.written, was: notes.get(bar.id) ?? bar.written.was } },
  );
}

/** The bars of a version under the chords that the tune now has there, where they were under the tune's chords before. */
function underNewChords(
  bars: readonly VersionBar[],
  before: LinePiece,
  after: LinePiece,
): readonly VersionBar[] {
  const chords = (line: LinePiece) => new Map(line.bars.map(({ id, harmony }) => [id, harmony]));
  const [old, now] = [chords(before), chords(after)];
  return bars.map((bar) => {
    const harmony = now.get(bar.id);
    return bar.written === undefined || harmony === undefined || bar.written.harmony !== old.get(bar.id)
      ? bar
      : { ...bar, written: { ...bar.written, harmony } };
  });
}

/**
 * What a version has of its own in a line of the tune after the line was edited: its own stays as it is and where it
 * is, in its own key, and whatever is as in the tune follows it.
 */
function followLine(
  before: LinePiece,
  after: LinePiece,
  own: VersionLine,
  tune: { readonly before: Lesson; readonly after: Lesson },
): VersionLine {
  const step = stepBetween(before, after);
  const { moved: wasMoved, ...rest } = own;
  const moved = step === null ? wasMoved : together(wasMoved, invertDirection(step));
  const there = new Set([...after.bars, ...after.parked].map(({ id }) => id));
  const held = new Set([
    ...(own.order ?? []),
    ...(own.parked ?? []),
    ...(own.bars ?? []).map(({ id }) => id),
  ]);
  const goneIds = new Set(
    [...before.bars, ...before.parked].map(({ id }) => id).filter((id) => !there.has(id)),
  );
  const gone = [...goneIds].some((id) => held.has(id));
  const old = gone ? lineOfVersion(before, own, tune.before.instrument) : null;
  const kept = (old === null ? [] : [...old.bars, ...old.parked]).filter(
    ({ id }) => goneIds.has(id) && held.has(id),
  );
  const stay = (own.bars ?? []).filter(({ id }) => !goneIds.has(id));
  const inKey = step === null ? stay : inNewKey(after, stay, step, tune.after.instrument);
  const bars =
    own.order !== undefined
      ? inKey
      : underNewChords(
          inKey,
          movedLine(before, wasMoved, tune.before.instrument),
          movedLine(after, moved, tune.after.instrument),
        );
  const added = [...(own.added ?? []), ...kept];
  const { bars: _, added: __, ...others } = rest;
  return {
    ...others,
    ...(moved === undefined ? {} : { moved }),
    ...(bars.length === 0 ? {} : { bars }),
    ...(added.length === 0 ? {} : { added }),
  };
}

/** Whether a version has anything of its own in a line, beside the hand and the level that it always has. */
function hasOwn(tune: LinePiece, { id: _, own, ...rest }: VersionLine): boolean {
  const { hand, level, ...others } = own;
  return (
    Object.keys(rest).length > 0 ||
    Object.keys(others).length > 0 ||
    (level ?? tune.level) !== tune.level ||
    !alike(hand ?? tune.hand, tune.hand)
  );
}

/** A version after the tune that it shares was edited. */
function followTune(version: LessonVersion, before: Lesson, after: Lesson): LessonVersion {
  const linesBefore = before.pieces.filter((piece): piece is LinePiece => piece.kind === 'line');
  const left: LinePiece[] = [];
  const lines = linesBefore.flatMap((line): readonly VersionLine[] => {
    const own = version.lines.find(({ id }) => id === line.id);
    const now = after.pieces.find(({ id }) => id === line.id);
    if (now === line) return own === undefined ? [] : [own];
    if (now?.kind !== 'line') {
      if (own !== undefined && hasOwn(line, own)) left.push(lineOfVersion(line, own, before.instrument));
      return [];
    }
    const followed = followLine(line, now, own ?? { id: line.id, own: {} }, { before, after });
    return own === undefined && followed.moved === undefined ? [] : [followed];
  });
  if (left.length === 0 && alike(version.lines, lines)) return version;
  const pieces = [...(version.pieces ?? []), ...left];
  return { ...version, lines, ...(pieces.length === 0 ? {} : { pieces }) };
}

/**
 * The lesson after its tune was edited. Every version follows it where it is as the tune, keeps what is its own, and
 * stays in its own key; a line that the tune no longer has stays where a version had something of its own in it.
 */
export const storeTune = (document: Lesson, before: Lesson, edited: Lesson): Lesson => ({
  ...edited,
  versions: (document.versions ?? []).map((version) => followTune(version, before, edited)),
});
