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
const mod = (number, size) => ((number % size) + size) % size;
const above = (midi, chord) => mod(midi - root(chord), 12);
const byBeat = (notes) => [...notes].sort((one, other) => one.beat - other.beat);

/** The letters of a chord's tones, as steps above its root, by semitones: the seventh of a dim7 is a seventh, not a sixth. */
function toneSteps(chord) {
  const quality = chord.replace(/^[A-G][#b♯♭]?/u, '').replace(/\/.*$/u, '');
  const minor = /^(m(?!aj)|dim|°|ø)/u.test(quality);
  const flatFifth = /dim|°|ø|b5|♭5/u.test(quality);
  const sharpFifth = /aug|\+|#5|♯5/u.test(quality);
  const seventh = /(dim|°)7/u.test(quality) ? 9 : /maj/u.test(quality) ? 11 : 10;
  return new Map([
    [0, 0],
    [minor ? 3 : 4, 2],
    [flatFifth ? 6 : sharpFifth ? 8 : 7, 4],
    ...(/7|9|11|13|ø/u.test(quality) ? [[seventh, 6]] : []),
    ...(quality.includes('6') ? [[9, 5]] : []),
  ]);
}

/** The letter of each pitch class of a major scale, by its place on the circle of fifths from C (−6 to 6). */
function scaleLetters(fifths) {
  // F C G D A E B: the letters in the order in which they are sharpened.
  return new Map(
    [3, 0, 4, 1, 5, 2, 6].map((letter, order) => {
      const sign = fifths > order ? 1 : fifths < order - 6 ? -1 : 0;
      return [mod(NATURAL[letter] + sign, 12), letter];
    }),
  );
}

/** The scale that holds most of a chart's chord tones; of equal ones the scale with fewer signs. */
function keyOf(chart) {
  const tones = cells(chart)
    .flat()
    .flatMap((chord) => [...toneSteps(chord).keys()].map((semitones) => mod(root(chord) + semitones, 12)));
  const held = (fifths) => tones.filter((tone) => scaleLetters(fifths).has(tone)).length;
  const keys = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6];
  return scaleLetters(keys.reduce((best, one) => (held(one) > held(best) ? one : best)));
}

/** Letters of tones that lead nowhere by a half step, as steps above the chord's root, by semitones. */
const PLAIN_STEPS = [0, 1, 1, 2, 2, 3, 4, 4, 5, 5, 6, 6];

/** Letter of a pitch: as a tone of its chord, else of the key, else sharp where it rises and flat where it falls. */
function letterOf({ midi, chord, key, next }) {
  const lead = next - midi;
  const tone = mod(midi, 12);
  const step = toneSteps(chord).get(above(midi, chord));
  if (step !== undefined) return mod(LETTERS.indexOf(chord[0]) + step, 7);
  const known = key.get(tone) ?? NATURAL.indexOf(tone);
  if (known >= 0) return known;
  if (Math.abs(lead) === 1) return NATURAL.indexOf(mod(tone - lead, 12));
  return mod(LETTERS.indexOf(chord[0]) + PLAIN_STEPS[above(midi, chord)], 7);
}

const sign = (off) => (off < 0 ? 'b'.repeat(-off) : '#'.repeat(off));

/** A note by its name and its degree over the chord, from one spelling: C# over C7 is #1, Db is b2. */
function named(note) {
  const letter = letterOf(note);
  const off = mod(note.midi - NATURAL[letter] + 6, 12) - 6;
  const octave = Math.floor((note.midi - off) / 12) - 1;
  const step = mod(letter - LETTERS.indexOf(note.chord[0]), 7);
  const degreeOff = mod(above(note.midi, note.chord) - NATURAL[step] + 6, 12) - 6;
  const degree = step === 0 && degreeOff === 0 ? 'R' : `${sign(degreeOff)}${step + 1}`;
  return `${LETTERS[letter]}${sign(off)}${octave}[${degree}]`;
}

/** Quarters a bar: of its metre ("6/8" has three), else as stated, else four. */
function beatsOf({ metre, beats = 4 }) {
  if (metre === undefined) return beats;
  const [count, unit] = metre.split('/').map(Number);
  return (count * 4) / unit;
}

/** Quarters that each later chord of a bar takes: whole beats, in compound time dotted quarters. */
const shareOf = (count, beats, metre) => {
  const unit = metre !== undefined && /^(6|9|12)\/8$/u.test(metre) && count <= beats / 1.5 ? 1.5 : 1;
  return Math.max(0.5, Math.floor(beats / count / unit) * unit);
};

/** Place of the chord under a beat: the chords of a bar share its beats, the first takes what is left over. */
function placeAt(chords, beat, line) {
  const beats = beatsOf(line);
  const share = shareOf(chords.length, beats, line.metre);
  const first = beats - share * (chords.length - 1);
  const place = beat - 1 < first ? 0 : 1 + Math.floor((beat - 1 - first) / share);
  return Math.min(place, chords.length - 1);
}

function render(line) {
  const { bars, chart } = line;
  const key = keyOf(chart);
  const pitches = bars.flatMap((bar) => byBeat(bar).map(({ midi }) => midi));
  let sounded = 0;
  return bars
    .map((bar, index) => {
      const chords = cells(chart)[index] ?? [];
      const notes = byBeat(bar).map(({ beat, len, midi }) => {
        sounded += 1;
        const chord = chords[placeAt(chords, beat, line)];
        // The last note leads back to the first: the line loops.
        const next = pitches[sounded % pitches.length];
        return `${beat}:${named({ midi, chord, key, next })} len ${len}`;
      });
      return `  bar ${index + 1} (${chords.join(' ')}): ${notes.join('; ')}`;
    })
    .join('\n');
}

/** Root and fifth, two notes a bar; a root for each chord where a bar has several. */
const baseline = (line) =>
  cells(line.chart).map((chords) => {
    const beats = beatsOf(line);
    const low = (chord) => 28 + mod(root(chord) - 28, 12);
    const share = shareOf(chords.length, beats, line.metre);
    const first = beats - share * (chords.length - 1);
    if (chords.length > 1)
      return chords.map((chord, place) => ({
        beat: place === 0 ? 1 : 1 + first + share * (place - 1),
        len: place === 0 ? first : share,
        midi: low(chord),
      }));
    const tonic = low(chords[0]);
    const half = beats === 3 && line.metre !== '6/8' ? 2 : beats / 2;
    return [
      { beat: 1, len: half, midi: tonic },
      { beat: 1 + half, len: beats - half, midi: tonic + 7 <= 43 ? tonic + 7 : tonic - 5 },
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
      if (withBase) lines.push(['baseline', { ...task, bars: baseline(task) }]);
      const order = shuffled(lines);
      key[`${sheet}:${id}`] = { feel: task.feel, level: task.level, names: order.map(([name]) => name) };
      const text = order.map(([, line], index) => `Line ${'XYZVW'[index]}\n${render(line)}`).join('\n');
      return `## ${id}: ${task.feel}, ${task.tempo} bpm${task.count ? ` (${task.count} count)` : ''}${task.metre ? `, ${task.metre}` : ''}, level ${task.level}, chart ${task.chart}\n${text}`;
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
  for (const sheet of new Set(Object.keys(key).map((one) => one.split(':')[0]))) {
    const file = join(out, `verdict${sheet}.json`);
    if (!existsSync(file)) {
      console.log(`sheet ${sheet}: no verdict yet, left out`);
      continue;
    }
    const verdict = JSON.parse(readFileSync(file, 'utf8'));
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

const [command, ...rest] = process.argv.slice(2);
const files = rest.filter((one) => one !== '--base');
if (command === 'make') make(files[0], Number(files[1]), files.slice(2), rest.includes('--base'));
else if (command === 'score') score(files[0]);
else console.log('jury.mjs make OUT SHEETS FILE… [--base] | score OUT');
