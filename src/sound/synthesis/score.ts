import { type Performance, type PerformanceEvent, secondsAt } from '../../core/performance';
import type { SoundGlide } from './glide';
import { roomed, roomTail } from './room';
import { type Stem, type Stems, silence, stemOf } from './stems';
import type { Kit, Voice } from './voices';

/** A voice at its place: samples from the beginning of the first round, the count-in before it negative. */
export interface PlacedVoice extends Voice {
  readonly stem: Stem;
  readonly at: number;
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
  readonly sampleRate: number;
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

const glidesOf = (performance: Performance, event: PerformanceEvent): readonly SoundGlide[] =>
  ('glides' in event ? (event.glides ?? []) : []).map(({ duration, ...glide }) => ({
    ...glide,
    seconds: secondsAt(performance, duration),
  }));

/** Gives every event its voice and its sample. */
export function placePerformance(performance: Performance, kit: Kit): PlacedPerformance {
  const { sampleRate } = kit;
  const countIn = sampleAt(performance, performance.countIn, sampleRate);
  const cuts = chokes(performance);
  const turns = new Map<string, number>();
  const before: PlacedVoice[] = [];
  const within: PlacedVoice[] = [];
  let chopStart = -1;
  let chopString = 0;
  let longest = 0;
  for (const event of performance.events) {
    const name = event.part === 'drums' ? event.sound : event.part;
    const turn = turns.get(name) ?? 0;
    turns.set(name, turn + 1);
    const voice = kit.voice(
      event,
      secondsAt(performance, event.duration),
      turn,
      glidesOf(performance, event),
    );
    const cut = cuts.get(event);
    const choked =
      cut === undefined
        ? voice
        : {
            ...voice,
            length: Math.min(voice.length, Math.round(secondsAt(performance, cut) * sampleRate)),
            release: Math.round(CHOKE * sampleRate),
          };
    chopString = event.part === 'chops' && event.start === chopStart ? chopString + 1 : 0;
    chopStart = event.part === 'chops' ? event.start : chopStart;
    const strum = event.part === 'chops' ? Math.round(chopString * STRUM * sampleRate) : 0;
    const at = sampleAt(performance, event.start, sampleRate) - countIn + strum;
    (event.start < performance.countIn ? before : within).push({
      ...choked,
      stem: stemOf(event),
      at,
    });
    longest = Math.max(longest, choked.length);
  }
  const round = sampleAt(performance, performance.end, sampleRate) - countIn;
  return { countIn, round, before, within, longest: longest + roomTail(sampleRate), sampleRate };
}

/** The last stretch of a voice, from full level to nothing, by its length; few lengths occur. */
const fades = new Map<number, Float32Array>();

function fadeOf(length: number): Float32Array {
  const known = fades.get(length);
  if (known !== undefined) {
    return known;
  }
  const fade = Float32Array.from(
    { length },
    (_, index) => 0.5 + 0.5 * Math.cos((Math.PI * (index + 1)) / length),
  );
  fades.set(length, fade);
  return fade;
}

/** Adds a voice to its stem, beginning at sample `at` of the stem, which may lie before its beginning. */
export function addVoice(stems: Stems, voice: PlacedVoice, at: number): void {
  const stem = stems[voice.stem];
  const { samples, gain, release } = voice;
  // Bit operations keep these whole numbers of the machine: the loops below are the mixer's whole work.
  const place = at | 0;
  const length = Math.min(voice.length, samples.length) | 0;
  const first = place < 0 ? -place | 0 : 0;
  const last = Math.min(length, stem.length - place) | 0;
  const fadeFrom = (length - release) | 0;
  const fade = fadeOf(release);
  const full = Math.min(last, fadeFrom) | 0;
  // Four at a time: the loop itself costs as much as one.
  const fours = (full - 3) | 0;
  let from = first;
  for (; from < fours; from = (from + 4) | 0) {
    const to = (place + from) | 0;
    stem[to] = (stem[to] ?? 0) + gain * (samples[from] ?? 0);
    stem[to + 1] = (stem[to + 1] ?? 0) + gain * (samples[from + 1] ?? 0);
    stem[to + 2] = (stem[to + 2] ?? 0) + gain * (samples[from + 2] ?? 0);
    stem[to + 3] = (stem[to + 3] ?? 0) + gain * (samples[from + 3] ?? 0);
  }
  for (let index = from; index < full; index += 1) {
    stem[place + index] = (stem[place + index] ?? 0) + gain * (samples[index] ?? 0);
  }
  for (let index = Math.max(first, full) | 0; index < last; index += 1) {
    stem[place + index] =
      (stem[place + index] ?? 0) + gain * (fade[index - fadeFrom] ?? 0) * (samples[index] ?? 0);
  }
}

/** As {@link addVoice}, but what reaches beyond the end of the stem comes round to its beginning. */
export function addVoiceRound(stems: Stems, voice: PlacedVoice): void {
  const round = stems[voice.stem].length;
  for (let at = voice.at; at + voice.length > 0; at -= round) {
    addVoice(stems, voice, at);
  }
}

/** Rounds played, or until stopped. */
export type Rounds = number | 'endless';

/**
 * The stems of one window of time, in samples from the beginning of the first round: every round in it, and
 * only what is struck at or after `begin`, in its room.
 */
export function renderWindow(
  placed: PlacedPerformance,
  rounds: Rounds,
  begin: number,
  from: number,
  to: number,
): Stems {
  const early = roomTail(placed.sampleRate);
  const dry = dryWindow(placed, rounds, begin, from - early, Math.max(from, to));
  return roomed(dry, early, placed.sampleRate);
}

function dryWindow(
  placed: PlacedPerformance,
  rounds: Rounds,
  begin: number,
  from: number,
  to: number,
): Stems {
  const stems = silence(Math.max(0, to - from));
  for (const voice of placed.before) {
    if (voice.at >= begin) {
      addVoice(stems, voice, voice.at - from);
    }
  }
  if (placed.round <= 0) {
    return stems;
  }
  const last = rounds === 'endless' ? Number.POSITIVE_INFINITY : rounds - 1;
  const firstRound = Math.max(0, Math.floor((from - placed.longest) / placed.round));
  for (let round = firstRound; round <= last && round * placed.round < to; round += 1) {
    for (const voice of placed.within) {
      const at = voice.at + round * placed.round;
      if (at >= begin && at < to && at + voice.length > from) {
        addVoice(stems, voice, at - from);
      }
    }
  }
  return stems;
}
