import {
  beatTicks,
  type Metre,
  type MidiNumber,
  midiNumber,
  midiOf,
  pitchClassOf,
  sameName,
  ticks,
} from '../base';
import { chordsIn } from '../chart';
import type { Feel, Grid } from '../feel';
import type { LineSheet, SheetBar } from '../lesson';
import { type Chord, formatName, hasMinorThird, type Key, parseChord } from '../theory';
import type { PlannedBar } from './plan';
import type { DrumEvent, PitchedEvent } from './types';

/** A bar that holds one chord and no notes. */
const barOf = (like: SheetBar, metre: Metre, duration: number, chord: Chord | null): SheetBar => ({
  ...like,
  notes: [],
  written: {
    ...like.written,
    metre,
    pickup: false,
    spans:
      chord === null
        ? []
        : [{ start: ticks(0), duration: ticks(duration), harmony: { kind: 'chord', chord } }],
  },
});

const chordsOf = (bar: SheetBar | null): readonly Chord[] => (bar === null ? [] : chordsIn(bar.written));

/** The bar before the first one: the rhythm section alone, on the chord that comes first. */
export function introBar(
  first: PlannedBar | undefined,
  metre: Metre,
  start: number,
  duration: number,
): readonly PlannedBar[] {
  if (first === undefined || first.sheetBar === null || duration === 0) return [];
  const [chord = null] = chordsOf(first.sheetBar);
  const sheetBar = barOf(first.sheetBar, metre, duration, chord);
  return [{ bar: null, sheetBar, metre, start, duration, bassPlays: false, form: 'intro' }];
}

/**
 * The chord to end on: the tonic as the line has it (F7 in a blues), the one it ends with before the one it begins with,
 * else the key's own triad; null over bars that have no chords at all.
 */
function lastChord(bars: readonly PlannedBar[], key: Key): Chord | null {
  const all = bars.flatMap(({ sheetBar }) => chordsOf(sheetBar));
  const last = all.at(-1);
  if (last === undefined) return null;
  const home = [last, ...all].find(
    ({ root, bass }) => sameName(root, key.tonic) && sameName(bass, key.tonic),
  );
  if (home !== undefined) return home;
  const triad = parseChord(`${formatName(key.tonic)}${hasMinorThird(key.mode) ? 'm' : ''}`);
  return triad.ok ? triad.value : null;
}

/** The bar of the last hit, after the last one. */
export function endingBar(bars: readonly PlannedBar[], sheet: LineSheet): readonly PlannedBar[] {
  const last = bars.findLast(({ sheetBar }) => sheetBar !== null);
  if (last === undefined || last.sheetBar === null) return [];
  const end = bars.at(-1);
  const key = sheet.chart.bars[last.bar ?? 0]?.key ?? sheet.key;
  const { metre, duration, bassPlays } = last;
  const chord = lastChord(bars, key);
  return [
    {
      bar: null,
      sheetBar: barOf(last.sheetBar, metre, duration, chord),
      metre,
      start: end === undefined ? 0 : end.start + end.duration,
      duration,
      bassPlays,
      form: 'ending',
    },
  ];
}

/** How long the last hit is held, in ticks: half its bar, or half a beat. */
const lengthOf = ({ ending }: Feel, { metre, duration }: PlannedBar): number =>
  ending.held ? Math.round(duration / 2) : beatTicks(metre) / 2;

/** The last hit of the chords, as a grid of half beats. */
export function endingGrid(feel: Feel, bar: PlannedBar): Grid {
  const steps = Math.max(2, Math.round((2 * bar.duration) / beatTicks(bar.metre)));
  return (feel.ending.held ? 'x'.padEnd(steps / 2, '=') : 'x').padEnd(steps, '-');
}

/** Above a fret that every neck has, the last hit is no longer low. */
const HIGHEST_LAST = 12;
const LOWEST_STANDARD = 28;

/** The tonic nearest to where the line has been last, on the lowest string or above it. */
function lastPitch(chord: Chord, sheet: LineSheet, before: MidiNumber): MidiNumber {
  const open = sheet.instrument.openStrings.map((pitch): number => midiOf(pitch));
  const lowest = open.length === 0 ? LOWEST_STANDARD : Math.min(...open);
  const highest = (open.length === 0 ? LOWEST_STANDARD : Math.max(...open)) + HIGHEST_LAST;
  const pitchClass = pitchClassOf(chord.root);
  let nearest = lowest + ((((pitchClass - lowest) % 12) + 12) % 12);
  for (let pitch = nearest; pitch <= highest; pitch += 12) {
    if (Math.abs(pitch - before) < Math.abs(nearest - before)) nearest = pitch;
  }
  return midiNumber(nearest);
}

const STRENGTH = { bass: 104, drums: 112, crash: 100 } as const;

/** The last hit of the bass. */
export function endingOfBass(
  bar: PlannedBar | undefined,
  sheet: LineSheet,
  line: readonly PitchedEvent[],
): readonly PitchedEvent[] {
  const [chord] = chordsOf(bar?.sheetBar ?? null);
  const before = line.at(-1);
  if (bar === undefined || !bar.bassPlays || chord === undefined || before === undefined) return [];
  return [
    {
      part: 'bass',
      midi: lastPitch(chord, sheet, before.midi),
      start: ticks(bar.start),
      duration: ticks(lengthOf(sheet.feel, bar)),
      velocity: STRENGTH.bass,
      muted: false,
      ...(sheet.feel.bassTouch.muted ? { damped: true as const } : {}),
    },
  ];
}

/** The last hit of the drums. */
export const endingOfDrums = (bar: PlannedBar | undefined, feel: Feel): readonly DrumEvent[] =>
  bar === undefined
    ? []
    : feel.ending.drums.map((sound) => ({
        part: 'drums',
        sound,
        start: ticks(bar.start),
        duration: beatTicks(bar.metre),
        velocity: sound === 'crash' ? STRENGTH.crash : STRENGTH.drums,
      }));
