import { formatName } from '../theory';
import { type HeardLine, isSilentOnOne, silenceOf, struck } from './hearing';
import { type BarModel, barNumber, changesBetween, type LineModel } from './model';
import { isHome, isStep, type Tone } from './tones';
import type { NoteAnalysis, Technique } from './types';

/** What a reason may speak of: the analysis of the notes without the reason itself. */
interface Facts {
  readonly notes: readonly NoteAnalysis[];
  readonly techniques: readonly Technique[];
}

const NUMBERS = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

const numberWord = (number: number): string => NUMBERS[number - 1] ?? `${number}`;

const nameOf = (tone: Tone): string => formatName(tone.name);

/** Where in the bar a tick lies, as a teacher counts it. */
function beatPhrase(bar: BarModel, tick: number): string {
  const beat = Math.floor(tick / bar.beat);
  const offset = tick % bar.beat;
  if (offset === 0) return `beat ${numberWord(beat + 1)}`;
  return offset * 2 === bar.beat
    ? `the “and” of ${numberWord(beat + 1)}`
    : `the end of beat ${numberWord(beat + 1)}`;
}

/** The silence: an empty beat one, or half a bar and more. */
function spaceClause(
  model: LineModel,
  heard: HeardLine,
  bar: BarModel,
  tones: readonly Tone[],
): string | null {
  const first = tones[0];
  if (!first) return null;
  if (isSilentOnOne(tones)) {
    const before = bar.before.length === 1 ? bar.before[0] : undefined;
    const asked = before !== undefined && before === bar.index - 1 && !isSilentOnOne(heard[before] ?? []);
    return asked && (heard[before]?.length ?? 0) > 0
      ? `beat one is silent and the figure answers bar ${barNumber(model, before)} from ${beatPhrase(bar, first.start)}`
      : `beat one is silent and the bass comes in on ${beatPhrase(bar, first.start)}`;
  }
  const { longest } = silenceOf(tones, bar.ticks);
  const beats = Math.floor(longest / bar.beat);
  return beats > 0
    ? `a short figure leaves ${numberWord(beats)} ${beats === 1 ? 'beat' : 'beats'} of silence`
    : null;
}

const textsWithoutRepeats = (notes: readonly NoteAnalysis[]): readonly string[] =>
  notes.flatMap((note, index) =>
    note.degreeText !== '' && note.degreeText !== notes[index - 1]?.degreeText ? [note.degreeText] : [],
  );

function directionOf(tones: readonly Tone[]): 'up' | 'down' | 'both' {
  const distances = tones.slice(1).map((tone, index) => tone.midi - (tones[index]?.midi ?? tone.midi));
  if (distances.every((distance) => distance >= 0) && distances.some((distance) => distance > 0)) return 'up';
  return distances.every((distance) => distance <= 0) && distances.some((distance) => distance < 0)
    ? 'down'
    : 'both';
}

const chordsOf = (bar: BarModel, tones: readonly Tone[]): string =>
  bar.stretches
    .filter((stretch) => tones.some((tone) => tone.stretch === stretch))
    .flatMap((stretch) => (stretch.chord ? [stretch.chord.symbol] : []))
    .join(' and ');

/** The chord tones: what they spell and which way they move. */
function chordClause(bar: BarModel, tones: readonly Tone[], facts: Facts): string | null {
  const chords = chordsOf(bar, tones);
  const texts = textsWithoutRepeats(facts.notes.filter((note) => note.function === 'chord tone'));
  if (texts.length === 0) return null;
  if (new Set(texts).size === 1) {
    const only = texts[0] === 'R' ? `the root of ${chords}` : `${texts[0]} of ${chords}`;
    return chords.includes(' and ') ? `each chord gets its root` : `${only} carries the bar`;
  }
  const spelled = texts.join('–');
  const members = tones.filter((tone) => tone.member);
  const direction = directionOf(members);
  if (chords.includes(' and ')) return `chord tones ${spelled} mark the change between ${chords}`;
  if (direction === 'up') return `${spelled} climbs through ${chords}`;
  return direction === 'down' ? `${spelled} comes down through ${chords}` : `${spelled} outlines ${chords}`;
}

/** The first note outside the chord and where it moves; the last one is left to {@link walkClause}. */
function stepClause(bar: BarModel, tones: readonly Tone[], facts: Facts): string | null {
  const index = facts.notes.findIndex(
    (note) => note.function === 'passing' || note.function === 'neighbour' || note.function === 'scale step',
  );
  const tone = tones[index];
  const before = tones[index - 1];
  const after = tones[index + 1];
  if (!tone) return null;
  const place = `${nameOf(tone)} on ${beatPhrase(bar, tone.start)}`;
  const kind = facts.notes[index]?.function;
  if (kind === 'passing' && before && after && before.midi !== tone.midi && after.midi !== tone.midi) {
    return `${place} passes from ${nameOf(before)} to ${nameOf(after)}`;
  }
  if (kind === 'neighbour' && before && before.midi !== tone.midi)
    return `${place} is a neighbour of ${nameOf(before)}`;
  return `${place} is a step of the scale between the chord tones`;
}

/** The last notes as a walk by step into the next root, two notes at least and one of them outside the chord. */
function walkClause(target: Tone, tones: readonly Tone[]): string | null {
  const last = tones.at(-1);
  if (!last || !isStep(last.midi, target.midi)) return null;
  const direction = Math.sign(target.midi - last.midi);
  const walk: Tone[] = [last];
  for (let index = tones.length - 2; index >= 0; index -= 1) {
    const tone = tones[index];
    const next = walk[0];
    if (!tone || !next || !isStep(tone.midi, next.midi) || Math.sign(next.midi - tone.midi) !== direction)
      break;
    walk.unshift(tone);
  }
  if (walk.length < 2 || walk.every((tone) => tone.member)) return null;
  const names = walk.map(nameOf).join('–');
  return `${names} walks ${direction > 0 ? 'up' : 'down'} by step to ${nameOf(target)}`;
}

/** The first note of whatever follows, where every bar that can follow begins with the same new root. */
function targetOf(model: LineModel, heard: HeardLine, bar: BarModel): Tone | null {
  const firsts = bar.after.map((index) => {
    const next = model.bars[index];
    const first = heard[index]?.[0];
    return next && first && changesBetween(bar, next) && isHome(first) ? first : null;
  });
  const target = firsts[0] ?? null;
  return firsts.every((first) => first?.midi === target?.midi) ? target : null;
}

/** How the last note leads into the next root. */
function leadClause(bar: BarModel, tones: readonly Tone[], target: Tone): string | null {
  const last = tones.at(-1);
  if (!last) return null;
  const distance = target.midi - last.midi;
  const size = Math.abs(distance);
  const way = distance > 0 ? 'up' : 'down';
  const place = `${nameOf(last)} on ${beatPhrase(bar, last.start)}`;
  if (size === 1) return `${place} leads ${way} a half step to ${nameOf(target)}`;
  if (size === 2) return `${place} steps ${way} to ${nameOf(target)}`;
  return distance === 5 || distance === -7
    ? `${place} is the fifth of ${nameOf(target)} and moves ${way} to it`
    : null;
}

function rhythmClause(
  model: LineModel,
  heard: HeardLine,
  bar: BarModel,
  tones: readonly Tone[],
): string | null {
  const pattern = (notes: readonly Tone[]) =>
    struck(notes)
      .map((tone) => tone.start)
      .join(' ');
  const section = model.request.chart.bars[bar.index]?.section ?? 0;
  const start = model.request.chart.sections[section]?.start ?? 0;
  const statement = heard[start] ?? [];
  return start !== bar.index && statement.length > 0 && pattern(statement) === pattern(tones)
    ? `the rhythm is that of bar ${barNumber(model, start)}`
    : null;
}

const special = (bar: BarModel, tones: readonly Tone[], facts: Facts): string | null => {
  const anticipated = facts.notes.findIndex((note) => note.function === 'anticipation');
  const ahead = tones[anticipated];
  if (ahead) return `${nameOf(ahead)} on ${beatPhrase(bar, ahead.start)} anticipates the next root`;
  if (!facts.techniques.includes('octave')) return null;
  const index = tones.findIndex(
    (tone, place) => Math.abs(tone.midi - (tones[place - 1]?.midi ?? tone.midi)) === 12,
  );
  const tone = tones[index];
  return tone ? `${nameOf(tone)} on ${beatPhrase(bar, tone.start)} is an octave leap` : null;
};

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** One sentence, true of the notes: what is taught here and why it fits. */
export function reasonFor(model: LineModel, heard: HeardLine, bar: BarModel, facts: Facts): string {
  const tones = heard[bar.index] ?? [];
  if (tones.length === 0) {
    return bar.playable ? 'The bass rests for the whole bar.' : 'There is no chord here, so the bass rests.';
  }
  const has = (technique: Technique) => facts.techniques.includes(technique);
  const target = targetOf(model, heard, bar);
  const walk = target ? walkClause(target, tones) : null;
  const lead = target ? leadClause(bar, tones, target) : null;
  const clauses = [
    has('space') ? spaceClause(model, heard, bar, tones) : null,
    special(bar, tones, facts),
    walk ?? (has('scale steps') ? stepClause(bar, tones, facts) : null),
    walk ? null : lead,
    chordClause(bar, tones, facts),
    rhythmClause(model, heard, bar, tones),
  ].filter((clause) => clause !== null);
  const said = orderedForEar(clauses, lead).slice(0, 2);
  return said.length === 0
    ? 'The bass plays without a chord to lean on.'
    : `${capitalised(said.join('; '))}.`;
}

/** What the bar plays before where it goes: a lead that would open the sentence comes after the next clause. */
function orderedForEar(clauses: readonly string[], lead: string | null): readonly string[] {
  const [first, second] = clauses;
  return first !== undefined && second !== undefined && first === lead ? [second, first] : clauses;
}
