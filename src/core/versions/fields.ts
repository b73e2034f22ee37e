import { alike, type FieldTable, fieldsThatMatter, fieldTable } from '../base';
import type { HandoutSettings, Lesson, LinePiece } from '../lesson';

/** Which fields of a line a version can have of its own; its bars are looked at one by one. */
export const OWN_IN_LINE = fieldTable<LinePiece>()({
  kind: false,
  id: false,
  name: true,
  chartText: true,
  key: true,
  metre: true,
  tempo: true,
  count: true,
  feel: true,
  level: true,
  techniques: true,
  hand: true,
  seed: true,
  playing: true,
  bars: false,
  parked: false,
  aims: true,
  sections: true,
  parkedSections: true,
  meant: true,
  buildUp: true,
  takes: true,
  leftOut: true,
});

export const OWN_IN_HANDOUT = fieldTable<HandoutSettings>()({
  paper: true,
  degrees: true,
  fingers: true,
  counting: true,
  numerals: true,
  positions: true,
  parts: true,
  blocks: true,
  print: true,
  onePage: true,
  header: true,
  student: true,
  logo: true,
  code: true,
  steps: true,
  twoUp: true,
  binding: true,
  questions: true,
});

/** Which fields of a lesson a version can have of its own, beside its pieces and its handout. */
export const OWN_IN_LESSON = fieldTable<Lesson>()({
  format: false,
  version: false,
  id: false,
  title: true,
  notes: true,
  instrument: true,
  handout: false,
  noteNames: true,
  pieces: false,
  versions: false,
  open: false,
  idsUpTo: false,
});

/** The fields of a record that are not as in another one, and that it has. */
export const differing = <Fields>(table: FieldTable<Fields>, from: Fields, record: Fields): Partial<Fields> =>
  Object.fromEntries(
    fieldsThatMatter(table)
      .filter((name) => record[name] !== undefined && !alike(from[name], record[name]))
      .map((name) => [name, record[name]]),
    // The names and their values are those of the record.
  ) as Partial<Fields>;

/** Of some fields those that a record lacks although another one has them. */
export const missing = <Fields, Name extends keyof Fields>(
  names: readonly Name[],
  from: Fields,
  record: Fields,
): readonly Name[] => names.filter((name) => from[name] !== undefined && record[name] === undefined);

/** A record with some fields in place of its own, and without others. */
export function withOwn<Fields extends object>(
  record: Fields,
  own: Partial<Fields>,
  without: readonly (keyof Fields)[] = [],
): Fields {
  const made = { ...record, ...own };
  for (const name of without) delete made[name];
  return made;
}
