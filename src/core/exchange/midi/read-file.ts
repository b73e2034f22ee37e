import { strFromU8 } from 'fflate';
import { failure, type Result, success, TICKS_PER_QUARTER } from '../../base';

/** Something that happens in a track, in ticks of the lesson (960 a quarter note), not rounded. */
export type MidiEvent = { readonly at: number } & (
  | { readonly kind: 'on' | 'off'; readonly channel: number; readonly key: number }
  /** The pitch leaves its key. */
  | { readonly kind: 'bend'; readonly channel: number }
  /** From 0, as the byte has it. */
  | { readonly kind: 'program'; readonly channel: number; readonly program: number }
  /** Quarter notes a minute. */
  | { readonly kind: 'tempo'; readonly quarters: number }
  | { readonly kind: 'metre'; readonly count: number; readonly unit: number }
  | { readonly kind: 'key'; readonly fifths: number; readonly minor: boolean }
  | { readonly kind: 'text'; readonly what: TextKind; readonly text: string }
);

export type TextKind = 'text' | 'copyright' | 'name' | 'lyric' | 'marker' | 'cue';

export interface MidiRead {
  readonly tracks: readonly (readonly MidiEvent[])[];
  /** Some track ends before its end, or holds what is no event. */
  readonly damaged: boolean;
  /** Where all tracks end, in ticks of the lesson; null where they end apart or do not say it. */
  readonly end: number | null;
}

/** Kinds of text by the numbers of their meta events (Standard MIDI File 1.0, MMA RP-001). */
const TEXTS: Readonly<Record<number, TextKind>> = {
  1: 'text',
  2: 'copyright',
  3: 'name',
  5: 'lyric',
  6: 'marker',
  7: 'cue',
};

const MOST_EVENTS = 600_000;
const MOST_TRACKS = 200;
const LONGEST_TEXT = 500;
/** Data bytes after a status byte, by its upper four bits. */
const DATA_BYTES: Readonly<Record<number, number>> = { 8: 2, 9: 2, 10: 2, 11: 2, 12: 1, 13: 1, 14: 2 };

/** The end of the data came too early. */
class CutShort extends Error {}

/** Reads bytes one after the other. */
class Bytes {
  private at = 0;
  constructor(private readonly bytes: Uint8Array) {}

  get left(): number {
    return this.bytes.length - this.at;
  }

  next(): number {
    const byte = this.bytes[this.at];
    if (byte === undefined) throw new CutShort();
    this.at += 1;
    return byte;
  }

  take(length: number): Uint8Array {
    if (length > this.left) throw new CutShort();
    this.at += length;
    return this.bytes.subarray(this.at - length, this.at);
  }

  /** As many as there are, at most `length`. */
  takeUpTo(length: number): Uint8Array {
    return this.take(Math.min(length, this.left));
  }

  number(length: number): number {
    return this.take(length).reduce((value, byte) => value * 256 + byte, 0);
  }

  /** Seven bits a byte, four bytes at most. */
  variable(): number {
    let value = 0;
    for (let count = 0; count < 4; count += 1) {
      const byte = this.next();
      value = value * 128 + (byte & 0x7f);
      if (byte < 0x80) return value;
    }
    throw new CutShort();
  }
}

/** UTF-8 where it is that, else a byte a sign: the standard knows ASCII, and files have both. */
function textOf(content: Uint8Array): string {
  const short = content.subarray(0, LONGEST_TEXT);
  const text = strFromU8(short);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: names in files end in zeros.
  return (text.includes('\uFFFD') ? strFromU8(short, true) : text).replace(/[\u0000-\u001f]+/g, ' ').trim();
}

const signed = (byte: number): number => (byte > 127 ? byte - 256 : byte);

/** What a meta event says; null for one that is not needed, or makes no sense. */
function metaEvent(at: number, type: number, content: Uint8Array): MidiEvent | null {
  const [first = 0, second = 0, third = 0] = content;
  const text = TEXTS[type];
  if (text !== undefined) return { at, kind: 'text', what: text, text: textOf(content) };
  if (type === 0x51 && content.length >= 3) {
    const microseconds = first * 65_536 + second * 256 + third;
    return microseconds === 0 ? null : { at, kind: 'tempo', quarters: 60_000_000 / microseconds };
  }
  if (type === 0x58 && content.length >= 2) {
    const sensible = first >= 1 && first <= 64 && second <= 5;
    return sensible ? { at, kind: 'metre', count: first, unit: 2 ** second } : null;
  }
  if (type === 0x59 && content.length >= 2) {
    const fifths = signed(first);
    return Math.abs(fifths) <= 7 ? { at, kind: 'key', fifths, minor: second === 1 } : null;
  }
  return null;
}

const END_OF_TRACK = 0x2f;
/** The middle of a pitch wheel's fourteen bits. */
const UNBENT = 8192;

/** What stands next in a track: something that is needed or not, its end, or what is no event. */
type Step = MidiEvent | 'not needed' | 'end' | 'no event';

/** Reads the events of a track one after the other. */
class TrackReader {
  /** Raw ticks from the beginning of the track. */
  private now = 0;
  private status = 0;
  constructor(
    private readonly bytes: Bytes,
    private readonly scale: number,
  ) {}

  /** The time of what was read last, in ticks of the lesson. */
  get time(): number {
    return this.now * this.scale;
  }

  step(): Step {
    this.now += this.bytes.variable();
    const first = this.bytes.next();
    if (first === 0xff) return this.meta();
    if (first === 0xf0 || first === 0xf7) {
      this.bytes.take(this.bytes.variable());
      return 'not needed';
    }
    return this.channelMessage(first);
  }

  private meta(): Step {
    const type = this.bytes.next();
    const content = this.bytes.take(this.bytes.variable());
    if (type === END_OF_TRACK) return 'end';
    return metaEvent(this.now * this.scale, type, content) ?? 'not needed';
  }

  /** A message without a status byte of its own has that of the one before. */
  private channelMessage(first: number): Step {
    const own = first >= 0x80;
    if (own) this.status = first;
    const count = DATA_BYTES[this.status >> 4];
    if (count === undefined) return 'no event';
    const one = own ? this.bytes.next() : first;
    const other = count === 2 ? this.bytes.next() : 0;
    return channelEvent(this.now * this.scale, this.status, one & 0x7f, other & 0x7f) ?? 'not needed';
  }
}

/** The events of one track; what was read before a fault stands. */
function readTrack(
  content: Uint8Array,
  scale: number,
  room: number,
): { readonly events: readonly MidiEvent[]; readonly whole: boolean; readonly end: number | null } {
  const events: MidiEvent[] = [];
  const bytes = new Bytes(content);
  const reader = new TrackReader(bytes, scale);
  try {
    while (bytes.left > 0 && events.length < room) {
      const step = reader.step();
      if (step === 'end') return { events, whole: true, end: reader.time };
      if (step === 'no event') return { events, whole: false, end: null };
      if (step !== 'not needed') events.push(step);
    }
  } catch (fault) {
    if (!(fault instanceof CutShort)) throw fault;
    return { events, whole: false, end: null };
  }
  return { events, whole: bytes.left === 0, end: null };
}

/** A note-on of no strength is a note-off. */
function channelEvent(at: number, status: number, one: number, other: number): MidiEvent | null {
  const channel = status & 0x0f;
  switch (status >> 4) {
    case 9:
      return { at, kind: other === 0 ? 'off' : 'on', channel, key: one };
    case 8:
      return { at, kind: 'off', channel, key: one };
    case 12:
      return { at, kind: 'program', channel, program: one };
    case 14:
      return one + other * 128 === UNBENT ? null : { at, kind: 'bend', channel };
    default:
      return null;
  }
}

const NOT_MIDI = 'This file begins like MIDI, but is cut off or damaged. Nothing was changed.';
const INDEPENDENT =
  'This MIDI file holds several pieces of music that do not belong together (format 2). Save the piece in format 0 or 1 and open it again. Nothing was changed.';
const FILM_TIME =
  'This MIDI file counts in frames of film instead of beats, so that it has no bars. Nothing was changed.';

/** The bytes from the MIDI header on: some files wrap it in another container. */
function unwrapped(file: Uint8Array): Uint8Array {
  if (strFromU8(file.subarray(0, 4), true) !== 'RIFF') return file;
  const head = strFromU8(file.subarray(0, 200), true).indexOf('MThd');
  return head < 0 ? file : file.subarray(head);
}

/**
 * Reads a Standard MIDI File of format 0 or 1 (MMA RP-001). Never throws; a track that is damaged gives what stands
 * before the fault.
 * @param tell - hears after each track how much is read, from 0 to 1
 */
export function readMidiFile(
  file: Uint8Array,
  tell: (share: number) => void = () => undefined,
): Result<MidiRead, { readonly message: string }> {
  const bytes = new Bytes(unwrapped(file));
  try {
    bytes.take(4);
    const header = new Bytes(bytes.take(bytes.number(4)));
    const format = header.number(2);
    header.number(2);
    const division = header.number(2);
    if (format > 1) return failure({ message: INDEPENDENT });
    if (division === 0 || division >= 0x8000) return failure({ message: FILM_TIME });
    return success(readTracks(bytes, TICKS_PER_QUARTER / division, tell));
  } catch (fault) {
    if (fault instanceof CutShort) return failure({ message: NOT_MIDI });
    throw fault;
  }
}

function readTracks(bytes: Bytes, scale: number, tell: (share: number) => void): MidiRead {
  const whole = Math.max(1, bytes.left);
  const tracks: (readonly MidiEvent[])[] = [];
  const ends = new Set<number | null>();
  let damaged = false;
  let room = MOST_EVENTS;
  while (bytes.left >= 8 && tracks.length < MOST_TRACKS) {
    const name = strFromU8(bytes.take(4), true);
    const length = bytes.number(4);
    damaged ||= length > bytes.left;
    const content = bytes.takeUpTo(length);
    // Chunks of other kinds are to be passed over.
    if (name !== 'MTrk') continue;
    const { events, whole: unbroken, end } = readTrack(content, scale, room);
    ends.add(end);
    damaged ||= !unbroken;
    room -= events.length;
    tracks.push(events);
    tell(1 - bytes.left / whole);
  }
  const [end = null] = ends;
  return { tracks, damaged, end: ends.size === 1 ? end : null };
}
