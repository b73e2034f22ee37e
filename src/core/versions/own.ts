import type {
  HandoutSettings,
  Lesson,
  LessonTexts,
  LessonVersion,
  LineBar,
  LinePiece,
  Piece,
  VersionLine,
} from '../lesson';
import { instrumentOf, linePiece, transposePiece } from '../lesson';
import { invertDirection } from '../theory';
import { highestId, lessonOfVersion } from './derive';
import { withOwnBar, withVersion } from './mends';
import { storeTune } from './store-tune';
import { storeVersion } from './store-version';

/** A field of a line that a version shares with the tune or changes for itself. */
export type SharedField = Exclude<
  keyof LinePiece,
  'kind' | 'id' | 'bars' | 'parked' | 'key' | 'level' | 'hand' | 'seed' | 'takes' | 'parkedSections'
>;

/**
 * One thing that a version has of its own and that could be the tune's. Key, tuning, hand and level are not among
 * them: they are no part of what the versions share.
 */
export type Own =
  /** The notes, dynamics and words of a bar. */
  | { readonly kind: 'bar'; readonly line: string; readonly bar: string }
  /** The chords of a line, and which bars there are. */
  | { readonly kind: 'chart'; readonly line: string }
  | { readonly kind: 'field'; readonly line: string; readonly field: SharedField }
  /** A whole piece: one that the version alone has, one in place of the tune's, or one it goes without. */
  | { readonly kind: 'piece'; readonly piece: string; readonly how: 'added' | 'changed' | 'left out' }
  | { readonly kind: 'text'; readonly field: keyof LessonTexts }
  | { readonly kind: 'handout'; readonly field: keyof HandoutSettings };

/** Fields of a line that are told with its chart where the version has a chart of its own. */
const WITH_CHART: readonly string[] = ['chartText', 'metre', 'key', 'sections', 'parkedSections'];

const NOT_SHARED: readonly string[] = ['key', 'level', 'hand', 'seed', 'takes', 'parkedSections'];

const hasOwnChart = ({ own, order }: VersionLine): boolean =>
  own.chartText !== undefined || order !== undefined;

const isSharedField = (name: string): name is SharedField => !NOT_SHARED.includes(name);

function ownInLine(line: VersionLine): readonly Own[] {
  const chart = hasOwnChart(line);
  const fields = [...Object.keys(line.own), ...(line.without ?? [])]
    .filter(isSharedField)
    .filter((name) => !chart || !WITH_CHART.includes(name));
  return [
    ...(chart ? [{ kind: 'chart', line: line.id } as const] : []),
    ...fields.map((field) => ({ kind: 'field', line: line.id, field }) as const),
    ...(line.bars ?? [])
      .filter(({ written, dynamics, words }) => (written ?? dynamics ?? words) !== undefined)
      .map(({ id }) => ({ kind: 'bar', line: line.id, bar: id }) as const),
  ];
}

// The names are those of the records.
const namesOf = <Fields extends object>(record: Fields | undefined) =>
  Object.keys(record ?? {}) as (keyof Fields)[];

/** What a version has of its own, apart from its key, tuning, hand and level. */
export function ownOf(document: Lesson, version: LessonVersion): readonly Own[] {
  const { instrument: _, ...texts } = version.own;
  const shared = new Set(document.pieces.map(({ id }) => id));
  return [
    ...namesOf(texts).map((field) => ({ kind: 'text', field }) as const),
    ...(version.pieces ?? []).map(
      ({ id }) => ({ kind: 'piece', piece: id, how: shared.has(id) ? 'changed' : 'added' }) as const,
    ),
    ...(version.without ?? []).map((id) => ({ kind: 'piece', piece: id, how: 'left out' }) as const),
    ...version.lines.filter(({ id }) => shared.has(id)).flatMap(ownInLine),
    ...[...namesOf(version.handout), ...(version.bare ?? [])].map(
      (field) => ({ kind: 'handout', field }) as const,
    ),
  ];
}

/** Where in a version something of its own stands. */
const placeOf = (own: Own): string =>
  JSON.stringify([
    own.kind,
    'line' in own ? own.line : '',
    'bar' in own ? own.bar : 'field' in own ? own.field : 'piece' in own ? own.piece : '',
  ]);

/** The names of the other versions that have something of their own in the same place, so that it does not reach them. */
export const keptElsewhere = (document: Lesson, versionId: string, own: Own): readonly string[] =>
  (document.versions ?? [])
    .filter(
      (version) =>
        version.id !== versionId && ownOf(document, version).some((each) => placeOf(each) === placeOf(own)),
    )
    .map(({ name }) => name);

/** The whole record but for some fields, which are as in another one; what that one lacks goes. */
function withFieldsOf<Record extends object>(
  record: Record,
  from: Record,
  fields: readonly (keyof Record)[],
): Record {
  const made = { ...record };
  for (const field of fields) {
    if (from[field] === undefined) delete made[field];
    else made[field] = from[field];
  }
  return made;
}

const CHART_FIELDS = [
  'chartText',
  'metre',
  'sections',
  'parkedSections',
] as const satisfies readonly (keyof LinePiece)[];

/** A line of the tune with the chart of a version, and with its notes where its chords are other ones. */
function withChartOf(tune: LinePiece, mine: LinePiece): LinePiece {
  const known = new Map([...tune.bars, ...tune.parked].map((bar) => [bar.id, bar]));
  const bars = mine.bars.map((bar) => {
    const before = known.get(bar.id);
    return before?.harmony === bar.harmony ? before : bar;
  });
  const there = new Set(bars.map(({ id }) => id));
  return {
    ...withFieldsOf(tune, mine, CHART_FIELDS),
    key: tune.key === null ? null : mine.key,
    bars,
    parked: [...known.values()].filter(({ id }) => !there.has(id)),
  };
}

const withBarOf = (tune: LinePiece, mine: LinePiece, id: string): LinePiece => {
  const from = [...mine.bars, ...mine.parked].find((bar) => bar.id === id);
  const change = (bar: LineBar): LineBar =>
    bar.id === id && from !== undefined
      ? withFieldsOf(bar, from, ['harmony', 'origin', 'notes', 'over', 'dynamics', 'words'])
      : bar;
  return { ...tune, bars: tune.bars.map(change), parked: tune.parked.map(change) };
};

/** The tune with one thing as a version has it. */
function tuneWith(tune: Lesson, version: LessonVersion, mine: Lesson, own: Own): Lesson {
  const withPieces = (pieces: readonly Piece[]): Lesson => ({ ...tune, pieces });
  const withLine = (id: string, change: (line: LinePiece, mine: LinePiece) => LinePiece): Lesson => {
    const seen = linePiece(mine, id);
    if (seen === null) return tune;
    const moved = version.lines.find((line) => line.id === id)?.moved;
    const back =
      moved === undefined
        ? seen
        : transposePiece(seen, invertDirection(moved), instrumentOf(tune.instrument));
    return withPieces(
      tune.pieces.map((piece) => (piece.kind === 'line' && piece.id === id ? change(piece, back) : piece)),
    );
  };
  switch (own.kind) {
    case 'bar':
      return withLine(own.line, (line, from) => withBarOf(line, from, own.bar));
    case 'chart':
      return withLine(own.line, withChartOf);
    case 'field':
      return withLine(own.line, (line, from) => withFieldsOf(line, from, [own.field]));
    case 'text':
      return withFieldsOf(tune, mine, [own.field]);
    case 'handout':
      return { ...tune, handout: withFieldsOf(tune.handout, mine.handout, [own.field]) };
    case 'piece': {
      const piece = mine.pieces.find(({ id }) => id === own.piece);
      if (own.how === 'left out' || piece === undefined)
        return withPieces(tune.pieces.filter(({ id }) => id !== own.piece));
      return withPieces(
        own.how === 'added'
          ? [...tune.pieces, piece]
          : tune.pieces.map((each) => (each.id === own.piece ? piece : each)),
      );
    }
  }
}

/**
 * What a version has of its own is the tune's from now on, and so every other version's that has nothing of its own
 * there. The version itself stays as it is. What belongs to the key is carried in the key of the tune.
 */
export function shareOwn(document: Lesson, versionId: string, own: Own): Lesson {
  const version = document.versions?.find(({ id }) => id === versionId);
  if (version === undefined) return document;
  const tune = lessonOfVersion(document, null);
  const mine = lessonOfVersion(document, versionId);
  const edited = tuneWith(tune, version, mine, own);
  if (edited === tune || edited.pieces.length === 0) return document;
  const { open } = document;
  const shared: Lesson = {
    ...storeTune(document, tune, edited),
    ...(open === undefined ? {} : { open }),
    idsUpTo: highestId(document),
  };
  // Every line is looked at anew, because what it is held against has changed.
  const anew = { ...mine, pieces: mine.pieces.map((piece) => ({ ...piece })) };
  return withVersion(shared, versionId, (followed) => storeVersion(edited, followed, mine, anew));
}

/** The version with a line as the tune has it in one respect. Bars that it alone has are parked. */
function lineWithout(line: VersionLine, own: Own): VersionLine {
  if (own.kind === 'chart') {
    const { order: _, parked: __, ...rest } = line;
    const fields = Object.entries(line.own).filter(([name]) => !WITH_CHART.includes(name));
    return { ...rest, own: Object.fromEntries(fields) };
  }
  if (own.kind !== 'field') return line;
  const { without = [], ...rest } = line;
  const left = without.filter((name) => name !== own.field);
  return {
    ...rest,
    own: Object.fromEntries(Object.entries(line.own).filter(([name]) => name !== own.field)),
    ...(left.length === 0 ? {} : { without: left }),
  };
}

/** The version has one thing as the tune has it; what it had of its own there goes. */
export const dropOwn = (document: Lesson, versionId: string, own: Own): Lesson =>
  withVersion(document, versionId, (version) => {
    switch (own.kind) {
      case 'bar':
        return withOwnBar(version, own.line, own.bar, ({ written: _, dynamics: __, words: ___, ...rest }) =>
          Object.keys(rest).length > 1 ? rest : null,
        );
      case 'chart':
      case 'field':
        return {
          ...version,
          lines: version.lines.map((line) => (line.id === own.line ? lineWithout(line, own) : line)),
        };
      case 'text': {
        const { [own.field]: _, ...rest } = version.own;
        return { ...version, own: rest };
      }
      default:
        return withoutOthers(version, own);
    }
  });

type PieceOrHandout = Extract<Own, { kind: 'piece' | 'handout' }>;

function withoutOthers(version: LessonVersion, own: PieceOrHandout): LessonVersion {
  const { pieces = [], without = [], handout = {}, bare = [], ...rest } = version;
  const leftPieces = own.kind === 'piece' ? pieces.filter(({ id }) => id !== own.piece) : pieces;
  const leftWithout = own.kind === 'piece' ? without.filter((id) => id !== own.piece) : without;
  const leftHandout = Object.fromEntries(
    Object.entries(handout).filter(([name]) => own.kind !== 'handout' || name !== own.field),
  );
  const leftBare = own.kind === 'handout' ? bare.filter((name) => name !== own.field) : bare;
  return {
    ...rest,
    ...(leftPieces.length === 0 ? {} : { pieces: leftPieces }),
    ...(leftWithout.length === 0 ? {} : { without: leftWithout }),
    ...(Object.keys(leftHandout).length === 0 ? {} : { handout: leftHandout }),
    ...(leftBare.length === 0 ? {} : { bare: leftBare }),
  };
}
