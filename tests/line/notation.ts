import {
  type Alteration,
  bpm,
  COMMON_TIME,
  LETTERS,
  type LineNote,
  type Metre,
  TICKS_PER_QUARTER,
  ticks,
} from '../../src/core/base';
import { parseChart } from '../../src/core/chart';
import { type FeelId, feelById } from '../../src/core/feel';
import { createInstrument, DEFAULT_HAND } from '../../src/core/fretboard';
import type { ComposeRequest, Level, LineNotes, Technique } from '../../src/core/line';
import { findKey, parseKey } from '../../src/core/theory';

export interface Wish {
  readonly key?: string;
  readonly metre?: Metre;
  readonly feel?: FeelId;
  readonly level?: Level;
  readonly tempo?: number;
  readonly techniques?: readonly Technique[] | undefined;
  readonly seed?: number;
  readonly kept?: ComposeRequest['kept'];
}

/** The three things that these lines teach: chord tones, scale steps, and silence as the feel has it. */
const basicIn = (feel: FeelId): readonly Technique[] =>
  feelById(feel).bassRole.mayRestOnOne
    ? ['chord tones', 'scale steps', 'beat one silent', 'long silences']
    : ['chord tones', 'scale steps', 'long silences'];

/** A request for a chart in one line; what is not wished for is ordinary. */
export function request(chartText: string, wish: Wish = {}): ComposeRequest {
  const { chart } = parseChart(chartText, wish.metre ?? COMMON_TIME);
  const feel = feelById(wish.feel ?? 'one-drop');
  const chords = chart.bars.flatMap((bar) =>
    bar.spans.flatMap((span) =>
      span.harmony.kind === 'chord' ? [{ chord: span.harmony.chord, weight: span.duration }] : [],
    ),
  );
  const named = wish.key === undefined ? null : parseKey(wish.key);
  const guessed = chords.length > 0 ? findKey(chords)[0]?.key : undefined;
  return {
    chart,
    key: named?.ok ? named.value : (guessed ?? { tonic: { letter: 'C', alteration: 0 }, mode: 'major' }),
    feel,
    tempo: wish.tempo === undefined ? feel.tempo.usual : bpm(wish.tempo),
    level: wish.level ?? 3,
    techniques: new Set(wish.techniques ?? basicIn(feel.id)),
    instrument: createInstrument(),
    hand: DEFAULT_HAND,
    seed: wish.seed ?? 1,
    kept: wish.kept ?? [],
  };
}

const NOTE = /^([A-G])(♭|♯|)(\d)(~?)$/u;
const EIGHTH = TICKS_PER_QUARTER / 2;

function noteAt(token: string, start: number, duration: number): LineNote {
  const [, letterText, accidental, octave, tie] = NOTE.exec(token) ?? [];
  const letter = LETTERS.find((candidate) => candidate === letterText);
  if (letter === undefined) throw new RangeError(`Not a note: ${token}`);
  const alteration: Alteration = accidental === '♭' ? -1 : accidental === '♯' ? 1 : 0;
  const note = {
    start: ticks(start),
    duration: ticks(duration),
    pitch: { letter, alteration, octave: Number(octave) },
  };
  return tie === '~' ? { ...note, tiedOn: true } : note;
}

/**
 * Bars in text, one column an eighth: `F1 . A1 -` is a quarter F, an eighth A and an eighth rest; `~` after a
 * note ties it over the bar line; `|` divides bars.
 */
export function line(text: string): LineNotes {
  return text.split('|').map((bar) => {
    const columns = bar
      .trim()
      .split(/\s+/)
      .filter((column) => column !== '');
    return columns.flatMap((column, index) => {
      if (column === '-' || column === '.') return [];
      let end = index + 1;
      while (columns[end] === '.') end += 1;
      return [noteAt(column, index * EIGHTH, (end - index) * EIGHTH)];
    });
  });
}
