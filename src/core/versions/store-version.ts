import { alike, fret, shareParts } from '../base';
import {
  type Lesson,
  type LessonVersion,
  type LineBar,
  type LinePiece,
  OPTIONAL_IN_HANDOUT,
  OPTIONAL_IN_LINE,
  type Piece,
  type VersionBar,
  type VersionLine,
} from '../lesson';
import { usualOrder } from './derive';
import { differing, missing, OWN_IN_HANDOUT, OWN_IN_LESSON, OWN_IN_LINE } from './fields';
import { movedLine, stepBetween, together } from './moved';

/** How a version says that the hand is free where the tune holds it. */
const FREE = fret(0);

const sameNotes = (one: LineBar, other: LineBar): boolean =>
  one.harmony === other.harmony &&
  one.origin === other.origin &&
  alike(one.notes, other.notes) &&
  alike(one.over, other.over);

/** What a bar has that the tune's has not; null for nothing. `tune` is the bar in the tune's own key. */
function ownIn(
  base: LineBar,
  bar: LineBar,
  tune: LineBar,
  before: VersionBar | undefined,
): VersionBar | null {
  const own = {
    ...(sameNotes(base, bar)
      ? {}
      : {
          written: {
            harmony: bar.harmony,
            origin: bar.origin,
            notes: bar.notes,
            ...(bar.over === undefined ? {} : { over: bar.over }),
            was: before?.written?.was ?? tune.notes,
          },
        }),
    ...(base.kept === bar.kept ? {} : { kept: bar.kept }),
    ...(base.position === bar.position ? {} : { position: bar.position ?? FREE }),
    ...(alike(base.dynamics, bar.dynamics) ? {} : { dynamics: bar.dynamics ?? [] }),
    ...(base.words === bar.words ? {} : { words: bar.words ?? '' }),
  };
  return Object.keys(own).length === 0 ? null : { id: bar.id, ...own };
}

const idsIn = (parts: readonly { readonly id: string }[]): readonly string[] => parts.map(({ id }) => id);

/** The bars of a line that are not as the tune has them. */
function ownBarsOf(tune: LinePiece, base: LinePiece, line: LinePiece, old: VersionLine | undefined) {
  const tunes = new Map([...tune.bars, ...tune.parked].map((bar) => [bar.id, bar]));
  const bases = new Map([...base.bars, ...base.parked].map((bar) => [bar.id, bar]));
  const known = new Map((old?.bars ?? []).map((bar) => [bar.id, bar]));
  const bars: VersionBar[] = [];
  const added: LineBar[] = [];
  for (const bar of [...line.bars, ...line.parked]) {
    const [shared, inTune] = [bases.get(bar.id), tunes.get(bar.id)];
    if (shared === bar) continue;
    if (shared === undefined || inTune === undefined) added.push(bar);
    else {
      const own = ownIn(shared, bar, inTune, known.get(bar.id));
      if (own !== null) bars.push(own);
    }
  }
  return { bars, added };
}

/**
 * What a version has of its own in a line of the tune, from the line as it is to be.
 * @param before - the line as the version had it until now, where it had it: how far it was moved shows in it
 */
function storeLine(
  tune: LinePiece,
  line: LinePiece,
  old: VersionLine | undefined,
  before: LinePiece | undefined,
  instrument: Lesson['instrument'],
): VersionLine {
  const step = before === undefined ? null : stepBetween(before, line);
  const moved = step === null ? old?.moved : together(old?.moved, step);
  const base = movedLine(tune, moved, instrument);
  const differs = differing(OWN_IN_LINE, base, line);
  const hasOwnChart = differs.chartText !== undefined || !alike(idsIn(base.bars), idsIn(line.bars));
  const { bars: ownBars, added } = ownBarsOf(tune, base, line, old);
  const order = idsIn(line.bars);
  const usuallyParked = idsIn(base.parked).filter((id) => !order.includes(id));
  const parked = idsIn(line.parked);
  const without = missing(OPTIONAL_IN_LINE, base, line);
  return {
    id: tune.id,
    ...(moved === undefined ? {} : { moved }),
    own: {
      ...differs,
      level: line.level,
      hand: line.hand,
      // A chart of its own is in its own metre and key, and keeps its own sections.
      ...(hasOwnChart
        ? {
            chartText: line.chartText,
            metre: line.metre,
            key: line.key,
            sections: line.sections,
            parkedSections: line.parkedSections,
          }
        : {}),
    },
    ...(without.length === 0 ? {} : { without }),
    ...(ownBars.length === 0 ? {} : { bars: ownBars }),
    ...(added.length === 0 ? {} : { added }),
    ...(hasOwnChart ? { order } : {}),
    ...(alike(parked, usuallyParked) ? {} : { parked }),
  };
}

/**
 * What a version is to hold so that it is an edited lesson: what differs from the tune, and nothing else.
 * @param before - the version as a lesson, as it was until now
 */
export function storeVersion(
  tune: Lesson,
  version: LessonVersion,
  before: Lesson,
  edited: Lesson,
): LessonVersion {
  const lines: VersionLine[] = [];
  const pieces: Piece[] = [];
  for (const piece of edited.pieces) {
    const shared = tune.pieces.find(({ id }) => id === piece.id);
    if (shared?.kind === 'line' && piece.kind === 'line') {
      const was = before.pieces.find(({ id }) => id === piece.id);
      const old = version.lines.find(({ id }) => id === piece.id);
      lines.push(
        piece === was && old !== undefined
          ? old
          : storeLine(shared, piece, old, was?.kind === 'line' ? was : undefined, tune.instrument),
      );
    } else if (shared === undefined || !alike(shared, piece)) pieces.push(piece);
  }
  const without = tune.pieces
    .map(({ id }) => id)
    .filter((id) => edited.pieces.every((piece) => piece.id !== id));
  const handout = differing(OWN_IN_HANDOUT, tune.handout, edited.handout);
  const bare = missing(OPTIONAL_IN_HANDOUT, tune.handout, edited.handout);
  const order = idsIn(edited.pieces);
  return shareParts(version, {
    id: version.id,
    name: version.name,
    own: { ...differing(OWN_IN_LESSON, tune, edited), instrument: edited.instrument },
    ...(Object.keys(handout).length === 0 ? {} : { handout }),
    ...(bare.length === 0 ? {} : { bare }),
    lines,
    ...(pieces.length === 0 ? {} : { pieces }),
    ...(without.length === 0 ? {} : { without }),
    ...(alike(usualOrder(tune, { pieces, without }), order) ? {} : { order }),
  });
}
