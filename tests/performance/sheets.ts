import {
  bpm,
  COMMON_TIME,
  fret,
  LETTERS,
  type LineNote,
  MARKS,
  type Mark,
  type Metre,
  ticks,
  withMark,
} from '../../src/core/base';
import { parseChart } from '../../src/core/chart';
import { type FeelId, feelById } from '../../src/core/feel';
import type { LineSheet } from '../../src/core/lesson';

const LENGTHS: Readonly<Record<string, number>> = { w: 3840, h: 1920, q: 960, '8': 480, '16': 240, t: 320 };
const PARTS_OF_BEAT: Readonly<Record<string, number>> = {
  '': 0,
  e: 240,
  '&': 480,
  a: 720,
  '+': 320,
  '++': 640,
};
const ALTERATIONS = { b: -1, '': 0, '#': 1 } as const;

/**
 * One note as `beat pitch length marks`: `2& F#1 q. >` with `>` accent, `'` staccato, `x` ghost, `~` tied on, and
 * other marks as `{slide+palm mute}`.
 */
function readNote(text: string): LineNote {
  const match = /^(\d)(e|&|a|\+\+|\+|) ([A-G])(b|#|)(-?\d) (w|h|q|8|16|t)(\.?) ?([>'x~]*)(?:\{(.*)\})?$/.exec(
    text.trim(),
  );
  if (match === null) {
    throw new Error(`Not a note of the tests' notation: “${text}”`);
  }
  const [, beat, part, name, sign, octave, length, dot, marks = '', named = ''] = match;
  const letter = LETTERS.find((candidate) => candidate === name) ?? 'C';
  const plain = LENGTHS[length ?? ''] ?? 0;
  const played = (
    [
      ['>', 'accent'],
      ["'", 'staccato'],
      ['x', 'ghost'],
    ] as const satisfies readonly (readonly [string, Mark])[]
  ).flatMap(([sign, mark]) => (marks.includes(sign) ? [mark] : []));
  const note: LineNote = {
    start: ticks((Number(beat) - 1) * 960 + (PARTS_OF_BEAT[part ?? ''] ?? 0)),
    duration: ticks(dot === '.' ? plain * 1.5 : plain),
    pitch: {
      letter,
      alteration: sign === 'b' || sign === '#' ? ALTERATIONS[sign] : 0,
      octave: Number(octave),
    },
    ...(marks.includes('~') ? { tiedOn: true } : {}),
  };
  const others = MARKS.filter((mark) => named.split('+').includes(mark));
  return [...played, ...others].reduce(withMark, note);
}

interface SheetText {
  readonly chart: string;
  readonly feel?: FeelId;
  readonly metre?: Metre;
  readonly tempo?: number;
  /** One text a written bar, its notes separated by commas. */
  readonly bars?: readonly string[];
}

/** A sheet as the player reads it, written down in a few lines; what the player does not read is empty. */
export function sheetOf(text: SheetText): LineSheet {
  const metre = text.metre ?? COMMON_TIME;
  const { chart, problems } = parseChart(text.chart, metre);
  return {
    kind: 'line',
    id: 'piece-1',
    name: 'A line',
    chart,
    problems,
    key: { tonic: { letter: 'C', alteration: 0 }, mode: 'major' },
    keyGuesses: [],
    otherKeys: [],
    metre,
    tempo: bpm(text.tempo ?? 120),
    feel: feelById(text.feel ?? 'early-ska'),
    instrument: { openStrings: [], frets: fret(20), scaleLength: 864 },
    bars: chart.bars.map((written, index) => ({
      written,
      kept: false,
      analysis: { notes: [], techniques: [], reason: '' },
      notes: (text.bars?.[index] ?? '')
        .split(',')
        .filter((note) => note.trim() !== '')
        .map((note) => ({ note: readNote(note), fingered: null, degreeText: '' })),
    })),
    fingering: { notes: [], cost: 0, shifts: 0 },
  };
}
