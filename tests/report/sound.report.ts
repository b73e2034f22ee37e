/**
 * What an engineer looks at: the spectrum and the envelope of every instrument as pictures, and the loudness of every
 * part in every feel as a table. `OUT` names the folder for the pictures (SVG).
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';
import { frequencyOf, midiNumber } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import { type DrumSound, FEEL_IDS, type FeelId } from '../../src/core/feel';
import { deriveSheet, type LineSheet, newLesson, setChartText, setFeel } from '../../src/core/lesson';
import { buildPerformance, type Performance } from '../../src/core/performance';
import { PARTS, type Part } from '../../src/core/playing';
import type { StereoSound } from '../../src/sound';
import { bassNote } from '../../src/sound/synthesis/bass';
import { clickSound, stickSound } from '../../src/sound/synthesis/click';
import { drumHit } from '../../src/sound/synthesis/drums';
import { guitarNote } from '../../src/sound/synthesis/guitar';
import { renderMix } from '../../src/sound/synthesis/mix';
import { organNote } from '../../src/sound/synthesis/organ';
import { CORNERS } from '../../src/sound/synthesis/room';
import { createKit } from '../../src/sound/synthesis/voices';
import { integratedLoudness, TRACK_RATE, truePeak } from '../../src/tracks/loudness';
import { decibels, rms } from '../sound/measure';
import { inRoom } from '../sound/plain-room';

const OUT = process.env.OUT ?? join(tmpdir(), 'ground-bass-sound');
const RATE = TRACK_RATE;
const SECONDS = 1;

const bass = (midi: number, more: Partial<Parameters<typeof bassNote>[0]> = {}) =>
  bassNote(
    { frequency: frequencyOf(midiNumber(midi)), seconds: SECONDS, force: 0.6, muted: false, ...more },
    RATE,
  );
const DRUMS: readonly DrumSound[] = [
  'kick',
  'snare',
  'rim',
  'closed hat',
  'open hat',
  'foot hat',
  'ride',
  'crash',
];
const A3 = frequencyOf(midiNumber(57));
const impulse = () => Float32Array.from({ length: RATE }, (_, index) => (index === 0 ? 1 : 0));

const SOUNDS: readonly (readonly [name: string, make: () => Float32Array])[] = [
  ['bass E', () => bass(28)],
  ['bass A', () => bass(33)],
  ['bass D at fret 5', () => bass(38, { fret: 5 })],
  ['bass C sharp at fret 6', () => bass(49, { fret: 6 })],
  ['bass damped', () => bass(33, { damped: true })],
  ['bass ghost', () => bass(33, { muted: true })],
  ['bass palm muted', () => bass(33, { tone: 'palm muted' })],
  ['bass slapped', () => bass(33, { tone: 'slapped' })],
  ['bass popped', () => bass(45, { tone: 'popped' })],
  ['chop string', () => guitarNote({ frequency: A3, seconds: 0.08, muted: false }, RATE)],
  ['organ key', () => organNote(A3, SECONDS, RATE)],
  ...DRUMS.map((sound) => [sound, () => drumHit(sound, 0, RATE)] as const),
  ['click', () => clickSound(true, RATE)],
  ['sticks', () => stickSound(true, RATE)],
  ...CORNERS.map(
    ({ stems, room }) => [`room of ${stems.join(' and ')}`, () => inRoom(impulse(), room, RATE)[0]] as const,
  ),
];

const WIDTH = 480;
const HEIGHT = 200;
const FLOOR = -80;

/** Bands of a sixth of an octave from 30 Hz on, their level in decibels, by the correlation with turning tones. */
function spectrum(samples: Float32Array): readonly (readonly [hertz: number, level: number])[] {
  const bands: [number, number][] = [];
  for (let hertz = 30; hertz < 18_000; hertz *= 2 ** (1 / 6)) {
    let power = 0;
    for (const part of [0.955, 0.985, 1.015, 1.045]) {
      const omega = (2 * Math.PI * hertz * part) / RATE;
      let [cos, sin] = [0, 0];
      for (let index = 0; index < samples.length; index += 1) {
        cos += (samples[index] ?? 0) * Math.cos(omega * index);
        sin += (samples[index] ?? 0) * Math.sin(omega * index);
      }
      power += cos * cos + sin * sin;
    }
    bands.push([hertz, 10 * Math.log10(power + 1e-12)]);
  }
  const most = Math.max(...bands.map(([, level]) => level));
  return bands.map(([hertz, level]) => [hertz, level - most]);
}

/** Level of every five milliseconds, against the loudest. */
function envelope(samples: Float32Array): readonly (readonly [seconds: number, level: number])[] {
  const step = RATE / 200;
  const levels = Array.from({ length: Math.floor(samples.length / step) }, (_, index) =>
    decibels(rms(samples.subarray(index * step, (index + 1) * step))),
  );
  const most = Math.max(...levels);
  return levels.map((level, index) => [index / 200, level - most]);
}

const y = (level: number): string => ((HEIGHT * Math.max(FLOOR, level)) / FLOOR).toFixed(1);
const line = (points: readonly (readonly [number, number])[], x: (value: number) => number): string =>
  `<polyline fill="none" stroke="#14453d" points="${points.map(([value, level]) => `${x(value).toFixed(1)},${y(level)}`).join(' ')}"/>`;
const rules = [0, -20, -40, -60]
  .map(
    (level) =>
      `<path stroke="#ccc" d="M0 ${y(level)}H${WIDTH}"/><text y="${Number(y(level)) + 10}" font-size="9">${level} dB</text>`,
  )
  .join('');
const octave = (hertz: number): number => (WIDTH * Math.log2(hertz / 30)) / Math.log2(18_000 / 30);

function picture(name: string, samples: Float32Array): string {
  const marks = [50, 100, 200, 500, 1000, 2000, 5000, 10_000]
    .map((hertz) => `<text x="${octave(hertz).toFixed(0)}" y="${HEIGHT + 12}" font-size="9">${hertz}</text>`)
    .join('');
  const times = [0, 0.1, 0.2, 0.5, 1]
    .map((time) => `<text x="${(time * WIDTH).toFixed(0)}" y="${HEIGHT + 12}" font-size="9">${time} s</text>`)
    .join('');
  return `<g><text y="-6" font-size="12">${name}</text>${rules}${line(spectrum(samples), octave)}${marks}</g>
<g transform="translate(${WIDTH + 40} 0)">${rules}${line(envelope(samples), (time) => time * WIDTH)}${times}</g>`;
}

test('spectra and envelopes of every instrument', () => {
  mkdirSync(OUT, { recursive: true });
  const rows = SOUNDS.map(
    ([name, make], index) =>
      `<g transform="translate(10 ${30 + index * (HEIGHT + 50)})">${picture(name, make())}</g>`,
  );
  const file = join(OUT, 'instruments.svg');
  const [width, height] = [2 * WIDTH + 70, SOUNDS.length * (HEIGHT + 50) + 20];
  writeFileSync(
    file,
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" font-family="sans-serif"><rect width="100%" height="100%" fill="#fff"/>${rows.join('\n')}</svg>\n`,
  );
  process.stdout.write(`Spectra and envelopes: ${file}\n`);
});

const FORM =
  'A:\n| F | Dm | Gm | C7 | Bb | Gm7 | Am7 | C7 |\nB:\n| Bbmaj7 | C9 | Dm7 | Gm7 | Bb | Gm7 | C7 | F |';

/** A composed line at the feel's own tempo. */
function sheetIn(feel: FeelId, chart: string): LineSheet {
  const empty = newLesson('lesson', 'Lesson');
  const id = empty.pieces[0]?.id ?? '';
  const { lesson } = composePiece(setFeel(setChartText(empty, id, chart), id, feel), id);
  const [piece] = lesson.pieces;
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('The lesson has no line');
  return sheet;
}

/** As people play it. */
const played = (sheet: LineSheet, seed: number, whole: boolean): Performance =>
  buildPerformance(sheet, {
    tempo: sheet.tempo,
    countIn: whole ? 1 : 0,
    intro: whole,
    ending: whole,
    passage: null,
    humaniseSeed: seed,
    drumSeed: seed,
  });

test('loudness of every part in every feel, and the peaks of three rounds of sixteen bars', () => {
  const kit = createKit(RATE);
  const nobody = { bass: false, drums: false, chops: false, organ: false, click: false };
  const everyone = { bass: true, drums: true, chops: true, organ: true, click: true };
  const peakOf = ({ left, right }: StereoSound) => Math.max(truePeak(left), truePeak(right));
  const table = FEEL_IDS.map((feel) => {
    const tune = played(sheetIn(feel, '| F | Dm | Gm | C7 |'), 1, false);
    const mix = renderMix(tune, everyone, kit);
    const of = (part: Part) => integratedLoudness(renderMix(tune, { ...nobody, [part]: true }, kit));
    const form = sheetIn(feel, FORM);
    const peaks = [1, 2, 3].map((seed) => peakOf(renderMix(played(form, seed, true), everyone, kit)));
    const cells = [integratedLoudness(mix), peakOf(mix), Math.max(...peaks), ...PARTS.map(of)];
    return `| ${feel} | ${cells.map((value) => value.toFixed(1)).join(' | ')} |`;
  });
  const head = ['feel', 'all (LUFS)', 'true peak (dBTP)', 'in 48 bars', ...PARTS];
  process.stdout.write(
    `${[`| ${head.join(' | ')} |`, `|${' --- |'.repeat(head.length)}`, ...table].join('\n')}\n`,
  );
});
