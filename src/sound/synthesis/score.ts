import { type Performance, type PerformanceEvent, secondsAt } from '../../core/performance';
import { addFaded, addParts, type Part } from './adding';
import type { SoundGlide } from './glide';
import { placeOf, roomTail } from './room';
import type { Roomed, Strung } from './roomed';
import { type Stem, type Stems, silence, stemOf } from './stems';
import type { Kit, Voice } from './voices';

/**
 * What is struck at once, at its place: samples from the beginning of the first round, the count-in before it negative.
 */
export interface PlacedVoice {
  readonly stem: Stem;
  /** The tick of the performance at which it is struck. */
  readonly start: number;
  readonly at: number;
  readonly gain: number;
  /** Samples until the last of it is let go, and until nothing of it is left, the room's answer included. */
  readonly length: number;
  readonly rings: number;
  /** What is added to the stem: a voice that stays dry, or what becomes of voices in their room. */
  readonly sound: Pick<Voice, 'samples' | 'release'> | (() => Roomed);
}

/** A performance in samples: what sounds once before the first round, and what sounds in every round. */
export interface PlacedPerformance {
  readonly countIn: number;
  /** Length of a round; every round has the same, so that loops do not wander. */
  readonly round: number;
  readonly before: readonly PlacedVoice[];
  readonly within: readonly PlacedVoice[];
  /** How long the longest voice goes on after its beginning, the room's answer included. */
  readonly longest: number;
}

const HATS: ReadonlySet<string> = new Set(['closed hat', 'open hat', 'foot hat']);

/** Seconds of fading when a closing hat silences an open one. */
const CHOKE = 0.012;

/** Seconds between one string of a chop and the next. */
const STRUM = 0.0025;

/** Ticks to samples, each rounded by itself, so that no error adds up. */
export const sampleAt = (performance: Performance, tick: number, sampleRate: number): number =>
  Math.round(secondsAt(performance, tick) * sampleRate);

/**
 * After how many ticks open hats are cut off by the next hat; the last of a round by the first of the next.
 * The events come in order of time.
 */
function chokes(performance: Performance): ReadonlyMap<PerformanceEvent, number> {
  const hats = performance.events.filter((event) => event.part === 'drums' && HATS.has(event.sound));
  const cuts = new Map<PerformanceEvent, number>();
  let later = (hats[0]?.start ?? 0) + performance.end - performance.countIn;
  let here = later;
  for (const event of [...hats].reverse()) {
    if (event.start < here) {
      later = here;
      here = event.start;
    }
    if (event.part === 'drums' && event.sound === 'open hat') {
      cuts.set(event, later - event.start);
    }
  }
  return cuts;
}

const NO_GLIDES: readonly SoundGlide[] = [];

const glidesOf = (performance: Performance, event: PerformanceEvent): readonly SoundGlide[] =>
  'glides' in event && event.glides !== undefined
    ? event.glides.map(({ duration, ...glide }) => ({ ...glide, seconds: secondsAt(performance, duration) }))
    : NO_GLIDES;

/** What is struck at once in one stem with one strength: where it sounds in a room, a chord is one sound. */
interface Struck {
  readonly stem: Stem;
  readonly start: number;
  readonly at: number;
  readonly gain: number;
  readonly strung: Strung[];
}

/** Gives every event its voice, shortened where a hat cuts it off, and its sample, string after string of a chop. */
function struckIn(performance: Performance, kit: Kit): readonly Struck[] {
  const { sampleRate } = kit;
  const cuts = chokes(performance);
  const turns = new Map<string, number>();
  const struck: Struck[] = [];
  const last = new Map<Stem, Struck>();
  let chopStart = -1;
  let chopString = 0;
  for (const event of performance.events) {
    const name = event.part === 'drums' ? event.sound : event.part;
    const turn = turns.get(name) ?? 0;
    turns.set(name, turn + 1);
    const whole = kit.voice(
      event,
      secondsAt(performance, event.duration),
      turn,
      glidesOf(performance, event),
    );
    const { samples, gain } = whole;
    let { length, release } = whole;
    const cut = cuts.get(event);
    if (cut !== undefined) {
      length = Math.min(length, Math.round(secondsAt(performance, cut) * sampleRate));
      release = Math.round(CHOKE * sampleRate);
    }
    let at = sampleAt(performance, event.start, sampleRate);
    if (event.part === 'chops') {
      chopString = event.start === chopStart ? chopString + 1 : 0;
      chopStart = event.start;
      at += Math.round(chopString * STRUM * sampleRate);
    }
    const stem = stemOf(event);
    const chord = last.get(stem);
    if (chord?.start === event.start && chord.gain === gain && placeOf(stem) !== null) {
      chord.strung.push({ samples, length, release, after: at - chord.at });
    } else {
      const single = { stem, start: event.start, at, gain, strung: [{ samples, length, release, after: 0 }] };
      struck.push(single);
      last.set(stem, single);
    }
  }
  return struck;
}

/** What was placed with the sounds of a kit: a long performance is asked for again and again, piece by piece. */
const placements = new WeakMap<Kit, WeakMap<Performance, PlacedPerformance>>();

/** Gives everything that is struck its sound and its sample; it is remembered as long as the performance is. */
export function placePerformance(performance: Performance, kit: Kit): PlacedPerformance {
  const known = placements.get(kit) ?? new WeakMap<Performance, PlacedPerformance>();
  placements.set(kit, known);
  const placed = known.get(performance) ?? place(performance, kit);
  known.set(performance, placed);
  return placed;
}

function place(performance: Performance, kit: Kit): PlacedPerformance {
  const { sampleRate } = kit;
  const countIn = sampleAt(performance, performance.countIn, sampleRate);
  const tail = roomTail(sampleRate);
  const before: PlacedVoice[] = [];
  const within: PlacedVoice[] = [];
  let longest = 0;
  for (const { stem, start, at, gain, strung } of struckIn(performance, kit)) {
    const [first] = strung;
    if (first === undefined) continue;
    const place = placeOf(stem);
    const length = strung.reduce((most, each) => Math.max(most, each.after + each.length), 0);
    (start < performance.countIn ? before : within).push({
      stem,
      start,
      at: at - countIn,
      gain,
      length,
      rings: place === null ? length : length + tail,
      sound: place === null ? first : kit.roomed.of(place, strung),
    });
    longest = Math.max(longest, length);
  }
  const round = sampleAt(performance, performance.end, sampleRate) - countIn;
  return { countIn, round, before, within, longest: longest + tail };
}

/** A voice that begins at a sample of the stems, which may lie before their beginning. */
export interface VoiceAt {
  readonly voice: PlacedVoice;
  readonly at: number;
}

/** Adds voices, each with what its room answers. */
export function addVoices(stems: Stems, voices: readonly VoiceAt[]): void {
  const { length } = stems.bass;
  const parts = new Map<Stem, { readonly at: number; readonly part: () => Part }[]>();
  const partsOf = (stem: Stem) => {
    const known = parts.get(stem) ?? [];
    parts.set(stem, known);
    return known;
  };
  for (const { voice, at } of voices) {
    const { stem, gain, sound } = voice;
    if (at + voice.rings <= 0 || at >= length) continue;
    if (typeof sound !== 'function') {
      addFaded(stems[stem], { at, gain, samples: sound.samples }, voice.length, sound.release);
      continue;
    }
    partsOf(stem).push({ at, part: () => ({ at, gain, samples: sound().own }) });
    const across = placeOf(stem)?.across;
    if (across) {
      partsOf(across).push({ at, part: () => ({ at, gain, samples: sound().across }) });
    }
  }
  for (const [stem, own] of parts) addParts(stems[stem], own);
}

/** As {@link addVoices}, but what reaches beyond the end of the stems comes round to their beginning. */
export function addVoicesRound(stems: Stems, voices: readonly PlacedVoice[]): void {
  const round = stems.bass.length;
  const all: VoiceAt[] = [];
  for (const voice of voices) {
    for (let { at } = voice; at + voice.rings > 0; at -= round) all.push({ voice, at });
  }
  addVoices(stems, all);
}

/** Rounds played, or until stopped. */
export type Rounds = number | 'endless';

/**
 * The stems of one window of time, in samples from the beginning of the first round: every round in it, and
 * only what is struck at or after `begin`, in its room.
 * @param stems - where it is mixed into: silence of that length
 */
export function renderWindow(
  placed: PlacedPerformance,
  rounds: Rounds,
  begin: number,
  from: number,
  to: number,
  stems: Stems = silence(Math.max(0, to - from)),
): Stems {
  const heard: VoiceAt[] = [];
  const hear = (voice: PlacedVoice, at: number): void => {
    if (at >= begin && at < to && at + voice.rings > from) heard.push({ voice, at: at - from });
  };
  for (const voice of placed.before) hear(voice, voice.at);
  const last = rounds === 'endless' ? Number.POSITIVE_INFINITY : rounds - 1;
  const firstRound = Math.max(0, Math.floor((from - placed.longest) / placed.round));
  for (let round = firstRound; placed.round > 0 && round <= last && round * placed.round < to; round += 1) {
    for (const voice of placed.within) hear(voice, voice.at + round * placed.round);
  }
  addVoices(stems, heard);
  return stems;
}
