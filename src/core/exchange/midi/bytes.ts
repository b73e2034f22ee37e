import { strToU8 } from 'fflate';

/** A variable-length quantity, seven bits a byte, the highest first (Standard MIDI File 1.0, RP-001). */
export function variableLength(value: number): readonly number[] {
  const bytes = [value & 0x7f];
  for (let rest = value >>> 7; rest > 0; rest >>>= 7) bytes.unshift((rest & 0x7f) | 0x80);
  return bytes;
}

/** `length` bytes, the highest first. */
export const bigEndian = (value: number, length: number): readonly number[] =>
  Array.from({ length }, (_, index) => (value >>> (8 * (length - 1 - index))) & 0xff);

const CHANNEL_BITS = 0x0f;

/** Something that happens in a track; what happens at the same tick keeps its order. */
export interface TrackEvent {
  readonly tick: number;
  readonly bytes: readonly number[];
}

/** The kinds of text a track can hold, by their meta numbers. */
const TEXTS = { text: 0x01, 'track name': 0x03, marker: 0x06 } as const;

/** Text in UTF-8, which current readers expect where the standard knows only ASCII. */
export function textEvent(tick: number, kind: keyof typeof TEXTS, text: string): TrackEvent {
  const content = strToU8(text);
  return { tick, bytes: [0xff, TEXTS[kind], ...variableLength(content.length), ...content] };
}

export const metaEvent = (tick: number, kind: number, content: readonly number[]): TrackEvent => ({
  tick,
  bytes: [0xff, kind, ...variableLength(content.length), ...content],
});

export const noteOn = (tick: number, channel: number, note: number, velocity: number): TrackEvent => ({
  tick,
  bytes: [0x90 | (channel & CHANNEL_BITS), note, velocity],
});

export const noteOff = (tick: number, channel: number, note: number): TrackEvent => ({
  tick,
  bytes: [0x80 | (channel & CHANNEL_BITS), note, 0x40],
});

/** @param program as the byte has it, from 0 */
export const programChange = (channel: number, program: number): TrackEvent => ({
  tick: 0,
  bytes: [0xc0 | (channel & CHANNEL_BITS), program],
});

/** A controller's value from the beginning on. */
export const controlChange = (channel: number, controller: number, value: number): TrackEvent => ({
  tick: 0,
  bytes: [0xb0 | (channel & CHANNEL_BITS), controller, value],
});

const chunk = (name: string, content: readonly number[]): readonly number[] => [
  ...strToU8(name),
  ...bigEndian(content.length, 4),
  ...content,
];

/** A track chunk; events must be in time order. The track ends at `end` or with its last event. */
function trackChunk(events: readonly TrackEvent[], end: number): readonly number[] {
  const content: number[] = [];
  let now = 0;
  const last = metaEvent(Math.max(end, events.at(-1)?.tick ?? 0), 0x2f, []);
  for (const { tick, bytes } of [...events, last]) {
    content.push(...variableLength(tick - now), ...bytes);
    now = tick;
  }
  return chunk('MTrk', content);
}

/** A type 1 file: tracks that sound together, times in ticks of `division` a quarter note. */
export function midiFile(
  tracks: readonly (readonly TrackEvent[])[],
  division: number,
  end: number,
): Uint8Array {
  const header = chunk('MThd', [
    ...bigEndian(1, 2),
    ...bigEndian(tracks.length, 2),
    ...bigEndian(division, 2),
  ]);
  return new Uint8Array([...header, ...tracks.flatMap((events) => trackChunk(events, end))]);
}
