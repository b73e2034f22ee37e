/** One line of each feel rendered and measured: when its notes begin against the grid, how true they are, how loud. */
import { test } from 'vitest';
import { frequencyOf } from '../../src/core/base';
import { FEEL_IDS, type FeelId } from '../../src/core/feel';
import { buildPerformance, type PitchedEvent } from '../../src/core/performance';
import { renderMix } from '../../src/sound/synthesis/mix';
import { createKit } from '../../src/sound/synthesis/voices';
import { integratedLoudness, TRACK_RATE, truePeak } from '../../src/tracks/loudness';
import { cents, decibels, pitchOf, rms } from '../sound/measure';
import { sixtyLines } from '../support/sixty-lines';

const RATE = TRACK_RATE;
/** Samples of a look at the beginning of a note, and between two looks. */
const LOOK = RATE / 500;
const STEP = Math.round(RATE / 4000);
/** Samples that are one when the pitch is sought. */
const COARSE = 8;

/** How much the sound bends: a pluck has edges that a ringing string lacks. */
function bend(sound: Float32Array, from: number): number {
  let energy = 0;
  for (let at = from; at < from + LOOK; at += 1) {
    const edge = (sound[at] ?? 0) - 2 * (sound[at - 1] ?? 0) + (sound[at - 2] ?? 0);
    energy += edge * edge;
  }
  return energy;
}

/** Milliseconds from where a note is written to where its pluck begins. */
function lateness(sound: Float32Array, written: number): number {
  const looks: { at: number; energy: number }[] = [];
  for (let at = written - RATE / 50; at < written + RATE / 33; at += STEP)
    looks.push({ at, energy: bend(sound, at) });
  const energies = looks.map(({ energy }) => energy);
  const [least, most] = [Math.min(...energies.slice(0, 60)), Math.max(...energies)];
  const found = looks.find(({ energy }) => energy > least + 0.1 * (most - least));
  return found === undefined ? Number.NaN : ((found.at + LOOK - written) * 1000) / RATE;
}

/** Cents between the pitch of a sounding note and the written one. */
function mistuning(sound: Float32Array, written: number, seconds: number, wanted: number): number {
  const from = written + Math.round(0.03 * RATE);
  const length = Math.round(((Math.min(seconds, 0.3) - 0.04) * RATE) / COARSE);
  const coarse = Float32Array.from(
    { length },
    (_, place) =>
      sound.subarray(from + place * COARSE, from + (place + 1) * COARSE).reduce((sum, one) => sum + one, 0) /
      COARSE,
  );
  return cents(pitchOf(coarse, RATE / COARSE, wanted * 0.85, wanted * 1.18), wanted);
}

const peakOf = (sound: Float32Array): number => sound.reduce((most, one) => Math.max(most, Math.abs(one)), 0);

const between = (values: readonly number[]): string =>
  `${Math.min(...values).toFixed(1)} to ${Math.max(...values).toFixed(1)}`;

function rowOf(feel: FeelId, kit: ReturnType<typeof createKit>): string {
  const listed = sixtyLines([feel]).at(-1);
  if (listed === undefined) throw new Error(`no line in ${feel}`);
  const { sheet, level } = listed;
  const tune = buildPerformance(sheet, { tempo: sheet.tempo, countIn: 0, passage: null });
  const silent = { drums: false, chops: false, organ: false, click: false };
  const mix = renderMix(tune, { ...silent, bass: true }, kit);
  const sound = mix.left.map((left, index) => (left + (mix.right[index] ?? 0)) / 2);
  const perTick = 60 / (tune.tempo * tune.beat);
  const notes = tune.events.filter((event): event is PitchedEvent => event.part === 'bass');
  const placed = notes.map((note) => ({
    note,
    at: Math.round(note.start * perTick * RATE),
    seconds: note.duration * perTick,
  }));
  // A dead note has no pitch, and its begin is lost in what rings before it: its click alone is measured.
  const struck = placed.filter(({ note }) => !note.muted);
  const late = struck.filter(({ note }) => note.attack === undefined).map(({ at }) => lateness(sound, at));
  const pitched = struck.filter(({ note, seconds }) => note.glides === undefined && seconds > 0.14);
  const mistuned = pitched.map(({ note, at, seconds }) =>
    mistuning(sound, at, seconds, frequencyOf(note.midi)),
  );
  const levels = struck.map(({ at, seconds }) =>
    decibels(rms(sound.subarray(at + RATE / 100, at + Math.round(Math.min(seconds, 0.1) * RATE)))),
  );
  const peaks = placed.map(({ note, at }) => ({
    dead: note.muted,
    peak: peakOf(sound.subarray(at, at + RATE / 33)),
  }));
  const peakIn = (dead: boolean): string => {
    const some = peaks.filter((one) => Boolean(one.dead) === dead).map(({ peak }) => decibels(peak));
    return some.length === 0 ? '' : between(some);
  };
  const cells = [
    feel,
    level,
    notes.length,
    between(late),
    between(mistuned),
    integratedLoudness(mix).toFixed(1),
    Math.max(truePeak(mix.left), truePeak(mix.right)).toFixed(1),
    between(levels),
    peakIn(false),
    peakIn(true),
    Math.round(Math.min(...placed.map(({ seconds }) => seconds)) * 1000),
  ];
  return `| ${cells.join(' | ')} |`;
}

test('one line of each feel against the grid', () => {
  const kit = createKit(RATE);
  const head = [
    'feel',
    'level',
    'notes',
    'late (ms)',
    'out of tune (cents)',
    'LUFS',
    'dBTP',
    'notes (dB)',
    'peaks (dB)',
    'of dead notes',
  ];
  const rows = FEEL_IDS.map((feel) => rowOf(feel, kit));
  process.stdout.write(
    `${[`| ${[...head, 'shortest (ms)'].join(' | ')} |`, `|${' --- |'.repeat(11)}`, ...rows].join('\n')}\n`,
  );
});
