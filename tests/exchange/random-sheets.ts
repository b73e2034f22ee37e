/** Random lines over random charts, as the app derives them: every metre, key and tuning, repeats, endings, ties. */
import fc from 'fast-check';
import {
  barTicks,
  bpm,
  createRandom,
  DYNAMIC_LEVELS,
  type DynamicSign,
  type LineNote,
  MARK_CHOICES,
  MARKS,
  type Mark,
  type Metre,
  midiNumber,
  type Random,
  type SpelledPitch,
  ticks,
  withMark,
} from '../../src/core/base';
import { CHART_METRES, parseChart } from '../../src/core/chart';
import { FEELS } from '../../src/core/feel';
import { createInstrument, rangeOf, TUNINGS } from '../../src/core/fretboard';
import { deriveSheet, type LineBar, type LineSheet, newLinePiece } from '../../src/core/lesson';
import { ALL_KEYS, type Key, spellMidi } from '../../src/core/theory';

const SYMBOLS = [
  ...[
    'C',
    'Dm',
    'F#m7b5',
    'Bb',
    'Ebmaj7',
    'G7',
    'Am7',
    'C6',
    'Dm6',
    'Bdim',
    'C#dim7',
    'Faug',
    'G7sus4',
    'Asus2',
  ],
  ...[
    'Dsus4',
    'C9',
    'Cadd9',
    'C/E',
    'Bb/D',
    'G7b9',
    'E7#9',
    'A13',
    'Am(maj7)',
    'D7#11',
    'Gbmaj9',
    'F5',
    'N.C.',
  ],
  ...['Abm11', 'Caug7', 'C7(b9,#11)', 'Zq'],
];

const symbol = fc.constantFrom(...SYMBOLS);
const bar = fc.oneof(
  symbol,
  fc.tuple(symbol, symbol).map((pair) => pair.join(' ')),
  fc.tuple(symbol, symbol).map((pair) => pair.join(' <')),
  symbol.map((pushed) => `<${pushed}`),
);
const bars = fc.array(bar, { minLength: 1, maxLength: 4 }).map((list) => list.join(' | '));
const directive = fc.constantFrom('', '', '', '(3/4) ', '(key: Bb) ', '(key: F#m) ', '(6/8) ');

const passage = fc.oneof(
  fc.tuple(directive, bars).map(([head, text]) => `| ${head}${text} |`),
  fc.tuple(bars, fc.integer({ min: 2, max: 4 })).map(([text, times]) => `|: ${text} :| x${times}`),
  fc.tuple(bars, bar, bar).map(([text, one, two]) => `|: ${text} |1. ${one} :|2. ${two} ||`),
  fc.tuple(bars, bar, bar).map(([text, one, two]) => `|: ${text} |1.,2. ${one} :|3. ${two} ||`),
);
const section = fc
  .tuple(
    fc.constantFrom('', 'Verse:\n', 'Bridge <1> & "2":\n'),
    fc.array(passage, { minLength: 1, maxLength: 2 }),
  )
  .map(([name, passages]) => name + passages.join('\n'));
const chartText = fc
  .tuple(fc.constantFrom('', '', '| (1) G7 |\n'), fc.array(section, { minLength: 1, maxLength: 3 }))
  .map(([pickup, sections]) => pickup + sections.join('\n\n'));

const pick = <Item>(draw: Random, items: readonly [Item, ...Item[]]): Item =>
  items[draw.below(items.length)] ?? items[0];

const LENGTHS = [240, 240, 480, 480, 480, 720, 960, 960, 1440, 1920] as const;
/** Marks of all rows, now and then; a note that is tied on is left by its tie. */
function marksFor(draw: Random, tiedOn: boolean): Pick<LineNote, 'marks'> {
  const marks = MARKS.filter((mark) => draw.next() < 0.06 && !(tiedOn && waits(mark)));
  return marks.reduce<Pick<LineNote, 'marks'>>(withMark, {});
}

const waits = (mark: Mark): boolean => mark === 'let ring' || MARK_CHOICES.exit.some((exit) => exit === mark);

/** Now and then a word, and signs of dynamics that end before the bar does. */
function signsFor(metre: Metre, draw: Random): Pick<LineBar, 'words' | 'dynamics'> {
  const length = barTicks(metre);
  const dynamics = [0, 480, length - 240].flatMap((at): DynamicSign[] => {
    if (draw.next() < 0.7) return [];
    const level = draw.next() < 0.7 ? { level: pick(draw, DYNAMIC_LEVELS) } : {};
    const hairpin = draw.next() < 0.4 ? { hairpin: pick(draw, ['crescendo', 'diminuendo'] as const) } : {};
    return 'level' in level || 'hairpin' in hairpin ? [{ at: ticks(at), ...level, ...hairpin }] : [];
  });
  return {
    ...(draw.next() < 0.1 ? { words: 'dig in <& now>' } : {}),
    ...(dynamics.length === 0 ? {} : { dynamics }),
  };
}

/** Notes and silences end to end; now and then a beat is a triplet. */
function notesOf(
  metre: Metre,
  draw: Random,
  pitch: () => SpelledPitch,
  first: SpelledPitch | null,
): LineNote[] {
  const length = barTicks(metre);
  const notes: LineNote[] = [];
  const put = (start: number, duration: number): void => {
    const tiedIn = start === 0 ? first : null;
    if (tiedIn === null && draw.next() < 0.3) return;
    const tiedOn = start + duration === length && draw.next() < 0.5;
    notes.push({
      start: ticks(start),
      duration: ticks(duration),
      pitch: tiedIn ?? pitch(),
      ...(tiedOn ? { tiedOn } : {}),
      ...marksFor(draw, tiedOn),
    });
  };
  for (let start = 0; start < length; ) {
    if (metre.unit !== 8 && start % 960 === 0 && length - start >= 960 && draw.next() < 0.15) {
      for (const third of [0, 320, 640]) put(start + third, 320);
      start += 960;
    } else {
      const duration = Math.min(length - start, pick(draw, LENGTHS));
      put(start, duration);
      start += duration;
    }
  }
  return notes;
}

interface Ingredients {
  readonly chartText: string;
  readonly metre: Metre;
  readonly key: Key;
  readonly tuning: number;
  readonly feel: number;
  readonly tempo: number;
  /** Of the notes. */
  readonly seed: number;
}

function sheetFrom(made: Ingredients): LineSheet {
  const instrument = createInstrument(TUNINGS[made.tuning % TUNINGS.length]?.openStrings);
  const { lowest, highest } = rangeOf(instrument, 12);
  const draw = createRandom(made.seed);
  const pitch = (): SpelledPitch => {
    const midi = midiNumber(lowest + draw.below(highest - lowest + 1));
    return spellMidi(midi, { key: made.key, direction: draw.next() < 0.5 ? 'up' : 'down' });
  };
  let tied: SpelledPitch | null = null;
  const lineBars = parseChart(made.chartText, made.metre).chart.bars.map((written, index) => {
    const notes = notesOf(written.metre, draw, pitch, tied);
    const last = notes.at(-1);
    tied = last?.tiedOn === true ? last.pitch : null;
    const signs = signsFor(written.metre, draw);
    return { id: `bar-${index}`, harmony: '', origin: 'hand' as const, kept: false, notes, ...signs };
  });
  const feels = FEELS.map((feel) => feel.id);
  const sheet = deriveSheet(
    {
      ...newLinePiece('piece', 'Line <b> & "quotes"'),
      chartText: made.chartText,
      metre: made.metre,
      key: made.key,
      tempo: bpm(made.tempo),
      feel: feels[made.feel % feels.length] ?? 'one-drop',
      bars: lineBars,
    },
    instrument,
    'letters',
  );
  if (sheet.kind !== 'line') throw new Error('A line piece gives a line sheet.');
  return sheet;
}

/** Ingredients, so that a failing case prints something a person can read. */
const ingredients: fc.Arbitrary<Ingredients> = fc.record({
  chartText,
  metre: fc.constantFrom(...CHART_METRES),
  key: fc.constantFrom(...ALL_KEYS),
  tuning: fc.nat({ max: TUNINGS.length - 1 }),
  feel: fc.nat({ max: FEELS.length - 1 }),
  tempo: fc.integer({ min: 40, max: 220 }),
  seed: fc.nat(),
});

/** The same random sheets at every run. */
export const randomSheets = (count: number): readonly LineSheet[] =>
  fc.sample(ingredients, { numRuns: count, seed: 20 }).map(sheetFrom);
