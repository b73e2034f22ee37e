import { FEEL_IDS, feelById, isFeelId } from '../feel';
import { type Level, levelLimits, TECHNIQUE_ROWS } from '../line';
import { THING_KINDS, type Thing, type ThingKind } from '../students';
import { ALL_KEYS, describeKey, type Key, keySignature, parseKey } from '../theory';
import { DEGREES_IN_ORDER, type ReadWeek, type SeriesRow, seriesTable } from './table';

/** How the last lesson went with the student, as far as it was noted. */
export interface Outcome {
  /** Beats a minute that were reached; null where it was not heard. */
  readonly tempo: number | null;
  /** What is to be mended; '' for nothing. */
  readonly mend: string;
}

/** What next week could bring, and why. */
export type Proposal =
  | {
      readonly kind: 'again';
      /** Index of the week that is taken up once more, with nothing new. */
      readonly week: number;
      readonly mend: string;
      /** Beats a minute that were reached, and those of the lesson; null where the tempo was no reason. */
      readonly tempo: { readonly reached: number; readonly wanted: number } | null;
    }
  | {
      readonly kind: 'new';
      readonly thing: Thing;
      /** Weeks since a thing of this kind was new; null where none was. */
      readonly since: number | null;
    }
  | { readonly kind: 'level'; readonly level: Level };

/** Below this share of the lesson's tempo a lesson is taken up again (common practice, no source). */
const REACHED = 0.85;

/** Steps that a degree's name ends in: `♭7` is step 7, `R` and `8` are step 1. */
const stepOf = (degree: string): number =>
  degree === 'R' || degree === '8' ? 1 : Number(degree.at(-1)) || 0;

/** Which degrees a level has: chromatic ones wait for the last level, ♭3 and ♭7 are the chords' own. */
function degreesAt(level: Level): readonly string[] {
  const { steps } = levelLimits(level);
  const chords = ['R', '5', '8', '3', '♭3', '6', '2', '4', '♭7', '7'];
  // The octave is asked from the level of the fifth on.
  return DEGREES_IN_ORDER.filter(
    (each) => steps.has(stepOf(each)) && chords.includes(each) && (each !== '8' || steps.has(5)),
  );
}

/** Positions on the neck that are taught one after the other (common practice, no source). */
const POSITIONS = [1, 2, 3, 5, 7, 9] as const;
/** One finger a fret: a position reaches so many frets above its first. */
const REACH = 3;

/** The key nearest to those that were shown, on the circle of fifths; sharps before flats. */
function nearestKey(shown: readonly Key[]): Key | null {
  const last = shown.at(-1);
  if (last === undefined) return null;
  const known = new Set(shown.map(describeKey));
  const far = (key: Key) =>
    Math.min(...shown.map((each) => Math.abs(keySignature(each) - keySignature(key))));
  const candidates = ALL_KEYS.filter((key) => key.mode === last.mode && !known.has(describeKey(key)))
    // Six flats and six sharps sound alike; seven are never a next step.
    .filter((key) => Math.abs(keySignature(key)) <= 6)
    .sort(
      (one, other) =>
        far(one) - far(other) ||
        Math.abs(keySignature(one)) - Math.abs(keySignature(other)) ||
        keySignature(other) - keySignature(one),
    );
  return candidates[0] ?? null;
}

/** The first thing of a kind that was not shown and that the level has. */
function firstNew(kind: ThingKind, shown: readonly string[], level: Level): string | null {
  const free = (names: readonly string[]) => names.find((name) => !shown.includes(name)) ?? null;
  switch (kind) {
    case 'technique':
      return free(TECHNIQUE_ROWS.filter(({ from }) => from <= level).map(({ technique }) => technique));
    case 'degree':
      return free(degreesAt(level));
    case 'key': {
      const read = shown.flatMap((name) => {
        const key = parseKey(name);
        return key.ok ? [key.value] : [];
      });
      const key = nearestKey(read);
      return key === null ? null : describeKey(key);
    }
    case 'position': {
      const { highestFret } = levelLimits(level);
      return free(POSITIONS.filter((position) => position + REACH <= highestFret).map(String));
    }
    case 'feel': {
      // A feel in the metre of the last one first: the next in the list, which goes by kinship.
      const last = shown.at(-1) ?? '';
      if (!isFeelId(last)) return null;
      const [metre] = feelById(last).metres;
      const from = FEEL_IDS.indexOf(last);
      const round = [...FEEL_IDS.slice(from), ...FEEL_IDS.slice(0, from)];
      const fits = (id: (typeof FEEL_IDS)[number]) => {
        const [own] = feelById(id).metres;
        return own?.metre.count === metre?.metre.count && own?.metre.unit === metre?.metre.unit;
      };
      return free([...round.filter(fits), ...round.filter((id) => !fits(id))]);
    }
  }
}

const namesOf = (rows: readonly SeriesRow[], kind: ThingKind): readonly string[] =>
  rows
    .filter(({ thing, cells }) => thing.kind === kind && cells.some((cell) => cell !== 'none'))
    // In the order in which they were shown.
    .sort((one, other) => one.cells.indexOf('new') - other.cells.indexOf('new'))
    .map(({ thing }) => thing.name);

/**
 * What next week could bring, the first to be preferred: what went badly once more with nothing new, else one new
 * thing of each kind, the kind first that had nothing new for the longest time; where the level has nothing new left,
 * the next level.
 * @param level - what the student can be asked
 * @param last - how the last week went; null where nothing was noted
 */
export function proposals(
  weeks: readonly ReadWeek[],
  level: Level,
  last: Outcome | null,
): readonly Proposal[] {
  const rows = seriesTable(weeks);
  const found: Proposal[] = [];
  const wanted = weeks.at(-1)?.read?.difficulty.tempo ?? null;
  if (last !== null && weeks.length > 0) {
    const short =
      last.tempo !== null && wanted !== null && last.tempo < REACHED * wanted
        ? { reached: last.tempo, wanted }
        : null;
    const mend = last.mend.trim();
    if (short !== null || mend !== '')
      found.push({ kind: 'again', week: weeks.length - 1, mend, tempo: short });
  }
  const news = THING_KINDS.flatMap((kind) => {
    const name = firstNew(kind, namesOf(rows, kind), level);
    if (name === null) return [];
    const latest = Math.max(
      -1,
      ...rows.filter(({ thing }) => thing.kind === kind).map(({ cells }) => cells.indexOf('new')),
    );
    return [
      {
        kind: 'new' as const,
        thing: { kind, name },
        since: latest === -1 ? null : weeks.length - 1 - latest,
      },
    ];
  });
  // A kind that the notes never showed is as old as the term; the order of the kinds decides among equals.
  found.push(...news.toSorted((one, other) => (other.since ?? weeks.length) - (one.since ?? weeks.length)));
  const taught = news.some(({ thing: { kind } }) => kind === 'technique' || kind === 'degree');
  if (!taught && level < 5) found.push({ kind: 'level', level: (level + 1) as Level });
  return found;
}
