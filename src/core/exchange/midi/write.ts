import { beatTicks, type Metre, sameMetre, TICKS_PER_QUARTER } from '../../base';
import type { DrumSound } from '../../feel';
import type { LineSheet } from '../../lesson';
import type { Glide, Performance, PerformanceEvent } from '../../performance';
import { PARTS, type Part } from '../../playing';
import { hasMinorThird, type Key, sameKey } from '../../theory';
import { FEEL_TEXT } from '../own-words';
import { keyAt, signatureOf } from '../signature';
import { bendRange, bendsOf } from './bends';
import {
  bigEndian,
  controlChange,
  metaEvent,
  midiFile,
  noteOff,
  noteOn,
  programChange,
  type TrackEvent,
  textEvent,
} from './bytes';

const PERCUSSION_CHANNEL = 9;

/** Controller 7, its usual value, and how it is heard: 40 log (value / 127) decibels (General MIDI 2, MMA RP-024). */
const VOLUME = { controller: 7, usual: 100 } as const;

/** The volume of a channel, as a factor of the usual one. */
const channelVolume = (channel: number, factor: number): TrackEvent =>
  controlChange(channel, VOLUME.controller, Math.round(VOLUME.usual * Math.sqrt(factor)));

interface Voice {
  readonly name: string;
  readonly channel: number;
  /** Takes a note whose pitch still sounds on the first channel. */
  readonly spareChannel: number;
  /** As the byte has it, from 0 (General MIDI 1 sound set, MMA RP-003); null on the percussion channel. */
  readonly program: number | null;
}

const VOICES: Readonly<Record<Part, Voice>> = {
  // Electric Bass (finger)
  bass: { name: 'Bass', channel: 0, spareChannel: 4, program: 33 },
  drums: { name: 'Drums', channel: PERCUSSION_CHANNEL, spareChannel: PERCUSSION_CHANNEL, program: null },
  // Electric Guitar (clean)
  chops: { name: 'Chops', channel: 1, spareChannel: 5, program: 27 },
  // Drawbar Organ
  organ: { name: 'Organ', channel: 2, spareChannel: 6, program: 16 },
  click: { name: 'Click', channel: PERCUSSION_CHANNEL, spareChannel: PERCUSSION_CHANNEL, program: null },
};

/** Percussion keys of General MIDI 1 (MMA RP-003). */
const DRUM_KEYS: Readonly<Record<DrumSound, number>> = {
  kick: 36,
  snare: 38,
  rim: 37,
  'closed hat': 42,
  'open hat': 46,
  'foot hat': 44,
  ride: 51,
  crash: 49,
};
/** The count-in is the drummer's sticks, for which the first General MIDI has the side stick only. */
const CLICK_KEYS = { accent: 76, beat: 77, countIn: 37 } as const;

function keyOf(event: PerformanceEvent): number {
  switch (event.part) {
    case 'drums':
      return DRUM_KEYS[event.sound];
    case 'click':
      if (event.countIn) return CLICK_KEYS.countIn;
      return event.accent ? CLICK_KEYS.accent : CLICK_KEYS.beat;
    default:
      return event.midi;
  }
}

/** At one tick, what ends comes before what begins. */
const inOrder = (one: TrackEvent, other: TrackEvent): number =>
  one.tick - other.tick || rank(one) - rank(other);
const rank = ({ bytes: [status = 0] }: TrackEvent): number =>
  status >= 0xf0 ? 0 : status >= 0xc0 ? 1 : status < 0x90 ? 2 : 3;

interface PartNote {
  readonly start: number;
  end: number;
  readonly channel: number;
  readonly key: number;
  readonly velocity: number;
  readonly glides: readonly Glide[];
}

/**
 * One part. Drums and clicks share a channel, so that their volumes are in their strokes. Slides are bends of the pitch. A note whose pitch still sounds goes to the spare channel; on the percussion channel, where a key has
 * no length to speak of, the earlier one ends instead.
 */
function partTrack(part: Part, events: readonly PerformanceEvent[], volume: number): readonly TrackEvent[] {
  const { name, channel, spareChannel, program } = VOICES[part];
  const notes: PartNote[] = [];
  const sounding = new Map<string, { end: number }>();
  for (const event of events) {
    const key = keyOf(event);
    const end = event.start + event.duration;
    const before = sounding.get(`${channel} ${key}`);
    const taken = before !== undefined && before.end > event.start;
    if (taken && program === null) before.end = event.start;
    const note = {
      start: event.start,
      end,
      channel: taken ? spareChannel : channel,
      key,
      velocity:
        program === null ? Math.max(1, Math.round(event.velocity * Math.sqrt(volume))) : event.velocity,
      glides: 'glides' in event ? (event.glides ?? []) : [],
    };
    notes.push(note);
    sounding.set(`${note.channel} ${key}`, note);
  }
  const used = new Set([channel, ...notes.map((note) => note.channel)]);
  const bent = new Set(notes.filter(({ glides }) => glides.length > 0).map((note) => note.channel));
  return [
    textEvent(0, 'track name', name),
    ...(program === null ? [] : [...used].map((one) => programChange(one, program))),
    ...(program === null || volume === 1 ? [] : [...used].map((one) => channelVolume(one, volume))),
    ...[...bent].flatMap(bendRange),
    ...notes
      .filter((note) => note.end > note.start)
      .flatMap((note) => [
        noteOn(note.start, note.channel, note.key, note.velocity),
        noteOff(note.end, note.channel, note.key),
        ...bendsOf(note, note.glides),
      ]),
  ].sort(inOrder);
}

/** Microseconds a quarter note; three bytes hold no tempo below 3.6 quarters a minute. */
function tempoEvent({ tempo, beat }: Performance): TrackEvent {
  const microseconds = Math.round((60_000_000 / tempo) * (TICKS_PER_QUARTER / beat));
  return metaEvent(0, 0x51, bigEndian(Math.min(microseconds, 0xff_ffff), 3));
}

/** Beats in the written unit, its power of two, 24 clocks a quarter for the counted beat, eight 32nds a quarter. */
const metreEvent = (tick: number, metre: Metre): TrackEvent =>
  metaEvent(tick, 0x58, [metre.count, Math.log2(metre.unit), (beatTicks(metre) * 24) / TICKS_PER_QUARTER, 8]);

const keyEvent = (tick: number, key: Key): TrackEvent =>
  metaEvent(tick, 0x59, [signatureOf(key) & 0xff, hasMinorThird(key.mode) ? 1 : 0]);

/** Tempo, metres, keys, and the name of each section wherever it begins to be played. */
function conductorTrack(performance: Performance, sheet: LineSheet, title: string): readonly TrackEvent[] {
  const events = [
    textEvent(0, 'track name', title),
    textEvent(0, 'text', FEEL_TEXT + sheet.feel.id),
    tempoEvent(performance),
  ];
  let metre: Metre | null = null;
  let key: Key | null = null;
  const counted = sheet.bars.find((bar) => !bar.written.pickup)?.written.metre ?? sheet.metre;
  if (performance.countIn > 0) {
    metre = counted;
    events.push(metreEvent(0, metre));
  }
  for (const { bar, start } of performance.bars) {
    const written = sheet.bars[bar]?.written;
    if (!written) continue;
    const barKey = keyAt(sheet, bar);
    if (metre === null || !sameMetre(metre, written.metre)) events.push(metreEvent(start, written.metre));
    if (key === null || !sameKey(key, barKey)) events.push(keyEvent(key === null ? 0 : start, barKey));
    metre = written.metre;
    key = barKey;
    const section = sheet.chart.sections[written.section];
    if (section?.start === bar && section.name !== null)
      events.push(textEvent(start, 'marker', section.name));
  }
  return events.sort((one, other) => one.tick - other.tick);
}

export interface MidiRequest {
  readonly performance: Performance;
  /** The sheet that the performance plays. */
  readonly sheet: LineSheet;
  readonly title: string;
  /** Parts with a track of their own; clicks of the count-in are there whenever the performance has them. */
  readonly parts: ReadonlySet<Part>;
  /** How loud a part is against its place in the mix; 1 when left out. */
  readonly volumes?: Readonly<Partial<Record<Part, number>>>;
}

/**
 * A performance as a Standard MIDI File of type 1, 960 ticks a quarter note, every event at its own tick: a first
 * track for tempo, metre, key and sections, then one named track a part.
 */
export function writeMidi({ performance, sheet, title, parts, volumes = {} }: MidiRequest): Uint8Array {
  const byPart = PARTS.map((part) => ({
    part,
    events: performance.events.filter(
      (event) => event.part === part && (parts.has(part) || (event.part === 'click' && event.countIn)),
    ),
  })).filter(({ events }) => events.length > 0);
  const tracks = [
    conductorTrack(performance, sheet, title),
    ...byPart.map(({ part, events }) => partTrack(part, events, volumes[part] ?? 1)),
  ];
  return midiFile(tracks, TICKS_PER_QUARTER, performance.end);
}
