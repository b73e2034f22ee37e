/**
 * MIDI files read back by independent libraries: midi-file 1.2 (MIT) for the bytes, @tonejs/midi 2.0 (MIT) for
 * tracks and notes. File format: Standard MIDI File 1.0, MMA RP-001; sounds: General MIDI 1, MMA RP-003.
 */
import { Midi } from '@tonejs/midi';
import { type MidiData, parseMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { writeMidi } from '../../src/core/exchange';
import { variableLength } from '../../src/core/exchange/midi/bytes';
import type { LineSheet } from '../../src/core/lesson';
import { buildPerformance, type Performance } from '../../src/core/performance';
import { PARTS, type Part } from '../../src/core/playing';
import { sheetOf } from '../support/score-sheets';
import { randomSheets } from './random-sheets';

const ALL = new Set<Part>(PARTS);

const performanceOf = (sheet: LineSheet, countIn: 0 | 1 | 2 = 1): Performance =>
  buildPerformance(sheet, { tempo: sheet.tempo, countIn, passage: null });

const fileOf = (sheet: LineSheet, performance: Performance, parts: ReadonlySet<Part> = ALL): Uint8Array =>
  writeMidi({ performance, sheet, title: 'Ferry queue', parts });

interface Read {
  readonly start: number;
  readonly duration: number;
  readonly midi: number;
  readonly velocity: number;
}

/** A track's notes, each note-off paired with the note-on of its channel and key. */
function notesOf(track: MidiData['tracks'][number]): readonly Read[] {
  const sounding = new Map<string, { start: number; velocity: number }>();
  const notes: Read[] = [];
  let now = 0;
  for (const event of track) {
    now += event.deltaTime;
    if (event.type !== 'noteOn' && event.type !== 'noteOff') continue;
    const voice = `${event.channel} ${event.noteNumber}`;
    const before = sounding.get(voice);
    if (event.type === 'noteOn') {
      expect(before).toBeUndefined();
      sounding.set(voice, { start: now, velocity: event.velocity });
    } else if (before) {
      sounding.delete(voice);
      notes.push({
        start: before.start,
        duration: now - before.start,
        midi: event.noteNumber,
        velocity: before.velocity,
      });
    }
  }
  expect(sounding.size).toBe(0);
  return notes;
}

const trackNamed = (data: MidiData, name: string): MidiData['tracks'][number] | undefined =>
  data.tracks.find((track) => track.some((event) => event.type === 'trackName' && event.text === name));

const sorted = (notes: readonly Read[]): readonly string[] =>
  notes.map((note) => `${note.start} ${note.midi} ${note.duration} ${note.velocity}`).sort();

const PITCHED = ['bass', 'chops', 'organ'] as const;
const NAMES: Readonly<Record<Part, string>> = {
  bass: 'Bass',
  drums: 'Drums',
  chops: 'Chops',
  organ: 'Organ',
  click: 'Click',
};

/** Keys of the General MIDI percussion map (General MIDI 1, MMA RP-003, percussion key map). */
const GENERAL_MIDI = {
  kick: 36, // Bass Drum 1
  snare: 38, // Acoustic Snare
  rim: 37, // Side Stick
  'closed hat': 42, // Closed Hi Hat
  'open hat': 46, // Open Hi-Hat
  'foot hat': 44, // Pedal Hi-Hat
  ride: 51, // Ride Cymbal 1
  crash: 49, // Crash Cymbal 1
} as const;

describe('a MIDI file holds the performance to the tick', () => {
  it.each(randomSheets(30).map((sheet, index) => ({ sheet, name: `line ${index}` })))(
    '$name',
    ({ sheet }) => {
      const performance = performanceOf(sheet);
      const data = parseMidi(fileOf(sheet, performance));
      expect(data.header).toMatchObject({ format: 1, ticksPerBeat: 960 });
      for (const part of PITCHED) {
        const played = performance.events.flatMap((event) =>
          event.part === part
            ? [{ start: event.start, duration: event.duration, midi: event.midi, velocity: event.velocity }]
            : [],
        );
        expect(sorted(notesOf(trackNamed(data, NAMES[part]) ?? []))).toEqual(sorted(played));
      }
      const hits = performance.events.flatMap((event) =>
        event.part === 'drums' ? [`${event.start} ${GENERAL_MIDI[event.sound]}`] : [],
      );
      const read = notesOf(trackNamed(data, 'Drums') ?? []).map(({ start, midi }) => `${start} ${midi}`);
      expect(read.sort()).toEqual([...new Set(hits)].sort());
      const clicks = performance.events.flatMap((event) =>
        event.part === 'click' ? [`${event.start} ${event.velocity}`] : [],
      );
      const clicked = notesOf(trackNamed(data, 'Click') ?? []).map(
        ({ start, velocity }) => `${start} ${velocity}`,
      );
      expect(clicked.sort()).toEqual(clicks.sort());
    },
  );

  it('has the same notes for a second reader', () => {
    for (const sheet of randomSheets(5)) {
      const performance = performanceOf(sheet);
      const midi = new Midi(fileOf(sheet, performance));
      expect(midi.header.ppq).toBe(960);
      expect(midi.header.tempos[0]?.bpm).toBeCloseTo((sheet.tempo * performance.beat) / 960, 2);
      // This reader makes a track of each channel, and names the first of them: a note whose pitch still sounds, as one
      // that rings on does, is on another one of the same sound.
      const bass = midi.tracks
        .filter(({ instrument }) => instrument.number === 33)
        .flatMap(({ notes }) => notes);
      expect(bass.map((note) => `${note.ticks} ${note.midi} ${note.durationTicks}`).sort()).toEqual(
        performance.events
          .flatMap((event) =>
            event.part === 'bass' ? [`${event.start} ${event.midi} ${event.duration}`] : [],
          )
          .sort(),
      );
    }
  });
});

const sections = sheetOf({
  chart: 'Vers é:\n|: Gm | (3/4) C7 :|\nBridge:\n| (key: D) D | (6/8) A7 |',
  notes: 'G1/1 | C2/1 | D2/1 | A1/1',
  key: 'F',
  tempo: 120,
});

describe('what stands around the notes', () => {
  const data = parseMidi(fileOf(sections, performanceOf(sections)));
  const conductor = data.tracks[0] ?? [];
  const timed = conductor.reduce<{
    now: number;
    list: { tick: number; event: (typeof conductor)[number] }[];
  }>(
    ({ now, list }, event) => ({
      now: now + event.deltaTime,
      list: [...list, { tick: now + event.deltaTime, event }],
    }),
    { now: 0, list: [] },
  ).list;

  it('names the piece, the tempo and the metres', () => {
    expect(conductor[0]).toMatchObject({ type: 'trackName', text: 'Ferry queue' });
    expect(conductor.find((event) => event.type === 'setTempo')).toMatchObject({
      // 120 quarters a minute are 500,000 microseconds each, by the standard.
      microsecondsPerBeat: 500_000,
    });
    const metres = timed.flatMap(({ tick, event }) =>
      event.type === 'timeSignature'
        ? [`${tick}: ${event.numerator}/${event.denominator} ${event.metronome}`]
        : [],
    );
    // One bar of count-in, then 4/4 and 3/4 twice, then the bridge in 3/4 and 6/8: a click every 24 clocks, or
    // every 36 in 6/8, as in the standard's own example.
    expect(metres).toEqual([
      '0: 4/4 24',
      `${3840 * 2}: 3/4 24`,
      `${3840 * 2 + 2880}: 4/4 24`,
      `${3840 * 3 + 2880}: 3/4 24`,
      `${3840 * 3 + 2880 * 3}: 6/8 36`,
    ]);
  });

  it('names the keys and, wherever they are played, the sections', () => {
    const keys = timed.flatMap(({ tick, event }) =>
      event.type === 'keySignature' ? [`${tick}: ${event.key} ${event.scale}`] : [],
    );
    expect(keys).toEqual(['0: -1 0', `${3840 * 3 + 2880 * 2}: 2 0`]);
    const markers = timed.flatMap(({ tick, event }) => {
      if (event.type !== 'marker') return [];
      return [
        `${tick}: ${new TextDecoder().decode(Uint8Array.from(event.text, (sign) => sign.charCodeAt(0)))}`,
      ];
    });
    expect(markers).toEqual(['3840: Vers é', `${3840 * 2 + 2880}: Vers é`, `${3840 * 3 + 2880 * 2}: Bridge`]);
  });

  // General MIDI 1, MMA RP-003, programmes counted from 1: 34 Electric Bass (finger), 28 Electric Guitar (clean),
  // 17 Drawbar Organ; percussion on channel 10.
  it('asks for sounds of General MIDI: a fingered electric bass, a clean guitar, a drawbar organ', () => {
    const programs = data.tracks.flatMap((track) =>
      track.flatMap((event) => (event.type === 'programChange' ? [event.programNumber + 1] : [])),
    );
    expect([...new Set(programs)]).toEqual([34, 28, 17]);
    const percussion = trackNamed(data, 'Drums')?.flatMap((event) =>
      event.type === 'noteOn' ? [event.channel + 1] : [],
    );
    expect(new Set(percussion)).toEqual(new Set([10]));
  });

  it('leaves out the parts that are not wanted, and keeps the count-in', () => {
    const few = parseMidi(fileOf(sections, performanceOf(sections), new Set<Part>(['bass'])));
    expect(few.tracks).toHaveLength(3);
    expect(notesOf(trackNamed(few, 'Click') ?? [])).toHaveLength(4);
    expect(trackNamed(few, 'Drums')).toBeUndefined();
  });
});

describe('slides', () => {
  const sheet = sheetOf({
    key: 'C',
    chart: '| C | F |',
    notes: 'C2/2{slide} G2/2 | F1/1{slide_from_below} A1/1 C2/2{slide_down}',
  });
  const track =
    trackNamed(parseMidi(fileOf(sheet, performanceOf(sheet, 0), new Set<Part>(['bass']))), 'Bass') ?? [];

  // Registered parameter 0 is the wheel's reach, its middle 0 as midi-file reads it (MIDI 1.0, MMA RP-018).
  it('are bends within a reach of an octave, which end in the middle of the wheel', () => {
    const controls = track.flatMap((event) =>
      event.type === 'controller' ? [[event.controllerType, event.value]] : [],
    );
    expect(controls.slice(0, 3)).toEqual([
      [101, 0],
      [100, 0],
      [6, 12],
    ]);
    const bends = track.flatMap((event) => (event.type === 'pitchBend' ? [event.value] : []));
    expect(Math.max(...bends)).toBe(Math.round((7 / 12) * 8192));
    expect(Math.min(...bends)).toBe(-Math.round((5 / 12) * 8192));
    let now = 0;
    let wheel = 0;
    for (const event of track) {
      now += event.deltaTime;
      if (event.type === 'pitchBend') wheel = event.value;
      if (event.type === 'noteOn' && event.noteNumber !== 29) expect(wheel, String(now)).toBe(0);
    }
    expect(wheel).toBe(0);
  });

  it('ask for nothing where a line has none', () => {
    const plain = parseMidi(fileOf(sections, performanceOf(sections), new Set<Part>(['bass'])));
    const kinds = plain.tracks.flatMap((events) => events.map(({ type }) => type));
    expect(kinds).not.toContain('controller');
    expect(kinds).not.toContain('pitchBend');
  });
});

describe('the bytes', () => {
  /** The values that the standard prints for its variable-length quantity. */
  it.each([
    [0x00, '00'],
    [0x40, '40'],
    [0x7f, '7f'],
    [0x80, '81 00'],
    [0x2000, 'c0 00'],
    [0x3fff, 'ff 7f'],
    [0x4000, '81 80 00'],
    [0x100000, 'c0 80 00'],
    [0x1fffff, 'ff ff 7f'],
    [0x200000, '81 80 80 00'],
    [0x8000000, 'c0 80 80 00'],
    [0xfffffff, 'ff ff ff 7f'],
  ])('%i is %s', (value, bytes) => {
    expect(
      variableLength(value)
        .map((byte) => byte.toString(16).padStart(2, '0'))
        .join(' '),
    ).toBe(bytes);
  });

  it('are the same for the same performance', () => {
    expect(fileOf(sections, performanceOf(sections))).toEqual(fileOf(sections, performanceOf(sections)));
  });
});

describe('volumes', () => {
  // General MIDI 2 (MMA RP-024): controller 7 is heard as 40 log (value / 127) decibels; half of the usual 100 is −12 dB.
  it('are channel volumes of the pitched parts, and in the strokes of drums and click, which share a channel', () => {
    const sheet = sheetOf({ chart: '| C | F |', notes: '' });
    const performance = performanceOf(sheet);
    const read = (volumes?: Partial<Record<Part, number>>) =>
      parseMidi(
        writeMidi({ performance, sheet, title: 'Ferry queue', parts: ALL, ...(volumes && { volumes }) }),
      );
    const volumeOf = (data: MidiData, part: string) =>
      trackNamed(data, part)?.flatMap((event) =>
        event.type === 'controller' && event.controllerType === 7 ? [event.value] : [],
      );
    const half = read({ chops: 0.25, drums: 0.25 });
    expect(volumeOf(half, 'Chops')).toEqual([50]);
    expect(volumeOf(half, 'Organ')).toEqual([]);
    expect(volumeOf(read(), 'Chops')).toEqual([]);
    const strengths = (data: MidiData, part: string) =>
      notesOf(trackNamed(data, part) ?? []).map(({ velocity }) => velocity);
    expect(strengths(half, 'Drums')).toEqual(strengths(read(), 'Drums').map((one) => Math.round(one / 2)));
    expect(strengths(half, 'Click')).toEqual(strengths(read(), 'Click'));
  });

  it('count-in is played with the sticks’ key, the click with its own', () => {
    const sheet = sheetOf({ chart: '| C | F |', notes: '' });
    const data = parseMidi(fileOf(sheet, performanceOf(sheet)));
    const keys = notesOf(trackNamed(data, 'Click') ?? []).map(({ midi }) => midi);
    expect(keys).toEqual([37, 37, 37, 37, 76, 77, 77, 77, 76, 77, 77, 77]);
  });
});
