/**
 * Sheets for the score's tests, derived as the app derives them, from a chart and notes in a short notation:
 *
 *     sheetOf({ chart: '| F | B♭ |', notes: 'F1/1 A1/1 C2/.5 r/.5 A1/1~ | B♭1/4' })
 *
 * A note is its sounding pitch and its length in quarters, `r` is silence; after it may stand `~` (tied on over
 * the bar line), `'` staccato, `>` accent, `x` ghost, and any other marks in braces: `F1/1{hammer,palm_mute}`. A length
 * may be a fraction: `1/3` is a third of a quarter.
 */
import {
  bpm,
  COMMON_TIME,
  type DynamicSign,
  LETTERS,
  type LineNote,
  MARKS,
  type Mark,
  type Metre,
  type SpelledPitch,
  ticks,
  withMark,
} from '../../src/core/base';
import type { FeelId } from '../../src/core/feel';
import { createInstrument, TUNINGS } from '../../src/core/fretboard';
import {
  type BlankSheet,
  deriveSheet,
  type LineBar,
  type LineSheet,
  newLinePiece,
} from '../../src/core/lesson';
import { parseKey } from '../../src/core/theory';
import type { ScoreOptions } from '../../src/score/types';

/** How a score is engraved that shows the notes and nothing else. */
export const NOTES_ONLY: ScoreOptions = {
  width: 900,
  degrees: false,
  fingers: false,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: false,
};

export interface SheetRequest {
  readonly chart: string;
  readonly notes: string;
  readonly key?: string;
  readonly metre?: Metre;
  readonly feel?: FeelId;
  readonly tempo?: number;
  /** Dynamics and words by the bar's index; the places of the dynamics in quarters. */
  readonly over?: Readonly<Record<number, BarSigns>>;
  /** An id of the fretboard's tunings. */
  readonly tuning?: string;
}

interface BarSigns {
  readonly words?: string;
  readonly dynamics?: readonly (Omit<DynamicSign, 'at'> & { readonly at: number })[];
}

export function sheetOf(request: SheetRequest): LineSheet {
  const key = request.key === undefined ? null : parseKey(request.key);
  if (key?.ok === false) throw new Error(key.problem.message);
  const bars = request.notes.split('|').map((text, index) => ({
    id: `bar-${index}`,
    harmony: '',
    origin: 'hand' as const,
    kept: false,
    notes: notesOf(text.trim()),
    ...over(request.over?.[index]),
  }));
  const sheet = deriveSheet(
    {
      ...newLinePiece('piece', 'Line'),
      chartText: request.chart,
      key: key ? key.value : null,
      metre: request.metre ?? COMMON_TIME,
      tempo: bpm(request.tempo ?? 126),
      feel: request.feel ?? 'one-drop',
      bars,
    },
    createInstrument(TUNINGS.find(({ id }) => id === request.tuning)?.openStrings),
    'letters',
  );
  if (sheet.kind !== 'line') throw new Error('A line piece gives a line sheet.');
  return sheet;
}

const over = ({ words, dynamics = [] }: BarSigns = {}): Pick<LineBar, 'words' | 'dynamics'> => ({
  ...(words === undefined ? {} : { words }),
  ...(dynamics.length === 0
    ? {}
    : { dynamics: dynamics.map(({ at, ...sign }) => ({ at: ticks(at * 960), ...sign })) }),
});

export const blankSheet = (bars: number, metre: Metre = COMMON_TIME, tuning?: string): BlankSheet => ({
  kind: 'blank',
  id: 'blank',
  name: 'Blank',
  metre,
  bars,
  instrument: createInstrument(TUNINGS.find(({ id }) => id === tuning)?.openStrings),
});

const SIGNS = { '♭♭': -2, '♭': -1, '': 0, '♯': 1, '♯♯': 2 } as const;
const isSign = (text: string): text is keyof typeof SIGNS => text in SIGNS;

/** `B♭1`. */
function pitchOf(text: string): SpelledPitch {
  const [, name = '', sign = '', octave = ''] = /^([A-G])([♭♯]*)(-?\d)$/.exec(text) ?? [];
  const letter = LETTERS.find((one) => one === name);
  if (!letter || !isSign(sign)) throw new Error(`No pitch: ${text}`);
  return { letter, alteration: SIGNS[sign], octave: Number(octave) };
}

export function notesOf(text: string): readonly LineNote[] {
  const notes: LineNote[] = [];
  let now = 0;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const [, pitch = '', length = '', marks = ''] =
      /^([^/]+)\/([\d./]+?)([~>x']*(?:\{.*\})?)$/.exec(word) ?? [];
    const [whole = '0', part] = length.split('/');
    const duration = Math.round((Number(whole) / Number(part ?? 1)) * 960);
    if (!(duration > 0)) throw new Error(`No length: ${word}`);
    if (pitch !== 'r') {
      const note: LineNote = {
        start: ticks(now),
        duration: ticks(duration),
        pitch: pitchOf(pitch),
        ...(marks.includes('~') ? { tiedOn: true } : {}),
      };
      notes.push(signsOf(marks).reduce(withMark, note));
    }
    now += duration;
  }
  return notes;
}

function signsOf(marks: string): readonly Mark[] {
  const all: readonly (readonly [string, Mark])[] = [
    ["'", 'staccato'],
    ['>', 'accent'],
    ['x', 'ghost'],
  ];
  const [short = '', named = ''] = marks.split('{');
  const names = named.replace('}', '').split(',').filter(Boolean);
  const unknown = names.find((name) => !MARKS.some((mark) => mark.replaceAll(' ', '_') === name));
  if (unknown !== undefined) throw new Error(`No mark: ${unknown}`);
  return [
    ...all.filter(([sign]) => short.includes(sign)).map(([, mark]) => mark),
    ...MARKS.filter((mark) => names.includes(mark.replaceAll(' ', '_'))),
  ];
}
