import { afterAll, test } from 'vitest';
import {
  createRandom,
  fret,
  type LineNote,
  midiNumber,
  midiOf,
  type Random,
  TICKS_PER_QUARTER,
  ticks,
} from '../../src/core/base';
import { FEELS, type FeelId } from '../../src/core/feel';
import { fingerLine, ticksPerSecond } from '../../src/core/fretboard';
import {
  type Aim,
  analyseLine,
  anotherTake,
  type ComposedLine,
  type ComposeRequest,
  checkLine,
  composeLine,
  isAnotherTake,
  type Level,
  type LineNotes,
} from '../../src/core/line';
import { barsOf, brokenIn } from '../line/held-aims';
import { request } from '../line/notation';
import { roundEffort } from '../line/round-effort';

/** Chord roots of common turns as half steps above the tonic, with the chord's kind. */
const TURNS: readonly (readonly string[])[] = [
  ['1', '5', '1', '5'],
  ['1', '4', '5', '1'],
  ['1', '6', '4', '5'],
  ['2', '5', '1', '6'],
  ['1', '1', '4', '5'],
  ['6', '4', '1', '5'],
];
const KEYS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  C: { '1': 'C', '2': 'Dm7', '4': 'F', '5': 'G7', '6': 'Am' },
  F: { '1': 'F', '2': 'Gm7', '4': 'B♭', '5': 'C7', '6': 'Dm' },
  G: { '1': 'G', '2': 'Am7', '4': 'C', '5': 'D7', '6': 'Em' },
  D: { '1': 'D', '2': 'Em7', '4': 'G', '5': 'A7', '6': 'Bm' },
  'B♭': { '1': 'B♭', '2': 'Cm7', '4': 'E♭', '5': 'F7', '6': 'Gm' },
  'A♭': { '1': 'A♭', '2': 'B♭m7', '4': 'D♭', '5': 'E♭7', '6': 'Fm' },
  Am: { '1': 'Am', '2': 'Bm7♭5', '4': 'Dm', '5': 'E7', '6': 'F' },
  Gm: { '1': 'Gm', '2': 'Am7♭5', '4': 'Cm', '5': 'D7', '6': 'E♭' },
};
const LENGTHS = [1, 2, 4, 8, 12, 16, 32, 64];
/** Two lines a level; over the feels, every length and every kind of aim comes at several levels. */
const LINES_A_FEEL = Number(process.env.REPORT_LINES ?? 12);
const LEVELS_TOLD = 6;

/** What every fourth line is asked beside its chart, in turns: each kind of aim, for the line, a section or a bar. */
const AIMS: readonly Aim[] = [
  { where: { kind: 'line' }, wanted: ['scale steps'] },
  { where: { kind: 'bar', bar: 1 }, wanted: ['long silences'] },
  { where: { kind: 'line' }, wanted: ['octave'], highest: midiNumber(43) },
  { where: { kind: 'line' }, silence: 0.25 },
  { where: { kind: 'section', section: 0 }, position: fret(1) },
  { where: { kind: 'bar', bar: 2 }, density: 'busy' },
  { where: { kind: 'line' }, forbidden: ['long silences'], density: 'sparse' },
  { where: { kind: 'line' }, lowest: midiNumber(31), highest: midiNumber(43) },
];

const pick = <Item>(random: Random, items: readonly Item[], fallback: Item): Item =>
  items[random.below(items.length)] ?? fallback;

function chartOf(random: Random, key: string, bars: number, metre: string): string {
  const chords = KEYS[key] ?? {};
  const written = Array.from({ length: Math.ceil(bars / 4) }, () => pick(random, TURNS, ['1'])).flat();
  const texts = written.slice(0, bars).map((degree, index) => {
    const chord = chords[degree] ?? 'C';
    return index % 8 === 6 && random.below(3) === 0 ? `${chord} ${chords['5'] ?? chord}` : chord;
  });
  return `${metre}| ${texts.join(' | ')} |`;
}

interface Tally {
  lines: number;
  bars: number;
  strong: number;
  strongTones: number;
  changes: number;
  grounded: number;
  silence: number;
  emptyOnes: number;
  wideLeaps: number;
  shared: number;
  shifts: number;
  stretches: number;
  lowest: number;
  highest: number;
  takes: number;
  differentTakes: number;
  freeBars: number;
  changedBars: number;
  aims: number;
  aimsNotKept: number;
  aimsBroken: number;
  breaches: number;
  remarks: number;
  exceptions: number;
}

const emptyTally = (): Tally => ({
  lines: 0,
  bars: 0,
  strong: 0,
  strongTones: 0,
  changes: 0,
  grounded: 0,
  silence: 0,
  emptyOnes: 0,
  wideLeaps: 0,
  shared: 0,
  shifts: 0,
  stretches: 0,
  lowest: 127,
  highest: 0,
  takes: 0,
  differentTakes: 0,
  freeBars: 0,
  changedBars: 0,
  aims: 0,
  aimsNotKept: 0,
  aimsBroken: 0,
  breaches: 0,
  remarks: 0,
  exceptions: 0,
});

const rhythmOf = (notes: readonly LineNote[]): string => notes.map((note) => note.start).join(' ');

function tallyBars(tally: Tally, asked: ComposeRequest, bars: LineNotes): void {
  const rhythms = bars.map(rhythmOf);
  asked.chart.bars.forEach((bar, index) => {
    const notes = bars[index] ?? [];
    const span = bar.spans[0];
    const chord = span?.harmony.kind === 'chord' ? span.harmony.chord : null;
    if (!chord) return;
    const classes = chord.tones.map((tone) => midiOf({ ...tone.name, octave: 2 }) % 12);
    const ticks = bar.spans.reduce((sum, one) => sum + one.duration, 0);
    tally.bars += 1;
    tally.silence += 1 - notes.reduce((sum, note) => sum + note.duration, 0) / ticks;
    if (notes[0]?.start !== 0) tally.emptyOnes += 1;
    if (rhythms[index] === rhythms[0]) tally.shared += 1;
    for (const note of notes.filter(({ start }) => start === 0 || start * 2 === ticks)) {
      if (bar.spans.length > 1 && note.start > 0) continue;
      tally.strong += 1;
      if (classes.includes(midiOf(note.pitch) % 12)) tally.strongTones += 1;
    }
    tally.changes += 1;
    const early = notes.filter((note) => note.start < TICKS_PER_QUARTER * 2);
    const carried = [classes[0], classes[2]];
    if (early.some((note) => carried.includes(midiOf(note.pitch) % 12))) tally.grounded += 1;
  });
}

/** Aims that a line leaves without a word, those that it says it cannot keep, and how many there were. */
function tallyAims(tally: Tally, asked: ComposeRequest, { bars, misses }: ComposedLine): void {
  const techniques = analyseLine(asked, bars).map((bar) => bar.techniques);
  (asked.aims ?? []).forEach((aim, index) => {
    const scope = barsOf(asked, aim);
    tally.aims += scope.length;
    const said = new Set(misses.filter((miss) => miss.aim === index).flatMap((miss) => miss.bars));
    tally.aimsNotKept += said.size;
    tally.aimsBroken += scope.filter(
      (bar) => !said.has(bar) && brokenIn(asked, aim, bars[bar] ?? [], techniques[bar] ?? [], bar).length > 0,
    ).length;
  });
}

const textOf = (notes: readonly LineNote[] | undefined): string => JSON.stringify(notes);

/** What is a fault, each with the line that has it. */
const faults: string[] = [];

function tallyLine(tally: Tally, asked: ComposeRequest): void {
  const line = composeLine(asked);
  const { bars, remarks } = line;
  tally.lines += 1;
  tally.remarks += remarks.length;
  const said = asked.aims === undefined ? [] : remarks;
  const broken = checkLine(asked, bars).filter(({ message }) => !said.includes(message));
  tally.breaches += broken.length;
  for (const { message } of broken)
    faults.push(
      `${asked.feel.name}, level ${asked.level}, seed ${asked.seed}, ${bars.length} bars, ${asked.aims ? JSON.stringify(asked.aims) : 'no aim'}: ${message}`,
    );
  tallyAims(tally, asked, line);
  tallyBars(tally, asked, bars);
  const midis = bars.flat().map((note) => midiOf(note.pitch));
  midis.forEach((midi, index) => {
    if (Math.abs(midi - (midis[index - 1] ?? midi)) > 12) tally.wideLeaps += 1;
    tally.lowest = Math.min(tally.lowest, midi);
    tally.highest = Math.max(tally.highest, midi);
  });
  let barStart = 0;
  const played = bars.flatMap((notes, index) => {
    const start = barStart;
    barStart += asked.chart.bars[index]?.spans.reduce((sum, one) => sum + one.duration, 0) ?? 0;
    return notes.map((note) => ({
      ...note,
      start: ticks(start + note.start),
      midi: midiOf(note.pitch),
    }));
  });
  const fingered = fingerLine(played, asked.instrument, asked.hand, {
    ticksPerSecond: ticksPerSecond(asked.tempo, asked.chart.metre),
    loop: ticks(barStart),
  });
  tally.shifts += fingered.shifts;
  tally.stretches += roundEffort(fingered, asked.instrument, asked.hand).stretches;
  const next = anotherTake(asked, bars);
  tally.takes += 1;
  if (isAnotherTake(bars, next.bars, asked.kept)) tally.differentTakes += 1;
  tally.freeBars += bars.length;
  tally.changedBars += bars.filter((notes, bar) => textOf(notes) !== textOf(next.bars[bar])).length;
}

function judge(feel: FeelId, place: number, metres: readonly string[]): Tally {
  const random = createRandom(feel.length * 7919);
  const tally = emptyTally();
  for (let line = 0; line < LINES_A_FEEL; line += 1) {
    const key = pick(random, Object.keys(KEYS), 'C');
    const bars = LENGTHS[(line + place) % LENGTHS.length] ?? 8;
    const chart = chartOf(random, key, bars, pick(random, metres, ''));
    const level = (line % LEVELS_TOLD) as Level;
    try {
      const asked = request(chart, { feel, level, key, seed: line });
      const aim = line % 4 === 3 ? AIMS[((line - 3) / 4 + place * 3) % AIMS.length] : undefined;
      tallyLine(tally, aim ? { ...asked, aims: [aim] } : asked);
    } catch {
      tally.exceptions += 1;
    }
  }
  return tally;
}

const percent = (part: number, whole: number): string => `${Math.round((100 * part) / Math.max(1, whole))} %`;

const COLUMNS: readonly (readonly [string, (tally: Tally) => string])[] = [
  ['lines', (tally) => `${tally.lines}`],
  ['chord tones on strong beats', (tally) => percent(tally.strongTones, tally.strong)],
  ['root or fifth in two beats', (tally) => percent(tally.grounded, tally.changes)],
  ['silence', (tally) => percent(tally.silence, tally.bars)],
  ['silent ones', (tally) => percent(tally.emptyOnes, tally.bars)],
  ['leaps over an octave', (tally) => `${tally.wideLeaps}`],
  ['bars in the first rhythm', (tally) => percent(tally.shared, tally.bars)],
  ['shifts a bar', (tally) => (tally.shifts / Math.max(1, tally.bars)).toFixed(2)],
  ['stretches a bar', (tally) => (tally.stretches / Math.max(1, tally.bars)).toFixed(2)],
  ['range (MIDI)', (tally) => `${tally.lowest}–${tally.highest}`],
  ['different takes', (tally) => percent(tally.differentTakes, tally.takes)],
  ['bars a take changes', (tally) => percent(tally.changedBars, tally.freeBars)],
  ['aims, by bar', (tally) => `${tally.aims}`],
  ['said not to fit', (tally) => `${tally.aimsNotKept}`],
  ['aims broken', (tally) => `${tally.aimsBroken}`],
  ['breaches', (tally) => `${tally.breaches}`],
  ['remarks', (tally) => `${tally.remarks}`],
  ['exceptions', (tally) => `${tally.exceptions}`],
];

const rows: (readonly string[])[] = [];

test.each(FEELS.map((feel, place) => ({ ...feel, place })))('composed lines: $name', (feel) => {
  const metres = feel.metres.map(({ metre }) =>
    metre.count === 4 && metre.unit === 4 ? '' : `(${metre.count}/${metre.unit}) `,
  );
  const tally = judge(feel.id, feel.place, metres);
  rows.push([feel.name, ...COLUMNS.map(([, read]) => read(tally))]);
});

/** What was told so far is printed even where a feel came to no end. */
afterAll(() => {
  const table = [
    ['feel', ...COLUMNS.map(([title]) => title)],
    COLUMNS.map(() => '---').concat('---'),
    ...rows,
  ];
  const told = faults.length > 0 ? `\n\nRules broken without a word:\n${faults.join('\n')}` : '';
  process.stdout.write(`\n${table.map((row) => `| ${row.join(' | ')} |`).join('\n')}${told}\n\n`);
});
