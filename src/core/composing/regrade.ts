import { barName, capitalised, counted, listed } from '../base';
import {
  deriveSheet,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
  lineRequest,
} from '../lesson';
import {
  LEVELS,
  type Level,
  type LineDistance,
  type LineNotes,
  type LineRequest,
  lineDistance,
  measuredLevel,
  reasonSentences,
  regradeLine,
  withoutChanges,
} from '../line';

/** A change of one bar on the way to another level. */
export interface RegradeChange {
  /** Index of the written bar. */
  readonly bar: number;
  readonly notes: LineNotes[number];
  /** `Bar 3: 9 notes become 5.` */
  readonly what: string;
  /** Why, in sentences. */
  readonly why: readonly string[];
}

/** A line as another level has it, with what became of it. */
export interface PieceRegrade {
  readonly pieceId: string;
  /** What the line asked of a player before. */
  readonly from: Level;
  readonly level: Level;
  readonly changes: readonly RegradeChange[];
  /** What is to be known beside the changes: techniques that the level cannot show, rules that stay broken. */
  readonly remarks: readonly string[];
}

/** The notes of the line as they stand, by written bar. */
const notesOf = (piece: LinePiece): LineNotes => piece.bars.map(({ notes }) => notes);

function requestAt(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
  level: Level,
): LineRequest {
  return lineRequest({ ...piece, level }, sheet.chart, sheet.key, settings, sheet.noteNames);
}

/** What a line asks of a player, whatever level it was written for; null for an unwritten one. */
export function levelOfLine(piece: LinePiece, sheet: LineSheet, settings: InstrumentSettings): Level | null {
  const line = notesOf(piece);
  if (line.every((notes) => notes.length === 0)) return null;
  return measuredLevel(requestAt(piece, sheet, settings, piece.level), line).level;
}

/** The level below or above what a line asks; null where there is none. */
export const nextLevel = (from: Level, way: 'easier' | 'harder'): Level | null =>
  LEVELS.find((level) => level === from + (way === 'easier' ? -1 : 1)) ?? null;

const NUMBERS = (count: number): string => counted(count, 'note');

function whatChanged(name: string, before: LineNotes[number], after: LineNotes[number]): string {
  const starts = new Set(before.map(({ start }) => Number(start)));
  const kept = after.filter(({ start }) => starts.has(start)).length;
  if (before.length !== after.length)
    return `${name}: ${NUMBERS(before.length)} ${before.length === 1 ? 'becomes' : 'become'} ${after.length}.`;
  if (kept < after.length) return `${name}: ${NUMBERS(after.length - kept)} at another place.`;
  const pitched = after.filter(({ pitch }, index) => {
    const own = before[index]?.pitch;
    return (
      own === undefined ||
      own.letter !== pitch.letter ||
      own.alteration !== pitch.alteration ||
      own.octave !== pitch.octave
    );
  }).length;
  return pitched === 0
    ? `${name}: the same notes, held longer or shorter.`
    : `${name}: another pitch for ${NUMBERS(pitched)}.`;
}

/**
 * A line for a student of another level that keeps the tune: bar by bar what is changed and why. Each change can be refused
 * by itself (see {@link withRegrade}).
 */
export function regradePiece(
  piece: LinePiece,
  settings: InstrumentSettings,
  level: Level,
  noteNames?: Lesson['noteNames'],
): PieceRegrade | null {
  const sheet = deriveSheet(piece, settings, noteNames);
  if (sheet.kind !== 'line') return null;
  const from = levelOfLine(piece, sheet, settings);
  if (from === null) return null;
  const line = notesOf(piece);
  const request = requestAt(piece, sheet, settings, level);
  const made = regradeLine(request, line, level > from);
  const nameOf = (bar: number) => barName(sheet.chart.bars[bar]?.number ?? bar + 1);
  const beyond = made.lost.filter((lost) => lost.beyond).map(({ technique }) => technique);
  const unkept = made.lost.filter((lost) => !lost.beyond).map(({ technique }) => technique);
  return {
    pieceId: piece.id,
    from,
    level,
    changes: made.changes.map(({ bar, notes, reasons }) => ({
      bar,
      notes,
      what: whatChanged(capitalised(nameOf(bar)), line[bar] ?? [], notes),
      why: reasonSentences(request, reasons),
    })),
    remarks: [
      ...(made.changes.length === 0
        ? [
            level > from
              ? `Nothing of level ${level} can be added without breaking a rule.`
              : `Nothing in it is beyond level ${level}.`,
          ]
        : []),
      ...(beyond.length === 0 ? [] : [`Level ${level} cannot show ${listed(beyond)} yet.`]),
      ...(unkept.length === 0
        ? []
        : [
            `It does not show ${listed(unkept)} any more: what did so is beyond level ${level}, or breaks a rule beside it.`,
          ]),
      ...made.breaches.map(({ message }) => message),
    ],
  };
}

/**
 * The piece with the changes of a regrade but those that are refused, at its level; kept bars stay kept, and a bar that
 * changes is one that was chosen, like an idea.
 * @param refused indices of bars
 */
export function withRegrade(
  piece: LinePiece,
  settings: InstrumentSettings,
  regrade: PieceRegrade,
  refused: ReadonlySet<number>,
): LinePiece {
  const sheet = deriveSheet(piece, settings, 'letters');
  if (sheet.kind !== 'line') return piece;
  const request = requestAt(piece, sheet, settings, regrade.level);
  const line = withoutChanges(request, notesOf(piece), regrade.changes, refused);
  return {
    ...piece,
    level: regrade.level,
    bars: piece.bars.map((bar, index) => {
      const notes = line[index] ?? bar.notes;
      return notes === bar.notes ? bar : { ...bar, notes, origin: 'idea' };
    }),
  };
}

/** How near a piece with other notes is to the line it was made of, in words. */
export function nearnessWords(piece: LinePiece, settings: InstrumentSettings, other: LinePiece): string {
  const sheet = deriveSheet(piece, settings, 'letters');
  if (sheet.kind !== 'line') return '';
  const apart = lineDistance(requestAt(piece, sheet, settings, other.level), notesOf(piece), notesOf(other));
  return nearness(apart);
}

const percent = (apart: number): string => `${Math.round(100 * (1 - apart))} %`;

const nearness = ({ rhythm, contour, strongBeats }: LineDistance): string =>
  `It keeps ${percent(strongBeats)} of the notes on strong beats, ${percent(contour)} of the contour and ${percent(rhythm)} of the rhythm.`;
