#!/usr/bin/env node
// biome-ignore-all lint/suspicious/noConsole: it prints its tables
// Blind jury over bass lines: see README.md beside this file.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';

const CLASS = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };
const root = (chord) => {
  const [, letter, sign] = /^([A-G])([#b♯♭]?)/u.exec(chord) ?? [];
  return (CLASS[letter] + (sign === '#' || sign === '♯' ? 1 : sign === 'b' || sign === '♭' ? 11 : 0)) % 12;
};
const cells = (chart) =>
  chart
    .replace(/^[| ]+|[| ]+$/g, '')
    .split('|')
    .map((bar) => bar.trim().split(/\s+/));
const LETTERS = 'CDEFGAB';
const NATURAL = [0, 2, 4, 5, 7, 9, 11];
const DEGREES = ['R', 'b2', '2', 'b3', '3', '4', 'b5', '5', '#5/b6', '6', 'b7', '7'];
const STEPS = [0, 1, 1, 2, 2, 3, 4, 4, 5, 5, 6, 6];
const above = (midi, chord) => (((midi - root(chord)) % 12) + 12) % 12;
const byBeat = (notes) => [...notes].sort((one, other) => one.beat - other.beat);

/** A pitch spelled by its degree over the chord: the third of D7 is F#, not Gb. */
function spelled(midi, chord) {
  const letter = (LETTERS.indexOf(chord[0]) + STEPS[above(midi, chord)]) % 7;
  const off = ((((midi - NATURAL[letter]) % 12) + 18) % 12) - 6;
  const octave = Math.floor((midi - off) / 12) - 1;
  return `${LETTERS[letter]}${off < 0 ? 'b'.repeat(-off) : '#'.repeat(off)}${octave}`;
}

/** The chord under a beat: the chords of a bar share its beats, the first takes what is left over. */
function chordAt(chords, beat, beats) {
  const share = Math.floor(beats / chords.length);
  const first = beats - share * (chords.length - 1);
  const place = beat - 1 < first ? 0 : 1 + Math.floor((beat - 1 - first) / share);
  return chords[Math.min(place, chords.length - 1)];
}

function render({ bars, chart, beats = 4 }) {
  return bars
    .map((bar, index) => {
      const chords = cells(chart)[index] ?? [];
      const notes = byBeat(bar).map((note) => {
        const chord = chordAt(chords, note.beat, beats);
        return `${note.beat}:${spelled(note.midi, chord)}[${DEGREES[above(note.midi, chord)]}] len ${note.len}`;
      });
      return `  bar ${index + 1} (${chords.join(' ')}): ${notes.join('; ')}`;
    })
    .join('\n');
}

const baseline = (chart) =>
  cells(chart).map((chords) => {
    const low = (chord) => 28 + ((root(chord) - 28 + 36) % 12);
    if (chords.length > 1)
      return chords.slice(0, 2).map((chord, half) => ({ beat: 1 + 2 * half, len: 2, midi: low(chord) }));
    const first = low(chords[0]);
    return [
      { beat: 1, len: 2, midi: first },
      { beat: 3, len: 2, midi: first + 7 <= 43 ? first + 7 : first - 5 },
    ];
  });

const read = (file) => new Map(JSON.parse(readFileSync(file, 'utf8')).map((line) => [line.id, line]));
const shuffled = (items) =>
  items
    .map((item) => [Math.random(), item])
    .sort(([a], [b]) => a - b)
    .map(([, item]) => item);

function make(out, sheets, files, withBase) {
  mkdirSync(out, { recursive: true });
  const sources = files.map((file) => [basename(file, '.json'), read(file)]);
  const ids = [...sources[0][1].keys()].filter((id) => sources.every(([, lines]) => lines.has(id)));
  const key = {};
  for (let sheet = 0; sheet < sheets; sheet += 1) {
    const parts = ids.map((id) => {
      const task = sources[0][1].get(id);
      const lines = sources.map(([name, found]) => [name, { ...task, bars: found.get(id).bars }]);
      if (withBase) lines.push(['baseline', { ...task, bars: baseline(task.chart) }]);
      const order = shuffled(lines);
      key[`${sheet}:${id}`] = { feel: task.feel, level: task.level, names: order.map(([name]) => name) };
      const text = order.map(([, line], index) => `Line ${'XYZVW'[index]}\n${render(line)}`).join('\n');
      return `## ${id}: ${task.feel}, ${task.tempo} bpm${task.count ? ` (${task.count} count)` : ''}, level ${task.level}, chart ${task.chart}\n${text}`;
    });
    writeFileSync(join(out, `sheet${sheet}.md`), `${parts.join('\n\n')}\n`);
  }
  writeFileSync(`${out}.key.json`, JSON.stringify(key));
  console.log(`${ids.length} tasks, ${sheets} sheets in ${out}; verdicts go to verdict0.json …`);
}

const mean = (numbers) =>
  numbers.length > 0 ? numbers.reduce((sum, one) => sum + one, 0) / numbers.length : Number.NaN;

function score(out) {
  const key = JSON.parse(readFileSync(`${out}.key.json`, 'utf8'));
  const marks = new Map();
  const beats = new Map();
  const groups = new Map();
  for (let sheet = 0; existsSync(join(out, `verdict${sheet}.json`)); sheet += 1) {
    const verdict = JSON.parse(readFileSync(join(out, `verdict${sheet}.json`), 'utf8'));
    for (const [id, found] of Object.entries(verdict)) {
      const { names, feel, level } = key[`${sheet}:${id}`] ?? {};
      if (!names) continue;
      names.forEach((name, index) => {
        const mark = found['XYZVW'[index]];
        for (const part of ['idiom', 'melody', 'phrase', 'leading', 'teach', 'overall']) {
          const row = marks.get(name) ?? {};
          row[part] = [...(row[part] ?? []), mark[part]];
          marks.set(name, row);
        }
        for (const group of [feel, level < 3 ? 'levels 0–2' : 'levels 3–5']) {
          const cell = groups.get(group) ?? {};
          cell[name] = [...(cell[name] ?? []), mark.overall];
          groups.set(group, cell);
        }
        names.forEach((other, place) => {
          if (other === name) return;
          const pair = beats.get(`${name} ≥ ${other}`) ?? [];
          pair.push(mark.overall >= found['XYZVW'[place]].overall ? 1 : 0);
          beats.set(`${name} ≥ ${other}`, pair);
        });
      });
    }
  }
  for (const [name, row] of marks)
    console.log(
      name,
      Object.fromEntries(Object.entries(row).map(([part, all]) => [part, Number(mean(all).toFixed(2))])),
    );
  for (const [group, cell] of groups)
    console.log(
      group,
      Object.fromEntries(Object.entries(cell).map(([name, all]) => [name, Number(mean(all).toFixed(1))])),
    );
  for (const [pair, all] of beats)
    console.log(`${pair}: ${all.reduce((sum, one) => sum + one, 0)} of ${all.length}`);
}

function traitsOf({ chart, bars, beats = 4 }) {
  const segments = bars.flatMap((bar, index) => {
    const chords = cells(chart)[index] ?? [];
    return chords.map((chord) => ({
      chord,
      notes: byBeat(bar).filter(({ beat }) => chordAt(chords, beat, beats) === chord),
    }));
  });
  const led = [];
  const stutters = [];
  segments.forEach((one, index) => {
    const next = segments[(index + 1) % segments.length];
    const [last, before] = [one.notes.at(-1), one.notes.at(-2)];
    if (!last || !next.notes[0] || one.chord === next.chord) return;
    led.push([1, 2].includes(Math.abs(next.notes[0].midi - last.midi)) ? 1 : 0);
    stutters.push(before?.midi === last.midi ? 1 : 0);
  });
  const sevenths = segments
    .filter(({ chord, notes }) => chord.includes('7') && notes.length > 0)
    .map(({ chord, notes }) => (notes.some(({ midi }) => [10, 11].includes(above(midi, chord))) ? 1 : 0));
  const text = bars.map((bar) => JSON.stringify(byBeat(bar).map(({ beat, midi }) => [beat, midi])));
  const half = Math.floor(bars.length / 2);
  const pasted = Array.from({ length: half }, (_, index) => (text[index] === text[index + half] ? 1 : 0));
  return { led: mean(led), stutters: mean(stutters), sevenths: mean(sevenths), pasted: mean(pasted) };
}

function traits(files) {
  for (const file of files) {
    const rows = [...read(file).values()].map(traitsOf);
    const over = (name) =>
      Number(mean(rows.map((row) => row[name]).filter((one) => !Number.isNaN(one))).toFixed(2));
    console.log(basename(file, '.json'), {
      led: over('led'),
      stutters: over('stutters'),
      sevenths: over('sevenths'),
      pasted: over('pasted'),
    });
  }
}

const [command, ...rest] = process.argv.slice(2);
const files = rest.filter((one) => one !== '--base');
if (command === 'make') make(files[0], Number(files[1]), files.slice(2), rest.includes('--base'));
else if (command === 'score') score(files[0]);
else if (command === 'traits') traits(files);
else console.log('jury.mjs make OUT SHEETS FILE… [--base] | score OUT | traits FILE…');
