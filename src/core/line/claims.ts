import { type HeardLine, isSilentOnOne, silenceOf, struck } from './hearing';
import { type BarModel, changesBetween, type LineModel } from './model';
import { isHome, isStep, type Tone } from './tones';
import type { NoteAnalysis, Technique } from './types';

/**
 * What a reason says about a bar, as data: `wording` puts it into a sentence, and a test holds each claim against
 * the notes. Notes are given by their index in the bar, ticks from its beginning.
 */
export type Claim =
  | { readonly kind: 'rest'; readonly chord: boolean }
  /** Beat one is silent; `answers` is the written bar before, where that one sounds on its beat one. */
  | { readonly kind: 'silent one'; readonly enters: number; readonly answers: number | null }
  | { readonly kind: 'silence'; readonly beats: number }
  | { readonly kind: 'anticipation'; readonly note: number }
  | { readonly kind: 'octave'; readonly note: number }
  /** The notes from this one to the bar's last go by step in one direction to the next bar's root. */
  | { readonly kind: 'walk'; readonly from: number; readonly target: Tone }
  | { readonly kind: 'passing' | 'neighbour' | 'step'; readonly note: number }
  /** The last note leads to the next bar's root by a half step, a whole step, or as its fifth. */
  | { readonly kind: 'lead'; readonly note: number; readonly target: Tone }
  /** Chord tones under one chord, in a direction where they keep to one. */
  | { readonly kind: 'spells'; readonly notes: readonly number[]; readonly direction: 'up' | 'down' | 'both' }
  /** One note of one chord, alone or repeated. */
  | { readonly kind: 'carries'; readonly note: number }
  | { readonly kind: 'roots'; readonly notes: readonly number[] }
  /** Chord tones under several chords. */
  | { readonly kind: 'change'; readonly notes: readonly number[] }
  | { readonly kind: 'rhythm'; readonly bar: number }
  /** The third, which tells major from minor. */
  | { readonly kind: 'third'; readonly note: number; readonly quality: 'major' | 'minor' }
  | { readonly kind: 'open' };

/** The analysis of a bar's notes, as far as a claim asks for it. */
export interface Facts {
  readonly notes: readonly NoteAnalysis[];
  readonly techniques: readonly Technique[];
}

interface Scene {
  readonly model: LineModel;
  readonly heard: HeardLine;
  readonly bar: BarModel;
  readonly tones: readonly Tone[];
  readonly facts: Facts;
}

/** The silence: an empty beat one, or half a bar and more. */
function spaceClaim({ heard, bar, tones }: Scene): Claim | null {
  const first = tones[0];
  if (!first) return null;
  if (isSilentOnOne(tones)) {
    const before = bar.before.length === 1 ? bar.before[0] : undefined;
    const asked =
      before !== undefined &&
      before === bar.index - 1 &&
      (heard[before]?.length ?? 0) > 0 &&
      !isSilentOnOne(heard[before] ?? []);
    return { kind: 'silent one', enters: first.start, answers: asked ? before : null };
  }
  const beats = Math.floor(silenceOf(tones, bar.ticks).longest / bar.beat);
  return beats > 0 ? { kind: 'silence', beats } : null;
}

function directionOf(tones: readonly Tone[]): 'up' | 'down' | 'both' {
  const distances = tones.slice(1).map((tone, index) => tone.midi - (tones[index]?.midi ?? tone.midi));
  if (distances.every((distance) => distance >= 0) && distances.some((distance) => distance > 0)) return 'up';
  return distances.every((distance) => distance <= 0) && distances.some((distance) => distance < 0)
    ? 'down'
    : 'both';
}

/** The chord tones: what they spell and which way they move. */
function chordClaim({ tones, facts }: Scene): Claim | null {
  const notes = tones.flatMap((_, index) => (facts.notes[index]?.function === 'chord tone' ? [index] : []));
  const [first] = notes;
  const members = notes.flatMap((index) => tones[index] ?? []);
  if (first === undefined) return null;
  const several = new Set(members.map((tone) => tone.stretch)).size > 1;
  const texts = new Set(notes.map((index) => facts.notes[index]?.degreeText));
  if (several) return members.every(isHome) ? { kind: 'roots', notes } : { kind: 'change', notes };
  if (texts.size === 1) return { kind: 'carries', note: first };
  return { kind: 'spells', notes, direction: directionOf(members) };
}

/** The first note outside the chord and where it moves. */
function stepClaim({ tones, facts }: Scene): Claim | null {
  const note = facts.notes.findIndex(
    ({ function: role }) => role === 'passing' || role === 'neighbour' || role === 'scale step',
  );
  const [tone, before, after] = [tones[note], tones[note - 1], tones[note + 1]];
  if (!tone) return null;
  const role = facts.notes[note]?.function;
  if (role === 'passing' && before && after && before.midi !== tone.midi && after.midi !== tone.midi)
    return { kind: 'passing', note };
  return role === 'neighbour' && before && before.midi !== tone.midi
    ? { kind: 'neighbour', note }
    : { kind: 'step', note };
}

/** The last notes as a walk by step into the next root, two notes at least and one of them outside the chord. */
function walkClaim({ tones }: Scene, target: Tone): Claim | null {
  const last = tones.at(-1);
  if (!last || !isStep(last.midi, target.midi)) return null;
  const direction = Math.sign(target.midi - last.midi);
  let from = tones.length - 1;
  while (from > 0) {
    const [before, here] = [tones[from - 1], tones[from]];
    if (!before || !here || !isStep(before.midi, here.midi)) break;
    if (Math.sign(here.midi - before.midi) !== direction) break;
    from -= 1;
  }
  const walk = tones.slice(from);
  return walk.length < 2 || walk.every((tone) => tone.member) ? null : { kind: 'walk', from, target };
}

/** The first note of whatever follows, where every bar that can follow begins with the same new root. */
function targetOf({ model, heard, bar }: Scene): Tone | null {
  const firsts = bar.after.map((index) => {
    const next = model.bars[index];
    const first = heard[index]?.[0];
    return next && first && changesBetween(bar, next) && isHome(first) ? first : null;
  });
  const target = firsts[0] ?? null;
  return firsts.every((first) => first?.midi === target?.midi) ? target : null;
}

/** How the last note leads into the next root. */
function leadClaim({ tones }: Scene, target: Tone): Claim | null {
  const last = tones.at(-1);
  if (!last) return null;
  const distance = target.midi - last.midi;
  return Math.abs(distance) === 1 || Math.abs(distance) === 2 || distance === 5 || distance === -7
    ? { kind: 'lead', note: tones.length - 1, target }
    : null;
}

function rhythmClaim({ model, heard, bar, tones }: Scene): Claim | null {
  const pattern = (notes: readonly Tone[]) =>
    struck(notes)
      .map((tone) => tone.start)
      .join(' ');
  const section = model.request.chart.bars[bar.index]?.section ?? 0;
  const start = model.request.chart.sections[section]?.start ?? 0;
  const statement = heard[start] ?? [];
  return start !== bar.index && statement.length > 0 && pattern(statement) === pattern(tones)
    ? { kind: 'rhythm', bar: start }
    : null;
}

function specialClaim({ tones, facts }: Scene): Claim | null {
  const note = facts.notes.findIndex(({ function: role }) => role === 'anticipation');
  if (note >= 0) return { kind: 'anticipation', note };
  const octave = tones.findIndex(
    (tone, place) => Math.abs(tone.midi - (tones[place - 1]?.midi ?? tone.midi)) === 12,
  );
  return octave >= 0 ? { kind: 'octave', note: octave } : null;
}

/** What the ear can hold on to: the note that makes the first chord major or minor. */
function thirdClaim({ tones }: Scene): Claim | null {
  const note = tones.findIndex(
    (tone) => tone.member && (tone.interval === 3 || tone.interval === 4) && tone.stretch?.steps[2]?.member,
  );
  const tone = tones[note];
  if (!tone?.stretch || (tone.stretch.members[3] && tone.stretch.members[4])) return null;
  return { kind: 'third', note, quality: tone.interval === 4 ? 'major' : 'minor' };
}

/** Claims beside the one about listening. */
const MOST_CLAIMS = 2;

/** What is worth saying about a bar, the most telling first; every claim is true of the notes. */
export function claimsFor(model: LineModel, heard: HeardLine, bar: BarModel, facts: Facts): readonly Claim[] {
  const tones = heard[bar.index] ?? [];
  if (tones.length === 0) return [{ kind: 'rest', chord: bar.playable }];
  const scene: Scene = { model, heard, bar, tones, facts };
  const has = (technique: Technique) => facts.techniques.includes(technique);
  const target = targetOf(scene);
  const walk = target ? walkClaim(scene, target) : null;
  const lead = target ? leadClaim(scene, target) : null;
  const claims = [
    has('space') ? spaceClaim(scene) : null,
    specialClaim(scene),
    walk ?? (has('scale steps') ? stepClaim(scene) : null),
    walk ? null : lead,
    chordClaim(scene),
    rhythmClaim(scene),
  ].filter((claim) => claim !== null);
  const said = orderedForEar(claims).slice(0, MOST_CLAIMS);
  if (said.length === 0) return [{ kind: 'open' }];
  const third =
    said.length < MOST_CLAIMS || said.some(({ kind }) => kind === 'spells') ? thirdClaim(scene) : null;
  return third ? [...said, third] : said;
}

/** What the bar plays before where it goes: a lead that would open the sentence comes after the next claim. */
function orderedForEar(claims: readonly Claim[]): readonly Claim[] {
  const [first, second, ...rest] = claims;
  return first && second && first.kind === 'lead' ? [second, first, ...rest] : claims;
}
