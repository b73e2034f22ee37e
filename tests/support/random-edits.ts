import fc from 'fast-check';
import { parseChart } from '../../src/core/chart';
import { FEEL_IDS } from '../../src/core/feel';
import {
  addPiece,
  type ChartBarEdit,
  copyPiece,
  discardParked,
  editChartBar,
  keepBar,
  type Lesson,
  linePiece,
  markTechnique,
  movePiece,
  putParkedBack,
  removePiece,
  renamePiece,
  setAim,
  setBlankBars,
  setChartText,
  setFeel,
  setHandout,
  setKey,
  setLevel,
  setMetre,
  setNotes,
  setPlaying,
  setSectionAim,
  setTempo,
  setTitle,
  takeSuggestion,
  transposeBy,
  transposeTo,
  writeSectionKey,
} from '../../src/core/lesson';
import { TECHNIQUES } from '../../src/core/line';
import { randomCharts } from '../chart/random-charts';
import { key } from '../theory/read';
import { longRuns } from './long-runs';

/** What was once saved and could not be opened again. */
export const LONG_TEXTS: readonly (readonly [what: string, chart: string])[] = [
  ['a word of five hundred letters', `| C | ${'W'.repeat(500)} | F |`],
  ['a web address', `| C | https://example.org/${'a/b?c=d&'.repeat(80)} |`],
  ['a long section name', `${'Verse '.repeat(100)}:\n| C |`],
  ['a long name used again', `${'V'.repeat(600)}\n| C |`],
  ['a chord with 300 tensions', `| C7(${'b9,'.repeat(300)}b9) |`],
  ['twelve long words in a bar', `(12/8) | ${'X'.repeat(700)} ${'Y'.repeat(900)} ${'Z'.repeat(900)} |`],
  ['more bars than a chart holds', '| C '.repeat(4_900)],
  ['more sections than a chart holds', 'A:\n'.repeat(6_000)],
  ['a section used again and again', `A:\n${'| C '.repeat(90)}\n${'A\n'.repeat(3_000)}`],
];

/** An edit of a lesson; `at` says where, as far as it asks. */
export type Edit = (lesson: Lesson, at: number) => Lesson;

/** Charts, and texts that were made to harm. */
const hostile = fc.oneof(
  { weight: 3, arbitrary: randomCharts },
  longRuns(900),
  fc.string({ unit: 'binary', maxLength: 90 }),
  fc.constantFrom(...LONG_TEXTS.slice(0, 6).map(([, chart]) => chart), '\ud800', '__proto__', '"}\u2028'),
);
const MARKS = ['shown', 'used', 'in every phrase', null] as const;

const idAt = (lesson: Lesson, at: number): string => lesson.pieces[at % lesson.pieces.length]?.id ?? '';
const barAt = (lesson: Lesson, at: number): number => {
  const piece = linePiece(lesson, idAt(lesson, at));
  return piece === null || piece.bars.length === 0 ? 0 : at % piece.bars.length;
};
const BAR_EDITS: readonly ChartBarEdit['kind'][] = [
  'insert before',
  'insert after',
  'repeat',
  'split',
  'join',
  'remove',
];

/** Any edit that the page can make, also with what nobody would type. */
export const edits: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 4,
    arbitrary: hostile.map(
      (text): Edit =>
        (l, at) =>
          setChartText(l, idAt(l, at), text),
    ),
  },
  {
    weight: 2,
    arbitrary: hostile.map(
      (text): Edit =>
        (l, at) =>
          editChartBar(l, idAt(l, at), barAt(l, at), { kind: 'write', text }),
    ),
  },
  fc.constantFrom(...BAR_EDITS).map(
    (kind): Edit =>
      (l, at) =>
        kind === 'insert before' ||
        kind === 'insert after' ||
        kind === 'repeat' ||
        kind === 'split' ||
        kind === 'join' ||
        kind === 'remove'
          ? editChartBar(l, idAt(l, at), barAt(l, at), { kind })
          : l,
  ),
  fc.integer({ min: -13, max: 13 }).map(
    (by): Edit =>
      (l, at) =>
        transposeBy(l, idAt(l, at), by),
  ),
  fc.constantFrom('C', 'F#', 'Gb', 'Dm', 'Ebm', 'G#m').map(
    (name): Edit =>
      (l, at) =>
        setKey(l, idAt(l, at), at % 5 === 0 ? null : key(name)),
  ),
  fc.constantFrom('C', 'B', 'Db').map(
    (name): Edit =>
      (l, at) =>
        transposeTo(l, idAt(l, at), key(name).tonic),
  ),
  fc
    .constantFrom(
      { count: 3, unit: 4 } as const,
      { count: 12, unit: 8 } as const,
      { count: 4, unit: 4 } as const,
    )
    .map(
      (metre): Edit =>
        (l, at) =>
          setMetre(l, idAt(l, at), metre),
    ),
  hostile.map(
    (text): Edit =>
      (l) =>
        setTitle(l, text),
  ),
  hostile.map(
    (text): Edit =>
      (l) =>
        setNotes(l, text.repeat(3)),
  ),
  hostile.map(
    (text): Edit =>
      (l, at) =>
        renamePiece(l, idAt(l, at), text),
  ),
  hostile.map(
    (text): Edit =>
      (l) =>
        setHandout(l, { header: text, student: text }),
  ),
  fc.constantFrom<Edit>(
    (l, at) => addPiece(l, at % 2 === 0 ? 'line' : 'blank', idAt(l, at)),
    (l, at) => copyPiece(l, idAt(l, at)),
    (l, at) => movePiece(l, idAt(l, at), at % 2 === 0 ? 1 : -1),
    (l, at) => removePiece(l, idAt(l, at)),
    (l, at) => discardParked(l, idAt(l, at)),
    (l, at) => putParkedBack(l, idAt(l, at), linePiece(l, idAt(l, at))?.parked[0]?.id ?? '', barAt(l, at)),
    (l, at) => keepBar(l, idAt(l, at), barAt(l, at), at % 2 === 0),
    (l, at) => setBlankBars(l, idAt(l, at), at),
    (l, at) => setTempo(l, idAt(l, at), at),
    (l, at) => setLevel(l, idAt(l, at), 3),
    (l, at) => setFeel(l, idAt(l, at), FEEL_IDS[at % FEEL_IDS.length] ?? 'bossa'),
    (l, at) =>
      markTechnique(
        l,
        idAt(l, at),
        TECHNIQUES[at % TECHNIQUES.length] ?? 'octave',
        MARKS[at % MARKS.length] ?? null,
      ),
    (l, at) => setPlaying(l, idAt(l, at), { passage: { first: at % 9, last: (at % 9) + 3 } }),
    (l, at) => setAim(l, idAt(l, at), { kind: 'line' }, { silence: 0.5 }),
    (l, at) => setSectionAim(l, idAt(l, at), at % 3, { density: 'sparse' }),
    (l, at) => writeSectionKey(l, idAt(l, at), at % 3, key('Eb')),
    (l, at) => {
      const piece = linePiece(l, idAt(l, at));
      const problem = piece && parseChart(piece.chartText, piece.metre, piece.key).problems[0];
      return problem ? takeSuggestion(l, idAt(l, at), problem) : l;
    },
  ),
);
