import { describe, expect, it } from 'vitest';
import { barTicks, beatTicks, createRandom } from '../../src/core/base';
import { harmonyText, playOrder } from '../../src/core/chart';
import { loadReader, writeMidi } from '../../src/core/exchange';
import { FEELS, type FeelId, swingRatio } from '../../src/core/feel';
import { type LineSheet, parseLesson, printLesson } from '../../src/core/lesson';
import { buildPerformance, type Performance } from '../../src/core/performance';
import { PARTS, type Part } from '../../src/core/playing';
import { describeKey, formatPitch } from '../../src/core/theory';
import { sheetOf } from '../support/score-sheets';
import { randomSheets } from './random-sheets';
import { lineSheetOf, readBack, refusal } from './read-back';

const performanceOf = (sheet: LineSheet, countIn: 0 | 1 = 0): Performance =>
  buildPerformance(sheet, { tempo: sheet.tempo, countIn, passage: null });

const fileOf = (sheet: LineSheet, countIn: 0 | 1 = 0): Uint8Array =>
  writeMidi({
    performance: performanceOf(sheet, countIn),
    sheet,
    title: 'Ferry queue',
    parts: new Set<Part>(PARTS),
  });

/** As it is written: no swing, and no note shorter than its value. */
const withoutSwing = (sheet: LineSheet): LineSheet => ({
  ...sheet,
  feel: { ...sheet.feel, swing: [] },
  bars: sheet.bars.map((bar) => ({
    ...bar,
    notes: bar.notes.map((each) => ({ ...each, note: { ...each.note, marks: {} } })),
  })),
});

/** What the bass plays straight, from its first note on: `start midi duration`, in ticks. */
function played(sheet: LineSheet): readonly string[] {
  const bass = performanceOf(withoutSwing(sheet)).events.flatMap((event) =>
    event.part === 'bass' ? [event] : [],
  );
  const first = bass[0]?.start ?? 0;
  return bass.map(({ start, midi, duration }) => `${start - first} ${midi} ${duration}`);
}

const lengths = (sheet: LineSheet): readonly number[] =>
  playOrder(sheet.chart).map((bar) => {
    const written = sheet.bars[bar]?.written;
    return written === undefined ? 0 : barTicks(written.metre);
  });

const quarters = ({ tempo, metre }: LineSheet): number => (tempo * beatTicks(metre)) / 960;

const cases = randomSheets(40)
  .filter((sheet) => sheet.bars.some(({ notes }) => notes.length > 0))
  .map((sheet, index) => ({ name: `line ${index}`, sheet }));

describe('a line that was written as MIDI and is read again', () => {
  it.each(cases)('$name has the same notes, bars and tempo, its repeats written out', ({ sheet }) => {
    const straight = withoutSwing(sheet);
    const read = readBack(fileOf(straight));
    const again = lineSheetOf(read.lesson);
    expect(played(again)).toEqual(played(straight));
    const bars = lengths(again);
    // Silent bars at the beginning are taken for a count-in; those at the end stand up to the end of the tracks.
    expect(` ${lengths(straight).join(' ')}`.endsWith(` ${bars.join(' ')}`)).toBe(true);
    const told = Math.min(220, Math.max(40, quarters(sheet) * (960 / beatTicks(again.metre))));
    expect(Math.abs(again.tempo - told)).toBeLessThanOrEqual(0.5);
  });

  const line = 'F1/1 C2/.5 F1/.5 A1/1 r/.5 C2/.5 | F1/.5 F1/.5 A1/.5 A1/.5 C2/.5 C2/.5 D2/.5 C2/.5';
  it.each(FEELS.map(({ id }) => id))(
    'is straight again after it was swung by the feel %s',
    (feel: FeelId) => {
      const sheet = sheetOf({ chart: '| F | F |', notes: line, key: 'F', feel, tempo: 120 });
      const { lesson } = readBack(fileOf(sheet));
      expect(played(lineSheetOf(lesson))).toEqual(played(sheet));
      const ratio = swingRatio(sheet.feel, sheet.tempo);
      const other = lineSheetOf(lesson);
      expect(swingRatio(other.feel, other.tempo) >= 1.15).toBe(ratio >= 1.15);
    },
  );

  it('has its key, sections and spelling, and no count-in', () => {
    const sheet = sheetOf({
      chart: 'Verse:\n| Gm | (3/4) Cm |\nBridge:\n| (key: D) D |',
      notes: 'G1/2 B♭1/2 | C2/1 E♭2/2 | F♯1/3',
      key: 'Gm',
    });
    const { lesson, sentences } = readBack(fileOf(sheet, 1));
    const read = lineSheetOf(lesson);
    expect(lesson.title).toBe('Ferry queue');
    expect(read.bars.map(({ notes }) => notes.map(({ note }) => formatPitch(note.pitch)).join(' '))).toEqual([
      'G1 B♭1',
      'C2 E♭2',
      'F♯1',
    ]);
    expect(read.bars.map(({ written }) => describeKey(written.key ?? read.key))).toEqual([
      'G minor',
      'G minor',
      'D major',
    ]);
    expect(read.chart.sections.map(({ name }) => name)).toEqual(['Verse', 'Bridge']);
    expect(sentences.join('\n')).toContain(
      'The first bar of the file has no note of a pitch and is left out.',
    );
    // The chops play what the chart says.
    expect(sentences.join('\n')).toContain('read from the notes of the part “Chops”');
    expect(
      read.bars.map(({ written }) => written.spans.map(({ harmony }) => harmonyText(harmony)).join(' ')),
    ).toEqual(['Gm', 'Cm', 'D']);
  });
});

type Event = readonly [delta: number, ...bytes: readonly number[]];
const text = (delta: number, kind: number, words: string): Event => [
  delta,
  0xff,
  kind,
  words.length,
  ...[...words].map((sign) => sign.charCodeAt(0)),
];
const bigEndian = (value: number, length: number): number[] =>
  Array.from({ length }, (_, index) => (value >>> (8 * (length - 1 - index))) & 255);

/** A file of 96 ticks a quarter; deltas below 128. */
function midi(format: number, division: number, ...tracks: readonly (readonly Event[])[]): Uint8Array {
  const chunk = (name: string, content: readonly number[]) => [
    ...[...name].map((sign) => sign.charCodeAt(0)),
    ...bigEndian(content.length, 4),
    ...content,
  ];
  return Uint8Array.from([
    ...chunk('MThd', [...bigEndian(format, 2), ...bigEndian(tracks.length, 2), ...bigEndian(division, 2)]),
    ...tracks.flatMap((events) => chunk('MTrk', [...events.flat(), 0, 0xff, 0x2f, 0])),
  ]);
}

const on = (delta: number, key: number, channel = 0): Event => [delta, 0x90 + channel, key, 90];
const off = (delta: number, key: number, channel = 0): Event => [delta, 0x80 + channel, key, 0];

describe('a player who is late alike', () => {
  /** Eighths at 96 ticks a quarter, `late` ticks late, the off-beats `later` ticks more. */
  const eighths = (late: number, later: number): Uint8Array => {
    const places = Array.from({ length: 16 }, (_, index) => 48 * index + late + (index % 2) * later);
    let before = 0;
    const events = places.flatMap((place): readonly Event[] => {
      const delta = place - before;
      before = place + 24;
      return [on(delta, 40), off(24, 40)];
    });
    return midi(0, 96, [...events]);
  };

  it.each([
    [6, 0, false],
    [9, 0, false],
    [0, 0, false],
    [0, 16, true],
    [8, 16, true],
  ])('%i ticks, with off-beats %i later, is swung: %s', (late, later, swung) => {
    const { lesson, sentences } = readBack(eighths(late, later));
    const sheet = lineSheetOf(lesson);
    const said = sentences.join('\n');
    expect(sheet.bars.flatMap(({ notes }) => notes.map(({ note }) => note.start % 480))).toEqual(
      Array.from({ length: 16 }, () => 0),
    );
    expect(said.includes('swung by the feel')).toBe(swung);
    expect(said.includes('late alike')).toBe(late > 0);
  });
});

describe('the end of the tracks', () => {
  it('tells of a silent last bar where it lies on a bar line', () => {
    const end = (delta: number) => readBack(midi(0, 96, [on(0, 40), off(96, 40), [delta, 0xff, 6, 1, 65]]));
    const sheet = sheetOf({ chart: '| C | F | C |', notes: 'C2/1 | r/4 | r/4', key: 'C' });
    expect(lineSheetOf(readBack(fileOf(sheet)).lesson).bars).toHaveLength(3);
    // Anywhere else it is where the writer of the file happened to stop.
    expect(lineSheetOf(end(100).lesson).bars).toHaveLength(1);
  });
});

describe('what stands in a MIDI file', () => {
  it('is read with running status, and a note-on of no strength ends its note', () => {
    const file = midi(0, 96, [
      [0, 0x90, 40, 90],
      [96, 40, 0],
      [0, 43, 90],
      [96, 43, 0],
    ]);
    const sheet = lineSheetOf(readBack(file).lesson);
    expect(sheet.bars[0]?.notes.map(({ note }) => `${formatPitch(note.pitch)} ${note.duration}`)).toEqual([
      'E2 960',
      'G2 960',
    ]);
  });

  it('is quantised: loose playing to sixteenths, three in a beat to a triplet', () => {
    const loose: Event[] = [on(0, 40), off(90, 40), on(9, 41), off(44, 41), on(2, 43), off(40, 43)];
    const three: Event[] = [on(7, 45), off(30, 45), on(2, 46), off(30, 46), on(2, 48), off(31, 48)];
    const sheet = lineSheetOf(readBack(midi(1, 96, [...loose, ...three])).lesson);
    expect(sheet.bars[0]?.notes.map(({ note }) => `${note.start}+${note.duration}`)).toEqual([
      '0+960',
      '960+480',
      '1440+480',
      '1920+320',
      '2240+320',
      '2560+320',
    ]);
  });

  it('gives the chords where its texts are chord symbols, and sections where letters only name them', () => {
    const bar: Event[] = [on(0, 41), off(127, 41), on(127, 41), off(127, 41)];
    const chords = midi(1, 96, [text(0, 1, 'Gm7'), text(127, 1, 'C7'), text(65, 1, 'C9')], bar);
    const sheet = lineSheetOf(readBack(chords).lesson);
    expect(sheet.bars[0]?.written.spans.map(({ harmony }) => harmonyText(harmony))).toEqual([
      'Gm7',
      'C7',
      'C9',
    ]);
    const letters = midi(1, 96, [text(0, 6, 'A'), text(127, 6, 'B')], [...bar, on(127, 43), off(127, 43)]);
    expect(lineSheetOf(readBack(letters).lesson).chart.sections.map(({ name }) => name)).toContain('A');
  });

  it('is the part of a bass sound, never percussion; the others can be asked for', () => {
    const file = midi(
      1,
      96,
      [text(0, 3, 'Low strings'), [0, 0xc0, 48], on(0, 30), off(96, 30)],
      [text(0, 3, 'Player'), [0, 0xc1, 33], on(0, 45, 1), off(96, 45, 1)],
      [text(0, 3, 'Kit'), on(0, 36, 9), off(96, 36, 9)],
    );
    const { lesson, parts } = readBack(file);
    expect(lineSheetOf(lesson).bars[0]?.notes.map(({ note }) => formatPitch(note.pitch))).toEqual(['A2']);
    expect(parts.all.map(({ name }) => name)).toEqual(['Low strings', 'Player']);
    const other = readBack(file, parts.all[0]?.id);
    expect(lineSheetOf(other.lesson).bars[0]?.notes.map(({ note }) => formatPitch(note.pitch))).toEqual([
      'F♯1',
    ]);
  });

  it('is called like its file where no track says otherwise, and what has no place is said', () => {
    const bent: Event = [10, 0xe0, 0, 100];
    const file = midi(1, 96, [], [text(0, 3, 'Player'), on(0, 40), bent, off(86, 40), on(0, 41), off(0, 41)]);
    const { lesson, sentences } = readBack(file);
    expect([lesson.title, lineSheetOf(lesson).name]).toEqual(['File', 'Player']);
    expect(sentences).toContain('Bends of the pitch are left out (bar 1).');
    expect(sentences).toContain('A note without any length is left out (bar 1).');
  });

  it('is refused where it has no bars or no notes, and read up to a fault', () => {
    expect(refusal(midi(2, 96, []))).toMatch(/format 2/);
    expect(refusal(midi(1, 0xe728, [on(0, 40), off(96, 40)]))).toMatch(/frames of film/);
    expect(refusal(midi(1, 96, [on(0, 36, 9), off(96, 36, 9)]))).toMatch(/no part with notes of a pitch/);
    expect(refusal(Uint8Array.from([0x4d, 0x54, 0x68, 0x64, 0, 0]))).toMatch(/cut off or damaged/);
    const whole = midi(1, 96, [on(0, 40), off(96, 40), on(0, 41), off(96, 41)]);
    const { sentences } = readBack(whole.subarray(0, -6));
    expect(sentences.join('\n')).toContain('The file is damaged; what stands before the fault is read.');
  });
});

/** A track that strikes so many sixteenths one after the other, in running status (MIDI 1.0). */
function sixteenths(count: number): Uint8Array {
  const events = Array.from({ length: count }, (_, index) => {
    const pitch = 30 + (index % 12);
    return [...(index === 0 ? [0, 0x90] : [0]), pitch, 80, 120, pitch, 0];
  });
  const track = [...events.flat(), 0, 0xff, 0x2f, 0];
  const length = [24, 16, 8, 0].map((shift) => (track.length >>> shift) & 255);
  // One track of format 0, 480 ticks a quarter note.
  return Uint8Array.from([
    ...[0x4d, 0x54, 0x68, 0x64, 0, 0, 0, 6, 0, 0, 0, 1, 1, 0xe0],
    ...[0x4d, 0x54, 0x72, 0x6b, ...length, ...track],
  ]);
}

it('reads of a file without end as much as a lesson can hold, says so, and the lesson can be opened again', () => {
  const { lesson, sentences } = readBack(sixteenths(11_000));
  expect(lineSheetOf(lesson).bars).toHaveLength(625);
  expect(sentences).toContain(
    'At most 10,000 notes are read: the bars from bar 626 of the file on are left out.',
  );
  expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
});

describe('a file that was played without a click', () => {
  /** Quarter, two eighths, two quarters a bar at `pace` beats a minute, on a file of 120 whose 96 ticks last a second. */
  const free = (pace: number, drift: number, jitter: number): Uint8Array => {
    const random = createRandom(7);
    let seconds = 0.31;
    const places = Array.from({ length: 50 }, (_, index) => {
      const at = seconds + (random.next() - 0.5) * 2 * jitter;
      const beats = index % 5 === 1 || index % 5 === 2 ? 0.5 : 1;
      seconds += (beats * 60) / (pace * (1 + drift * Math.sin(index / 8)));
      return Math.round(at * 96);
    });
    let before = 0;
    const events = places.flatMap((place, index): readonly Event[] => {
      const delta = place - before;
      before = place + 10;
      return [on(delta, 40 + (index % 5)), off(10, 40 + (index % 5))];
    });
    return midi(0, 48, [...events]);
  };
  const RHYTHM = [0, 960, 1440, 1920, 2880];

  it.each([
    [92, 0.02, 0.015],
    [71, 0.03, 0.01],
    [133, 0.02, 0.01],
  ])('at %i beats a minute is said to be, and its own beats can be chosen', (pace, drift, jitter) => {
    const file = free(pace, drift, jitter);
    const read = readBack(file);
    expect(read.sentences.join('\n')).toMatch(/It was played without a click: .* on whose grid it is read/);
    expect(read.pulses?.all.map(({ id }) => id)).toEqual(['file', 'playing']);
    expect(read.pulses?.read).toBe('file');
    const played = readBack(file, null, { octaves: 0, pulse: 'playing' });
    expect(played.sentences.join('\n')).toMatch(/The beats are found from the playing, about \d+ a minute/);
    const sheet = lineSheetOf(played.lesson);
    expect(Math.abs(sheet.tempo - pace) / pace).toBeLessThan(0.05);
    expect(sheet.bars.slice(0, 9).map(({ notes }) => notes.map(({ note }) => Number(note.start)))).toEqual(
      Array.from({ length: 9 }, () => RHYTHM),
    );
  });

  it('is not what a file is taken for that was played to its click, however loosely, swung or in triplets', () => {
    const random = createRandom(3);
    const loose = (places: readonly number[]): Uint8Array => {
      let before = 0;
      const events = places.flatMap((place, index): readonly Event[] => {
        const at = Math.max(before, place + Math.round((random.next() - 0.5) * 8));
        const delta = at - before;
        before = at + 10;
        return [on(delta, 40 + (index % 7)), off(10, 40 + (index % 7))];
      });
      return midi(0, 96, [...events]);
    };
    const many = (step: (index: number) => number) => Array.from({ length: 48 }, (_, index) => step(index));
    for (const places of [
      many((index) => index * 48),
      many((index) => Math.floor(index / 2) * 96 + (index % 2) * 62),
      many((index) => index * 32),
      many((index) => index * 24),
    ]) {
      const read = readBack(loose(places));
      expect(read.pulses).toBeUndefined();
      expect(read.sentences.join('\n')).not.toContain('click');
    }
  });
});

it('writes what was played on the grid that is chosen', () => {
  const file = midi(0, 96, [on(0, 40), off(20, 40), on(7, 41), off(20, 41), on(50, 43), off(20, 43)]);
  const starts = (grid: string | null) =>
    lineSheetOf(readBack(file, null, { octaves: 0, grid }).lesson).bars[0]?.notes.map(
      ({ note }) => note.start,
    );
  expect(starts(null)).toEqual([0, 240, 960]);
  expect(starts('sixteenths')).toEqual([0, 240, 960]);
  expect(starts('eighths')).toEqual([0, 480, 960]);
  expect(starts('triplets')).toEqual([0, 320, 960]);
  expect(readBack(file).grids?.all.map(({ id }) => id)).toEqual([
    'nearest',
    'eighths',
    'sixteenths',
    'triplets',
    'thirtySeconds',
  ]);
});

it('tells while it reads how much of it is read', async () => {
  const { readFile, LIKELIEST } = await loadReader();
  const shares: number[] = [];
  readFile(
    fileOf(cases[0]?.sheet ?? sheetOf({ chart: '| C |', notes: 'C2/4', key: 'C' })),
    'File',
    LIKELIEST,
    (share) => shares.push(share),
  );
  expect(shares.length).toBeGreaterThan(2);
  expect(shares).toEqual([...shares].sort((one, other) => one - other));
  expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
});
