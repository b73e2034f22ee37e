import { pitchClassOf } from '../base';
import { degreeOf, formatDegree } from '../theory';
import type { Facts } from './claim';
import { claimsFor } from './claims';
import { type HeardLine, hearLine } from './hearing';
import type { BarModel, LineModel } from './model';
import { modelOf } from './read-request';
import { TECHNIQUE_ROWS } from './techniques/table';
import type { Seen } from './techniques/types';
import { isDominantApproach, isStep, type Tone } from './tones';
import type { BarAnalysis, LineNotes, LineRequest, NoteAnalysis, NoteFunction, Technique } from './types';
import { sentenceOf } from './wording';

/** The tones on both sides of a note: several where repeats lead in or out differently. */
interface Surroundings {
  readonly before: readonly (Tone | null)[];
  readonly after: readonly (Tone | null)[];
}

function surroundings(heard: HeardLine, bar: BarModel, index: number): Surroundings {
  const tones = heard[bar.index] ?? [];
  const tone = tones[index];
  const previous = tones.slice(0, index).findLast((other) => other.midi !== tone?.midi);
  const following = tones.slice(index + 1).find((other) => other.midi !== tone?.midi);
  return {
    before: previous ? [previous] : bar.before.map((other) => heard[other]?.at(-1) ?? null),
    after: following ? [following] : bar.after.map((other) => heard[other]?.[0] ?? null),
  };
}

const all = (tones: readonly (Tone | null)[], test: (tone: Tone) => boolean): boolean =>
  tones.length > 0 && tones.every((tone) => tone !== null && test(tone));

/** Whether a note stands in the last beat for the root of every chord that can come next. */
function isAnticipation(model: LineModel, heard: HeardLine, bar: BarModel, index: number): boolean {
  const tones = heard[bar.index] ?? [];
  const tone = tones[index];
  if (!tone || index !== tones.length - 1 || tone.start < bar.ticks - bar.beat) return false;
  return (
    bar.after.length > 0 &&
    bar.after.every((other) => {
      const next = model.bars[other]?.stretches[0];
      const first = heard[other]?.[0];
      if (!next?.chord || next.label === tone.stretch?.label) return false;
      if (pitchClassOf(tone.name) !== next.homeClass) return false;
      return first === undefined || first.start > 0 || first.midi === tone.midi;
    })
  );
}

/**
 * What a note does. The non-chord tones are those of Open Music Theory: a passing tone is entered and left by
 * step in one direction, a neighbour by step there and back; a note entered by leap and left by step into the
 * next chord is the bass player's approach note (there an incomplete neighbour or appoggiatura), and so is the
 * fifth of the next root at the end of a bar (common practice, no source).
 */
function functionOf(model: LineModel, heard: HeardLine, bar: BarModel, index: number): NoteFunction | null {
  const tone = heard[bar.index]?.[index];
  if (!tone?.stretch?.chord) return null;
  if (tone.member) return 'chord tone';
  if (isAnticipation(model, heard, bar, index)) return 'anticipation';
  const { before, after } = surroundings(heard, bar, index);
  const entered = all(before, (other) => isStep(other.midi, tone.midi));
  const left = all(after, (other) => isStep(tone.midi, other.midi));
  const last = index === (heard[bar.index]?.length ?? 0) - 1;
  if (last && all(after, (other) => isDominantApproach(tone, other))) return 'approach';
  if (!left) return 'scale step';
  if (!entered) return 'approach';
  const rising = all(before, (other) => other.midi < tone.midi);
  const falling = all(before, (other) => other.midi > tone.midi);
  const goesUp = all(after, (other) => other.midi > tone.midi);
  const goesDown = all(after, (other) => other.midi < tone.midi);
  if ((rising && goesUp) || (falling && goesDown)) return 'passing';
  return (rising && goesDown) || (falling && goesUp) ? 'neighbour' : 'scale step';
}

function degreeTextOf(tone: Tone, tones: readonly Tone[]): string {
  const chord = tone.stretch?.chord;
  if (!chord) return '';
  const roots = tones.filter((other) => other.stretch === tone.stretch && other.interval === 0);
  const lowest = Math.min(...roots.map((other) => other.midi));
  if (tone.interval === 0 && tone.midi - lowest >= 12) return '8';
  return formatDegree(degreeOf(tone.name, chord.root));
}

const techniquesOf = (seen: Seen): readonly Technique[] =>
  TECHNIQUE_ROWS.filter((row) => row.recognise(seen)).map(({ technique }) => technique);

/** The techniques that a bar shows; no reasons are worded for it. */
export function techniquesInBar(model: LineModel, heard: HeardLine, index: number): readonly Technique[] {
  const bar = model.bars[index];
  const tones = heard[index] ?? [];
  if (!bar) return [];
  return techniquesOf({
    bar,
    tones,
    functions: tones.map((_, place) => functionOf(model, heard, bar, place)),
  });
}

export function analyseBar(model: LineModel, heard: HeardLine, index: number): BarAnalysis {
  const bar = model.bars[index];
  const tones = heard[index] ?? [];
  if (!bar) return { notes: [], techniques: [], reason: '' };
  const functions = tones.map((_, place) => functionOf(model, heard, bar, place));
  const notes = tones.map((tone, place): NoteAnalysis => {
    const chord = tone.stretch?.chord;
    return {
      degree: chord ? degreeOf(tone.name, chord.root) : null,
      degreeText: degreeTextOf(tone, tones),
      function: functions[place] ?? null,
    };
  });
  const techniques = techniquesOf({ bar, tones, functions });
  return { notes, techniques, reason: reasonOf(model, heard, bar, { notes, techniques }) };
}

function reasonOf(model: LineModel, heard: HeardLine, bar: BarModel, facts: Facts): string {
  const claims = claimsFor(model, heard, bar, facts);
  return sentenceOf({ model, bar, tones: heard[bar.index] ?? [], facts }, claims);
}

/**
 * What every bar of a line teaches and why, computed from the notes, the chart and every bar that can follow;
 * the same for composed and for hand-written notes.
 */
export function analyseLine(request: LineRequest, line: LineNotes): readonly BarAnalysis[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  return model.bars.map((bar) => analyseBar(model, heard, bar.index));
}

/**
 * The reasons of {@link analyseLine} in the request's note names.
 * @param facts - what the analysis of the same line says of each bar, in any names
 */
export function reasonsFor(
  request: LineRequest,
  line: LineNotes,
  facts: readonly Facts[],
): readonly string[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  return model.bars.map((bar) =>
    reasonOf(model, heard, bar, facts[bar.index] ?? { notes: [], techniques: [] }),
  );
}
