import { deriveSheets, type Lesson, type LineSheet, lineRequest } from '../lesson';
import { LEVELS, type Level, measuredLevel, TECHNIQUES } from '../line';
import type { Thing, ThingKind } from '../students';
import { describeKey, sameKey } from '../theory';

/** What stands for a thing in a table. */
export const thingKey = ({ kind, name }: Thing): string => `${kind} ${name}`;

/** What a lesson asks of a player, as a point of a term's curve. */
export interface Difficulty {
  /** The highest level that its lines were composed for. */
  readonly asked: Level;
  /** The highest level that the notes of its lines keep to, whoever wrote them. */
  readonly measured: Level;
  /** Notes a second of the busiest bar at the lesson's tempo. */
  readonly notesPerSecond: number;
  /** Beats a minute of the fastest line. */
  readonly tempo: number;
}

/** What a lesson shows, read off its notes. */
export interface LessonShown {
  readonly things: readonly Thing[];
  readonly difficulty: Difficulty;
}

/** What stands once in a line is met, not shown: two bars or two notes are the least (common practice, no source). */
const LEAST = 2;

/** Names that come often enough, in the order of their first coming. */
function often(names: readonly string[], least = LEAST): readonly string[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].filter(([, count]) => count >= least).map(([name]) => name);
}

function thingsOf({ bars, key, feel }: LineSheet): readonly Thing[] {
  const written = bars.filter(({ notes }) => notes.length > 0);
  if (written.length === 0) return [];
  const techniques = written.flatMap(({ analysis }) => [...analysis.techniques]);
  // What goes on from the bar before was struck there.
  const all = bars.flatMap((bar) => bar.notes);
  const notes = all.filter((_, index) => all[index - 1]?.note.tiedOn !== true);
  const fretted = notes.flatMap(({ fingered }) =>
    fingered !== null && fingered.fret > 0 ? [String(fingered.position)] : [],
  );
  const keys = [key, ...bars.flatMap(({ written: { key: own } }) => own ?? [])].filter(
    (each, index, all) => all.findIndex((other) => sameKey(each, other)) === index,
  );
  const named = (kind: ThingKind, names: readonly string[]) => names.map((name): Thing => ({ kind, name }));
  // A line of a bar or two can show a technique once only.
  const least = written.length <= LEAST ? 1 : LEAST;
  return [
    ...named(
      'technique',
      TECHNIQUES.filter((each) => often(techniques, least).includes(each)),
    ),
    ...named(
      'degree',
      often(notes.map(({ degreeText }) => degreeText)).filter((text) => text !== ''),
    ),
    ...named('key', keys.map(describeKey)),
    ...named('position', often(fretted)),
    ...named('feel', [feel.id]),
  ];
}

/** What a lesson shows by its notes, whatever was ticked; null for one without a written line. */
export function shownBy(lesson: Lesson): LessonShown | null {
  const things = new Map<string, Thing>();
  let difficulty: Difficulty | null = null;
  const sheets = deriveSheets(lesson);
  lesson.pieces.forEach((piece, index) => {
    const sheet = sheets[index];
    if (piece.kind !== 'line' || sheet?.kind !== 'line') return;
    const line = sheet.bars.map(({ notes }) => notes.map(({ note }) => note));
    if (line.every((notes) => notes.length === 0)) return;
    for (const thing of thingsOf(sheet)) things.set(thingKey(thing), thing);
    const { level, notesPerSecond } = measuredLevel(
      lineRequest(piece, sheet.chart, sheet.key, lesson.instrument),
      line,
    );
    difficulty = harder(difficulty, {
      asked: piece.level,
      measured: level,
      notesPerSecond,
      tempo: piece.tempo,
    });
  });
  return difficulty === null ? null : { things: [...things.values()], difficulty };
}

const higher = (one: Level, other: Level): Level => LEVELS[Math.max(one, other)] ?? one;

function harder(one: Difficulty | null, other: Difficulty): Difficulty {
  if (one === null) return other;
  return {
    asked: higher(one.asked, other.asked),
    measured: higher(one.measured, other.measured),
    notesPerSecond: Math.max(one.notesPerSecond, other.notesPerSecond),
    tempo: Math.max(one.tempo, other.tempo),
  };
}
