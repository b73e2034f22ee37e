import { fret, remembered } from '../base';
import {
  idsOf,
  type Lesson,
  type LessonVersion,
  type LineBar,
  type LinePiece,
  lastNumber,
  type Piece,
  type VersionBar,
  type VersionLine,
} from '../lesson';
import { withOwn } from './fields';
import { movedLine } from './moved';

/** A bar of the tune with what a version has of its own in it. */
function ownBar(bar: LineBar, own: VersionBar | undefined): LineBar {
  if (own === undefined) return bar;
  const { written = bar, kept = bar.kept } = own;
  const position = own.position ?? bar.position ?? fret(0);
  const dynamics = own.dynamics ?? bar.dynamics ?? [];
  const words = own.words ?? bar.words ?? '';
  return {
    id: bar.id,
    harmony: written.harmony,
    origin: written.origin,
    kept,
    notes: written.notes,
    ...(written.over === undefined ? {} : { over: written.over }),
    ...(position === 0 ? {} : { position }),
    ...(dynamics.length === 0 ? {} : { dynamics }),
    ...(words === '' ? {} : { words }),
  };
}

/**
 * A line of the tune as a version has it. What is the version's own is never dropped: a bar of its own whose place in
 * the chart is gone is parked.
 */
export function lineOfVersion(
  tune: LinePiece,
  own: VersionLine,
  instrument: Lesson['instrument'],
): LinePiece {
  const base = movedLine(tune, own.moved, instrument);
  const patches = new Map((own.bars ?? []).map((bar) => [bar.id, bar]));
  const pool = new Map<string, LineBar>();
  for (const bar of [...base.bars, ...base.parked]) pool.set(bar.id, ownBar(bar, patches.get(bar.id)));
  for (const bar of own.added ?? []) pool.set(bar.id, bar);
  const taken = new Set<string>();
  const take = (ids: Iterable<string>): LineBar[] =>
    [...ids].flatMap((id) => {
      const bar = taken.has(id) ? undefined : pool.get(id);
      if (bar === undefined) return [];
      taken.add(id);
      return [bar];
    });
  const bars = take(own.order ?? base.bars.map(({ id }) => id));
  const parked = [
    ...take(own.parked ?? base.parked.map(({ id }) => id)),
    ...take([...patches.keys(), ...(own.added ?? []).map(({ id }) => id)]),
  ];
  return { ...withOwn<LinePiece>(base, own.own, own.without), bars, parked };
}

/** The order of pieces that a version has when it says nothing of it: the lesson's, and behind them its own. */
export const usualOrder = (
  tune: Pick<Lesson, 'pieces'>,
  { pieces = [], without = [] }: Pick<LessonVersion, 'pieces' | 'without'>,
): readonly string[] => {
  const shared = tune.pieces.map(({ id }) => id).filter((id) => !without.includes(id));
  return [...shared, ...pieces.map(({ id }) => id).filter((id) => !shared.includes(id))];
};

function piecesOfVersion(tune: Lesson, version: LessonVersion): readonly Piece[] {
  const own = new Map((version.pieces ?? []).map((piece) => [piece.id, piece]));
  const lines = new Map(version.lines.map((line) => [line.id, line]));
  const shared = new Map(tune.pieces.map((piece) => [piece.id, piece]));
  const usual = usualOrder(tune, version);
  const order = (version.order ?? usual).filter((id) => usual.includes(id));
  // A piece that came to the lesson since stands behind its neighbour.
  usual.forEach((id, index) => {
    if (!order.includes(id)) order.splice(order.indexOf(usual[index - 1] ?? '') + 1, 0, id);
  });
  return order.flatMap((id): readonly Piece[] => {
    const piece = own.get(id) ?? shared.get(id);
    if (piece === undefined) return [];
    const line = lines.get(id);
    return piece.kind === 'line' && line !== undefined && !own.has(id)
      ? [lineOfVersion(piece, line, tune.instrument)]
      : [piece];
  });
}

const idsIn = ({ id, pieces = [], lines }: LessonVersion): readonly string[] => [
  id,
  ...idsOf(pieces),
  ...lines.flatMap(({ added = [], own }) => [
    ...added.map((bar) => bar.id),
    ...[...(own.sections ?? []), ...(own.parkedSections ?? []), ...(own.takes ?? [])].map((part) => part.id),
  ]),
];

/** The highest number of an id in a lesson and all of its versions. */
export const highestId = ({ pieces, versions = [], idsUpTo = 0 }: Lesson): number =>
  Math.max(idsUpTo, lastNumber(idsOf(pieces)), lastNumber(versions.flatMap(idsIn)));

/**
 * A version of a lesson as a plain lesson, which everything takes as it takes any other: sheet, sound, handout,
 * practice page and files. It holds nothing of the other versions, not even their names.
 * @param versionId - null, or one that is not there, for the tune
 */
export function lessonOfVersion(document: Lesson, versionId: string | null): Lesson {
  const { versions, open: _, ...tune } = document;
  if (versions === undefined) return document;
  const idsUpTo = highestId(document);
  const version = versions.find(({ id }) => id === versionId);
  if (version === undefined) return { ...tune, idsUpTo };
  return {
    ...tune,
    ...version.own,
    handout: withOwn(tune.handout, version.handout ?? {}, version.bare),
    pieces: piecesOfVersion(tune, version),
    idsUpTo,
  };
}

const asOpen = new WeakMap<Lesson, Lesson>();

/** The lesson that is being worked on: the open version, or the tune. The same object again for the same document. */
export const lessonAsOpen = (document: Lesson): Lesson =>
  remembered(asOpen, document, () => lessonOfVersion(document, document.open ?? null));

/** Notes how a document is worked on, where that is known already. */
export function knowAsOpen(document: Lesson, lesson: Lesson): Lesson {
  asOpen.set(document, lesson);
  return document;
}
