import { bassPoints, HALF_STEPS_A_POINT } from '../reading/bass-part';
import type { MidiEvent } from './read-file';

/** A note as it is played, in ticks of the lesson. */
export interface PlayedNote {
  readonly start: number;
  readonly end: number;
  readonly key: number;
}

/** The notes of a track on channels of one sound. */
export interface MidiVoice {
  readonly id: string;
  /** The track's own; empty without one. */
  readonly name: string;
  /** From 0; null without one. */
  readonly program: number | null;
  readonly notes: readonly PlayedNote[];
  /** Where something of it has no place in a lesson, in ticks, and what that is. */
  readonly extras: readonly { readonly at: number; readonly what: 'bend' | 'note without length' }[];
}

const PERCUSSION = 9;
/** Keys a channel has. */
const KEYS = 128;

/**
 * Each note-on with a note-off of its key, the oldest first: files strike a key anew before they let it go. A note
 * that is never let go lasts until the end of its track.
 */
function notesOf(events: readonly MidiEvent[]): ReadonlyMap<number, readonly PlayedNote[]> {
  const channels = new Map<number, PlayedNote[]>();
  const sounding = new Map<number, number[]>();
  const end = (channel: number, key: number, at: number): void => {
    const start = sounding.get(channel * KEYS + key)?.shift();
    if (start === undefined) return;
    const notes = channels.get(channel) ?? [];
    notes.push({ start, end: at, key });
    channels.set(channel, notes);
  };
  for (const event of events) {
    if (event.kind === 'off') end(event.channel, event.key, event.at);
    if (event.kind !== 'on') continue;
    const place = event.channel * KEYS + event.key;
    const starts = sounding.get(place) ?? [];
    starts.push(event.at);
    sounding.set(place, starts);
  }
  const last = events.at(-1)?.at ?? 0;
  for (const [place, starts] of sounding) {
    while (starts.length > 0) end(Math.floor(place / KEYS), place % KEYS, last);
  }
  return channels;
}

const isEmpty = ({ start, end }: PlayedNote): boolean => end <= start;

function voicesOfTrack(events: readonly MidiEvent[], track: number): readonly MidiVoice[] {
  const programs = new Map<number, number>();
  let name = '';
  for (const event of events) {
    if (event.kind === 'program' && !programs.has(event.channel)) programs.set(event.channel, event.program);
    if (event.kind === 'text' && event.what === 'name' && name === '') name = event.text;
  }
  const voices = new Map<string, MidiVoice>();
  for (const [channel, notes] of notesOf(events)) {
    if (channel === PERCUSSION) continue;
    const program = programs.get(channel) ?? null;
    // Channels of one sound in one track are one player whose notes overlap.
    const id = program === null ? `${track} channel ${channel}` : `${track} ${program}`;
    const known = voices.get(id);
    const bends = events.filter((event) => event.kind === 'bend' && event.channel === channel);
    const extras = [
      ...bends.map(({ at }) => ({ at, what: 'bend' as const })),
      ...notes.filter(isEmpty).map(({ start }) => ({ at: start, what: 'note without length' as const })),
    ];
    voices.set(id, {
      id,
      name,
      program,
      notes: [...(known?.notes ?? []), ...notes],
      extras: [...(known?.extras ?? []), ...extras],
    });
  }
  return [...voices.values()]
    .map((voice) => ({
      ...voice,
      notes: voice.notes
        .filter((note) => !isEmpty(note))
        .sort((one, other) => one.start - other.start || one.key - other.key),
    }))
    .filter(({ notes }) => notes.length > 0);
}

/** Everything with a pitch, track by track; percussion is left out. */
export const voicesOf = (tracks: readonly (readonly MidiEvent[])[]): readonly MidiVoice[] =>
  tracks.flatMap(voicesOfTrack);

const meanKey = ({ notes }: MidiVoice): number =>
  notes.reduce((sum, { key }) => sum + key, 0) / Math.max(1, notes.length);

const namedBass = ({ program, name }: MidiVoice): number =>
  bassPoints(program === null ? null : program + 1, name);

/** The middle of the bass clef, D3: what lies below it as a whole is a bass; common practice, no source. */
const BASS_MIDDLE = 50;

/** Whether a voice is a bass, by its sound, its name or its height. */
export const isForBass = (voice: MidiVoice): boolean => namedBass(voice) > 0 || meanKey(voice) < BASS_MIDDLE;

const likelihood = (voice: MidiVoice): number => namedBass(voice) - meanKey(voice) / HALF_STEPS_A_POINT;

/** The voice that is most likely the bass line. */
export const likeliestVoice = (voices: readonly MidiVoice[]): MidiVoice | null =>
  voices.reduce<MidiVoice | null>(
    (best, voice) => (best === null || likelihood(voice) > likelihood(best) ? voice : best),
    null,
  );
